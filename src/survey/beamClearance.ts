/** Clearance of a reflector's whole beam among obstacles. */

import { finite, inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { cosDeg, sinDeg } from '../numeric/angle.js';
import { checkedObstacles, checkedPoint, type LocalPointM, type Obstacle } from './obstacle.js';

/** A beam's surroundings; read `kind` first. */
export type BeamClearance =
  | {
      /** `clear`: no obstacle touches the beam; `partly-blocked`: its edge is cut but not its axis; `blocked`: its axis is cut. */
      readonly kind: 'clear' | 'partly-blocked' | 'blocked';
      /** Distance from the beam's axis to the nearest obstacle, across the beam, in metres; negative: how deep the axis lies in it. */
      readonly axisClearanceM: number;
      /** The same from the beam's edge: less half the diameter. */
      readonly edgeClearanceM: number;
      /** Which obstacle that is, from 0. */
      readonly obstacle: number;
    }
  | {
      /** `open`: nothing reaches in front of the reflector's plane at all. */
      readonly kind: 'open';
    };

/** Input of {@link beamClearance}. */
export interface BeamInput {
  /** What stands around, in metres from the survey's own place. */
  readonly obstacles: readonly Obstacle[];
  /** Azimuth of the beam in degrees from true north, any turn. */
  readonly azimuthDeg: number;
  /** Elevation of the beam in degrees, 0 to 90. */
  readonly elevationDeg: number;
  /** Diameter of the reflector in metres, 0 to 100; 0 asks for the axis alone. */
  readonly diameterM: number;
  /** Centre of the reflector; default: the survey's own place. */
  readonly place?: LocalPointM;
}

const BEAM_INPUT_KEYS = {
  obstacles: true,
  azimuthDeg: true,
  elevationDeg: true,
  diameterM: true,
  place: true,
} satisfies Keys<BeamInput>;

/**
 * Clearance of a cylinder of the reflector's diameter along the beam, over and beside obstacles.
 *
 * Everything is looked at along the beam, which turns the cylinder into a disc and each edge with the solid below it
 * into a region; the distance from the disc's centre to the nearest region is the axis clearance.
 *
 * @throws {@link DomainError} naming the bad field, for instance `obstacles[0].corners[2].upM`.
 *
 * Source: own derivation. Accuracy: rounding only.
 * @example
 * ```ts
 * import { beamClearance } from 'slantpath/survey';
 * const house = {
 *   corners: [
 *     { eastM: 2, northM: -10, upM: 9 },
 *     { eastM: 9, northM: -10, upM: 9 },
 *   ],
 * };
 * const beam = beamClearance({
 *   obstacles: [house],
 *   azimuthDeg: 180,
 *   elevationDeg: 36.2,
 *   diameterM: 0.9,
 * });
 * beam.kind; // => 'clear'
 * beam.kind !== 'open' && beam.edgeClearanceM; // => 1.55
 * ```
 */
export function beamClearance(input: BeamInput): BeamClearance {
  const { obstacles, azimuthDeg, elevationDeg, diameterM, place } = knownOnly(
    'input',
    input,
    BEAM_INPUT_KEYS,
  );
  const azimuth = finite('azimuthDeg', azimuthDeg);
  const elevation = inRange('elevationDeg', elevationDeg, 0, 90);
  const diameter = inRange('diameterM', diameterM, 0, 100, 'is the diameter in metres?');
  const centre = checkedPoint('place', place ?? { eastM: 0, northM: 0, upM: 0 });
  return clearanceAmong(checkedObstacles(obstacles), { azimuth, elevation, diameter, centre });
}

/** A corner as seen along the beam, in metres: to the right, up across the beam, and horizontally ahead. */
interface Seen {
  readonly right: number;
  readonly over: number;
  readonly along: number;
  /** Ahead of the reflector's plane, along the beam. */
  readonly ahead: number;
}

/** {@link beamClearance} of checked values. */
export function clearanceAmong(
  obstacles: readonly Obstacle[],
  beam: {
    readonly azimuth: number;
    readonly elevation: number;
    readonly diameter: number;
    readonly centre: LocalPointM;
  },
): BeamClearance {
  const sinA = sinDeg(beam.azimuth);
  const cosA = cosDeg(beam.azimuth);
  const sinE = sinDeg(beam.elevation);
  const cosE = cosDeg(beam.elevation);
  const seen = (corner: LocalPointM): Seen => {
    const east = corner.eastM - beam.centre.eastM;
    const north = corner.northM - beam.centre.northM;
    const up = corner.upM - beam.centre.upM;
    const along = east * sinA + north * cosA;
    return {
      right: east * cosA - north * sinA,
      over: up * cosE - along * sinE,
      along,
      ahead: along * cosE + up * sinE,
    };
  };
  let nearestM = Number.POSITIVE_INFINITY;
  let nearest = 0;
  obstacles.forEach(({ corners }, obstacle) => {
    const points = corners.map(seen);
    points.forEach((from, index) => {
      const to = points[index + 1] ?? (points.length === 1 ? from : undefined);
      if (to === undefined) return;
      const metres = Math.min(distanceAhead(from, to), distanceBehind(from, to, sinE));
      if (metres < nearestM) {
        nearestM = metres;
        nearest = obstacle;
      }
    });
  });
  if (nearestM === Number.POSITIVE_INFINITY) return { kind: 'open' };
  const edgeClearanceM = nearestM - beam.diameter / 2;
  return {
    kind: nearestM <= 0 ? 'blocked' : edgeClearanceM < 0 ? 'partly-blocked' : 'clear',
    axisClearanceM: nearestM,
    edgeClearanceM,
    obstacle: nearest,
  };
}

/** Distance from the axis to the part of an edge that lies ahead of the mast, and all below it; infinite if there is none. */
function distanceAhead(from: Seen, to: Seen): number {
  const part = cut(from, to, (point) => point.along);
  return part ? distanceToCurtain(part[0], part[1]) : Number.POSITIVE_INFINITY;
}

/**
 * Distance from the axis to what stands behind the mast but reaches over the reflector's plane. Of a vertical line behind, only
 * the part above that plane counts; its foot is seen |along| / sin e above the axis.
 */
function distanceBehind(from: Seen, to: Seen, sinE: number): number {
  const behind = cut(from, to, (point) => -point.along);
  const part = behind && cut(behind[0], behind[1], (point) => point.ahead);
  if (!part) return Number.POSITIVE_INFINITY;
  const [a, b] = part.map((point) => ({ ...point, over: -point.along / sinE })) as [Seen, Seen];
  return distanceToSegment(a, b);
}

/** The part of an edge on which a linear measure is above 0. */
function cut(
  from: Seen,
  to: Seen,
  measure: (point: Seen) => number,
): readonly [Seen, Seen] | undefined {
  const a = measure(from);
  const b = measure(to);
  if (a <= 0 && b <= 0) return undefined;
  if (a > 0 && b > 0) return [from, to];
  const share = a / (a - b);
  const between = (p: number, q: number) => p + share * (q - p);
  const edge = {
    right: between(from.right, to.right),
    over: between(from.over, to.over),
    along: between(from.along, to.along),
    ahead: between(from.ahead, to.ahead),
  };
  return a > 0 ? [from, edge] : [edge, to];
}

/** Distance from the axis to an edge and all below it; negative if the axis is below the edge. */
function distanceToCurtain(a: Seen, b: Seen): number {
  const [left, right] = a.right <= b.right ? [a, b] : [b, a];
  const width = right.right - left.right;
  if (left.right > 0) return besideCurtain(left.right, left, right);
  if (right.right < 0) return besideCurtain(-right.right, left, right);
  const share = width > 0 ? -left.right / width : left.over >= right.over ? 0 : 1;
  const height = left.over + share * (right.over - left.over);
  const distance = distanceToSegment(left, right);
  return height >= 0 ? -distance : distance;
}

/** Beside the curtain: its side where that reaches up to the axis, otherwise its upper edge. */
function besideCurtain(sideways: number, left: Seen, right: Seen): number {
  const nearer = left.right > 0 ? left : right;
  return nearer.over >= 0 ? sideways : distanceToSegment(left, right);
}

function distanceToSegment(a: Seen, b: Seen): number {
  const dx = b.right - a.right;
  const dy = b.over - a.over;
  const length = dx * dx + dy * dy;
  const share = length > 0 ? Math.max(0, Math.min(1, -(a.right * dx + a.over * dy) / length)) : 0;
  return Math.hypot(a.right + share * dx, a.over + share * dy);
}
