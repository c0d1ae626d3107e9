/** Changes to a formula's tree: every node can be replaced, from the leaves up. */

import type jsep from 'jsep';
import type { FormulaNode } from '../formula/parse.js';

/** A copy of the tree in which each node has gone through `change`; `change` sees children already changed. */
export function mapTree(
  node: FormulaNode,
  change: (node: FormulaNode) => FormulaNode,
): FormulaNode {
  switch (node.type) {
    case 'UnaryExpression': {
      const unary = node as jsep.UnaryExpression;
      return change({ ...unary, argument: mapTree(unary.argument, change) } as FormulaNode);
    }
    case 'BinaryExpression': {
      const binary = node as jsep.BinaryExpression;
      return change({
        ...binary,
        left: mapTree(binary.left, change),
        right: mapTree(binary.right, change),
      } as FormulaNode);
    }
    case 'CallExpression': {
      const call = node as jsep.CallExpression;
      const list = call.arguments.map((argument) => mapTree(argument, change));
      return change({ ...call, arguments: list } as FormulaNode);
    }
    default:
      return change(node);
  }
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
