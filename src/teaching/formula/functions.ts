/** The functions and constants of formulas, and the list of what is let through. */

import { acosDeg, asinDeg, atan2Deg, cosDeg, sinDeg, tanDeg } from '../../numeric/angle.js';
import { normalProbability } from '../../numeric/normal.js';
import { studentProbability } from '../../numeric/student.js';

/** Values of the variables of a formula by name. */
export type FormulaValues = Readonly<Record<string, number>>;

/** A formula made callable: a number for the values of its variables; NaN where it has no value. */
export type CompiledFormula = (values: FormulaValues) => number;

type Numeric = (a: number, b: number, c: number) => number;

/** Student's t below `t`; NaN where there is no such distribution. */
function studentBelow(t: number, degreesOfFreedom: number): number {
  return Number.isFinite(t) && degreesOfFreedom >= 1
    ? studentProbability(t, degreesOfFreedom)
    : Number.NaN;
}

/** Functions a formula may use, with the number of their arguments. Angles are in degrees unless the name says Rad. */
export const FUNCTIONS: ReadonlyMap<string, readonly [count: number, compute: Numeric]> = new Map<
  string,
  readonly [number, Numeric]
>([
  ['sin', [1, sinDeg]],
  ['cos', [1, cosDeg]],
  ['tan', [1, tanDeg]],
  ['asin', [1, (x) => (Math.abs(x) > 1 ? Number.NaN : asinDeg(x))]],
  ['acos', [1, (x) => (Math.abs(x) > 1 ? Number.NaN : acosDeg(x))]],
  ['atan', [1, (x) => atan2Deg(x, 1)]],
  ['atan2', [2, atan2Deg]],
  ['sinRad', [1, Math.sin]],
  ['cosRad', [1, Math.cos]],
  ['tanRad', [1, Math.tan]],
  ['asinRad', [1, Math.asin]],
  ['acosRad', [1, Math.acos]],
  ['atanRad', [1, Math.atan]],
  ['atan2Rad', [2, Math.atan2]],
  ['sqrt', [1, Math.sqrt]],
  ['abs', [1, Math.abs]],
  ['exp', [1, Math.exp]],
  ['ln', [1, Math.log]],
  ['log', [1, Math.log10]],
  ['log10', [1, Math.log10]],
  ['normal', [1, (z) => normalProbability(z)]],
  ['student', [2, studentBelow]],
  ['round', [1, Math.round]],
  ['sign', [1, Math.sign]],
  ['min', [2, (a, b) => Math.min(a, b)]],
  ['max', [2, (a, b) => Math.max(a, b)]],
  ['mod', [2, (a, b) => a - b * Math.floor(a / b)]],
  ['if', [3, (condition, a, b) => (condition ? a : b)]],
]);

export const CONSTANTS: ReadonlyMap<string, number> = new Map([
  ['pi', Math.PI],
  ['e', Math.E],
]);

/** What the operators between two sides do; comparisons give 1 or 0. */
export const OPERATORS: ReadonlyMap<string, (left: number, right: number) => number> = new Map([
  ['+', (a, b) => a + b],
  ['-', (a, b) => a - b],
  ['*', (a, b) => a * b],
  ['/', (a, b) => a / b],
  ['**', (a, b) => a ** b],
  ['<', (a, b) => (a < b ? 1 : 0)],
  ['>', (a, b) => (a > b ? 1 : 0)],
  ['<=', (a, b) => (a <= b ? 1 : 0)],
  ['>=', (a, b) => (a >= b ? 1 : 0)],
  ['=', (a, b) => (a === b ? 1 : 0)],
  ['<>', (a, b) => (a === b ? 0 : 1)],
]);

/** Names of the functions that a formula may use. */
export const FORMULA_FUNCTIONS: readonly string[] = [...FUNCTIONS.keys()];
