/** A tree computed for many places at once: a column of values for columns of variables. */

import type jsep from 'jsep';
import { CONSTANTS, FUNCTIONS, OPERATORS } from './functions.js';
import type { FormulaNode } from './parse.js';

/** Values of each variable, by name, at the same number of places. */
export interface VariableColumns {
  readonly count: number;
  readonly columns: ReadonlyMap<string, Float64Array | number>;
}

type Column = Float64Array | number;

/** The columns of one computation; those that are done with are used again, because making them costs most of the time. */
interface Work {
  readonly at: VariableColumns;
  readonly made: Set<Float64Array>;
  readonly free: Float64Array[];
}

/** Values of a tree that `compileTree` lets through; NaN where it has none. The same numbers as place by place. */
export function treeColumn(tree: FormulaNode, at: VariableColumns): Float64Array {
  const work: Work = { at, made: new Set(), free: [] };
  const column = columnOf(tree, work);
  if (typeof column === 'number') return new Float64Array(at.count).fill(column);
  return work.made.has(column) ? column : column.slice();
}

function fresh(work: Work): Float64Array {
  const kept = work.free.pop();
  if (kept) return kept;
  const column = new Float64Array(work.at.count);
  work.made.add(column);
  return column;
}

function columnOf(node: FormulaNode, work: Work): Column {
  switch (node.type) {
    case 'Literal':
      return (node as jsep.Literal).value as number;
    case 'Identifier': {
      const { name } = node as jsep.Identifier;
      return work.at.columns.get(name) ?? CONSTANTS.get(name) ?? Number.NaN;
    }
    case 'UnaryExpression': {
      const { operator, argument } = node as jsep.UnaryExpression;
      const inner = columnOf(argument, work);
      return operator === '-' ? mapped(work, (a) => -a, inner) : inner;
    }
    case 'BinaryExpression': {
      const { operator, left, right } = node as jsep.BinaryExpression;
      const compute = OPERATORS.get(operator);
      return compute
        ? mapped(work, compute, columnOf(left, work), columnOf(right, work))
        : Number.NaN;
    }
    case 'CallExpression': {
      const { callee, arguments: args } = node as jsep.CallExpression;
      const compute = FUNCTIONS.get((callee as jsep.Identifier).name)?.[1];
      if (!compute) return Number.NaN;
      const [first = Number.NaN, second, third] = args.map((each) => columnOf(each, work));
      return mapped(work, compute, first, second, third);
    }
    default:
      return Number.NaN;
  }
}

function mapped(
  work: Work,
  compute: (a: number, b: number, c: number) => number,
  first: Column,
  second: Column = 0,
  third: Column = 0,
): Column {
  const [a, b, c] = [first, second, third];
  if (typeof a === 'number' && typeof b === 'number' && typeof c === 'number')
    return compute(a, b, c);
  const { count } = work.at;
  const out = fresh(work);
  if (typeof c !== 'number')
    for (let i = 0; i < count; i++) out[i] = compute(value(a, i), value(b, i), value(c, i));
  else if (typeof a === 'number')
    for (let i = 0; i < count; i++) out[i] = compute(a, value(b, i), c);
  else if (typeof b === 'number')
    for (let i = 0; i < count; i++) out[i] = compute(a[i] as number, b, c);
  else for (let i = 0; i < count; i++) out[i] = compute(a[i] as number, b[i] as number, c);
  for (const column of new Set([a, b, c]))
    if (typeof column !== 'number' && work.made.has(column)) work.free.push(column);
  return out;
}

function value(column: Column, index: number): number {
  return typeof column === 'number' ? column : (column[index] as number);
}
