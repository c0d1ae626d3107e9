import {
  dailyFigure,
  fixedAntennaLoss,
  lookAngles,
  lookAnglesToPoint,
  stationKeepingBox,
} from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('pointing/daily-figure.csv');
const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

for (const [quantity, unit, column, field, limit] of [
  ['longitude of the daily figure', 'deg', 'longitude_deg', 'underLongitudeDeg', 4e-8],
  ['latitude of the daily figure', 'deg', 'latitude_deg', 'underLatitudeDeg', 4e-8],
] as const) {
  publishedTable({
    part: 'pointing',
    quantity,
    unit,
    source: 'two-body motion integrated numerically',
    status: 'recomputed',
    limit,
    reason: 'the integration holds to about 1e-8',
    circularDeg: true,
    count: 32,
    cases: () =>
      rows.map((row) => {
        const point = dailyFigure({
          station: hut,
          orbitalLongitudeDeg: 0,
          inclinationDeg: cell(row, 'inclination_deg'),
          eccentricityRatio: cell(row, 'eccentricity'),
          argumentOfPerigeeDeg: cell(row, 'argument_of_perigee_deg'),
        })[cell(row, 'k')];
        return {
          name: `i ${row['inclination_deg']} e ${row['eccentricity']} point ${row['k']}`,
          expected: cell(row, column),
          got: point?.[field] ?? Number.NaN,
        };
      }),
  });
}

describe('daily figure', () => {
  test('without inclination it is the nominal slot all day', () => {
    const day = dailyFigure({
      station: hut,
      orbitalLongitudeDeg: 376.4,
      inclinationDeg: 0,
      count: 8,
    });
    const look = lookAngles(hut, 16.4);
    for (const point of day) {
      expect(point.elevationDeg).toBeCloseTo(look.elevationDeg, 10);
      expect(point.slantRangeKm).toBeCloseTo(look.slantRangeKm, 7);
      expect(point.underLongitudeDeg).toBeCloseTo(16.4, 10);
    }
  });

  test('the figure of eight is as wide as the formula of the textbooks says', () => {
    const day = dailyFigure({
      station: hut,
      orbitalLongitudeDeg: 0,
      inclinationDeg: 6,
      count: 1440,
    });
    const width = Math.max(...day.map((point) => point.underLongitudeDeg));
    // Greatest longitude offset: asin(tan^2(i / 2)).
    const i = (6 * Math.PI) / 180;
    expect(width).toBeCloseTo((Math.asin(Math.tan(i / 2) ** 2) * 180) / Math.PI, 5);
    expect(Math.max(...day.map((point) => point.underLatitudeDeg))).toBeCloseTo(6, 9);
    expect(
      day.every(
        (point, index) => index === 0 || point.sinceNodeH > (day[index - 1]?.sinceNodeH ?? 0),
      ),
    ).toBe(true);
  });
});

describe('look angles to a point', () => {
  test('on the nominal orbit they are the look angles', () => {
    const slot = (16.4 * Math.PI) / 180;
    const ecef = { xKm: 42164.169 * Math.cos(slot), yKm: 42164.169 * Math.sin(slot), zKm: 0 };
    const [point, look] = [lookAnglesToPoint(hut, ecef), lookAngles(hut, 16.4)];
    if (point.kind !== 'visible' || look.kind !== 'visible') throw new Error('hidden');
    expect(point.azimuthDeg).toBeCloseTo(look.azimuthDeg, 10);
    expect(point.elevationDeg).toBeCloseTo(look.elevationDeg, 10);
  });

  test('straight above, and too near to be a satellite', () => {
    const under = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
    expect(lookAnglesToPoint(under, { xKm: 42164, yKm: 0, zKm: 0 }).kind).toBe('overhead');
    expect(() => lookAnglesToPoint(under, { xKm: 6378.137, yKm: 0, zKm: 0 })).toThrow(
      expect.objectContaining({ code: 'inconsistent', parameter: 'ecef' }),
    );
  });
});

describe('fixed antenna', () => {
  // A track along a meridian at 30 degrees of elevation: 1 degree up and down from the middle.
  const track = [0, 1, 0, -1].map((step) => ({ azimuthDeg: 180, elevationDeg: 30 + step }));

  test('aims at the middle of a straight swing, and tells what a bad moment costs', () => {
    const day = fixedAntennaLoss({ track, beamwidthDeg: 2 });
    expect(day.aim.elevationDeg).toBeCloseTo(30, 3);
    expect(day.diameterDeg).toBeCloseTo(2, 3);
    // By hand: 12 (1 / 2)^2 = 3 dB from the middle, 12 (2 / 2)^2 = 12 dB from an end.
    expect(day.worstLossDb).toBeCloseTo(3, 2);
    expect(day.worstLossIfPeakedThereDb.map((loss) => Number(loss.toFixed(6)))).toEqual([
      3, 12, 3, 12,
    ]);
    expect([day.bestIndex, day.worstIndex]).toEqual([0, 1]);
    expect(day.elevationDeg).toEqual({
      lowest: expect.closeTo(29, 9),
      highest: expect.closeTo(31, 9),
    });
    expect(day.meanLossDb).toBeCloseTo(1.5, 2);
  });

  test('with a given aim the loss is that of the offset; azimuths may pass north', () => {
    const north = [359, 0, 1].map((azimuthDeg) => ({ azimuthDeg, elevationDeg: 0 }));
    const day = fixedAntennaLoss({
      track: north,
      beamwidthDeg: 4,
      aim: { azimuthDeg: 1, elevationDeg: 0 },
    });
    expect(day.lossDb[0]).toBeCloseTo(3, 9);
    expect(day.azimuthDeg.from).toBeCloseTo(359, 6);
    expect(day.azimuthDeg.to).toBeCloseTo(1, 6);
  });

  test('the best aim is never worse than a fine grid', () => {
    const figure = dailyFigure({
      station: hut,
      orbitalLongitudeDeg: 40,
      inclinationDeg: 4,
      eccentricityRatio: 0.01,
      count: 48,
    });
    const best = fixedAntennaLoss({ track: figure, beamwidthDeg: 1 }).worstLossDb;
    const middle = fixedAntennaLoss({ track: figure, beamwidthDeg: 1 }).aim;
    let grid = Number.POSITIVE_INFINITY;
    for (let a = -0.5; a <= 0.5; a += 0.05)
      for (let e = -0.5; e <= 0.5; e += 0.05) {
        const aim = { azimuthDeg: middle.azimuthDeg + a, elevationDeg: middle.elevationDeg + e };
        grid = Math.min(
          grid,
          fixedAntennaLoss({ track: figure, beamwidthDeg: 1, aim }).worstLossDb,
        );
      }
    expect(best).toBeLessThan(grid * 1.0005);
  });

  test('a track of one direction', () => {
    const day = fixedAntennaLoss({
      track: [{ azimuthDeg: 10, elevationDeg: 90 }],
      beamwidthDeg: 1,
    });
    expect(day.worstLossDb).toBeCloseTo(0, 9);
  });

  test.each([
    ['track', { track: [] }, 'empty'],
    ['track[0].elevationDeg', { track: [{ azimuthDeg: 0, elevationDeg: 100 }] }, 'out-of-range'],
    ['beamwidthDeg', { beamwidthDeg: 0 }, 'out-of-range'],
    ['aim.azimuthDeg', { aim: { azimuthDeg: Number.NaN, elevationDeg: 0 } }, 'not-finite'],
  ])('refuses a bad %s', (parameter, bad, code) => {
    expect(() => fixedAntennaLoss({ track, beamwidthDeg: 1, ...bad })).toThrow(
      expect.objectContaining({ parameter, code }),
    );
  });
});

describe('station-keeping box', () => {
  test('its extremes are those of a fine walk over its faces', () => {
    const box = stationKeepingBox({
      station: hut,
      orbitalLongitudeDeg: 16.4,
      eccentricityRatio: 0.0003,
    });
    let [low, high, near, far] = [90, -90, 1e9, 0];
    for (let east = -0.1; east <= 0.1001; east += 0.02)
      for (let north = -0.1; north <= 0.1001; north += 0.02)
        for (const e of [-0.0003, 0.0003]) {
          const [b, l, r] = [
            (north * Math.PI) / 180,
            ((16.4 + east) * Math.PI) / 180,
            42164.169 * (1 + e),
          ];
          const look = lookAnglesToPoint(hut, {
            xKm: r * Math.cos(b) * Math.cos(l),
            yKm: r * Math.cos(b) * Math.sin(l),
            zKm: r * Math.sin(b),
          });
          low = Math.min(low, look.elevationDeg);
          high = Math.max(high, look.elevationDeg);
          near = Math.min(near, look.slantRangeKm);
          far = Math.max(far, look.slantRangeKm);
        }
    expect(box.elevationDeg.lowest).toBeCloseTo(low, 6);
    expect(box.elevationDeg.highest).toBeCloseTo(high, 6);
    expect(box.slantRangeKm.nearest).toBeCloseTo(near, 4);
    expect(box.slantRangeKm.farthest).toBeCloseTo(far, 4);
  });

  test('a box without size is the slot', () => {
    const box = stationKeepingBox({
      station: hut,
      orbitalLongitudeDeg: 16.4,
      longitudeHalfWidthDeg: 0,
      latitudeHalfWidthDeg: 0,
    });
    expect(box.largestOffsetDeg).toBeLessThan(1e-9);
    expect(box.azimuthDeg.from).toBeCloseTo(box.azimuthDeg.to, 9);
  });
});
