/** Recommendation ITU-R P.676-13, Annex 1, section 2.2.1: layers of the slant path and its bending. */

/** Mean Earth radius of the recommendation, km. */
export const EARTH_RADIUS_KM = 6371;

/** Conventional top of the atmosphere, km. */
const TOP_OF_ATMOSPHERE_KM = 100;

/** Layers between two heights, their thickness growing by e^0.01 from one to the next. */
export interface Layers {
  /** How many layers. */
  readonly count: number;
  /** Index of the first layer in the count from sea level, from 1. */
  readonly first: number;
  /** Thickness of the layer with index 1, km. */
  readonly unitKm: number;
}

/** Index of the layer that holds a height, not yet rounded; equations (16a) and (16b). */
function layerIndex(heightKm: number): number {
  return 100 * Math.log(1e4 * heightKm * (Math.exp(0.01) - 1) + 1) + 1;
}

/** Layers from a height of 0 or more up to the top of the atmosphere; equations (14) to (16). */
export function layersFrom(heightKm: number): Layers {
  const first = Math.floor(layerIndex(heightKm));
  const past = heightKm === 0 ? 923 : Math.ceil(layerIndex(TOP_OF_ATMOSPHERE_KM));
  const unitKm =
    heightKm === 0
      ? 1e-4
      : ((Math.exp(0.02) - Math.exp(0.01)) / (Math.exp(past / 100) - Math.exp(first / 100))) *
        (TOP_OF_ATMOSPHERE_KM - heightKm);
  return { count: past - first, first, unitKm };
}

/** Refractive index less 1 by P.453-14, equations (1) and (2), from dry and vapour pressure in hPa. */
export function refractivityRatio(p: number, e: number, temperatureK: number): number {
  return 1e-6 * ((77.6 * p + 72 * e) / temperatureK + (3.75e5 * e) / (temperatureK * temperatureK));
}
