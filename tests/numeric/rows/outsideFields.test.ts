import fc from 'fast-check';
import { fieldsOutside, markBadRows, outsideStatedFields } from 'slantpath';
import { attenuationAt, attenuationAtBatch, climateAt } from 'slantpath/climate';
import { declinationBatch, magneticField } from 'slantpath/magnetic';
import {
  gasSlantAttenuation,
  gasSlantAttenuationBatch,
  rainAttenuation,
  rainAttenuationBatch,
  totalAttenuation,
  totalAttenuationBatch,
} from 'slantpath/propagation';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.js';

const rain = {
  latitudeDeg: 46.4,
  heightM: 600,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 35,
  tiltDeg: 0,
};
const total = { ...rain, diameterM: 0.9, wetRefractivityNUnits: 45, gasDb: 0.4, cloudDb: 0.6 };
const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 600 };
const path = fc.record({
  frequencyGHz: fc.constantFrom(0.9, 1, 3.9, 4, 12, 55, 55.1, 900),
  elevationDeg: fc.constantFrom(0.5, 4.9, 5, 36, 90),
  exceededPercent: fc.constantFrom(0.0001, 0.001, 0.1, 5, 5.1, 50),
});

/** Rows as columns. */
const columnsOf = <Row extends object>(rows: readonly Row[]) =>
  Object.fromEntries(
    Object.keys(rows[0] ?? {}).map((name) => [name, rows.map((row) => row[name as keyof Row])]),
  ) as unknown as { readonly [Name in keyof Row]: number[] };
const named = ({ outsideStatedRange }: { readonly outsideStatedRange: Uint8Array }) =>
  [...outsideStatedRange].map(fieldsOutside);

test('each row names what the function for one station names', () => {
  fc.assert(
    fc.property(fc.array(path, { minLength: 1, maxLength: 12 }), (rows) => {
      const columns = columnsOf(rows);
      const of = <Result extends { readonly outsideStatedRange: readonly string[] }>(
        single: (row: (typeof rows)[number]) => Result,
      ) => rows.map((row) => single(row).outsideStatedRange);
      expect(named(rainAttenuationBatch({ ...rain, ...columns }))).toEqual(
        of((row) => rainAttenuation({ ...rain, ...row })),
      );
      const dirty = { outsideStatedRange: new Uint8Array(rows.length).fill(7) };
      expect(named(totalAttenuationBatch({ ...total, ...columns }, dirty))).toEqual(
        of((row) => totalAttenuation({ ...total, ...row })),
      );
      // The gas table of the climate ends at 70 GHz.
      const carried = rows.map((row) => ({
        ...row,
        frequencyGHz: Math.min(Math.max(row.frequencyGHz, 1), 70),
      }));
      const sky = { tiltDeg: 0, diameterM: 0.9 };
      expect(named(attenuationAtBatch({ ...hut, ...sky, ...columnsOf(carried) }))).toEqual(
        carried.map((row) => attenuationAt(climateAt(hut), { ...sky, ...row }).outsideStatedRange),
      );
    }),
    { numRuns: runs(100) },
  );
});

test('gases and declination mark theirs, with single numbers too', () => {
  const frequencyGHz = [0.5, 1, 12];
  expect(named(gasSlantAttenuationBatch({ frequencyGHz, elevationDeg: 35 }))).toEqual(
    frequencyGHz.map(
      (f) => gasSlantAttenuation({ frequencyGHz: f, elevationDeg: 35 }).outsideStatedRange,
    ),
  );
  const years = [2024.9, 2025, 2030, 2030.1];
  expect(named(declinationBatch({ ...hut, decimalYear: years }))).toEqual(
    years.map((year) => magneticField(hut, year).outsideStatedRange),
  );
  expect(named(declinationBatch({ ...hut, decimalYear: 2040 }))).toEqual([['decimalYear']]);
});

test('a refused row names nothing, what is no mark is refused', () => {
  const { columns } = markBadRows(rainAttenuationBatch, {
    ...rain,
    frequencyGHz: [70, -1],
    elevationDeg: 36,
    exceededPercent: 0.1,
  });
  expect([...columns.outsideStatedRange]).toEqual([1, 255]);
  expect([255, 16, 0].map(fieldsOutside)).toEqual([[], [], []]);
  for (const marks of [-1, 256, Number.NaN, '1', Symbol('x')])
    expect(() => fieldsOutside(marks as number)).toThrow(
      expect.objectContaining({ parameter: 'marks' }),
    );
  expect(fieldsOutside(15)).toEqual(outsideStatedFields);
});

test('a column to write into must be of bytes and as long', () => {
  const input = { ...rain, frequencyGHz: [12, 70], elevationDeg: 36, exceededPercent: 0.1 };
  const into = (outsideStatedRange: unknown) => () =>
    rainAttenuationBatch(input, { outsideStatedRange: outsideStatedRange as never });
  expect(into(new Uint8Array(3))).toThrow(
    'out.outsideStatedRange must be a Uint8Array exactly 2 long, got 3',
  );
  expect(into([0, 0])).toThrow(expect.objectContaining({ code: 'malformed' }));
});
