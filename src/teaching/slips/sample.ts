/** Slips with few readings and small samples: a spread for a deviation, the wrong factor, a sum of chances for a power. */

import { valueNamed } from '../../numeric/columns.js';
import { binary, literal } from '../formula/trees.js';
import type { SolutionPlan } from '../plans/plan.js';
import { stepTree } from '../solution/stepTree.js';
import { answered, lastStep, type Slip, type SlipChange, set, trees } from './slip.js';
import { literalValue, sidesOf, symbolName, symbolsOf } from './tree.js';

/** Readings that a standard deviation of a plan is of, by symbol. */
function readingsOf(plan: SolutionPlan): readonly string[] {
  const deviation = plan.steps.find(({ meaning }) => /^standard deviation/.test(meaning));
  const used = new Set(deviation ? symbolsOf(stepTree(deviation)) : []);
  return plan.givens.filter(({ symbol }) => used.has(symbol)).map(({ symbol }) => symbol);
}

/** Student's factor of a plan, to be taken with another number. */
const factors = (plan: SolutionPlan, instead: readonly number[], says?: string) =>
  plan.constants
    .filter(({ meaning }) => /^coverage factor for \d+ degrees of freedom/.test(meaning))
    .flatMap(({ symbol }) => instead.map((factor) => set({ [symbol]: () => factor }, says)));

/** `(1 - b)^n` as `1 - n * b`. */
function summedChances(plan: SolutionPlan): readonly SlipChange[] {
  const rule = (node: Parameters<typeof sidesOf>[0]) => {
    const power = sidesOf(node);
    const base = power?.operator === '**' ? sidesOf(power.left) : undefined;
    return power && base?.operator === '-' && literalValue(base.left) === 1
      ? binary('-', literal(1), binary('*', power.right, base.right))
      : node;
  };
  const changes = trees(plan, rule);
  const [none] = plan.steps.filter((step) => rule(stepTree(step)) !== stepTree(step));
  const first = none && sidesOf(rule(stepTree(none)));
  const product = first && sidesOf(first.right);
  const [count, share] = [product?.left, product?.right].map((node) => node && symbolName(node));
  return count && share && lastStep(plan).unit === 'percent'
    ? [
        ...changes,
        answered((_, values) => 100 * (1 - valueNamed(values, count) * valueNamed(values, share))),
      ]
    : changes;
}

/** The slips. */
export const SAMPLE_SLIPS: readonly Slip[] = [
  {
    name: 'range-for-deviation',
    group: 'rule',
    explanation:
      'The distance between the largest and the smallest reading, or half of it, was taken: how sure a mean is comes from the standard deviation.',
    changes: (plan) => {
      const readings = readingsOf(plan);
      const spread = (values: Readonly<Record<string, number>>) => {
        const all = readings.map((symbol) => valueNamed(values, symbol));
        return Math.max(...all) - Math.min(...all);
      };
      return readings.length < 2
        ? []
        : [answered((_, values) => spread(values) / 2), answered((_, values) => spread(values))];
    },
  },
  {
    name: 'normal-for-student',
    group: 'rule',
    explanation:
      'The factor of the normal distribution was taken: with few readings the spread itself is uncertain, and Student’s t belongs there.',
    changes: (plan) => factors(plan, [1.96, 2]),
  },
  {
    name: 'other-constant',
    group: 'constant',
    explanation:
      'Another factor of Student’s t was taken: that of other degrees of freedom, or of one side only.',
    // One and two sides of 95 % by degrees of freedom: JCGM 100:2008, table G.2, and one side from the same distribution.
    changes: (plan) => factors(plan, [2.92, 3.182, 3.1824, 12.706, 2.776]),
  },
  {
    name: 'product-for-power',
    group: 'rule',
    explanation:
      'The chances of all that were looked at were added: that none of them is bad is a product of as many shares, a power.',
    changes: summedChances,
  },
  {
    name: 'one-off',
    group: 'rule',
    explanation:
      'One too many was counted: beside the bad one there is one good one less than were looked at.',
    changes: (plan) =>
      trees(plan, (node) => {
        const power = sidesOf(node);
        const less = power?.operator === '**' ? sidesOf(power.right) : undefined;
        return power && less?.operator === '-' && literalValue(less.right) === 1
          ? binary('**', power.left, less.left)
          : node;
      }),
  },
];
