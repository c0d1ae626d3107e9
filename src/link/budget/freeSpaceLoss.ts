/** Loss of a radio path in free space. */

import { checkedFrequencyGHz } from '../../antenna/internal.js';
import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { ratioToDb } from '../../numeric/decibel.js';

/** Loss at 1 GHz and 1 km: 20 log10(4 pi 1e12 / c) = 92.4478 dB. */
const CONSTANT_DB = 20 * Math.log10((4 * Math.PI * 1e12) / SPEED_OF_LIGHT_M_PER_S);

/** Free-space loss with its terms in the order of the hand calculation. */
export interface FreeSpaceLoss {
  /** Loss at 1 GHz and 1 km, 92.4478 dB. */
  readonly constantDb: number;
  /** 20 log10 of the frequency in GHz. */
  readonly frequencyTermDb: number;
  /** 20 log10 of the distance in kilometres. */
  readonly distanceTermDb: number;
  /** The sum: positive, to be subtracted. */
  readonly lossDb: number;
}

const FREE_SPACE_LOSS_PATH_KEYS = { frequencyGHz: true, slantRangeKm: true } satisfies Keys<
  Parameters<typeof freeSpaceLoss>[0]
>;

/**
 * Free-space loss between isotropic antennas: (4 pi d / wavelength)^2 in decibels.
 *
 * @param path  `frequencyGHz` 0.1 to 400; `slantRangeKm` 0.001 to 1e6.
 * @throws {@link DomainError} naming `frequencyGHz` or `slantRangeKm`.
 *
 * Source: ITU-R P.525 (free-space attenuation).
 * Accuracy: rounding only. Textbooks round the constant to 92.4 or 92.44 (32.4 or 32.44 with MHz).
 * @example
 * ```ts
 * import { freeSpaceLoss } from 'slantpath/link';
 * freeSpaceLoss({ frequencyGHz: 12, slantRangeKm: 38000 }).lossDb.toFixed(2); // => '205.63'
 * ```
 */
export function freeSpaceLoss(path: {
  readonly frequencyGHz: number;
  readonly slantRangeKm: number;
}): FreeSpaceLoss {
  const input = known('path', path, FREE_SPACE_LOSS_PATH_KEYS);
  const frequencyTermDb = 2 * ratioToDb(checkedFrequencyGHz(input.frequencyGHz));
  const distanceTermDb = 2 * ratioToDb(checkedRangeKm(input.slantRangeKm));
  return {
    constantDb: CONSTANT_DB,
    frequencyTermDb: frequencyTermDb + 0,
    distanceTermDb: distanceTermDb + 0,
    lossDb: CONSTANT_DB + frequencyTermDb + distanceTermDb,
  };
}

/** Returns a distance of 0.001 to 1e6 km, otherwise throws. */
export function checkedRangeKm(slantRangeKm: number, parameter = 'slantRangeKm'): number {
  return inRange(parameter, slantRangeKm, 0.001, 1e6, 'is the distance in kilometres?');
}

/** Gain of an antenna of one square metre of effective area, in dBm2 with the sign of the trade: 10 log10(wavelength^2 / 4 pi). */
export function isotropicAreaDb(frequencyGHz: number): number {
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (frequencyGHz * 1e9);
  return 2 * ratioToDb(wavelengthM) - ratioToDb(4 * Math.PI);
}
