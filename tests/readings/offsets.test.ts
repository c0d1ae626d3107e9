import {
  differenceOfInstruments,
  meanOfDifferingReadings,
  pairedDifference,
  pooledReading,
  type SiteReading,
  spreadOfGroups,
  typicalOffsets,
  unitOffsets,
} from 'slantpath/readings';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { type WorkedRow, workedCases, workedRows } from '../support/worked.js';

const numbers = (row: WorkedRow, name: string) => row.inputs[name] as number[];

/** Readings of a table by rows and columns; a hole is a reading that was not taken. */
function crossed(row: WorkedRow): SiteReading[] {
  if (typeof row.inputs['table'] === 'string')
    return referenceTable('readings/crossed-24x6.csv').flatMap((line) =>
      ['A', 'B', 'C', 'D', 'E', 'F'].map((unit) => ({
        site: line['plate'] ?? '',
        unit,
        valueDb: cell(line, unit),
      })),
    );
  return (row.inputs['table'] as (number | null)[][]).flatMap((values, site) =>
    values.flatMap((value, unit) =>
      value === null ? [] : [{ site: `s${site}`, unit: `u${unit}`, valueDb: value }],
    ),
  );
}

function leastSquares(row: WorkedRow): number[] {
  const fit = unitOffsets(crossed(row));
  if (fit.kind !== 'offsets') throw new Error(fit.kind);
  return [
    fit.meanDb,
    ...fit.sites.map((site) => site.departureDb),
    ...fit.units.map((unit) => unit.offsetDb),
    fit.standardDeviationDb,
    ...fit.units.map((unit) => unit.standardUncertaintyDb),
  ];
}

const answers: readonly (readonly [string, (row: WorkedRow) => readonly number[]])[] = [
  [
    'difference of means',
    (row) => {
      const both = { firstDb: numbers(row, 'first'), secondDb: numbers(row, 'second') };
      const d = differenceOfInstruments(both);
      const pooledU =
        d.standardDeviationDb * Math.sqrt(1 / both.firstDb.length + 1 / both.secondDb.length);
      return [
        d.differenceDb,
        d.standardUncertaintyDb,
        d.degreesOfFreedom,
        d.standardDeviationDb,
        pooledU,
      ];
    },
  ],
  [
    'paired difference',
    (row) => {
      const pairs = row.inputs['pairs'] as [number, number][];
      const d = pairedDifference({
        firstDb: pairs.map(([first]) => first),
        secondDb: pairs.map(([, second]) => second),
      });
      return [
        d.differenceDb,
        d.standardDeviationDb,
        d.standardUncertaintyDb,
        d.differenceDb / d.standardUncertaintyDb,
      ];
    },
  ],
  [
    'weighted mean',
    (row) => {
      const p = pooledReading(
        numbers(row, 'values').map((valueDb, index) => ({
          valueDb,
          standardUncertaintyDb: numbers(row, 'u')[index] as number,
        })),
      );
      return [
        p.valueDb,
        p.statedUncertaintyDb,
        p.chiSquared,
        p.birgeRatio,
        p.standardUncertaintyDb,
      ];
    },
  ],
  [
    'common-effect mean',
    (row) => {
      const readings = numbers(row, 'y').map((valueDb, index) => ({
        valueDb,
        standardUncertaintyDb: Math.sqrt(numbers(row, 'v')[index] as number),
      }));
      const common = pooledReading(readings);
      const differing = meanOfDifferingReadings(readings);
      return [
        common.valueDb,
        common.statedUncertaintyDb,
        common.chiSquared,
        differing.betweenDb ** 2,
        differing.valueDb,
        differing.standardUncertaintyDb,
        differing.unexplainedRatio,
      ];
    },
  ],
  [
    'crossed random effects',
    (row) => {
      const t = typicalOffsets(crossed(row));
      return [t.meanDb, t.sitesDb, t.unitsDb, t.standardDeviationDb, t.standardUncertaintyDb];
    },
  ],
  [
    'best linear unbiased offsets',
    (row) => typicalOffsets(crossed(row)).units.map((unit) => unit.offsetDb),
  ],
  [
    'one-way random effects',
    (row) => {
      const s = spreadOfGroups(Object.values(row.inputs['groups'] as Record<string, number[]>));
      return [s.meanDb, s.betweenDb, s.withinDb, s.standardUncertaintyDb];
    },
  ],
  ['site + unit by least squares', leastSquares],
];

publishedTable({
  part: 'readings',
  quantity: 'offsets of instruments',
  unit: 'dB',
  source: 'worked statistics, recomputed (NIST/SEMATECH and open data as marked in the table)',
  status: 'recomputed',
  limit: 1e-3,
  reason: 'printed digits; the row with a gap was maximized directly',
  count: 86,
  cases: () =>
    workedRows('readings/offsets.csv').flatMap((row) => {
      const found = answers.find(([quantity]) => row.quantity.startsWith(quantity));
      if (found === undefined) throw new Error(`no answer for ${row.quantity}`);
      const expected = Array.isArray(row.expected) ? row.expected.flat() : row.expected;
      return workedCases({ ...row, expected }, found[1](row));
    }),
});

test('units that share no site cannot be compared', () => {
  const apart = unitOffsets([
    { site: 'a', unit: '1', valueDb: 60 },
    { site: 'a', unit: '2', valueDb: 61 },
    { site: 'b', unit: '3', valueDb: 60 },
    { site: 'b', unit: '4', valueDb: 62 },
    { site: 'b', unit: '3', valueDb: 60.2 },
  ]);
  expect(apart.kind).toBe('not-connected');
});

test('as many unknowns as readings give no offsets', () => {
  const few = unitOffsets([
    { site: 'a', unit: '1', valueDb: 60 },
    { site: 'a', unit: '2', valueDb: 61 },
    { site: 'b', unit: '2', valueDb: 60 },
  ]);
  expect(few.kind).toBe('too-few-readings');
});

test('the stated uncertainty of an offset is what fresh draws scatter by', () => {
  let seed = 11;
  const draw = () => {
    let sum = -6;
    for (let i = 0; i < 12; i += 1) {
      seed = (seed * 16807) % 2147483647;
      sum += seed / 2147483647;
    }
    return sum;
  };
  const offsets: number[] = [];
  let stated = 0;
  for (let run = 0; run < 400; run += 1) {
    const readings: SiteReading[] = [];
    for (let site = 0; site < 8; site += 1)
      for (const [unit, offset] of [
        ['x', 0.9],
        ['y', -0.4],
        ['z', -0.5],
      ] as const)
        if ((site + unit.charCodeAt(0)) % 4 !== 0)
          readings.push({ site: `s${site}`, unit, valueDb: 55 + site + offset + 0.3 * draw() });
    const fit = unitOffsets(readings);
    if (fit.kind !== 'offsets') throw new Error(fit.kind);
    const x = fit.units.find((unit) => unit.unit === 'x');
    offsets.push(x?.offsetDb ?? Number.NaN);
    stated += (x?.standardUncertaintyDb ?? 0) ** 2 / 400;
  }
  const mean = offsets.reduce((a, b) => a + b, 0) / offsets.length;
  const scatter = offsets.reduce((a, b) => a + (b - mean) ** 2, 0) / (offsets.length - 1);
  expect(mean).toBeCloseTo(0.9, 1);
  expect(Math.sqrt(stated / scatter)).toBeGreaterThan(0.88);
  expect(Math.sqrt(stated / scatter)).toBeLessThan(1.12);
});
