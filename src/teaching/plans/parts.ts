/** Short forms for writing plans: a given, a constant, a step on one line each. */

import type { PlanStep, SolutionConstant, SolutionGiven } from './plan.js';

/** A given: library name, symbol, TeX, meaning, unit, and the range and step that exercises draw from. */
export function given(
  name: string,
  symbol: string,
  tex: string,
  meaning: string,
  unit: string,
  draw: readonly [from: number, to: number, step: number],
): SolutionGiven {
  const [from, to, step] = draw;
  return { name, symbol, tex, meaning, unit, draw: { from, to, step } };
}

/** A constant: symbol, TeX, meaning, value, unit, source. */
export function constant(
  symbol: string,
  tex: string,
  meaning: string,
  value: number,
  unit: string,
  source: string,
): SolutionConstant {
  return { symbol, tex, meaning, value, unit, source };
}

/** A step: symbol, TeX, meaning, expression, unit, decimals for hand work, source. */
export function step(
  symbol: string,
  tex: string,
  meaning: string,
  expression: string,
  unit: string,
  decimals: number,
  source: string,
): PlanStep {
  return { symbol, tex, meaning, expression, unit, decimals, source };
}

/** A number of the inputs; that it is there was checked before. */
export function input(inputs: Readonly<Record<string, number>>, name: string): number {
  return inputs[name] as number;
}
