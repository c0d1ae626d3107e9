/** ITU-R P.453-14: the wet term of the surface refractivity, from its map or from temperature and vapour pressure. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { type GlobalMap, type MapPlace, mapValue } from './p1144.js';

/** Wet term of the radio refractivity. */
export interface WetRefractivity {
  /** The recommendation implemented. */
  readonly edition: 'P.453-14';
  /** Wet term of the radio refractivity, N-units (parts per million of the refractive index). */
  readonly wetRefractivityNUnits: number;
}

const WET_REFRACTIVITY_AIR_KEYS = {
  temperatureK: true,
  waterVapourPressureHpa: true,
} satisfies Keys<Parameters<typeof wetRefractivity>[0]>;

/**
 * Wet term of the radio refractivity of air (P.453-14).
 *
 * @param air  `temperatureK`, 150 to 400, and `waterVapourPressureHpa`, 0 to 500.
 * @returns 72 e/T + 3.75e5 e/T^2 in N-units.
 * @throws {@link DomainError} naming `temperatureK` or `waterVapourPressureHpa`.
 *
 * Source: ITU-R P.453-14, Annex 1, equation 4.
 * Accuracy: exact.
 * @example
 * ```ts
 * import { wetRefractivity } from 'slantpath/propagation';
 * wetRefractivity({ temperatureK: 288.15, waterVapourPressureHpa: 10 }).wetRefractivityNUnits.toFixed(2); // => '47.66'
 * ```
 */
export function wetRefractivity(air: {
  readonly temperatureK: number;
  readonly waterVapourPressureHpa: number;
}): WetRefractivity {
  const { temperatureK, waterVapourPressureHpa } = knownOnly('air', air, WET_REFRACTIVITY_AIR_KEYS);
  const kelvin = inRange('temperatureK', temperatureK, 150, 400, 'is the temperature in kelvin?');
  const pressure = inRange('waterVapourPressureHpa', waterVapourPressureHpa, 0, 500);
  return {
    edition: 'P.453-14',
    wetRefractivityNUnits: (72 * pressure) / kelvin + (3.75e5 * pressure) / (kelvin * kelvin),
  };
}

/**
 * Median wet term of the surface refractivity at a place, from the map of P.453-14.
 *
 * @param map  Wet term exceeded for 50 % of an average year, N-units; see {@link GlobalMap} for its layout.
 * @param place  Latitude -90 to 90, longitude any turn.
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.453-14, Annex 1, section 2.2; bilinear as in P.1144.
 * Accuracy: the official validation examples to 1e-7 relative with the recommendation's map.
 * @example
 * ```ts
 * import { medianWetRefractivity } from 'slantpath/propagation';
 * const map = { rows: 2, columns: 2, values: [40, 40, 60, 60] };
 * medianWetRefractivity(map, { latitudeDeg: 0, longitudeDeg: 102 }).wetRefractivityNUnits; // => 50
 * ```
 */
export function medianWetRefractivity(map: GlobalMap, place: MapPlace): WetRefractivity {
  return { edition: 'P.453-14', wetRefractivityNUnits: mapValue(map, place) };
}
