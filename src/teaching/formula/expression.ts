/**
 * Arithmetic expressions as people type them: parsed by `jsep` into a tree, of which only numbers, the
 * named variables, + - * / ^, brackets and a fixed list of functions are let through. Nothing else can be
 * reached: no property, no call of anything else, no text, no assignment.
 */

import type jsep from 'jsep';
import { acosDeg, asinDeg, atan2Deg, cosDeg, sinDeg, tanDeg } from '../../numeric/angle.js';
import { normalProbability } from '../../numeric/normal.js';
import { studentProbability } from '../../numeric/student.js';
import { type FormulaNode, formulaTree, refuseFormula } from './parse.js';

/** Values of the variables of a formula by name. */
export type FormulaValues = Readonly<Record<string, number>>;

/** A formula made callable: a number for the values of its variables; NaN where it has no value. */
export type CompiledFormula = (values: FormulaValues) => number;

type Numeric = (...args: number[]) => number;

/** Student's t below `t`; NaN where there is no such distribution. */
function studentBelow(t: number, degreesOfFreedom: number): number {
  return Number.isFinite(t) && degreesOfFreedom >= 1
    ? studentProbability(t, degreesOfFreedom)
    : Number.NaN;
}

/** Functions a formula may use, with the number of their arguments. Angles are in degrees. */
const FUNCTIONS: ReadonlyMap<string, readonly [count: number, compute: Numeric]> = new Map<
  string,
  readonly [number, Numeric]
>([
  ['sin', [1, sinDeg as Numeric]],
  ['cos', [1, cosDeg as Numeric]],
  ['tan', [1, tanDeg as Numeric]],
  ['asin', [1, (x) => (Math.abs(x as number) > 1 ? Number.NaN : asinDeg(x as number))]],
  ['acos', [1, (x) => (Math.abs(x as number) > 1 ? Number.NaN : acosDeg(x as number))]],
  ['atan', [1, (x) => atan2Deg(x as number, 1)]],
  ['atan2', [2, atan2Deg as Numeric]],
  ['sinRad', [1, Math.sin as Numeric]],
  ['cosRad', [1, Math.cos as Numeric]],
  ['tanRad', [1, Math.tan as Numeric]],
  ['sqrt', [1, Math.sqrt as Numeric]],
  ['abs', [1, Math.abs as Numeric]],
  ['exp', [1, Math.exp as Numeric]],
  ['ln', [1, Math.log as Numeric]],
  ['log', [1, Math.log10 as Numeric]],
  ['log10', [1, Math.log10 as Numeric]],
  ['normal', [1, normalProbability]],
  ['student', [2, (t, n) => studentBelow(t as number, n as number)]],
  ['round', [1, Math.round as Numeric]],
  ['sign', [1, Math.sign as Numeric]],
  ['min', [2, Math.min]],
  ['max', [2, Math.max]],
  ['mod', [2, (a, b) => (a as number) - (b as number) * Math.floor((a as number) / (b as number))]],
]);

const CONSTANTS: ReadonlyMap<string, number> = new Map([
  ['pi', Math.PI],
  ['e', Math.E],
]);

/** Names of the functions that a formula may use. */
export const FORMULA_FUNCTIONS: readonly string[] = [...FUNCTIONS.keys()];

const refuse = refuseFormula;

/** Compiles a tree; variables are read from a row at call time. */
export function compileTree(node: FormulaNode, variables: readonly string[]): CompiledFormula {
  switch (node.type) {
    case 'Literal': {
      const { value } = node as jsep.Literal;
      if (typeof value === 'number' && Number.isFinite(value)) return () => value;
      return refuse(String(value), 'made of numbers, not of text or truth values');
    }
    case 'Identifier': {
      const { name } = node as jsep.Identifier;
      if (variables.includes(name)) return (values) => values[name] as number;
      const constant = CONSTANTS.get(name);
      if (constant !== undefined) return () => constant;
      return refuse(
        name,
        `made of the variables ${variables.join(', ')}`,
        FUNCTIONS.has(name) ? 'are its brackets missing?' : undefined,
      );
    }
    case 'UnaryExpression': {
      const { operator, argument } = node as jsep.UnaryExpression;
      const inner = compileTree(argument, variables);
      if (operator === '+') return inner;
      if (operator === '-') return (values) => -inner(values);
      return refuse(operator, 'made of + - * / ^ and functions');
    }
    case 'BinaryExpression':
      return compileBinary(node as jsep.BinaryExpression, variables);
    case 'CallExpression':
      return compileCall(node as jsep.CallExpression, variables);
    default:
      return refuse(
        node.type,
        'one arithmetic expression',
        node.type === 'Compound' ? 'is a * missing?' : 'is a decimal comma meant as a point?',
      );
  }
}

function compileBinary(node: jsep.BinaryExpression, variables: readonly string[]): CompiledFormula {
  const left = compileTree(node.left, variables);
  const right = compileTree(node.right, variables);
  switch (node.operator) {
    case '+':
      return (values) => left(values) + right(values);
    case '-':
      return (values) => left(values) - right(values);
    case '*':
      return (values) => left(values) * right(values);
    case '/':
      return (values) => left(values) / right(values);
    case '**':
      // Hand-outs read -x^2 as -(x^2), many machines as (-x)^2: neither is guessed.
      if (node.left.type === 'UnaryExpression')
        return refuse('-…^', 'written with brackets', 'is -(x^2) or (0 - x)^2 meant?');
      return (values) => left(values) ** right(values);
    default:
      return refuse(node.operator, 'made of + - * / ^ and functions');
  }
}

function compileCall(node: jsep.CallExpression, variables: readonly string[]): CompiledFormula {
  const { callee } = node;
  const name = callee.type === 'Identifier' ? (callee as jsep.Identifier).name : '';
  const known = FUNCTIONS.get(name);
  if (!known)
    return refuse(
      name === '' ? callee.type : name,
      `made of the functions ${FORMULA_FUNCTIONS.join(', ')}`,
      variables.includes(name) ? 'is a * missing before the bracket?' : undefined,
    );
  const [count, compute] = known;
  if (node.arguments.length !== count)
    return refuse(`${name} with ${node.arguments.length}`, `${name} with ${count} in its brackets`);
  const inner = node.arguments.map((argument) => compileTree(argument, variables));
  const [first, second] = inner;
  if (count === 2 && first && second) return (values) => compute(first(values), second(values));
  if (first) return (values) => compute(first(values));
  return refuse(name, 'a function of something');
}

/**
 * Compiles a typed formula.
 *
 * `^` is the power, `log` the decimal logarithm, `ln` the natural one; sin, cos, tan take degrees and their
 * inverses give degrees; `sinRad`, `cosRad`, `tanRad` take radians. `normal(z)` and `student(t, n)` are the
 * probabilities below z and t, the latter for n degrees of freedom.
 *
 * @param formula  The text, at most 400 characters.
 * @param variables  Names that stand for values.
 * @throws {@link DomainError} `malformed` for anything but arithmetic, with the likely slip.
 *
 * Source: the parser is `jsep`; the list of what is let through is our own.
 * @example
 * ```ts
 * import { compileFormula } from 'slantpath/teaching';
 * const width = compileFormula('70 * 0.3 / (f * d)', ['f', 'd']);
 * width({ f: 12, d: 0.9 }).toFixed(3); // => '1.944'
 * ```
 */
export function compileFormula(formula: string, variables: readonly string[]): CompiledFormula {
  return compileTree(formulaTree(formula), variables);
}
