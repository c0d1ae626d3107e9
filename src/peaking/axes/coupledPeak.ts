/** Two axes at once: the peak of a lobe whose axes are coupled, from readings over both. */

import { DEGREES_PER_RADIAN } from '../../numeric/angle.js';
import type { LinearFit } from '../../numeric/leastSquares.js';
import { studentCoverageFactor } from '../../numeric/student.js';
import { bendProbability } from './bendTest.js';
import { coupledCoverage } from './coupledCoverage.js';
import { type CoupledPeak, type CoupledSamples, checkedCoupled } from './coupledOutcome.js';
import {
  extremum,
  isSummit,
  lobeSurface,
  plainSurface,
  type Surface,
  type SurfaceFit,
} from './surfaceFit.js';

/** Probability that a bend is chance, from which the readings count as flat. */
const BEND_BY_CHANCE = 0.01;
/** Least scatter in dB that readings are believed to have. */
const LEAST_SCATTER_DB = 0.01;
/** Widening of the coverage factor times the readings to spare, as in the fit of one axis. */
const MARGIN = 2;

/**
 * Fits the lobe of a reflector over two axes and gives its peak.
 *
 * A second-order surface a + g.x + x.H.x, whose peak is -H^-1 g / 2, with what a real lobe does beside it: it falls faster
 * beyond the half-power points, may have coma and trefoil, and may drift; as far as that is unknown, it widens the intervals.
 * Uncertainties by the first-order law from the slopes at the peak, intervals with Student's t.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: second-order response surface, e.g. G. E. P. Box and N. R. Draper, Empirical Model-Building (1987); coma and trefoil
 * as in R. J. Noll, J. Opt. Soc. Am. 66, 207 (1976).
 * Accuracy: where `coverage` is `at-least`, 94 % or more of the intervals hold the peak in every simulated cell
 * (`tests/peaking/others.simulation.test.ts`), where the label is given in 60 to 95 % of the runs.
 * @example
 * ```ts
 * import { fitCoupledPeak } from 'slantpath/peaking';
 * const grid = [-1, 0, 1].flatMap((y) => [-1, 0, 1].map((x) => [x, y] as const));
 * const fit = fitCoupledPeak({
 *   firstDeg: grid.map(([x]) => x),
 *   secondDeg: grid.map(([, y]) => y),
 *   levelDbm: grid.map(([x, y]) => -40 - 3 * (x - 0.2) ** 2 - 3 * (y + 0.1) ** 2),
 *   standardDeviationDb: 0.1,
 * });
 * fit.kind === 'peak' && fit.positionDeg.map((deg) => deg.toFixed(1)); // => ['0.2', '-0.1']
 * ```
 */
export function fitCoupledPeak(samples: CoupledSamples): CoupledPeak {
  const { first, second, levels, now, knownDb, stepDb, parabola } = checkedCoupled(samples);
  const readingsNeeded = knownDb === undefined ? 7 : 6;
  if (levels.length < readingsNeeded) return { kind: 'too-few', readingsNeeded };
  const axes = [scaled(first), scaled(second)] as const;
  const top = levels.reduce((a, b) => Math.max(a, b));
  const readings = {
    u: axes[0].values,
    v: axes[1].values,
    levels: levels.map((level) => level - top),
  };
  const plain = plainSurface(readings);
  if (plain === undefined) return { kind: 'too-few', readingsNeeded: readingsNeeded + 1 };
  const toldDb = knownDb === undefined ? undefined : Math.hypot(knownDb, stepDb / Math.sqrt(12));
  const start = plain.coefficients as unknown as Surface;
  // The lobe fits better than the bare surface wherever it is one, and a bend shows above less scatter then.
  const fit = !isSummit(start)
    ? undefined
    : parabola
      ? plainFit(plain, start, toldDb)
      : lobeSurface(readings, start, toldDb, stepDb / Math.sqrt(12));
  const assumedDb =
    fit?.standardDeviationDb ?? toldDb ?? Math.sqrt(plain.sumOfSquares / plain.degreesOfFreedom);
  const chance = bendProbability(
    fit?.surface ?? start,
    fit?.covariance ?? plain.covariance,
    assumedDb,
    toldDb === undefined ? (fit?.spare ?? plain.degreesOfFreedom) : 2e4,
  );
  if (!(chance < BEND_BY_CHANCE)) return { kind: 'flat', likelyDeg: null };
  if (fit === undefined && !isSummit(start)) return { kind: 'saddle', likelyDeg: null };
  const peak = extremum(fit?.surface ?? start);
  const positionDeg = [place(peak[0], axes[0]), place(peak[1], axes[1])] as const;
  if (Math.abs(peak[0]) > 1 || Math.abs(peak[1]) > 1)
    // The lobe's known shape makes a bend of a slope: so far out the surface alone must show one.
    return bendChance(plain.coefficients, plain, toldDb) < BEND_BY_CHANCE
      ? { kind: 'outside', likelyDeg: positionDeg }
      : { kind: 'flat', likelyDeg: null };
  if (fit === undefined) return { kind: 'flat', likelyDeg: null };
  const error = peakCovariance(fit);
  const spread = [Math.sqrt(error[0]), Math.sqrt(error[2])] as const;
  const told = toldDb !== undefined;
  const factor =
    (1 + (told || parabola ? 0 : MARGIN / fit.spare)) *
    studentCoverageFactor(0.95, told ? Number.POSITIVE_INFINITY : fit.spare);
  const interval = (k: 0 | 1) =>
    [
      place(peak[k] - factor * spread[k], axes[k]),
      place(peak[k] + factor * spread[k], axes[k]),
    ] as const;
  const [a, gu, gv, uu, uv, vv] = fit.surface;
  return {
    kind: 'peak',
    positionDeg,
    interval95Deg: [interval(0), interval(1)],
    coverage: coupledCoverage(fit, readings, peak, told),
    standardUncertaintyDeg: [spread[0] * axes[0].scale, spread[1] * axes[1].scale],
    correlationRatio: spread[0] > 0 && spread[1] > 0 ? error[1] / (spread[0] * spread[1]) : 0,
    ...ownAxes(fit.surface, axes, now, positionDeg),
    peakLevelDbm: top + a + (gu * peak[0] + gv * peak[1]) / 2,
    standardDeviationDb: fit.standardDeviationDb,
    meanLossAtPeakDb: -(uu * error[0] + uv * error[1] + vv * error[2]),
  };
}

/** Probability that the bend of the surface alone is chance. */
function bendChance(
  surface: readonly number[],
  { covariance, sumOfSquares, degreesOfFreedom }: LinearFit,
  toldDb: number | undefined,
): number {
  return bendProbability(
    surface,
    covariance,
    toldDb ?? Math.max(LEAST_SCATTER_DB, Math.sqrt(sumOfSquares / degreesOfFreedom)),
    toldDb === undefined ? degreesOfFreedom : 2e4,
  );
}

/** The surface alone, where the lobe is one by statement. */
function plainFit(plain: LinearFit, surface: Surface, toldDb: number | undefined): SurfaceFit {
  return {
    surface,
    covariance: plain.covariance,
    residuals: plain.residuals,
    leverages: plain.fittedVariances,
    standardDeviationDb: toldDb ?? Math.sqrt(plain.sumOfSquares / plain.degreesOfFreedom),
    spare: plain.degreesOfFreedom,
    beyond: false,
  };
}

/** Variances and covariance of the peak: first, both, second. */
function peakCovariance(fit: SurfaceFit): readonly [number, number, number] {
  const [, , , uu, uv, vv] = fit.surface;
  const [pu, pv] = extremum(fit.surface);
  // Slopes at the peak are linear in the coefficients; the peak's error is -H^-1 / 2 times theirs.
  const slopes = [
    [0, 1, 0, 2 * pu, pv, 0],
    [0, 0, 1, 0, pu, 2 * pv],
  ];
  const share = (p: number, q: number) =>
    (slopes[p] ?? []).reduce(
      (sum, s, i) =>
        sum +
        s * (slopes[q] ?? []).reduce((inner, r, j) => inner + r * (fit.covariance[i]?.[j] ?? 0), 0),
      0,
    );
  const determinant = 4 * uu * vv - uv * uv;
  const inverse = [
    [(2 * vv) / determinant, -uv / determinant],
    [-uv / determinant, (2 * uu) / determinant],
  ];
  const covariance = (p: number, q: number) => {
    let sum = 0;
    for (let i = 0; i < 2; i++)
      for (let j = 0; j < 2; j++)
        sum += (inverse[p]?.[i] ?? 0) * share(i, j) * (inverse[q]?.[j] ?? 0);
    return sum * fit.standardDeviationDb ** 2;
  };
  return [covariance(0, 0), covariance(0, 1), covariance(1, 1)];
}

/** The lobe's own axes in degrees, and the loss where the antenna stands. */
function ownAxes(
  [, , , uu, uv, vv]: Surface,
  [x, y]: readonly [Scaled, Scaled],
  now: readonly [number, number],
  positionDeg: readonly [number, number],
) {
  // Bends per square degree.
  const hx = -uu / x.scale ** 2;
  const hy = -vv / y.scale ** 2;
  const hxy = -uv / (2 * x.scale * y.scale);
  const mean = (hx + hy) / 2;
  const reach = Math.hypot((hx - hy) / 2, hxy);
  const dx = now[0] - positionDeg[0];
  const dy = now[1] - positionDeg[1];
  return {
    beamwidthDeg: [Math.sqrt(12 / (mean + reach)), Math.sqrt(12 / Math.max(mean - reach, 1e-12))],
    narrowAxisDeg: reach === 0 ? 0 : (DEGREES_PER_RADIAN * Math.atan2(hxy, (hx - hy) / 2)) / 2 + 0,
    couplingRatio: hxy / Math.sqrt(hx * hy) + 0,
    lossNowDb: hx * dx * dx + 2 * hxy * dx * dy + hy * dy * dy,
  } as const;
}

interface Scaled {
  readonly values: readonly number[];
  readonly middle: number;
  readonly scale: number;
}

const place = (p: number, axis: Scaled) => axis.middle + axis.scale * p;

function scaled(values: readonly number[]): Scaled {
  const low = values.reduce((a, b) => Math.min(a, b));
  const high = values.reduce((a, b) => Math.max(a, b));
  const middle = (low + high) / 2;
  const scale = high > low ? (high - low) / 2 : 1;
  return { values: values.map((value) => (value - middle) / scale), middle, scale };
}
