/** A plan's expressions evaluated one after the other: with full digits, rounded at each step, or changed by a slip. */

import { type CompiledFormula, compileTree } from '../formula/expression.js';
import { type FormulaNode, formulaTree } from '../formula/parse.js';
import type { PlanStep, SolutionConstant, SolutionPlan, SolutionValues } from '../plans/plan.js';

/** What is changed against the plan. */
export interface Change {
  /** Inputs by symbol, changed before the first step. */
  readonly givens?: (givens: SolutionValues) => SolutionValues;
  /** A step's tree, changed before it is evaluated. */
  readonly tree?: (tree: FormulaNode, step: PlanStep) => FormulaNode;
  /** A step's value, changed after it is evaluated. */
  readonly value?: (value: number, step: PlanStep) => number;
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
    ...plan.givens.map(({ name, symbol }) => [symbol, inputs[name] as number]),
    ...constantsOf(plan, inputs).map(({ symbol, value }) => [symbol, value]),
  ]);
}

/** Values of all steps by symbol, from the plan's expressions. */
export function evaluatePlan(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
  change: Change = {},
): SolutionValues {
  const start = startValues(plan, inputs);
  const values: Record<string, number> = { ...(change.givens?.(start) ?? start) };
  for (const step of plan.steps) {
    const tree = formulaTree(step.expression);
    const compiled: CompiledFormula = compileTree(
      change.tree?.(tree, step) ?? tree,
      Object.keys(values),
    );
    const value = compiled(values);
    values[step.symbol] = change.value?.(value, step) ?? value;
  }
  return values;
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
