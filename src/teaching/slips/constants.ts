/** Slips of constants: another one than the formula takes, and the radius for the diameter. */

import { valueNamed } from '../../numeric/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import { literal } from '../formula/trees.js';
import type { SolutionConstant, SolutionPlan } from '../plans/plan.js';
import { constantsOf, middleInputs } from '../solution/evaluate.js';
import { stepTree } from '../solution/stepTree.js';
import { givensThat, type Slip, type SlipChange, set } from './slip.js';
import { literalValue, placesOf } from './tree.js';

/** Constants by their meaning, with what people take instead. */
const CONSTANTS: readonly (readonly [meaning: RegExp, instead: readonly number[]])[] = [
  [/^loss at 1 GHz and 1 km/, [32.4478, 32.45, 32.4, 92.4, 92.5]],
  [/^radius of the Earth|semi-major axis/, [6371, 6400, 6356.752, 12756.274]],
  [/^reference temperature|temperature of the feed/, [300, 273, 273.15, 293, 293.15, 288]],
  [/mean radiating temperature/, [290, 260, 273, 280, 300]],
  [/cosmic background/, [3, 4, 2.73]],
  [/one-sided 95 %/, [1.96, 2, 1.28, 1.2816, 2.326, 3, 1.65]],
  [/^impedance/, [50, 60, 100, 300]],
  [/reference bandwidth/, [0.004, 0.4, 1, 0.036]],
  [/acceleration of gravity/, [10, 9.8]],
  [/density of air/, [1, 1.2, 1.225, 1.29, 1.3]],
  [/force coefficient/, [1.2, 1.4, 1.5, 2]],
  [/safety factor/, [1.2, 1.25, 1.3, 2]],
  [/Boltzmann/, [228.6, -228, -198.6]],
  // 10 log of 75 over 50 less: the antenna at 50 ohm.
  [/^matched antenna .* 75 ohm/, [29.77371]],
  [/Young/, [70e9, 200e9, 2.1e5]],
];

/** Numbers of formulas, with what people take instead. */
const NUMBERS: Readonly<Record<string, readonly number[]>> = {
  70: [50, 57.3, 58, 58.4, 58.8, 60, 65, 66, 68, 72, 75, 80],
  4: [2],
  12: [3, 6, 10, 24],
  24: [12, 6, 48],
  25: [20, 10, 30],
  29: [32, 27, 26, 36],
  90: [120, 60, 88.239],
  0.36: [0.5, 0.3, 0.6, 36],
  0.65: [0.55, 0.6, 0.7],
  10.6: [9.75],
  40: [20, 10],
  64: [32, 16],
};

/** Local oscillators of two-band converters and others, as people mix them up. */
const OSCILLATORS = [9.75, 10, 10.25, 10.6, 10.75, 11.3, 5.15] as const;

const whole = (value: number): string => String(Number(value.toPrecision(8)));
const told = (taken: number, right: number, meaning: string): string =>
  `Another constant was taken, ${whole(taken)} in place of ${whole(right)}: ${meaning}.`;

function otherConstants(plan: SolutionPlan): readonly SlipChange[] {
  const known: readonly SolutionConstant[] = plan.constants;
  return known.flatMap(({ symbol, meaning, value }) =>
    (CONSTANTS.find(([pattern]) => pattern.test(meaning))?.[1] ?? [])
      .filter((instead) => instead !== value)
      .map((instead) => set({ [symbol]: () => instead }, told(instead, value, meaning))),
  );
}

function otherNumbers(plan: SolutionPlan): readonly SlipChange[] {
  return plan.steps.flatMap((at) =>
    placesOf(stepTree(at)).flatMap(({ node, put, above }) => {
      const value = literalValue(node);
      if (value === undefined || inTurn(above)) return [];
      return (NUMBERS[String(value)] ?? []).map((instead): SlipChange => {
        const changed = put(literal(instead));
        return {
          step: at.symbol,
          tree: (tree, step) => (step === at ? changed : tree),
          says: told(instead, value, at.meaning),
        };
      });
    }),
  );
}

/** Whether a number only brings an angle into its range. */
const inTurn = (above: readonly FormulaNode[]) =>
  above.some((node) => JSON.stringify(node).includes('"mod"'));

/** The pair of k or alpha of one polarization for both. */
function onePolarization(plan: SolutionPlan): readonly SlipChange[] {
  const has = (symbol: string) =>
    [...plan.constants, ...(plan.lookedUp ? constantsOf(plan, middleInputs(plan)) : [])].some(
      (each) => each.symbol === symbol,
    );
  if (!['kH', 'kV', 'aH', 'aV'].every(has)) return [];
  return ['H', 'V'].map((one) => ({
    givens: (values) => ({
      ...values,
      kH: valueNamed(values, `k${one}`),
      kV: valueNamed(values, `k${one}`),
      aH: valueNamed(values, `a${one}`),
      aV: valueNamed(values, `a${one}`),
    }),
  }));
}

/** The slips. */
export const CONSTANT_SLIPS: readonly Slip[] = [
  {
    name: 'altitude-for-radius',
    group: 'constant',
    explanation:
      'The height of the orbit above the ground (35 786 km) stands where its radius belongs (42 164 km).',
    changes: (plan) =>
      plan.constants
        .filter(({ meaning }) => meaning === 'radius of the orbit')
        .flatMap(({ symbol }) => [
          set({ [symbol]: (value) => value - 6378.137 }),
          set({ [symbol]: () => 36_000 }),
        ]),
  },
  {
    name: 'altitude-for-range',
    group: 'constant',
    explanation:
      'This is the height of the orbit above the ground; the range is that only right below the satellite.',
    changes: (plan) =>
      plan.name === 'slant-range'
        ? [{ answer: () => 35_786 }, { answer: () => 36_000 }, { answer: () => 42_164 }]
        : [],
  },
  {
    name: 'other-constant',
    group: 'constant',
    explanation: 'Another constant was taken than the one given.',
    changes: (plan) => [
      ...otherConstants(plan),
      ...otherNumbers(plan),
      ...plan.givens
        .filter(({ name }) => name === 'localOscillatorGHz')
        .flatMap(({ symbol, meaning }) =>
          OSCILLATORS.map((other) =>
            set({ [symbol]: () => other }, `Another value was taken, ${other}: ${meaning}.`),
          ),
        ),
    ],
  },
  {
    name: 'one-polarization',
    group: 'constant',
    explanation: 'The coefficients of one polarization were taken for both.',
    changes: onePolarization,
  },
  {
    name: 'radius-for-diameter',
    group: 'constant',
    explanation: 'The radius stands where the diameter belongs.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => /diameterM$/i.test(name),
        (value) => value / 2,
      ),
  },
  {
    name: 'diameter-for-radius',
    group: 'constant',
    explanation: 'The diameter stands where the radius belongs.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => /diameterM$/i.test(name),
        (value) => value * 2,
      ),
  },
];
