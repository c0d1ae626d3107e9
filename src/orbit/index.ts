/**
 * Real satellites from their orbital elements: OMM and TLE, tracks across a station's sky.
 *
 * Stands on satellite.js; the other entries do not need it.
 *
 * @module orbit
 */

export type { Instant } from '../numeric/instant.js';
export { type OrbitalElements, ommToElements, tleToElements } from './elements.js';
export {
  type SatelliteLookAngles,
  type SatelliteLookAnglesInput,
  type SatelliteTrack,
  type SatelliteTrackInput,
  type SatelliteTrackPoint,
  satelliteLookAngles,
  satelliteTrack,
} from './satelliteTrack.js';
