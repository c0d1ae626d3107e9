/** Sun outages: the days on which the Sun stands behind a satellite, and what that costs. */

import { knownOnly } from '../keys.js';
import { epochMsToIso } from '../numeric/instant.js';
import { checkedThresholdDb, outageEvents, outageSpan } from './outageEvents.js';
import type { SunOutageInput } from './outageInput.js';
import { SUN_OUTAGE_INPUT_KEYS } from './outageInput.js';
import { outageReception } from './outageReception.js';

/** One day's event. */
export interface SunOutage {
  /** When the loss rises through the threshold, UTC, ISO 8601. */
  readonly startUtc: string;
  /** When the Sun is nearest to the satellite and the loss greatest. */
  readonly peakUtc: string;
  /** When the loss falls through the threshold. */
  readonly endUtc: string;
  /** From start to end in minutes. */
  readonly durationMin: number;
  /** Least angle between the Sun's centre and the satellite in degrees. */
  readonly separationDeg: number;
  /** Rise of the noise temperature at the peak in kelvins. */
  readonly temperatureRiseK: number;
  /** Loss of C/N at the peak in decibels. */
  readonly lossDb: number;
}

/** Events of a span of time; read `kind` first. */
export type SunOutages =
  | {
      /** `outages`: at least one event. */
      readonly kind: 'outages';
      /** Half-power beamwidth in degrees. */
      readonly beamwidthDeg: number;
      /** Brightness temperature of the Sun in kelvins. */
      readonly brightnessTemperatureK: number;
      /** Declination of the satellite seen from the station in degrees: the Sun's declination at the best days. */
      readonly satelliteDeclinationDeg: number;
      /** One event a day, in order of time. */
      readonly events: readonly SunOutage[];
    }
  | {
      /** `none`: no event reaches the threshold in that time. */
      readonly kind: 'none';
      readonly beamwidthDeg: number;
      readonly brightnessTemperatureK: number;
      readonly satelliteDeclinationDeg: number;
      /** Loss in decibels with the Sun exactly behind the satellite: below the threshold, or the season is not in the span. */
      readonly greatestLossDb: number;
    }
  | {
      /** `below-horizon`: the satellite is hidden by the Earth. */
      readonly kind: 'below-horizon';
      /** Geometric elevation of the satellite in degrees, negative. */
      readonly elevationDeg: number;
    };

/**
 * Sun outages of a station and slot: days, start, peak, end, and the loss of C/N.
 *
 * Twice a year, near the equinoxes, the Sun passes behind the satellite for some minutes on several days. An event
 * is counted while the Sun's noise costs at least `thresholdLossDb`.
 *
 * @returns The events, or `none` with the greatest loss that could be, or `below-horizon`.
 * @throws {@link DomainError} naming the bad field; `inconsistent` when `to` is not after `from`.
 *
 * Source: own geometry (topocentric Sun against the nominal slot); noise as in `sunNoise`; ITU-R S.1525 for the idea.
 * Accuracy: peak instants within 3 s for the nominal slot; a satellite moving within 0.05 degree shifts them by up to 12 s.
 * Depth and length follow the brightness of the Sun (a factor of 1.5) and the beamwidth (10 %).
 * @example
 * ```ts
 * import { sunOutages } from 'slantpath/sun';
 * const found = sunOutages({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   orbitalLongitudeDeg: 16.4,
 *   diameterM: 0.9,
 *   frequencyGHz: 11.7,
 *   systemNoiseK: 120,
 *   from: '2026-01-01',
 *   to: '2026-07-01',
 * });
 * found.kind === 'outages' && found.events.length; // => 10
 * ```
 */
export function sunOutages(input: SunOutageInput): SunOutages {
  const { from, to, ...given } = knownOnly('input', input, SUN_OUTAGE_INPUT_KEYS);
  const span = outageSpan(from, to);
  const reception = outageReception(given);
  const thresholdDb = checkedThresholdDb(given.thresholdLossDb);
  const { beamwidthDeg, brightnessTemperatureK, direction } = reception;
  const { elevationDeg } = direction;
  if (!(elevationDeg > 0)) return { kind: 'below-horizon', elevationDeg };
  const satelliteDeclinationDeg = direction.celestialDeclinationDeg;
  const head = { beamwidthDeg, brightnessTemperatureK, satelliteDeclinationDeg };
  const greatestLossDb = reception.noise(0, 0.2666).lossDb;
  const events = outageEvents(reception, thresholdDb, span).map(
    ({ startMs, peakMs, endMs, separationDeg, peak }) => ({
      startUtc: epochMsToIso(startMs),
      peakUtc: epochMsToIso(peakMs),
      endUtc: epochMsToIso(endMs),
      durationMin: (endMs - startMs) / 60000,
      separationDeg,
      temperatureRiseK: peak.temperatureRiseK,
      lossDb: peak.lossDb,
    }),
  );
  return events.length > 0
    ? { kind: 'outages', ...head, events }
    : { kind: 'none', ...head, greatestLossDb };
}
