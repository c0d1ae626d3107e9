/** Readings on a reflector's lobe: level, slopes, and the most likely lobe with what was known before counted in. */

import { denseAt, valueAt } from '../../numeric/columns.js';
import {
  type LobeShape,
  shapeByNull,
  shapeLevelDb,
  shapeLopsided,
  shapeLopsidedSlope,
  shapeSlope,
} from './lobeShape.js';
import {
  type DefiniteFactor,
  definiteFactor,
  definiteInverse,
  definiteSolution,
} from './normalEquations.js';

/** Readings brought to beamwidths and to levels relative to the highest, and what is known beforehand. */
export interface LobeProblem {
  /** Places in expected beamwidths. */
  readonly places: Float64Array;
  /** Levels in dB relative to the highest. */
  readonly levels: Float64Array;
  /** Times scaled to [-1, 1]. */
  readonly times: Float64Array;
  readonly shape: LobeShape;
  /** Standard deviation of (expected over true beamwidth)^2 about 1; `undefined` where the width is free, 0 exact. */
  readonly narrowDoubt: number | undefined;
  /** Standard deviation in dB of half the drift over the readings; `undefined` where it is free, 0 none. */
  readonly driftDoubt: number | undefined;
  /** Noise floor in dB relative to the highest reading, where there is one. */
  readonly floorDb: number | undefined;
  /** Whether the floor is found from the readings. */
  readonly fitFloor: boolean;
}

/** Places of the quantities in a state. */
export const TOP = 0;
export const PEAK = 1;
/** (Expected over true beamwidth)^2: how narrow the lobe is. */
export const NARROW = 2;
export const NULL_RATIO = 3;
const LOPSIDED = 4;
export const DRIFT = 5;
export const FLOOR = 6;

/** The most likely lobe. */
export interface LobeSolution {
  readonly state: Float64Array;
  /** Sum of the squares of the residuals, and of the prior departures in units of the scatter. */
  readonly sumOfSquares: number;
  readonly residuals: Float64Array;
  /** Quantities that were free, in the order of the matrices. */
  readonly active: readonly number[];
  /** Slopes of the readings by those, row by row. */
  readonly slopes: Float64Array;
  /** Covariance of the open quantities for unit scatter. */
  readonly inverse: Float64Array;
  /** Weight of what was known beforehand on each of them, and its pull at the state. */
  readonly priorWeights: Float64Array;
  readonly priorPulls: Float64Array;
  /** What the prior departures contribute to the sum of squares. */
  readonly penalty: number;
}

const PER_DB = Math.LN10 / 10;
const ROUNDS = 25;
/** Degrees of freedom of what is known of the width. */
const WIDTH_TAILS = 4;
const NOTHING = new Float64Array(0);
/** Bounds of how narrow a lobe may get while it is sought, as ratio of squared widths. */
const NARROW_LIMITS = [0.02, 50] as const;

/** Quantities that a problem leaves open; the peak only where it is not held. */
function openQuantities(problem: LobeProblem, peakHeld: boolean): number[] {
  const { shape } = problem;
  return [
    TOP,
    ...(peakHeld ? [] : [PEAK]),
    ...(problem.narrowDoubt === 0 ? [] : [NARROW]),
    ...(shape.nullRatioDoubt > 0 ? [NULL_RATIO] : []),
    ...(shape.lopsidedDb > 0 ? [LOPSIDED] : []),
    ...(problem.driftDoubt === 0 ? [] : [DRIFT]),
    ...(problem.fitFloor ? [FLOOR] : []),
  ];
}

/** Open quantities about which nothing is known beforehand. */
export function freeQuantities(problem: LobeProblem): number {
  return (
    2 +
    (problem.narrowDoubt === undefined ? 1 : 0) +
    (problem.driftDoubt === undefined ? 1 : 0) +
    (problem.fitFloor ? 1 : 0)
  );
}

/** Standard deviation and middle of what is known of a quantity; `undefined` where nothing is. */
function prior(problem: LobeProblem, quantity: number): readonly [number, number] | undefined {
  const { shape, narrowDoubt, driftDoubt } = problem;
  if (quantity === NARROW) return narrowDoubt === undefined ? undefined : [narrowDoubt, 1];
  if (quantity === NULL_RATIO) return [shape.nullRatioDoubt, shape.nullRatio];
  if (quantity === LOPSIDED) return [shape.lopsidedDb, 0];
  if (quantity === DRIFT) return driftDoubt === undefined ? undefined : [driftDoubt, 0];
  return undefined;
}

/** What is known of the open quantities: its pull on each at a state, and what its departures add to the sum of squares. */
function priorPull(problem: LobeProblem, active: readonly number[], variance: number) {
  const priors = active.map((quantity) => {
    const known = prior(problem, quantity);
    return known === undefined ? undefined : ([variance / known[0] ** 2, known[1]] as const);
  });
  /** Weight of what is known of a quantity at a state, and its share of the sum of squares. */
  const pull = (j: number, at: Float64Array) => {
    const known = priors[j];
    if (known === undefined) return { weight: 0, pull: 0, square: 0 };
    const away = denseAt(at, valueAt(active, j)) - known[1];
    const square = known[0] * away * away;
    if (active[j] !== NARROW || problem.shape.nullRatio === 0)
      return { weight: known[0], pull: -known[0] * away, square };
    // Student's t instead of the normal: people are at times further off than they say.
    const tail = 1 + square / variance / WIDTH_TAILS;
    const weight = (known[0] * (WIDTH_TAILS + 1)) / WIDTH_TAILS / tail;
    return { weight, pull: -weight * away, square: variance * (WIDTH_TAILS + 1) * Math.log(tail) };
  };
  const penalty = (at: Float64Array) => {
    let sum = 0;
    for (let j = 0; j < active.length; j++) sum += pull(j, at).square;
    return sum;
  };
  return { pull, penalty };
}

/** A state with its residuals and slopes. */
interface LobeColumns {
  readonly state: Float64Array;
  readonly residuals: Float64Array;
  readonly slopes: Float64Array;
  square: number;
}

/** Normal equations at a state: of the readings, and of what is known beforehand on the diagonal. */
function fillNormal(
  { state, residuals, slopes }: LobeColumns,
  weights: Float64Array,
  pull: ReturnType<typeof priorPull>['pull'],
  normal: Float64Array,
  right: Float64Array,
): void {
  const m = right.length;
  normal.fill(0);
  right.fill(0);
  for (let i = 0; i < residuals.length; i++) {
    const weight = denseAt(weights, i);
    if (weight === 0) continue;
    for (let j = 0; j < m; j++) {
      const slope = weight * denseAt(slopes, i * m + j);
      right[j] = denseAt(right, j) + slope * denseAt(residuals, i);
      for (let k = 0; k <= j; k++)
        normal[j * m + k] = denseAt(normal, j * m + k) + slope * denseAt(slopes, i * m + k);
    }
  }
  for (let j = 0; j < m; j++) {
    const known = pull(j, state);
    normal[j * m + j] = denseAt(normal, j * m + j) + known.weight;
    right[j] = denseAt(right, j) + known.pull;
  }
}

/**
 * Lobe that makes readings and prior knowledge most likely, by Gauss-Newton with halved steps.
 *
 * @param weights  1 for a reading that counts, 0 for one that does not.
 * @param variance  Variance of one reading in dB^2, against which the prior knowledge is weighed.
 * @param start  State to begin from; with `peakHeld` its peak is kept.
 */
export function likelyLobe(
  problem: LobeProblem,
  weights: Float64Array,
  variance: number,
  start: Float64Array,
  peakHeld = false,
): LobeSolution | undefined {
  const active = openQuantities(problem, peakHeld);
  const m = active.length;
  const n = problem.places.length;
  const { pull, penalty } = priorPull(problem, active, variance);
  // Two sets of columns, this round's and the trial's, change places as the trial is taken.
  const columns = (): LobeColumns => ({
    state: Float64Array.from(start),
    residuals: new Float64Array(n),
    slopes: new Float64Array(n * m),
    square: 0,
  });
  const look = (at: LobeColumns) => {
    at.square =
      penalty(at.state) + fillSlopes(problem, at.state, active, weights, at.residuals, at.slopes);
  };
  let here = columns();
  let next = columns();
  look(here);
  // A change of the sum of squares by so little moves no end of an interval; a plain parabola is followed to the last digit.
  const settled = variance * (peakHeld ? 1e-3 : problem.shape.nullRatio === 0 ? 1e-24 : 1e-7);
  let factor: DefiniteFactor | undefined;
  const normal = new Float64Array(m * m);
  const right = new Float64Array(m);
  for (let round = 0; round < ROUNDS; round++) {
    fillNormal(here, weights, pull, normal, right);
    factor = definiteFactor(normal, m);
    if (factor === undefined) return undefined;
    const { state } = here;
    const step = definiteSolution(factor, right);
    for (let halving = 0, share = 1; halving < 10; halving++, share /= 2) {
      for (let j = 0; j < m; j++) {
        const quantity = valueAt(active, j);
        const moved = denseAt(state, quantity) + share * denseAt(step, j);
        next.state[quantity] =
          quantity === NARROW
            ? Math.min(NARROW_LIMITS[1], Math.max(NARROW_LIMITS[0], moved))
            : moved;
      }
      look(next);
      if (next.square <= here.square) break;
    }
    if (!(next.square <= here.square)) break;
    const gain = here.square - next.square;
    [here, next] = [next, here];
    if (gain <= settled) break;
  }
  if (factor === undefined) return undefined;
  const { state } = here;
  return {
    state,
    sumOfSquares: here.square,
    residuals: here.residuals,
    active,
    slopes: here.slopes,
    inverse: peakHeld ? NOTHING : definiteInverse(factor),
    priorWeights: Float64Array.from(active, (_, j) => pull(j, state).weight),
    priorPulls: Float64Array.from(active, (_, j) => pull(j, state).pull),
    penalty: penalty(state),
  };
}

/** Residuals, slopes of the readings by the open quantities, and the weighted sum of squares. */
function fillSlopes(
  problem: LobeProblem,
  state: Float64Array,
  active: readonly number[],
  weights: Float64Array,
  residuals: Float64Array,
  slopes: Float64Array,
): number {
  const m = active.length;
  const { nullRatio, bend } = problem.shape;
  const root = Math.sqrt(denseAt(state, NARROW));
  const peak = denseAt(state, PEAK);
  const moreNull = denseAt(state, NULL_RATIO) - nullRatio;
  const lopsided = denseAt(state, LOPSIDED);
  let sum = 0;
  for (let i = 0; i < residuals.length; i++) {
    const away = denseAt(problem.places, i) - peak;
    const offset = away * root;
    const lean = nullRatio === 0 ? 0 : shapeLopsided(offset, nullRatio);
    const byNull = nullRatio === 0 ? 0 : shapeByNull(offset, nullRatio);
    const bare =
      denseAt(state, TOP) +
      shapeLevelDb(offset, nullRatio, bend) +
      moreNull * byNull +
      lopsided * lean +
      denseAt(state, DRIFT) * denseAt(problem.times, i);
    let signal = 1;
    let noise = 0;
    if (problem.floorDb !== undefined) {
      const excess = Math.min(300, Math.max(-300, denseAt(state, FLOOR) - bare));
      const power = Math.exp(PER_DB * excess);
      signal = 1 / (1 + power);
      noise = Math.log1p(power) / PER_DB;
    }
    const residual = denseAt(problem.levels, i) - bare - noise;
    residuals[i] = residual;
    sum += denseAt(weights, i) * residual * residual;
    const slope =
      shapeSlope(offset, nullRatio, bend) +
      (lopsided === 0 ? 0 : lopsided * shapeLopsidedSlope(offset, nullRatio));
    for (let j = 0; j < m; j++) {
      let value: number;
      switch (active[j]) {
        case TOP:
          value = signal;
          break;
        case PEAK:
          value = -signal * slope * root;
          break;
        case NARROW:
          value = (signal * slope * away) / (2 * root);
          break;
        case NULL_RATIO:
          value = signal * byNull;
          break;
        case LOPSIDED:
          value = signal * lean;
          break;
        case DRIFT:
          value = signal * denseAt(problem.times, i);
          break;
        default:
          value = 1 - signal;
      }
      slopes[i * m + j] = value;
    }
  }
  return sum;
}
