/** Recommendation ITU-R P.618-14 (08/2023), section 4.1: cross-polar discrimination in rain and ice. */

import { finite, inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { cosDeg } from '../../numeric/angle.js';
import { checkedFrequencyGHz, checkedPercent, namesOutside } from '../inputs.js';
import { tiltFactor } from './crossPolarScaling.js';
import { EDITION } from './edition.js';

/** Input of {@link crossPolarDiscrimination}. */
export interface CrossPolarDiscriminationInput {
  /** Frequency in GHz; stated range 6 to 55, by scaling from 4. */
  readonly frequencyGHz: number;
  /** Elevation in degrees, 0 to 89.9; stated range up to 60. */
  readonly elevationDeg: number;
  /** Polarization tilt against the horizontal in degrees; 45 for circular. */
  readonly tiltDeg: number;
  /** Rain attenuation of the wanted polarization exceeded for the same percentage of time, dB, above 0. */
  readonly copolarAttenuationDb: number;
  /** Percent of time for which the discrimination is not exceeded; stated for 1, 0.1, 0.01 and 0.001. */
  readonly exceededPercent: number;
}

const CROSS_POLAR_DISCRIMINATION_INPUT_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  copolarAttenuationDb: true,
  exceededPercent: true,
} satisfies Keys<CrossPolarDiscriminationInput>;

/** Cross-polar discrimination with its terms in the order of the steps of the recommendation. */
export interface CrossPolarDiscrimination {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Frequency-dependent term, dB. */
  readonly frequencyTermDb: number;
  /** Attenuation-dependent term, dB; subtracted. */
  readonly attenuationTermDb: number;
  /** Improvement by the polarization tilt, dB. */
  readonly tiltTermDb: number;
  /** Elevation-dependent term, dB. */
  readonly elevationTermDb: number;
  /** Term of the spread of the drops' canting angle, dB. */
  readonly cantingTermDb: number;
  /** Discrimination by rain alone, dB. */
  readonly rainDiscriminationDb: number;
  /** Term of the ice crystals, dB; subtracted. */
  readonly iceTermDb: number;
  /** What scaling from 6 GHz down to a lower frequency adds, dB; 0 from 6 GHz up. */
  readonly scalingTermDb: number;
  /** Discrimination with rain and ice that is not exceeded for the percentage of time, dB. */
  readonly discriminationDb: number;
  /** Names of inputs outside the stated ranges. */
  readonly outsideStatedRange: readonly string[];
}

/** Step 1. */
function frequencyTerm(f: number): number {
  if (f < 9) return 60 * Math.log10(f) - 28.3;
  return f < 36 ? 26 * Math.log10(f) + 4.1 : 35.9 * Math.log10(f) - 11.3;
}

/** Step 2, V. */
function attenuationSlope(f: number): number {
  if (f < 9) return 30.8 * f ** -0.21;
  if (f < 20) return 12.8 * f ** 0.19;
  return f < 40 ? 22.6 : 13 * f ** 0.15;
}

/**
 * Cross-polar discrimination that rain and ice leave for all but a percentage of time.
 *
 * Between 4 and 6 GHz the value at 6 GHz is scaled by section 4.3. Between the four percentages of the
 * recommendation the spread of the canting angle is interpolated in the logarithm.
 *
 * @param input  Frequency, elevation, tilt, attenuation of the wanted polarization and percentage of time.
 * @returns Discrimination in dB with each step's value.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 4.1, steps 1 to 8.
 * Accuracy: the printed digits of the ITU-R validation examples.
 * @example
 * ```ts
 * import { crossPolarDiscrimination } from 'slantpath/propagation';
 * const xpd = crossPolarDiscrimination({
 *   frequencyGHz: 14.25,
 *   elevationDeg: 46.35969261,
 *   tiltDeg: 0,
 *   copolarAttenuationDb: 0.42101702,
 *   exceededPercent: 1,
 * });
 * xpd.discriminationDb.toFixed(4); // => '53.9386'
 * ```
 */
export function crossPolarDiscrimination(
  input: CrossPolarDiscriminationInput,
): CrossPolarDiscrimination {
  known('input', input, CROSS_POLAR_DISCRIMINATION_INPUT_KEYS);
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const elevationDeg = inRange(
    'elevationDeg',
    input.elevationDeg,
    0,
    89.9,
    'straight overhead the elevation term has no end',
  );
  const tiltDeg = finite('tiltDeg', input.tiltDeg);
  const copolarDb = inRange('copolarAttenuationDb', input.copolarAttenuationDb, 1e-6, 1e4);
  const exceededPercent = checkedPercent(input.exceededPercent);

  // Below 6 GHz the method is applied at 6 GHz and its result scaled down.
  const f = Math.max(6, frequencyGHz);
  const frequencyTermDb = frequencyTerm(f);
  const scalingDb = 20 * Math.log10(f / frequencyGHz);
  const attenuationTermDb = attenuationSlope(f) * Math.log10(copolarDb);
  const tiltTermDb = -10 * Math.log10(tiltFactor(tiltDeg));
  const elevationTermDb = -40 * Math.log10(cosDeg(elevationDeg));
  const logPercent = Math.log10(exceededPercent);
  const cantingDeg = 5 * Math.min(3, Math.max(0, -logPercent));
  const cantingTermDb = 0.0053 * cantingDeg * cantingDeg;
  const rain = frequencyTermDb - attenuationTermDb + tiltTermDb + elevationTermDb + cantingTermDb;
  const iceTermDb = (rain * (0.3 + 0.1 * logPercent)) / 2;
  return {
    edition: EDITION,
    frequencyTermDb,
    attenuationTermDb,
    tiltTermDb: tiltTermDb + 0,
    elevationTermDb: elevationTermDb + 0,
    cantingTermDb,
    rainDiscriminationDb: rain,
    iceTermDb,
    scalingTermDb: scalingDb,
    discriminationDb: rain - iceTermDb + scalingDb,
    outsideStatedRange: [
      ...namesOutside(['frequencyGHz', frequencyGHz, 4, 55], ['elevationDeg', elevationDeg, 0, 60]),
      ...([1, 0.1, 0.01, 0.001].includes(exceededPercent) ? [] : ['exceededPercent']),
    ],
  };
}
