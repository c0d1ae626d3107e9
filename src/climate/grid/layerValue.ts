/** Values of layers at a place. */

import { mapCell } from '../../propagation/internal.js';
import type { MapPlace } from '../../propagation/p1144.js';
import type { Layer } from './tiles.js';

/** Value of a node from its whole number. */
function nodeValue(layer: Layer, row: number, column: number): number {
  const steps = layer.at(row, column) * layer.step;
  if (layer.transform === 'linear') return steps;
  if (layer.transform === 'logarithm') return Math.exp(steps);
  return Math.sign(steps) * layer.scale * Math.expm1(Math.abs(steps));
}

/** Value in a cell of nodes, bilinear between them (P.1144). */
function cellValue(
  node: (row: number, column: number) => number,
  columns: number,
  cell: { row: number; column: number; southRatio: number; eastRatio: number },
): number {
  const { row, column, southRatio, eastRatio } = cell;
  const east = column === columns - 1 ? 0 : column + 1;
  const along = (line: number) =>
    eastRatio === 0
      ? node(line, column)
      : (1 - eastRatio) * node(line, column) + eastRatio * node(line, east);
  const north = along(row);
  return southRatio === 0 ? north : (1 - southRatio) * north + southRatio * along(row + 1);
}

/** Value of a node of the grid twice as fine: what lies between the coarse nodes, refined. */
export function refinedValue(layer: Layer, row: number, column: number): number {
  const cell = {
    row: row >> 1,
    column: column >> 1,
    southRatio: (row & 1) / 2,
    eastRatio: (column & 1) / 2,
  };
  const coarse = cellValue((r, c) => nodeValue(layer, r, c), 2 * (layer.rows - 1), cell);
  const departure = layer.refinedBy(row, column);
  if (departure === 0) return coarse;
  return (coarse + layer.scale) * Math.exp(departure * layer.refinement) - layer.scale;
}

/** Value of a layer at a place, bilinear between its nodes (P.1144). */
export function layerValue(layer: Layer, place: MapPlace): number {
  const { rows } = layer;
  if (layer.refinement === 0)
    return cellValue(
      (row, column) => nodeValue(layer, row, column),
      2 * (rows - 1),
      mapCell(rows, 2 * rows - 1, place),
    );
  return cellValue(
    (row, column) => refinedValue(layer, row, column),
    4 * (rows - 1),
    mapCell(2 * rows - 1, 4 * rows - 3, place),
  );
}

/** Value of a layer at a node of another grid of the Earth. */
function valueAtNode(layer: Layer, grid: Layer, row: number, column: number): number {
  const south = (row * (layer.rows - 1)) / (grid.rows - 1);
  const east = (column * (layer.rows - 1)) / (grid.rows - 1);
  const line = Math.min(Math.floor(south), layer.rows - 2);
  const place = Math.floor(east);
  return cellValue((r, c) => nodeValue(layer, r, c), 2 * (layer.rows - 1), {
    row: line,
    column: place,
    southRatio: south - line,
    eastRatio: east - place,
  });
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
  const { rows } = layer;
  const columns = 2 * (rows - 1);
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
    sum += weight * nodeValue(layer, line, turned) * Math.exp(-heightKm / scaleKm);
  }
  return sum;
}
