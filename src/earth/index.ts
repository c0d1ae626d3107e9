/**
 * Stations, Earth-fixed coordinates and typed coordinates.
 *
 * @module earth
 */

export { coordinatesToText } from './coordinateText.js';
export { type EcefKm, stationToEcef } from './ecef.js';
export { type GeocentricPoint, geocentricToStation, stationToGeocentric } from './geocentric.js';
export { ecefToStation } from './geodetic.js';
export {
  type EnuKm,
  ecefToEnu,
  enuToDirection,
  enuToEcef,
  type LocalDirection,
} from './localFrame.js';
export {
  coordinatesToMaidenhead,
  type MaidenheadCell,
  maidenheadToCoordinates,
} from './maidenhead.js';
export type { Station } from './station.js';
export {
  type CoordinateNotation,
  type TypedCoordinates,
  textToCoordinates,
} from './typedCoordinates.js';
