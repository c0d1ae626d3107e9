/**
 * Recommendation ITU-R P.676-13, Annex 1, section 1: imaginary part of the refractivity, line by line.
 *
 * Symbols: p dry pressure and e vapour pressure in hPa, theta = 300 / T, f frequency in GHz.
 */

import { OXYGEN_LINES, OXYGEN_ROW, VAPOUR_LINES, VAPOUR_ROW } from './p676-13-lines.js';

/** N'' of oxygen with the dry continuum; equations (2a), (3), (5) to (9). */
export function oxygenRefractivity(f: number, p: number, e: number, theta: number): number {
  const theta08 = theta ** 0.8;
  const strength = 1e-7 * p * theta * theta * theta;
  const broadening = 1e-4 * (p * theta08 + 1.1 * e * theta);
  const overlap = 1e-4 * (p + e) * theta08;
  let sum = 0;
  for (let row = 0; row < OXYGEN_LINES.length; row += OXYGEN_ROW) {
    const f0 = OXYGEN_LINES[row] as number;
    const raw = (OXYGEN_LINES[row + 3] as number) * broadening;
    // Zeeman splitting keeps the width of a line above a floor in thin air.
    const squared = raw * raw + 2.25e-6;
    const width = Math.sqrt(squared);
    const delta =
      ((OXYGEN_LINES[row + 4] as number) + (OXYGEN_LINES[row + 5] as number) * theta) * overlap;
    const below = f0 - f;
    const above = f0 + f;
    sum +=
      (OXYGEN_LINES[row + 1] as number) *
      Math.exp((OXYGEN_LINES[row + 2] as number) * (1 - theta)) *
      (f / f0) *
      ((width - delta * below) / (below * below + squared) +
        (width - delta * above) / (above * above + squared));
  }
  const debyeWidth = 5.6e-4 * (p + e) * theta08;
  const ratio = f / debyeWidth;
  const continuum =
    f *
    p *
    theta *
    theta *
    (6.14e-5 / (debyeWidth * (1 + ratio * ratio)) +
      (1.4e-12 * p * theta * Math.sqrt(theta)) / (1 + 1.9e-5 * f * Math.sqrt(f)));
  return strength * sum + continuum;
}

/** N'' of water vapour; equations (2b), (3), (5) to (6b). */
export function vapourRefractivity(f: number, p: number, e: number, theta: number): number {
  if (e === 0) return 0;
  const logTheta = Math.log(theta);
  const strength = 0.1 * e * theta * theta * theta * Math.sqrt(theta);
  const doppler = 2.1316e-12 / theta;
  let sum = 0;
  for (let row = 0; row < VAPOUR_LINES.length; row += VAPOUR_ROW) {
    const f0 = VAPOUR_LINES[row] as number;
    const raw =
      (VAPOUR_LINES[row + 3] as number) *
      1e-4 *
      (p * Math.exp((VAPOUR_LINES[row + 4] as number) * logTheta) +
        (VAPOUR_LINES[row + 5] as number) *
          e *
          Math.exp((VAPOUR_LINES[row + 6] as number) * logTheta));
    const width = 0.535 * raw + Math.sqrt(0.217 * raw * raw + doppler * f0 * f0);
    const squared = width * width;
    const below = f0 - f;
    const above = f0 + f;
    sum +=
      (VAPOUR_LINES[row + 1] as number) *
      Math.exp((VAPOUR_LINES[row + 2] as number) * (1 - theta)) *
      (f / f0) *
      width *
      (1 / (below * below + squared) + 1 / (above * above + squared));
  }
  return strength * sum;
}
