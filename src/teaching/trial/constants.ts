/** Which number would fit in the place of one of a formula's constants, of what is added to it, of its factor. */

import type jsep from 'jsep';
import { denseAt, valueAt } from '../../numeric/columns.js';
import { treeColumn } from '../formula/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import type { FormulaSubject } from '../formula/subject.js';
import { identifier, literal, oneChanged, rebuilt } from '../formula/trees.js';
import type { Places } from './places.js';

/** Name of the constant that is sought; no formula can type it. */
const SOUGHT = '?';

/** Numbers of the trade that are preferred to one near them. */
const USUAL: readonly number[] = [
  0, 1, 2, 3, 4, 10, 12, 20, 21, 30, 60, 70, 90, 120, 180, 270, 290, 300, 360, 0.5, 0.15127, 0.2998,
  6378.137, 42164.17, 35786, 6.6107, 92.45, 32.45, 122.45, 228.6, 108.75, 138.75, 17.32, 18.48,
  20.4, 0.0762, 57.296,
];

/** What a number is often off by. */
const SLIPS_OF_A_NUMBER: readonly number[] = [2, 0.5, 10, 0.1, 1000, 0.001, 4, 0.25];

/** A constant with the value that fits instead. */
export interface FittedConstant {
  readonly tree: FormulaNode;
  readonly found: number;
  readonly fits: number;
}

/** Difference brought to half a period to either side. */
export function wrapped(difference: number, period: FormulaSubject['period']): number {
  if (period === null) return difference;
  const rest = ((difference % period) + period) % period;
  return rest > period / 2 ? rest - period : rest;
}

/** Each constant of a formula in turn, with the value that brings the formula nearest to the exact answers. */
export function fittedConstants(
  tree: FormulaNode,
  probes: Places,
  period: FormulaSubject['period'],
  fitsAt: (tree: FormulaNode) => boolean,
): FittedConstant | undefined {
  const found: number[] = [];
  const bases = new Set<FormulaNode>();
  rebuilt(tree, (node) => {
    const { operator, left } = node as jsep.BinaryExpression;
    if (operator === '**') bases.add(left);
    return node;
  });
  const trees = oneChanged(tree, (node) => {
    // The base of a power is seldom what was written down wrong.
    if (node.type !== 'Literal' || bases.has(node)) return [];
    found.push((node as jsep.Literal).value as number);
    return [identifier(SOUGHT)];
  });
  let first: FittedConstant | undefined;
  for (const [index, open] of trees.entries()) {
    const value = valueAt(found, index);
    // A slip of a power of ten, a double or a half is tried as it is: far from the value, the tangent leads nowhere.
    const slip = SLIPS_OF_A_NUMBER.map((factor) => value * factor).find((each) =>
      fitsAt(filled(open, each)),
    );
    if (slip !== undefined) return { tree: filled(open, slip), found: value, fits: slip };
    const starts = period === null ? [value] : [value, 0, 180, 90];
    for (const start of starts) {
      const fit = nearest(open, start, probes, period);
      if (fit === undefined) continue;
      const put = (number: number) => filled(open, number);
      if (!fitsAt(put(fit)) || Math.abs(fit - value) < 1e-9 * Math.abs(value)) continue;
      const usual = USUAL.find(
        (each) =>
          Math.abs(each - fit) <= 0.03 * Math.abs(fit) && each !== value && fitsAt(put(each)),
      );
      const fits = usual ?? (Math.abs(fit) < 1e-9 ? 0 : Number(fit.toPrecision(4)));
      const fitted = { tree: put(fits), found: value, fits };
      if (usual !== undefined) return fitted;
      first ??= fitted;
    }
  }
  return first;
}

function filled(open: FormulaNode, value: number): FormulaNode {
  const [tree] = oneChanged(open, (node) =>
    node.type === 'Identifier' && (node as jsep.Identifier).name === SOUGHT ? [literal(value)] : [],
  );
  return tree ?? open;
}

/** Least squares in one number, by the tangent at the last one. */
function nearest(
  open: FormulaNode,
  start: number,
  probes: Places,
  period: FormulaSubject['period'],
): number | undefined {
  const at = (value: number) =>
    treeColumn(open, {
      count: probes.count,
      columns: new Map<string, Float64Array | number>([...probes.columns, [SOUGHT, value]]),
    });
  let value = start;
  for (let turn = 0; turn < 6; turn++) {
    const step = 1e-4 * Math.max(1e-2, Math.abs(value));
    const [here, there] = [at(value), at(value + step)];
    let [top, bottom] = [0, 0];
    for (let i = 0; i < probes.count; i++) {
      const error = wrapped(denseAt(here, i) - denseAt(probes.exact, i), period);
      const slope = wrapped(denseAt(there, i) - denseAt(here, i), period) / step;
      if (!Number.isFinite(error) || !Number.isFinite(slope)) continue;
      top += slope * error;
      bottom += slope * slope;
    }
    if (bottom === 0 || !Number.isFinite(top / bottom)) return undefined;
    const change = top / bottom;
    value -= change;
    if (Math.abs(change) < 1e-7 * Math.max(1, Math.abs(value))) break;
  }
  return Number.isFinite(value) ? value : undefined;
}

/** Middle of a list; `undefined` for none. */
export function middle(values: readonly number[]): number | undefined {
  const sorted = values.filter(Number.isFinite).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}
