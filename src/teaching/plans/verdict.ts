/** Plans of worked solutions for a verdict on readings. */

import { combinedReading, decideConformity } from '../../acceptance/index.js';
import { given, input, step, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const READING = [48, 50, 0.1] as const;

const THREE_READINGS: SolutionPlan = {
  name: 'mean-of-three-readings',
  title: 'How sure is the mean of three readings?',
  part: 'acceptance',
  functionName: 'combinedReading',
  givens: [
    given('firstDbuv', 'x1', 'x_1', 'first reading', 'dBuV', READING),
    given('secondDbuv', 'x2', 'x_2', 'second reading', 'dBuV', READING),
    given('thirdDbuv', 'x3', 'x_3', 'third reading', 'dBuV', READING),
    given(
      'instrumentStandardUncertaintyDb',
      'ui',
      'u_i',
      'standard uncertainty of the instrument',
      'dB',
      [0.1, 1, 0.1],
    ),
  ],
  constants: [],
  steps: stepRows`
      m | \bar x | mean | (x1 + x2 + x3) / 3 | dBuV | 2 | JCGM 100:2008, 4.2.1
      s | s | standard deviation of one reading | sqrt(((x1 - m)^2 + (x2 - m)^2 + (x3 - m)^2) / 2)
        | dB | 3 | JCGM 100:2008, 4.2.2
      um | u_m | its share in the mean | s / sqrt(3) | dB | 3 | JCGM 100:2008, 4.2.3
      u | u | standard uncertainty of the mean | sqrt(um^2 + ui^2) | dB | 2 | JCGM 100:2008, 5.1.2
    `,
  compute: (inputs) => {
    const mean = combinedReading({
      readings: [
        input(inputs, 'firstDbuv'),
        input(inputs, 'secondDbuv'),
        input(inputs, 'thirdDbuv'),
      ],
      instrumentStandardUncertainty: input(inputs, 'instrumentStandardUncertaintyDb'),
    });
    return {
      m: mean.mean,
      s: mean.standardDeviation ?? Number.NaN,
      um: mean.repeatability ?? Number.NaN,
      u: mean.standardUncertainty,
    };
  },
};

const LIMIT = given('limitDbuv', 'T', 'T', 'lowest level that conforms', 'dBuV', [47, 49, 0.5]);
const UNCERTAINTY = given(
  'standardUncertaintyDb',
  'u',
  'u',
  'standard uncertainty of the reading',
  'dB',
  [0.5, 1.5, 0.1],
);

const GUARD_BAND: SolutionPlan = {
  name: 'guard-band',
  title: 'From which reading on does the level conform, by the rule agreed?',
  part: 'acceptance',
  functionName: 'decideConformity',
  givens: [
    LIMIT,
    UNCERTAINTY,
    given(
      'guardBandFactor',
      'k',
      'k',
      'guard band in standard uncertainties (point of the normal or t distribution for the risk; 2 for a guard band of U)',
      '',
      [1.6, 3, 0.05],
    ),
  ],
  constants: [],
  steps: stepRows`
      w | w | guard band | k * u | dB | 2 | JCGM 106:2012, section 8
      A | A | acceptance limit | T + w | dBuV | 2 | JCGM 106:2012, section 8
    `,
  compute: (inputs) => {
    const lowerLimit = input(inputs, 'limitDbuv');
    const decision = decideConformity({
      reading: lowerLimit,
      standardUncertainty: input(inputs, 'standardUncertaintyDb'),
      lowerLimit,
      rule: { kind: 'guard-band', guardBandRatio: input(inputs, 'guardBandFactor') / 2 },
    });
    return { w: decision.guardBand, A: decision.acceptance.from ?? Number.NaN };
  },
};

const VERDICT_GIVENS = [
  given('readingDbuv', 'y', 'y', 'reading', 'dBuV', READING),
  LIMIT,
  UNCERTAINTY,
];
const DISTANCE = step(
  'z',
  'z',
  'distance from the limit in standard uncertainties',
  '(y - T) / u',
  '',
  3,
  'definition',
);

/** Distance and probability for a lower limit; without degrees of freedom the error is normal. */
function conformity(inputs: Readonly<Record<string, number>>, freedom: object) {
  const standardUncertainty = input(inputs, 'standardUncertaintyDb');
  const decision = decideConformity({
    reading: input(inputs, 'readingDbuv'),
    standardUncertainty,
    lowerLimit: input(inputs, 'limitDbuv'),
    ...freedom,
  });
  return {
    z: decision.margin / standardUncertainty,
    p: 100 * decision.conformityProbabilityRatio,
  };
}

const PROBABILITY: SolutionPlan = {
  name: 'conformity-probability',
  title: 'How probable is it that the level conforms?',
  part: 'acceptance',
  functionName: 'decideConformity',
  givens: VERDICT_GIVENS,
  constants: [],
  steps: [
    DISTANCE,
    ...stepRows`
      p | p
        | probability that the true level is above the limit (normal distribution, from its table)
        | 100 * normal(z) | percent | 1 | JCGM 106:2012, section 7
    `,
  ],
  compute: (inputs) => conformity(inputs, {}),
};

const FEW_READINGS: SolutionPlan = {
  name: 'conformity-of-few-readings',
  title: 'How probable is it that the level conforms, by the mean of few readings?',
  part: 'acceptance',
  functionName: 'decideConformity',
  givens: [
    ...VERDICT_GIVENS,
    given('degreesOfFreedom', 'n', '\\nu', 'degrees of freedom of the uncertainty', '', [2, 30, 1]),
  ],
  constants: [],
  steps: [
    DISTANCE,
    ...stepRows`
      p | p | probability that the true level is above the limit (Student’s t, from its table)
        | 100 * student(z, n) | percent | 1 | JCGM 106:2012, section 7, with JCGM 100:2008, G.3
    `,
  ],
  compute: (inputs) => conformity(inputs, { degreesOfFreedom: input(inputs, 'degreesOfFreedom') }),
};

/** Plans for a verdict. */
export const VERDICT_PLANS: readonly SolutionPlan[] = [
  THREE_READINGS,
  GUARD_BAND,
  PROBABILITY,
  FEW_READINGS,
];
