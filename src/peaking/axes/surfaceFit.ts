/** A lobe over two axes: a second-order surface, and beside it what a real lobe may do, as far as it is known beforehand. */

import { entryAt, valueAt } from '../../numeric/columns.js';
import { type LinearFit, linearLeastSquares } from '../../numeric/leastSquares.js';
import {
  reflectorShape,
  SHAPE_REACH,
  shapeByNull,
  shapeLevelDb,
  shapeLopsided,
} from '../lobe/lobeShape.js';

/** Coefficients of 1, u, v, u^2, uv, v^2. */
export type Surface = readonly [number, number, number, number, number, number];

/** Readings over scaled axes, levels relative to the highest. */
export interface SurfaceReadings {
  readonly u: readonly number[];
  readonly v: readonly number[];
  readonly levels: readonly number[];
}

/** A fitted surface; covariances for unit variance of a reading. */
export interface SurfaceFit {
  readonly surface: Surface;
  readonly covariance: readonly (readonly number[])[];
  readonly residuals: Float64Array;
  /** Share of each reading in its own fitted value, 0 to 1. */
  readonly leverages: Float64Array;
  readonly standardDeviationDb: number;
  /** Readings used less quantities of which nothing was known. */
  readonly spare: number;
  /** Whether readings beyond the main lobe had to be used, for want of others. */
  readonly beyond: boolean;
}

/** Free quantities of the surface. */
const SURFACE_QUANTITIES = 6;
/** Standard deviations in dB one beamwidth off: coma, which has one lobe side, and trefoil, which has three. */
const COMA_DB = 3.5;
const TREFOIL_DB = 2;
/** Half of a drift over all readings, in dB. */
const DRIFT_DB = 0.1;
const LEAST_SCATTER_DB = 0.01;
const ROUNDS = 12;
/** Beamwidths off the peak to which readings are used. */
const REACH = 0.95 * SHAPE_REACH;

/** The surface alone, all readings counting alike; `undefined` where the places do not determine it. */
export function plainSurface({ u, v, levels }: SurfaceReadings): LinearFit | undefined {
  return linearLeastSquares(surfaceColumns(u, v), levels);
}

function surfaceColumns(u: readonly number[], v: readonly number[]): number[][] {
  return [
    u.map(() => 1),
    [...u],
    [...v],
    u.map((x) => x * x),
    u.map((x, i) => x * valueAt(v, i)),
    v.map((y) => y * y),
  ];
}

/** Where the surface has its extremum. */
export function extremum([, gu, gv, uu, uv, vv]: Surface): readonly [number, number] {
  const determinant = 4 * uu * vv - uv * uv;
  return [(uv * gv - 2 * vv * gu) / determinant, (uv * gu - 2 * uu * gv) / determinant];
}

/** Whether it is a maximum. */
export function isSummit([, , , uu, uv, vv]: Surface): boolean {
  return 4 * uu * vv - uv * uv > 0 && uu + vv < 0;
}

/** A reading's place about the peak, in beamwidths and radians. */
interface RoundPlace {
  readonly r: number;
  readonly angle: number;
}

/** Places as they lie on a round lobe, 12 r^2 dB down: by the Cholesky factor of the bends. */
function roundPlaces(readings: SurfaceReadings, surface: Surface): readonly RoundPlace[] {
  const [pu, pv] = extremum(surface);
  const [, , , uu, uv, vv] = surface;
  const a = Math.sqrt(-uu / 12);
  const b = -uv / 24 / a;
  const c = Math.sqrt(Math.max(1e-12, -vv / 12 - b * b));
  return readings.u.map((u, i) => {
    const [x, y] = [u - pu, valueAt(readings.v, i) - pv];
    return { r: Math.hypot(a * x + b * y, c * y), angle: Math.atan2(c * y, a * x + b * y) };
  });
}

/** What a real lobe may do beside the surface: the standard deviation of each quantity and its column. */
function departures(
  places: readonly RoundPlace[],
  times: readonly number[],
): readonly (readonly [number, readonly number[]])[] {
  const { nullRatio, nullRatioDoubt } = reflectorShape();
  const lean = (turns: number, quarter: number) =>
    places.map(
      ({ r, angle }) =>
        shapeLopsided(r, nullRatio) * Math.cos(turns * angle - (quarter * Math.PI) / 2),
    );
  const bent = (quarter: number) =>
    places.map(
      ({ r, angle }) => shapeByNull(r, nullRatio) * Math.cos(2 * angle - (quarter * Math.PI) / 2),
    );
  return [
    [nullRatioDoubt, places.map(({ r }) => shapeByNull(r, nullRatio))],
    [nullRatioDoubt, bent(0)],
    [nullRatioDoubt, bent(1)],
    [COMA_DB, lean(1, 0)],
    [COMA_DB, lean(1, 1)],
    [TREFOIL_DB, lean(3, 0)],
    [TREFOIL_DB, lean(3, 1)],
    [DRIFT_DB, times],
  ];
}

/**
 * Fits the surface with the next orders of a reflector's lobe beside it: a known fall beyond the half-power points, a null whose
 * place is uncertain, coma, trefoil and a drift in the order of the readings. All of them have no slope at the peak, so the peak
 * is that of the surface; as they hang on where it lies, the fit is repeated until it stays.
 *
 * @param start  A summit to begin from.
 * @param toldDb  Standard deviation of a reading, where it is known.
 */
export function lobeSurface(
  readings: SurfaceReadings,
  start: Surface,
  toldDb: number | undefined,
  leastDb = 0,
): SurfaceFit | undefined {
  const shape = reflectorShape();
  const n = readings.levels.length;
  let surface = start;
  let assumedDb = toldDb ?? 0.1;
  let found: SurfaceFit | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const [pu, pv] = extremum(surface);
    const places = roundPlaces(readings, surface);
    const near = places.flatMap(({ r }, i) => (r <= REACH ? [i] : []));
    const least = toldDb === undefined ? 1 : 0;
    const beyond = near.length - SURFACE_QUANTITIES < least;
    const used = beyond ? places.map((_, i) => i) : near;
    const spare = used.length - SURFACE_QUANTITIES;
    if (spare < least) return found;
    const at = <T>(values: readonly T[]) => used.map((i) => values[i] as T);
    const unknowns = departures(
      at(places),
      used.map((i) => (2 * i) / Math.max(1, n - 1) - 1),
    );
    // What is known of a quantity counts as one more reading of it, 0 with its doubt.
    const columns = surfaceColumns(at(readings.u), at(readings.v)).map((column) => [
      ...column,
      ...unknowns.map(() => 0),
    ]);
    unknowns.forEach(([doubt, column], j) => {
      columns.push([...column, ...unknowns.map((_, k) => (k === j ? assumedDb / doubt : 0))]);
    });
    const targets = used.map((i) => {
      const { r } = entryAt(places, i);
      return (
        valueAt(readings.levels, i) - (shapeLevelDb(r, shape.nullRatio, shape.bend) + 12 * r * r)
      );
    });
    const fit = linearLeastSquares(columns, [...targets, ...unknowns.map(() => 0)]);
    if (fit === undefined) return found;
    const next = fit.coefficients.slice(0, SURFACE_QUANTITIES) as unknown as Surface;
    if (!isSummit(next)) return found;
    const [nu, nv] = extremum(next);
    const stayed = Math.hypot(nu - pu, nv - pv) < 1e-5;
    surface = next;
    const standardDeviationDb =
      toldDb ?? Math.max(LEAST_SCATTER_DB, leastDb, Math.sqrt(fit.sumOfSquares / spare));
    found = {
      surface,
      covariance: fit.covariance,
      residuals: Float64Array.from(used, (_, i) => valueAt(fit.residuals, i)),
      leverages: fit.fittedVariances.subarray(0, used.length),
      standardDeviationDb,
      spare,
      beyond,
    };
    if (stayed && Math.abs(standardDeviationDb / assumedDb - 1) < 0.02) break;
    assumedDb = standardDeviationDb;
  }
  return found;
}
