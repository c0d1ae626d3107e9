import { footprintCorrection, rainExperience, siteDrift } from 'slantpath/experience';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

/** Park and Miller's generator with twelve uniform draws: independent of the library's own. */
function normalDraws(seed: number): () => number {
  let state = seed;
  return () => {
    let sum = -6;
    for (let i = 0; i < 12; i += 1) {
      state = (state * 16807) % 2147483647;
      sum += state / 2147483647;
    }
    return sum;
  };
}

/** A footprint error made of three waves across the region: smooth, about 0.7 dB strong, nothing like the library's own model. */
const truth = (latitudeDeg: number, longitudeDeg: number) =>
  0.4 +
  0.6 * Math.sin(latitudeDeg * 1.3 + 1) +
  0.5 * Math.cos(longitudeDeg * 1.1) +
  0.4 * Math.sin((latitudeDeg + longitudeDeg) * 0.8);

const site = (i: number) => ({
  latitudeDeg: 44 + ((i * 0.6180339887) % 1) * 6,
  longitudeDeg: 6 + ((i * 0.7548776662) % 1) * 8,
});

test('a footprint learnt from 300 readings is right within what it states, and better than the plan', () => {
  const draw = normalDraws(7);
  const learnt = footprintCorrection(
    Array.from({ length: 300 }, (_, i) => ({
      ...site(i),
      excessDb: truth(site(i).latitudeDeg, site(i).longitudeDeg) + 0.5 * draw(),
      standardUncertaintyDb: 0.5,
    })),
  );
  let within = 0;
  let squares = 0;
  let planned = 0;
  for (let i = 1000; i < 1200; i += 1) {
    const place = site(i + 0.5);
    const { correctionDb, standardUncertaintyDb } = learnt.at(place);
    const error = correctionDb - truth(place.latitudeDeg, place.longitudeDeg);
    if (Math.abs(error) <= 1.96 * standardUncertaintyDb) within += 1;
    squares += error ** 2 / 200;
    planned += truth(place.latitudeDeg, place.longitudeDeg) ** 2 / 200;
  }
  expect(within / 200).toBeGreaterThanOrEqual(0.9);
  expect(Math.sqrt(squares)).toBeLessThan(0.4 * Math.sqrt(planned));
});

test('where nobody has read, the correction is the mean and as unsure as the region scatters', () => {
  const learnt = footprintCorrection(
    Array.from({ length: 120 }, (_, i) => ({
      ...site(i),
      excessDb: truth(site(i).latitudeDeg, site(i).longitudeDeg),
      standardUncertaintyDb: 0.3,
    })),
  );
  const far = learnt.at({ latitudeDeg: -20, longitudeDeg: 120 });
  expect(far.beyondReadings).toBe(true);
  expect(far.correctionDb).toBeCloseTo(learnt.meanDb, 2);
  expect(far.standardUncertaintyDb).toBeGreaterThanOrEqual(learnt.standardDeviationDb);
  const near = learnt.at(site(5));
  expect(near.beyondReadings).toBe(false);
  expect(near.standardUncertaintyDb).toBeLessThan(0.6 * far.standardUncertaintyDb);
});

test(`${runs(100_000)} readings are gathered in at most four hundred cells`, () => {
  const draw = normalDraws(3);
  const learnt = footprintCorrection(
    Array.from({ length: runs(100_000) }, (_, i) => ({
      ...site(i),
      excessDb: 1 + draw(),
      standardUncertaintyDb: 1,
    })),
  );
  expect(learnt.readings).toBe(runs(100_000));
  expect(learnt.cells).toBeLessThanOrEqual(400);
  expect(learnt.at(site(9)).correctionDb).toBeCloseTo(1, 1);
});

test('drift: slope, its interval and the years left as by the textbook formulas', () => {
  // Five yearly visits; slope, residual deviation and interval by hand: Sxx 10, Sxy -3.9, t(3) 3.182.
  const levels = [15.0, 14.7, 14.2, 13.9, 13.45];
  const drift = siteDrift({
    visits: levels.map((levelDb, i) => ({ at: 1.6e12 + i * 31_557_600_000, levelDb })),
    allowedLossDb: 3,
  });
  expect(drift.kind).toBe('drift');
  expect(drift.perYearDb).toBeCloseTo(-0.39, 9);
  // Residuals -0.03, 0.06, -0.05, 0.04, -0.02 about the line: their squares sum to 0.0090.
  expect(drift.standardDeviationDb).toBeCloseTo(Math.sqrt(0.009 / 3), 9);
  expect(drift.halfWidth95Db).toBeCloseTo((3.1824 * Math.sqrt(0.003)) / Math.sqrt(10), 4);
  expect(drift.kind === 'drift' && drift.yearsLeft).toBeCloseTo(3 / 0.39 - 4, 6);
});

test('chance is not called a drift: 5 percent of still sites at most', () => {
  const draw = normalDraws(19);
  let called = 0;
  for (let run = 0; run < 600; run += 1) {
    const visits = Array.from({ length: 6 }, (_, i) => ({
      at: 1.6e12 + i * 1.6e10,
      levelDb: 14 + 0.3 * draw(),
    }));
    if (siteDrift({ visits }).kind === 'drift') called += 1;
  }
  expect(called / 600).toBeLessThan(0.08);
  expect(called / 600).toBeGreaterThan(0.02);
});

test('rain as predicted is not called different; twice the rain over ten groups is', () => {
  const year = (observedMin: number) => ({ predictedMin: 100, observedMin });
  const right = rainExperience({ years: [60, 150, 90, 130, 80].map(year) });
  expect(right.fromRatio).toBeLessThan(1);
  expect(right.toRatio).toBeGreaterThan(1);
  const twice = Array.from({ length: 10 }, (_, i) => year(150 + 10 * i));
  expect(rainExperience({ years: twice }).chanceProbabilityRatio).toBeLessThan(0.01);
  // All in one year with one weather: ten sites say no more than one.
  expect(rainExperience({ years: twice, weatherGroups: 1 }).chanceProbabilityRatio).toBeGreaterThan(
    0.2,
  );
});

test.each([
  [() => footprintCorrection([]), 'readings'],
  [
    () =>
      footprintCorrection(
        Array.from({ length: 3 }, () => ({
          latitudeDeg: 95,
          longitudeDeg: 0,
          excessDb: 0,
          standardUncertaintyDb: 1,
        })),
      ),
    'readings[0].latitudeDeg',
  ],
  [() => siteDrift({ visits: [] }), 'visits'],
  [() => siteDrift({ visits: [1, 1, 1].map((at) => ({ at, levelDb: 10 })) }), 'visits'],
  [() => rainExperience({ years: [] }), 'years'],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});
