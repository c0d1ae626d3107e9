/** Recommendation ITU-R P.618-14 (08/2023), section 2.5: total attenuation by simultaneous causes. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { checkedPercent, namesOutside } from '../inputs.js';
import { EDITION } from './edition.js';
import { type RainAttenuationInput, rainAttenuation } from './rain.js';
import { type ScintillationPath, scintillationFade } from './scintillation.js';

/** Percentage of time below which gas and cloud keep their value, in this edition (edition 13 had 1 %). */
export const HELD_PERCENT = 5;

/** Input of {@link totalAttenuation}. */
export interface TotalAttenuationInput extends RainAttenuationInput, ScintillationPath {
  /** Attenuation by gases exceeded for {@link heldPercent} of the time, dB. */
  readonly gasDb: number;
  /** Attenuation by clouds exceeded for {@link heldPercent} of the time, dB. */
  readonly cloudDb: number;
}

const TOTAL_ATTENUATION_INPUT_KEYS = {
  gasDb: true,
  cloudDb: true,
  exceededPercent: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  diameterM: true,
  efficiencyRatio: true,
  wetRefractivityNUnits: true,
  turbulenceHeightM: true,
} satisfies Keys<TotalAttenuationInput>;

/** Total attenuation with its causes. */
export interface TotalAttenuation {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Percentage of time to which gas and cloud belong: the one asked for, but at least 5. */
  readonly heldPercent: number;
  /** Rain, dB; 0 above 5 % of the time, where the recommendation leaves it out. */
  readonly rainDb: number;
  /** Clouds, dB. */
  readonly cloudDb: number;
  /** Scintillation, dB. */
  readonly scintillationDb: number;
  /** Gases, dB. */
  readonly gasDb: number;
  /** All together, dB, positive as a loss. */
  readonly attenuationDb: number;
  /** Names of inputs outside the stated ranges (4 to 55 GHz, 5 degrees and up, 0.001 to 50 % of time). */
  readonly outsideStatedRange: readonly string[];
}

/**
 * Percentage of time for which gas and cloud attenuation must be given to {@link totalAttenuation}: the one
 * asked for, but at least 5 %, since the worst gas and cloud come together with the rain.
 *
 * @param exceededPercent  Percent of time of the total, 0.000001 to 100.
 * @throws {@link DomainError} naming `exceededPercent`.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.5 (P.618-13 held both at 1 %).
 * @example
 * ```ts
 * import { heldPercent } from 'slantpath/propagation';
 * [heldPercent(0.01), heldPercent(20)]; // => [5, 20]
 * ```
 */
export function heldPercent(exceededPercent: number): number {
  return Math.max(HELD_PERCENT, checkedPercent(exceededPercent));
}

/** Sum of the causes; rain is left out above 5 % of the time. */
export function combinedDb(
  gasDb: number,
  rainDb: number,
  cloudDb: number,
  scintillationDb: number,
): number {
  const wet = rainDb + cloudDb;
  return gasDb + Math.sqrt(wet * wet + scintillationDb * scintillationDb);
}

/**
 * Total attenuation by rain, cloud, gas and scintillation exceeded for a percentage of an average year.
 *
 * A = gas + sqrt((rain + cloud)^2 + scintillation^2). Gas and cloud are not taken rarer than 5 % of the time.
 *
 * @param input  Path, rain, antenna, percentage of time, and gas and cloud at {@link heldPercent}.
 * @returns Attenuation in dB (positive is a loss) with each cause.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.5, equations (64) to (66).
 * @example
 * ```ts
 * import { totalAttenuation } from 'slantpath/propagation';
 * const total = totalAttenuation({
 *   latitudeDeg: 46.4,
 *   heightM: 1900,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   tiltDeg: 45,
 *   exceededPercent: 0.1,
 *   diameterM: 0.9,
 *   efficiencyRatio: 0.65,
 *   wetRefractivityNUnits: 45,
 *   gasDb: 0.4,
 *   cloudDb: 0.6,
 * });
 * total.attenuationDb.toFixed(2); // => '3.39'
 * ```
 */
export function totalAttenuation(input: TotalAttenuationInput): TotalAttenuation {
  known('input', input, TOTAL_ATTENUATION_INPUT_KEYS);
  const held = heldPercent(input.exceededPercent);
  const gasDb = checkedPart('gasDb', input.gasDb);
  const cloudDb = checkedPart('cloudDb', input.cloudDb);
  const rain = rainAttenuation(input);
  const scintillationDb = scintillationFade(input).attenuationDb;
  const rainDb = input.exceededPercent <= HELD_PERCENT ? rain.attenuationDb : 0;
  return {
    edition: EDITION,
    heldPercent: held,
    rainDb,
    cloudDb,
    scintillationDb,
    gasDb,
    attenuationDb: combinedDb(gasDb, rainDb, cloudDb, scintillationDb),
    outsideStatedRange: namesOutside(
      ['frequencyGHz', input.frequencyGHz, 4, 55],
      ['elevationDeg', input.elevationDeg, 5, 90],
      ['exceededPercent', input.exceededPercent, 0.001, 50],
    ),
  };
}

/** An attenuation given by the caller, dB. */
export function checkedPart(parameter: string, value: number, index?: number): number {
  return inRange(parameter, value, 0, 1e4, undefined, index);
}
