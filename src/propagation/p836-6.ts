/**
 * ITU-R P.836-6: surface water vapour density and total columnar water vapour exceeded for a percentage
 * of an average year, from its maps, at the station's own height.
 */

import { inRange, objects } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { inRow } from '../numeric/columns.js';
import { betweenPercents, blend } from './mapsByPercent.js';
import { checkedMap, type GlobalMap, type MapPlace, mapCell, mapValueBicubic } from './p1144.js';

/** The maps of P.836-6 for one percentage, all on one grid. */
export interface WaterVapourMaps {
  /** Percentage of an average year for which the values are exceeded. */
  readonly exceededPercent: number;
  /** Surface water vapour density at the map's altitude, g/m3. */
  readonly surfaceDensity: GlobalMap;
  /** Total columnar water vapour above the map's altitude, kg/m2. */
  readonly totalColumn: GlobalMap;
  /** Scale height of water vapour, km. */
  readonly scaleHeight: GlobalMap;
}

const WATER_VAPOUR_MAPS_KEYS = {
  exceededPercent: true,
  surfaceDensity: true,
  totalColumn: true,
  scaleHeight: true,
} satisfies Keys<WaterVapourMaps>;

/** Water vapour at a station, exceeded for a percentage of an average year. */
export interface WaterVapour {
  /** The recommendation implemented. */
  readonly edition: 'P.836-6';
  /** The percentage asked for. */
  readonly exceededPercent: number;
  /** Water vapour density at the station's height, g/m3. */
  readonly waterVapourDensityGPerM3: number;
  /** Water vapour in the whole column above the station, kg/m2 (equal to mm of water). */
  readonly waterVapourContentKgPerM2: number;
  /** `exceededPercent` where it lies beyond the maps, whose end is then used. */
  readonly outsideStatedRange: readonly string[];
}

/** Arguments of {@link waterVapour}. */
export interface WaterVapourInput extends MapPlace {
  /** Height of the station above mean sea level in metres, -1000 to 100 000. */
  readonly heightM: number;
  /** Percentage of an average year, 0.000000001 to 100. */
  readonly exceededPercent: number;
  /** Maps for one or more percentages, smallest percentage first. */
  readonly maps: readonly WaterVapourMaps[];
  /** Altitude to which the maps refer, km (the 0.5 degree map of P.1511-1). */
  readonly mapAltitude: GlobalMap;
}

const WATER_VAPOUR_INPUT_KEYS = {
  heightM: true,
  exceededPercent: true,
  maps: true,
  mapAltitude: true,
  latitudeDeg: true,
  longitudeDeg: true,
} satisfies Keys<WaterVapourInput>;

/** Both quantities for one percentage: each of the four nodes is brought to the station's height, then bilinear. */
function atOnePercent(input: WaterVapourInput, index: number): readonly [number, number] {
  const maps = input.maps[index] as WaterVapourMaps;
  const density = checkedMap(`maps[${index}].surfaceDensity`, maps.surfaceDensity);
  const column = checkedMap(`maps[${index}].totalColumn`, maps.totalColumn);
  const scale = checkedMap(`maps[${index}].scaleHeight`, maps.scaleHeight);
  const { rows, columns } = density;
  for (const other of [column, scale]) {
    inRange('maps.rows', other.rows, rows, rows);
    inRange('maps.columns', other.columns, columns, columns);
  }
  const cell = mapCell(rows, columns, input);
  let surface = 0;
  let total = 0;
  for (const down of [0, 1])
    for (const right of [0, 1]) {
      const weight =
        (down === 0 ? 1 - cell.southRatio : cell.southRatio) *
        (right === 0 ? 1 - cell.eastRatio : cell.eastRatio);
      if (weight === 0) continue;
      const row = cell.row + down;
      const at = row * columns + cell.column + right;
      const altitudeKm = mapValueBicubic(input.mapAltitude, {
        latitudeDeg: 90 - (180 * row) / (rows - 1),
        longitudeDeg: -180 + (360 * (cell.column + right)) / (columns - 1),
      });
      const scaleKm = inRange('maps.scaleHeight', inRow(scale.values, at), 0.01, 100);
      const ratio = Math.exp(-(input.heightM / 1000 - altitudeKm) / scaleKm);
      surface +=
        weight * ratio * inRange('maps.surfaceDensity', inRow(density.values, at), 0, 1000);
      total += weight * ratio * inRange('maps.totalColumn', inRow(column.values, at), 0, 1000);
    }
  return [surface, total];
}

/**
 * Water vapour at a station for a percentage of an average year (P.836-6), from the recommendation's maps.
 *
 * Each node around the station is carried from the map's altitude to the station's with the node's scale
 * height, the four are blended bilinearly, and between two percentages the way is linear in the
 * logarithm of the percentage. `climateAt` of `slantpath/climate` does the same from its embedded grid.
 *
 * @returns Density in g/m3 and column in kg/m2; beyond the percentages of the maps the end is used and
 *   `outsideStatedRange` names `exceededPercent`.
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.836-6, Annex 1; altitude of nodes bicubic as in P.1511-1.
 * Accuracy: that of the maps.
 * @example
 * ```ts
 * import { waterVapour } from 'slantpath/propagation';
 * const flat = (value: number) => ({ rows: 2, columns: 2, values: [value, value, value, value] });
 * const vapour = waterVapour({
 *   latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 2000, exceededPercent: 5, mapAltitude: flat(0),
 *   maps: [{ exceededPercent: 5, surfaceDensity: flat(10), totalColumn: flat(25), scaleHeight: flat(2) }],
 * });
 * vapour.waterVapourContentKgPerM2.toFixed(3); // => '9.197'
 * ```
 */
export function waterVapour(input: WaterVapourInput): WaterVapour {
  const { maps, exceededPercent, heightM } = known('input', input, WATER_VAPOUR_INPUT_KEYS);
  inRange('heightM', heightM, -1000, 100000, 'is it in feet?');
  const percents = objects<WaterVapourMaps>('maps', maps).map(
    (entry, at) => known(`maps[${at}]`, entry, WATER_VAPOUR_MAPS_KEYS).exceededPercent,
  );
  const { below, above, ratio, outside } = betweenPercents('maps', percents, exceededPercent);
  const [surface, total] = atOnePercent(input, below);
  const [surfaceAbove, totalAbove] = ratio === 0 ? [surface, total] : atOnePercent(input, above);
  return {
    edition: 'P.836-6',
    exceededPercent,
    waterVapourDensityGPerM3: blend(surface, surfaceAbove, ratio),
    waterVapourContentKgPerM2: blend(total, totalAbove, ratio),
    outsideStatedRange: outside ? ['exceededPercent'] : [],
  };
}
