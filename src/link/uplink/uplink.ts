/** The way up: what reaches the satellite and how well. */

import { checkedLossDb } from '../../antenna/internal.js';
import { BOLTZMANN_DBW_PER_K_HZ } from '../../constants.js';
import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { freeSpaceLoss, isotropicAreaDb } from '../budget/freeSpaceLoss.js';
import { type BudgetTerm, runningTerms } from '../budget/term.js';

/** The way up to a satellite. */
export interface Uplink {
  /** Power that the earth station sends towards the satellite in this carrier (EIRP), in dBW, -50 to 120. */
  readonly eirpDbw: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /** Distance in kilometres. */
  readonly slantRangeKm: number;
  /** Attenuation in clear weather in dB, 0 or more; default 0. */
  readonly clearAttenuationDb?: number;
  /** Further attenuation by weather in dB, 0 or more; default 0. */
  readonly rainDb?: number;
  /** How much of that the station makes good by raising its power, in dB, 0 or more; default 0. */
  readonly powerControlDb?: number;
  /** Pointing and any other loss in dB, 0 or more; default 0. */
  readonly otherLossDb?: number;
  /** Figure of merit of the satellite towards the station in dB/K, -60 to 60. */
  readonly figureOfMeritDbPerK: number;
}

const UPLINK_KEYS = {
  eirpDbw: true,
  frequencyGHz: true,
  slantRangeKm: true,
  clearAttenuationDb: true,
  rainDb: true,
  powerControlDb: true,
  otherLossDb: true,
  figureOfMeritDbPerK: true,
} satisfies Keys<Uplink>;

/** Uplink budget with its lines. */
export interface UplinkBudget {
  /** All lines in the order of the hand calculation; the last running sum is the carrier over noise density. */
  readonly terms: readonly BudgetTerm[];
  /** Power flux density at the satellite in dBW/m2. */
  readonly fluxDensityDbwPerM2: number;
  /** Uplink carrier over noise density in dBHz. */
  readonly carrierToNoiseDensityDbHz: number;
}

/**
 * Budget of an uplink: C/N0 = EIRP - losses + G/T - k, and the flux density that drives the transponder.
 *
 * Rain on the way up weakens the carrier only: the satellite looks at a warm Earth in any weather.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., section 12.7. Accuracy: rounding only.
 * @example
 * ```ts
 * import { uplinkBudget } from 'slantpath/link';
 * const up = uplinkBudget({
 *   eirpDbw: 45,
 *   frequencyGHz: 14.25,
 *   slantRangeKm: 37000,
 *   figureOfMeritDbPerK: 3,
 * });
 * up.carrierToNoiseDensityDbHz.toFixed(2); // => '69.71'
 * ```
 */
export function uplinkBudget(uplink: Uplink): UplinkBudget {
  const input = knownOnly('uplink', uplink, UPLINK_KEYS);
  const eirpDbw = inRange('eirpDbw', input.eirpDbw, -50, 120, 'is the EIRP in dBW?');
  const freeSpaceDb = freeSpaceLoss(input).lossDb;
  const clearDb = checkedLossDb('clearAttenuationDb', input.clearAttenuationDb ?? 0);
  const rainDb = checkedLossDb('rainDb', input.rainDb ?? 0);
  const controlDb = Math.min(rainDb, checkedLossDb('powerControlDb', input.powerControlDb ?? 0));
  const otherDb = checkedLossDb('otherLossDb', input.otherLossDb ?? 0);
  const meritDb = inRange('figureOfMeritDbPerK', input.figureOfMeritDbPerK, -60, 60);
  const terms = runningTerms([
    ['station-eirp', eirpDbw, 'dBW'],
    ['free-space-loss', -freeSpaceDb, 'dB'],
    ['clear-attenuation', -clearDb, 'dB'],
    ['rain-attenuation', -rainDb, 'dB'],
    ['power-control', controlDb, 'dB'],
    ['other-loss', -otherDb, 'dB'],
    ['figure-of-merit', meritDb, 'dB/K'],
    ['boltzmann', -BOLTZMANN_DBW_PER_K_HZ, 'dBW/K/Hz'],
  ]);
  const isotropicDbw = terms[5]?.runningDb ?? 0;
  return {
    terms,
    // Power at an isotropic antenna over its area.
    fluxDensityDbwPerM2: isotropicDbw - isotropicAreaDb(input.frequencyGHz),
    carrierToNoiseDensityDbHz: terms[7]?.runningDb ?? 0,
  };
}

/** Returns a power flux density of -250 to 50 dBW/m2, otherwise throws. */
export function checkedFlux(value: number, parameter = 'saturationFluxDensityDbwPerM2'): number {
  return inRange(parameter, value, -250, 50, 'is the flux density in dBW/m2?');
}
