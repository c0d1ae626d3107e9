/** Geodesics on the WGS 84 ellipsoid, through the library `geographiclib-geodesic`. */

import geographiclib from 'geographiclib-geodesic';
import { finite, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { wrapAzimuthDeg, wrapLongitudeDeg } from '../numeric/angle.js';

/** A place on the ellipsoid; a station will do, its height is not used. */
export interface SurfacePlace {
  /** Geodetic latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: number;
}

const SURFACE_PLACE_KEYS = { latitudeDeg: true, longitudeDeg: true } satisfies Keys<SurfacePlace>;

/** The shortest line between two places; read `kind` first. */
export type GeodesicLine =
  | {
      /** `line`: two different places. */
      readonly kind: 'line';
      /** Length along the ellipsoid in kilometres. */
      readonly distanceKm: number;
      /** Azimuth at the first place towards the second, degrees from true north, [0, 360). */
      readonly azimuthDeg: number;
      /** Azimuth at the second place back towards the first, degrees from true north, [0, 360). */
      readonly returnAzimuthDeg: number;
    }
  | {
      /** `same-place`: closer than a micrometre, so that no direction has meaning. */
      readonly kind: 'same-place';
      /** Zero. */
      readonly distanceKm: number;
    };

const SWAPPED = 'were latitude and longitude swapped?';

/**
 * Distance and bearings between two places along the ellipsoid.
 *
 * Between opposite ends of the Earth, or with a pole at an end, several lines are equally short or a bearing follows
 * the meridian given by the longitude; one of them is given.
 *
 * @param from  The first place. @param to  The second place.
 * @throws {@link DomainError} naming `from.latitudeDeg`, `to.longitudeDeg` and so on.
 *
 * Source: C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013); library `geographiclib-geodesic`.
 * Accuracy: 15 nanometres, 1e-11 degree of bearing for lines longer than 1 km.
 * @example
 * ```ts
 * import { geodesicBetween } from 'slantpath/geodesic';
 * const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6 };
 * const valley = { latitudeDeg: 46.5, longitudeDeg: 9.9 };
 * const line = geodesicBetween(hut, valley);
 * line.distanceKm.toFixed(3); // => '25.590'
 * ```
 */
export function geodesicBetween(from: SurfacePlace, to: SurfacePlace): GeodesicLine {
  const a = checkedPlace('from', from);
  const b = checkedPlace('to', to);
  const line = geographiclib.Geodesic.WGS84.Inverse(
    a.latitudeDeg,
    a.longitudeDeg,
    b.latitudeDeg,
    b.longitudeDeg,
  );
  const distanceKm = (line.s12 ?? 0) / 1000;
  if (distanceKm < 1e-9) return { kind: 'same-place', distanceKm: 0 };
  return {
    kind: 'line',
    distanceKm,
    azimuthDeg: wrapAzimuthDeg(line.azi1 ?? 0),
    returnAzimuthDeg: wrapAzimuthDeg((line.azi2 ?? 0) + 180),
  };
}

/** The place at the end of a line. */
export interface GeodesicEnd {
  /** Geodetic latitude in degrees, -90 to 90. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, [-180, 180). */
  readonly longitudeDeg: number;
  /** Azimuth there back towards the start, degrees from true north, [0, 360). */
  readonly returnAzimuthDeg: number;
}

const GEODESIC_END_LINE_KEYS = { azimuthDeg: true, distanceKm: true } satisfies Keys<
  Parameters<typeof geodesicEnd>[1]
>;

/**
 * The place at a distance and bearing from another, along the ellipsoid.
 *
 * @param from  The start.
 * @param line  `azimuthDeg` at the start, from true north, any turn; `distanceKm` 0 to 40000.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: as `geodesicBetween`. Accuracy: 15 nanometres.
 * @example
 * ```ts
 * import { geodesicEnd } from 'slantpath/geodesic';
 * const clinic = { latitudeDeg: -0.4, longitudeDeg: 102 };
 * const end = geodesicEnd(clinic, { azimuthDeg: 90, distanceKm: 111.319 });
 * end.longitudeDeg.toFixed(3); // => '103.000'
 * ```
 */
export function geodesicEnd(
  from: SurfacePlace,
  line: { readonly azimuthDeg: number; readonly distanceKm: number },
): GeodesicEnd {
  const start = checkedPlace('from', from);
  const { azimuthDeg, distanceKm } = known('line', line, GEODESIC_END_LINE_KEYS);
  const end = geographiclib.Geodesic.WGS84.Direct(
    start.latitudeDeg,
    start.longitudeDeg,
    wrapLongitudeDeg(finite('azimuthDeg', azimuthDeg)),
    inRange('distanceKm', distanceKm, 0, 40000, 'is the distance in kilometres?') * 1000,
  );
  return {
    latitudeDeg: (end.lat2 ?? 0) + 0,
    longitudeDeg: wrapLongitudeDeg(end.lon2 ?? 0),
    returnAzimuthDeg: wrapAzimuthDeg((end.azi2 ?? 0) + 180),
  };
}

function checkedPlace(name: string, place: SurfacePlace): SurfacePlace {
  const { latitudeDeg, longitudeDeg } = known(name, place, SURFACE_PLACE_KEYS);
  return {
    latitudeDeg: inRange(`${name}.latitudeDeg`, latitudeDeg, -90, 90, SWAPPED),
    longitudeDeg: wrapLongitudeDeg(finite(`${name}.longitudeDeg`, longitudeDeg)),
  };
}
