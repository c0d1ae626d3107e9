/** The budget of a link down to a receiving terminal, line by line, to the margin. */

import type { ModeThreshold } from '../modes/mode.js';
import type { AntennaNoise } from '../noise/antennaNoise.js';
import type { ReceivingTerminal } from '../noise/receiver.js';
import type { SystemNoise } from '../noise/systemNoise.js';
import { budgetOf } from './budgetOf.js';
import type { Impairment } from './combine.js';
import { preparedLink } from './preparedLink.js';
import type { BudgetTerm } from './term.js';

/** The carrier: how fast it sends and what its mode needs. */
export interface Carrier {
  /** Symbol rate in megabaud, 1e-6 to 1e4. */
  readonly symbolRateMBd: number;
  /** The mode: one of `dvbModes`, or any object with a threshold and the useful bits per symbol. */
  readonly mode: ModeThreshold;
  /** What a real receiver needs more than the ideal threshold, in dB, 0 or more; default 0. */
  readonly implementationLossDb?: number;
}

/** The way down from the satellite. */
export interface Downlink {
  /** Power that the satellite sends towards the terminal in this carrier (EIRP), in dBW, -50 to 100. */
  readonly eirpDbw: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /** Distance in kilometres. */
  readonly slantRangeKm: number;
  /** Attenuation in clear weather (gas, thin cloud) in dB, 0 or more; it absorbs and so radiates. Default 0. */
  readonly clearAttenuationDb?: number;
  /** Further attenuation by rain and cloud in dB, 0 or more; it absorbs and so radiates. Default 0. */
  readonly rainDb?: number;
  /** Fade that adds no noise (scintillation) in dB, 0 or more; default 0. */
  readonly scintillationDb?: number;
  /** Any other loss in dB, 0 or more, that adds no noise; default 0. */
  readonly otherLossDb?: number;
  /** Mean radiating temperature of air and rain in kelvin; default 275. */
  readonly meanRadiatingTemperatureK?: number;
}

/** Input of {@link linkBudget}. */
export interface LinkBudgetInput {
  /** The carrier. */
  readonly carrier: Carrier;
  /** The way down. */
  readonly downlink: Downlink;
  /** The terminal. */
  readonly receiver: ReceivingTerminal;
  /** Uplink noise, intermodulation, interference: carrier over each, in dB in the symbol-rate bandwidth. Default none. */
  readonly impairments?: readonly Impairment[];
}

/** A budget with its lines. */
export interface LinkBudget {
  /** All lines in the order of the hand calculation; the last running sum is the margin. */
  readonly terms: readonly BudgetTerm[];
  /** The antenna's noise and its parts. */
  readonly antennaNoise: AntennaNoise;
  /** The system's noise and its parts. */
  readonly systemNoise: SystemNoise;
  /** Antenna gain less all losses behind the aperture and system noise, in dB/K. */
  readonly figureOfMeritDbPerK: number;
  /** Carrier power at the amplifier's input in dBW. */
  readonly carrierDbw: number;
  /** Downlink carrier over thermal noise density in dBHz. */
  readonly downlinkCarrierToNoiseDensityDbHz: number;
  /** Downlink energy per symbol over noise density in dB; equals C/N in the symbol-rate bandwidth. */
  readonly downlinkEsN0Db: number;
  /** With all impairments: energy per symbol over the density of noise and interference, in dB. */
  readonly esN0Db: number;
  /** The same per useful bit, in dB. */
  readonly ebN0Db: number;
  /** What the receiver needs, implementation loss included, in dB. */
  readonly requiredEsN0Db: number;
  /** What is left, in dB; negative where the link does not close. */
  readonly marginDb: number;
}

/**
 * Budget of a link down to a receiving terminal.
 *
 * Es/N0 = EIRP - path losses + antenna gain - terminal losses - 10 log10 T_sys - k - 10 log10 Rs, then
 * combined with the impairments; margin = Es/N0 - implementation loss - threshold. Whatever absorbs on the
 * path also raises the antenna's noise.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definitions; sky noise by ITU-R P.618-14 section 3; check rows of textbook budgets in the tests.
 * Accuracy: rounding only; the inputs decide.
 * @example
 * ```ts
 * import { dvbMode, linkBudget } from 'slantpath/link';
 * const budget = linkBudget({
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * });
 * budget.marginDb.toFixed(2); // => '11.82'
 * ```
 */
export function linkBudget(link: LinkBudgetInput): LinkBudget {
  return budgetOf(preparedLink(link));
}
