/**
 * The least worst: the point at which the largest of several smooth functions is smallest.
 *
 * The largest is replaced by the smooth log-sum-exp (1/p) ln sum exp(p f), which lies above it by at most
 * ln(n)/p, and minimised by damped Newton steps while p grows; derivatives are central differences.
 * Idea: entropic smoothing of minimax problems (X.-S. Li, Science in China A 34, 1991).
 */

import { valueAt } from './columns.js';
import { solveLinear } from './linearSystem.js';

/** Where the largest function value is smallest. */
export interface LeastWorst {
  /** The point. */
  readonly at: readonly number[];
  /** The largest of the functions there. */
  readonly value: number;
}

/** Largest of a list of numbers. */
function largest(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
}

/**
 * A local least worst near `start`; the global one where the functions are convex.
 *
 * @param functions  All function values at a point, of order 0.01 to 1000.
 * @param step  Step of the differences, small against the scale on which the functions bend.
 * Bounded: at most 7 x 30 Newton steps.
 */
export function leastWorst(
  functions: (point: readonly number[]) => readonly number[],
  start: readonly number[],
  step: number,
): LeastWorst {
  let best: LeastWorst = { at: start, value: largest(functions(start)) };
  let point = start;
  for (let sharpness = 0.1; sharpness < 2e5; sharpness *= 10) {
    point = smoothMinimum(functions, point, step, sharpness);
    const value = largest(functions(point));
    if (value < best.value) best = { at: point, value };
  }
  return best;
}

function smoothMinimum(
  functions: (point: readonly number[]) => readonly number[],
  start: readonly number[],
  step: number,
  sharpness: number,
): readonly number[] {
  const smooth = (values: readonly number[]): number => {
    const top = largest(values);
    return (
      top +
      Math.log(values.reduce((sum, f) => sum + Math.exp(sharpness * (f - top)), 0)) / sharpness
    );
  };
  let point = start;
  let value = smooth(functions(point));
  let damping = 1e-6;
  for (let iteration = 0; iteration < 30; iteration++) {
    const { gradient, hessian } = derivatives(functions, point, step, sharpness);
    let moved = false;
    for (let trial = 0; trial < 25 && !moved; trial++) {
      const scale = hessian.reduce((sum, row, i) => sum + Math.abs(valueAt(row, i)), 1e-12);
      const damped = hessian.map((row, i) =>
        row.map((entry, j) => (i === j ? entry + damping * scale : entry)),
      );
      const change = solveLinear(damped, gradient);
      const next = change && point.map((x, i) => x - valueAt(change, i));
      const nextValue = next ? smooth(functions(next)) : Number.POSITIVE_INFINITY;
      if (next && nextValue < value) {
        moved = true;
        const gain = value - nextValue;
        point = next;
        value = nextValue;
        damping = Math.max(damping / 10, 1e-12);
        if (gain < 1e-10) return point;
      } else damping *= 10;
    }
    if (!moved) return point;
  }
  return point;
}

/** Gradient and second derivatives of the smooth maximum from those of the functions. */
function derivatives(
  functions: (point: readonly number[]) => readonly number[],
  point: readonly number[],
  step: number,
  sharpness: number,
): { readonly gradient: number[]; readonly hessian: number[][] } {
  const n = point.length;
  const shifted = (...moves: readonly (readonly [number, number])[]): readonly number[] => {
    const moved = [...point];
    for (const [index, by] of moves) moved[index] = valueAt(moved, index) + by;
    return functions(moved);
  };
  const middle = functions(point);
  const plus = point.map((_, i) => shifted([i, step]));
  const minus = point.map((_, i) => shifted([i, -step]));
  const both = point.map((_, i) =>
    point.map((__, j) => (j > i ? shifted([i, step], [j, step]) : middle)),
  );
  const top = largest(middle);
  const shares = middle.map((f) => Math.exp(sharpness * (f - top)));
  const total = shares.reduce((a, b) => a + b, 0);
  const value = (lists: readonly (readonly number[])[], i: number, k: number): number =>
    valueAt(lists[i] as readonly number[], k);
  const gradient = new Array<number>(n).fill(0);
  const hessian = point.map(() => new Array<number>(n).fill(0));
  middle.forEach((f, k) => {
    const share = valueAt(shares, k) / total;
    const slope = point.map((_, i) => (value(plus, i, k) - value(minus, i, k)) / (2 * step));
    for (let i = 0; i < n; i++) {
      const row = hessian[i] as number[];
      gradient[i] = valueAt(gradient, i) + share * valueAt(slope, i);
      for (let j = i; j < n; j++) {
        const bend =
          i === j
            ? (value(plus, i, k) - 2 * f + value(minus, i, k)) / step ** 2
            : ((both[i] as (readonly number[])[])[j]?.[k] ?? f) / step ** 2 -
              (value(plus, i, k) + value(plus, j, k) - f) / step ** 2;
        row[j] =
          valueAt(row, j) + share * (bend + sharpness * valueAt(slope, i) * valueAt(slope, j));
      }
    }
  });
  for (let i = 0; i < n; i++)
    for (let j = i; j < n; j++) {
      const entry =
        valueAt(hessian[i] as number[], j) -
        sharpness * valueAt(gradient, i) * valueAt(gradient, j);
      (hessian[i] as number[])[j] = entry;
      (hessian[j] as number[])[i] = entry;
    }
  return { gradient, hessian };
}
