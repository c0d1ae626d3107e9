/**
 * Recommendation ITU-R P.676-13, Annex 1, section 1: imaginary part N'' of the refractivity at a frequency,
 * summed over lines of known strength and width.
 */

import { denseAt, valueAt } from '../../numeric/columns.js';
import { type LineState, OXYGEN_COUNT, VAPOUR_COUNT } from './lineState.js';
import { OXYGEN_LINES, OXYGEN_ROW, VAPOUR_LINES, VAPOUR_ROW } from './lines.js';

/** What a frequency f means for each line: D = f0^2 - f^2 and G = f0^2 + f^2, line after line. */
export interface FrequencyTerms {
  /** The oxygen lines. */
  readonly oxygen: Float64Array;
  /** The water vapour lines. */
  readonly vapour: Float64Array;
}

function termsOf(lines: readonly number[], width: number, f: number): Float64Array {
  const terms = new Float64Array((2 * lines.length) / width);
  for (let row = 0, at = 0; row < lines.length; row += width, at += 2) {
    const f0 = valueAt(lines, row);
    terms[at] = (f0 - f) * (f0 + f);
    terms[at + 1] = f0 * f0 + f * f;
  }
  return terms;
}

/** Terms of a frequency in GHz. */
export function frequencyTerms(f: number): FrequencyTerms {
  return {
    oxygen: termsOf(OXYGEN_LINES, OXYGEN_ROW, f),
    vapour: termsOf(VAPOUR_LINES, VAPOUR_ROW, f),
  };
}

/** N'' / f of the oxygen lines in a layer, without the continuum; equations (2a) and (5). */
export function oxygenSum({ oxygen }: LineState, layer: number, terms: Float64Array): number {
  let at = 3 * layer * OXYGEN_COUNT;
  let sum = 0;
  for (let term = 0; term < 2 * OXYGEN_COUNT; term += 2, at += 3) {
    const q = denseAt(oxygen, at);
    const d = denseAt(terms, term);
    const gq = denseAt(terms, term + 1) + q;
    sum +=
      (denseAt(oxygen, at + 1) * gq - denseAt(oxygen, at + 2) * (d + q)) /
      (d * d + q * (2 * gq - q));
  }
  return sum;
}

/** N'' / f of the water vapour lines in a layer; equations (2b) and (5). */
export function vapourSum({ vapour }: LineState, layer: number, terms: Float64Array): number {
  let at = 2 * layer * VAPOUR_COUNT;
  let sum = 0;
  for (let term = 0; term < 2 * VAPOUR_COUNT; term += 2, at += 2) {
    const q = denseAt(vapour, at);
    const d = denseAt(terms, term);
    const gq = denseAt(terms, term + 1) + q;
    sum += (denseAt(vapour, at + 1) * gq) / (d * d + q * (2 * gq - q));
  }
  return sum;
}

/** N'' / f of the dry continuum: Debye spectrum of oxygen and pressure-induced nitrogen; equations (8), (9). */
export function dryContinuum(f: number, p: number, e: number, theta: number): number {
  const width = 5.6e-4 * (p + e) * theta ** 0.8;
  const ratio = f / width;
  return (
    p *
    theta *
    theta *
    (6.14e-5 / (width * (1 + ratio * ratio)) +
      (1.4e-12 * p * theta * Math.sqrt(theta)) / (1 + 1.9e-5 * f * Math.sqrt(f)))
  );
}
