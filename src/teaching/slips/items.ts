/** Slips at the items of a sum or product: forgotten, counted twice, with the sign turned, above for below the line. */

import type { FormulaNode } from '../formula/parse.js';
import { binary, functionOf, identifier, literal } from '../formula/trees.js';
import type { PlanStep, SolutionPlan } from '../plans/plan.js';
import { stepTree } from '../solution/stepTree.js';
import { calledBy, isTurn, type Slip, type SlipChange, set, trees } from './slip.js';
import {
  callArguments,
  factorsOf,
  literalValue,
  type Part,
  type Place,
  placesOf,
  productOf,
  sidesOf,
  sumOf,
  symbolName,
  termsOf,
} from './tree.js';

const ADDS = ['+', '-'];
const MULTIPLIES = ['*', '/'];

/** The widest sums or products of a tree: those not part of a wider one. */
function widest(tree: FormulaNode, operators: readonly string[]): readonly Place[] {
  return placesOf(tree).filter(({ node, above: [parent] }) => {
    const inside = parent && operators.includes(sidesOf(parent)?.operator ?? '');
    return operators.includes(sidesOf(node)?.operator ?? '') && !inside;
  });
}

/** A step's tree exchanged for another one. */
const inStep = (step: PlanStep, changed: FormulaNode, says: string): SlipChange => ({
  step: step.symbol,
  tree: (tree, at) => (at.symbol === step.symbol ? changed : tree),
  says,
});

/** Whether a term only brings an angle into its range, or begins `0 - x`. */
const idle = ({ node }: Part) => isTurn(node);

type Edit = (parts: readonly Part[], at: number) => readonly Part[];
const forgotten: Edit = (parts, at) => parts.filter((_, each) => each !== at);
const twice: Edit = (parts, at) => [...parts, parts[at] as Part];
const turned: Edit = (parts, at) =>
  parts.map((part, each) => (each === at ? { ...part, sign: -part.sign as 1 | -1 } : part));

/** An edit at every item of every sum or product of a plan. */
function edited(
  plan: SolutionPlan,
  operators: readonly string[],
  edit: Edit,
  says: (part: Part, told: string) => string,
): readonly SlipChange[] {
  const adds = operators === ADDS;
  return plan.steps.flatMap((step) =>
    widest(stepTree(step), operators).flatMap(({ node, put }) => {
      const parts = adds ? termsOf(node) : factorsOf(node);
      return parts.flatMap((part, at) => {
        if (adds && idle(part)) return [];
        const left = edit(parts, at);
        if (left.length === 0) return [];
        const changed = put(adds ? sumOf(left) : productOf(left));
        return [inStep(step, changed, says(part, calledBy(part.node, plan)))];
      });
    }),
  );
}

/** Two items of one sum, each forgotten or turned. */
function twoOfOneSum(plan: SolutionPlan): readonly TwoSlips[] {
  return plan.steps.flatMap((step) =>
    widest(stepTree(step), ADDS).flatMap(({ node, put }) => {
      const terms = termsOf(node);
      return terms.flatMap((first, i) =>
        terms.flatMap((second, j) => {
          if (i === j || idle(first) || idle(second) || terms.length < 3) return [];
          const tell = (part: Part, what: 'left' | 'turned') =>
            what === 'left'
              ? leftOut(calledBy(part.node, plan))
              : turnedRound(part, calledBy(part.node, plan));
          const both = (a: 'left' | 'turned', b: 'left' | 'turned'): TwoSlips => {
            const parts = terms.flatMap((part, at) => {
              const how = at === i ? a : at === j ? b : undefined;
              if (how === 'left') return [];
              return [how === 'turned' ? { ...part, sign: -part.sign as 1 | -1 } : part];
            });
            const name = (how: 'left' | 'turned') =>
              how === 'left' ? 'item-forgotten' : 'item-reversed';
            const changed = put(sumOf(parts));
            return {
              names: [name(a), name(b)],
              says: [tell(first, a), tell(second, b)],
              change: inStep(step, changed, ''),
            };
          };
          return i < j
            ? [both('left', 'left'), both('turned', 'turned'), both('left', 'turned')]
            : [both('left', 'turned')];
        }),
      );
    }),
  );
}

/** Two slips made at once: their names, what is said of each, and the change. */
interface TwoSlips {
  readonly names: readonly [string, string];
  readonly says: readonly [string, string];
  readonly change: SlipChange;
}

export { twoOfOneSum };

const leftOut = (told: string) => `Left out: ${told}.`;
const turnedRound = ({ sign }: Part, told: string) =>
  sign === 1 ? `Subtracted instead of added: ${told}.` : `Added instead of subtracted: ${told}.`;

/** Givens and constants that stand as a term of some sum: left out or turned wherever they stand. */
function everywhere(
  plan: SolutionPlan,
  change: (value: number) => number,
  says: (told: string) => string,
): readonly SlipChange[] {
  const terms = new Set(
    plan.steps.flatMap((step) =>
      placesOf(stepTree(step)).flatMap(({ node }) =>
        ADDS.includes(sidesOf(node)?.operator ?? '')
          ? termsOf(node).flatMap((term) =>
              factorsOf(term.node).flatMap((each) => symbolName(each.node) ?? []),
            )
          : [],
      ),
    ),
  );
  return [...plan.givens, ...plan.constants]
    .filter((each) => terms.has(each.symbol))
    .map((each) => set({ [each.symbol]: change }, says(each.meaning)));
}

/** Steps without a unit that are 1 where nothing happens: left out, they are 1. */
const neutral = (plan: SolutionPlan): readonly SlipChange[] => {
  const steps = plan.steps.filter(
    ({ unit, meaning }) => unit === '' && /reduction|adjustment|growth/.test(meaning),
  );
  const without = (symbols: readonly string[], says: string): SlipChange => ({
    value: (value, at) => (symbols.includes(at.symbol) ? 1 : value),
    says,
  });
  return [
    ...steps.map(({ symbol: name, meaning }) => without([name], leftOut(meaning))),
    ...(steps.length > 1
      ? [
          without(
            steps.map((each) => each.symbol),
            leftOut(steps.map(({ meaning }) => meaning).join(' and ')),
          ),
        ]
      : []),
  ];
};

/** `l / 100` left out: the loss of a length given for the loss of 100 m. */
function perHundred(plan: SolutionPlan): readonly SlipChange[] {
  return plan.steps.flatMap((step) =>
    widest(stepTree(step), MULTIPLIES).flatMap(({ node, put }) => {
      const factors = factorsOf(node);
      const hundred = factors.find(
        ({ node: each, sign }) => sign === -1 && literalValue(each) === 100,
      );
      const length = factors.find(({ node: each }) =>
        plan.givens.some(({ symbol: name, unit }) => unit === 'm' && name === symbolName(each)),
      );
      if (!hundred || !length) return [];
      const rest = factors.filter((each) => each !== hundred && each !== length);
      return [inStep(step, put(productOf(rest)), leftOut(`factor ${calledBy(length.node, plan)}`))];
    }),
  );
}

const isHalf = ({ node, sign }: Part) => sign === -1 && literalValue(node) === 2;

/** The slips. */
export const ITEM_SLIPS: readonly Slip[] = [
  {
    name: 'item-forgotten',
    group: 'item',
    explanation: 'An item was left out.',
    reach: 'item',
    changes: (plan) => [
      ...edited(plan, ADDS, forgotten, (_, told) => leftOut(told)),
      ...everywhere(plan, () => 0, leftOut),
      ...edited(
        plan,
        MULTIPLIES,
        (parts, at) => (isHalf(parts[at] as Part) ? [] : forgotten(parts, at)),
        (_, told) => leftOut(`factor ${told}`),
      ),
      ...perHundred(plan),
      ...neutral(plan),
      ...taken(plan),
    ],
  },
  {
    name: 'item-twice',
    group: 'item',
    explanation: 'An item was counted twice.',
    reach: 'item',
    changes: (plan) => [
      ...edited(plan, ADDS, twice, (_, told) => `Counted twice: ${told}.`),
      ...everywhere(
        plan,
        (value) => 2 * value,
        (told) => `Counted twice: ${told}.`,
      ),
    ],
  },
  {
    name: 'item-reversed',
    group: 'item',
    explanation: 'An item was added instead of subtracted, or the other way round.',
    reach: 'item',
    changes: (plan) => [
      ...edited(plan, ADDS, turned, turnedRound),
      ...everywhere(
        plan,
        (value) => -value,
        (told) => `With the sign turned: ${told}.`,
      ),
    ],
  },
  {
    name: 'gain-subtracted',
    group: 'item',
    explanation: 'A gain was subtracted; gains are positive and added.',
    changes: (plan) => termThat(plan, /\bgain\b/, 1),
  },
  {
    name: 'loss-added',
    group: 'item',
    explanation: 'A loss was added; losses are positive and subtracted.',
    changes: (plan) => termThat(plan, /\bloss|attenuation\b/, -1),
  },
  {
    name: 'guard-band-reversed',
    group: 'item',
    explanation:
      'The guard band was put on the wrong side of the limit: to accept, the reading must be better than the limit by it.',
    changes: (plan) => termThat(plan, /^guard band$/, 1),
  },
  {
    name: 'quotient-turned',
    group: 'item',
    explanation: 'A quotient was turned over, or multiplied where it divides.',
    reach: 'item',
    changes: (plan) => [
      ...trees(plan, quotientTurned),
      ...trees(plan, symbolsTurned),
      ...edited(plan, MULTIPLIES, turned, ({ sign }, told) =>
        sign === 1
          ? `Divided by instead of multiplied with: ${told}.`
          : `Multiplied with instead of divided by: ${told}.`,
      ),
    ],
  },
  {
    name: 'product-for-sum',
    group: 'item',
    explanation: 'Two items were multiplied where they are added.',
    reach: 'item',
    changes: (plan) =>
      trees(plan, (node) => {
        const parts = sidesOf(node);
        const plain = (each: FormulaNode | undefined) =>
          each !== undefined &&
          (symbolName(each) !== undefined || literalValue(each) !== undefined);
        return parts?.operator === '+' &&
          plain(parts.left) &&
          plain(parts.right) &&
          !isTurn(parts.right)
          ? binary('*', parts.left, parts.right)
          : node;
      }),
  },
  {
    name: 'item-under-root',
    group: 'item',
    explanation:
      'An item that is added plainly was squared and put under the root, or apart from what it belongs to.',
    changes: (plan) => [...underRoot(plan), ...squaredApart(plan)],
  },
  {
    name: 'sum-for-root-of-squares',
    group: 'item',
    explanation:
      'Independent items were added plainly: what varies on its own adds as the root of the squares.',
    changes: (plan) =>
      trees(plan, (node) => {
        const [under] = functionOf(node) === 'sqrt' ? callArguments(node) : [];
        const terms = under ? termsOf(under) : [];
        const bare = terms.map(({ node: each }) => {
          const power = sidesOf(each);
          return power?.operator === '**' && literalValue(power.right) === 2
            ? power.left
            : undefined;
        });
        return terms.length > 1 && bare.every((each) => each !== undefined)
          ? sumOf(bare.map((each) => ({ node: each as FormulaNode, sign: 1 as const })))
          : node;
      }),
  },
];

/** A quotient as a whole turned over. */
function quotientTurned(node: FormulaNode): FormulaNode {
  const parts = sidesOf(node);
  if (parts?.operator !== '/' || literalValue(parts.right) !== undefined) return node;
  return binary('/', parts.right, parts.left);
}

/** The quantities of a quotient turned over, its numbers left where they are: `70 * D / wl`. */
function symbolsTurned(node: FormulaNode): FormulaNode {
  if (sidesOf(node)?.operator !== '/') return node;
  const factors = factorsOf(node);
  return factors.some(({ node: each }) => literalValue(each) !== undefined)
    ? productOf(
        factors.map((each) =>
          literalValue(each.node) === undefined ? { ...each, sign: -each.sign as 1 | -1 } : each,
        ),
      )
    : node;
}

/** Terms called so, turned. */
function termThat(plan: SolutionPlan, what: RegExp, sign: 1 | -1): readonly SlipChange[] {
  return edited(plan, ADDS, turned, (part, told) =>
    part.sign === sign && what.test(told) && symbolName(part.node) !== undefined ? `!${told}` : '',
  )
    .filter(({ says }) => says?.startsWith('!'))
    .map(({ says: _, ...change }) => change);
}

/** A factor that multiplies a symbol by less than one: `1 - ...`, taken as it stands. */
function taken(plan: SolutionPlan): readonly SlipChange[] {
  return trees(plan, (node) => {
    const parts = sidesOf(node);
    return parts?.operator === '*' &&
      symbolName(parts.left) !== undefined &&
      sidesOf(parts.right)?.operator === '**'
      ? parts.left
      : node;
  });
}

/** `G + sqrt(W^2 + S^2)` as `sqrt(G^2 + W^2 + S^2)`. */
function underRoot(plan: SolutionPlan): readonly SlipChange[] {
  return trees(plan, (node) => {
    const parts = sidesOf(node);
    const [under] = parts && functionOf(parts.right) === 'sqrt' ? callArguments(parts.right) : [];
    return parts?.operator === '+' && under
      ? ({
          ...parts.right,
          arguments: [binary('+', binary('**', parts.left, literal(2)), under)],
        } as FormulaNode)
      : node;
  });
}

/** The square of a sum as the sum of the squares: `W = R + C` under a root as `R^2 + C^2`. */
function squaredApart(plan: SolutionPlan): readonly SlipChange[] {
  const sums = new Map(
    plan.steps.flatMap((step) => {
      const terms = termsOf(stepTree(step));
      return terms.length === 2 && terms.every(({ node, sign }) => sign === 1 && symbolName(node))
        ? [[step.symbol, terms] as const]
        : [];
    }),
  );
  return trees(plan, (node) => {
    const power = sidesOf(node);
    const terms =
      power && literalValue(power.right) === 2 ? sums.get(symbolName(power.left) ?? '') : undefined;
    return power?.operator === '**' && terms
      ? sumOf(
          terms.map(({ node: each }) => ({
            node: binary('**', identifier(symbolName(each) as string), literal(2)),
            sign: 1 as const,
          })),
        )
      : node;
  });
}
