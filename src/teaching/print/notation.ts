/** A formula's tree in print, over what a notation writes for a root, a fraction, a power: plain signs or MathML. */

import type jsep from 'jsep';
import { type FormulaNode, refuseFormula } from '../formula/parse.js';

/** How a notation writes the pieces of a formula. Every piece comes written already. */
export interface Notation {
  readonly symbol: (name: string, insideAngle: boolean) => string;
  readonly number: (value: number) => string;
  /** Pieces side by side: `a · b`, `a − b`. */
  readonly between: (left: string, sign: string, right: string) => string;
  readonly minus: (of: string) => string;
  readonly brackets: (of: string, open: string, close: string) => string;
  readonly fraction: (above: string, below: string) => string;
  readonly power: (base: string, exponent: string) => string;
  readonly root: (of: string, bare: boolean) => string;
  /** A function: its name, a power of it, its arguments, and whether they need no brackets. */
  readonly call: (name: string, power: string, of: readonly string[], bare: boolean) => string;
}

const NAMES: Readonly<Record<string, string>> = {
  asin: 'arcsin',
  acos: 'arccos',
  atan: 'arctan',
  log: 'log₁₀',
  log10: 'log₁₀',
  normal: 'Φ',
  student: 'S',
};
const OF_ANGLES = new Set(['sin', 'cos', 'tan']);

/** Binding strength, so that only needed brackets are written. */
function rank(node: FormulaNode, fractions: boolean): number {
  if (node.type === 'UnaryExpression') return 2;
  if (node.type !== 'BinaryExpression') return 9;
  const { operator } = node as jsep.BinaryExpression;
  if (operator === '+' || operator === '-') return 1;
  if (operator === '/') return fractions ? 8 : 3;
  return operator === '**' ? 6 : 3;
}

/** Whether a written piece begins with a minus, which must not follow another sign. */
const negative = (text: string) => /^(<mrow>)?(<mo>)?−/.test(text);

const leaf = (node: FormulaNode | undefined) =>
  node?.type === 'Identifier' || node?.type === 'Literal';

/** What stands above and below the line of products and quotients in a row: `a / b * c` has a and c above. */
function lines(node: FormulaNode): {
  readonly above: readonly FormulaNode[];
  readonly below: readonly FormulaNode[];
} {
  const { operator, left, right } = node as jsep.BinaryExpression;
  if (node.type !== 'BinaryExpression' || (operator !== '*' && operator !== '/'))
    return { above: [node], below: [] };
  const { above, below } = lines(left);
  return operator === '*'
    ? { above: [...above, right], below }
    : { above, below: [...below, right] };
}

const nameOf = (node: FormulaNode): string =>
  node.type === 'CallExpression'
    ? ((node as jsep.CallExpression).callee as jsep.Identifier).name
    : '';

/** Writes a tree in a notation; `fractions` says that a fraction needs no brackets around what is above and below. */
export function written(tree: FormulaNode, notation: Notation, fractions: boolean): string {
  const write = (node: FormulaNode, angle: boolean): string => {
    // In front of a sum, a product or a fraction a minus needs no brackets.
    const inner = (child: FormulaNode, least: number, front = false) => {
      const text = write(child, angle);
      return rank(child, fractions) < least || (!front && negative(text))
        ? notation.brackets(text, '(', ')')
        : text;
    };
    switch (node.type) {
      case 'Literal':
        return notation.number(Number((node as jsep.Literal).value));
      case 'Identifier':
        return notation.symbol((node as jsep.Identifier).name, angle);
      case 'UnaryExpression':
        return notation.minus(inner((node as jsep.UnaryExpression).argument, 3));
      case 'BinaryExpression': {
        const { operator, left, right } = node as jsep.BinaryExpression;
        if (operator === '**') return power(left, right, angle);
        if (fractions && (operator === '/' || operator === '*')) {
          const { above, below } = lines(node);
          const product = (factors: readonly FormulaNode[]) =>
            factors.length === 1 && below.length > 0
              ? write(factors[0] as FormulaNode, angle)
              : factors
                  .map((factor, at) => inner(factor, at === 0 ? 2 : 3, at === 0))
                  .reduce((all, factor) => notation.between(all, '·', factor));
          return below.length === 0
            ? product(above)
            : notation.fraction(product(above), product(below));
        }
        const product = operator === '*' || operator === '/';
        const sign = { '*': '·', '/': '/', '-': '−' }[operator] ?? '+';
        const after = operator === '/' ? 4 : product ? 3 : operator === '-' ? 2 : 1;
        return notation.between(inner(left, product ? 2 : 1, true), sign, inner(right, after));
      }
      case 'CallExpression':
        return call(node as jsep.CallExpression, '', angle);
      default:
        return refuseFormula(node.type, 'one arithmetic expression');
    }
  };
  const power = (base: FormulaNode, exponent: FormulaNode, angle: boolean): string => {
    const above = write(exponent, angle);
    // sin² x, as a school writes it.
    if (OF_ANGLES.has(nameOf(base))) return call(base as jsep.CallExpression, above, angle);
    const text = write(base, angle);
    const below = leaf(base) && !negative(text) ? text : notation.brackets(text, '(', ')');
    return notation.power(below, above);
  };
  const call = (node: jsep.CallExpression, raisedTo: string, angle: boolean): string => {
    const name = nameOf(node);
    const inside = OF_ANGLES.has(name) || angle;
    const texts = node.arguments.map((each) => write(each, inside));
    const [first = ''] = texts;
    const [only] = node.arguments;
    const bare = node.arguments.length === 1 && leaf(only) && !negative(first);
    if (name === 'sqrt') return notation.root(first, bare);
    if (name === 'abs') return notation.brackets(first, '|', '|');
    if (name === 'exp') return notation.power('e', first);
    return notation.call(NAMES[name] ?? name, raisedTo, texts, bare);
  };
  return write(tree, false);
}
