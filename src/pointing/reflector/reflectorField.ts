/**
 * The field of a paraboloid whose feed stands beside the focus, summed over the aperture: what the variance of ray
 * lengths stands for while it is small. Beyond a loss of about 3 dB the sum is taken itself, and with it the best
 * feed place moves away from that of least variance.
 */

import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { denseAt, entryAt, valueAt } from '../../numeric/columns.js';
import { solveLinear } from '../../numeric/linearSystem.js';
import type { Aperture, FeedPlace } from './reflectorOptics.js';

/** Deeper than this no null is followed, so that the search keeps a slope to go by. */
const DEEPEST_DB = 60;

/** Radians per metre of ray. */
function wavenumberPerM(frequencyGHz: number): number {
  return (2 * Math.PI * frequencyGHz * 1e9) / SPEED_OF_LIGHT_M_PER_S;
}

/** A beam as direction cosines to the right and up. */
export interface BeamCosines {
  readonly rightCosine: number;
  readonly upCosine: number;
}

/** Phases of all rays in radians for a feed place and a beam. */
function rayPhases(
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

/** Sum of the rays' fields as size and angle. */
function fieldSum(share: Float64Array, phases: Float64Array): { size: number; angle: number } {
  let [re, im] = [0, 0];
  for (let i = 0; i < share.length; i++) {
    re += denseAt(share, i) * Math.cos(denseAt(phases, i));
    im += denseAt(share, i) * Math.sin(denseAt(phases, i));
  }
  return { size: Math.sqrt(re * re + im * im), angle: Math.atan2(im, re) };
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

/** Steps of frequency on the way up, most steps of the place at each, and the gain (ratio) that ends them. */
const FREQUENCY_STEPS = 4;
const PLACE_STEPS = 10;
const LEAST_GAIN = 1e-6;

/** Shares of the plain covariance that steady a step whose own bend leads astray, tried in turn. */
const STEADYING = [0, 0.3, 1, 4, 16];

/**
 * The feed place whose sum of fields is greatest, from the place of least variance on.
 *
 * At a low frequency the two are the same; the place is followed while the frequency rises to its own, so that it
 * stays on the main branch. Each step is Newton's for the logarithm of the sum, steadied by the step for small phases.
 */
export function bestFieldPlace(
  aperture: Aperture,
  frequencyGHz: number,
  start: FeedPlace,
  beam: BeamCosines,
): FeedPlace {
  let place = start;
  for (let rise = 1; rise <= FREQUENCY_STEPS; rise++) {
    const perM = (wavenumberPerM(frequencyGHz) * rise) / FREQUENCY_STEPS;
    for (let step = 0; step < PLACE_STEPS; step++) {
      const next = betterPlace(aperture, perM, place, beam);
      if (!next) break;
      place = next.place;
      if (next.gainRatio < LEAST_GAIN) break;
    }
  }
  return place;
}

/** One step to a greater sum, with its relative gain; nothing where no step gains. */
function betterPlace(
  aperture: Aperture,
  perM: number,
  place: FeedPlace,
  beam: BeamCosines,
): { readonly place: FeedPlace; readonly gainRatio: number } | undefined {
  const phases = rayPhases(aperture, perM, place, beam);
  const sum = fieldSum(aperture.share, phases);
  const { bend, plain, lean } = bends(aperture, place, phases, sum);
  for (const steady of STEADYING) {
    const change = solveLinear(
      bend.map((row, i) => row.map((entry, j) => entry + steady * (plain[i]?.[j] ?? 0))),
      lean,
    );
    if (!change) continue;
    const tried: FeedPlace = [
      place[0] + valueAt(change, 0) / perM,
      place[1] + valueAt(change, 1) / perM,
      place[2] + valueAt(change, 2) / perM,
    ];
    const { size } = fieldSum(aperture.share, rayPhases(aperture, perM, tried, beam));
    if (size > sum.size) return { place: tried, gainRatio: size / sum.size - 1 };
  }
  return undefined;
}

/**
 * Second derivatives of the logarithm of the sum by the feed's place (times -1/2), the same for small phases, and
 * half its gradient, all per radian of ray.
 *
 * With weights c = share cos(phase - mean) / size and s = share sin(phase - mean) / size and a ray's slopes a:
 * gradient sum(a s), bend sum(a a c) - sum(a c) sum(a c) + sum(a s) sum(a s).
 */
function bends(
  { share, feedFrame }: Aperture,
  place: FeedPlace,
  phases: Float64Array,
  { size, angle }: { readonly size: number; readonly angle: number },
): { readonly bend: number[][]; readonly plain: number[][]; readonly lean: number[] } {
  const [u, v, w] = feedFrame;
  const zero = () => [0, 0, 0];
  const [cosines, lean, means] = [zero(), zero(), zero()];
  const bend = [zero(), zero(), zero()];
  const plain = [zero(), zero(), zero()];
  const slope = zero();
  for (let i = 0; i < share.length; i++) {
    const du = denseAt(u, i) - place[0];
    const dv = denseAt(v, i) - place[1];
    const dw = denseAt(w, i) - place[2];
    const ray = Math.sqrt(du * du + dv * dv + dw * dw);
    slope[0] = du / ray;
    slope[1] = dv / ray;
    slope[2] = dw / ray;
    const weight = denseAt(share, i);
    const cosine = (weight * Math.cos(denseAt(phases, i) - angle)) / size;
    const sine = (weight * Math.sin(denseAt(phases, i) - angle)) / size;
    for (let a = 0; a < 3; a++) {
      const sa = valueAt(slope, a);
      cosines[a] = valueAt(cosines, a) + cosine * sa;
      lean[a] = valueAt(lean, a) + sine * sa;
      means[a] = valueAt(means, a) + weight * sa;
      const bendRow = entryAt(bend, a);
      const plainRow = entryAt(plain, a);
      for (let b = 0; b < 3; b++) {
        const product = sa * valueAt(slope, b);
        bendRow[b] = valueAt(bendRow, b) + cosine * product;
        plainRow[b] = valueAt(plainRow, b) + weight * product;
      }
    }
  }
  for (let a = 0; a < 3; a++)
    for (let b = 0; b < 3; b++) {
      const bendRow = entryAt(bend, a);
      const plainRow = entryAt(plain, a);
      const apart = (of: readonly number[]) => valueAt(of, a) * valueAt(of, b);
      bendRow[b] = valueAt(bendRow, b) - apart(cosines) + apart(lean);
      plainRow[b] = valueAt(plainRow, b) - apart(means);
    }
  return { bend, plain, lean };
}
