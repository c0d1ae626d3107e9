/** A distribution as plain data: a source and the tree of parts behind it. */

import type { Keys } from '../../keys.js';
import type { CableType } from '../cable/cable.js';

/** A value in dB, the same at every frequency, or by points between which it runs straight (held beyond the ends). */
export type DecibelsByFrequency = number | readonly FrequencyPoint[];

/** One point of a value over frequency. */
export interface FrequencyPoint {
  /** Frequency in MHz, 5 to 10000; strictly increasing along the list. */
  readonly frequencyMHz: number;
  /** Value in dB, or a level in the unit of the field that holds the list. */
  readonly valueDb: number;
}

/** What a part takes from the supply that runs along the cable. */
export interface SupplyNeed {
  /** Current in amperes, 0 or more. */
  readonly currentA: number;
  /** Least voltage in volts at which the part works. */
  readonly minimumVoltageV: number;
}

export const SUPPLY_NEED_KEYS = {
  currentA: true,
  minimumVoltageV: true,
} satisfies Keys<SupplyNeed>;

/** Fields of every part. */
export interface PartBase {
  /** Name on the drawing; parts without one are called by kind and number, `cable 2`. */
  readonly name?: string;
}

/** A length of cable. */
export interface CablePart extends PartBase {
  readonly kind: 'cable';
  /** Type of cable. */
  readonly cable: CableType;
  /** Length in metres, 0 to 10000. */
  readonly lengthM: number;
  /** What follows. */
  readonly to: DistributionPart;
}

/** Connectors, attenuators and equalisers: passive, one input, one output. */
export interface LossPart extends PartBase {
  readonly kind: 'connector' | 'attenuator' | 'equaliser';
  /** Loss in dB, 0 or more; an equaliser gives points that fall with frequency. */
  readonly lossDb: DecibelsByFrequency;
  /** Whether direct current passes; true by default. */
  readonly passesSupply?: boolean;
  /** What follows. */
  readonly to: DistributionPart;
}

/** A splitter: equal outputs. */
export interface SplitterPart extends PartBase {
  readonly kind: 'splitter';
  /** Loss from the input to each output in dB, 10 log10 of the number of outputs or more. */
  readonly lossDb: DecibelsByFrequency;
  /** Decoupling between two outputs in dB; 20 by default (practice of the trade). */
  readonly isolationDb?: DecibelsByFrequency;
  /** Which outputs pass direct current towards the input; all by default. */
  readonly passesSupply?: readonly boolean[];
  /** Voltage lost in the steering diode in volts; 0.7 by default. */
  readonly diodeDropV?: number;
  /** Parts on the outputs; `null` for an output closed with 75 ohm. */
  readonly outputs: readonly (DistributionPart | null)[];
}

/** A tap: most goes through, a little goes to each tap port. */
export interface TapPart extends PartBase {
  readonly kind: 'tap';
  /** Loss from input to the through port in dB. */
  readonly throughLossDb: DecibelsByFrequency;
  /** Loss from input to a tap port in dB: the tap value. */
  readonly tapLossDb: DecibelsByFrequency;
  /** Loss between a tap port and the through port, against its direction, in dB; the tap value and 10 dB by default. */
  readonly isolationDb?: DecibelsByFrequency;
  /** Decoupling between two tap ports in dB; 20 by default. */
  readonly tapIsolationDb?: DecibelsByFrequency;
  /** Whether the through port passes direct current; true by default. Tap ports pass it if `tapsPassSupply`. */
  readonly passesSupply?: boolean;
  /** Whether the tap ports pass direct current; false by default. */
  readonly tapsPassSupply?: boolean;
  /** Parts on the tap ports; `null` for a closed port. */
  readonly taps: readonly (DistributionPart | null)[];
  /** What follows on the through port; `null` for a closed port. */
  readonly to: DistributionPart | null;
}

/** One input of a switch. */
export interface SwitchInput {
  /** Name of the input, its own within the switch. */
  readonly name: string;
  /** Loss from this input to an output that has chosen it, in dB; that of the switch by default. */
  readonly lossDb?: DecibelsByFrequency;
  /** How much weaker than when chosen it comes out of an output that has chosen another, in dB; 25 by default (practice of the trade). */
  readonly isolationDb?: DecibelsByFrequency;
  /** Whether it comes to every output whatever is chosen, as terrestrial signals do; false by default. */
  readonly alwaysThere?: boolean;
  /** What a mains-fed switch puts on this input for the unit behind it; by default nothing. */
  readonly feed?: {
    /** Voltage in volts. */
    readonly voltageV: number;
    /** Highest current in amperes. */
    readonly limitA: number;
  };
}

export const SWITCH_INPUT_KEYS = {
  name: true,
  lossDb: true,
  isolationDb: true,
  alwaysThere: true,
  feed: true,
} satisfies Keys<SwitchInput>;

/**
 * A switch: each output can choose this source; powered from its receivers or from the mains. In a cascade its inputs go on to the next
 * switch, side by side.
 */
export interface SwitchPart extends PartBase {
  readonly kind: 'switch';
  /** Loss from the input to a chosen output in dB; negative where the switch amplifies. */
  readonly lossDb: DecibelsByFrequency;
  /** Decoupling between two outputs in dB; 25 by default (practice of the trade). */
  readonly isolationDb?: DecibelsByFrequency;
  /** Noise figure in dB where the switch amplifies; 8 by default. */
  readonly noiseFigureDb?: number;
  /** Need from the cable; none for a mains-fed switch. */
  readonly supply?: SupplyNeed;
  /** Whether a mains-fed switch feeds the source itself, so that nothing is asked of the receivers. */
  readonly feedsSource?: boolean;
  /** Its inputs, where it has several or theirs differ; left out, one input with the figures of the switch. */
  readonly inputs?: readonly SwitchInput[];
  /** Loss from each input to the line that passes it on, in dB; 0 by default. */
  readonly throughLossDb?: DecibelsByFrequency;
  /** What follows where all inputs are passed on side by side: the cable to the next switch, whose inputs have the same names. */
  readonly through?: DistributionPart | null;
  /** Parts on the outputs; `null` for a closed one. */
  readonly outputs: readonly (DistributionPart | null)[];
}

/** An amplifier. */
export interface AmplifierPart extends PartBase {
  readonly kind: 'amplifier';
  /** Gain in dB over frequency; a tilt is given by points that rise. */
  readonly gainDb: DecibelsByFrequency;
  /** Noise figure in dB, 0 or more. */
  readonly noiseFigureDb: number;
  /** Output level in dBuV at which two equal carriers give third-order products 35 dB below. */
  readonly maximumOutputDbuv?: number;
  /** Automatic gain: the gain falls, by up to `rangeDb`, so that the mean output level is this one. */
  readonly automaticGain?: {
    /** Mean output level per carrier aimed at, in dBuV. */
    readonly outputLevelDbuv: number;
    /** How far the gain can fall, in dB, 0 or more. */
    readonly rangeDb: number;
  };
  /** Need from the cable; none for a mains-fed amplifier. */
  readonly supply?: SupplyNeed;
  /** Whether direct current passes towards the source; true by default. */
  readonly passesSupply?: boolean;
  /** What follows. */
  readonly to: DistributionPart;
}

/** An outlet in the wall: where levels are promised. */
export interface OutletPart extends PartBase {
  readonly kind: 'outlet';
  /** Name of the outlet, unique in the tree. */
  readonly name: string;
  /** Loss of the outlet itself in dB, 0 by default; the level is the one behind it. */
  readonly lossDb?: DecibelsByFrequency;
  /** A receiver and its cord, where there is one. */
  readonly to?: DistributionPart;
}

/** A receiver. */
export interface ReceiverPart extends PartBase {
  readonly kind: 'receiver';
  /** Name of the receiver, unique in the tree. */
  readonly name: string;
  /** Lowest level per carrier in dBuV; 43.75 by default (-65 dBm). */
  readonly minimumLevelDbuv?: number;
  /** Highest level per carrier in dBuV; 83.75 by default (-25 dBm). */
  readonly maximumLevelDbuv?: number;
  /** Noise figure in dB; 10 by default. */
  readonly noiseFigureDb?: number;
}

/** A part of the tree; read `kind` first. */
export type DistributionPart =
  | CablePart
  | LossPart
  | SplitterPart
  | TapPart
  | SwitchPart
  | AmplifierPart
  | OutletPart
  | ReceiverPart;

export const DISTRIBUTION_PART_KEYS = {
  kind: true,
  gainDb: true,
  noiseFigureDb: true,
  maximumOutputDbuv: true,
  automaticGain: true,
  supply: true,
  passesSupply: true,
  to: true,
  name: true,
  cable: true,
  lengthM: true,
  lossDb: true,
  isolationDb: true,
  diodeDropV: true,
  outputs: true,
  throughLossDb: true,
  tapLossDb: true,
  tapIsolationDb: true,
  tapsPassSupply: true,
  taps: true,
  feedsSource: true,
  inputs: true,
  through: true,
  minimumLevelDbuv: true,
  maximumLevelDbuv: true,
} satisfies Keys<DistributionPart>;

/** What feeds the tree: the output of the outdoor unit, or an aerial. */
export interface DistributionSource {
  /** Level per carrier in dBuV at 75 ohm. */
  readonly levelDbuv: DecibelsByFrequency;
  /** Carrier-to-noise ratio in dB at the source; left out, the source counts as free of noise but for that of a warm line. */
  readonly carrierToNoiseDb?: DecibelsByFrequency;
  /** Noise bandwidth of a carrier in MHz; 27.5 by default. */
  readonly bandwidthMHz?: number;
  /** Need from the cable. */
  readonly supply?: SupplyNeed;
}

export const DISTRIBUTION_SOURCE_KEYS = {
  levelDbuv: true,
  carrierToNoiseDb: true,
  bandwidthMHz: true,
  supply: true,
} satisfies Keys<DistributionSource>;

/** A source, the tree behind it and the temperature of its cables. */
export interface DistributionSystem {
  /** What feeds the tree. */
  readonly source: DistributionSource;
  /** First part behind the source. */
  readonly tree: DistributionPart;
  /** Temperature of cables in degrees Celsius; 20 by default. */
  readonly temperatureC?: number;
}

export const DISTRIBUTION_SYSTEM_KEYS = {
  source: true,
  tree: true,
  temperatureC: true,
} satisfies Keys<DistributionSystem>;
