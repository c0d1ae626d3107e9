import {
  type AcceptableQualityPercent,
  acceptanceProbability,
  badRatioAccepted,
  judgeByVariables,
  samplingPlan,
  shareInterval,
  variablesAcceptanceProbability,
} from 'slantpath/acceptance';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { input, type WorkedRow, workedCases, workedRows } from '../support/worked.js';

const interval = (row: WorkedRow, method: 'about-95' | 'at-least-95') => {
  const share = shareInterval({ count: input(row, 'x'), of: input(row, 'n'), method });
  return [share.fromRatio, share.toRatio];
};

const answers: readonly (readonly [string, (row: WorkedRow) => readonly unknown[]])[] = [
  [
    'ISO 2859-1',
    (row) => {
      const plan = samplingPlan({
        lotSize: input(row, 'lot'),
        inspectionLevel: row.inputs['level'] as 'I' | 'II' | 'III',
        acceptableQualityPercent: input(row, 'aql') as AcceptableQualityPercent,
      });
      return [plan.codeLetter, plan.sampleSize, plan.acceptanceNumber, plan.rejectionNumber];
    },
  ],
  [
    'probability of acceptance, binomial',
    (row) => [
      acceptanceProbability({
        sampleSize: input(row, 'n'),
        acceptanceNumber: input(row, 'ac'),
        badRatio: input(row, 'fraction'),
      }),
    ],
  ],
  [
    'probability of acceptance, hypergeometric',
    (row) => [
      acceptanceProbability({
        sampleSize: input(row, 'n'),
        acceptanceNumber: input(row, 'ac'),
        lotSize: input(row, 'lot'),
        badCount: input(row, 'bad'),
      }),
    ],
  ],
  [
    'fraction accepted',
    (row) =>
      [0.95, 0.1].map((probabilityRatio) =>
        badRatioAccepted({
          sampleSize: input(row, 'n'),
          acceptanceNumber: input(row, 'ac'),
          probabilityRatio,
        }),
      ),
  ],
  ['95 % interval for a proportion, Wilson', (row) => interval(row, 'about-95')],
  ['95 % interval for a proportion, Clopper', (row) => interval(row, 'at-least-95')],
  [
    'probability of acceptance, variables',
    (row) => [
      variablesAcceptanceProbability({
        sampleSize: input(row, 'n'),
        k: input(row, 'k'),
        badRatio: input(row, 'fraction'),
      }),
    ],
  ],
  [
    'k method',
    (row) => {
      const verdict = judgeByVariables({
        valuesDb: row.inputs['values'] as number[],
        largestDb: input(row, 'upper'),
        k: input(row, 'k'),
      });
      return [verdict.meanDb, verdict.standardDeviationDb, verdict.qualityIndex, verdict.accepted];
    },
  ],
];

publishedTable({
  part: 'acceptance',
  quantity: 'sampling',
  unit: 'as named',
  source: 'worked sampling, recomputed (plans as marked in the table)',
  status: 'recomputed',
  limit: 1e-6,
  reason: 'printed digits',
  count: 67,
  cases: () =>
    workedRows('acceptance/sampling.csv').flatMap((row) => {
      const found = answers.find(([quantity]) => row.quantity.startsWith(quantity));
      if (found === undefined) throw new Error(`no answer for ${row.quantity}`);
      return workedCases(row, found[1](row));
    }),
});

test('each lot size and level leads to the letter of the public table', () => {
  for (const row of referenceTable('acceptance/aql-code-letters.csv'))
    for (const inspectionLevel of ['I', 'II', 'III'] as const) {
      const ends = [row['lot_from'], row['lot_to'] || row['lot_from']].map(Number);
      for (const lotSize of ends)
        expect(
          samplingPlan({ lotSize, inspectionLevel, acceptableQualityPercent: 1 }).codeLetter,
        ).toBe(row[inspectionLevel]);
    }
});

test('each letter and quality level leads to the plan of the public table, arrows followed', () => {
  const lots = referenceTable('acceptance/aql-code-letters.csv');
  let compared = 0;
  for (const row of referenceTable('acceptance/aql-single-normal.csv')) {
    const lot = lots.find((line) => line['III'] === row['letter'] || line['II'] === row['letter']);
    if (lot === undefined) continue;
    const inspectionLevel = lot['III'] === row['letter'] ? 'III' : 'II';
    for (const acceptableQualityPercent of [0.65, 1, 1.5, 2.5, 4, 6.5] as const) {
      const name = acceptableQualityPercent === 0.65 ? '0.65' : acceptableQualityPercent.toFixed(1);
      const plan = samplingPlan({
        lotSize: cell(lot, 'lot_from'),
        inspectionLevel,
        acceptableQualityPercent,
      });
      const printed = row[`plan_${name}_(n:Ac/Re)`] ?? '';
      const size = Number(printed.split(':')[0]);
      const numbers = `${plan.acceptanceNumber}/${plan.rejectionNumber}`;
      if (size >= cell(lot, 'lot_from')) expect(plan.wholeLot).toBe(true);
      else expect(`${plan.sampleSize}:${numbers}`).toBe(printed);
      compared += 1;
    }
  }
  expect(compared).toBe(16 * 6);
});

test('a lot without scatter is judged by its mean alone', () => {
  expect(judgeByVariables({ valuesDb: [50, 50, 50], leastDb: 47, k: 1.5 }).accepted).toBe(true);
  expect(judgeByVariables({ valuesDb: [46, 46, 46], leastDb: 47, k: 1.5 }).accepted).toBe(false);
});

test('the interval covers what it says: all counts of twenty at three shares, by the binomial itself', () => {
  const choose = (n: number, k: number) =>
    Array.from({ length: k }, (_, i) => (n - i) / (i + 1)).reduce((a, b) => a * b, 1);
  for (const share of [0.05, 0.2, 0.5]) {
    let covered = 0;
    for (let count = 0; count <= 20; count += 1) {
      const { fromRatio, toRatio } = shareInterval({ count, of: 20 });
      if (fromRatio <= share && share <= toRatio)
        covered += choose(20, count) * share ** count * (1 - share) ** (20 - count);
    }
    expect(covered).toBeGreaterThanOrEqual(0.95);
  }
});

test.each([
  [() => samplingPlan({ lotSize: 1, acceptableQualityPercent: 1 }), 'lotSize'],
  [
    () => samplingPlan({ lotSize: 50, acceptableQualityPercent: 3 as AcceptableQualityPercent }),
    'acceptableQualityPercent',
  ],
  [() => acceptanceProbability({ sampleSize: 5, acceptanceNumber: 0, badRatio: 5 }), 'badRatio'],
  [() => shareInterval({ count: 4, of: 3 }), 'count'],
  [() => judgeByVariables({ valuesDb: [1, 2, 3], k: 1 }), 'leastDb'],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});
