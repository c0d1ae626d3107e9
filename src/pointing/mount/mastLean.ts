/** Mast out of plumb: what a leaning mast does to the beam and to the polarization. */

import { finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { asinDeg, atan2Deg, cosDeg, sinDeg, turnDeg, wrapAzimuthDeg } from '../../numeric/angle.js';
import {
  azimuthOfDeg,
  cross,
  dot,
  type EastNorthUp,
  elevationOfDeg,
  pictureAxes,
  separationDeg,
  skyVector,
} from '../look/sightLine.js';

/** How a mast leans. */
export interface MastLean {
  /** Angle of the mast from the plumb line in degrees, 0 to 20. */
  readonly leanDeg: number;
  /** Azimuth towards which its top leans in degrees, clockwise from true north, any turn. */
  readonly leanAzimuthDeg: number;
}

/** A direction on the sky. */
export interface SkyDirection {
  /** Azimuth in degrees, clockwise from true north, any turn. */
  readonly azimuthDeg: number;
  /** Elevation in degrees, -5 to 90. */
  readonly elevationDeg: number;
}

export const SKY_DIRECTION_KEYS = {
  azimuthDeg: true,
  elevationDeg: true,
} satisfies Keys<SkyDirection>;

/** What {@link mastLeanError} is asked. */
export interface MastLeanInput extends MastLean, SkyDirection {}

const MAST_LEAN_INPUT_KEYS = {
  leanDeg: true,
  leanAzimuthDeg: true,
  azimuthDeg: true,
  elevationDeg: true,
} satisfies Keys<MastLeanInput>;

/** What the lean does at one direction. */
export interface MastLeanError {
  /** Azimuth of the beam in degrees, [0, 360), when the scales are set as for a plumb mast. */
  readonly beamAzimuthDeg: number;
  /** Elevation of the beam in degrees when the scales are set as for a plumb mast. */
  readonly beamElevationDeg: number;
  /** Beam minus target in elevation, degrees, up positive. */
  readonly elevationErrorDeg: number;
  /** Beam minus target in azimuth, degrees, [-180, 180), clockwise positive. */
  readonly azimuthErrorDeg: number;
  /** Beam beside the target on the sky in degrees, to the right positive as seen from behind. */
  readonly acrossErrorDeg: number;
  /** Angle between beam and target on the sky in degrees, 0 to 20; never more than the lean. */
  readonly offsetDeg: number;
  /** Azimuth scale at which the beam is on the target in degrees, [0, 360). */
  readonly scaleAzimuthDeg: number;
  /** Elevation scale at which the beam is on the target in degrees. */
  readonly scaleElevationDeg: number;
  /**
   * Turn of the whole antenna about the line of sight once the beam is on the target, degrees, [-180, 180), clockwise
   * positive as seen from behind. Peaking cannot remove it: turn the feed back by it.
   */
  readonly skewErrorDeg: number;
}

/** Turns vectors of the mount's own frame into the sky: the plumb line goes over into the mast. */
export function leanTurn(lean: MastLean): (vector: EastNorthUp) => EastNorthUp {
  const axis: EastNorthUp = [-cosDeg(lean.leanAzimuthDeg), sinDeg(lean.leanAzimuthDeg), 0];
  const sine = sinDeg(lean.leanDeg);
  const cosine = cosDeg(lean.leanDeg);
  // Rodrigues' rotation about a horizontal axis.
  return (v) => {
    const side = cross(axis, v);
    const along = dot(axis, v) * (1 - cosine);
    return [
      v[0] * cosine + side[0] * sine + axis[0] * along,
      v[1] * cosine + side[1] * sine + axis[1] * along,
      v[2] * cosine + side[2] * sine,
    ];
  };
}

/** Clockwise turn of the antenna's own upright against the sky's, as seen from behind. */
export function rollDeg(inMount: EastNorthUp, turn: (v: EastNorthUp) => EastNorthUp): number {
  const own = turn(pictureAxes(inMount).up);
  const { right, up } = pictureAxes(turn(inMount));
  return atan2Deg(dot(own, right), dot(own, up));
}

/** Checks a lean. */
export function checkedLean(lean: MastLean): MastLean {
  return {
    leanDeg: inRange('leanDeg', lean.leanDeg, 0, 20),
    leanAzimuthDeg: finite('leanAzimuthDeg', lean.leanAzimuthDeg),
  };
}

/** Error of a beam against a target. */
export function beamError(
  beam: EastNorthUp,
  target: EastNorthUp,
): Pick<MastLeanError, 'elevationErrorDeg' | 'azimuthErrorDeg' | 'acrossErrorDeg' | 'offsetDeg'> {
  return {
    elevationErrorDeg: elevationOfDeg(beam) - elevationOfDeg(target),
    azimuthErrorDeg: turnDeg(azimuthOfDeg(target), azimuthOfDeg(beam)),
    acrossErrorDeg: asinDeg(dot(beam, pictureAxes(target).right)) + 0,
    offsetDeg: separationDeg(beam, target),
  };
}

/**
 * What a mast out of plumb does at one direction: where the beam goes when the scales are set as for a plumb mast,
 * how the scales stand when the beam is on the target, and how far the antenna is then turned about the
 * line of sight.
 *
 * The mount's frame is turned by the lean about the horizontal axis across it. For a small lean: elevation error
 * -lean cos(azimuth - lean azimuth), error across -lean sin(azimuth - lean azimuth) sin(elevation), skew error
 * -lean sin(azimuth - lean azimuth) / cos(elevation); here all are computed exactly.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: own derivation (rotation of a frame).
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { mastLeanError } from 'slantpath/pointing';
 * // A mast that leans 1 degree towards the satellite lowers the beam by 1 degree.
 * const error = mastLeanError({ leanDeg: 1, leanAzimuthDeg: 170, azimuthDeg: 170, elevationDeg: 36 });
 * error.elevationErrorDeg.toFixed(6); // => '-1.000000'
 * ```
 */
export function mastLeanError(input: MastLeanInput): MastLeanError {
  const given = knownOnly('input', input, MAST_LEAN_INPUT_KEYS);
  const lean = checkedLean(given);
  const target = skyVector(
    finite('azimuthDeg', given.azimuthDeg),
    inRange('elevationDeg', given.elevationDeg, -5, 90),
  );
  const turn = leanTurn(lean);
  const beam = turn(target);
  const inMount = leanTurn({ ...lean, leanDeg: -lean.leanDeg })(target);
  return {
    beamAzimuthDeg: azimuthOfDeg(beam),
    beamElevationDeg: elevationOfDeg(beam),
    ...beamError(beam, target),
    scaleAzimuthDeg: azimuthOfDeg(inMount),
    scaleElevationDeg: elevationOfDeg(inMount),
    skewErrorDeg: rollDeg(inMount, turn),
  };
}

/** What {@link mastLeanCircle} is asked. */
export interface MastLeanCircleInput extends MastLean {
  /** Elevation of the scale in degrees, -5 to 90. */
  readonly elevationDeg: number;
  /** Step of azimuth in degrees, 0.1 to 90; 5 when left out. */
  readonly stepDeg?: number;
}

const MAST_LEAN_CIRCLE_INPUT_KEYS = {
  elevationDeg: true,
  stepDeg: true,
  leanDeg: true,
  leanAzimuthDeg: true,
} satisfies Keys<MastLeanCircleInput>;

/** Errors over the azimuth circle. */
export interface MastLeanCircle {
  /** Errors at azimuths from 0 up, each step. */
  readonly points: readonly (MastLeanError & { readonly azimuthDeg: number })[];
  /** Largest elevation error of any sign on the circle in degrees. */
  readonly largestElevationErrorDeg: number;
  /** Largest angle between beam and target on the circle in degrees. */
  readonly largestOffsetDeg: number;
  /** Largest skew error of any sign on the circle in degrees. */
  readonly largestSkewErrorDeg: number;
}

/**
 * Errors of a leaning mast over the whole azimuth circle at one elevation.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: {@link mastLeanError} at each step.
 * Accuracy: rounding only at the steps; the largest values are those of the steps.
 * @example
 * ```ts
 * import { mastLeanCircle } from 'slantpath/pointing';
 * const circle = mastLeanCircle({ leanDeg: 1, leanAzimuthDeg: 90, elevationDeg: 36 });
 * circle.largestElevationErrorDeg.toFixed(3); // => '1.000'
 * ```
 */
export function mastLeanCircle(input: MastLeanCircleInput): MastLeanCircle {
  const { leanDeg, leanAzimuthDeg, elevationDeg, stepDeg } = knownOnly(
    'input',
    input,
    MAST_LEAN_CIRCLE_INPUT_KEYS,
  );
  const step = inRange('stepDeg', stepDeg ?? 5, 0.1, 90);
  const count = Math.ceil(360 / step - 1e-9);
  const points = Array.from({ length: count }, (_, index) => {
    const azimuthDeg = wrapAzimuthDeg(index * step);
    return {
      azimuthDeg,
      ...mastLeanError({ leanDeg, leanAzimuthDeg, azimuthDeg, elevationDeg }),
    };
  });
  const largest = (value: (point: MastLeanError) => number): number =>
    points.reduce((most, point) => Math.max(most, Math.abs(value(point))), 0);
  return {
    points,
    largestElevationErrorDeg: largest((point) => point.elevationErrorDeg),
    largestOffsetDeg: largest((point) => point.offsetDeg),
    largestSkewErrorDeg: largest((point) => point.skewErrorDeg),
  };
}
