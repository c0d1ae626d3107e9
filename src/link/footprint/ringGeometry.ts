/** Whether a place lies in a ring on the globe, and how far from its edge. */

import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../../numeric/angle.js';
import { denseAt, valueAt } from '../../numeric/columns.js';
import type { Ring } from './geoJson.js';

/** A place in degrees. */
export interface Place {
  readonly longitudeDeg: number;
  readonly latitudeDeg: number;
}

/**
 * Whether a place lies inside a ring.
 *
 * Edges are straight in longitude and latitude, as RFC 7946 says. The meridian from the place to the north pole is
 * followed: an odd number of crossings is inside. A ring that goes once round the globe parts it into two caps; the
 * one whose pole lies nearer to the ring counts as inside.
 */
function insideRing({ longitudeDeg, latitudeDeg }: Ring, place: Place): boolean {
  let odd = false;
  // A pole itself sees its cap from a hair beside it.
  const latitude = Math.max(-90 + 1e-9, Math.min(90 - 1e-9, place.latitudeDeg));
  for (let index = 1; index < longitudeDeg.length; index++) {
    const x1 = valueAt(longitudeDeg, index - 1);
    const x2 = valueAt(longitudeDeg, index);
    if (x1 === x2) continue;
    const west = Math.min(x1, x2);
    const east = Math.max(x1, x2);
    // The place's longitude in the turn that begins at the edge's western end.
    const x = place.longitudeDeg + 360 * Math.ceil((west - place.longitudeDeg) / 360);
    if (!(x >= west && x < east)) continue;
    const y1 = valueAt(latitudeDeg, index - 1);
    const y2 = valueAt(latitudeDeg, index);
    if (y1 + ((y2 - y1) * (x - x1)) / (x2 - x1) > latitude) odd = !odd;
  }
  const turn = valueAt(longitudeDeg, longitudeDeg.length - 1) - valueAt(longitudeDeg, 0);
  if (Math.abs(turn) < 180) return odd;
  // Even: on the north pole's side of the ring.
  const mean = latitudeDeg.reduce((sum, lat) => sum + lat, 0) / latitudeDeg.length;
  return mean >= 0 ? !odd : odd;
}

/** Whether a place lies in a polygon: in its outer ring and in none of its holes. */
export function insidePolygon(rings: readonly Ring[], place: Place): boolean {
  return rings.every((ring, index) => insideRing(ring, place) === (index === 0));
}

type Vector = readonly [number, number, number];

function unit(longitudeDeg: number, latitudeDeg: number): Vector {
  const c = cosDeg(latitudeDeg);
  return [c * cosDeg(longitudeDeg), c * sinDeg(longitudeDeg), sinDeg(latitudeDeg)];
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

function angleDeg(a: Vector, b: Vector): number {
  const cross = Math.hypot(
    a[1] * b[2] - a[2] * b[1],
    a[2] * b[0] - a[0] * b[2],
    a[0] * b[1] - a[1] * b[0],
  );
  return Math.atan2(cross, dot(a, b)) * DEGREES_PER_RADIAN;
}

/** Longest piece of an edge that is taken as one arc, in degrees. */
const PIECE_DEG = 0.5;

/** How many arcs an edge is cut into; none for one along the rim of the map. */
const piecesOf = (x1: number, x2: number, y1: number, y2: number) =>
  isSeam(x1, x2, y1, y2)
    ? 0
    : Math.max(1, Math.ceil(Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1)) / PIECE_DEG));

/** The edges of a ring as short arcs, six numbers each: unit vectors of both ends; edges along the rim of the map are left out. */
export function ringArcs({ longitudeDeg, latitudeDeg }: Ring): Float64Array {
  const edges = longitudeDeg.slice(1).map((x2, index) => {
    const x1 = valueAt(longitudeDeg, index);
    const y1 = valueAt(latitudeDeg, index);
    const y2 = valueAt(latitudeDeg, index + 1);
    return { x1, x2, y1, y2, pieces: piecesOf(x1, x2, y1, y2) };
  });
  const arcs = new Float64Array(6 * edges.reduce((sum, { pieces }) => sum + pieces, 0));
  let at = 0;
  for (const { x1, x2, y1, y2, pieces } of edges) {
    if (pieces === 0) continue;
    let a = unit(x1, y1);
    for (let piece = 1; piece <= pieces; piece++) {
      const share = piece / pieces;
      const b = unit(x1 + share * (x2 - x1), y1 + share * (y2 - y1));
      for (let axis = 0; axis < 3; axis++) {
        arcs[at + axis] = a[axis] as number;
        arcs[at + 3 + axis] = b[axis] as number;
      }
      at += 6;
      a = b;
    }
  }
  return arcs;
}

/** Angle on a sphere in degrees from a place to the nearest point of arcs; 180 where there are none. */
export function arcsDistanceDeg(arcs: Float64Array, place: Place): number {
  const [px, py, pz] = unit(place.longitudeDeg, place.latitudeDeg);
  let least = 180;
  let leastCross = Number.POSITIVE_INFINITY;
  let leastDot = 0;
  for (let i = 0; i < arcs.length; i += 6) {
    const ax = denseAt(arcs, i);
    const ay = denseAt(arcs, i + 1);
    const az = denseAt(arcs, i + 2);
    const chordX = denseAt(arcs, i + 3) - ax;
    const chordY = denseAt(arcs, i + 4) - ay;
    const chordZ = denseAt(arcs, i + 5) - az;
    // On an arc this short the chord stands for it; its nearest point is lifted to the sphere.
    const length = chordX * chordX + chordY * chordY + chordZ * chordZ;
    const along = (px - ax) * chordX + (py - ay) * chordY + (pz - az) * chordZ;
    const t = length === 0 ? 0 : Math.max(0, Math.min(1, along / length));
    const x = ax + t * chordX;
    const y = ay + t * chordY;
    const z = az + t * chordZ;
    const crossX = py * z - pz * y;
    const crossY = pz * x - px * z;
    const crossZ = px * y - py * x;
    const cross = crossX * crossX + crossY * crossY + crossZ * crossZ;
    const dot = px * x + py * y + pz * z;
    // What is farther beyond all rounding needs no arctangent: tan^2 is compared, on the near half of the sphere.
    if (leastDot > 0)
      if (dot <= 0 || cross * leastDot * leastDot > 1.000001 * leastCross * dot * dot) continue;
    const angle = Math.atan2(Math.hypot(crossX, crossY, crossZ), dot) * DEGREES_PER_RADIAN;
    if (angle < least) {
      least = angle;
      leastCross = cross;
      leastDot = dot;
    }
  }
  return least;
}

/** Whether an edge runs along the date line or over a pole: a cut of the map, not of the contour. */
function isSeam(x1: number, x2: number, y1: number, y2: number): boolean {
  const onDateLine = (x: number): boolean => Math.abs(x) % 360 === 180;
  return (x1 === x2 && onDateLine(x1)) || (y1 === y2 && Math.abs(y1) === 90);
}

/** Angle on a sphere between two places, in degrees. */
export function placeDistanceDeg(a: Place, b: Place): number {
  return angleDeg(unit(a.longitudeDeg, a.latitudeDeg), unit(b.longitudeDeg, b.latitudeDeg));
}
