/** Whether a place lies in a ring on the globe, and how far from its edge. */

import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
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

/** Angle on a sphere from `p` to the nearest point of the short arc from `a` to `b`. */
function arcDistanceDeg(p: Vector, a: Vector, b: Vector): number {
  const chord: Vector = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const length = dot(chord, chord);
  if (length === 0) return angleDeg(p, a);
  // On an arc this short the chord stands for it; its nearest point is lifted to the sphere.
  const along = (p[0] - a[0]) * chord[0] + (p[1] - a[1]) * chord[1] + (p[2] - a[2]) * chord[2];
  const t = Math.max(0, Math.min(1, along / length));
  return angleDeg(p, [a[0] + t * chord[0], a[1] + t * chord[1], a[2] + t * chord[2]]);
}

/** Longest piece of an edge that is taken as one arc, in degrees. */
const PIECE_DEG = 0.5;

/** Angle in degrees from a place to the nearest point of a ring's edges; edges along the rim of the map do not count. */
export function ringDistanceDeg({ longitudeDeg, latitudeDeg }: Ring, place: Place): number {
  const p = unit(place.longitudeDeg, place.latitudeDeg);
  let least = 180;
  for (let index = 1; index < longitudeDeg.length; index++) {
    const x1 = valueAt(longitudeDeg, index - 1);
    const x2 = valueAt(longitudeDeg, index);
    const y1 = valueAt(latitudeDeg, index - 1);
    const y2 = valueAt(latitudeDeg, index);
    if (isSeam(x1, x2, y1, y2)) continue;
    const pieces = Math.max(
      1,
      Math.ceil(Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1)) / PIECE_DEG),
    );
    let a = unit(x1, y1);
    for (let piece = 1; piece <= pieces; piece++) {
      const share = piece / pieces;
      const b = unit(x1 + share * (x2 - x1), y1 + share * (y2 - y1));
      least = Math.min(least, arcDistanceDeg(p, a, b));
      a = b;
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
