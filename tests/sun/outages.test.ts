import fc from 'fast-check';
import { lookAngles } from 'slantpath/pointing';
import {
  solarBrightness,
  sunDirection,
  sunNoise,
  sunOutageCourse,
  sunOutages,
} from 'slantpath/sun';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const transits = referenceTable('sun/sun-transits-2026.csv');
const shares = referenceTable('sun/disc-share.csv');
const brightness = referenceTable('sun/brightness.csv');

const year = (row: CsvRow) => {
  const outages = sunOutages({
    station: {
      latitudeDeg: cell(row, 'lat_deg'),
      longitudeDeg: cell(row, 'lon_deg_east'),
      heightM: cell(row, 'height_m'),
    },
    orbitalLongitudeDeg: cell(row, 'sat_lon_deg_east'),
    diameterM: 1.2,
    frequencyGHz: 12,
    systemNoiseK: 120,
    from: '2026-01-01',
    to: '2027-01-01',
  });
  if (outages.kind !== 'outages') throw new Error(outages.kind);
  return outages.events;
};
const instantOf = (row: CsvRow) =>
  Date.parse(row['time_of_closest_approach_UTC_on_the_best_day'] ?? '');
const eventOf = (row: CsvRow) =>
  year(row).find((event) => Math.abs(Date.parse(event.peakUtc) - instantOf(row)) < 3600000);

for (const [quantity, unit, limit, reason] of [
  ['peak of a sun outage', 's', 2, 'the instants are good to 2 s'],
  ['least separation', 'deg', 0.0005, 'printed to 0.0001; other slot radius and ephemeris'],
] as const)
  publishedTable({
    part: 'sun',
    quantity,
    unit,
    source: 'ten passages of 2026 recomputed with an astronomy library',
    status: 'recomputed',
    limit,
    reason,
    count: 10,
    cases: () =>
      transits.map((row) => ({
        name: `${row['site']} ${row['season_2026']}`,
        expected: unit === 's' ? instantOf(row) / 1000 : cell(row, 'min_separation_sun_centre_deg'),
        got:
          unit === 's'
            ? Date.parse(eventOf(row)?.peakUtc ?? '') / 1000
            : (eventOf(row)?.separationDeg ?? Number.NaN),
      })),
  });

publishedTable({
  part: 'sun',
  quantity: 'share of the beam inside the disc',
  unit: '',
  source: 'non-central chi-square probability (scipy)',
  status: 'recomputed',
  limit: 1e-11,
  reason: 'twelve digits are given',
  count: 112,
  cases: () =>
    shares.map((row) => ({
      name: `${row['separation_deg']} ${row['beamwidth_deg']} ${row['radius_deg']}`,
      expected: cell(row, 'share'),
      got: sunNoise({
        separationDeg: cell(row, 'separation_deg'),
        beamwidthDeg: cell(row, 'beamwidth_deg'),
        angularRadiusDeg: cell(row, 'radius_deg'),
        brightnessTemperatureK: 10000,
        systemNoiseK: 100,
      }).filledRatio,
    })),
});

publishedTable({
  part: 'sun',
  quantity: 'power law, one polarization',
  unit: 'K',
  source: '120000 f^-0.75',
  status: 'recomputed',
  limit: 0.05,
  reason: 'last digit',
  count: 10,
  cases: () =>
    brightness.map((row) => ({
      name: `${row['frequency_ghz']} GHz`,
      expected: cell(row, 'power_law_k') / 2,
      got: solarBrightness({ frequencyGHz: cell(row, 'frequency_ghz') }).powerLawTemperatureK,
    })),
});

describe('the quiet Sun, a figure read by eye', () => {
  const quietK = (frequencyGHz: number) => solarBrightness({ frequencyGHz }).quietTemperatureK;

  test('keeps within a factor of 1.5 of the power law from 4 to 30 GHz, as stated', () => {
    for (let frequencyGHz = 4; frequencyGHz <= 30; frequencyGHz += 0.1) {
      const ratio = quietK(frequencyGHz) / (60000 * frequencyGHz ** -0.75);
      expect(Math.max(ratio, 1 / ratio), `${frequencyGHz} GHz`).toBeLessThan(1.5);
    }
  });

  test('falls without a step from 0.5 to 100 GHz', () => {
    for (let frequencyGHz = 0.5; frequencyGHz < 99; frequencyGHz *= 1.01) {
      const fall = quietK(frequencyGHz * 1.01) / quietK(frequencyGHz);
      expect(fall, `${frequencyGHz} GHz`).toBeLessThanOrEqual(1);
      // The steepest part of the figure falls with the power 1.9 of the frequency.
      expect(fall, `${frequencyGHz} GHz`).toBeGreaterThan(1.01 ** -2);
    }
  });

  test('runs straight on logarithmic axes between two points of the figure', () => {
    // Geometric means: 10000 K at 10 and 7000 K at 20 GHz; 45000 K at 3 and 29000 K at 4 GHz.
    expect(quietK(Math.sqrt(200))).toBeCloseTo(Math.sqrt(10000 * 7000), 6);
    expect(quietK(Math.sqrt(12))).toBeCloseTo(Math.sqrt(45000 * 29000), 6);
    // The points in use come from outside the code: no typing error crept in.
    for (const row of brightness)
      expect(quietK(cell(row, 'frequency_ghz'))).toBeCloseTo(cell(row, 'quiet_k'), 6);
  });
});

test('noise rise on the axis as by hand: 0.5 T (1 - exp(-(D / (1.2 w))^2)) with D = 0.48', () => {
  // The form of ITU-R S.1525 and BO.1506 (from memory) at 11.7 GHz: 70 wavelengths over the diameter, T = 120000 f^-0.75.
  for (const [diameterM, riseK] of [
    [0.6, 168.3],
    [0.9, 374.5],
    [1.2, 655.5],
    [1.8, 1411.5],
  ] as const) {
    const noise = sunNoise({
      separationDeg: 0,
      beamwidthDeg: (70 * 0.299792458) / 11.7 / diameterM,
      angularRadiusDeg: 0.24,
      brightnessTemperatureK: solarBrightness({ frequencyGHz: 11.7 }).powerLawTemperatureK,
      systemNoiseK: 100,
    });
    // 1.2 stands for 1.2011 = 1 / sqrt(ln 2).
    expect(Math.abs(noise.temperatureRiseK / riseK - 1)).toBeLessThan(0.002);
    expect(noise.lossDb).toBeCloseTo(10 * Math.log10(1 + noise.temperatureRiseK / 100), 12);
  }
});

const tarnfell = {
  station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  orbitalLongitudeDeg: 16.4,
  diameterM: 0.9,
  frequencyGHz: 11.7,
  systemNoiseK: 120,
  from: '2026-01-01',
  to: '2027-01-01',
};

describe('sun outages', () => {
  test('start and end are where the loss crosses the threshold, the peak between them', () => {
    const outages = sunOutages({ ...tarnfell, thresholdLossDb: 2 });
    if (outages.kind !== 'outages') throw new Error(outages.kind);
    expect(outages.events.length).toBeGreaterThan(10);
    for (const event of outages.events) {
      const course = sunOutageCourse({ ...tarnfell, near: event.peakUtc, stepS: 1 });
      const lossAt = (text: string) => {
        const wanted = Date.parse(text);
        const nearest = course.reduce((a, b) =>
          Math.abs(Date.parse(b.instantUtc) - wanted) < Math.abs(Date.parse(a.instantUtc) - wanted)
            ? b
            : a,
        );
        return nearest.lossDb;
      };
      expect(Math.abs(lossAt(event.startUtc) - 2)).toBeLessThan(0.03);
      expect(Math.abs(lossAt(event.endUtc) - 2)).toBeLessThan(0.03);
      expect(Math.max(...course.map((moment) => moment.lossDb))).toBeCloseTo(event.lossDb, 3);
      expect(event.startUtc < event.peakUtc && event.peakUtc < event.endUtc).toBe(true);
    }
  });

  test('the centre stays within 1 degree for the minutes that were recomputed', () => {
    for (const row of transits) {
      const course = sunOutageCourse({
        station: {
          latitudeDeg: cell(row, 'lat_deg'),
          longitudeDeg: cell(row, 'lon_deg_east'),
          heightM: cell(row, 'height_m'),
        },
        orbitalLongitudeDeg: cell(row, 'sat_lon_deg_east'),
        diameterM: 1.2,
        frequencyGHz: 12,
        systemNoiseK: 120,
        near: row['time_of_closest_approach_UTC_on_the_best_day'] ?? '',
        stepS: 6,
      });
      const minutes = course.filter((moment) => moment.separationDeg < 1).length / 10;
      expect(Math.abs(minutes - cell(row, 'minutes_with_centre_within_1_deg'))).toBeLessThan(0.16);
    }
  });

  test('an hour off the passage the separation is still that of Sun and slot', () => {
    const { station, orbitalLongitudeDeg } = tarnfell;
    const look = lookAngles(station, orbitalLongitudeDeg);
    const course = sunOutageCourse({
      ...tarnfell,
      near: '2026-03-03T11:00Z',
      halfSpanMin: 60,
      stepS: 600,
    });
    expect(course.length).toBe(13);
    const radians = Math.PI / 180;
    for (const { instantUtc, separationDeg } of course) {
      const sun = sunDirection(station, { instant: instantUtc });
      if (sun.kind === 'overhead' || look.kind === 'overhead') throw new Error('overhead');
      const cosine =
        Math.sin(sun.elevationDeg * radians) * Math.sin(look.elevationDeg * radians) +
        Math.cos(sun.elevationDeg * radians) *
          Math.cos(look.elevationDeg * radians) *
          Math.cos((sun.azimuthDeg - look.azimuthDeg) * radians);
      // The instant is written to the millisecond: 4e-6 degree.
      expect(Math.abs(Math.acos(cosine) / radians - separationDeg)).toBeLessThan(2e-5);
    }
  });

  test('twice a year; a larger reflector has fewer days but a deeper loss', () => {
    const small = sunOutages(tarnfell);
    const large = sunOutages({ ...tarnfell, diameterM: 3 });
    if (small.kind !== 'outages' || large.kind !== 'outages') throw new Error('none');
    expect(large.events.length).toBeLessThan(small.events.length);
    const deepest = (events: readonly { readonly lossDb: number }[]) =>
      Math.max(...events.map((event) => event.lossDb));
    expect(deepest(large.events)).toBeGreaterThan(deepest(small.events) + 5);
    const months = new Set(small.events.map((event) => event.peakUtc.slice(5, 7)));
    expect([...months]).toEqual(['02', '03', '10']);
  });

  test('none: out of season, or too small a loss', () => {
    const summer = sunOutages({ ...tarnfell, from: '2026-05-01', to: '2026-08-01' });
    expect(summer.kind).toBe('none');
    const tiny = sunOutages({ ...tarnfell, thresholdLossDb: 20 });
    expect(tiny.kind === 'none' && tiny.greatestLossDb < 20).toBe(true);
  });

  test('a hidden slot has no outage', () => {
    expect(sunOutages({ ...tarnfell, orbitalLongitudeDeg: 120 }).kind).toBe('below-horizon');
    expect(() =>
      sunOutageCourse({ ...tarnfell, orbitalLongitudeDeg: 120, near: '2026-03-03' }),
    ).toThrow(expect.objectContaining({ parameter: 'orbitalLongitudeDeg' }));
  });

  test('over the date line and near the zenith', () => {
    for (const longitudeDeg of [179.5, -179.5]) {
      const outages = sunOutages({
        ...tarnfell,
        station: { latitudeDeg: -0.4, longitudeDeg, heightM: 0 },
        orbitalLongitudeDeg: 180,
      });
      expect(outages.kind === 'outages' && outages.events.length > 8).toBe(true);
    }
  });

  test.each([
    [{ to: '2025-12-01' }, 'to', 'inconsistent'],
    [{ to: '2036-12-01' }, 'to', 'inconsistent'],
    [{ from: 'spring' }, 'from', 'malformed'],
    [{ frequencyGHz: 11700 }, 'frequencyGHz', 'out-of-range'],
    [{ diameterM: 0 }, 'diameterM', 'out-of-range'],
    [{ systemNoiseK: 0 }, 'systemNoiseK', 'out-of-range'],
    [{ orbitalLongitudeDeg: Number.NaN }, 'orbitalLongitudeDeg', 'not-finite'],
    [{ thresholdLossDb: 0 }, 'thresholdLossDb', 'out-of-range'],
    [{ activity: 'wild' }, 'activity', 'not-an-option'],
    [{ station: { latitudeDeg: 99, longitudeDeg: 0, heightM: 0 } }, 'latitudeDeg', 'out-of-range'],
  ])('refuses %j', (change, parameter, code) => {
    expect(() => sunOutages({ ...tarnfell, ...change } as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});

describe('noise of the Sun', () => {
  test('falls with the separation, rises with the activity, stays finite', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 180, noNaN: true }),
        fc.double({ min: 0.03, max: 90, noNaN: true }),
        fc.double({ min: 0.5, max: 100, noNaN: true }),
        (separationDeg, beamwidthDeg, frequencyGHz) => {
          const quiet = solarBrightness({ frequencyGHz });
          const active = solarBrightness({ frequencyGHz, activity: 'active' });
          expect(active.brightnessTemperatureK).toBeGreaterThan(quiet.brightnessTemperatureK);
          const beam = {
            beamwidthDeg,
            brightnessTemperatureK: quiet.brightnessTemperatureK,
            systemNoiseK: 100,
          };
          const here = sunNoise({ ...beam, separationDeg });
          const nearer = sunNoise({ ...beam, separationDeg: separationDeg / 2 });
          expect(here.filledRatio >= 0 && here.filledRatio <= 1).toBe(true);
          expect(Number.isFinite(here.lossDb)).toBe(true);
          expect(nearer.filledRatio).toBeGreaterThanOrEqual(here.filledRatio - 1e-12);
        },
      ),
      { numRuns: runs(3000) },
    );
  });
});
