/** A plan's expressions evaluated one after the other: with full digits, rounded at each step, or changed by a slip. */

import { valueNamed } from '../../numeric/columns.js';
import { compileTree } from '../formula/expression.js';
import type { CompiledFormula } from '../formula/functions.js';
import type { FormulaNode } from '../formula/parse.js';
import type { PlanStep, SolutionConstant, SolutionPlan, SolutionValues } from '../plans/plan.js';
import { stepTree } from './stepTree.js';

/** What is changed against the plan. */
export interface Change {
  /** Inputs by symbol, changed before the first step. */
  readonly givens?: (givens: SolutionValues) => SolutionValues;
  /** A step's tree, changed before it is evaluated. */
  readonly tree?: (tree: FormulaNode, step: PlanStep) => FormulaNode;
  /** A step's value, changed after it is evaluated. */
  readonly value?: (value: number, step: PlanStep) => number;
  /** What is given for the answer in its stead, from the answer and all values by symbol. */
  readonly answer?: (answer: number, values: SolutionValues) => number;
  /** The step, by its symbol, whose tree is replaced as a whole; none for a rule that fits any tree. */
  readonly step?: string;
}

/** The constants of a plan and what is looked up for these inputs. */
export function constantsOf(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
): readonly SolutionConstant[] {
  return plan.lookedUp ? [...plan.constants, ...plan.lookedUp(inputs)] : plan.constants;
}

/** Givens and constants by symbol. */
export function startValues(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
): Record<string, number> {
  return Object.fromEntries([
    ...plan.givens.map(({ name, symbol }) => [symbol, valueNamed(inputs, name)]),
    ...constantsOf(plan, inputs).map(({ symbol, value }) => [symbol, value]),
  ]);
}

/** A plan with a change made ready: its formulas compiled once. */
export interface CompiledPlan {
  readonly plan: SolutionPlan;
  readonly change: Change;
  readonly trees: readonly FormulaNode[];
  readonly formulas: readonly CompiledFormula[];
}

/** Compiles a plan with a change; formulas that it leaves alone are taken from `unchanged`. */
export function compiledPlan(
  plan: SolutionPlan,
  change: Change = {},
  unchanged?: CompiledPlan,
): CompiledPlan {
  const symbols = [...plan.givens, ...plan.steps].map(({ symbol }) => symbol);
  const constants = plan.lookedUp
    ? constantsOf(plan, middleInputs(plan)).map(({ symbol }) => symbol)
    : plan.constants.map(({ symbol }) => symbol);
  const names = [...symbols, ...constants];
  const before = unchanged?.trees ?? plan.steps.map(stepTree);
  const trees = plan.steps.map((step, at) => {
    const tree = before[at] as FormulaNode;
    return change.tree?.(tree, step) ?? tree;
  });
  const formulas = trees.map((tree, at) =>
    unchanged && tree === before[at]
      ? (unchanged.formulas[at] as CompiledFormula)
      : compileTree(tree, names),
  );
  return { plan, change, trees, formulas };
}

/** Inputs in the middle of what exercises draw. */
export function middleInputs(plan: SolutionPlan): Readonly<Record<string, number>> {
  return Object.fromEntries(
    plan.givens.map(({ name, draw, otherwise }) => [name, otherwise ?? (draw.from + draw.to) / 2]),
  );
}

/** Values of all steps by symbol, from the values of givens and constants. */
export function evaluateCompiled(
  { plan, change, formulas }: CompiledPlan,
  start: SolutionValues,
  afterStep?: (value: number, step: PlanStep) => number,
): SolutionValues {
  const values: Record<string, number> = { ...(change.givens?.(start) ?? start) };
  let last = '';
  for (const [at, step] of plan.steps.entries()) {
    const value = (formulas[at] as CompiledFormula)(values);
    const changed = change.value?.(value, step) ?? value;
    values[step.symbol] = afterStep?.(changed, step) ?? changed;
    last = step.symbol;
  }
  if (change.answer) values[last] = change.answer(valueNamed(values, last), values);
  return values;
}

/** Values of all steps by symbol, from the plan's expressions. */
export function evaluatePlan(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
  change: Change = {},
): SolutionValues {
  return evaluateCompiled(compiledPlan(plan, change), startValues(plan, inputs));
}

/** Rounds to decimals as in hand work, a half away from zero. */
export function roundedTo(value: number, decimals: number): number {
  const factor = 10 ** decimals;
  return (Math.sign(value) * Math.round(Math.abs(value) * factor)) / factor + 0;
}

/** Values with every step rounded before the next one uses it. */
export function evaluateRounded(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
): SolutionValues {
  return evaluatePlan(plan, inputs, { value: (value, step) => roundedTo(value, step.decimals) });
}
