/** Recommendation ITU-R P.834-9, section 4: loss by the spreading of the beam in the falling refractive index. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { namesOutside } from './inputs.js';

/** Loss by beam spreading with its terms. */
export interface BeamSpreadingLoss {
  /** Edition computed. */
  readonly edition: 'P.834-9';
  /** By how much the beam widens: change of the apparent elevation for each degree of the geometric one, below 1. */
  readonly spreadRatio: number;
  /** Loss by spreading, dB, 0 or more. */
  readonly attenuationDb: number;
  /** Names of inputs outside the stated range (0 to 10 degrees, 0 to 3 km). */
  readonly outsideStatedRange: readonly string[];
}

const BEAM_SPREADING_LOSS_INPUT_KEYS = { elevationDeg: true, heightM: true } satisfies Keys<
  Parameters<typeof beamSpreadingLoss>[0]
>;

/**
 * Loss by beam spreading at low elevation: the air bends the lower rays more than the upper ones, so the beam widens.
 *
 * With t(e) the refraction at the geometric elevation e, the spread is B = 1 + dt/de, and the loss -10 log B. Below
 * 0.1 dB from about 7 degrees up.
 *
 * @param input  Geometric elevation in degrees, 0 to 90, and height of the station in metres, 0 to 10 000.
 * @returns Loss in dB with the spread.
 * @throws {@link DomainError} naming `elevationDeg` or `heightM`.
 *
 * Source: Recommendation ITU-R P.834-9, sections 1 and 4: the derivative of its refraction formula.
 * @example
 * ```ts
 * import { beamSpreadingLoss } from 'slantpath/propagation';
 * beamSpreadingLoss({ elevationDeg: 1, heightM: 0 }).attenuationDb.toFixed(2); // => '0.53'
 * ```
 */
export function beamSpreadingLoss(input: {
  readonly elevationDeg: number;
  readonly heightM: number;
}): BeamSpreadingLoss {
  knownOnly('input', input, BEAM_SPREADING_LOSS_INPUT_KEYS);
  const e = inRange(
    'elevationDeg',
    input.elevationDeg,
    0,
    90,
    'is the satellite below the horizon?',
  );
  const heightM = inRange('heightM', input.heightM, 0, 10000, 'is it in feet?');
  // The formula of section 1 takes kilometres.
  const h = heightM / 1000;
  const denominator =
    1.728 +
    0.5411 * e +
    0.03723 * e * e +
    h * (0.1815 + 0.06272 * e + 0.0138 * e * e) +
    h * h * (0.01727 + 0.008288 * e);
  const slope = 0.5411 + 2 * 0.03723 * e + h * (0.06272 + 2 * 0.0138 * e) + h * h * 0.008288;
  const spreadRatio = 1 - slope / (denominator * denominator);
  return {
    edition: 'P.834-9',
    spreadRatio,
    attenuationDb: -10 * Math.log10(spreadRatio),
    outsideStatedRange: namesOutside(['elevationDeg', e, 0, 10], ['heightM', heightM, 0, 3000]),
  };
}
