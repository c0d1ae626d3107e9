/** Values of decoded layers at a place. */

import { mapCell } from '../propagation/internal.js';
import type { MapPlace } from '../propagation/p1144.js';
import { type Layer, nodeValue } from './gridFile.js';

/** Value in a cell of a layer, bilinear between its nodes (P.1144). */
function cellValue(
  layer: Layer,
  row: number,
  column: number,
  southRatio: number,
  eastRatio: number,
): number {
  const { columns } = layer;
  const west = row * columns + column;
  const east = row * columns + (column === columns - 1 ? 0 : column + 1);
  const north =
    eastRatio === 0
      ? nodeValue(layer, west)
      : (1 - eastRatio) * nodeValue(layer, west) + eastRatio * nodeValue(layer, east);
  if (southRatio === 0) return north;
  const south =
    eastRatio === 0
      ? nodeValue(layer, west + columns)
      : (1 - eastRatio) * nodeValue(layer, west + columns) +
        eastRatio * nodeValue(layer, east + columns);
  return (1 - southRatio) * north + southRatio * south;
}

/** Value of a layer at a place, bilinear between its nodes (P.1144). */
export function layerValue(layer: Layer, place: MapPlace): number {
  const { row, column, southRatio, eastRatio } = mapCell(layer.rows, layer.columns + 1, place);
  return cellValue(layer, row, column, southRatio, eastRatio);
}

/** Value of a layer at a node of another grid of the Earth. */
function valueAtNode(layer: Layer, grid: Layer, row: number, column: number): number {
  const south = (row * (layer.rows - 1)) / (grid.rows - 1);
  const east = (column * layer.columns) / grid.columns;
  const line = Math.min(Math.floor(south), layer.rows - 2);
  const place = Math.floor(east);
  return cellValue(layer, line, place, south - line, east - place);
}

/**
 * Value at a place and height of a quantity that falls off with the scale height of water vapour.
 *
 * The layer holds it carried down to sea level; each node is carried up to the station's height with the
 * scale height there, then the four are blended: the method of P.836-6 with the map's altitude taken out.
 */
export function vapourValue(
  layer: Layer,
  scaleHeight: Layer,
  place: MapPlace,
  heightKm: number,
): number {
  const { rows, columns } = layer;
  const { row, column, southRatio, eastRatio } = mapCell(rows, columns + 1, place);
  let sum = 0;
  for (let corner = 0; corner < 4; corner++) {
    const down = corner >> 1;
    const right = corner & 1;
    const weight =
      (down === 0 ? 1 - southRatio : southRatio) * (right === 0 ? 1 - eastRatio : eastRatio);
    if (weight === 0) continue;
    const line = row + down;
    const turned = column + right === columns ? 0 : column + right;
    const scaleKm = Math.max(0.1, valueAtNode(scaleHeight, layer, line, turned));
    const seaLevel = nodeValue(layer, line * columns + turned);
    sum += weight * seaLevel * Math.exp(-heightKm / scaleKm);
  }
  return sum;
}
