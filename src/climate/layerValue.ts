/** Values of decoded layers at a place. */

import { type MapPlace, mapCell } from '../propagation/p1144.js';
import { type Layer, nodeValue } from './gridFile.js';

/** Value of a layer at a place, bilinear between its nodes (P.1144). */
export function layerValue(layer: Layer, place: MapPlace): number {
  const { columns } = layer;
  const { row, column, southRatio, eastRatio } = mapCell(layer.rows, columns + 1, place);
  const west = row * columns + column;
  const east = row * columns + (column === columns - 1 ? 0 : column + 1);
  return (
    (1 - southRatio) *
      ((1 - eastRatio) * nodeValue(layer, west) + eastRatio * nodeValue(layer, east)) +
    southRatio *
      ((1 - eastRatio) * nodeValue(layer, west + columns) +
        eastRatio * nodeValue(layer, east + columns))
  );
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
  stationHeightKm: number,
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
    const at = { row: row + down, column: (column + right) % columns };
    const scaleKm = layerValue(scaleHeight, {
      latitudeDeg: 90 - (180 * at.row) / (rows - 1),
      longitudeDeg: -180 + (360 * at.column) / columns,
    });
    sum +=
      weight *
      nodeValue(layer, at.row * columns + at.column) *
      Math.exp(-stationHeightKm / Math.max(0.1, scaleKm));
  }
  return sum;
}
