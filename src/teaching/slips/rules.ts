/** Slips against the rules of acceptance, probability and of finding the peak. */

import { valueNamed } from '../../numeric/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import { binary, call, functionOf, literal } from '../formula/trees.js';
import { answered, givensThat, lastStep, type Slip, set, trees } from './slip.js';
import { callArguments, literalValue, sidesOf, symbolName } from './tree.js';

/** Odds as they stand for the share x / (1 + x). */
function oddsForShare(node: FormulaNode): FormulaNode {
  const parts = sidesOf(node);
  const below = parts?.operator === '/' ? sidesOf(parts.right) : undefined;
  const share =
    below?.operator === '+' &&
    literalValue(below.left) === 1 &&
    symbolName(below.right) !== undefined;
  return parts && share ? parts.left : node;
}

/** The slips. */
export const RULE_SLIPS: readonly Slip[] = [
  {
    name: 'expanded-for-standard',
    group: 'rule',
    explanation: 'The expanded uncertainty (k = 2) stands where the standard one belongs.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => /standardUncertainty/i.test(name),
        (value) => value * 2,
      ),
  },
  {
    name: 'prior-left-out',
    group: 'rule',
    explanation:
      'What was known before the observation was left out: the likelihood ratio alone is no probability.',
    changes: (plan) => {
      const priors = plan.givens.filter(({ name }) => /^prior/.test(name));
      return priors.length > 0
        ? [set(Object.fromEntries(priors.map(({ symbol }) => [symbol, () => 1])))]
        : [];
    },
  },
  {
    name: 'odds-for-probability',
    group: 'rule',
    explanation: 'Odds are no probability: a share is the odds over one and the odds.',
    changes: (plan) => trees(plan, oddsForShare),
  },
  {
    name: 'normal-for-student',
    group: 'rule',
    explanation:
      'The normal distribution was taken: with few readings the spread itself is uncertain, and Student’s t belongs there.',
    changes: (plan) =>
      trees(plan, (node) =>
        functionOf(node) === 'student' ? call('normal', ...callArguments(node).slice(0, 1)) : node,
      ),
  },
  {
    name: 'one-off',
    group: 'rule',
    explanation:
      'One too many or too few was counted: degrees of freedom are one less than the readings.',
    changes: (plan) =>
      [1, -1].flatMap((more) =>
        givensThat(
          plan,
          ({ name }) => name === 'degreesOfFreedom',
          (value) => value + more,
        ),
      ),
  },
  {
    name: 'population-deviation',
    group: 'rule',
    explanation:
      'The sum of squares was divided by the number of readings; the mean was taken from the same readings, so it is one less.',
    changes: () => [
      {
        tree: (tree, step) => {
          const [under] =
            /^standard deviation/.test(step.meaning) && functionOf(tree) === 'sqrt'
              ? callArguments(tree)
              : [];
          const parts = under && sidesOf(under);
          const count = parts && literalValue(parts.right);
          return parts?.operator === '/' && count !== undefined
            ? call('sqrt', binary('/', parts.left, literal(count + 1)))
            : tree;
        },
      },
    ],
  },
  {
    name: 'reduction-left-out',
    group: 'rule',
    explanation:
      'Specific attenuation times the whole slant path: heavy rain is small, so that it fills only a part of the path.',
    changes: (plan) =>
      ['Ls', 'g'].every((symbol) => plan.steps.some((step) => step.symbol === symbol))
        ? [
            answered((_, values) => valueNamed(values, 'g') * valueNamed(values, 'Ls')),
            { value: (value, step) => (step.symbol === 'v' || step.symbol === 'r' ? 1 : value) },
          ]
        : [],
  },
  {
    name: 'backlash-forgotten',
    group: 'rule',
    explanation: 'The backlash was forgotten: turning back begins with turns that move nothing.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => name === 'backlashTurns',
        () => 0,
      ),
  },
  {
    name: 'half-way-anyway',
    group: 'rule',
    explanation:
      'Half way back is the peak only between equal levels; here the peak lies nearer to the higher one.',
    changes: (plan) =>
      lastStep(plan).unit === 'turns'
        ? plan.givens
            .filter(({ name }) => name === 'turnsBack')
            .map(({ symbol }) => answered((_, values) => valueNamed(values, symbol) / 2))
        : [],
  },
];
