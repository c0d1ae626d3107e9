/** Clearance of a reflector's beam over one obstruction in its direction. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../numeric/angle.js';

/** Input of {@link obstructionClearance}. Both heights are above the same level, for instance the ground. */
export interface ObstructionInput {
  /** Horizontal distance from the reflector's centre to the obstruction in metres, 0.1 to 100000. */
  readonly distanceM: number;
  /** Height of the obstruction's top in metres, -9000 to 9000. */
  readonly topHeightM: number;
  /** Height of the reflector's centre in metres, -9000 to 9000. */
  readonly centreHeightM: number;
  /** Elevation of the satellite in degrees, 0.1 to 90. */
  readonly elevationDeg: number;
  /** Diameter of the reflector in metres, 0 to 100; 0 asks for the axis alone. */
  readonly diameterM: number;
  /** Clearance wanted between the edge of the beam and the obstruction in metres, 0 to 1000; default 0. */
  readonly requiredClearanceM?: number;
  /** Growth of the top in metres per year, 0 to 10; default 0. Some trees grow a metre in a year (practice of the trade). */
  readonly growthMPerYear?: number;
  /** Years of growth to look ahead, 0 to 100; default 0. */
  readonly years?: number;
}

export const OBSTRUCTION_INPUT_KEYS = {
  distanceM: true,
  topHeightM: true,
  centreHeightM: true,
  elevationDeg: true,
  diameterM: true,
  requiredClearanceM: true,
  growthMPerYear: true,
  years: true,
} satisfies Keys<ObstructionInput>;

/** Clearance over an obstruction, in the order of the hand calculation. */
export interface ObstructionClearance {
  /**
   * `clear`: the whole beam passes with the clearance wanted; `tight`: it passes with less; `partly-blocked`: its edge is
   * cut but not its axis; `blocked`: its axis is cut. After the years of growth.
   */
  readonly kind: 'clear' | 'tight' | 'partly-blocked' | 'blocked';
  /** Height of the obstruction's top after the years of growth, in metres. */
  readonly grownTopHeightM: number;
  /** Elevation of that top seen from the reflector's centre in degrees. */
  readonly obstructionElevationDeg: number;
  /** Elevation of the satellite less that of the top, in degrees. */
  readonly clearanceDeg: number;
  /** Distance of the top from the beam's axis, across the beam, in metres; negative above the axis. */
  readonly axisClearanceM: number;
  /** Distance of the top from the beam's lower edge, across the beam, in metres; negative inside the beam. */
  readonly edgeClearanceM: number;
  /**
   * Lowest height of the reflector's centre that gives the clearance wanted, in metres; held to -9000..18000, which
   * only beams close to the zenith reach.
   */
  readonly neededCentreHeightM: number;
  /** Least distance from the obstruction that gives it at the present height, in metres, 0 or more. */
  readonly neededDistanceM: number;
}

const TALL = 'is the height in metres?';

/**
 * Does the beam pass over an obstruction in its direction, edge and all?
 *
 * A reflector looks out through a cylinder of its own diameter, D. The top of the obstruction, d ahead and h above the
 * centre, lies d sin e - h cos e below the axis (across the beam); the edge of the beam is D / 2 nearer. The cylinder
 * holds to about D^2 / (2 wavelengths) (20 m for 1 m at 12 GHz); beyond, leave the beamwidth free as well.
 *
 * Work near overhead lines and at height is for those trained for it: keep the distance your local code asks for.
 *
 * @returns Clearance in degrees and in metres, from the axis and from the edge, and the height or distance needed.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: own derivation. Accuracy: rounding only.
 * @example
 * ```ts
 * import { obstructionClearance } from 'slantpath/survey';
 * const tree = obstructionClearance({
 *   distanceM: 12,
 *   topHeightM: 9,
 *   centreHeightM: 2,
 *   elevationDeg: 36.2,
 *   diameterM: 0.9,
 *   growthMPerYear: 0.5,
 *   years: 3,
 * });
 * tree.kind; // => 'partly-blocked'
 * tree.edgeClearanceM.toFixed(2); // => '-0.22'
 * tree.neededCentreHeightM.toFixed(1); // => '2.3'
 * ```
 */
export function obstructionClearance(input: ObstructionInput): ObstructionClearance {
  return clearanceOf(checkedObstruction(knownOnly('input', input, OBSTRUCTION_INPUT_KEYS)));
}

/** All fields present and checked. */
export function checkedObstruction(
  input: ObstructionInput,
  row?: number,
): Required<ObstructionInput> {
  return {
    distanceM: inRange(
      'distanceM',
      input.distanceM,
      0.1,
      100000,
      'is the distance in metres?',
      row,
    ),
    topHeightM: inRange('topHeightM', input.topHeightM, -9000, 9000, TALL, row),
    centreHeightM: inRange('centreHeightM', input.centreHeightM, -9000, 9000, TALL, row),
    elevationDeg: inRange('elevationDeg', input.elevationDeg, 0.1, 90, undefined, row),
    diameterM: inRange('diameterM', input.diameterM, 0, 100, 'is the diameter in metres?', row),
    requiredClearanceM: inRange(
      'requiredClearanceM',
      input.requiredClearanceM ?? 0,
      0,
      1000,
      undefined,
      row,
    ),
    growthMPerYear: inRange(
      'growthMPerYear',
      input.growthMPerYear ?? 0,
      0,
      10,
      'is the growth in metres a year?',
      row,
    ),
    years: inRange('years', input.years ?? 0, 0, 100, undefined, row),
  };
}

/** The clearance of a checked obstruction. */
export function clearanceOf(checked: Required<ObstructionInput>): ObstructionClearance {
  const { distanceM, centreHeightM, elevationDeg, requiredClearanceM } = checked;
  const sine = sinDeg(elevationDeg);
  const cosine = cosDeg(elevationDeg);
  const grownTopHeightM = checked.topHeightM + checked.growthMPerYear * checked.years;
  const aboveCentreM = grownTopHeightM - centreHeightM;
  const halfM = checked.diameterM / 2;
  const obstructionElevationDeg = Math.atan2(aboveCentreM, distanceM) * DEGREES_PER_RADIAN;
  const axisClearanceM = distanceM * sine - aboveCentreM * cosine;
  const edgeClearanceM = axisClearanceM - halfM;
  const wantedM = halfM + requiredClearanceM;
  const aboveTopM = (wantedM - distanceM * sine) / Math.max(cosine, 1e-9);
  return {
    kind: kindOf(axisClearanceM, edgeClearanceM, requiredClearanceM),
    grownTopHeightM,
    obstructionElevationDeg,
    clearanceDeg: elevationDeg - obstructionElevationDeg,
    axisClearanceM,
    edgeClearanceM,
    neededCentreHeightM: Math.max(-9000, Math.min(18000, grownTopHeightM + aboveTopM)),
    neededDistanceM: Math.max(0, (wantedM + aboveCentreM * cosine) / sine),
  };
}

function kindOf(axisM: number, edgeM: number, requiredM: number): ObstructionClearance['kind'] {
  if (axisM <= 0) return 'blocked';
  if (edgeM <= 0) return 'partly-blocked';
  return edgeM < requiredM ? 'tight' : 'clear';
}
