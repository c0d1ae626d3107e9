/** ITU-R P.1511-1: height of the ground above mean sea level, from its map. */

import { type GlobalMap, type MapPlace, mapValueBicubic } from './p1144.js';

/**
 * Height of the ground at a place, from the map of P.1511-1. A station's own height is always better.
 *
 * @param map  Height above mean sea level in kilometres; see {@link GlobalMap} for its layout.
 * @param place  Latitude -90 to 90, longitude any turn.
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.1511-1, Annex 1; bicubic as in P.1144.
 * Accuracy: that of the map; half a degree smooths mountains by many hundred metres.
 * @example
 * ```ts
 * import { groundAltitude } from 'slantpath/propagation';
 * const map = { rows: 3, columns: 3, values: [0, 0, 0, 2, 2, 2, 0, 0, 0] };
 * groundAltitude(map, { latitudeDeg: 0, longitudeDeg: 0 }).groundHeightM; // => 2000
 * ```
 */
export function groundAltitude(
  map: GlobalMap,
  place: MapPlace,
): { readonly edition: 'P.1511-1'; readonly groundHeightM: number } {
  return { edition: 'P.1511-1', groundHeightM: mapValueBicubic(map, place) * 1000 };
}
