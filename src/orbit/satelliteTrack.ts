/** Where a real satellite stands, from its orbital elements: one instant, or a track through a day. */

import { eciToEcf, gstime, json2satrec, propagate } from 'satellite.js';
import type { EcefKm } from '../earth/ecef.js';
import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { DomainError, inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { atan2Deg } from '../numeric/angle.js';
import { epochMsToIso, type Instant, instantToEpochMs } from '../numeric/instant.js';
import type { LookAngles } from '../pointing/look/lookAngles.js';
import { lookAnglesToPoint } from '../pointing/look/lookAnglesToPoint.js';
import { checkedElements, type OrbitalElements } from './elements.js';

/** Earth-fixed position as a function of epoch milliseconds, `undefined` where the model has none. */
type Motion = (epochMs: number) => EcefKm | undefined;

function motionOf(elements: OrbitalElements): Motion {
  const record = json2satrec({
    OBJECT_NAME: '',
    OBJECT_ID: '',
    NORAD_CAT_ID: '0',
    ELEMENT_SET_NO: 0,
    EPOCH: elements.epoch,
    MEAN_MOTION: elements.meanMotionRevPerDay,
    ECCENTRICITY: elements.eccentricityRatio,
    INCLINATION: elements.inclinationDeg,
    RA_OF_ASC_NODE: elements.ascendingNodeDeg,
    ARG_OF_PERICENTER: elements.argumentOfPerigeeDeg,
    MEAN_ANOMALY: elements.meanAnomalyDeg,
    BSTAR: elements.dragTermPerEarthRadius,
    MEAN_MOTION_DOT: 0,
    MEAN_MOTION_DDOT: 0,
  });
  return (epochMs) => {
    const date = new Date(epochMs);
    const moved = propagate(record, date);
    if (!moved) return undefined;
    const { x, y, z } = eciToEcf(moved.position, gstime(date));
    return Number.isFinite(x + y + z) ? { xKm: x, yKm: y, zKm: z } : undefined;
  };
}

/** What {@link satelliteTrack} is asked. */
export interface SatelliteTrackInput {
  /** Orbital elements from `ommToElements` or `tleToElements`. */
  readonly elements: OrbitalElements;
  /** Where the antenna stands. */
  readonly station: Station;
  /** First instant of the track. */
  readonly from: Instant;
  /** Length of the track in hours, 0 to 744; 24 when left out. */
  readonly lengthH?: number;
  /** Step in minutes, 0.1 to 1440; 15 when left out; at most 2000 steps. */
  readonly stepMin?: number;
}

const SATELLITE_TRACK_INPUT_KEYS = {
  elements: true,
  station: true,
  from: true,
  lengthH: true,
  stepMin: true,
} satisfies Keys<SatelliteTrackInput>;

/** One point of a track. */
export interface SatelliteTrackPoint {
  /** Its instant: ISO-8601 text in UTC. */
  readonly instant: string;
  /** Azimuth in degrees, clockwise from true north, [0, 360); 0 straight up. */
  readonly azimuthDeg: number;
  /** Geometric elevation in degrees, negative when hidden. */
  readonly elevationDeg: number;
  /** Straight distance in kilometres. */
  readonly slantRangeKm: number;
  /** Longitude under the satellite in degrees, (-180, 180]. */
  readonly underLongitudeDeg: number;
  /** Geocentric latitude under the satellite in degrees, north positive. */
  readonly underLatitudeDeg: number;
}

/** A track; read `kind` first. */
export type SatelliteTrack =
  | {
      /** `track`: positions for all instants. */
      readonly kind: 'track';
      /** The points in the order of time; fits `fixedAntennaLoss`. */
      readonly points: readonly SatelliteTrackPoint[];
      /** Days from the elements' epoch to the track's first and last instant; negative before the epoch. */
      readonly daysFromEpoch: { readonly first: number; readonly last: number };
    }
  | {
      /** `no-position`: the model has no position there (decayed, or elements that no orbit can have). */
      readonly kind: 'no-position';
      /** First instant without a position. */
      readonly instant: string;
    };

/**
 * Track of a satellite across a station's sky from its orbital elements (SGP4).
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: SGP4 and SDP4 as in satellite.js (D. Vallado and others, Revisiting Spacetrack Report #3, AIAA 2006-6753).
 * Accuracy: the model itself keeps a geosynchronous satellite within some kilometres (0.01 degree) for a week or two from the epoch, if it
 * is not manoeuvred; sidereal time from UTC instead of UT1 adds up to 0.004 degree.
 * @example
 * ```ts
 * import { ommToElements, satelliteTrack } from 'slantpath/orbit';
 * const elements = ommToElements({
 *   EPOCH: '2026-10-27T12:00:00Z',
 *   MEAN_MOTION: 1.00271,
 *   ECCENTRICITY: 0.0002,
 *   INCLINATION: 3,
 *   RA_OF_ASC_NODE: 80,
 *   ARG_OF_PERICENTER: 90,
 *   MEAN_ANOMALY: 62,
 * });
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * const track = satelliteTrack({ elements, station, from: '2026-10-28', stepMin: 60 });
 * track.kind === 'track' && track.points.length; // => 25
 * ```
 */
export function satelliteTrack(input: SatelliteTrackInput): SatelliteTrack {
  const given = knownOnly('input', input, SATELLITE_TRACK_INPUT_KEYS);
  const elements = checkedElements(given.elements);
  const station = checkedStation(given.station);
  const fromMs = instantToEpochMs('from', given.from);
  const lengthH = inRange('lengthH', given.lengthH ?? 24, 0, 744);
  const stepMin = inRange('stepMin', given.stepMin ?? 15, 0.1, 1440, 'is the step in minutes?');
  const steps = Math.floor((lengthH * 60) / stepMin + 1e-9);
  if (steps > 2000)
    throw new DomainError({
      code: 'out-of-range',
      parameter: 'stepMin',
      received: stepMin,
      allowed: `at least ${(lengthH * 60) / 2000} for ${lengthH} hours`,
    });
  const motion = motionOf(elements);
  const points: SatelliteTrackPoint[] = [];
  for (let step = 0; step <= steps; step++) {
    const epochMs = fromMs + step * stepMin * 60000;
    const ecef = motion(epochMs);
    if (ecef === undefined) return { kind: 'no-position', instant: epochMsToIso(epochMs) };
    const look = lookAnglesToPoint(station, ecef);
    points.push({
      instant: epochMsToIso(epochMs),
      azimuthDeg: look.kind === 'overhead' ? 0 : look.azimuthDeg,
      elevationDeg: look.elevationDeg,
      slantRangeKm: look.slantRangeKm,
      underLongitudeDeg: atan2Deg(ecef.yKm, ecef.xKm),
      underLatitudeDeg: atan2Deg(ecef.zKm, Math.hypot(ecef.xKm, ecef.yKm)),
    });
  }
  const days = (step: number): number =>
    (fromMs + step * stepMin * 60000 - instantToEpochMs('epoch', elements.epoch)) / 86400000;
  return { kind: 'track', points, daysFromEpoch: { first: days(0), last: days(steps) } };
}

/** What {@link satelliteLookAngles} is asked. */
export interface SatelliteLookAnglesInput {
  /** Orbital elements from `ommToElements` or `tleToElements`. */
  readonly elements: OrbitalElements;
  /** Where the antenna stands. */
  readonly station: Station;
  /** The instant. */
  readonly instant: Instant;
}

const SATELLITE_LOOK_ANGLES_INPUT_KEYS = {
  elements: true,
  station: true,
  instant: true,
} satisfies Keys<SatelliteLookAnglesInput>;

/** Look angles of a satellite at an instant; read `kind` first. */
export type SatelliteLookAngles = LookAngles | { readonly kind: 'no-position' };

/**
 * Look angles to a satellite at one instant from its orbital elements (SGP4).
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: as {@link satelliteTrack}.
 * Accuracy: as {@link satelliteTrack}.
 * @example
 * ```ts
 * import { satelliteLookAngles, tleToElements } from 'slantpath/orbit';
 * const elements = tleToElements(`1 99901U 26001A   26300.50000000  .00000000  00000-0  00000-0 0  9993
 * 2 99901   3.0000  80.0000 0002000  90.0000  62.0000  1.00271000  1002`);
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * satelliteLookAngles({ elements, station, instant: '2026-10-28T06:00:00Z' }).kind; // => 'visible'
 * ```
 */
export function satelliteLookAngles(input: SatelliteLookAnglesInput): SatelliteLookAngles {
  const given = knownOnly('input', input, SATELLITE_LOOK_ANGLES_INPUT_KEYS);
  const elements = checkedElements(given.elements);
  const station = checkedStation(given.station);
  const ecef = motionOf(elements)(instantToEpochMs('instant', given.instant));
  return ecef === undefined ? { kind: 'no-position' } : lookAnglesToPoint(station, ecef);
}
