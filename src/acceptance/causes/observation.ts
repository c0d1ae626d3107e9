/** What is read or looked at on site, in the terms of the search of causes. */

import type { Keys } from '../../keys.js';

/** A place in the pattern of readings. */
interface AtCarrier {
  /** Name of the carrier. */
  readonly carrier: string;
  /** Name of the test point. */
  readonly testPoint: string;
}

/** Something to read, without its result; read `kind` first. */
export type CauseMeasurement =
  | (AtCarrier & { readonly kind: 'level' })
  | (AtCarrier & { readonly kind: 'carrier-to-noise' })
  | (AtCarrier & { readonly kind: 'isolation' })
  | (AtCarrier & { readonly kind: 'reception' })
  | { readonly kind: 'polarization-null'; readonly slot: string }
  | { readonly kind: 'search'; readonly slot: string }
  | { readonly kind: 'sun-near'; readonly slot: string }
  | { readonly kind: 'obstacle-seen'; readonly slot: string }
  | { readonly kind: 'connector-check'; readonly segment: string }
  | { readonly kind: 'cable-check'; readonly segment: string }
  | { readonly kind: 'supply-voltage'; readonly testPoint: string }
  | { readonly kind: 'mast-lean' }
  | { readonly kind: 'rain-seen' }
  | { readonly kind: 'spectrum' }
  | { readonly kind: 'repeat-later' };

/** A result; read `kind` first. Uncertainties are standard ones. */
export type CauseObservation =
  /** Channel power (carrier and noise) in dBuV; standard uncertainty in dB, 1 by default. */
  | (AtCarrier & {
      readonly kind: 'level';
      readonly levelDbuv: number;
      readonly standardUncertaintyDb?: number;
    })
  /** Carrier-to-noise ratio in dB; 0.7 by default. */
  | (AtCarrier & {
      readonly kind: 'carrier-to-noise';
      readonly carrierToNoiseDb: number;
      readonly standardUncertaintyDb?: number;
    })
  /** Cross-polar isolation in dB; 2 by default. */
  | (AtCarrier & {
      readonly kind: 'isolation';
      readonly isolationDb: number;
      readonly standardUncertaintyDb?: number;
    })
  /** Whether the wanted service, another one, or nothing is received. */
  | (AtCarrier & { readonly kind: 'reception'; readonly received: 'wanted' | 'other' | 'nothing' })
  /** How far the feed must be turned, clockwise from behind the antenna, to null the other polarization; 1.5 degrees by default. */
  | {
      readonly kind: 'polarization-null';
      readonly slot: string;
      readonly turnDeg: number;
      readonly standardUncertaintyDeg?: number;
    }
  /** Highest level found within 4 degrees on both axes less the present one, in dB; 0.5 by default. */
  | {
      readonly kind: 'search';
      readonly slot: string;
      readonly riseDb: number;
      readonly standardUncertaintyDb?: number;
    }
  /** Voltage at the unit under load while the higher voltage is asked through a test point; 0.3 V by default. */
  | {
      readonly kind: 'supply-voltage';
      readonly testPoint: string;
      readonly voltageV: number;
      readonly standardUncertaintyV?: number;
    }
  /** Lean of the mast from the vertical in degrees; 0.2 by default. */
  | {
      readonly kind: 'mast-lean';
      readonly leanDeg: number;
      readonly standardUncertaintyDeg?: number;
    }
  /** Change of the carrier-to-noise ratio when the worst carrier is read again an hour later, in dB; 0.5 by default. */
  | {
      readonly kind: 'repeat-later';
      readonly changeDb: number;
      readonly standardUncertaintyDb?: number;
    }
  /** A yes or no: rain falls along the path. */
  | { readonly kind: 'rain-seen'; readonly seen: boolean }
  /** A yes or no: an analyser shows a carrier that is not in the plan. */
  | { readonly kind: 'spectrum'; readonly seen: boolean }
  /** A yes or no: the Sun stands within a beamwidth and a half of the slot (from the clock). */
  | { readonly kind: 'sun-near'; readonly slot: string; readonly seen: boolean }
  /** A yes or no: something stands in the view of the slot. */
  | { readonly kind: 'obstacle-seen'; readonly slot: string; readonly seen: boolean }
  /** A yes or no: an opened connector of the segment is wet, loose or badly made. */
  | { readonly kind: 'connector-check'; readonly segment: string; readonly seen: boolean }
  /** A yes or no: the cable of the segment is longer or of another type than planned. */
  | { readonly kind: 'cable-check'; readonly segment: string; readonly seen: boolean };

export const CAUSE_OBSERVATION_KEYS = {
  carrier: true,
  testPoint: true,
  kind: true,
  levelDbuv: true,
  standardUncertaintyDb: true,
  carrierToNoiseDb: true,
  isolationDb: true,
  received: true,
  slot: true,
  turnDeg: true,
  standardUncertaintyDeg: true,
  riseDb: true,
  voltageV: true,
  standardUncertaintyV: true,
  leanDeg: true,
  changeDb: true,
  seen: true,
  segment: true,
} satisfies Keys<CauseObservation>;

/** Kinds answered by yes or no. */
export const YES_NO_KINDS = [
  'rain-seen',
  'spectrum',
  'sun-near',
  'obstacle-seen',
  'connector-check',
  'cable-check',
] as const;

/** Every kind. */
export const OBSERVATION_KINDS = [
  'level',
  'carrier-to-noise',
  'isolation',
  'reception',
  'polarization-null',
  'search',
  'supply-voltage',
  'mast-lean',
  'repeat-later',
  ...YES_NO_KINDS,
] as const;

/** Standard uncertainty that counts where none is given. */
export const DEFAULT_UNCERTAINTY = {
  level: 1,
  'carrier-to-noise': 0.7,
  isolation: 2,
  'polarization-null': 1.5,
  search: 0.5,
  'supply-voltage': 0.3,
  'mast-lean': 0.2,
  'repeat-later': 0.5,
} as const;
