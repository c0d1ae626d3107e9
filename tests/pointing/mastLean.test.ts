import fc from 'fast-check';
import {
  allowedMastLean,
  mastLeanAfterPeaking,
  mastLeanCircle,
  mastLeanError,
} from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('pointing/mast-lean.csv');

for (const [quantity, column, field] of [
  ['beam azimuth of a leaning mast', 'beam_azimuth_deg', 'beamAzimuthDeg'],
  ['beam elevation of a leaning mast', 'beam_elevation_deg', 'beamElevationDeg'],
  ['scale azimuth of a leaning mast', 'scale_azimuth_deg', 'scaleAzimuthDeg'],
  ['scale elevation of a leaning mast', 'scale_elevation_deg', 'scaleElevationDeg'],
  ['skew error of a leaning mast', 'skew_error_deg', 'skewErrorDeg'],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity,
    unit: 'deg',
    source: 'rotation matrices in 50-digit arithmetic',
    status: 'recomputed',
    limit: 4e-10,
    reason: 'printed to 1e-10',
    circularDeg: true,
    count: 40,
    cases: () =>
      rows.map((row) => ({
        name: `lean ${row['lean_deg']} to ${row['lean_azimuth_deg']}, at ${row['azimuth_deg']} ${row['elevation_deg']}`,
        expected: cell(row, column),
        got: mastLeanError({
          leanDeg: cell(row, 'lean_deg'),
          leanAzimuthDeg: cell(row, 'lean_azimuth_deg'),
          azimuthDeg: cell(row, 'azimuth_deg'),
          elevationDeg: cell(row, 'elevation_deg'),
        })[field],
      })),
  });
}

const lean = fc.record({
  leanDeg: fc.double({ min: 0.001, max: 10, noNaN: true }),
  leanAzimuthDeg: fc.double({ min: 0, max: 360, noNaN: true }),
});
const look = fc.record({
  azimuthDeg: fc.double({ min: 0, max: 360, noNaN: true }),
  elevationDeg: fc.double({ min: 0, max: 70, noNaN: true }),
});

test('the beam is never further off than the lean, and small leans follow the first-order formulas', () => {
  fc.assert(
    fc.property(lean, look, (l, at) => {
      const error = mastLeanError({ ...l, ...at });
      expect(error.offsetDeg).toBeLessThanOrEqual(l.leanDeg + 1e-9);
      const small = mastLeanError({ ...l, leanDeg: 0.001, ...at });
      const turn = ((at.azimuthDeg - l.leanAzimuthDeg) * Math.PI) / 180;
      const elevation = (at.elevationDeg * Math.PI) / 180;
      expect(small.elevationErrorDeg).toBeCloseTo(-0.001 * Math.cos(turn), 6);
      expect(small.acrossErrorDeg).toBeCloseTo(-0.001 * Math.sin(turn) * Math.sin(elevation), 6);
      expect(small.skewErrorDeg).toBeCloseTo((-0.001 * Math.sin(turn)) / Math.cos(elevation), 6);
    }),
  );
});

test('a plumb mast does nothing; a mast that leans towards the target lowers the beam', () => {
  const at = { azimuthDeg: 170, elevationDeg: 36 };
  expect(mastLeanError({ leanDeg: 0, leanAzimuthDeg: 20, ...at })).toMatchObject({
    beamAzimuthDeg: expect.closeTo(170, 12),
    offsetDeg: expect.closeTo(0, 12),
    skewErrorDeg: expect.closeTo(0, 12),
  });
  expect(mastLeanError({ leanDeg: 2, leanAzimuthDeg: 170, ...at }).elevationErrorDeg).toBeCloseTo(
    -2,
    12,
  );
  expect(mastLeanError({ leanDeg: 2, leanAzimuthDeg: 350, ...at }).elevationErrorDeg).toBeCloseTo(
    2,
    12,
  );
  // It leans to the right of the line of sight: the whole antenna rolls clockwise.
  expect(mastLeanError({ leanDeg: 2, leanAzimuthDeg: 260, ...at }).skewErrorDeg).toBeGreaterThan(2);
});

test('over the circle the elevation error swings by the lean', () => {
  const circle = mastLeanCircle({ leanDeg: 1.5, leanAzimuthDeg: 45, elevationDeg: 30 });
  expect(circle.points.length).toBe(72);
  expect(circle.largestElevationErrorDeg).toBeCloseTo(1.5, 9);
  expect(circle.largestOffsetDeg).toBeCloseTo(1.5, 9);
  expect(circle.largestSkewErrorDeg).toBeGreaterThan(1.5 / Math.cos(Math.PI / 6) - 0.02);
  expect(
    mastLeanCircle({ leanDeg: 1, leanAzimuthDeg: 0, elevationDeg: 30, stepDeg: 90 }).points.length,
  ).toBe(4);
});

test('peaked on a slot nothing remains there but skew; elsewhere less than preset', () => {
  const peaked = { azimuthDeg: 183.3, elevationDeg: 36.6 };
  const same = mastLeanAfterPeaking({ leanDeg: 2, leanAzimuthDeg: 90, peaked, target: peaked });
  expect(same.offsetDeg).toBeLessThan(1e-10);
  expect(same.skewErrorPeakedDeg).toBeCloseTo(
    mastLeanError({ leanDeg: 2, leanAzimuthDeg: 90, ...peaked }).skewErrorDeg,
    12,
  );
  const target = { azimuthDeg: 163.4, elevationDeg: 35.3 };
  const rest = mastLeanAfterPeaking({ leanDeg: 2, leanAzimuthDeg: 90, peaked, target });
  expect(rest.offsetDeg).toBeGreaterThan(0.1);
  expect(rest.offsetDeg).toBeLessThan(2 * Math.hypot(1 - Math.cos(0.35), Math.sin(0.35)) + 0.05);
});

test('the allowed lean uses up the budget exactly', () => {
  // 12 (x / 2)^2 = 0.3 gives x = sqrt(0.1).
  const preset = allowedMastLean({ lossDb: 0.3, beamwidthDeg: 2 });
  expect(preset).toMatchObject({
    kind: 'limited',
    allowedLeanDeg: expect.closeTo(Math.sqrt(0.1), 12),
  });
  expect(preset.kind === 'limited' && preset.allowedLeanMmPerM).toBeCloseTo(
    1000 * Math.tan((Math.sqrt(0.1) * Math.PI) / 180),
    9,
  );
  const turned = {
    peaked: { azimuthDeg: 183.3, elevationDeg: 36.6 },
    target: { azimuthDeg: 163.4, elevationDeg: 35.3 },
  };
  const allowed = allowedMastLean({ lossDb: 0.3, beamwidthDeg: 2, ...turned });
  if (allowed.kind !== 'limited') throw new Error('not limited');
  const at = (leanDeg: number, leanAzimuthDeg: number) =>
    mastLeanAfterPeaking({ leanDeg, leanAzimuthDeg, ...turned }).offsetDeg;
  expect(at(allowed.allowedLeanDeg, allowed.worstLeanAzimuthDeg)).toBeCloseTo(
    allowed.allowedOffsetDeg,
    5,
  );
  for (let azimuth = 0; azimuth < 360; azimuth += 7)
    expect(at(allowed.allowedLeanDeg, azimuth)).toBeLessThan(allowed.allowedOffsetDeg + 1e-5);
  expect(allowedMastLean({ lossDb: 5, beamwidthDeg: 80 }).kind).toBe('unlimited');
  const same = { peaked: turned.peaked, target: turned.peaked };
  expect(allowedMastLean({ lossDb: 0.3, beamwidthDeg: 2, ...same }).kind).toBe('unlimited');
});

test.each([
  [
    'leanDeg',
    () => mastLeanError({ leanDeg: 30, leanAzimuthDeg: 0, azimuthDeg: 0, elevationDeg: 0 }),
  ],
  [
    'elevationDeg',
    () => mastLeanError({ leanDeg: 1, leanAzimuthDeg: 0, azimuthDeg: 0, elevationDeg: 95 }),
  ],
  [
    'target',
    () =>
      allowedMastLean({
        lossDb: 1,
        beamwidthDeg: 1,
        peaked: { azimuthDeg: 0, elevationDeg: 1 },
      }),
  ],
  ['lossDb', () => allowedMastLean({ lossDb: 0, beamwidthDeg: 1 })],
  ['stepDeg', () => mastLeanCircle({ leanDeg: 1, leanAzimuthDeg: 0, elevationDeg: 0, stepDeg: 0 })],
])('refuses a bad %s', (parameter, call) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});

test('the lean that a budget allows, by the small angles of a lean', () => {
  // 12 (x / 2)^2 = 0.3 dB at x = 0.31623 degree; a plumb line shows 1000 tan of it: 5.5193 mm in a metre.
  const preset = allowedMastLean({ lossDb: 0.3, beamwidthDeg: 2 });
  expect(preset).toMatchObject({ kind: 'limited' });
  if (preset.kind === 'limited') expect(preset.allowedLeanMmPerM).toBeCloseTo(5.5193, 3);
  // A lean of d towards azimuth w lifts the beam at the horizon by d cos(a - w). Peaked in the south and turned to the east, it is off
  // by d (cos(90 - w) - cos(180 - w)), at most sqrt(2) d.
  const turned = allowedMastLean({
    lossDb: 0.3,
    beamwidthDeg: 2,
    peaked: { azimuthDeg: 180, elevationDeg: 0 },
    target: { azimuthDeg: 90, elevationDeg: 0 },
  });
  expect(turned).toMatchObject({ kind: 'limited' });
  if (turned.kind === 'limited') {
    expect(turned.allowedLeanDeg).toBeCloseTo(0.31623 / Math.SQRT2, 4);
    expect([45, 225]).toContain(turned.worstLeanAzimuthDeg);
  }
  // 10 dB of a beam 90 degrees wide would take 82 degrees.
  expect(allowedMastLean({ lossDb: 10, beamwidthDeg: 90 }).kind).toBe('unlimited');
});
