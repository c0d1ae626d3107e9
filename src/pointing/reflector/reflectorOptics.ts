/**
 * Optics of a paraboloid whose feed stands beside the focus: the best feed place for a beam, the beam of a
 * given feed place, and the loss that is left (scan loss).
 *
 * Geometrical optics in the aperture. A ray from the feed by the point P of the reflector to a plane across the
 * beam has the length |P - feed| - P . beam. What moving the feed (or turning the beam) can take away of its
 * spread over the aperture is fitted by least squares, weighted with the illumination; the variance of the
 * remainder gives the loss exp(-(2 pi / wavelength)^2 variance).
 * Sources: Y. T. Lo, On the Beam Deviation Factor of a Parabolic Reflector, IRE Trans. AP-8, 1960 (the
 * least-squares tilt); J. Ruze, Lateral-Feed Displacement in a Paraboloid, IEEE Trans. AP-13, 1965
 * (ray lengths); J. Ruze, Antenna Tolerance Theory, Proc. IEEE 54, 1966 (loss from variance).
 */

import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { RADIANS_PER_DEGREE } from '../../numeric/angle.js';
import { denseAt } from '../../numeric/columns.js';

/** A checked reflector. */
export interface ReflectorShape {
  readonly diameterM: number;
  readonly focalLengthM: number;
  readonly offsetAngleDeg: number;
  readonly edgeTaperDb: number;
}

/** Points of the aperture with their weights; see {@link apertureOf}. */
export interface Aperture {
  /** Distance from the focus to the middle of the reflector in metres. */
  readonly focusToMiddleM: number;
  /** Share of each point in the illumination; the shares sum to 1. */
  readonly share: Float64Array;
  /** Place across the beam, to the right and up from the middle, and along the beam, in metres. */
  readonly beamFrame: readonly [Float64Array, Float64Array, Float64Array];
  /** Place from the focus to the right, up across the feed's axis, and along it towards the reflector. */
  readonly feedFrame: readonly [Float64Array, Float64Array, Float64Array];
}

/** Gauss-Legendre nodes and weights of order 6 on [0, 1]. Source: Abramowitz and Stegun, Table 25.4. */
const NODES = [
  [0.033765242898424, 0.0856622461895852],
  [0.1693953067668677, 0.1803807865240693],
  [0.3806904069584015, 0.2339569672863455],
  [0.6193095930415985, 0.2339569672863455],
  [0.8306046932331323, 0.1803807865240693],
  [0.966234757101576, 0.0856622461895852],
] as const;
const SPOKES = 16;

/** Points on rings and spokes of the aperture; amplitude falls as a Gaussian to the edge taper. */
export function apertureOf(reflector: ReflectorShape): Aperture {
  const { diameterM, focalLengthM, offsetAngleDeg, edgeTaperDb } = reflector;
  // A ray from the focus at angle t meets the parabola at height 2 f tan(t / 2); the feed looks at twice the angle given.
  const middleM = 2 * focalLengthM * Math.tan(offsetAngleDeg * RADIANS_PER_DEGREE);
  const feedAngle = 2 * offsetAngleDeg * RADIANS_PER_DEGREE;
  const column = () => new Float64Array(NODES.length * SPOKES);
  const share = column();
  const beamFrame = [column(), column(), column()] as const;
  const feedFrame = [column(), column(), column()] as const;
  let point = 0;
  let total = 0;
  for (const [node, weight] of NODES)
    for (let spoke = 0; spoke < SPOKES; spoke++) {
      // Nodes lie on the square of the radius, so that rings stand for equal shares of area.
      const radius = (diameterM / 2) * Math.sqrt(node);
      // Spokes stand in mirrored pairs, so that what is odd from right to left cancels exactly.
      const angle = ((spoke + 0.5) * 2 * Math.PI) / SPOKES;
      const right = radius * Math.cos(angle);
      const up = radius * Math.sin(angle);
      const height = middleM + up;
      const depth = (right * right + height * height) / (4 * focalLengthM);
      const fromFocus = depth - focalLengthM;
      // Amplitude, not power (hence 20): fields add in the aperture.
      share[point] = weight * 10 ** ((-edgeTaperDb * node) / 20);
      total += denseAt(share, point);
      beamFrame[0][point] = right;
      beamFrame[1][point] = up;
      beamFrame[2][point] = depth;
      feedFrame[0][point] = right;
      feedFrame[1][point] = height * Math.cos(feedAngle) + fromFocus * Math.sin(feedAngle);
      feedFrame[2][point] = height * Math.sin(feedAngle) - fromFocus * Math.cos(feedAngle);
      point++;
    }
  // Shares of 1 turn every weighted sum below into a mean.
  for (let i = 0; i < point; i++) share[i] = denseAt(share, i) / total;
  return {
    focusToMiddleM: focalLengthM + middleM ** 2 / (4 * focalLengthM),
    share,
    beamFrame,
    feedFrame,
  };
}

/** A place of the feed from the focus in metres: right, up across the feed's axis, towards the reflector. */
export type FeedPlace = readonly [right: number, up: number, along: number];

/** Third direction cosine; a search that strays far aside is held short of the side. */
export function forwardCosine(rightCosine: number, upCosine: number): number {
  return Math.sqrt(Math.max(0.01, 1 - rightCosine ** 2 - upCosine ** 2));
}

/** Steps of the least-squares refinement; the linear theory starts it, the last step changes nothing measurable. */
const STEPS = 3;

/** The beam of a feed at a given place, as direction cosines, and the variance of ray length left. */
export function beamOfFeedPlace(
  aperture: Aperture,
  place: FeedPlace,
): { readonly rightCosine: number; readonly upCosine: number; readonly varianceM2: number } {
  const { share, beamFrame, feedFrame, focusToMiddleM } = aperture;
  const [x, y, z] = beamFrame;
  const [u, v, w] = feedFrame;
  // The mirror again: first-order start, from which three steps settle.
  let rightCosine = -place[0] / focusToMiddleM;
  let upCosine = -place[1] / focusToMiddleM;
  for (let step = 0; ; step++) {
    const forward = forwardCosine(rightCosine, upCosine);
    let [sa, sb, sl, saa, sab, sbb, sal, sbl, sll] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
    for (let i = 0; i < share.length; i++) {
      const s = denseAt(share, i);
      const du = denseAt(u, i) - place[0];
      const dv = denseAt(v, i) - place[1];
      const dw = denseAt(w, i) - place[2];
      const depth = denseAt(z, i);
      const l =
        Math.sqrt(du * du + dv * dv + dw * dw) -
        focusToMiddleM -
        rightCosine * denseAt(x, i) -
        upCosine * denseAt(y, i) -
        forward * depth;
      // Slopes by the two cosines; turning the beam also shortens its forward part.
      const a = denseAt(x, i) - (depth * rightCosine) / forward;
      const b = denseAt(y, i) - (depth * upCosine) / forward;
      sa += s * a;
      sb += s * b;
      sl += s * l;
      saa += s * a * a;
      sab += s * a * b;
      sbb += s * b * b;
      sal += s * a * l;
      sbl += s * b * l;
      sll += s * l * l;
    }
    if (step === STEPS) return { rightCosine, upCosine, varianceM2: Math.max(0, sll - sl * sl) };
    // About the means: a length that all rays share neither turns nor blurs the beam, so two unknowns are left.
    const [aa, ab, bb] = [saa - sa * sa, sab - sa * sb, sbb - sb * sb];
    const [al, bl] = [sal - sa * sl, sbl - sb * sl];
    const determinant = aa * bb - ab * ab;
    rightCosine += (bb * al - ab * bl) / determinant;
    upCosine += (aa * bl - ab * al) / determinant;
  }
}

/** Scan loss in dB, 0 or more, of a variance of ray length. */
export function scanLossDb(varianceM2: number, frequencyGHz: number): number {
  const wavenumber = (2 * Math.PI * frequencyGHz * 1e9) / SPEED_OF_LIGHT_M_PER_S;
  return 10 * Math.LOG10E * wavenumber * wavenumber * varianceM2;
}
