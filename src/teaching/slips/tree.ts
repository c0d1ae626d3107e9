/** Places, sums and products of a formula's tree, for changes as a learner makes them. */

import type jsep from 'jsep';
import type { FormulaNode } from '../formula/parse.js';
import { binary, childrenOf, literal, withChildren } from '../formula/trees.js';

/** A place in a tree: the node there, the nodes above it from the nearest, and the tree with another node put there. */
export interface Place {
  readonly node: FormulaNode;
  readonly above: readonly FormulaNode[];
  readonly put: (node: FormulaNode) => FormulaNode;
}

/** Every place of a tree. */
export function placesOf(
  node: FormulaNode,
  above: readonly FormulaNode[] = [],
  put: Place['put'] = (other) => other,
): readonly Place[] {
  const below = childrenOf(node);
  return [
    { node, above, put },
    ...below.flatMap((child, at) =>
      placesOf(child, [node, ...above], (other) =>
        put(
          withChildren(
            node,
            below.map((each, index) => (index === at ? other : each)),
          ),
        ),
      ),
    ),
  ];
}

/** Arguments of a call; none for anything else. */
export function callArguments(node: FormulaNode): readonly FormulaNode[] {
  return node.type === 'CallExpression' ? (node as jsep.CallExpression).arguments : [];
}

/** Sides and operator of a binary node. */
export function sidesOf(
  node: FormulaNode,
):
  | { readonly operator: string; readonly left: FormulaNode; readonly right: FormulaNode }
  | undefined {
  if (node.type !== 'BinaryExpression') return undefined;
  const { operator, left, right } = node as jsep.BinaryExpression;
  return { operator, left, right };
}

/** Value of a literal number. */
export function literalValue(node: FormulaNode): number | undefined {
  if (node.type !== 'Literal') return undefined;
  const { value } = node as jsep.Literal;
  return typeof value === 'number' ? value : undefined;
}

/** Name of a symbol. */
export function symbolName(node: FormulaNode): string | undefined {
  return node.type === 'Identifier' ? (node as jsep.Identifier).name : undefined;
}

/** Names of all symbols of a tree. */
export function symbolsOf(node: FormulaNode): readonly string[] {
  const own = symbolName(node);
  return own === undefined ? childrenOf(node).flatMap(symbolsOf) : [own];
}

/** A term of a sum with its sign, or a factor of a product with 1 above and -1 below the line. */
export interface Part {
  readonly node: FormulaNode;
  readonly sign: 1 | -1;
}

/** Terms of a sum; one term for anything else. */
export function termsOf(node: FormulaNode, sign: 1 | -1 = 1): readonly Part[] {
  return flat(node, sign, '+', '-');
}

/** Factors of a product; one factor for anything else. */
export function factorsOf(node: FormulaNode, sign: 1 | -1 = 1): readonly Part[] {
  return flat(node, sign, '*', '/');
}

function flat(node: FormulaNode, sign: 1 | -1, direct: string, inverse: string): readonly Part[] {
  const parts = sidesOf(node);
  if (parts && (parts.operator === direct || parts.operator === inverse)) {
    const right = parts.operator === inverse ? (-sign as 1 | -1) : sign;
    return [
      ...flat(parts.left, sign, direct, inverse),
      ...flat(parts.right, right, direct, inverse),
    ];
  }
  if (direct === '+' && node.type === 'UnaryExpression') {
    const { operator, argument } = node as jsep.UnaryExpression;
    return flat(argument, operator === '-' ? (-sign as 1 | -1) : sign, direct, inverse);
  }
  return [{ node, sign }];
}

/** A sum of terms; zero without any. */
export function sumOf(terms: readonly Part[]): FormulaNode {
  return assembled(terms, 0, '+', '-');
}

/** A product of factors; one without any. */
export function productOf(factors: readonly Part[]): FormulaNode {
  return assembled(factors, 1, '*', '/');
}

function assembled(
  parts: readonly Part[],
  neutral: number,
  direct: string,
  inverse: string,
): FormulaNode {
  const [first, ...rest] = [...parts].sort((a, b) => b.sign - a.sign);
  if (!first) return literal(neutral);
  const start = first.sign === 1 ? first.node : binary(inverse, literal(neutral), first.node);
  return rest.reduce(
    (all, { node, sign }) => binary(sign === 1 ? direct : inverse, all, node),
    start,
  );
}
