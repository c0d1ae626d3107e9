/** How far a feed is turned on a reflector that does not look at its slot: counted from the reflector's own vertical. */

import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { DomainError, finite, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { atan2Deg, cosDeg, lineDeg, sinDeg } from '../../numeric/angle.js';
import { checkedTiltDeg, type SatellitePolarization } from '../look/polarizationSkew.js';
import { dot, type EastNorthUp, sightLineKm, skyVector, unit } from '../look/sightLine.js';

/** What {@link feedTurn} is asked. */
export interface FeedTurnInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** Longitude of the feed's slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** The satellite's polarization; linear without tilt when left out. */
  readonly polarization?: SatellitePolarization;
  /** Direction of the reflector's boresight, the beam of a feed in its focus. */
  readonly boresight: {
    /** Azimuth in degrees from true north, any turn. */
    readonly azimuthDeg: number;
    /** Elevation in degrees, -90 to 90. */
    readonly elevationDeg: number;
  };
  /** Turn of the row of feeds in degrees, -180 to 180, clockwise positive from level as seen from behind; 0 when left out. */
  readonly rowTiltDeg?: number;
}

const FEED_TURN_INPUT_KEYS = {
  station: true,
  orbitalLongitudeDeg: true,
  polarization: true,
  boresight: true,
  rowTiltDeg: true,
} satisfies Keys<FeedTurnInput>;

/** Turn of a feed; read `kind` first. */
export type FeedTurn =
  | {
      /** `linear`: the feed is turned to the wave. */
      readonly kind: 'linear';
      /**
       * Turn of the feed from the reflector's own vertical in degrees, [-90, 90), clockwise positive as seen
       * from behind the antenna, facing the satellite. A feed for the other polarization stands across it.
       */
      readonly turnDeg: number;
      /** The same turn from the perpendicular of the row of feeds in degrees, [-90, 90): what is set where the feed is clamped to the row. */
      readonly turnAgainstRowDeg: number;
    }
  | {
      /** Circular polarization: any turn of the feed will do. */
      readonly kind: 'circular';
    };

/**
 * Turn of a feed on a reflector whose boresight stands beside the feed's slot.
 *
 * The feed hangs on a reflector that stands upright where its boresight looks, not where the slot is. The wave's
 * polarization is carried along the great circle from the slot to the boresight, without turning about the way
 * (the smallest rotation that brings one direction onto the other), and measured from the reflector's vertical
 * there. With the boresight on the slot this is the skew of `polarizationSkew`.
 *
 * With the slot's direction d, the boresight b and the polarization e across d, the carried vector is
 * e - (b + d) (b . e) / (1 + b . d).
 *
 * @returns `turnDeg` from the reflector's vertical and `turnAgainstRowDeg` from the row; nothing to turn for a
 *   circular polarization.
 * @throws {@link DomainError} naming the station's field, `orbitalLongitudeDeg`, `polarization`, `boresight` or
 *   `rowTiltDeg`; `inconsistent` for a boresight 90 degrees or more from the slot.
 *
 * Source: own derivation from vectors; checked against the sum of fields of a paraboloid with the feed displaced.
 * Accuracy: 0.3 degree of the turn that couples most, for slots up to 10 degrees from the boresight.
 * @example
 * ```ts
 * import { feedTurn } from 'slantpath/pointing';
 * const turn = feedTurn({
 *   station: { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   orbitalLongitudeDeg: 21.8,
 *   boresight: { azimuthDeg: 174.53, elevationDeg: 37.09 },
 *   rowTiltDeg: -3.7,
 * });
 * turn.kind === 'linear' && turn.turnDeg.toFixed(1); // => '-4.7'
 * turn.kind === 'linear' && turn.turnAgainstRowDeg.toFixed(1); // => '-1.0'
 * ```
 */
export function feedTurn(input: FeedTurnInput): FeedTurn {
  const given = knownOnly('input', input, FEED_TURN_INPUT_KEYS);
  const station = checkedStation(given.station);
  const orbitalLongitudeDeg = finite('orbitalLongitudeDeg', given.orbitalLongitudeDeg);
  const tiltDeg = checkedTiltDeg(given.polarization);
  const boresight = known('boresight', given.boresight, { azimuthDeg: true, elevationDeg: true });
  const azimuthDeg = finite('boresight.azimuthDeg', boresight.azimuthDeg);
  const elevationDeg = inRange('boresight.elevationDeg', boresight.elevationDeg, -90, 90);
  const rowTiltDeg = inRange('rowTiltDeg', given.rowTiltDeg ?? 0, -180, 180);
  if (tiltDeg === undefined) return { kind: 'circular' };
  const slot = unit(sightLineKm(station, orbitalLongitudeDeg));
  const ahead = skyVector(azimuthDeg, elevationDeg);
  if (!(dot(slot, ahead) > 0))
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'boresight',
      received: boresight,
      allowed: 'less than 90 degrees from the slot',
    });
  const carried = carriedOver(satelliteVertical(station.latitudeDeg, slot), slot, ahead);
  const right: EastNorthUp = [cosDeg(azimuthDeg), -sinDeg(azimuthDeg), 0];
  const sinElevation = sinDeg(elevationDeg);
  const up: EastNorthUp = [
    -sinElevation * sinDeg(azimuthDeg),
    -sinElevation * cosDeg(azimuthDeg),
    cosDeg(elevationDeg),
  ];
  const turnDeg = lineDeg(atan2Deg(dot(carried, right), dot(carried, up)) + tiltDeg);
  return { kind: 'linear', turnDeg, turnAgainstRowDeg: lineDeg(turnDeg - rowTiltDeg) };
}

/** The Earth's axis as it lies across a direction on the sky: the vertical of an untilted satellite. */
function satelliteVertical(latitudeDeg: number, direction: EastNorthUp): EastNorthUp {
  const axis: EastNorthUp = [0, cosDeg(latitudeDeg), sinDeg(latitudeDeg)];
  const along = dot(axis, direction);
  return [
    axis[0] - along * direction[0],
    axis[1] - along * direction[1],
    axis[2] - along * direction[2],
  ];
}

/** A vector across one direction, carried by the smallest rotation that brings that direction onto another. */
function carriedOver(vector: EastNorthUp, from: EastNorthUp, to: EastNorthUp): EastNorthUp {
  const share = dot(to, vector) / (1 + dot(from, to));
  return [
    vector[0] - share * (from[0] + to[0]),
    vector[1] - share * (from[1] + to[1]),
    vector[2] - share * (from[2] + to[2]),
  ];
}
