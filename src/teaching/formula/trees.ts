/** Nodes of formula trees: made, told apart, and rebuilt with a change. */

import type jsep from 'jsep';
import type { FormulaNode } from './parse.js';

/** A number; `raw` is how it is written. */
export function literal(value: number, raw = String(value)): FormulaNode {
  return { type: 'Literal', value, raw } as jsep.Literal;
}

/** A variable or a constant by its name. */
export function identifier(name: string): FormulaNode {
  return { type: 'Identifier', name } as jsep.Identifier;
}

/** Two sides with an operator between them; `**` is the power. */
export function binary(operator: string, left: FormulaNode, right: FormulaNode): FormulaNode {
  return { type: 'BinaryExpression', operator, left, right } as jsep.BinaryExpression;
}

/** A minus before an expression. */
export function negated(argument: FormulaNode): FormulaNode {
  return { type: 'UnaryExpression', operator: '-', argument, prefix: true } as jsep.UnaryExpression;
}

/** A function of its arguments. */
export function call(name: string, ...args: readonly FormulaNode[]): FormulaNode {
  return {
    type: 'CallExpression',
    callee: identifier(name),
    arguments: [...args],
  } as unknown as jsep.CallExpression;
}

/** Value of a number, with its minus if there is one; `undefined` for anything else. */
export function numberOf(node: FormulaNode): number | undefined {
  if (node.type === 'Literal') return (node as jsep.Literal).value as number;
  if (node.type !== 'UnaryExpression') return undefined;
  const inner = numberOf((node as jsep.UnaryExpression).argument);
  return inner === undefined ? undefined : -inner;
}

/** Function name of a call; empty for anything else. */
export function functionOf(node: FormulaNode): string {
  return node.type === 'CallExpression'
    ? ((node as jsep.CallExpression).callee as jsep.Identifier).name
    : '';
}

/** Nodes right under a node. */
export function childrenOf(node: FormulaNode): readonly FormulaNode[] {
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

/** The node with other children. */
export function withChildren(node: FormulaNode, children: readonly FormulaNode[]): FormulaNode {
  const [first, second] = children as [FormulaNode, FormulaNode];
  switch (node.type) {
    case 'UnaryExpression':
      return { ...node, argument: first } as FormulaNode;
    case 'BinaryExpression':
      return { ...node, left: first, right: second } as FormulaNode;
    case 'CallExpression':
      return { ...node, arguments: [...children] } as FormulaNode;
    default:
      return node;
  }
}

/** A tree rebuilt from its leaves upwards; `change` gives what stands in a node's place. The same node where nothing changed. */
export function rebuilt(
  node: FormulaNode,
  change: (node: FormulaNode) => FormulaNode,
): FormulaNode {
  const before = childrenOf(node);
  const after = before.map((child) => rebuilt(child, change));
  return change(
    after.every((child, at) => child === before[at]) ? node : withChildren(node, after),
  );
}

/** Every tree that differs from this one in one node, for which `variants` gives what may stand in its place. */
export function oneChanged(
  node: FormulaNode,
  variants: (node: FormulaNode) => readonly FormulaNode[],
): readonly FormulaNode[] {
  const children = childrenOf(node);
  return [
    ...variants(node),
    ...children.flatMap((child, index) =>
      oneChanged(child, variants).map((changed) =>
        withChildren(
          node,
          children.map((each, i) => (i === index ? changed : each)),
        ),
      ),
    ),
  ];
}
