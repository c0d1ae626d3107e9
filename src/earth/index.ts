/**
 * Stations, Earth-fixed coordinates and typed coordinates.
 *
 * @module earth
 */

export { type EcefKm, stationToEcef } from './ecef.js';
export type { Station } from './station.js';
