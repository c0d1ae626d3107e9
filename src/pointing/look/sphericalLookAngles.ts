/** Look angles on a spherical Earth, as most textbooks give them. */

import { GEOSTATIONARY_RADIUS_KM, WGS84_SEMI_MAJOR_AXIS_KM } from '../../constants.js';
import { finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { atan2Deg, cosDeg, sinDeg, wrapAzimuthDeg, wrapLongitudeDeg } from '../../numeric/angle.js';

/** What {@link sphericalLookAngles} is asked. */
export interface SphericalLookAnglesInput {
  /** Latitude of the station in degrees, north positive, -90 to 90; the geodetic one goes in as if geocentric. */
  readonly latitudeDeg: number;
  /** Longitude of the station in degrees, east positive, any turn. */
  readonly longitudeDeg: number;
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** Radius of the sphere in kilometres, 6300 to 6450; 6378.137 when left out. */
  readonly earthRadiusKm?: number;
  /** Radius of the orbit in kilometres, 42000 to 42500; 42164.169 when left out. */
  readonly orbitRadiusKm?: number;
}

const SPHERICAL_LOOK_ANGLES_INPUT_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  orbitalLongitudeDeg: true,
  earthRadiusKm: true,
  orbitRadiusKm: true,
} satisfies Keys<SphericalLookAnglesInput>;

/** Look angles on a sphere with the terms of the hand calculation; read `kind` first. */
export type SphericalLookAngles = {
  /** Longitude of the satellite east of the station in degrees, [-180, 180). */
  readonly longitudeDifferenceDeg: number;
  /** Angle at the Earth's centre between station and satellite in degrees, 0 to 180. */
  readonly centralAngleDeg: number;
  /** Straight distance in kilometres. */
  readonly slantRangeKm: number;
  /** Elevation in degrees, -90 to 90. */
  readonly elevationDeg: number;
} & (
  | {
      /** `visible`: above the horizon. `below-horizon`: hidden by the Earth. */
      readonly kind: 'visible' | 'below-horizon';
      /** Azimuth in degrees, clockwise from true north, [0, 360). */
      readonly azimuthDeg: number;
    }
  | {
      /** `overhead`: straight above, where azimuth has no meaning. `underfoot`: on the Earth's far side. */
      readonly kind: 'overhead' | 'underfoot';
    }
);

/**
 * Look angles on a spherical Earth: the textbook formulas, for hand calculation and to trace differences.
 *
 * cos b = cos lat cos d; range^2 = Re^2 + a^2 - 2 Re a cos b; tan(elevation) = (cos b - Re / a) / sin b;
 * azimuth = atan2(sin d, -sin lat cos d), d the satellite's longitude east of the station.
 *
 * The sphere takes the geodetic latitude as the geocentric one, so it turns the local vertical by up to
 * 0.19 degree and moves the station by up to 21 km. Both effects nearly cancel: what remains against
 * `lookAngles` is up to 0.033 degree in elevation, 0.03 degree in azimuth at middle latitudes and 11 km in range.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: the form common to textbooks, for instance Maini and Agrawal, Satellite Communications, chapter 3;
 * Roddy, Satellite Communications, chapter 3.
 * Accuracy: rounding only, on the sphere.
 * @example
 * ```ts
 * import { sphericalLookAngles } from 'slantpath/pointing';
 * // Maini and Agrawal, Example 3.11: azimuth 202.8, elevation 19.8.
 * const look = sphericalLookAngles({
 *   latitudeDeg: 60,
 *   longitudeDeg: -30,
 *   orbitalLongitudeDeg: -50,
 *   earthRadiusKm: 6378,
 *   orbitRadiusKm: 42164,
 * });
 * look.kind === 'visible' && look.azimuthDeg.toFixed(1); // => '202.8'
 * ```
 */
export function sphericalLookAngles(input: SphericalLookAnglesInput): SphericalLookAngles {
  const given = knownOnly('input', input, SPHERICAL_LOOK_ANGLES_INPUT_KEYS);
  const latitudeDeg = inRange(
    'latitudeDeg',
    given.latitudeDeg,
    -90,
    90,
    'were latitude and longitude swapped?',
  );
  const longitudeDeg = finite('longitudeDeg', given.longitudeDeg);
  const slotDeg = finite('orbitalLongitudeDeg', given.orbitalLongitudeDeg);
  const earthKm = inRange(
    'earthRadiusKm',
    given.earthRadiusKm ?? WGS84_SEMI_MAJOR_AXIS_KM,
    6300,
    6450,
    'is the radius in kilometres?',
  );
  const orbitKm = inRange(
    'orbitRadiusKm',
    given.orbitRadiusKm ?? GEOSTATIONARY_RADIUS_KM,
    42000,
    42500,
    'is it counted from the centre of the Earth?',
  );
  const longitudeDifferenceDeg = wrapLongitudeDeg((slotDeg % 360) - (longitudeDeg % 360));
  const east = sinDeg(longitudeDifferenceDeg);
  const north = -sinDeg(latitudeDeg) * cosDeg(longitudeDifferenceDeg);
  const cosCentral = cosDeg(latitudeDeg) * cosDeg(longitudeDifferenceDeg);
  const sinCentral = Math.hypot(east, north);
  const elevationDeg = atan2Deg(cosCentral - earthKm / orbitKm, sinCentral);
  const terms = {
    longitudeDifferenceDeg,
    centralAngleDeg: atan2Deg(sinCentral, cosCentral),
    slantRangeKm: Math.sqrt(earthKm ** 2 + orbitKm ** 2 - 2 * earthKm * orbitKm * cosCentral),
    elevationDeg,
  };
  if (sinCentral < 1e-12) return { kind: cosCentral > 0 ? 'overhead' : 'underfoot', ...terms };
  return {
    kind: elevationDeg > 0 ? 'visible' : 'below-horizon',
    ...terms,
    azimuthDeg: wrapAzimuthDeg(atan2Deg(east, north)),
  };
}

/** What {@link sphericalSlantRange} is asked. */
export interface SphericalSlantRangeInput {
  /** Elevation in degrees, 0 to 90. */
  readonly elevationDeg: number;
  /** Radius of the sphere in kilometres, 6300 to 6450; 6378.137 when left out. */
  readonly earthRadiusKm?: number;
  /** Radius of the orbit in kilometres, 42000 to 42500; 42164.169 when left out. */
  readonly orbitRadiusKm?: number;
}

const SPHERICAL_SLANT_RANGE_INPUT_KEYS = {
  elevationDeg: true,
  earthRadiusKm: true,
  orbitRadiusKm: true,
} satisfies Keys<SphericalSlantRangeInput>;

/**
 * Distance in kilometres to a satellite seen at an elevation, on a spherical Earth.
 *
 * range = sqrt(a^2 - Re^2 cos^2 elevation) - Re sin elevation, the law of cosines.
 *
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: geometry; Blake, Electronic Communication Systems, Example 20.3.
 * Accuracy: rounding only, on the sphere.
 * @example
 * ```ts
 * import { sphericalSlantRange } from 'slantpath/pointing';
 * // Blake, Example 20.3: 38836 km.
 * const range = { elevationDeg: 30, earthRadiusKm: 6400, orbitRadiusKm: 42400 };
 * sphericalSlantRange(range).toFixed(0); // => '38836'
 * ```
 */
export function sphericalSlantRange(input: SphericalSlantRangeInput): number {
  const given = knownOnly('input', input, SPHERICAL_SLANT_RANGE_INPUT_KEYS);
  const elevationDeg = inRange('elevationDeg', given.elevationDeg, 0, 90);
  const earthKm = inRange(
    'earthRadiusKm',
    given.earthRadiusKm ?? WGS84_SEMI_MAJOR_AXIS_KM,
    6300,
    6450,
  );
  const orbitKm = inRange(
    'orbitRadiusKm',
    given.orbitRadiusKm ?? GEOSTATIONARY_RADIUS_KM,
    42000,
    42500,
  );
  const horizontalKm = earthKm * cosDeg(elevationDeg);
  return Math.sqrt(orbitKm ** 2 - horizontalKm ** 2) - earthKm * sinDeg(elevationDeg);
}
