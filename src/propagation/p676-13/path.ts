/** Recommendation ITU-R P.676-13, Annex 1, section 2.2: one bent ray through a column of air. */

import { DEGREES_PER_RADIAN } from '../../numeric/angle.js';
import { denseAt } from '../../numeric/columns.js';
import type { GasColumn } from './column.js';
import { dryContinuum, frequencyTerms, oxygenSum, vapourSum } from './lineSum.js';

/** What a ray meets on its way to space. */
export interface RayThroughGas {
  /** Oxygen and the dry continuum, dB. */
  readonly oxygenDb: number;
  /** Water vapour, dB. */
  readonly waterVapourDb: number;
  /** Bending, degrees. */
  readonly bendingDeg: number;
  /** Excess path, metres. */
  readonly excessPathM: number;
}

/** Follows a ray of frequency f in GHz whose apparent elevation has the cosine given; equations (13) to (19). */
export function rayThroughGas(column: GasColumn, f: number, cosElevation: number): RayThroughGas {
  const { lines } = column;
  const { oxygen: oxygenTerms, vapour: vapourTerms } = frequencyTerms(f);
  let oxygen = 0;
  let vapour = 0;
  let bending = 0;
  let excessKm = 0;
  let invariant = 0;
  let leaving = 0;
  for (let layer = 0; layer < column.count; layer++) {
    const thicknessKm = denseAt(column.thicknessKm, layer);
    const radiusKm = denseAt(column.radiusKm, layer);
    const refractivity = denseAt(column.refractivity, layer);
    const topKm = radiusKm + thicknessKm;
    // Snell's law on spheres: n r sin(beta) stays the same all along the ray.
    if (layer === 0) invariant = (1 + refractivity) * radiusKm * cosElevation;
    const entering = Math.min(1, invariant / ((1 + refractivity) * radiusKm));
    if (layer > 0) bending += Math.asin(entering) - leaving;
    leaving = Math.asin(Math.min(1, invariant / ((1 + refractivity) * topKm)));
    const along = radiusKm * Math.sqrt(1 - entering * entering);
    // The chord through the shell, written so that thin layers lose no digits.
    const shell = thicknessKm * (radiusKm + topKm);
    const chordKm = shell / (along + Math.sqrt(along * along + shell));
    const p = denseAt(column.dryPressure, layer);
    const e = denseAt(column.vapourPressure, layer);
    const theta = denseAt(column.theta, layer);
    oxygen += chordKm * (oxygenSum(lines, layer, oxygenTerms) + dryContinuum(f, p, e, theta));
    vapour += chordKm * vapourSum(lines, layer, vapourTerms);
    excessKm += chordKm * refractivity;
  }
  const scale = 0.182 * f * f;
  return {
    oxygenDb: scale * oxygen,
    waterVapourDb: scale * vapour,
    bendingDeg: bending * DEGREES_PER_RADIAN,
    excessPathM: excessKm * 1000,
  };
}
