/**
 * The feed place with the greatest sum of fields. Beyond a loss of about 3 dB it moves away from that of least variance
 * of ray lengths, and far aside there are two such places.
 */

import { denseAt, entryAt, valueAt } from '../../numeric/columns.js';
import { solveLinear } from '../../numeric/linearSystem.js';
import {
  type BeamCosines,
  type FieldSum,
  fieldSum,
  rayPhases,
  wavenumberPerM,
} from './reflectorField.js';
import type { Aperture, FeedPlace } from './reflectorOptics.js';

/** Steps of frequency on the way up, most steps of the place at each, and the gain (ratio) that ends them. */
const FREQUENCY_STEPS = 4;
const PLACE_STEPS = 10;
const LEAST_GAIN = 1e-7;

/** Sum of fields (ratio, some 2 dB) below which the focus may have parted in two, and how far apart they lie in wavelengths times the focal ratio's square. */
const PARTED_BELOW = 0.8;
const PARTED_BY = 4;

/** Shares of the plain covariance that steady a step whose own bend leads astray, tried in turn. */
const STEADYING = [0, 0.3, 1, 4, 16];

/**
 * The feed place whose sum of fields is greatest, from the place of least variance on.
 *
 * At a low frequency the two are the same; the place is followed while the frequency rises to its own, so that it
 * stays on the main branch. Each step is Newton's for the logarithm of the sum, steadied by the step for small phases.
 * Far aside the beam has two foci, of the rays above and below the middle and of those beside it, and the place
 * between them is a saddle: the ascent is then tried from nearer and from further away too.
 */
export function bestFieldPlace(
  aperture: Aperture,
  frequencyGHz: number,
  start: FeedPlace,
  beam: BeamCosines,
): FeedPlace {
  const fullPerM = wavenumberPerM(frequencyGHz);
  let best = start;
  for (let rise = 1; rise <= FREQUENCY_STEPS; rise++)
    best = climbed(aperture, (fullPerM * rise) / FREQUENCY_STEPS, best, beam);
  const sizeAt = (place: FeedPlace): number =>
    fieldSum(aperture.share, rayPhases(aperture, fullPerM, place, beam)).size;
  if (sizeAt(best) > PARTED_BELOW) return best;
  const apartM = ((PARTED_BY * 2 * Math.PI) / fullPerM) * focalRatio(aperture) ** 2;
  const [right, up, along] = best;
  for (const by of [-apartM, apartM]) {
    const tried = climbed(aperture, fullPerM, [right, up, along + by], beam);
    if (sizeAt(tried) > sizeAt(best)) best = tried;
  }
  return best;
}

/** Distance from the focus to the middle of the reflector over the reflector's width. */
function focalRatio({ focusToMiddleM, beamFrame }: Aperture): number {
  const halfWidthM = beamFrame[0].reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  return focusToMiddleM / (2 * halfWidthM);
}

/** The same from a place that is best for a beam close by, at most a third of a beamwidth away: it stays on its branch. */
export function followedFieldPlace(
  aperture: Aperture,
  frequencyGHz: number,
  from: FeedPlace,
  beam: BeamCosines,
): FeedPlace {
  return climbed(aperture, wavenumberPerM(frequencyGHz), from, beam);
}

/** Steps to greater sums until they gain nothing worth while. */
function climbed(aperture: Aperture, perM: number, start: FeedPlace, beam: BeamCosines): FeedPlace {
  let place = start;
  for (let step = 0; step < PLACE_STEPS; step++) {
    const next = betterPlace(aperture, perM, place, beam);
    if (!next) break;
    place = next.place;
    if (next.gainRatio < LEAST_GAIN) break;
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
  const { bend, plain, lean } = bends(aperture, place, sum);
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
  { parts }: FieldSum,
): { readonly bend: number[][]; readonly plain: number[][]; readonly lean: readonly number[] } {
  const slopes = raySlopes(feedFrame, place);
  const { along, across } = parts();
  const cosines = slopes.map((slope) => weightedSum(along, slope));
  const lean = slopes.map((slope) => weightedSum(across, slope));
  const means = slopes.map((slope) => weightedSum(share, slope));
  const square = (entry: (a: number, b: number) => number): number[][] => {
    const rows = [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ];
    for (let a = 0; a < 3; a++)
      for (let b = a; b < 3; b++) {
        const value = entry(a, b);
        entryAt(rows, a)[b] = value;
        entryAt(rows, b)[a] = value;
      }
    return rows;
  };
  const apart = (of: readonly number[], a: number, b: number) => valueAt(of, a) * valueAt(of, b);
  const pair = (weights: Float64Array, a: number, b: number) =>
    weightedSum(weights, entryAt(slopes, a), entryAt(slopes, b));
  return {
    bend: square((a, b) => pair(along, a, b) - apart(cosines, a, b) + apart(lean, a, b)),
    plain: square((a, b) => pair(share, a, b) - apart(means, a, b)),
    lean,
  };
}

/** How each ray's length changes with the feed's place, by its three coordinates (with the sign turned). */
function raySlopes([u, v, w]: Aperture['feedFrame'], place: FeedPlace): readonly Float64Array[] {
  const slopes = [u, v, w].map((column) => new Float64Array(column.length));
  const [alongU, alongV, alongW] = slopes as [Float64Array, Float64Array, Float64Array];
  for (let i = 0; i < u.length; i++) {
    const du = denseAt(u, i) - place[0];
    const dv = denseAt(v, i) - place[1];
    const dw = denseAt(w, i) - place[2];
    const ray = Math.sqrt(du * du + dv * dv + dw * dw);
    alongU[i] = du / ray;
    alongV[i] = dv / ray;
    alongW[i] = dw / ray;
  }
  return slopes;
}

/** Sum over the rays of weight times slope, or times two slopes. */
function weightedSum(weights: Float64Array, slope: Float64Array, other?: Float64Array): number {
  let sum = 0;
  if (other)
    for (let i = 0; i < weights.length; i++)
      sum += denseAt(weights, i) * denseAt(slope, i) * denseAt(other, i);
  else for (let i = 0; i < weights.length; i++) sum += denseAt(weights, i) * denseAt(slope, i);
  return sum;
}
