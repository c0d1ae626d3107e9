/** What the way a feed lights a round aperture makes of beamwidth, side lobes and efficiency. */

import { inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { DEGREES_PER_RADIAN } from '../numeric/angle.js';
import { lambdaFunction } from '../numeric/bessel.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';
import { minimumBetween } from '../numeric/minimum.js';
import { bracketedRoot } from '../numeric/root.js';

/** How a feed lights the aperture: field C + (1 - C) (1 - rho^2)^n, with C the field at the rim. */
export interface Illumination {
  /** Power at the rim below that at the centre, in dB, 0 (even) to 60. */
  readonly edgeTaperDb: number;
  /** Exponent n of the parabola: 1 or 2; default 1. */
  readonly exponent?: 1 | 2;
}

const ILLUMINATION_KEYS = { edgeTaperDb: true, exponent: true } satisfies Keys<Illumination>;

/** What an illumination makes of the aperture. */
export interface IlluminatedAperture {
  /** Field at the rim over that at the centre, 0 to 1. */
  readonly edgeFieldRatio: number;
  /** Gain over that of even illumination, 0 to 1; spillover and other losses not counted. */
  readonly taperEfficiencyRatio: number;
  /** Half-power beamwidth in degrees at one wavelength of diameter, for beams narrow enough that sine and angle agree. */
  readonly beamwidthFactorDeg: number;
  /** Off-axis angle of the first null in degrees at one wavelength of diameter. */
  readonly firstNullFactorDeg: number;
  /** Highest level of the first side lobe below the peak, in dB, positive. */
  readonly firstSideLobeDb: number;
}

/** Field at u = pi D sin(angle) / wavelength over that on the axis. */
export function apertureField(edge: number, exponent: number, u: number): number {
  const tapered = (1 - edge) / (exponent + 1);
  return (
    (edge * lambdaFunction(1, u) + tapered * lambdaFunction(exponent + 1, u)) / (edge + tapered)
  );
}

/** Checked rim field and exponent of an illumination. */
export function checkedIllumination(illumination: Illumination): {
  readonly edge: number;
  readonly exponent: 1 | 2;
} {
  const input = known('illumination', illumination, ILLUMINATION_KEYS);
  const taperDb = inRange('edgeTaperDb', input.edgeTaperDb, 0, 60, 'a taper is positive');
  const exponent = inRange('exponent', input.exponent ?? 1, 1, 2) === 2 ? 2 : 1;
  return { edge: Math.sqrt(dbToRatio(-taperDb)), exponent };
}

/**
 * Beamwidth, first null, first side lobe and efficiency of a round aperture by its illumination.
 *
 * The pattern of C + (1 - C) (1 - rho^2)^n is C L1(u) + (1 - C) / (n + 1) L_(n+1)(u), with
 * L_m(u) = m! (2 / u)^m J_m(u) and u = pi D sin(angle) / wavelength.
 *
 * @param illumination  `edgeTaperDb` 0 to 60; `exponent` 1 or 2, default 1.
 * @throws {@link DomainError} naming `edgeTaperDb` or `exponent`.
 *
 * Source: S. Silver, Microwave Antenna Theory and Design (1949), section 6.8; W. L. Stutzman and G. A. Thiele, Antenna
 * Theory and Design, table of tapered circular apertures.
 * Accuracy: 1e-9 relative of the formula.
 * @example
 * ```ts
 * import { illuminatedAperture } from 'slantpath/antenna';
 * illuminatedAperture({ edgeTaperDb: 0 }).beamwidthFactorDeg.toFixed(3); // => '58.957'
 * ```
 */
export function illuminatedAperture(illumination: Illumination): IlluminatedAperture {
  const { edge, exponent } = checkedIllumination(illumination);
  const field = (u: number) => apertureField(edge, exponent, u);
  const mean = edge + (1 - edge) / (exponent + 1);
  const square =
    edge * edge + (2 * edge * (1 - edge)) / (exponent + 1) + (1 - edge) ** 2 / (2 * exponent + 1);
  const halfU = bracketedRoot((u) => field(u) - Math.SQRT1_2, { from: 0.5, to: 3.5 }) ?? 0;
  const nullU = firstZero(field, 3.5);
  const nextU = firstZero(field, nullU + 0.5);
  const lobe = minimumBetween((u) => -Math.abs(field(u)), { from: nullU, to: nextU });
  const perU = DEGREES_PER_RADIAN / Math.PI;
  return {
    edgeFieldRatio: edge,
    taperEfficiencyRatio: (mean * mean) / square,
    beamwidthFactorDeg: 2 * halfU * perU,
    firstNullFactorDeg: nullU * perU,
    firstSideLobeDb: -2 * ratioToDb(-lobe.value),
  };
}

/** First zero of the field above `from`; the lobes are about pi apart. */
function firstZero(field: (u: number) => number, from: number): number {
  for (let u = from; u < from + 10; u += 0.1) {
    if (field(u) * field(u + 0.1) <= 0) return bracketedRoot(field, { from: u, to: u + 0.1 }) ?? u;
  }
  return from;
}
