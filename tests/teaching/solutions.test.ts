import { bracketPeak, fitPeak } from 'slantpath/peaking';
import { rainAttenuation } from 'slantpath/propagation';
import { checkAnswer, compileFormula, SOLUTION_PLANS, workedSolution } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

function solved(plan: string, inputs: Readonly<Record<string, number>>) {
  const solution = workedSolution(plan, inputs);
  if (solution.kind !== 'solved') throw new Error(`${plan}: ${solution.reason}`);
  return solution;
}

/** Value of a step by its symbol. */
const stepValue = (plan: string, symbol: string, inputs: Readonly<Record<string, number>>) =>
  solved(plan, inputs).steps.find((step) => step.symbol === symbol)?.value ?? Number.NaN;

const givensOf = (row: CsvRow) =>
  Object.fromEntries(
    (row['givens'] ?? '').split('; ').map((pair) => {
      const [name = '', value] = pair.split('=');
      return [name, Number(value)];
    }),
  );

publishedTable({
  part: 'teaching',
  quantity: 'worked solutions',
  unit: '',
  source: 'independent computation with mpmath (roots, linear systems, integrals)',
  status: 'recomputed',
  limit: 1e-11,
  reason: 'thirteen digits of the table',
  relative: true,
  count: 74,
  cases: () =>
    referenceTable('teaching/solutions.csv').map((row) => ({
      name: `${row['plan']} ${row['symbol']}: ${row['givens']}`,
      expected: cell(row, 'value'),
      got: stepValue(row['plan'] ?? '', row['symbol'] ?? '', givensOf(row)),
    })),
});

/** The rows give the slant length instead of the rain height. */
const rainOf = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'latitude_deg'),
  heightM: cell(row, 'station_height_km') * 1000,
  rainHeightKm:
    cell(row, 'station_height_km') +
    cell(row, 'slant_length_km') * Math.sin((cell(row, 'elevation_deg') * Math.PI) / 180),
  rainRate001MmPerH: cell(row, 'r001_mm_h'),
  frequencyGHz: cell(row, 'frequency_ghz'),
  elevationDeg: cell(row, 'elevation_deg'),
  tiltDeg: cell(row, 'tilt_deg'),
  exceededPercent: cell(row, 'time_percent'),
});

publishedTable({
  part: 'teaching',
  quantity: 'worked solution of rain attenuation',
  unit: 'dB',
  source: 'ITU-R validation examples CG-3M3J-13-ValEx, revision 8.3.0, P.618-14',
  status: 'published',
  limit: 5e-9,
  reason: 'last printed digit of attenuation and rain rate',
  relative: true,
  count: 38,
  cases: () =>
    referenceTable('propagation/p618-14-rain.csv').map((row, index) => ({
      name: `row ${index + 1}`,
      expected: cell(row, 'a_rain_db'),
      got: solved('rain-attenuation', rainOf(row)).answer.value,
    })),
});

test('rain attenuation without frequency, tilt and latitude is that of 12 GHz, circular, 47 degrees north', () => {
  const inputs = {
    rainRate001MmPerH: 32,
    rainHeightKm: 3.9,
    heightM: 200,
    elevationDeg: 16,
    exceededPercent: 0.35,
  };
  expect(solved('rain-attenuation', inputs).answer.value).toBe(
    rainAttenuation({ ...inputs, latitudeDeg: 47, frequencyGHz: 12, tiltDeg: 45 }).attenuationDb,
  );
});

test('what is looked up belongs to the inputs, and is told', () => {
  const at = (frequencyGHz: number, latitudeDeg: number) =>
    solved('rain-attenuation', {
      rainRate001MmPerH: 32,
      rainHeightKm: 3.9,
      heightM: 200,
      elevationDeg: 16,
      exceededPercent: 0.35,
      frequencyGHz,
      latitudeDeg,
    }).constants;
  const value = (list: ReturnType<typeof at>, symbol: string) =>
    list.find((each) => each.symbol === symbol)?.value;
  // Recommendation ITU-R P.838-3, Table 5, to its digits.
  expect(value(at(12, 47), 'kH')).toBeCloseTo(0.02386, 5);
  expect(value(at(20, 47), 'kH')).toBeCloseTo(0.09164, 5);
  expect(value(at(20, 47), 'aV')).toBeCloseTo(0.9847, 4);
  expect([value(at(20, 47), 'n1'), value(at(20, -12), 'n1')]).toEqual([0, 1]);
  expect(at(20, 47).find(({ symbol }) => symbol === 'kH')?.source).toContain('20 GHz');
});

describe('plans and the functions behind them', () => {
  test('two flanks and three readings agree on one lobe, wherever it lies', () => {
    for (const [peak, width, top] of [
      [0.3, 2.1, -38],
      [-0.4, 1.4, -41.2],
    ] as const) {
      const level = (x: number) => top - 12 * ((x - peak) / width) ** 2;
      const flanks = solved('peak-from-two-flanks', {
        firstTurns: -1,
        firstLevelDbm: level(-1),
        secondTurns: 1.5,
        secondLevelDbm: level(1.5),
        beamwidthTurns: width,
      });
      const three = {
        spacingTurns: 0.75,
        lowerLevelDbm: level(-0.75),
        middleLevelDbm: level(0),
        upperLevelDbm: level(0.75),
      };
      expect(flanks.answer.value).toBeCloseTo(peak, 10);
      expect(
        solved('peak-from-three-readings', { ...three, middleTurns: 0 }).answer.value,
      ).toBeCloseTo(peak, 10);
      expect(stepValue('loss-from-three-readings', 'w', three)).toBeCloseTo(width, 10);
      expect(solved('loss-from-three-readings', three).answer.value).toBeCloseTo(
        12 * (peak / width) ** 2,
        10,
      );
    }
  });

  test('equal levels are bracketed by half the way', () => {
    const inputs = { peakLevelDbm: -38, referenceLevelDbm: -42, farLevelDbm: -42, turnsBack: 4.5 };
    expect(solved('unequal-bracketing', inputs).answer.value).toBe(
      solved('bracketing', { turnsBack: 4.5, backlashTurns: 0 }).answer.value,
    );
    const { farLevelDbm: _far, ...equal } = inputs;
    expect(bracketPeak({ ...equal, turnsOut: 2 }).moveBackTurns).toBe(2.25);
  });

  test('taking the noise off and fitting without floor is fitting with it', () => {
    const noiseFloorDbm = -56;
    const [first, second] = [-47.5, -44].map(
      (levelDbm) => solved('signal-over-noise-floor', { levelDbm, noiseFloorDbm }).answer.value,
    ) as [number, number];
    const fit = fitPeak({
      positionDeg: [-0.5, 2],
      levelDbm: [-47.5, -44],
      beamwidthDeg: 2.2,
      lobe: 'parabola',
      standardDeviationDb: 0.1,
      noiseFloorDbm,
    });
    const flanks = solved('peak-from-two-flanks', {
      firstTurns: -0.5,
      firstLevelDbm: first,
      secondTurns: 2,
      secondLevelDbm: second,
      beamwidthTurns: 2.2,
    });
    expect(fit.kind === 'peak' && fit.positionDeg).toBeCloseTo(flanks.answer.value, 9);
  });

  test.each([
    ['signal-over-noise-floor', { levelDbm: -57, noiseFloorDbm: -56 }, 'no-signal-over-the-noise'],
    [
      'peak-from-three-readings',
      {
        middleTurns: 0,
        spacingTurns: 1,
        lowerLevelDbm: -40,
        middleLevelDbm: -42,
        upperLevelDbm: -41,
      },
      'no-peak-among-the-readings',
    ],
    [
      'peak-from-two-flanks',
      { firstTurns: 0, firstLevelDbm: -60, secondTurns: 1, secondLevelDbm: -42, beamwidthTurns: 3 },
      'not-between-the-readings',
    ],
    [
      'unequal-bracketing',
      { peakLevelDbm: -40, referenceLevelDbm: -40, farLevelDbm: -40, turnsBack: 2 },
      'no-drop',
    ],
    [
      'null-isolation',
      { firstDeg: -2, secondDeg: 2, levelStepDb: 20, standardDeviationDb: 0 },
      undefined,
    ],
    [
      'loss-after-both-axes',
      { narrowDeg: 1, wideDeg: 2, narrowAxisDeg: 0, firstOffsetDeg: 1, secondOffsetDeg: 0 },
      'one-axis-is-enough',
    ],
    [
      'rain-attenuation',
      {
        rainRate001MmPerH: 30,
        rainHeightKm: 1,
        heightM: 2000,
        elevationDeg: 30,
        exceededPercent: 0.1,
      },
      'no-rain-on-the-path',
    ],
    [
      'rain-attenuation',
      {
        rainRate001MmPerH: 30,
        rainHeightKm: 3,
        heightM: 1000,
        elevationDeg: 4,
        exceededPercent: 0.1,
      },
      'below-5-degrees',
    ],
  ])('%s of %j: %s', (plan, inputs, reason) => {
    const solution = workedSolution(plan, inputs as Readonly<Record<string, number>>);
    if (reason === undefined) expect(solution.kind).toBe('solved');
    else expect(solution).toMatchObject({ kind: 'no-answer', reason });
  });
});

describe('slips that come with these plans', () => {
  test.each([
    ['half-way-from-zero', 'null-half-way', { firstDeg: -18, secondDeg: 24 }, '21.00'],
    [
      'gain-subtracted',
      'outlet-budget',
      {
        sourceLevelDbuv: 75,
        amplifierGainDb: 15,
        cableLossDb: 20,
        splitterLossDb: 8,
        tapLossDb: 10,
        outletLossDb: 1,
      },
      '21.0',
    ],
    [
      'guard-band-reversed',
      'guard-band',
      { limitDbuv: 47, standardUncertaintyDb: 0.6, guardBandFactor: 2 },
      '45.80',
    ],
    [
      'expanded-for-standard',
      'guard-band',
      { limitDbuv: 47, standardUncertaintyDb: 0.6, guardBandFactor: 1.65 },
      '48.98',
    ],
    [
      'prior-left-out',
      'two-suspects',
      { priorFirst: 10, priorSecond: 40, likelihoodRatio: 4 },
      '80.0',
    ],
    [
      'odds-for-probability',
      'two-suspects',
      { priorFirst: 10, priorSecond: 40, likelihoodRatio: 2 },
      '50',
    ],
    ['root-not-taken', 'offset-from-loss', { pointingLossDb: 3, beamwidthDeg: 2 }, '0.50'],
  ])('%s in %s', (slip, plan, inputs, answer) => {
    const check = checkAnswer({ plan, inputs: inputs as Readonly<Record<string, number>> }, answer);
    expect(check.kind === 'wrong' && check.slips.map(({ name }) => name)).toContain(slip);
  });
});

test('the new functions of formulas have no value where there is no such distribution', () => {
  for (const text of ['student(1, 0)', 'student(1, 0.5)', 'student(1 / 0, 3)', 'normal(0 / 0)'])
    expect(compileFormula(text, [])({})).toBeNaN();
});

test('no two plans share a name or a title', () => {
  for (const field of ['name', 'title'] as const)
    expect(new Set(SOLUTION_PLANS.map((plan) => plan[field])).size).toBe(SOLUTION_PLANS.length);
});
