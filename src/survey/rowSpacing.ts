/** Spacing of reflectors on a flat roof, so that none stands in another's beam. */

import { DomainError, finite, inRange, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { cosDeg, turnDeg } from '../numeric/angle.js';

/** A direction in which the reflectors look. */
export interface BeamDirection {
  /** Azimuth in degrees from true north, any turn. */
  readonly azimuthDeg: number;
  /** Elevation in degrees, 0.1 to 90. */
  readonly elevationDeg: number;
}

const BEAM_DIRECTION_KEYS = { azimuthDeg: true, elevationDeg: true } satisfies Keys<BeamDirection>;

/** Input of {@link rowSpacing}. */
export interface RowSpacingInput {
  /** Diameter of the reflectors in metres, above 0 to 100. */
  readonly diameterM: number;
  /** Directions of all slots that the reflectors look at, or may be turned to; at least one. */
  readonly directions: readonly BeamDirection[];
  /** Azimuth from one reflector to its neighbour, degrees from true north, any turn. */
  readonly rowAzimuthDeg: number;
  /** Room to leave between the beam and the next reflector in metres, 0 to 100; default 0.1. */
  readonly marginM?: number;
}

const ROW_SPACING_INPUT_KEYS = {
  diameterM: true,
  directions: true,
  rowAzimuthDeg: true,
  marginM: true,
} satisfies Keys<RowSpacingInput>;

/** Spacing of reflectors. */
export interface RowSpacing {
  /** Least distance from centre to centre along the row in metres. */
  readonly spacingM: number;
  /** Which of the directions asks for it, from 0. */
  readonly governingDirection: number;
  /** Angle between that beam and the row in degrees, 0 to 90. */
  readonly angleToRowDeg: number;
}

/**
 * Least distance between equal reflectors at one height so that none shades the next.
 *
 * Parallel beams of diameter D must pass each other: the distance s along the row, seen across the beam, is s sin g with g the
 * angle between beam and row, cos g = cos e cos(az - row). So s = (D + margin) / sin g; straight ahead that is
 * (D + margin) / sin e. Feed arms and masts reach out of the beam: the margin is for them.
 *
 * @returns The spacing and the direction that governs it.
 * @throws {@link DomainError} naming the bad field, for instance `directions[1].elevationDeg`.
 *
 * Source: own derivation. Accuracy: rounding only.
 * @example
 * ```ts
 * import { rowSpacing } from 'slantpath/survey';
 * const spacing = rowSpacing({
 *   diameterM: 0.9,
 *   directions: [
 *     { azimuthDeg: 183.3, elevationDeg: 36.6 },
 *     { azimuthDeg: 163.4, elevationDeg: 35.3 },
 *   ],
 *   rowAzimuthDeg: 180,
 * });
 * spacing.spacingM.toFixed(2); // => '1.67'
 * ```
 */
export function rowSpacing(input: RowSpacingInput): RowSpacing {
  const { diameterM, directions, rowAzimuthDeg, marginM } = knownOnly(
    'input',
    input,
    ROW_SPACING_INPUT_KEYS,
  );
  inRange('diameterM', positive('diameterM', diameterM), 0, 100, 'is the diameter in metres?');
  const margin = inRange('marginM', marginM ?? 0.1, 0, 100, 'is the margin in metres?');
  const row = finite('rowAzimuthDeg', rowAzimuthDeg);
  if (!Array.isArray(directions) || directions.length === 0) {
    throw new DomainError({
      code: directions === undefined || directions === null ? 'missing' : 'empty',
      parameter: 'directions',
      received: directions,
      allowed: 'a list of at least one direction',
    });
  }
  let governingDirection = 0;
  let leastSine = 2;
  (directions as readonly BeamDirection[]).forEach((direction, index) => {
    const path = `directions[${index}]`;
    const { azimuthDeg, elevationDeg } = known(path, direction, BEAM_DIRECTION_KEYS);
    const azimuth = finite(`${path}.azimuthDeg`, azimuthDeg);
    const elevation = inRange(`${path}.elevationDeg`, elevationDeg, 0.1, 90);
    const cosine = cosDeg(elevation) * cosDeg(turnDeg(row, azimuth));
    const sine = Math.sqrt((1 - cosine) * (1 + cosine));
    if (sine < leastSine) {
      leastSine = sine;
      governingDirection = index;
    }
  });
  return {
    spacingM: (diameterM + margin) / leastSine,
    governingDirection,
    angleToRowDeg: Math.asin(Math.min(1, leastSine)) * (180 / Math.PI),
  };
}
