/**
 * Trees of arithmetic made callable. Only numbers, the named variables, + - * / ^, comparisons and a fixed list of
 * functions are let through. Nothing else can be reached: no property, no call of anything else, no text, no assignment.
 */

import type jsep from 'jsep';
import { valueNamed } from '../../numeric/columns.js';
import {
  CONSTANTS,
  type CompiledFormula,
  FORMULA_FUNCTIONS,
  FUNCTIONS,
  OPERATORS,
} from './functions.js';
import { type FormulaNode, refuseFormula } from './parse.js';
import { plainNames, readFormula } from './readFormula.js';

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
      if (variables.includes(name)) return (values) => valueNamed(values, name);
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
  const compute = OPERATORS.get(node.operator);
  if (!compute) return refuse(node.operator, 'made of + - * / ^ and functions');
  return (values) => compute(left(values), right(values));
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
  const [first, second, third] = inner as [CompiledFormula, CompiledFormula, CompiledFormula];
  if (count === 1) return (values) => compute(first(values), 0, 0);
  if (count === 2) return (values) => compute(first(values), second(values), 0);
  return (values) => compute(first(values), second(values), third(values));
}

/**
 * Compiles a typed formula.
 *
 * Spreadsheet, calculator, handwriting and LaTeX notation are read: `=180-DEGREES(ATAN(...))`, `2 tan(x)`, `sind(x)`, `√x`,
 * `x²`, `3,5`, `\\frac{a}{b}`. `^` is the power, `log` the decimal logarithm, `ln` the natural one. sin, cos, tan take degrees
 * and their inverses give degrees, unless the formula itself converts between degrees and radians or begins with `=`;
 * `sinRad`, `cosRad`, `tanRad` take radians. `normal(z)` and `student(t, n)` are the probabilities below z and t, the
 * latter for n degrees of freedom. `tryFormula` tells how each ambiguity was read.
 *
 * @param formula  The text, at most 400 characters.
 * @param variables  Names that stand for values.
 * @throws {@link DomainError} `malformed` for anything but arithmetic; it says where and what is expected there.
 *
 * Source: own reader; the list of functions is our own.
 * @example
 * ```ts
 * import { compileFormula } from 'slantpath/teaching';
 * const width = compileFormula('70 * 0.3 / (f d)', ['f', 'd']);
 * width({ f: 12, d: 0.9 }).toFixed(3); // => '1.944'
 * ```
 */
export function compileFormula(formula: string, variables: readonly string[]): CompiledFormula {
  return compileTree(readFormula({ formula, names: plainNames(variables) }).tree, variables);
}
