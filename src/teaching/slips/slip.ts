/** What a slip is, and short forms for writing one. */

import { valueNamed } from '../../numeric/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import { rebuilt } from '../formula/trees.js';
import type { SolutionGiven, SolutionPlan } from '../plans/plan.js';
import type { Change } from '../solution/evaluate.js';
import { stepTree } from '../solution/stepTree.js';
import { literalValue, symbolsOf } from './tree.js';

/** How people err: the taxonomy of slips. */
export type SlipGroup =
  | 'direction'
  | 'constant'
  | 'unit'
  | 'decibel'
  | 'item'
  | 'function'
  | 'quantity'
  | 'rule';

/** A wrong variant of a plan: what is changed, and what went wrong where the slip's own sentence is too general. */
export interface SlipChange extends Change {
  /** What went wrong in this variant, naming the item: `Left out: splitter loss.` */
  readonly says?: string;
}

/** A slip: its name, what it is in a sentence, and the wrong variants it makes of a plan. */
export interface Slip {
  /** Name in kebab-case words. */
  readonly name: string;
  /** Where it belongs among the ways people err. */
  readonly group: SlipGroup;
  /** What went wrong, said to the learner. */
  readonly explanation: string;
  /** How much it explains: a slip of its own, one that can happen at any item, or little; `own` by default. */
  readonly reach?: 'own' | 'item' | 'vague';
  /** The wrong variants for a plan; none where the slip cannot happen. */
  readonly changes: (plan: SolutionPlan) => readonly SlipChange[];
}

/** Changes givens and constants by symbol. */
export const set = (
  values: Readonly<Record<string, (value: number) => number>>,
  says?: string,
): SlipChange => ({
  givens: (before) => ({
    ...before,
    ...Object.fromEntries(
      Object.entries(values).map(([symbol, change]) => [
        symbol,
        change(valueNamed(before, symbol)),
      ]),
    ),
  }),
  ...(says === undefined ? {} : { says }),
});

/** Puts the values of two symbols in each other's place. */
export const exchanged = (a: string, b: string, says?: string): SlipChange => ({
  givens: (before) => ({ ...before, [a]: valueNamed(before, b), [b]: valueNamed(before, a) }),
  ...(says === undefined ? {} : { says }),
});

/** Changes for every given that fits. */
export const givensThat = (
  plan: SolutionPlan,
  fits: (given: SolutionGiven) => boolean,
  change: (value: number) => number,
  says?: (given: SolutionGiven) => string,
): readonly SlipChange[] =>
  plan.givens.filter(fits).map((given) => set({ [given.symbol]: change }, says?.(given)));

/** A rule for nodes: another node, or the same one where it does not apply. */
export type NodeRule = (node: FormulaNode, plan: SolutionPlan) => FormulaNode;

/** Steps, by symbol, whose tree a rule changes. */
const touchedBy = (plan: SolutionPlan, rule: NodeRule): readonly string[] =>
  plan.steps
    .filter((step) => {
      const tree = stepTree(step);
      return rebuilt(tree, (node) => rule(node, plan)) !== tree;
    })
    .map(({ symbol }) => symbol);

/** A rule applied to all steps, and to each step alone where it fits several. */
export const trees = (plan: SolutionPlan, rule: NodeRule): readonly SlipChange[] => {
  const touched = touchedBy(plan, rule);
  const applied = (only?: string): SlipChange => ({
    tree: (tree, step) =>
      only === undefined || step.symbol === only ? rebuilt(tree, (node) => rule(node, plan)) : tree,
  });
  if (touched.length === 0) return [];
  return [applied(), ...(touched.length > 1 ? touched.map(applied) : [])];
};

/** Whether something is an angle that only serves to bring another into its range. */
export const isTurn = (node: FormulaNode): boolean =>
  [0, 90, 180, 360].includes(literalValue(node) ?? Number.NaN);

/** Meaning of a symbol of a plan. */
const meaningOf = (plan: SolutionPlan, symbol: string): string | undefined =>
  [...plan.givens, ...plan.constants, ...plan.steps].find((each) => each.symbol === symbol)
    ?.meaning ?? undefined;

/** What a part of a formula is called: its meaning, that of what it is made of, or the number itself. */
export function calledBy(node: FormulaNode, plan: SolutionPlan): string {
  const number = literalValue(node);
  if (number !== undefined) return String(number);
  const symbols = symbolsOf(node);
  const constants = new Set(plan.constants.map(({ symbol }) => symbol));
  const told =
    symbols.find((each) => !constants.has(each) && meaningOf(plan, each) !== undefined) ??
    symbols.find((each) => meaningOf(plan, each) !== undefined);
  if (told === undefined) return symbols[0] ?? 'number';
  const meaning = meaningOf(plan, told) as string;
  return symbols.length === 1 && node.type === 'Identifier' ? meaning : `term with ${meaning}`;
}

/** The last step of a plan. */
export const lastStep = (plan: SolutionPlan) => {
  const step = plan.steps[plan.steps.length - 1];
  if (step === undefined) throw new Error('a plan has steps');
  return step;
};

/** A change of the answer alone. */
export const answered = (answer: NonNullable<Change['answer']>, says?: string): SlipChange => ({
  answer,
  ...(says === undefined ? {} : { says }),
});
