/** Plans of worked solutions for two suspects and one observation: Bayes's rule in odds. */

import {
  causeRanges,
  causeShares,
  checkLogLikelihood,
  type Hypothesis,
  logPriors,
  type Result,
} from '../../acceptance/internal.js';
import { constant, given, input, step, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const BAYES = 'Bayes’s rule: odds times likelihood ratio';

const PRIORS = [
  given('priorFirst', 'a', 'a', 'weight of the first cause before', '', [10, 60, 5]),
  given('priorSecond', 'b', 'b', 'weight of the second cause before', '', [10, 60, 5]),
];
const ODDS = step('q', 'q', 'odds of the first over the second, after', 'a / b * r', '', 3, BAYES);

const suspect = (cause: Hypothesis['cause']): Hypothesis => ({
  cause,
  location: null,
  weight: 1,
  scatter: 'plan',
  parameters: {},
  change: () => undefined,
});

/** Share of the first of two causes, 0 to 1, by the library's search of causes. */
function firstShare(inputs: Readonly<Record<string, number>>, logs: readonly [number, number]) {
  const hypotheses = [suspect('mast-leaning'), suspect('mispointed')];
  const ranges = causeRanges(hypotheses);
  const prior = {
    'mast-leaning': input(inputs, 'priorFirst'),
    mispointed: input(inputs, 'priorSecond'),
  } as Parameters<typeof logPriors>[2];
  const { shares } = causeShares(
    hypotheses,
    ranges,
    logPriors(hypotheses, ranges, prior),
    Float64Array.from(logs),
  );
  return shares.find(({ cause }) => cause === 'mast-leaning')?.share ?? Number.NaN;
}

const TWO_SUSPECTS: SolutionPlan = {
  name: 'two-suspects',
  title: 'Two causes, one more observation: how probable is the first now?',
  part: 'acceptance',
  functionName: 'rankCauses',
  givens: [
    ...PRIORS,
    given(
      'likelihoodRatio',
      'r',
      'r',
      'how many times likelier the first cause makes what was seen than the second',
      '',
      [0.2, 12, 0.2],
    ),
    {
      ...given('othersPercent', 'v', 'v', 'left to all other causes, after', 'percent', [0, 20, 1]),
      otherwise: 0,
    },
  ],
  constants: [],
  steps: [
    ODDS,
    ...stepRows`
      p | p | probability of the first cause | (100 - v) * q / (1 + q) | percent | 1
        | odds as a share
    `,
  ],
  compute: (inputs) => {
    const ratio = input(inputs, 'likelihoodRatio');
    const share = firstShare(inputs, [Math.log(ratio), 0]);
    return {
      q: (input(inputs, 'priorFirst') / input(inputs, 'priorSecond')) * ratio,
      p: (100 - input(inputs, 'othersPercent')) * share,
    };
  },
};

/** A level held to the mast under either cause. */
const LEAN = 'share of a reading so far from this';
const WILD = 0.001;

const MAST_LEAN: SolutionPlan = {
  name: 'lean-or-mispointed',
  title: 'A level was held to the mast: how probable is it that the mast leans?',
  part: 'acceptance',
  functionName: 'rankCauses',
  givens: [
    given('priorFirst', 'a', 'a', 'weight of a leaning mast before', '', [10, 60, 5]),
    given('priorSecond', 'b', 'b', 'weight of a mispointed antenna before', '', [10, 60, 5]),
    given('leanDeg', 'y', 'y', 'lean as read', 'deg', [0.2, 1.4, 0.1]),
    given('leaningDeg', 'm1', 'm_1', 'lean if the mast leans', 'deg', [0.8, 1.6, 0.1]),
    given('plumbDeg', 'm2', 'm_2', 'lean read off a plumb mast', 'deg', [0.1, 0.4, 0.1]),
    given('scatterDeg', 's', 's', 'standard deviation of the level', 'deg', [0.3, 0.6, 0.1]),
  ],
  constants: [
    constant('g', 'g', 'share of wild readings allowed for', WILD, '', 'practice of the trade'),
    constant('h', 'h', 'share of sound ones', 0.995, '', 'practice of the trade'),
  ],
  steps: [
    step(
      'e1',
      'e_1',
      `${LEAN}, mast leaning`,
      'exp(0 - ((y - m1) / s)^2 / 2)',
      '',
      4,
      'normal distribution, without its common factor',
    ),
    step(
      'e2',
      'e_2',
      `${LEAN}, antenna mispointed`,
      'exp(0 - ((y - m2) / s)^2 / 2)',
      '',
      4,
      'normal distribution, without its common factor',
    ),
    ...stepRows`
      r | r | likelihood ratio | (h * e1 + g) / (h * e2 + g) | | 3 | definition
    `,
    ODDS,
    ...stepRows`
      p | p | probability that the mast leans | 100 * q / (1 + q) | percent | 1 | odds as a share
    `,
  ],
  compute: (inputs) => {
    const uncertainty = input(inputs, 'scatterDeg');
    const result: Result = { kind: 'number', value: input(inputs, 'leanDeg'), uncertainty };
    const column = {
      mean: Float64Array.of(input(inputs, 'leaningDeg'), input(inputs, 'plumbDeg')),
      second: new Float64Array(2),
      kind: 'number',
      logs: () => [],
    } as const;
    const logs = [0, 1].map((cause) => checkLogLikelihood(result, column, cause)) as [
      number,
      number,
    ];
    const shape = (log: number) => (Math.exp(log) * uncertainty - WILD) / 0.995;
    const r = Math.exp(logs[0] - logs[1]);
    return {
      e1: shape(logs[0]),
      e2: shape(logs[1]),
      r,
      q: (input(inputs, 'priorFirst') / input(inputs, 'priorSecond')) * r,
      p: 100 * firstShare(inputs, logs),
    };
  },
};

/** Plans for two suspects. */
export const SUSPECT_PLANS: readonly SolutionPlan[] = [TWO_SUSPECTS, MAST_LEAN];
