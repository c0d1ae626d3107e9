/** Short forms for writing plans: a given, a constant, a step on one line each. */

import { DomainError } from '../../errors.js';
import { valueNamed } from '../../numeric/columns.js';
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

/**
 * Steps as the rows of a table: `symbol | tex | meaning | expression | unit | decimals | source`.
 *
 * A line that begins with a bar goes on with the row above it. TeX is written as it is, with single backslashes.
 */
export function stepRows(table: TemplateStringsArray, ...cells: readonly string[]): PlanStep[] {
  return String.raw(table, ...cells)
    .replace(/\n\s*\|/g, ' |')
    .trim()
    .split(/\s*\n\s*/)
    .map((line) => {
      const row = line.split('|').map((cell) => cell.trim());
      if (row.length !== 7 || !/^\d$/.test(row[5] as string))
        throw new DomainError({
          code: 'malformed',
          parameter: 'steps',
          received: line,
          allowed: 'symbol | tex | meaning | expression | unit | decimals | source',
        });
      const [symbol, tex, meaning, expression, unit, decimals, source] = row as StepRow;
      return step(symbol, tex, meaning, expression, unit, Number(decimals), source);
    });
}

type StepRow = [string, string, string, string, string, string, string];

/** A number of the inputs; that it is there was checked before. */
export function input(inputs: Readonly<Record<string, number>>, name: string): number {
  return valueNamed(inputs, name);
}
