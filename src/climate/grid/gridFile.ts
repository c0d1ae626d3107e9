/** The form in which a climate grid is shipped or built by a user. */

import { DomainError, inRange, objects, oneOf } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { BESIDE, NEAR, WEIGHT_UNIT } from './predictor.js';

/** How a layer's whole numbers become values: q steps are q s, ±scale (exp |q s| - 1) or exp(q s), s the step. */
export type LayerTransform = 'linear' | 'logarithm-of-one-plus' | 'logarithm';

/** One quantity on one grid of the whole Earth. */
export interface ClimateLayer {
  /** Name of the quantity, with the percentage behind it where there is one: `rainRate001`, `cloudLiquid5`. */
  readonly name: string;
  /** Rows from pole to pole, 2 to 1441; columns are twice the rows less one, without the repeated meridian. */
  readonly rows: number;
  /** How whole numbers become values. */
  readonly transform: LayerTransform;
  /** Step between whole numbers in the transformed quantity, above 0. */
  readonly step: number;
  /** Scale of `logarithm-of-one-plus`, in the unit of the quantity; 1 for the others. */
  readonly scale: number;
  /** Step of a refinement on a grid twice as fine, in the transformed quantity; 0 for none. Only for `logarithm-of-one-plus`. */
  readonly refinement: number;
  /** Name of a layer before this one, of the same size, from which it is predicted; empty for none. */
  readonly companion: string;
  /** Error against the full-resolution maps that 95 % of places on land do not exceed; in the unit of the quantity. */
  readonly landError95: number;
  /** Weights of the neighbours in 64ths: inside a tile, in its first row, in its first column. */
  readonly weights: readonly (readonly number[])[];
  /** What the first node of a tile is predicted to be, in steps, for each row of tiles. */
  readonly firsts: readonly number[];
  /** How far predictions are off where nothing nearby tells, in 128ths of a step. */
  readonly restless: number;
  /** Which of the sets of odds the layer starts from. */
  readonly odds: number;
}

/** A climate grid as shipped; plain data, so it can be kept as JSON. */
export interface ClimateGridFile {
  /** Form and its version. */
  readonly format: 'slantpath-climate-2';
  /** Recommendations and maps from which it is derived. */
  readonly source: string;
  /** Rows of tiles from pole to pole, 1 to 90; there are twice as many tiles in a row. */
  readonly tileRows: number;
  /** The layers, in the order in which a tile holds them. */
  readonly layers: readonly ClimateLayer[];
  /** Sets of odds that a tile starts from, two base64 digits for each context: chance of a 1 in 4096ths. */
  readonly odds: readonly string[];
  /** Odds of the refinement, likewise. */
  readonly refinementOdds: string;
  /** The coded numbers of each tile, base64, row by row from the north-west. */
  readonly tiles: readonly string[];
}

const CLIMATE_LAYER_KEYS = {
  name: true,
  rows: true,
  transform: true,
  step: true,
  scale: true,
  refinement: true,
  companion: true,
  landError95: true,
  weights: true,
  firsts: true,
  restless: true,
  odds: true,
} satisfies Keys<ClimateLayer>;

const CLIMATE_GRID_FILE_KEYS = {
  format: true,
  source: true,
  tileRows: true,
  layers: true,
  odds: true,
  refinementOdds: true,
  tiles: true,
} satisfies Keys<ClimateGridFile>;

function malformed(parameter: string, received: unknown, allowed: string): DomainError {
  return new DomainError({ code: 'malformed', parameter, received, allowed });
}

function numbers(parameter: string, list: unknown, count: number, most: number): void {
  if (!Array.isArray(list) || list.length !== count)
    throw malformed(parameter, list, `a list of ${count}`);
  list.forEach((value, index) => {
    whole(`${parameter}[${index}]`, value, -most, most);
  });
}

function whole(parameter: string, value: number, low: number, high: number): void {
  if (!Number.isInteger(inRange(parameter, value, low, high)))
    throw malformed(parameter, value, 'a whole number');
}

function checkLayer(file: ClimateGridFile, index: number): void {
  const at = `layers[${index}]`;
  const layer = known(at, file.layers[index] as ClimateLayer, CLIMATE_LAYER_KEYS);
  if (typeof layer.name !== 'string' || typeof layer.companion !== 'string')
    throw malformed(at, layer, 'a layer with a name and a companion');
  whole(`${at}.rows`, layer.rows, 2, 1441);
  oneOf(`${at}.transform`, layer.transform, ['linear', 'logarithm-of-one-plus', 'logarithm']);
  inRange(`${at}.step`, layer.step, 1e-9, 1e6);
  inRange(`${at}.scale`, layer.scale, 1e-9, 1e6);
  const finest = layer.transform === 'logarithm-of-one-plus' ? 1e6 : 0;
  inRange(`${at}.refinement`, layer.refinement, 0, finest);
  inRange(`${at}.landError95`, layer.landError95, 0, 1e6);
  whole(`${at}.restless`, layer.restless, 0, 32767);
  whole(`${at}.odds`, layer.odds, 0, file.odds.length - 1);
  const before = file.layers.slice(0, index).find(({ name }) => name === layer.companion);
  if (layer.companion !== '' && before?.rows !== layer.rows)
    throw new DomainError({
      code: 'inconsistent',
      parameter: `${at}.companion`,
      received: layer.companion,
      allowed: `a layer before this one, of ${layer.rows} rows like it`,
    });
  numbers(`${at}.firsts`, layer.firsts, file.tileRows, 32767);
  if (!Array.isArray(layer.weights) || layer.weights.length !== 3)
    throw malformed(`${at}.weights`, layer.weights, 'three lists');
  const taps = layer.companion === '' ? NEAR : NEAR + BESIDE;
  layer.weights.forEach((each, set) => {
    numbers(`${at}.weights[${set}]`, each, taps, 8 * WEIGHT_UNIT);
  });
}

/**
 * A grid file whose form is right; the text of a tile is read only when the tile is asked for.
 *
 * @throws DomainError naming `format`, `layers` or the layer's field.
 */
export function checkedGridFile(file: ClimateGridFile): ClimateGridFile {
  const { format, tileRows, layers, odds, refinementOdds, tiles } = known(
    'grid',
    file,
    CLIMATE_GRID_FILE_KEYS,
  );
  oneOf('format', format, ['slantpath-climate-2']);
  whole('tileRows', tileRows, 1, 90);
  for (const [name, list] of Object.entries({ layers, odds, tiles }))
    if (!Array.isArray(list)) throw malformed(name, list, `a list of ${name}`);
  if (tiles.length !== 2 * tileRows * tileRows)
    throw malformed('tiles', tiles.length, `${2 * tileRows * tileRows} tiles`);
  [...odds, ...tiles, refinementOdds].forEach((text) => {
    if (typeof text !== 'string') throw malformed('odds or tiles', text, 'texts');
  });
  objects<ClimateLayer>('layers', layers).forEach((_, index) => {
    checkLayer(file, index);
  });
  return file;
}
