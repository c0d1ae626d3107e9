/** ITU-R P.1510-1: mean surface temperature, from its map. */

import { type GlobalMap, type MapPlace, mapValue } from './p1144.js';

/**
 * Mean annual (or monthly) surface temperature at a place, from a map of P.1510-1.
 *
 * @param map  Mean temperature at 2 m above the ground, kelvin; see {@link GlobalMap} for its layout.
 * @param place  Latitude -90 to 90, longitude any turn.
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.1510-1, Annex 1; bilinear as in P.1144.
 * Accuracy: the official validation examples to 1e-7 relative with the recommendation's map.
 * @example
 * ```ts
 * import { meanTemperature } from 'slantpath/propagation';
 * const map = { rows: 2, columns: 2, values: [250, 250, 230, 230] };
 * meanTemperature(map, { latitudeDeg: 0, longitudeDeg: 102 }).temperatureK; // => 240
 * ```
 */
export function meanTemperature(
  map: GlobalMap,
  place: MapPlace,
): { readonly edition: 'P.1510-1'; readonly temperatureK: number } {
  return { edition: 'P.1510-1', temperatureK: mapValue(map, place) };
}
