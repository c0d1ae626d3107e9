import fc from 'fast-check';
import { markBadRows } from 'slantpath';
import {
  conformityVerdicts,
  type DecisionRule,
  decideConformity,
  decideConformityBatch,
} from 'slantpath/acceptance';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rule = fc.constantFrom<DecisionRule | undefined>(
  undefined,
  { kind: 'simple' },
  { kind: 'guard-band' },
  { kind: 'risk', riskPercent: 1 },
);
const row = fc.record({
  reading: within(40, 80),
  standardUncertainty: within(0.01, 3),
  lowerLimit: within(45, 58),
  upperLimit: within(60, 77),
  degreesOfFreedom: within(1, 50),
});
type Field = 'lowerLimit' | 'upperLimit' | 'degreesOfFreedom';

test('each row is what the single function gives', () => {
  fc.assert(
    fc.property(
      fc.array(row, { minLength: 1, maxLength: 8 }),
      fc.subarray<Field>(['lowerLimit', 'upperLimit', 'degreesOfFreedom'], { minLength: 1 }),
      rule,
      (rows, optional, given) => {
        fc.pre(optional.some((field) => field !== 'degreesOfFreedom'));
        const fields = ['reading', 'standardUncertainty', ...optional] as const;
        const ruled = given === undefined ? {} : { rule: given };
        const columns = Object.fromEntries(
          fields.map((field) => [field, rows.map((values) => values[field])]),
        ) as Record<'reading' | 'standardUncertainty', number[]>;
        const batch = decideConformityBatch({ ...columns, ...ruled });
        rows.forEach((values, index) => {
          const question = Object.fromEntries(fields.map((field) => [field, values[field]]));
          const single = decideConformity({ ...(question as typeof values), ...ruled });
          expect(conformityVerdicts[batch.outcome[index] ?? -1]).toBe(single.verdict);
          expect(batch.conformityProbabilityRatio[index]).toBe(single.conformityProbabilityRatio);
          expect(batch.guardBand[index]).toBe(single.guardBand);
          expect(batch.margin[index]).toBe(single.margin);
        });
      },
    ),
    { numRuns: runs(500) },
  );
});

test('marks a bad row; a bad rule and no limit are nobody’s row', () => {
  const input = { reading: [48, 49, 50], standardUncertainty: [1, 0, 1], lowerLimit: 47 };
  const marked = markBadRows(decideConformityBatch, input);
  expect(marked.badRows.map(({ parameter, index }) => [parameter, index])).toEqual([
    ['standardUncertainty', 1],
  ]);
  expect([...marked.columns.outcome]).toEqual([2, 255, 0]);
  const bad = { ...input, rule: { kind: 'risk', riskPercent: 80 } } as const;
  expect(() => markBadRows(decideConformityBatch, bad)).toThrow(
    expect.objectContaining({ parameter: 'rule.riskPercent', index: undefined }),
  );
  expect(() => decideConformityBatch({ reading: [1], standardUncertainty: 1 })).toThrow(
    expect.objectContaining({ parameter: 'lowerLimit', index: undefined }),
  );
  expect(() =>
    decideConformityBatch({ ...input, standardUncertainty: 1, upperLimit: [50, 46, 60] }),
  ).toThrow(expect.objectContaining({ code: 'inconsistent', parameter: 'lowerLimit', index: 1 }));
});
