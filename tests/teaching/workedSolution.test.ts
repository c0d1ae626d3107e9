import { readFileSync } from 'node:fs';
import { lookAngles } from 'slantpath/pointing';
import { SOLUTION_PLANS, workedSolution } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import type { SolutionPlan } from '../../src/teaching/plans/plan.js';
import { evaluatePlan } from '../../src/teaching/solution/evaluate.js';
import { runs } from '../support/runs.js';

/** Inputs drawn evenly from the givens' ranges. */
function drawn(plan: SolutionPlan, seed: number): Record<string, number> {
  const stream = randomStream(seed);
  return Object.fromEntries(
    plan.givens.map(({ name, draw }) => [
      name,
      draw.from + draw.step * stream.integer(Math.round((draw.to - draw.from) / draw.step) + 1),
    ]),
  );
}

describe.each(SOLUTION_PLANS.map((plan) => [plan.name, plan] as const))('%s', (_name, plan) => {
  const cases = Array.from({ length: runs(200, 20) }, (_, seed) => drawn(plan, seed)).flatMap(
    (inputs) => {
      const values = plan.compute(inputs);
      return typeof values === 'string' ? [] : [{ inputs, values }];
    },
  );

  test('has answers for at least half of what it draws', () => {
    expect(cases.length).toBeGreaterThanOrEqual(runs(200, 20) / 2);
  });

  test('every shown formula gives the value that the library has', () => {
    for (const { inputs, values } of cases) {
      const shown = evaluatePlan(plan, inputs);
      for (const { symbol } of plan.steps) {
        const exact = values[symbol] as number;
        expect(
          Math.abs((shown[symbol] as number) - exact),
          `${symbol} for ${JSON.stringify(inputs)}: shown ${shown[symbol]}, library ${exact}`,
        ).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(exact)));
      }
    }
  });

  test('the answer is the library value to the last bit, and every step is finite and told', () => {
    for (const { inputs, values } of cases) {
      const solution = workedSolution(plan.name, inputs);
      if (solution.kind !== 'solved') throw new Error('not solved');
      const last = plan.steps[plan.steps.length - 1]?.symbol ?? '';
      expect(Object.is(solution.answer.value, values[last])).toBe(true);
      for (const step of solution.steps) {
        expect(Number.isFinite(step.value)).toBe(true);
        expect(step.substitutedText).not.toMatch(/NaN|undefined|Infinity/);
        expect(step.source.length).toBeGreaterThan(2);
      }
    }
  });
});

test('a given that may be left out has its value, one that must be there is asked for', () => {
  const inputs = { latitudeDeg: 46, longitudeDeg: 10, orbitalLongitudeDeg: 16.5 };
  expect(workedSolution('elevation', inputs)).toEqual(
    workedSolution('elevation', { ...inputs, heightM: 0 }),
  );
  const high = workedSolution('elevation', { ...inputs, heightM: 1900 });
  const look = lookAngles({ latitudeDeg: 46, longitudeDeg: 10, heightM: 1900 }, 16.5);
  expect(high.kind === 'solved' && high.answer.value).toBe(look.elevationDeg);
  expect(() => workedSolution('elevation', { latitudeDeg: 46, longitudeDeg: 10 })).toThrow(
    expect.objectContaining({ parameter: 'orbitalLongitudeDeg' }),
  );
});

test.each(['docs/guides/for-trainers.mdx', 'docs/de/guides/for-trainers.mdx'])(
  'as many plans as %s says',
  (page) => {
    const text = readFileSync(new URL(`../../${page}`, import.meta.url), 'utf8');
    const [, count] = /(?:plans for|Pläne für) (\d+)/.exec(text) ?? [];
    expect(Number(count)).toBe(SOLUTION_PLANS.length);
  },
);

test('the main computations have a worked solution', () => {
  expect(SOLUTION_PLANS.map(({ part, name }) => `${part}: ${name}`)).toEqual([
    'pointing: azimuth',
    'pointing: elevation',
    'pointing: slant-range',
    'pointing: skew',
    'pointing: spherical-elevation',
    'pointing: polar-declination',
    'survey: obstruction-clearance',
    'magnetic: magnetic-bearing',
    'pointing: offset-angle',
    'pointing: face-lean',
    'survey: skyline',
    'earth: geocentric-latitude',
    'antenna: beamwidth',
    'antenna: antenna-gain',
    'antenna: pointing-loss',
    'antenna: surface-loss',
    'antenna: far-field',
    'antenna: polarization-mismatch',
    'propagation: rain-height',
    'propagation: specific-rain-attenuation',
    'propagation: rain-attenuation',
    'propagation: total-attenuation',
    'propagation: sky-noise',
    'link: free-space-loss',
    'link: noise-temperature',
    'link: system-noise',
    'link: figure-of-merit',
    'link: clear-sky-margin',
    'link: symbol-energy',
    'link: bit-energy',
    'link: combined-ratio',
    'peaking: signal-over-noise-floor',
    'peaking: peak-from-two-flanks',
    'peaking: peak-from-three-readings',
    'peaking: loss-from-three-readings',
    'peaking: unequal-bracketing',
    'antenna: offset-from-loss',
    'peaking: null-half-way',
    'peaking: null-isolation',
    'peaking: axis-coupling',
    'peaking: loss-after-both-axes',
    'peaking: bracketing',
    'distribution: cable-loss',
    'distribution: cable-run',
    'distribution: outlet-level',
    'distribution: outlet-budget',
    'distribution: level-in-dbm',
    'acceptance: acceptance-limit',
    'tuning: intermediate-frequency',
    'readings: energy-from-mer',
    'wind: wind-moment',
    'wind: ballast',
    'wind: mast-slope',
    'transmit: eirp-density',
    'transmit: off-axis-density',
    'antenna: axial-ratio',
    'ingress: ingress-level',
    'readings: instrument-offset',
    'acceptance: sample-of-a-lot',
    'acceptance: mean-of-three-readings',
    'acceptance: guard-band',
    'acceptance: conformity-probability',
    'acceptance: conformity-of-few-readings',
    'acceptance: two-suspects',
    'acceptance: lean-or-mispointed',
  ]);
});
