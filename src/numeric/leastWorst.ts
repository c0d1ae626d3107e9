/**
 * The least worst: the point at which the largest of several smooth functions is smallest.
 *
 * The largest is replaced by the smooth log-sum-exp (1/p) ln sum exp(p f), which lies above it by at most
 * ln(n)/p, and minimised by damped Newton steps while p grows. The functions give their derivatives, or central
 * differences stand for them.
 * Idea: entropic smoothing of minimax problems (X.-S. Li, Science in China A 34, 1991).
 */

import { entryAt, valueAt } from './columns.js';
import { solveLinear } from './linearSystem.js';

/** Functions at a point: their values, and their derivatives where they are asked for. */
export interface AtPoint {
  readonly values: readonly number[];
  /** For each function its first derivatives, and its second ones by rows. */
  readonly derivatives: () => {
    readonly slopes: readonly (readonly number[])[];
    readonly bends: readonly (readonly (readonly number[])[])[];
  };
}

/** Where the largest function value is smallest. */
export interface LeastWorst {
  /** The point. */
  readonly at: readonly number[];
  /** The largest of the functions there. */
  readonly value: number;
}

/** Smoothing that a search begins with: all functions guide its first steps. */
const BLUNT = 0.1;

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
  sharpness = BLUNT,
): LeastWorst {
  const withDifferences = (point: readonly number[]): AtPoint => {
    const values = functions(point);
    return { values, derivatives: () => differences(functions, point, values, step) };
  };
  return leastWorstOf(withDifferences, start, sharpness);
}

/**
 * The same for functions that give their own derivatives.
 *
 * @param sharpness  What the search begins with; a sharp beginning keeps it near its start.
 */
export function leastWorstOf(
  functions: (point: readonly number[]) => AtPoint,
  start: readonly number[],
  sharpness = BLUNT,
): LeastWorst {
  let here = { point: start, at: functions(start) };
  let best: LeastWorst = { at: start, value: largest(here.at.values) };
  for (let sharp = sharpness; sharp < 2e5; sharp *= 10) {
    here = smoothMinimum(functions, here, sharp);
    const value = largest(here.at.values);
    if (value < best.value) best = { at: here.point, value };
  }
  return best;
}

interface Place {
  readonly point: readonly number[];
  readonly at: AtPoint;
}

/** Promised gain below which a search at a sharpness ends, times that sharpness: far below what the smoothing adds. */
const LEAST_GAIN = 1e-4;

function smoothMinimum(
  functions: (point: readonly number[]) => AtPoint,
  start: Place,
  sharpness: number,
): Place {
  const smooth = (values: readonly number[]): number => {
    const top = largest(values);
    return (
      top +
      Math.log(values.reduce((sum, f) => sum + Math.exp(sharpness * (f - top)), 0)) / sharpness
    );
  };
  let here = start;
  let value = smooth(here.at.values);
  let damping = 1e-6;
  for (let iteration = 0; iteration < 30; iteration++) {
    const { gradient, hessian } = smoothDerivatives(here, sharpness);
    let moved = false;
    for (let trial = 0; trial < 25 && !moved; trial++) {
      const scale = hessian.reduce((sum, row, i) => sum + Math.abs(valueAt(row, i)), 1e-12);
      const damped = hessian.map((row, i) =>
        row.map((entry, j) => (i === j ? entry + damping * scale : entry)),
      );
      const change = solveLinear(damped, gradient);
      // What the step promises by its own slope; below the rounding of the functions no trial would show it.
      const promised = change?.reduce((sum, by, i) => sum + by * valueAt(gradient, i), 0) ?? 1;
      if (promised >= 0 && promised * sharpness < LEAST_GAIN) return here;
      const point = change && here.point.map((x, i) => x - valueAt(change, i));
      const at = point && functions(point);
      const nextValue = at ? smooth(at.values) : Number.POSITIVE_INFINITY;
      if (at && nextValue < value) {
        moved = true;
        here = { point, at };
        value = nextValue;
        damping = Math.max(damping / 10, 1e-12);
      } else damping *= 10;
    }
    if (!moved) return here;
  }
  return here;
}

/** Gradient and second derivatives of the smooth maximum from those of the functions. */
function smoothDerivatives(
  { point, at }: Place,
  sharpness: number,
): { readonly gradient: number[]; readonly hessian: number[][] } {
  const { slopes, bends } = at.derivatives();
  const n = point.length;
  const top = largest(at.values);
  const shares = at.values.map((f) => Math.exp(sharpness * (f - top)));
  const total = shares.reduce((a, b) => a + b, 0);
  const gradient = new Array<number>(n).fill(0);
  const hessian = point.map(() => new Array<number>(n).fill(0));
  shares.forEach((unscaled, k) => {
    const share = unscaled / total;
    const slope = slopes[k] as readonly number[];
    for (let i = 0; i < n; i++) {
      const row = entryAt(hessian, i);
      const bend = bends[k]?.[i] as readonly number[];
      gradient[i] = valueAt(gradient, i) + share * valueAt(slope, i);
      for (let j = i; j < n; j++)
        row[j] =
          valueAt(row, j) +
          share * (valueAt(bend, j) + sharpness * valueAt(slope, i) * valueAt(slope, j));
    }
  });
  for (let i = 0; i < n; i++)
    for (let j = i; j < n; j++) {
      const entry =
        valueAt(entryAt(hessian, i), j) - sharpness * valueAt(gradient, i) * valueAt(gradient, j);
      entryAt(hessian, i)[j] = entry;
      entryAt(hessian, j)[i] = entry;
    }
  return { gradient, hessian };
}

/** First and second derivatives of all functions by central differences. */
function differences(
  functions: (point: readonly number[]) => readonly number[],
  point: readonly number[],
  middle: readonly number[],
  step: number,
): ReturnType<AtPoint['derivatives']> {
  const shifted = (...moves: readonly (readonly [number, number])[]): readonly number[] => {
    const moved = [...point];
    for (const [index, by] of moves) moved[index] = valueAt(moved, index) + by;
    return functions(moved);
  };
  const plus = point.map((_, i) => shifted([i, step]));
  const minus = point.map((_, i) => shifted([i, -step]));
  const both = point.map((_, i) =>
    point.map((__, j) => (j > i ? shifted([i, step], [j, step]) : middle)),
  );
  const value = (lists: readonly (readonly number[])[], i: number, k: number): number =>
    valueAt(lists[i] as readonly number[], k);
  const slopes = middle.map((_, k) =>
    point.map((__, i) => (value(plus, i, k) - value(minus, i, k)) / (2 * step)),
  );
  const bends = middle.map((f, k) =>
    point.map((_, i) =>
      point.map((__, j) => {
        if (i === j) return (value(plus, i, k) - 2 * f + value(minus, i, k)) / step ** 2;
        const corner = both[Math.min(i, j)]?.[Math.max(i, j)] as readonly number[];
        return (valueAt(corner, k) - value(plus, i, k) - value(plus, j, k) + f) / step ** 2;
      }),
    ),
  );
  return { slopes, bends };
}
