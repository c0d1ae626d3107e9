/** What is known of an installation before anything is read: slots, carriers, test points. */

import type { DecibelsByFrequency } from '../../distribution/index.js';
import type { Keys } from '../../keys.js';

/** A slot as it stands in the sky; each slot has its own outdoor unit. */
export interface CauseSlot {
  /** Name, unique. */
  readonly name: string;
  /** True azimuth in degrees, [0, 360). */
  readonly azimuthDeg: number;
  /** Elevation in degrees, 0 to 90. */
  readonly elevationDeg: number;
}

/** A carrier as planned at the output of the outdoor unit of its slot. */
export interface CauseCarrier {
  /** Name, unique. */
  readonly name: string;
  /** Name of its slot. */
  readonly slot: string;
  /** Polarization: one of the two that the unit is switched between. */
  readonly polarization: 'horizontal' | 'vertical';
  /** Band of the unit. */
  readonly band: 'low' | 'high';
  /** Radio frequency in GHz. */
  readonly frequencyGHz: number;
  /** Intermediate frequency in MHz. */
  readonly frequencyMHz: number;
  /** Level at the output of the unit in dBuV. */
  readonly levelDbuv: number;
  /** Clear-sky carrier-to-noise ratio in dB. */
  readonly carrierToNoiseDb: number;
  /** Ratio below which nothing is received, in dB; 6 by default. */
  readonly thresholdDb?: number;
}

/** A place where an instrument can be connected, or a branching point that only structures the tree. */
export interface CauseTestPoint {
  /** Name, unique. */
  readonly name: string;
  /** Name of the test point that feeds it; left out for the first behind the units. */
  readonly behind?: string;
  /** Name of a slot: the point is the output of that slot's unit, before its lead. */
  readonly slot?: string;
  /** Loss from the output of the unit in dB, negative where amplifiers make a gain. */
  readonly lossDb: DecibelsByFrequency;
  /** Gain in dB of an amplifier between this point and the one before; 0 for none. */
  readonly amplifierGainDb?: number;
  /** Noise of the instrument or receiver in the bandwidth of a carrier in dBuV; 20 by default. */
  readonly noiseDbuv?: number;
}

/** An installation for the search of causes. */
export interface CauseInstallation {
  /** Diameter of the reflector in metres. */
  readonly diameterM: number;
  /** Slots, at least one. */
  readonly slots: readonly CauseSlot[];
  /** Carriers, at least one. */
  readonly carriers: readonly CauseCarrier[];
  /** Test points, at least one. */
  readonly testPoints: readonly CauseTestPoint[];
  /** Clear-sky system noise temperature in kelvin; 120 by default. */
  readonly systemNoiseK?: number;
  /** Voltage at a unit that is asked for the higher voltage, in volts; 17 by default. */
  readonly supplyVoltageV?: number;
  /** Cross-polar isolation of a well set feed in dB; 27 by default. */
  readonly crossPolarIsolationDb?: number;
}

export const CAUSE_INSTALLATION_KEYS = {
  diameterM: true,
  slots: true,
  carriers: true,
  testPoints: true,
  systemNoiseK: true,
  supplyVoltageV: true,
  crossPolarIsolationDb: true,
} satisfies Keys<CauseInstallation>;

/** What can be wrong. */
export type FaultCause =
  | 'nothing'
  | 'mispointed'
  | 'mast-leaning'
  | 'polarization-rotated'
  | 'wrong-slot'
  | 'side-lobe'
  | 'obstructed'
  | 'bad-connector'
  | 'wrong-cable'
  | 'part-failed'
  | 'supply-low'
  | 'unit-out-of-tolerance'
  | 'overloaded'
  | 'interference'
  | 'rain'
  | 'sun-outage';

/** Every cause, in the order of the chain from the sky to the outlet. */
export const FAULT_CAUSES: readonly FaultCause[] = [
  'nothing',
  'rain',
  'sun-outage',
  'interference',
  'obstructed',
  'wrong-slot',
  'side-lobe',
  'mispointed',
  'mast-leaning',
  'polarization-rotated',
  'unit-out-of-tolerance',
  'supply-low',
  'bad-connector',
  'wrong-cable',
  'part-failed',
  'overloaded',
];
