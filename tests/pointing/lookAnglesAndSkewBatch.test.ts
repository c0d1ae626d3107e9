import fc from 'fast-check';
import { markBadRows } from 'slantpath';
import {
  lookAngles,
  lookAnglesAndSkewBatch,
  lookAnglesBatch,
  lookOutcomes,
  polarizationSkew,
  polarizationSkewBatch,
} from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Places and slots of all kinds: anywhere, near each other, and right below a slot on the equator. */
const row = fc.oneof(
  fc.tuple(within(-90, 90), within(-720, 720), within(-1000, 1e5), within(-720, 720)),
  fc.tuple(within(-80, 80), within(0, 30), within(0, 3000), within(0, 30)),
  fc.constantFrom([0, 16.4, 0, 16.4], [90, 0, 0, 0], [-90, 3, 0, 90], [0, 0, 0, 180]),
);

test('each row is what the two single functions give, and what their batches give', () => {
  fc.assert(
    fc.property(
      fc.array(row, { minLength: 1, maxLength: 8 }),
      within(-180, 180),
      (rows, tiltDeg) => {
        const column = (place: number) => rows.map((values) => values[place] as number);
        const where = {
          latitudeDeg: column(0),
          longitudeDeg: column(1),
          heightM: column(2),
          orbitalLongitudeDeg: column(3),
        };
        const sky = lookAnglesAndSkewBatch({ ...where, tiltDeg });
        rows.forEach(([latitudeDeg = 0, longitudeDeg = 0, heightM = 0, slot = 0], index) => {
          const station = { latitudeDeg, longitudeDeg, heightM };
          const look = lookAngles(station, slot);
          const skew = polarizationSkew({
            station,
            orbitalLongitudeDeg: slot,
            polarization: { kind: 'linear', tiltDeg },
          });
          expect(lookOutcomes[sky.outcome[index] ?? -1]).toBe(look.kind);
          expect(skew.kind).toBe(look.kind);
          if (look.kind !== 'overhead') expect(sky.azimuthDeg[index]).toBe(look.azimuthDeg);
          expect(sky.elevationDeg[index]).toBe(look.elevationDeg);
          expect(sky.slantRangeKm[index]).toBe(look.slantRangeKm);
          expect(sky.skewDeg[index]).toBe('skewDeg' in skew ? skew.skewDeg : 0);
        });
        const { outcome: _, skewDeg, ...angles } = sky;
        expect(angles).toEqual(lookAnglesBatch(where));
        expect({ skewDeg }).toEqual(polarizationSkewBatch({ ...where, tiltDeg }));
      },
    ),
    { numRuns: runs(2000) },
  );
});

test('writes into the columns given, marks bad rows, refuses what is no row', () => {
  const where = { longitudeDeg: 9.6, heightM: 100, orbitalLongitudeDeg: 16.4 };
  const out = { skewDeg: new Float64Array(3), outcome: Uint8Array.of(9, 9, 9) };
  const sky = lookAnglesAndSkewBatch({ ...where, latitudeDeg: [46, 47, 85] }, out);
  expect(sky.skewDeg).toBe(out.skewDeg);
  expect([...out.outcome]).toEqual([0, 0, 1]);
  const marked = markBadRows(lookAnglesAndSkewBatch, {
    ...where,
    latitudeDeg: [46, 116, 47],
    tiltDeg: [0, 0, 200],
  });
  expect(marked.badRows.map(({ parameter, index }) => [parameter, index])).toEqual([
    ['latitudeDeg', 1],
    ['tiltDeg', 2],
  ]);
  expect([...marked.columns.outcome]).toEqual([0, 255, 255]);
  expect(() => lookAnglesAndSkewBatch({ ...where, latitudeDeg: [1, 2], heightM: [1] })).toThrow(
    expect.objectContaining({ code: 'length-mismatch', parameter: 'heightM' }),
  );
});
