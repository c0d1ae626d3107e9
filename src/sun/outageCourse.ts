/** The course of one sun outage: loss of C/N against time. */

import { DomainError, inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import { epochMsToIso, type Instant, instantToEpochMs } from '../numeric/instant.js';
import { passageOfDay } from './outageGeometry.js';
import type { SunOutageInput } from './outageInput.js';
import { outageReception } from './outageReception.js';

/** A moment of an outage. */
export interface SunOutageMoment {
  /** The instant in UTC, ISO 8601. */
  readonly instantUtc: string;
  /** Angle between the Sun's centre and the satellite in degrees. */
  readonly separationDeg: number;
  /** Rise of the noise temperature in kelvins. */
  readonly temperatureRiseK: number;
  /** Loss of C/N in decibels. */
  readonly lossDb: number;
}

const SUN_OUTAGE_COURSE_INPUT_KEYS = {
  frequencyGHz: true,
  diameterM: true,
  beamwidthDeg: true,
  orbitalLongitudeDeg: true,
  station: true,
  systemNoiseK: true,
  activity: true,
  attenuationDb: true,
  near: true,
  halfSpanMin: true,
  stepS: true,
  // The input of `sunOutages` may be handed on as it is.
  from: true,
  to: true,
  thresholdLossDb: true,
} satisfies Keys<Parameters<typeof sunOutageCourse>[0] & SunOutageInput>;

/**
 * Loss of C/N from minute to minute around the Sun's passage behind a satellite.
 *
 * @param input  As for `sunOutages`, with `near`: any instant within 12 hours of the passage (a `peakUtc`) instead of the
 *   span; `halfSpanMin` before and after the passage, 1 to 60, default 15; `stepS` 1 to 600 seconds, default 30.
 * @returns The moments in order, the passage in the middle.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: as `sunOutages`. Accuracy: as `sunOutages`.
 * @example
 * ```ts
 * import { sunOutageCourse } from 'slantpath/sun';
 * const course = sunOutageCourse({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   orbitalLongitudeDeg: 16.4,
 *   diameterM: 0.9,
 *   frequencyGHz: 11.7,
 *   systemNoiseK: 120,
 *   near: '2026-03-03T11:00:00Z',
 *   halfSpanMin: 10,
 *   stepS: 600,
 * });
 * course.map((moment) => moment.lossDb.toFixed(1)); // => ['0.2', '6.7', '0.2']
 * ```
 */
export function sunOutageCourse(
  input: Omit<SunOutageInput, 'from' | 'to' | 'thresholdLossDb'> & {
    readonly near: Instant;
    readonly halfSpanMin?: number;
    readonly stepS?: number;
  },
): readonly SunOutageMoment[] {
  const { near, halfSpanMin, stepS, ...given } = knownOnly(
    'input',
    input,
    SUN_OUTAGE_COURSE_INPUT_KEYS,
  );
  const nearMs = instantToEpochMs('near', near);
  const reception = outageReception(given);
  const stepMs = inRange('stepS', stepS ?? 30, 1, 600) * 1000;
  const steps = Math.floor((inRange('halfSpanMin', halfSpanMin ?? 15, 1, 60) * 60000) / stepMs);
  // The Sun passes over the direction's longitude about noon of its mean solar time; take the day nearest to `near`.
  const { direction, station, noise } = reception;
  const noonMs = 43200000 - wrapLongitudeDeg(direction.longitudeDeg) * 240000;
  const dayMs = Math.round((nearMs - noonMs) / 86400000) * 86400000;
  const { peakMs, separationAt, angularRadiusDeg } = passageOfDay(station, direction, dayMs);
  if (!(direction.elevationDeg > 0)) {
    throw new DomainError({
      code: 'out-of-range',
      parameter: 'orbitalLongitudeDeg',
      received: given.orbitalLongitudeDeg,
      allowed: 'a slot above the horizon of the station',
    });
  }
  return Array.from({ length: 2 * steps + 1 }, (_, index) => {
    const epochMs = peakMs + (index - steps) * stepMs;
    const separationDeg = separationAt(epochMs);
    const { temperatureRiseK, lossDb } = noise(separationDeg, angularRadiusDeg);
    return { instantUtc: epochMsToIso(epochMs), separationDeg, temperatureRiseK, lossDb };
  });
}
