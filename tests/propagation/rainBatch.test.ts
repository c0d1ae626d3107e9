import { rainAttenuation, rainAttenuationBatch } from 'slantpath/propagation';
import { expect, test } from 'vitest';

/** More rows than go through the steps at once, with all that makes a row special. */
const ROWS = 700;
const rows = Array.from({ length: ROWS }, (_, i) => ({
  latitudeDeg: -80 + ((i * 7.31) % 160),
  heightM: i % 11 === 3 ? 6000 : (i * 13.7) % 1200,
  rainHeightKm: 2 + ((i * 0.0371) % 3),
  rainRate001MmPerH: i % 13 === 5 ? 0 : 10 + ((i * 1.73) % 100),
  frequencyGHz: [12, 20, 30.5][i % 3] as number,
  elevationDeg: i % 17 === 2 ? 0 : i % 19 === 4 ? 90 : (i * 3.77) % 90,
  tiltDeg: (i * 31) % 400,
  exceededPercent: [0.01, 0.1, 1, 3][i % 4] as number,
}));
type Field = keyof (typeof rows)[0];
const FIELDS = Object.keys(rows[0] ?? {}) as readonly Field[];
const columns = () =>
  Object.fromEntries(FIELDS.map((field) => [field, rows.map((row) => row[field])])) as Record<
    Field,
    number[]
  >;

test('rows beyond the first that go through the steps together are those of the single call', () => {
  const lists = columns();
  const dense = Object.fromEntries(
    FIELDS.map((field) => [field, Float64Array.from(lists[field])]),
  ) as Record<Field, Float64Array>;
  for (const input of [lists, dense]) {
    const { attenuationDb } = rainAttenuationBatch(input);
    expect([...attenuationDb]).toEqual(rows.map((row) => rainAttenuation(row).attenuationDb));
  }
  const { attenuationDb } = rainAttenuationBatch({ ...dense, frequencyGHz: 20, tiltDeg: 45 });
  expect([...attenuationDb]).toEqual(
    rows.map((row) => rainAttenuation({ ...row, frequencyGHz: 20, tiltDeg: 45 }).attenuationDb),
  );
});

test('the first bad row is named, in it the first bad field, and the rows before it are written', () => {
  const bad = columns();
  bad.exceededPercent[300] = 200;
  bad.elevationDeg[300] = -3;
  bad.latitudeDeg[301] = 95;
  const out = { attenuationDb: new Float64Array(ROWS).fill(-1) };
  expect(() => rainAttenuationBatch(bad, out)).toThrow(
    expect.objectContaining({ parameter: 'elevationDeg', index: 300, received: -3 }),
  );
  expect([...out.attenuationDb.subarray(0, 300)]).toEqual(
    rows.slice(0, 300).map((row) => rainAttenuation(row).attenuationDb),
  );
  expect([...out.attenuationDb.subarray(300, 302)]).toEqual([-1, -1]);
  const gap = columns();
  (gap.heightM as unknown[])[400] = null;
  expect(() => rainAttenuationBatch(gap)).toThrow(
    expect.objectContaining({ code: 'missing', parameter: 'heightM', index: 400 }),
  );
  (gap.heightM as unknown[])[400] = '46';
  expect(() => rainAttenuationBatch(gap)).toThrow(
    expect.objectContaining({ code: 'not-a-number', parameter: 'heightM', index: 400 }),
  );
  // A hair beyond an end counts as the end.
  const hair = columns();
  hair.elevationDeg[5] = 90 + 3e-14;
  expect(rainAttenuationBatch(hair).attenuationDb[5]).toBe(
    rainAttenuation({ ...(rows[5] as (typeof rows)[0]), elevationDeg: 90 }).attenuationDb,
  );
});
