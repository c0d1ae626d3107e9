/**
 * Recommendation ITU-R P.676-13, Annex 1, section 1: strength and width of every line in given air. They do
 * not depend on the frequency, so that many frequencies can share them.
 *
 * The two halves of the line shape, equation (5), are brought over one denominator: with G = f0^2 + f^2,
 * D = f0^2 - f^2 and q the squared width, F = (2 f / f0) (width (G + q) - delta f0 (D + q)) / (D^2 + q (2 G + q)).
 * What does not depend on f is kept here, three numbers an oxygen line and two a water vapour line.
 *
 * Symbols: p dry pressure and e vapour pressure in hPa, theta = 300 / T.
 */

import { valueAt } from '../../numeric/columns.js';
import { OXYGEN_LINES, OXYGEN_ROW, VAPOUR_LINES, VAPOUR_ROW } from './lines.js';

/** Number of oxygen lines. */
export const OXYGEN_COUNT = OXYGEN_LINES.length / OXYGEN_ROW;

/** Number of water vapour lines. */
export const VAPOUR_COUNT = VAPOUR_LINES.length / VAPOUR_ROW;

/** State of all lines in a number of layers of air, layer after layer, line after line. */
export interface LineState {
  /** Oxygen: q, 2 S width / f0, 2 S delta. */
  readonly oxygen: Float64Array;
  /** Water vapour: q, 2 S width / f0. */
  readonly vapour: Float64Array;
}

/** Empty state for a number of layers. */
export function emptyLineState(layers: number): LineState {
  return {
    oxygen: new Float64Array(3 * layers * OXYGEN_COUNT),
    vapour: new Float64Array(2 * layers * VAPOUR_COUNT),
  };
}

/** Sets the oxygen lines of a layer; equations (3), (6a), (6b), (7). */
export function setOxygen(
  state: LineState,
  layer: number,
  p: number,
  e: number,
  theta: number,
): void {
  const theta08 = theta ** 0.8;
  const strength = 2e-7 * p * theta * theta * theta;
  const broadening = 1e-4 * (p * theta08 + 1.1 * e * theta);
  const overlap = 1e-4 * (p + e) * theta08;
  let at = 3 * layer * OXYGEN_COUNT;
  for (let row = 0; row < OXYGEN_LINES.length; row += OXYGEN_ROW, at += 3) {
    const raw = valueAt(OXYGEN_LINES, row + 3) * broadening;
    // Zeeman splitting keeps the width above a floor in thin air.
    const squared = raw * raw + 2.25e-6;
    const doubled =
      strength *
      valueAt(OXYGEN_LINES, row + 1) *
      Math.exp(valueAt(OXYGEN_LINES, row + 2) * (1 - theta));
    state.oxygen[at] = squared;
    state.oxygen[at + 1] = (doubled * Math.sqrt(squared)) / valueAt(OXYGEN_LINES, row);
    state.oxygen[at + 2] =
      doubled * (valueAt(OXYGEN_LINES, row + 4) + valueAt(OXYGEN_LINES, row + 5) * theta) * overlap;
  }
}

/** Sets the water vapour lines of a layer; equations (3), (6a), (6b). */
export function setVapour(
  state: LineState,
  layer: number,
  p: number,
  e: number,
  theta: number,
): void {
  const logTheta = Math.log(theta);
  const strength = 0.2 * e * theta * theta * theta * Math.sqrt(theta);
  const doppler = 2.1316e-12 / theta;
  let at = 2 * layer * VAPOUR_COUNT;
  for (let row = 0; row < VAPOUR_LINES.length; row += VAPOUR_ROW, at += 2) {
    const f0 = valueAt(VAPOUR_LINES, row);
    const raw =
      1e-4 *
      valueAt(VAPOUR_LINES, row + 3) *
      (p * Math.exp(valueAt(VAPOUR_LINES, row + 4) * logTheta) +
        valueAt(VAPOUR_LINES, row + 5) * e * Math.exp(valueAt(VAPOUR_LINES, row + 6) * logTheta));
    // The Doppler width matters only where the air is thin.
    const width = 0.535 * raw + Math.sqrt(0.217 * raw * raw + doppler * f0 * f0);
    state.vapour[at] = width * width;
    state.vapour[at + 1] =
      (strength *
        valueAt(VAPOUR_LINES, row + 1) *
        Math.exp(valueAt(VAPOUR_LINES, row + 2) * (1 - theta)) *
        width) /
      f0;
  }
}
