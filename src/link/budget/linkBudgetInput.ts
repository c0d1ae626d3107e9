/** What a link budget is made from. */

import type { Keys } from '../../keys.js';
import type { ModeThreshold } from '../modes/mode.js';
import type { ReceivingTerminal } from '../noise/receiver.js';
import type { Impairment } from './combine.js';

/** The carrier: how fast it sends and what its mode needs. */
export interface Carrier {
  /** Symbol rate in megabaud, 1e-6 to 1e4. */
  readonly symbolRateMBd: number;
  /** The mode: one of `dvbModes`, or any object with a threshold and the useful bits per symbol. */
  readonly mode: ModeThreshold;
  /** What a real receiver needs more than the ideal threshold, in dB, 0 or more; default 0. */
  readonly implementationLossDb?: number;
}

export const CARRIER_KEYS = {
  symbolRateMBd: true,
  mode: true,
  implementationLossDb: true,
} satisfies Keys<Carrier>;

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

export const DOWNLINK_KEYS = {
  eirpDbw: true,
  frequencyGHz: true,
  slantRangeKm: true,
  clearAttenuationDb: true,
  rainDb: true,
  scintillationDb: true,
  otherLossDb: true,
  meanRadiatingTemperatureK: true,
} satisfies Keys<Downlink>;

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

export const LINK_BUDGET_INPUT_KEYS = {
  carrier: true,
  downlink: true,
  receiver: true,
  impairments: true,
} satisfies Keys<LinkBudgetInput>;
