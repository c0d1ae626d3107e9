import fc from 'fast-check';
import { DomainError, markBadRows, rowOutcomes } from 'slantpath';
import { attenuationAtBatch } from 'slantpath/climate';
import { lookAngles, lookAnglesBatch } from 'slantpath/pointing';
import { rainAttenuationBatch, totalAttenuationBatch } from 'slantpath/propagation';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.js';

/** Latitudes of which some are out of range, empty or no number. */
const latitude = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: -80, max: 80, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(116.2, null, undefined, '46', Number.NaN, -91) },
);

test('good rows are what the single call gives, bad ones are marked with their row', () => {
  fc.assert(
    fc.property(fc.array(latitude, { minLength: 1, maxLength: 40 }), (latitudes) => {
      const { columns, outcome, badCount, badRows } = markBadRows(lookAnglesBatch, {
        latitudeDeg: latitudes as number[],
        longitudeDeg: 9.6,
        heightM: 100,
        orbitalLongitudeDeg: 16.4,
      });
      const good = (value: unknown) => typeof value === 'number' && Math.abs(value) <= 90;
      expect([...outcome].map((row) => rowOutcomes[row])).toEqual(
        latitudes.map((value) => (good(value) ? 'computed' : 'refused')),
      );
      expect(badRows.map(({ index }) => index)).toEqual(
        latitudes.flatMap((value, row) => (good(value) ? [] : [row])),
      );
      expect(badCount).toBe(badRows.length);
      for (const [row, latitudeDeg] of latitudes.entries()) {
        if (!good(latitudeDeg)) continue;
        const station = { latitudeDeg: Number(latitudeDeg), longitudeDeg: 9.6, heightM: 100 };
        expect(columns.elevationDeg[row]).toBe(lookAngles(station, 16.4).elevationDeg);
      }
    }),
    { numRuns: runs(300) },
  );
});

test('rows beyond one chunk keep their places', () => {
  const rows = 6000;
  const latitudeDeg = Float64Array.from({ length: rows }, (_, row) =>
    row % 1999 === 7 ? 95 : (row % 160) - 80,
  );
  const input = { latitudeDeg, longitudeDeg: 9.6, heightM: 0, orbitalLongitudeDeg: 16.4 };
  const { columns, badRows } = markBadRows(lookAnglesBatch, input);
  expect(badRows.map(({ index }) => index)).toEqual([7, 2006, 4005]);
  const mended = latitudeDeg.map((value) => (value > 90 ? 0 : value));
  const whole = lookAnglesBatch({ ...input, latitudeDeg: mended });
  for (const row of [0, 6, 8, 2005, 2007, 2048, 4004, 4006, rows - 1])
    expect(columns.azimuthDeg[row]).toBe(whole.azimuthDeg[row]);
  expect(columns.azimuthDeg[2006]).toBeNaN();
});

test('works for one column as for several, through the climate too', () => {
  const path = {
    latitudeDeg: [46.4, 46.7, 46.9],
    heightM: [1900, null as never, 600],
    frequencyGHz: 12,
    elevationDeg: 36,
    tiltDeg: 0,
    exceededPercent: 0.1,
  };
  const rain = { ...path, rainHeightKm: 2.9, rainRate001MmPerH: 35 };
  const alone = markBadRows(rainAttenuationBatch, rain);
  expect([...alone.columns.attenuationDb].map(Number.isNaN)).toEqual([false, true, false]);
  expect(alone.badRows[0]).toMatchObject({ code: 'missing', parameter: 'heightM', index: 1 });
  const other = { ...rain, diameterM: 0.9, wetRefractivityNUnits: 50, gasDb: 0.1, cloudDb: 0.1 };
  expect([...markBadRows(totalAttenuationBatch, other).outcome]).toEqual([0, 1, 0]);
  const planned = { ...path, longitudeDeg: [9.6, 9.7, 9.8], diameterM: 0.9 };
  const there = markBadRows(attenuationAtBatch, planned);
  expect([...there.outcome]).toEqual([0, 1, 0]);
  expect(there.columns.attenuationDb[2]).toBeGreaterThan(0);
});

test('what no row is to blame for is thrown', () => {
  const input = { longitudeDeg: 9.6, heightM: 0, orbitalLongitudeDeg: 16.4 };
  const call = (more: object) => () => markBadRows(lookAnglesBatch, { ...input, ...more } as never);
  expect(call({ latitudeDeg: [46], longitudeDeg: [1, 2] })).toThrow(/of the same length as/);
  expect(call({ latitudeDeg: [46, 47], heightM: 1e7 })).toThrow(/heightM/);
  expect(call({ latitudeDeg: [46], elevation: 3 })).toThrow(/elevation/);
  expect(call({ latitudeDeg: [] })).toThrow(/at least one row/);
  expect(() => markBadRows(undefined as never, input)).toThrow(/batch/);
});

test('a column of codes is kept, with 255 in a row that was refused', () => {
  const batch = ({ value }: { readonly value: ArrayLike<number> }) => {
    const bad = Array.from(value).findIndex((number) => number < 0);
    if (bad >= 0)
      throw new DomainError({
        code: 'out-of-range',
        parameter: 'value',
        received: value[bad],
        allowed: 'from 0',
        index: bad,
      });
    return { outcome: Uint8Array.from(value), half: Float64Array.from(value, (one) => one / 2) };
  };
  const { columns, outcome } = markBadRows(batch, { value: [1, -1, 2] });
  expect([...columns.outcome]).toEqual([1, 255, 2]);
  expect([...columns.half]).toEqual([0.5, Number.NaN, 1]);
  expect([...outcome]).toEqual([0, 1, 0]);
});
