/** Angle between two slots as a station sees it, and the textbook forms from slant ranges. */

import { GEOSTATIONARY_RADIUS_KM } from '../../constants.js';
import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { DomainError, finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { asinDeg, DEGREES_PER_RADIAN, sinDeg, turnDeg } from '../../numeric/angle.js';
import { separationDeg, sightLineKm } from '../look/sightLine.js';

/** What {@link slotSeparation} is asked. */
export interface SlotSeparationInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Longitude of the first slot in degrees, east positive, any turn. */
  readonly fromLongitudeDeg: number;
  /** Longitude of the second slot in degrees, east positive, any turn. */
  readonly toLongitudeDeg: number;
}

const SLOT_SEPARATION_INPUT_KEYS = {
  station: true,
  fromLongitudeDeg: true,
  toLongitudeDeg: true,
} satisfies Keys<SlotSeparationInput>;

/** How far two slots stand apart. */
export interface SlotSeparation {
  /** Angle between them at the station in degrees, 0 to 180. */
  readonly topocentricDeg: number;
  /** Angle between them at the Earth's centre in degrees, [-180, 180), towards the east positive. */
  readonly longitudeDeg: number;
}

/**
 * Angle between two slots as the station sees it: up to 1.18 times their difference of longitudes right under the arc, since
 * the station is nearer to it than the Earth's centre is, and less than that difference near the horizon.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: angle between two lines of sight; WGS 84 ellipsoid.
 * Accuracy: 1e-10 degree.
 * @example
 * ```ts
 * import { slotSeparation } from 'slantpath/pointing';
 * const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
 * slotSeparation({ station, fromLongitudeDeg: 16.4, toLongitudeDeg: 21.8 }).topocentricDeg.toFixed(2); // => '5.97'
 * ```
 */
export function slotSeparation(input: SlotSeparationInput): SlotSeparation {
  const { station, fromLongitudeDeg, toLongitudeDeg } = knownOnly(
    'input',
    input,
    SLOT_SEPARATION_INPUT_KEYS,
  );
  const checked = checkedStation(station);
  const from = finite('fromLongitudeDeg', fromLongitudeDeg);
  const to = finite('toLongitudeDeg', toLongitudeDeg);
  return {
    topocentricDeg: separationDeg(sightLineKm(checked, from), sightLineKm(checked, to)),
    longitudeDeg: turnDeg(from, to),
  };
}

/** Two slant ranges, for the textbook forms. */
export interface TwoRanges {
  /** Slant range to the first satellite in kilometres, 35000 to 43000. */
  readonly firstRangeKm: number;
  /** Slant range to the second satellite in kilometres, 35000 to 43000. */
  readonly secondRangeKm: number;
  /** Radius of the orbit in kilometres, 42000 to 42500; 42164.169 when left out. */
  readonly orbitRadiusKm?: number;
}

function checkedRanges(ranges: TwoRanges): readonly [number, number, number] {
  const slip = 'is the range in kilometres?';
  return [
    inRange('firstRangeKm', ranges.firstRangeKm, 35000, 43000, slip),
    inRange('secondRangeKm', ranges.secondRangeKm, 35000, 43000, slip),
    inRange('orbitRadiusKm', ranges.orbitRadiusKm ?? GEOSTATIONARY_RADIUS_KM, 42000, 42500),
  ];
}

const SEPARATION_FROM_RANGES_INPUT_KEYS = {
  firstRangeKm: true,
  secondRangeKm: true,
  orbitRadiusKm: true,
  longitudeDifferenceDeg: true,
} satisfies Keys<Parameters<typeof separationFromRanges>[0]>;

/**
 * Angle in degrees at a station between two satellites from their slant ranges and their difference of longitudes.
 *
 * The chord between them is 2 a sin(difference / 2); the law of cosines gives the angle, here in its half-angle form.
 *
 * @throws {@link DomainError} naming the bad field; `inconsistent` for ranges that do not meet over that chord.
 *
 * Source: Maini and Agrawal, Satellite Communications, Example 3.13.
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { separationFromRanges } from 'slantpath/pointing';
 * // Maini and Agrawal, Example 3.13: 69.4 degrees.
 * const ranges = { firstRangeKm: 38000, secondRangeKm: 36000, orbitRadiusKm: 42164 };
 * separationFromRanges({ ...ranges, longitudeDifferenceDeg: 60 }).toFixed(1); // => '69.4'
 * ```
 */
export function separationFromRanges(
  input: TwoRanges & {
    /** Difference of the satellites' longitudes in degrees, 0 to 180. */
    readonly longitudeDifferenceDeg: number;
  },
): number {
  const given = knownOnly('input', input, SEPARATION_FROM_RANGES_INPUT_KEYS);
  const [first, second, orbit] = checkedRanges(given);
  const difference = inRange('longitudeDifferenceDeg', given.longitudeDifferenceDeg, 0, 180);
  const chord = 2 * orbit * sinDeg(difference / 2);
  const square = (chord ** 2 - (first - second) ** 2) / (4 * first * second);
  if (!(square >= 0 && square <= 1))
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'longitudeDifferenceDeg',
      received: difference,
      allowed:
        'such that the satellites are no farther apart than both ranges together and no nearer than their difference',
    });
  return 2 * asinDeg(Math.sqrt(square));
}

const LONGITUDE_DIFFERENCE_FROM_RANGES_INPUT_KEYS = {
  firstRangeKm: true,
  secondRangeKm: true,
  orbitRadiusKm: true,
  topocentricDeg: true,
} satisfies Keys<Parameters<typeof longitudeDifferenceFromRanges>[0]>;

/**
 * Difference in degrees of the longitudes of two satellites from their slant ranges and the angle between them at the station.
 *
 * The inverse of {@link separationFromRanges}.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: Maini and Agrawal, Satellite Communications, Example 7.12 (the book rounds 1 - cos to three digits and prints 5.126).
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { longitudeDifferenceFromRanges } from 'slantpath/pointing';
 * const ranges = { firstRangeKm: 42100, secondRangeKm: 42000, orbitRadiusKm: 42164 };
 * longitudeDifferenceFromRanges({ ...ranges, topocentricDeg: 5 }).toFixed(3); // => '4.988'
 * ```
 */
export function longitudeDifferenceFromRanges(
  input: TwoRanges & {
    /** Angle between the satellites at the station in degrees, 0 to 120. */
    readonly topocentricDeg: number;
  },
): number {
  const given = knownOnly('input', input, LONGITUDE_DIFFERENCE_FROM_RANGES_INPUT_KEYS);
  const [first, second, orbit] = checkedRanges(given);
  const half = inRange('topocentricDeg', given.topocentricDeg, 0, 120) / 2;
  const chord = Math.hypot(first - second, 2 * Math.sqrt(first * second) * sinDeg(half));
  return 2 * Math.asin(Math.min(1, chord / (2 * orbit))) * DEGREES_PER_RADIAN;
}
