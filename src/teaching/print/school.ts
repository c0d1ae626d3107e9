/**
 * A formula as a school prints it: `atan2` is an arctangent of a fraction with a word on the quadrant, `mod` is a word on the
 * range of an angle, `0 - x` is a minus.
 */

import type jsep from 'jsep';
import type { FormulaNode } from '../formula/parse.js';

/** What has to be said in words beside a formula. */
export type SchoolNote =
  | { readonly kind: 'quadrant' }
  | { readonly kind: 'normal' }
  | { readonly kind: 'student' }
  /** Full periods are added or taken off until the angle is from `fromDeg` to below `belowDeg`. */
  | {
      readonly kind: 'turned';
      readonly periodDeg: number;
      readonly fromDeg: number;
      readonly belowDeg: number;
    };

/** A formula for print with what is said beside it. */
export interface SchoolFormula {
  readonly tree: FormulaNode;
  readonly notes: readonly SchoolNote[];
}

const literalOf = (node: FormulaNode): number | undefined =>
  node.type === 'Literal' ? Number((node as jsep.Literal).value) : undefined;

const calls = (node: FormulaNode, name: string): readonly FormulaNode[] | undefined => {
  if (node.type !== 'CallExpression') return undefined;
  const { callee, arguments: list } = node as jsep.CallExpression;
  return (callee as jsep.Identifier).name === name ? list : undefined;
};

const binary = (node: FormulaNode, operator: string): jsep.BinaryExpression | undefined =>
  node.type === 'BinaryExpression' && (node as jsep.BinaryExpression).operator === operator
    ? (node as jsep.BinaryExpression)
    : undefined;

/** `mod(x, p)` or `mod(x + h, p) - h`: the angle itself and its range. */
function turned(node: FormulaNode) {
  const less = binary(node, '-');
  const half = less && literalOf(less.right);
  const [inside, period] = calls(less ? less.left : node, 'mod') ?? [];
  if (!inside || !period || (less && half === undefined)) return undefined;
  const sum = less ? binary(inside, '+') : undefined;
  if (less && (!sum || literalOf(sum.right) !== half)) return undefined;
  const periodDeg = literalOf(period) ?? 360;
  const fromDeg = half === undefined ? 0 : -half;
  return {
    angle: sum?.left ?? inside,
    note: { kind: 'turned', periodDeg, fromDeg, belowDeg: fromDeg + periodDeg } as const,
  };
}

const KNOWN = new WeakMap<FormulaNode, SchoolFormula>();

/** The formula of a tree as a school prints it, found once for each; the tree itself is not changed. */
export function schoolFormula(tree: FormulaNode): SchoolFormula {
  const known = KNOWN.get(tree);
  if (known) return known;
  const found = rewritten(tree);
  KNOWN.set(tree, found);
  return found;
}

function rewritten(tree: FormulaNode): SchoolFormula {
  const notes: SchoolNote[] = [];
  const note = (one: SchoolNote) => {
    if (!notes.some((each) => JSON.stringify(each) === JSON.stringify(one))) notes.push(one);
  };
  const walk = (node: FormulaNode): FormulaNode => {
    const turn = turned(node);
    if (turn) {
      const angle = walk(turn.angle);
      note(turn.note);
      return angle;
    }
    const sides = calls(node, 'atan2');
    if (sides) {
      note({ kind: 'quadrant' });
      const [left, right] = sides.map(walk);
      const fraction = { type: 'BinaryExpression', operator: '/', left, right };
      const callee = { type: 'Identifier', name: 'atan' };
      return { type: 'CallExpression', callee, arguments: [fraction] } as jsep.CallExpression;
    }
    if (calls(node, 'normal')) note({ kind: 'normal' });
    if (calls(node, 'student')) note({ kind: 'student' });
    if (node.type === 'BinaryExpression') {
      const { operator, left, right } = node as jsep.BinaryExpression;
      if (operator === '-' && literalOf(left) === 0)
        return {
          type: 'UnaryExpression',
          operator: '-',
          prefix: true,
          argument: walk(right),
        } as jsep.UnaryExpression;
      return { ...node, left: walk(left), right: walk(right) } as jsep.BinaryExpression;
    }
    if (node.type === 'UnaryExpression')
      return {
        ...node,
        argument: walk((node as jsep.UnaryExpression).argument),
      } as jsep.UnaryExpression;
    if (node.type === 'CallExpression')
      return {
        ...node,
        arguments: (node as jsep.CallExpression).arguments.map(walk),
      } as jsep.CallExpression;
    return node;
  };
  return { tree: walk(tree), notes };
}
