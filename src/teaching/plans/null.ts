/** Plans of worked solutions for the null of the cross-polar level. */

import { bracketNull } from '../../peaking/index.js';
import { given, input, step, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const PLACES = [
  given('firstDeg', 'x1', 'x_1', 'rotation at the first place', 'deg', [-40, -10, 0.5]),
  given('secondDeg', 'x2', 'x_2', 'rotation at the second place', 'deg', [6, 44, 0.5]),
];
const MIDDLE = step(
  'N',
  'N',
  'rotation of the null',
  '(x1 + x2) / 2',
  'deg',
  2,
  'equal levels lie on both sides of the null',
);

const NULL: SolutionPlan = {
  name: 'null-half-way',
  title: 'Where is the null between two rotations of equal cross-polar level?',
  part: 'peaking',
  functionName: 'bracketNull',
  givens: PLACES,
  constants: [],
  steps: [MIDDLE],
  compute: (inputs) => ({
    N: bracketNull({
      firstDeg: input(inputs, 'firstDeg'),
      secondDeg: input(inputs, 'secondDeg'),
    }).nullDeg,
  }),
};

const NULL_ISOLATION: SolutionPlan = {
  name: 'null-isolation',
  title:
    'Which isolation is left at least (error: that of the step and twice that of the flicker)?',
  part: 'peaking',
  functionName: 'bracketNull',
  givens: [
    ...PLACES,
    given('levelStepDb', 'q', 'q', 'step of the display', 'dB', [0.5, 2, 0.5]),
    given(
      'standardDeviationDb',
      's',
      's',
      'flicker, standard deviation of one reading',
      'dB',
      [0, 0.6, 0.1],
    ),
  ],
  constants: [],
  steps: stepRows`
      h | h | half the way | abs(x2 - x1) / 2 | deg | 2 | definition
      g | g | share of the tangent that one step is worth | (10^(q / 20) - 1) / (10^(q / 20) + 1)
        | | 4 | own derivation: tanh(q ln 10 / 40)
      d | d | largest error from the step | atan(tan(h) * g) | deg | 2
        | own derivation: level as 20 log of the sine
      f | f | twice what the flicker adds | 2 * sqrt(2) * s * 180 / pi * ln(10) / 40 * tan(h)
        | deg | 2 | own derivation: slope of the level on the flank
      t | t | error to reckon with | min(45, d + f) | deg | 2 | sum, at most 45 degrees
      I | I | isolation left at least | min(100, -20 * log(tan(t))) | dB | 1
        | definition of isolation, antenna ideal
    `,
  compute: (inputs) => {
    const ask = {
      firstDeg: input(inputs, 'firstDeg'),
      secondDeg: input(inputs, 'secondDeg'),
      levelStepDb: input(inputs, 'levelStepDb'),
    };
    const standardDeviationDb = input(inputs, 'standardDeviationDb');
    const { worstErrorDeg } = bracketNull(ask);
    if (worstErrorDeg === null) return 'blind';
    const h = Math.abs(ask.secondDeg - ask.firstDeg) / 2;
    // The flicker alone, from its standard uncertainty: two readings, twice that is reckoned with.
    const flicker = bracketNull({
      ...ask,
      levelStepDb: 0,
      standardDeviationDb,
    }).standardUncertaintyDeg;
    return {
      h,
      g: Math.tanh((ask.levelStepDb * Math.LN10) / 40),
      d: worstErrorDeg,
      f: 2 * flicker,
      t: Math.min(45, worstErrorDeg + 2 * flicker),
      I: bracketNull({ ...ask, standardDeviationDb }).isolationAtLeastDb,
    };
  },
};

/** Plans for the null. */
export const NULL_PLANS: readonly SolutionPlan[] = [NULL, NULL_ISOLATION];
