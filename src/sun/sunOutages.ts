/** Sun outages: the days on which the Sun stands behind a satellite, and what that costs. */

import { DomainError, inRange } from '../errors.js';
import { knownOnly } from '../keys.js';
import { cosDeg } from '../numeric/angle.js';
import { epochMsToIso, instantToEpochMs } from '../numeric/instant.js';
import { bracketedRoot } from '../numeric/root.js';
import { passageOfDay, roughDeclinationDeg } from './outageGeometry.js';
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

const DAY_MS = 86400000;

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
  const firstMs = instantToEpochMs('from', from);
  const lastMs = instantToEpochMs('to', to);
  if (!(lastMs > firstMs) || lastMs - firstMs > 1100 * DAY_MS) {
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'to',
      received: to,
      allowed: 'after from, by at most 1100 days',
    });
  }
  const reception = outageReception(given);
  const thresholdDb = inRange('thresholdLossDb', given.thresholdLossDb ?? 1, 0.1, 40);
  const { beamwidthDeg, brightnessTemperatureK, direction } = reception;
  const { elevationDeg } = direction;
  if (!(elevationDeg > 0)) return { kind: 'below-horizon', elevationDeg };
  const satelliteDeclinationDeg = direction.celestialDeclinationDeg;
  const head = { beamwidthDeg, brightnessTemperatureK, satelliteDeclinationDeg };
  const greatestLossDb = reception.noise(0, 0.2666).lossDb;
  const events: SunOutage[] = [];
  // The loss is gone where the Sun is three beamwidths and its radius away.
  const reachDeg = 3 * beamwidthDeg + 0.3;
  const firstDayMs = Math.floor(firstMs / DAY_MS) * DAY_MS - DAY_MS;
  for (let dayMs = firstDayMs; dayMs <= lastMs + DAY_MS; dayMs += DAY_MS) {
    const roughDeg = roughDeclinationDeg(dayMs + DAY_MS / 2) - satelliteDeclinationDeg;
    if (Math.abs(roughDeg) > reachDeg + 0.3) continue;
    const passage = passageOfDay(reception.station, direction, dayMs);
    if (passage.peakMs < firstMs || passage.peakMs > lastMs) continue;
    const loss = (epochMs: number) =>
      reception.noise(passage.separationAt(epochMs), passage.angularRadiusDeg).lossDb - thresholdDb;
    const peak = reception.noise(passage.separationDeg, passage.angularRadiusDeg);
    if (peak.lossDb < thresholdDb) continue;
    const widestMs = Math.min(
      3 * 3600000,
      ((reachDeg + 1) * 240000) / cosDeg(satelliteDeclinationDeg),
    );
    const tolerance = 50;
    const { peakMs } = passage;
    const startMs =
      bracketedRoot(loss, { from: peakMs - widestMs, to: peakMs, tolerance }) ?? peakMs - widestMs;
    const endMs =
      bracketedRoot(loss, { from: peakMs, to: peakMs + widestMs, tolerance }) ?? peakMs + widestMs;
    events.push({
      startUtc: epochMsToIso(startMs),
      peakUtc: epochMsToIso(peakMs),
      endUtc: epochMsToIso(endMs),
      durationMin: (endMs - startMs) / 60000,
      separationDeg: passage.separationDeg,
      temperatureRiseK: peak.temperatureRiseK,
      lossDb: peak.lossDb,
    });
  }
  return events.length > 0
    ? { kind: 'outages', ...head, events }
    : { kind: 'none', ...head, greatestLossDb };
}
