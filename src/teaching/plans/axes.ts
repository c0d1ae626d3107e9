/** Plans of worked solutions for two axes peaked in turn. */

import { alternatingSearch } from '../../peaking/index.js';
import { given, input, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const QUADRATIC = 'own derivation: the lobe seen along the axes of the mount';
const DESCENT = 'own derivation: least loss along one axis (coordinate descent)';

const LOBE_GIVENS = [
  given('narrowDeg', 'wn', 'w_n', 'beamwidth along the narrow axis', 'deg', [1, 1.8, 0.1]),
  given('wideDeg', 'ww', 'w_w', 'beamwidth along the wide axis', 'deg', [1.9, 3, 0.1]),
  given(
    'narrowAxisDeg',
    'a',
    '\\alpha',
    'narrow axis from the first axis of the mount towards the second',
    'deg',
    [-60, 60, 2],
  ),
];

const LOBE_STEPS = stepRows`
      H11 | H_{11} | fall along the first axis | 12 * (cos(a)^2 / wn^2 + sin(a)^2 / ww^2)
        | dB/deg² | 3 | ${QUADRATIC}
      H22 | H_{22} | fall along the second axis | 12 * (sin(a)^2 / wn^2 + cos(a)^2 / ww^2)
        | dB/deg² | 3 | ${QUADRATIC}
      H12 | H_{12} | fall that both share | 12 * sin(a) * cos(a) * (1 / wn^2 - 1 / ww^2) | dB/deg²
        | 3 | ${QUADRATIC}
      c | c | coupling of the axes | H12 / sqrt(H11 * H22) | | 3 | definition
    `;

/** Most loss that a search may be told to stop at: only the loss at the start is asked for. */
const NO_SEARCH_DB = 60;

const lobeOf = (inputs: Readonly<Record<string, number>>) => ({
  beamwidthDeg: [input(inputs, 'narrowDeg'), input(inputs, 'wideDeg')] as const,
  narrowAxisDeg: input(inputs, 'narrowAxisDeg'),
});

/** The fall along both axes, as the library's losses one degree from the peak, and the coupling. */
function fallOf(inputs: Readonly<Record<string, number>>) {
  const at = (first: number, second: number) =>
    alternatingSearch({
      ...lobeOf(inputs),
      startDeg: [first, second],
      targetLossDb: NO_SEARCH_DB,
    });
  const H11 = at(1, 0).startLossDb;
  const H22 = at(0, 1).startLossDb;
  const both = at(1, 1);
  return {
    ratio: both.lossRatioPerStep,
    values: { H11, H22, H12: (both.startLossDb - H11 - H22) / 2, c: both.couplingRatio },
  };
}

const COUPLING: SolutionPlan = {
  name: 'axis-coupling',
  title: 'How much of the loss does each further peaking of an axis leave?',
  part: 'peaking',
  functionName: 'alternatingSearch',
  givens: LOBE_GIVENS,
  constants: [],
  steps: [
    ...LOBE_STEPS,
    ...stepRows`
      q | q | loss left by each further peaking | 100 * c^2 | percent | 1 | ${DESCENT}
    `,
  ],
  compute: (inputs) => {
    const { ratio, values } = fallOf(inputs);
    return { ...values, q: 100 * ratio };
  },
};

const BOTH_AXES: SolutionPlan = {
  name: 'loss-after-both-axes',
  title: 'What is lost after both axes were peaked once?',
  part: 'peaking',
  functionName: 'alternatingSearch',
  givens: [
    ...LOBE_GIVENS,
    given('firstOffsetDeg', 'x', 'x', 'start from the peak, first axis', 'deg', [-1.2, 1.2, 0.1]),
    given('secondOffsetDeg', 'y', 'y', 'start from the peak, second axis', 'deg', [-1.2, 1.2, 0.1]),
  ],
  constants: [],
  steps: [
    ...LOBE_STEPS,
    ...stepRows`
      L0 | L_0 | loss at the start | H11 * x^2 + 2 * H12 * x * y + H22 * y^2 | dB | 3
        | ${QUADRATIC}
      x1 | x_1 | first axis after its peaking | -H12 * y / H11 | deg | 3 | ${DESCENT}
      L1 | L_1 | loss after the first axis | (H22 - H12^2 / H11) * y^2 | dB | 3 | ${DESCENT}
      L2 | L_2 | loss after the second axis | c^2 * L1 | dB | 3 | ${DESCENT}
    `,
  ],
  compute: (inputs) => {
    const { values } = fallOf(inputs);
    const search = alternatingSearch({
      ...lobeOf(inputs),
      startDeg: [input(inputs, 'firstOffsetDeg'), input(inputs, 'secondOffsetDeg')],
      targetLossDb: 1e-9,
    });
    const [first, second] = search.steps;
    if (!first || !second) return 'one-axis-is-enough';
    return {
      ...values,
      L0: search.startLossDb,
      x1: first.offsetDeg[0],
      L1: first.lossDb,
      L2: second.lossDb,
    };
  },
};

/** Plans for two axes. */
export const AXES_PLANS: readonly SolutionPlan[] = [COUPLING, BOTH_AXES];
