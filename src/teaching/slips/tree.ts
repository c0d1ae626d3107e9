/** Changes to a formula's tree: every node can be replaced, from the leaves up. */

import type jsep from 'jsep';
import type { FormulaNode } from '../formula/parse.js';

/** The tree in which each node has gone through `change`; the same tree where nothing changed. */
export function mapTree(
  node: FormulaNode,
  change: (node: FormulaNode) => FormulaNode,
): FormulaNode {
  const below = childrenOf(node);
  const after = below.map((child) => mapTree(child, change));
  return change(after.every((child, at) => child === below[at]) ? node : withChildren(node, after));
}

/** The nodes right below a node. */
function childrenOf(node: FormulaNode): readonly FormulaNode[] {
  switch (node.type) {
    case 'UnaryExpression':
      return [(node as jsep.UnaryExpression).argument];
    case 'BinaryExpression': {
      const { left, right } = node as jsep.BinaryExpression;
      return [left, right];
    }
    case 'CallExpression':
      return (node as jsep.CallExpression).arguments;
    default:
      return [];
  }
}

/** A copy of a node with other nodes below it. */
function withChildren(node: FormulaNode, below: readonly FormulaNode[]): FormulaNode {
  if (node.type === 'UnaryExpression') return { ...node, argument: below[0] } as FormulaNode;
  if (node.type === 'BinaryExpression')
    return { ...node, left: below[0], right: below[1] } as FormulaNode;
  return { ...node, arguments: [...below] } as FormulaNode;
}

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

/** Name of the called function; empty for anything but a call. */
export function calledName(node: FormulaNode): string {
  if (node.type !== 'CallExpression') return '';
  const { callee } = node as jsep.CallExpression;
  return callee.type === 'Identifier' ? (callee as jsep.Identifier).name : '';
}

/** Arguments of a call; none for anything else. */
export function callArguments(node: FormulaNode): readonly FormulaNode[] {
  return node.type === 'CallExpression' ? (node as jsep.CallExpression).arguments : [];
}

/** A symbol. */
export function symbol(name: string): FormulaNode {
  return { type: 'Identifier', name } as unknown as FormulaNode;
}

/** A call of a function. */
export function call(name: string, list: readonly FormulaNode[]): FormulaNode {
  return {
    type: 'CallExpression',
    callee: { type: 'Identifier', name },
    arguments: [...list],
  } as unknown as FormulaNode;
}

/** Two nodes joined by an operator. */
export function joined(operator: string, left: FormulaNode, right: FormulaNode): FormulaNode {
  return { type: 'BinaryExpression', operator, left, right } as unknown as FormulaNode;
}

/** A number. */
export function literal(value: number): FormulaNode {
  return { type: 'Literal', value, raw: String(value) } as unknown as FormulaNode;
}

/** Sides and operator of a binary node. */
export function binary(
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
  const parts = binary(node);
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
  const start = first.sign === 1 ? first.node : joined(inverse, literal(neutral), first.node);
  return rest.reduce(
    (all, { node, sign }) => joined(sign === 1 ? direct : inverse, all, node),
    start,
  );
}
