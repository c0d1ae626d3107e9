/**
 * The field of a paraboloid whose feed stands beside the focus, summed over the aperture: what the variance of ray
 * lengths stands for while it is small. Beyond a loss of about 3 dB the sum is taken itself.
 */

import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { denseAt } from '../../numeric/columns.js';
import type { Aperture, FeedPlace } from './reflectorOptics.js';

/** Deeper than this no null is followed, so that the search keeps a slope to go by. */
const DEEPEST_DB = 60;

/** Radians per metre of ray. */
export function wavenumberPerM(frequencyGHz: number): number {
  return (2 * Math.PI * frequencyGHz * 1e9) / SPEED_OF_LIGHT_M_PER_S;
}

/** A beam as direction cosines to the right and up. */
export interface BeamCosines {
  readonly rightCosine: number;
  readonly upCosine: number;
}

/** Phases of all rays in radians for a feed place and a beam. */
export function rayPhases(
  { beamFrame, feedFrame, focusToMiddleM }: Aperture,
  perM: number,
  place: FeedPlace,
  { rightCosine, upCosine }: BeamCosines,
): Float64Array {
  const forward = Math.sqrt(Math.max(0.01, 1 - rightCosine ** 2 - upCosine ** 2));
  const [x, y, z] = beamFrame;
  const [u, v, w] = feedFrame;
  const phases = new Float64Array(x.length);
  for (let i = 0; i < phases.length; i++) {
    const du = denseAt(u, i) - place[0];
    const dv = denseAt(v, i) - place[1];
    const dw = denseAt(w, i) - place[2];
    const along = rightCosine * denseAt(x, i) + upCosine * denseAt(y, i) + forward * denseAt(z, i);
    phases[i] = perM * (Math.sqrt(du * du + dv * dv + dw * dw) - focusToMiddleM - along);
  }
  return phases;
}

/** Sum of the rays' fields as size and angle, and each ray's field turned so that the sum points along the real axis. */
export interface FieldSum {
  readonly size: number;
  /** Parts of the rays along the sum and across it, as shares of its size. */
  readonly parts: () => { readonly along: Float64Array; readonly across: Float64Array };
}

export function fieldSum(share: Float64Array, phases: Float64Array): FieldSum {
  const real = new Float64Array(share.length);
  const imaginary = new Float64Array(share.length);
  let [re, im] = [0, 0];
  for (let i = 0; i < share.length; i++) {
    const weight = denseAt(share, i);
    const phase = denseAt(phases, i);
    real[i] = weight * Math.cos(phase);
    imaginary[i] = weight * Math.sin(phase);
    re += denseAt(real, i);
    im += denseAt(imaginary, i);
  }
  const size = Math.sqrt(re * re + im * im);
  const parts = () => {
    // Turned by the sum's angle and divided by its size, both at once: times the sum's conjugate over its square.
    const [cosine, sine] = [re / (size * size), im / (size * size)];
    const along = real.map((x, i) => x * cosine + denseAt(imaginary, i) * sine);
    const across = imaginary.map((y, i) => y * cosine - denseAt(real, i) * sine);
    return { along, across };
  };
  return { size, parts };
}

/** Loss in dB, 0 to 60, towards a direction, of a feed at a place: the sum of fields against all rays in step. */
export function fieldLossDb(
  aperture: Aperture,
  frequencyGHz: number,
  place: FeedPlace,
  beam: BeamCosines,
): number {
  const phases = rayPhases(aperture, wavenumberPerM(frequencyGHz), place, beam);
  const { size } = fieldSum(aperture.share, phases);
  return Math.max(0, Math.min(DEEPEST_DB, -20 * Math.log10(Math.max(size, 1e-9))));
}
