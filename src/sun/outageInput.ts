/** What a search for Sun outages is made from. */

import type { Station } from '../earth/station.js';
import type { Keys } from '../keys.js';
import type { Instant } from '../numeric/instant.js';
import type { SolarActivity } from './brightness.js';

/** Input of {@link sunOutages}. */
export interface SunOutageInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** Diameter of the reflector in metres, 0.05 to 100. */
  readonly diameterM: number;
  /** Frequency received in GHz, 0.5 to 100. */
  readonly frequencyGHz: number;
  /** System noise temperature under a clear sky in kelvins, above 0. */
  readonly systemNoiseK: number;
  /** First instant of the search: ISO-8601 text or epoch milliseconds. */
  readonly from: Instant;
  /** Last instant of the search, after `from`, at most 1100 days later. */
  readonly to: Instant;
  /** Loss of C/N in decibels from which the event counts, 0.1 to 40; default 1. The margin of the link, for an outage. */
  readonly thresholdLossDb?: number;
  /** Activity of the Sun; default `quiet`. */
  readonly activity?: SolarActivity;
  /** Half-power beamwidth in degrees, 0.03 to 90; default 70 degrees times wavelength over diameter. */
  readonly beamwidthDeg?: number;
  /** Attenuation of the Sun's noise by a clear sky in decibels, 0 or more; default 0. */
  readonly attenuationDb?: number;
}

export const SUN_OUTAGE_INPUT_KEYS = {
  station: true,
  orbitalLongitudeDeg: true,
  diameterM: true,
  frequencyGHz: true,
  systemNoiseK: true,
  from: true,
  to: true,
  thresholdLossDb: true,
  activity: true,
  beamwidthDeg: true,
  attenuationDb: true,
} satisfies Keys<SunOutageInput>;
