/** Where the peak of a reflector's lobe lies with 95 % confidence, all that is not known counted in. */

import { denseAt, valueAt } from '../../numeric/columns.js';
import { studentCoverageFactor, studentExceedance } from '../../numeric/student.js';
import { fiellerInterval } from './fieller.js';
import { type ForeignReadings, foreignReadings, type ScatterBasis } from './foreignReadings.js';
import {
  FLOOR,
  freeQuantities,
  type LobeProblem,
  type LobeSolution,
  likelyLobe,
  NARROW,
  NULL_RATIO,
  PEAK,
  TOP,
} from './lobeModel.js';
import { SHAPE_REACH } from './lobeShape.js';
import { fitParabola } from './parabolaFit.js';

/** A lobe with the scatter that belongs to it. */
export interface SettledLobe {
  readonly solution: LobeSolution;
  /** Variance of one reading in dB^2. */
  readonly variance: number;
  /** Readings to spare, those that a stated scatter is worth included; infinite where it is exactly known. */
  readonly spare: number;
  readonly weights: Float64Array;
}

/** The peak and its interval, in expected beamwidths. */
export interface PeakInterval {
  readonly lobe: SettledLobe;
  readonly from: number;
  readonly to: number;
  /** Standard uncertainty of the peak. */
  readonly standardUncertainty: number;
  /** The likely answers to which readings are foreign. */
  readonly answers: readonly ForeignReadings[];
  /** Readings beyond the main lobe, by index. */
  readonly beyond: readonly number[];
}

/** Farthest from the peak that an end of the interval is sought, in beamwidths. */
const FARTHEST = 6;

/**
 * Widening of the coverage factor times the readings to spare: readings judge each other by the scatter about the same lobe, so
 * now and then a sound one is left out or a foreign one kept. Chosen by simulation.
 */
const FOUND_MARGIN = 1;
const TOLD_MARGIN = 0.5;
/** The same on top where a drift is found from the readings as well: with nine of them one quantity more leaves a scatter that is too small. */
const DRIFT_MARGIN = 1;

/** Variance in dB^2 to begin with where none is stated. */
const FIRST_VARIANCE = 0.01;

/** The most likely lobe for some readings, and the scatter about it. */
export function settledLobe(
  problem: LobeProblem,
  weights: Float64Array,
  basis: ScatterBasis,
  start: Float64Array,
): SettledLobe | undefined {
  let used = 0;
  for (const weight of weights) if (weight > 0) used++;
  const { readings, square } = basis.before;
  const spare = used - freeQuantities(problem) + readings;
  if (basis.stated === undefined && spare < 1) return undefined;
  let variance =
    basis.stated ?? Math.max(basis.least, readings > 0 ? square / readings : FIRST_VARIANCE);
  let solution = likelyLobe(problem, weights, variance, start);
  if (basis.stated === undefined)
    for (let round = 0; round < 8 && solution !== undefined; round++) {
      const found = Math.max(basis.least, (solution.sumOfSquares + square) / spare);
      const settled = Math.abs(found / variance - 1) < 0.02;
      variance = found;
      if (settled) break;
      solution = likelyLobe(problem, weights, variance, solution.state);
    }
  if (solution === undefined) return undefined;
  const stated = basis.stated !== undefined;
  return { solution, variance, spare: stated ? Number.POSITIVE_INFINITY : spare, weights };
}

/** Variance of the peak's place. */
function peakVariance({ solution, variance }: SettledLobe): number {
  const j = solution.active.indexOf(PEAK);
  return variance * denseAt(solution.inverse, j * solution.active.length + j);
}

/** Standard uncertainty of how narrow the lobe is: (expected over true beamwidth)^2. */
export function narrowDoubtOf({ solution, variance }: SettledLobe): number {
  const j = solution.active.indexOf(NARROW);
  return j < 0
    ? 0
    : Math.sqrt(variance * denseAt(solution.inverse, j * solution.active.length + j));
}

/** Distance from the peak to where the readings speak against it at the coverage factor, to one side. */
function reach(problem: LobeProblem, lobe: SettledLobe, factor: number, sign: number): number {
  const { solution, variance, weights } = lobe;
  const peak = denseAt(solution.state, PEAK);
  let distance = Math.min(FARTHEST, factor * Math.sqrt(peakVariance(lobe)));
  let start = solution.state;
  let inside = 0;
  let outside = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 14; round++) {
    const trial = Float64Array.from(start);
    trial[PEAK] = peak + sign * distance;
    const held = likelyLobe(problem, weights, variance, trial, true);
    if (held === undefined) return FARTHEST;
    start = held.state;
    const rise = Math.sqrt(Math.max(0, held.sumOfSquares - solution.sumOfSquares) / variance);
    if (Math.abs(rise / factor - 1) < 0.005) break;
    if (rise < factor) {
      inside = distance;
      if (distance >= FARTHEST) return FARTHEST;
    } else outside = distance;
    const wanted = distance * Math.min(2.5, Math.max(0.3, factor / Math.max(rise, 1e-9)));
    distance =
      wanted > inside && wanted < outside
        ? Math.min(FARTHEST, wanted)
        : (inside + Math.min(outside, FARTHEST)) / 2;
  }
  return distance;
}

/** The same in closed form where the lobe is a plain parabola and nothing was known beforehand. */
function plainEnds(
  problem: LobeProblem,
  { solution, variance, weights }: SettledLobe,
  factor: number,
) {
  const { shape, narrowDoubt, driftDoubt, floorDb } = problem;
  const free = narrowDoubt === undefined;
  if (shape.nullRatio > 0 || floorDb !== undefined || driftDoubt !== 0) return undefined;
  if (!free && narrowDoubt > 0) return undefined;
  const fit = fitParabola({ ...problem, times: undefined, bend: free ? undefined : -12 }, weights);
  if (fit === undefined) return undefined;
  const at = (i: number, j: number) => fit.covariance[i]?.[j] ?? 0;
  const covariance = { bb: at(1, 1), bc: at(1, 2), cc: at(2, 2) };
  const slopes = fiellerInterval(fit, covariance, factor * Math.sqrt(variance));
  const peak = denseAt(solution.state, PEAK);
  return slopes.kind === 'bounded'
    ? { lower: peak - slopes.from, upper: slopes.to - peak }
    : undefined;
}

/** The lobe settled together with what belongs to it: which readings are foreign, and which lie beyond the main lobe. */
function settledReadings(
  problem: LobeProblem,
  basis: ScatterBasis,
  start: Float64Array,
  usable: Float64Array,
  keepAll: boolean,
) {
  const weights = Float64Array.from(usable);
  let beyond: number[] = [];
  let lobe = settledLobe(problem, weights, basis, start);
  let answers: readonly ForeignReadings[] = [{ leftOut: [], probability: 1 }];
  for (let round = 0; round < 3 && lobe !== undefined; round++) {
    const { state } = lobe.solution;
    const root = Math.sqrt(denseAt(state, NARROW));
    beyond =
      problem.shape.nullRatio === 0
        ? []
        : Array.from(problem.places).flatMap((place, i) =>
            Math.abs(place - denseAt(state, PEAK)) * root > SHAPE_REACH ? [i] : [],
          );
    const allowed = without(usable, beyond);
    if (!keepAll) answers = foreignReadings(problem, lobe.solution, allowed, basis);
    const next = without(allowed, answers[0]?.leftOut ?? []);
    if (next.every((weight, i) => weight === lobe?.weights[i])) break;
    const again = settledLobe(problem, next, basis, state);
    if (again === undefined) break;
    lobe = again;
  }
  return lobe && { lobe, answers, beyond, allowed: without(usable, beyond) };
}

/** Weights with some readings left out. */
const without = (weights: Float64Array, leftOut: readonly number[]) =>
  Float64Array.from(weights, (weight, i) => (leftOut.includes(i) ? 0 : weight));

/** One answer about foreign readings with the lobe of the others, and how far its peak reaches to each side. */
interface Branch {
  readonly probability: number;
  readonly own: SettledLobe;
  readonly factor: number;
  readonly margin: number;
  readonly peak: number;
  readonly lower: number;
  readonly upper: number;
}

/** Widening of the coverage factor. */
function marginOf(problem: LobeProblem, basis: ScatterBasis, spare: number): number {
  if (problem.shape.nullRatio === 0) return 1;
  const told = basis.before.readings > 0 ? TOLD_MARGIN : FOUND_MARGIN;
  return 1 + (told + (problem.driftDoubt === undefined ? DRIFT_MARGIN : 0)) / spare;
}

/** The branch of a lobe. */
function branchOf(
  problem: LobeProblem,
  basis: ScatterBasis,
  own: SettledLobe,
  probability: number,
): Branch {
  const margin = marginOf(problem, basis, own.spare);
  const factor = margin * studentCoverageFactor(0.95, own.spare);
  const ends = plainEnds(problem, own, factor) ?? {
    lower: reach(problem, own, factor, -1),
    upper: reach(problem, own, factor, 1),
  };
  return {
    probability,
    own,
    factor,
    margin,
    peak: denseAt(own.solution.state, PEAK),
    ...ends,
  };
}

/** End of the interval to one side: where the mean agreement of the branches falls to 5 %. */
function intervalEnd(branches: readonly Branch[], sign: number): number {
  const edges = branches.map(({ peak, lower, upper }) => peak + sign * (sign < 0 ? lower : upper));
  if (edges.length === 1) return valueAt(edges, 0);
  const whole = branches.reduce((sum, { probability }) => sum + probability, 0);
  /** Probability of a departure as large, were the peak there. */
  const agreement = (place: number) =>
    branches.reduce((sum, { probability, own, factor, margin, peak, lower, upper }) => {
      const away = place - peak;
      const t = ((factor / margin) * Math.abs(away)) / (away < 0 ? lower : upper);
      return sum + (probability / whole) * 2 * studentExceedance(t, own.spare);
    }, 0);
  let outside = sign < 0 ? Math.min(...edges) : Math.max(...edges);
  let inside = (branches[0] as Branch).peak;
  for (let halving = 0; halving < 14; halving++) {
    const middle = (inside + outside) / 2;
    if (agreement(middle) >= 0.05) inside = middle;
    else outside = middle;
  }
  return outside;
}

/**
 * Peak and interval. A single answer about foreign readings gives the profile of the sum of squares at Student's t; several
 * give the places at which their mean probability of a departure as large, weighed by their own, is 5 % or more.
 */
export function peakInterval(
  problem: LobeProblem,
  basis: ScatterBasis,
  start: Float64Array,
  usable: Float64Array,
  keepAll: boolean,
): PeakInterval | undefined {
  const settled = settledReadings(problem, basis, start, usable, keepAll);
  if (settled === undefined) return undefined;
  const { lobe, answers, beyond, allowed } = settled;
  const branches = answers.flatMap(({ leftOut, probability }, index) => {
    const own =
      index === 0
        ? lobe
        : settledLobe(problem, without(allowed, leftOut), basis, lobe.solution.state);
    return own === undefined ? [] : [branchOf(problem, basis, own, probability)];
  });
  return {
    lobe,
    from: intervalEnd(branches, -1),
    to: intervalEnd(branches, 1),
    // One reading on top of the lobe says nothing of the first order about its place: the quadratic form has no end there.
    standardUncertainty: Math.min(FARTHEST, Math.sqrt(peakVariance(lobe))),
    answers,
    beyond,
  };
}

/** State to begin from: a parabola a + b u + c u^2 over places in expected beamwidths. */
export function startState(
  { a, b, c }: { readonly a: number; readonly b: number; readonly c: number },
  shape: { readonly nullRatio: number },
  floorDb: number | undefined,
): Float64Array {
  const state = new Float64Array(7);
  state[PEAK] = -b / (2 * c);
  state[TOP] = a - (b * b) / (4 * c);
  state[NARROW] = -c / 12;
  state[NULL_RATIO] = shape.nullRatio;
  state[FLOOR] = floorDb ?? 0;
  return state;
}
