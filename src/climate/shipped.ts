/** The climate of any place from the grid that is shipped; tiles are decoded when a place asks for them, and kept. */

import type { Station } from '../earth/station.js';
import { type Climate, type ClimateGrid, climateFrom, waterPercents } from './climateAt.js';
import { CLIMATE_GRID } from './grid/gridData.js';
import { type ClimateGridFile, checkedGridFile } from './grid/gridFile.js';
import { tiledLayers } from './grid/tiles.js';
import type { LocalRain } from './rainSource.js';

function gridOf(file: ClimateGridFile): ClimateGrid {
  return {
    layers: tiledLayers(file),
    percents: waterPercents(file.layers.map(({ name }) => name)),
    source: String(file.source),
  };
}

/** Memo of pure data: the same on every call. */
let shipped: ClimateGrid | undefined;

/**
 * Climate of a place on Earth, without a network: rain rate, rain height, temperature, water vapour, cloud and what
 * else the propagation recommendations ask for.
 *
 * The figures come from an embedded grid derived from the ITU-R maps. Rain is taken from the best source
 * given: measured, else twelve monthly normals, else the grid; `rainSource` says which. The grid lies in tiles of 12 degrees:
 * the first place in a tile takes some milliseconds, further ones microseconds.
 *
 * @param station  Latitude north positive, longitude east positive in any turn, height above sea level in metres
 *   (water vapour is carried to it).
 * @param local  What is known of the rain at the place; nothing by default.
 * @throws {@link DomainError} naming the field of the station or of `local`.
 *
 * Source: ITU-R P.837-7, P.839-4, P.1510-1, P.453-14, P.836-6, P.840-9, P.1511-1; bilinear as in P.1144.
 * Accuracy: rain rate within 2.5 % of the computation from the native maps for 95 % of places on land and 4.5 % for 99 %
 * (median 0.7 %; single cells beside deserts and at the foot of ranges tens of percent), beside a scatter of the model itself of some
 * 25 %; probability of rain within 8 % for 95 %; every quantity in docs/decisions/climate-grid.md.
 * @example
 * ```ts
 * import { climateAt } from 'slantpath/climate';
 * const climate = climateAt({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 });
 * climate.rainRate001MmPerH.toFixed(0); // => '29'
 * climate.rainHeightKm.toFixed(1); // => '3.5'
 * ```
 */
export function climateAt(station: Station, local: LocalRain = {}): Climate {
  shipped ??= gridOf(CLIMATE_GRID);
  return climateFrom(shipped, station, local);
}

/**
 * The same from a grid of one's own, such as a finer one built from local maps.
 *
 * @param file  A grid as the builder writes it (`.ci/build-climate.ts`), parsed from JSON.
 * @returns A function like {@link climateAt} that keeps the decoded tiles.
 * @throws {@link DomainError} naming the field of the file; a layer that is missing or a tile that is malformed is found on first use.
 *
 * Accuracy: that of the grid; each layer carries the error that 95 % of places on land do not exceed.
 * @example
 * ```ts
 * import { climateFromGrid, SHIPPED_CLIMATE_GRID } from 'slantpath/climate';
 * const climateOf = climateFromGrid(JSON.parse(JSON.stringify(SHIPPED_CLIMATE_GRID)));
 * climateOf({ latitudeDeg: 0, longitudeDeg: 102, heightM: 5 }).rainSource; // => 'climate-grid'
 * ```
 */
export function climateFromGrid(
  file: ClimateGridFile,
): (station: Station, local?: LocalRain) => Climate {
  const grid = gridOf(checkedGridFile(file));
  return (station, local = {}) => climateFrom(grid, station, local);
}
