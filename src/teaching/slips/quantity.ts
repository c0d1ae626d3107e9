/** The wrong quantity returned: an earlier step, a given, the other part of a whole, the comma moved. */

import { valueNamed } from '../../numeric/columns.js';
import { identifier } from '../formula/trees.js';
import type { SolutionPlan } from '../plans/plan.js';
import { stepTree } from '../solution/stepTree.js';
import { answered, exchanged, lastStep, type Slip, type SlipChange } from './slip.js';
import { symbolsOf } from './tree.js';

/** Givens with the unit of the answer. */
const alike = (plan: SolutionPlan) =>
  plan.givens.filter(({ unit }) => unit === lastStep(plan).unit);

/** Pairs of givens in one unit, put in each other's place. */
function pairs(plan: SolutionPlan): readonly SlipChange[] {
  return plan.givens.flatMap((a, at) =>
    plan.givens
      .slice(at + 1)
      .filter(({ unit }) => unit === a.unit)
      .map((b) =>
        exchanged(a.symbol, b.symbol, `Put in each other’s place: ${a.meaning} and ${b.meaning}.`),
      ),
  );
}

/** Pairs of constants in one unit, put in each other's place. */
function constantPairs(plan: SolutionPlan): readonly SlipChange[] {
  return plan.constants.flatMap((a, at) =>
    plan.constants
      .slice(at + 1)
      .filter(({ unit }) => unit === a.unit)
      .map((b) =>
        exchanged(a.symbol, b.symbol, `Put in each other’s place: ${a.meaning} and ${b.meaning}.`),
      ),
  );
}

/** Steps that pass on the one quantity they begin with, as if there were nothing to compute: the field for the level. */
function passedOn(plan: SolutionPlan): readonly SlipChange[] {
  return plan.steps.slice(0, -1).flatMap((own, at) => {
    const symbols = [...new Set(symbolsOf(stepTree(own)))];
    const quantities = symbols.filter(
      (symbol) => !plan.constants.some((constant) => constant.symbol === symbol),
    );
    const earlier = quantities.filter((symbol) =>
      plan.steps.slice(0, at).some((step) => step.symbol === symbol),
    );
    const [only] = quantities.length === 1 ? quantities : earlier.length === 1 ? earlier : [];
    if (only === undefined || stepTree(own).type === 'Identifier') return [];
    const from = [...plan.givens, ...plan.steps].find(({ symbol }) => symbol === only);
    return [
      {
        tree: (tree, step) => (step.symbol === own.symbol ? identifier(only) : tree),
        says: `A step was left out: ${from?.meaning ?? only} stands where this belongs: ${own.meaning}.`,
      },
    ];
  });
}

/** The slips. */
export const QUANTITY_SLIPS: readonly Slip[] = [
  {
    name: 'step-for-answer',
    group: 'quantity',
    explanation: 'This is an earlier step, not yet the answer.',
    reach: 'item',
    changes: (plan) =>
      plan.steps
        .slice(0, -1)
        .map(({ symbol, meaning }) =>
          answered(
            (_, values) => valueNamed(values, symbol),
            `This is an earlier step, not yet the answer: ${meaning}.`,
          ),
        ),
  },
  {
    name: 'step-left-out',
    group: 'quantity',
    explanation: 'A step was left out: what it begins with was taken for what it gives.',
    reach: 'item',
    changes: passedOn,
  },
  {
    name: 'given-for-answer',
    group: 'quantity',
    explanation: 'This is a given, not the answer.',
    reach: 'item',
    changes: (plan) =>
      alike(plan).map(({ symbol, meaning }) =>
        answered(
          (_, values) => valueNamed(values, symbol),
          `This is a given, not the answer: ${meaning}.`,
        ),
      ),
  },
  {
    name: 'complement',
    group: 'quantity',
    explanation: 'This is the probability of the opposite: 100 percent less the right one.',
    changes: (plan) => (/probab/.test(lastStep(plan).meaning) ? [answered((p) => 100 - p)] : []),
  },
  {
    name: 'shares-exchanged',
    group: 'quantity',
    explanation: 'The two shares were exchanged: this is the other part of the whole.',
    changes: (plan) => [
      ...constantPairs(plan).map(({ says: _, ...change }) => change),
      ...(plan.givens.some(({ name }) => name === 'farLevelDbm')
        ? alike(plan).map(({ symbol }) =>
            answered((value, values) => valueNamed(values, symbol) - value),
          )
        : []),
    ],
  },
  {
    name: 'loss-for-level',
    group: 'quantity',
    explanation: 'This is what is lost on the way, not what is left.',
    changes: (plan) =>
      plan.givens
        .filter(({ name, unit }) => /sourceLevel/.test(name) && unit === lastStep(plan).unit)
        .flatMap(({ symbol }) => [
          answered((value, values) => valueNamed(values, symbol) - value),
          answered((value, values) => value - valueNamed(values, symbol)),
        ]),
  },
  {
    name: 'givens-exchanged',
    group: 'quantity',
    explanation: 'Two givens were put in each other’s place.',
    reach: 'item',
    changes: pairs,
  },
  {
    name: 'extra-item',
    group: 'quantity',
    explanation: 'Something was added that the question does not ask for.',
    reach: 'vague',
    changes: (plan) =>
      alike(plan).flatMap(({ symbol, meaning }) => [
        answered(
          (value, values) => value + valueNamed(values, symbol),
          `Added beyond what was asked for: ${meaning}.`,
        ),
      ]),
  },
  {
    name: 'decimal-point',
    group: 'quantity',
    explanation:
      'The digits are right and the decimal point is not: a factor of ten, a hundred or a thousand.',
    reach: 'vague',
    changes: () =>
      [0.001, 0.01, 0.1, 10, 100, 1000].map((factor) => answered((value) => value * factor)),
  },
];
