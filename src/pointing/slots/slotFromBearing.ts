/** Which slot a measured direction points at: the check for the wrong satellite. */

import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { DomainError, finite, inRange, object, positive } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { turnDeg, wrapLongitudeDeg } from '../../numeric/angle.js';
import { minimumBetween } from '../../numeric/minimum.js';
import {
  azimuthOfDeg,
  elevationOfDeg,
  separationDeg,
  sightLineKm,
  skyVector,
} from '../look/sightLine.js';
import { arcHalfWidthDeg } from './visibleArc.js';

/** What {@link slotFromBearing} is asked. */
export interface SlotFromBearingInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Measured azimuth of the beam in degrees, clockwise from true north, any turn. */
  readonly azimuthDeg: number;
  /** Measured geometric elevation of the beam in degrees, -5 to 90. */
  readonly elevationDeg: number;
  /** Orbital longitudes of the slots that may be there, in degrees, east positive; at least one. */
  readonly orbitalLongitudesDeg: readonly number[];
  /** How far off the azimuth may be in degrees, above 0; 2 when left out, as of a hand compass. */
  readonly azimuthWithinDeg?: number;
  /** How far off the elevation may be in degrees, above 0; 1 when left out, as of an inclinometer. */
  readonly elevationWithinDeg?: number;
}

const SLOT_FROM_BEARING_INPUT_KEYS = {
  station: true,
  azimuthDeg: true,
  elevationDeg: true,
  orbitalLongitudesDeg: true,
  azimuthWithinDeg: true,
  elevationWithinDeg: true,
} satisfies Keys<SlotFromBearingInput>;

/** A slot beside the measured direction. */
export interface SlotNearby {
  /** Longitude of the slot in degrees, [-180, 180). */
  readonly orbitalLongitudeDeg: number;
  /** Its azimuth in degrees, [0, 360). */
  readonly azimuthDeg: number;
  /** Its geometric elevation in degrees. */
  readonly elevationDeg: number;
  /** Turn of azimuth from the measured direction to the slot in degrees, [-180, 180), clockwise positive. */
  readonly azimuthOffsetDeg: number;
  /** Rise of elevation from the measured direction to the slot in degrees, up positive. */
  readonly elevationOffsetDeg: number;
  /** Angle on the sky between the measured direction and the slot in degrees, 0 to 180. */
  readonly separationDeg: number;
  /** Whether both offsets lie within the stated uncertainties. */
  readonly withinUncertainty: boolean;
}

/** What the measured direction points at; read `kind` first. */
export interface SlotFromBearing {
  /** `one` slot within the uncertainties, `several` (cannot be told apart by angles), or `none`. */
  readonly kind: 'one' | 'several' | 'none';
  /** Orbital longitude of the arc's point nearest to the measured direction in degrees, [-180, 180). */
  readonly nearestLongitudeDeg: number;
  /** Angle on the sky from the measured direction to that point in degrees, 0 or more. */
  readonly offArcDeg: number;
  /** Whether the measured direction lies above the arc or below it. */
  readonly side: 'above' | 'below';
  /** The given slots above the horizon, nearest first. */
  readonly slots: readonly SlotNearby[];
}

/**
 * Which slot a measured azimuth and elevation point at.
 *
 * Each given slot is compared with the measured direction; those within both uncertainties are candidates.
 * One candidate names the satellite; several say that a reading of the signal must decide. The nearest
 * point of the arc tells whether the direction is on the arc at all.
 *
 * @throws {@link DomainError} naming the bad field, `empty` for no slots.
 *
 * Source: own derivation; WGS 84 ellipsoid, no refraction. The default uncertainties are practice of the trade.
 * Accuracy: 1e-7 degree.
 * @example
 * ```ts
 * import { slotFromBearing } from 'slantpath/pointing';
 * const found = slotFromBearing({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   azimuthDeg: 171,
 *   elevationDeg: 36,
 *   orbitalLongitudesDeg: [7.2, 16.4, 21.8],
 * });
 * [found.kind, found.slots[0]?.orbitalLongitudeDeg]; // => ['one', 16.4]
 * ```
 */
export function slotFromBearing(input: SlotFromBearingInput): SlotFromBearing {
  const given = known('input', input, SLOT_FROM_BEARING_INPUT_KEYS);
  const station = checkedStation(given.station);
  const azimuthDeg = finite('azimuthDeg', given.azimuthDeg);
  const elevationDeg = inRange('elevationDeg', given.elevationDeg, -5, 90);
  const azimuthWithinDeg = positive('azimuthWithinDeg', given.azimuthWithinDeg ?? 2);
  const elevationWithinDeg = positive('elevationWithinDeg', given.elevationWithinDeg ?? 1);
  const measured = skyVector(azimuthDeg, elevationDeg);
  const slots = checkedLongitudes(given.orbitalLongitudesDeg)
    .map((orbitalLongitudeDeg): SlotNearby => {
      const line = sightLineKm(station, orbitalLongitudeDeg);
      const slotAzimuthDeg = azimuthOfDeg(line);
      const slotElevationDeg = elevationOfDeg(line);
      const azimuthOffsetDeg = turnDeg(azimuthDeg, slotAzimuthDeg);
      const elevationOffsetDeg = slotElevationDeg - elevationDeg;
      return {
        orbitalLongitudeDeg: wrapLongitudeDeg(orbitalLongitudeDeg),
        azimuthDeg: slotAzimuthDeg,
        elevationDeg: slotElevationDeg,
        azimuthOffsetDeg,
        elevationOffsetDeg,
        separationDeg: separationDeg(measured, line),
        withinUncertainty:
          Math.abs(azimuthOffsetDeg) <= azimuthWithinDeg &&
          Math.abs(elevationOffsetDeg) <= elevationWithinDeg,
      };
    })
    .filter((slot) => slot.elevationDeg > 0)
    .sort((a, b) => a.separationDeg - b.separationDeg);
  const candidates = slots.filter((slot) => slot.withinUncertainty).length;
  return {
    kind: candidates === 0 ? 'none' : candidates === 1 ? 'one' : 'several',
    ...nearestOfArc(station, measured),
    slots,
  };
}

function checkedLongitudes(longitudesDeg: readonly number[]): readonly number[] {
  const { length } = object('orbitalLongitudesDeg', longitudesDeg);
  if (!Array.isArray(longitudesDeg) || length === 0)
    throw new DomainError({
      code: length === 0 ? 'empty' : 'malformed',
      parameter: 'orbitalLongitudesDeg',
      received: longitudesDeg,
      allowed: 'a list of at least one longitude',
    });
  return longitudesDeg.map((value, index) =>
    finite('orbitalLongitudesDeg', value, undefined, index),
  );
}

/** The point of the arc nearest to a direction: a coarse walk, then a refined minimum. */
function nearestOfArc(
  station: Station,
  measured: ReturnType<typeof skyVector>,
): Pick<SlotFromBearing, 'nearestLongitudeDeg' | 'offArcDeg' | 'side'> {
  // Where no part of the arc is visible, its highest point stands for it.
  const halfWidthDeg = arcHalfWidthDeg(station, 0) ?? 0;
  const away = (offsetDeg: number): number =>
    separationDeg(measured, sightLineKm(station, station.longitudeDeg + offsetDeg));
  const steps = 64;
  let best = 0;
  for (let step = -steps; step <= steps; step++)
    if (away((step / steps) * halfWidthDeg) < away((best / steps) * halfWidthDeg)) best = step;
  const { at, value } = minimumBetween(away, {
    from: (Math.max(-steps, best - 1) / steps) * halfWidthDeg,
    to: (Math.min(steps, best + 1) / steps) * halfWidthDeg,
    tolerance: 1e-9,
  });
  const line = sightLineKm(station, station.longitudeDeg + at);
  const measuredElevationDeg = elevationOfDeg(measured);
  return {
    nearestLongitudeDeg: wrapLongitudeDeg(station.longitudeDeg + at),
    offArcDeg: value,
    side: measuredElevationDeg >= elevationOfDeg(line) ? 'above' : 'below',
  };
}
