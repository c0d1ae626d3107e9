/** The peak of a lobe from any samples of level against position. */

import { DomainError, finite, inRange, object, positive } from '../errors.js';
import { linearLeastSquares } from '../numeric/leastSquares.js';
import { studentCoverageFactor } from '../numeric/student.js';
import type { PeakFit } from './peakOutcome.js';

/** Readings of level against position on one axis. */
export interface PeakSamples {
  /** Positions in degrees on the sky along one axis, in any order, repeats allowed. */
  readonly positionDeg: ArrayLike<number>;
  /** Level at each position in dBm (any level in dB serves, the differences count). */
  readonly levelDbm: ArrayLike<number>;
  /** Where the antenna stands now, in degrees; default the last position. */
  readonly currentPositionDeg?: number;
  /** Half-power beamwidth in degrees, if it is known; default fitted. */
  readonly halfPowerBeamwidthDeg?: number;
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
  /** Standard deviation of one reading in dB, if it is known; default found from the readings. */
  readonly scatterDb?: number;
}

/**
 * Fits the main lobe, a parabola in dB, and gives the peak with an honest 95 % interval.
 *
 * The interval is Fieller's: all positions at which the slope of the fit does not differ from zero.
 * It is exact for few readings of unknown scatter.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16 (1954); lobe 12 (offset / beamwidth)^2 dB.
 * @example
 * ```ts
 * import { fitPeak } from 'slantpath/peaking';
 * const fit = fitPeak({
 *   positionDeg: [-1, -0.5, 0, 0.5, 1],
 *   levelDbm: [-44.1, -41.2, -39.9, -40.9, -43.6],
 * });
 * fit.kind === 'peak' && fit.positionDeg.toFixed(2); // => '0.03'
 * ```
 */
export function fitPeak(samples: PeakSamples): PeakFit {
  object('samples', samples);
  const { positionDeg, levelDbm } = checkedColumns(samples);
  const n = positionDeg.length;
  const stepDb = inRange('levelStepDb', samples.levelStepDb ?? 0, 0, 20);
  const knownScatterDb =
    samples.scatterDb === undefined ? undefined : positive('scatterDb', samples.scatterDb);
  const knownWidthDeg =
    samples.halfPowerBeamwidthDeg === undefined
      ? undefined
      : inRange('halfPowerBeamwidthDeg', samples.halfPowerBeamwidthDeg, 1e-4, 180);
  const nowDeg = finite(
    'currentPositionDeg',
    samples.currentPositionDeg ?? (positionDeg[n - 1] as number),
  );
  const coefficients = knownWidthDeg === undefined ? 3 : 2;
  const places = new Set(positionDeg).size;
  const readingsNeeded = coefficients + (knownScatterDb === undefined ? 1 : 0);
  if (n < readingsNeeded || places < coefficients)
    return {
      kind: 'too-few',
      readings: n,
      places,
      readingsNeeded,
      placesNeeded: coefficients,
    };
  const lowDeg = Math.min(...positionDeg);
  const highDeg = Math.max(...positionDeg);
  const middleDeg = (lowDeg + highDeg) / 2;
  const scaleDeg = (highDeg - lowDeg) / 2;
  const u = positionDeg.map((x) => (x - middleDeg) / scaleDeg);
  const top = levelDbm.reduce((a, b) => Math.max(a, b));
  const bend = knownWidthDeg === undefined ? 0 : -12 * (scaleDeg / knownWidthDeg) ** 2;
  const columns = [
    u.map(() => 1),
    u,
    ...(knownWidthDeg === undefined ? [u.map((x) => x * x)] : []),
  ];
  const fit = linearLeastSquares(
    columns,
    levelDbm.map((y, i) => y - top - bend * (u[i] as number) ** 2),
  );
  if (fit === undefined)
    return { kind: 'too-few', readings: n, places, readingsNeeded, placesNeeded: coefficients };
  const foundDb = fit.degreesOfFreedom > 0 ? Math.sqrt(fit.sumOfSquares / fit.degreesOfFreedom) : 0;
  const scatterDb = knownScatterDb ?? Math.max(foundDb, stepDb / Math.sqrt(12));
  const factor = studentCoverageFactor(
    0.95,
    knownScatterDb === undefined ? fit.degreesOfFreedom : Number.POSITIVE_INFINITY,
  );
  const b = fit.coefficients[1] as number;
  const c = knownWidthDeg === undefined ? (fit.coefficients[2] as number) : bend;
  const variance = (i: number, j: number) =>
    (fit.covariance[i]?.[j] ?? 0) * (scatterDb * factor) ** 2;
  // Fieller: (b + 2 c x)^2 = t^2 var(b + 2 c x) as a quadratic in 2 x.
  const qa = c * c - variance(2, 2);
  const qb = b * c - variance(1, 2);
  const qc = b * b - variance(1, 1);
  if (qa <= 0) {
    if (qc > 0)
      return b < 0
        ? { kind: 'edge', side: 'lower', edgeDeg: lowDeg }
        : { kind: 'edge', side: 'higher', edgeDeg: highDeg };
    return { kind: 'flat', fromDeg: lowDeg, toDeg: highDeg, scatterDb };
  }
  const at = -b / (2 * c);
  const positionAt = middleDeg + scaleDeg * at;
  if (c > 0) return { kind: 'not-main-lobe', reason: 'dip', positionDeg: positionAt };
  if (at < -1) return { kind: 'edge', side: 'lower', edgeDeg: lowDeg };
  if (at > 1) return { kind: 'edge', side: 'higher', edgeDeg: highDeg };
  const spread = Math.sqrt(Math.max(0, qb * qb - qa * qc));
  const ends = [(-qb - spread) / (2 * qa), (-qb + spread) / (2 * qa)] as const;
  const halfPowerBeamwidthDeg = knownWidthDeg ?? scaleDeg * Math.sqrt(-12 / c);
  const interval95Deg = [middleDeg + scaleDeg * ends[0], middleDeg + scaleDeg * ends[1]] as const;
  const lossDb = (fromDeg: number, toDeg: number) =>
    12 * ((fromDeg - toDeg) / halfPowerBeamwidthDeg) ** 2;
  const upperDb = (x: number) => Math.max(lossDb(x, interval95Deg[0]), lossDb(x, interval95Deg[1]));
  return {
    kind: 'peak',
    positionDeg: positionAt,
    interval95Deg,
    standardUncertaintyDeg:
      (scaleDeg * scatterDb * Math.sqrt(slopeVariance(fit.covariance, at))) / (2 * Math.abs(c)),
    peakLevelDbm: top + (fit.coefficients[0] as number) - (b * b) / (4 * c),
    halfPowerBeamwidthDeg,
    scatterDb,
    degreesOfFreedom: knownScatterDb === undefined ? fit.degreesOfFreedom : null,
    lossNowDb: lossDb(nowDeg, positionAt),
    lossNowUpper95Db: upperDb(nowDeg),
    lossAtPeakUpper95Db: upperDb(positionAt),
    outliers: [],
  };
}

/** Variance of the slope b + 2 c x for unit variance of a reading. */
function slopeVariance(covariance: readonly (readonly number[])[], x: number): number {
  const entry = (i: number, j: number) => covariance[i]?.[j] ?? 0;
  return entry(1, 1) + 4 * x * entry(1, 2) + 4 * x * x * entry(2, 2);
}

function checkedColumns(samples: PeakSamples): {
  readonly positionDeg: number[];
  readonly levelDbm: number[];
} {
  const { positionDeg, levelDbm } = samples;
  object('positionDeg', positionDeg);
  object('levelDbm', levelDbm);
  if (levelDbm.length !== positionDeg.length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'levelDbm',
      received: levelDbm,
      allowed: `as long as positionDeg (${positionDeg.length})`,
    });
  return {
    positionDeg: Array.from(positionDeg, (x, i) =>
      inRange('positionDeg', x, -720, 720, undefined, i),
    ),
    levelDbm: Array.from(levelDbm, (y, i) => inRange('levelDbm', y, -300, 300, undefined, i)),
  };
}
