/**
 * Distance and bearing between places on the ellipsoid.
 *
 * @module geodesic
 */

export {
  type GeodesicEnd,
  type GeodesicLine,
  geodesicBetween,
  geodesicEnd,
  type SurfacePlace,
} from './geodesic.js';
