/**
 * Refraction of radio waves: by how much the air lifts a satellite above its geometric elevation.
 *
 * Recommendation ITU-R P.834-9, section 1 (ray bending). `propagation` gives these functions out again; the
 * formula lives here since pointing comes first.
 */

import { inRange } from '../../errors.js';
import { RADIANS_PER_DEGREE } from '../../numeric/angle.js';

/** Refraction at one elevation. */
export interface Refraction {
  /** By how much the ray is bent in degrees, 0 or more: apparent elevation minus geometric one. */
  readonly refractionDeg: number;
  /** Geometric elevation in degrees: the straight line to the satellite. */
  readonly geometricElevationDeg: number;
  /** Apparent elevation in degrees: where the beam must point. */
  readonly apparentElevationDeg: number;
  /** Which edition's formula was used. */
  readonly edition: 'P.834-9';
  /** `formula`: the fitted formula, up to 10 degrees. `cotangent`: (n - 1) cot(elevation) above. */
  readonly method: 'formula' | 'cotangent';
  /** Fields outside the range that the Recommendation states: height 0 to 3 km, elevation from the horizon up. */
  readonly outsideStatedRange: readonly ('elevationDeg' | 'heightM')[];
}

/** Elevation in degrees up to which the fitted formulas hold. */
const FORMULA_TO_DEG = 10;

/** Refractivity n - 1 of the Recommendation's exponential atmosphere at a height in kilometres. */
function refractivity(heightKm: number): number {
  return 0.000315 * Math.exp(-0.1361 * heightKm);
}

/** Apparent elevation of the horizon seen from a height: -acos((Re / (Re + h)) n(0) / n(h)), or 0. */
function horizonDeg(heightKm: number): number {
  const cosine =
    ((6371 / (6371 + heightKm)) * (1 + refractivity(0))) / (1 + refractivity(heightKm));
  return cosine < 1 ? -Math.acos(cosine) / RADIANS_PER_DEGREE : 0;
}

function outside(apparentDeg: number, heightKm: number): Refraction['outsideStatedRange'] {
  return [
    ...(apparentDeg < horizonDeg(Math.max(0, heightKm)) ? (['elevationDeg'] as const) : []),
    ...(heightKm < 0 || heightKm > 3 ? (['heightM'] as const) : []),
  ];
}

/**
 * Apparent elevation of a satellite from its geometric elevation, for radio waves.
 *
 * Up to 10 degrees, with t the geometric elevation in degrees and h the station's height in kilometres, the
 * refraction is 1 / (1.728 + 0.5411 t + 0.03723 t^2 + h (0.1815 + 0.06272 t + 0.01380 t^2) + h^2 (0.01727 + 0.008288 t));
 * above, where that fit falls away too fast, (n - 1) cot t. The two meet with a step of about 0.006 degree.
 *
 * @param elevationDeg  Geometric elevation in degrees, -2 to 90.
 * @param heightM  Height of the station in metres, -500 to 9000; 0 when left out.
 * @throws {@link DomainError} naming `elevationDeg` or `heightM`.
 *
 * Source: Recommendation ITU-R P.834-9, section 1; cotangent form: first term of the refraction integral.
 * Accuracy: within 0.011 degree of integration through the Recommendation's average atmosphere; the weather of a day moves
 * refraction by about 0.1 degree (r.m.s.) at 1 degree of elevation.
 * @example
 * ```ts
 * import { apparentElevation } from 'slantpath/pointing';
 * apparentElevation(5).refractionDeg.toFixed(3); // => '0.186'
 * ```
 */
export function apparentElevation(elevationDeg: number, heightM = 0): Refraction {
  const t = inRange('elevationDeg', elevationDeg, -2, 90) + 0;
  const h = checkedHeightKm(heightM);
  const formula = t <= FORMULA_TO_DEG;
  const refractionDeg = formula
    ? 1 /
      (1.728 +
        0.5411 * t +
        0.03723 * t * t +
        h * (0.1815 + 0.06272 * t + 0.0138 * t * t) +
        h * h * (0.01727 + 0.008288 * t))
    : cotangentDeg(t, h);
  const apparentElevationDeg = t + refractionDeg;
  return {
    refractionDeg,
    geometricElevationDeg: t,
    apparentElevationDeg,
    edition: 'P.834-9',
    method: formula ? 'formula' : 'cotangent',
    outsideStatedRange: outside(apparentElevationDeg, h),
  };
}

/**
 * Geometric elevation of a satellite from the apparent elevation at which its peak was found, for radio waves.
 *
 * Up to 10 degrees, with t the apparent elevation in degrees and h the station's height in kilometres, the refraction is
 * 1 / (1.314 + 0.6437 t + 0.02869 t^2 + h (0.2305 + 0.09428 t + 0.01096 t^2) + 0.008583 h^2); above, (n - 1) cot t.
 *
 * @param elevationDeg  Apparent elevation in degrees, -1.5 to 90.
 * @param heightM  Height of the station in metres, -500 to 9000; 0 when left out.
 * @throws {@link DomainError} naming `elevationDeg` or `heightM`.
 *
 * Source: Recommendation ITU-R P.834-9, section 1.
 * Accuracy: as {@link apparentElevation}; there and back again closes within 0.02 degree, since both are fits.
 * @example
 * ```ts
 * import { geometricElevation } from 'slantpath/pointing';
 * geometricElevation(5).geometricElevationDeg.toFixed(2); // => '4.81'
 * ```
 */
export function geometricElevation(elevationDeg: number, heightM = 0): Refraction {
  const t = inRange('elevationDeg', elevationDeg, -1.5, 90) + 0;
  const h = checkedHeightKm(heightM);
  const formula = t <= FORMULA_TO_DEG;
  const refractionDeg = formula
    ? 1 /
      (1.314 +
        0.6437 * t +
        0.02869 * t * t +
        h * (0.2305 + 0.09428 * t + 0.01096 * t * t) +
        0.008583 * h * h)
    : cotangentDeg(t, h);
  return {
    refractionDeg,
    geometricElevationDeg: t - refractionDeg,
    apparentElevationDeg: t,
    edition: 'P.834-9',
    method: formula ? 'formula' : 'cotangent',
    outsideStatedRange: outside(t, h),
  };
}

function checkedHeightKm(heightM: number): number {
  return inRange('heightM', heightM, -500, 9000, 'is the height in metres?') / 1000;
}

function cotangentDeg(elevationDeg: number, heightKm: number): number {
  const cotangent = Math.tan((90 - elevationDeg) * RADIANS_PER_DEGREE);
  return (refractivity(heightKm) * cotangent) / RADIANS_PER_DEGREE;
}
