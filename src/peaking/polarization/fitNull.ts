/** The null of the cross-polar level from any readings over the rotation of the feed. */

import { DomainError, finite, inRange, object, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { RADIANS_PER_DEGREE } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';
import { gaussNewton } from '../../numeric/gaussNewton.js';
import { type LinearFit, linearLeastSquares } from '../../numeric/leastSquares.js';
import { studentCoverageFactor } from '../../numeric/student.js';
import type { IntervalCoverage } from '../fit/peakOutcome.js';
import { foreignSuspected } from '../fit/suspects.js';

/** Readings of the cross-polar level over the feed's rotation. */
export interface NullSamples {
  /** Rotations of the feed in degrees, positive clockwise as seen from behind the antenna. */
  readonly rotationDeg: ArrayLike<number>;
  /** Cross-polar level in dBm. */
  readonly levelDbm: ArrayLike<number>;
  /** Standard deviation of one reading in dB, if known; default found from the readings. */
  readonly standardDeviationDb?: number;
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
}

const NULL_SAMPLES_KEYS = {
  rotationDeg: true,
  levelDbm: true,
  standardDeviationDb: true,
  levelStepDb: true,
} satisfies Keys<NullSamples>;

/** Outcome of a fit of the null; read `kind` first. */
export type NullFit =
  | {
      readonly kind: 'null';
      /** Rotation of the null in degrees. */
      readonly nullDeg: number;
      /** Interval that holds it with 95 % confidence, in degrees. */
      readonly interval95Deg: readonly [number, number];
      /** How far that 95 % can be relied on. */
      readonly coverage: Exclude<IntervalCoverage, 'nominal'>;
      /** Depth of the null below the level at right angles, in dB: the isolation to be had; at most 90. */
      readonly depthDb: number;
      /** Level at right angles to the null in dBm: that of the wanted polarization. */
      readonly topLevelDbm: number;
      /** Standard deviation of one reading in dB. */
      readonly standardDeviationDb: number;
    }
  | {
      /** `not-enclosed`: the null lies beyond the readings; turn on towards `towards`. */
      readonly kind: 'not-enclosed';
      readonly towards: 'lower' | 'higher';
    }
  | {
      /** No null stands out from the scatter. */
      readonly kind: 'flat';
    }
  | {
      readonly kind: 'too-few';
      /** Readings needed at least. */
      readonly readingsNeeded: number;
    };

/** Least leak that is told from none: 90 dB. */
const LEAST_LEAK = 1e-9;

/** Half of a drift over all readings that may go unnoticed, in dB. */
const DRIFT_DB = 0.1;
/** Fewest readings, and least way off the null of two on each side, from which it is well enclosed. */
const FEWEST = 6;
const LEAST_SIDE_DEG = 2;

/**
 * Fits level = top + 10 log10(sin^2(rotation - null) + leak) by Gauss-Newton.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: projection of a linear field with a leak added as power; least squares in decibels.
 * Accuracy: where `coverage` is `at-least`, 94 % or more of the intervals hold the null in each simulated cell
 * (`tests/peaking/others.simulation.test.ts`).
 * @example
 * ```ts
 * import { fitNull } from 'slantpath/peaking';
 * const fit = fitNull({
 *   rotationDeg: [-20, -12, -5, 2, 10, 18, 25],
 *   levelDbm: [-48.5, -51.9, -57.3, -69.6, -58.3, -51.8, -48.7],
 * });
 * fit.kind === 'null' && fit.nullDeg.toFixed(1); // => '2.9'
 * ```
 */
export function fitNull(samples: NullSamples): NullFit {
  const { angles, levels, knownDb, stepDb } = checkedNull(samples);
  const n = levels.length;
  const readingsNeeded = knownDb === undefined ? 4 : 3;
  if (n < readingsNeeded) return { kind: 'too-few', readingsNeeded };
  const mean = levels.reduce((a, b) => a + b, 0) / n;
  const flat = levels.reduce((sum, y) => sum + (y - mean) ** 2, 0);
  const best = bestNull(angles, levels);
  if (best === undefined) return { kind: 'flat' };
  // Level at right angles in dB, rotation in radians, logarithm of the leak.
  const [top = 0, angle = 0, logLeak = 0] = best.values;
  const { fit, sumOfSquares, here } = best;
  const spare = Math.max(1, n - 3);
  const standardDeviationDb =
    knownDb ?? Math.max(stepDb / Math.sqrt(12), Math.sqrt(sumOfSquares / spare));
  // The null takes two quantities more than a constant; F by its closed form for two.
  const gain = flat - sumOfSquares;
  const chance =
    knownDb === undefined
      ? sumOfSquares <= 1e-20 * (1 + flat)
        ? 0
        : (1 + gain / sumOfSquares) ** (-spare / 2)
      : Math.exp(-gain / (2 * knownDb * knownDb));
  if (!(chance < 0.01)) return { kind: 'flat' };
  const least = angles.reduce((a, b) => Math.min(a, b));
  const most = angles.reduce((a, b) => Math.max(a, b));
  if (angle < least) return { kind: 'not-enclosed', towards: 'lower' };
  if (angle > most) return { kind: 'not-enclosed', towards: 'higher' };
  const told = knownDb !== undefined;
  const factor =
    (1 + 1 / spare) * studentCoverageFactor(0.95, told ? Number.POSITIVE_INFINITY : n - 3);
  const turn = fit.covariance[1]?.[1] ?? 0;
  const half =
    (factor * Math.hypot(standardDeviationDb * Math.sqrt(turn), driftOf(fit, here, n))) /
    RADIANS_PER_DEGREE;
  const nullDeg = angle / RADIANS_PER_DEGREE;
  const leak = Math.max(LEAST_LEAK, Math.exp(logLeak));
  return {
    kind: 'null',
    nullDeg,
    interval95Deg: [nullDeg - half, nullDeg + half],
    coverage: nullCoverage(
      angles,
      angle,
      {
        residuals: here.residuals,
        leverages: fit.fittedVariances,
        standardDeviationDb,
        spare: n - 3,
      },
      told,
    ),
    depthDb: ratioToDb((1 + leak) / leak),
    topLevelDbm: top + ratioToDb(1 + leak),
    standardDeviationDb,
  };
}

/** Shift of the null in radians by the drift in the order of the readings that may have gone unnoticed. */
function driftOf(
  { covariance }: LinearFit,
  { slopes }: ReturnType<typeof residualsAt>,
  n: number,
): number {
  const columns = slopes();
  let shift = 0;
  for (let i = 0; i < n; i++) {
    const gain = columns.reduce(
      (sum, column, j) => sum + (covariance[1]?.[j] ?? 0) * valueAt(column, i),
      0,
    );
    shift += gain * DRIFT_DB * ((2 * i) / Math.max(1, n - 1) - 1);
  }
  return shift;
}

/** `at-least` where enough was read on both sides of the null, and none of it looks foreign. */
function nullCoverage(
  angles: readonly number[],
  nullAt: number,
  fit: Parameters<typeof foreignSuspected>[0],
  told: boolean,
): Exclude<IntervalCoverage, 'nominal'> {
  const sides = [-1, 1].map(
    (sign) =>
      angles.filter((angle) => sign * (angle - nullAt) > LEAST_SIDE_DEG * RADIANS_PER_DEGREE)
        .length,
  );
  return angles.length < FEWEST || Math.min(...sides) < 2 || foreignSuspected(fit, told)
    ? 'not-assured'
    : 'at-least';
}

/** The best of several descents, each begun at a reading near the lowest. */
function bestNull(angles: readonly number[], levels: readonly number[]) {
  const order = levels.map((_, i) => i).sort((i, j) => valueAt(levels, i) - valueAt(levels, j));
  let best: ReturnType<typeof descend>;
  for (const i of order.slice(0, 3)) {
    const reached = descend(angles, levels, valueAt(angles, i));
    if (reached !== undefined && (best === undefined || reached.sumOfSquares < best.sumOfSquares))
      best = reached;
  }
  return best;
}

/** Descent from a rotation; `undefined` where the readings do not determine the null. */
function descend(angles: readonly number[], levels: readonly number[], from: number) {
  const top = levels.reduce((a, b) => Math.max(a, b));
  const low = levels.reduce((a, b) => Math.min(a, b));
  const { values, place } = gaussNewton({
    start: [top + 6, from + 1e-3, Math.log(dbToRatio(low - top - 8))],
    at: (state) => residualsAt(state, angles, levels),
    // A step of the rotation beyond a tenth of a radian leaves the region where the slope holds.
    firstShare: ([, d1 = 0, d2 = 0]) =>
      Math.min(1, 0.1 / (Math.abs(d1) + 1e-9), 3 / (Math.abs(d2) + 1e-9)),
    bounded: ([topDb = 0, angle = 0, logLeak = 0]) => [
      topDb,
      angle,
      Math.max(Math.log(LEAST_LEAK), Math.min(0, logLeak)),
    ],
    rounds: 60,
    halvings: 12,
    settledRatio: 1e-12,
  });
  // Where the leak is too small to be seen, rotation and level are all that is fitted.
  const slopes = place.slopes();
  const fit =
    linearLeastSquares(slopes, place.residuals) ??
    linearLeastSquares(slopes.slice(0, 2), place.residuals);
  return fit === undefined
    ? undefined
    : { values, fit, here: place, sumOfSquares: place.sumOfSquares };
}

function residualsAt(
  [top = 0, angle = 0, logLeak = 0]: readonly number[],
  angles: readonly number[],
  levels: readonly number[],
) {
  const leak = Math.exp(logLeak);
  const perNeper = 10 / Math.LN10;
  const power = angles.map((a) => Math.sin(a - angle) ** 2 + leak);
  const residuals = levels.map((y, i) => y - top - ratioToDb(valueAt(power, i)));
  return {
    residuals,
    sumOfSquares: residuals.reduce((sum, r) => sum + r * r, 0),
    slopes: () => [
      angles.map(() => 1),
      angles.map((a, i) => (-perNeper * Math.sin(2 * (a - angle))) / valueAt(power, i)),
      power.map((p) => (perNeper * leak) / p),
    ],
  };
}

function checkedNull(samples: NullSamples) {
  knownOnly('samples', samples, NULL_SAMPLES_KEYS);
  const rotations = object('rotationDeg', samples.rotationDeg);
  const levels = object('levelDbm', samples.levelDbm);
  if (rotations.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'rotationDeg',
      received: rotations,
      allowed: 'a list of at least one rotation',
    });
  if (rotations.length !== levels.length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'levelDbm',
      received: levels,
      allowed: `of the same length as rotationDeg (${rotations.length})`,
    });
  const stepDb = inRange('levelStepDb', samples.levelStepDb ?? 0, 0, 20);
  return {
    angles: Array.from(
      rotations,
      (deg, i) =>
        inRange('rotationDeg', finite('rotationDeg', deg, undefined, i), -90, 90, undefined, i) *
        RADIANS_PER_DEGREE,
    ),
    levels: Array.from(levels, (y, i) =>
      inRange('levelDbm', finite('levelDbm', y, undefined, i), -300, 300, undefined, i),
    ),
    knownDb:
      samples.standardDeviationDb === undefined
        ? undefined
        : Math.hypot(
            inRange(
              'standardDeviationDb',
              positive('standardDeviationDb', samples.standardDeviationDb),
              1e-6,
              50,
            ),
            stepDb / Math.sqrt(12),
          ),
    stepDb,
  };
}
