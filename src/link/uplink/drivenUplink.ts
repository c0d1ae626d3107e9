/** The way up seen from the transponder: how far it is driven. */

import { checkedFrequencyGHz, checkedLossDb } from '../../antenna/internal.js';
import { BOLTZMANN_DBW_PER_K_HZ } from '../../constants.js';
import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { isotropicAreaDb } from '../budget/freeSpaceLoss.js';
import { runningTerms } from '../budget/term.js';
import { checkedFlux, type UplinkBudget } from './uplink.js';

/** A carrier that drives a transponder to a known back-off. */
export interface DrivenUplink {
  /** Flux density that saturates the transponder in dBW/m2, -150 to 0. */
  readonly saturationFluxDensityDbwPerM2: number;
  /** How far the carrier stays below it, in dB, 0 or more. */
  readonly inputBackOffDb: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /** Figure of merit of the satellite towards the station in dB/K. */
  readonly figureOfMeritDbPerK: number;
  /** Loss in the satellite's receiver feed in dB, 0 or more, where the figure of merit leaves it out; default 0. */
  readonly feedLossDb?: number;
}

const DRIVEN_UPLINK_KEYS = {
  saturationFluxDensityDbwPerM2: true,
  inputBackOffDb: true,
  frequencyGHz: true,
  figureOfMeritDbPerK: true,
  feedLossDb: true,
} satisfies Keys<DrivenUplink>;

/**
 * Uplink carrier over noise density from the transponder's side: saturation flux density less back-off, times
 * the area of an isotropic antenna.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., equation 12.53. Accuracy: rounding only.
 * @example
 * ```ts
 * import { drivenUplink } from 'slantpath/link';
 * const up = drivenUplink({
 *   saturationFluxDensityDbwPerM2: -98,
 *   inputBackOffDb: 10,
 *   frequencyGHz: 14,
 *   figureOfMeritDbPerK: 3,
 *   feedLossDb: 1,
 * });
 * up.carrierToNoiseDensityDbHz.toFixed(2); // => '78.22'
 * ```
 */
export function drivenUplink(uplink: DrivenUplink): UplinkBudget {
  const input = knownOnly('uplink', uplink, DRIVEN_UPLINK_KEYS);
  const saturationDb = checkedFlux(input.saturationFluxDensityDbwPerM2);
  const backOffDb = checkedLossDb('inputBackOffDb', input.inputBackOffDb);
  const merit = inRange('figureOfMeritDbPerK', input.figureOfMeritDbPerK, -60, 60);
  const feedDb = checkedLossDb('feedLossDb', input.feedLossDb ?? 0);
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const terms = runningTerms([
    ['saturation-flux-density', saturationDb, 'dBW/m2'],
    ['input-back-off', -backOffDb, 'dB'],
    ['isotropic-area', isotropicAreaDb(frequencyGHz), 'dBm2'],
    ['figure-of-merit', merit, 'dB/K'],
    ['feed-loss', -feedDb, 'dB'],
    ['boltzmann', -BOLTZMANN_DBW_PER_K_HZ, 'dBW/K/Hz'],
  ]);
  return {
    terms,
    fluxDensityDbwPerM2: saturationDb - backOffDb,
    carrierToNoiseDensityDbHz: terms[5]?.runningDb ?? 0,
  };
}
