/** Recommendation ITU-R P.618-14, section 2.2.4.2: what the better of two sites gains. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { checkedElevationDeg, checkedFrequencyGHz } from '../inputs.js';
import { EDITION } from './edition.js';

/** Diversity gain with its factors. */
export interface DiversityGain {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Gain by the distance of the sites, dB. */
  readonly distanceGainDb: number;
  /** Factor of the frequency. */
  readonly frequencyRatio: number;
  /** Factor of the elevation. */
  readonly elevationRatio: number;
  /** Factor of the angle between baseline and path. */
  readonly baselineRatio: number;
  /** What the better of both sites gains over one alone, dB. */
  readonly gainDb: number;
}

const DIVERSITY_GAIN_INPUT_KEYS = {
  attenuationDb: true,
  distanceKm: true,
  frequencyGHz: true,
  elevationDeg: true,
  baselineAngleDeg: true,
} satisfies Keys<Parameters<typeof diversityGain>[0]>;

/**
 * Diversity gain: how much less attenuation the better of two like sites sees for the same percentage of time.
 *
 * @param input  Attenuation of one site alone in dB, distance in km (up to 20 in the data behind it), frequency in
 *   GHz, elevation in degrees, and the angle from the path's azimuth to the baseline in degrees, 0 to 90.
 * @returns Gain in dB with its factors; at most the attenuation itself.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.4.2.
 * @example
 * ```ts
 * import { diversityGain } from 'slantpath/propagation';
 * const gain = diversityGain({
 *   attenuationDb: 10,
 *   distanceKm: 10,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   baselineAngleDeg: 90,
 * });
 * gain.gainDb.toFixed(2); // => '5.53'
 * ```
 */
export function diversityGain(input: {
  readonly attenuationDb: number;
  readonly distanceKm: number;
  readonly frequencyGHz: number;
  readonly elevationDeg: number;
  readonly baselineAngleDeg: number;
}): DiversityGain {
  knownOnly('input', input, DIVERSITY_GAIN_INPUT_KEYS);
  const attenuation = inRange('attenuationDb', input.attenuationDb, 0, 1e4);
  const d = inRange('distanceKm', input.distanceKm, 0, 20040, 'was it given in metres?');
  const a = 0.78 * attenuation - 1.94 * (1 - Math.exp(-0.11 * attenuation));
  const b = 0.59 * (1 - Math.exp(-0.1 * attenuation));
  const distanceGainDb = a * (1 - Math.exp(-b * d));
  const frequencyRatio = Math.exp(-0.025 * checkedFrequencyGHz(input.frequencyGHz));
  const elevationRatio = 1 + 0.006 * checkedElevationDeg(input.elevationDeg);
  const baselineRatio =
    1 +
    0.002 * inRange('baselineAngleDeg', input.baselineAngleDeg, 0, 90, 'is it folded to 0..90?');
  return {
    edition: EDITION,
    distanceGainDb,
    frequencyRatio,
    elevationRatio,
    baselineRatio,
    gainDb: Math.min(attenuation, distanceGainDb * frequencyRatio * elevationRatio * baselineRatio),
  };
}
