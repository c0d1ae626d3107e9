/** Fields on a grid of the Earth while the climate grid is built: sampled, fitted, quantised. */

import { type GlobalMap, mapValue } from '../../src/propagation/p1144.js';

/** Values row by row; `columns` is twice the rows less one, without the repeated meridian. */
export interface Field {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float64Array;
}

/** Place of a node. */
export function placeOf(field: { readonly rows: number; readonly columns: number }, index: number) {
  return {
    latitudeDeg: 90 - (180 * Math.floor(index / field.columns)) / (field.rows - 1),
    longitudeDeg: -180 + (360 * (index % field.columns)) / field.columns,
  };
}

/** A field computed node by node; the poles get the mean of their row, since they are one place. */
export function fieldOf(
  rows: number,
  value: (place: { latitudeDeg: number; longitudeDeg: number }, index: number) => number,
): Field {
  const field = { rows, columns: 2 * (rows - 1), values: new Float64Array(rows * 2 * (rows - 1)) };
  for (let index = 0; index < field.values.length; index++)
    field.values[index] = value(placeOf(field, index), index);
  for (const row of [0, rows - 1]) {
    const start = row * field.columns;
    const line = field.values.subarray(start, start + field.columns);
    line.fill(line.reduce((sum, each) => sum + each, 0) / field.columns);
  }
  return field;
}

/** Where there is ground (or a lake) within one node of the altitude map: coasts count as land. */
export function landMask(
  altitude: GlobalMap,
): (place: { latitudeDeg: number; longitudeDeg: number }) => boolean {
  const { rows, columns, values } = altitude;
  const turn = columns - 1;
  const land = new Uint8Array(rows * turn);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < turn; column++)
      for (const down of [-1, 0, 1])
        for (const right of [-1, 0, 1]) {
          const line = Math.min(Math.max(row + down, 0), rows - 1);
          if (values[line * columns + ((column + right + turn) % turn)] !== 0)
            land[row * turn + column] = 1;
        }
  return ({ latitudeDeg, longitudeDeg }) => {
    const row = Math.round(((90 - latitudeDeg) * (rows - 1)) / 180);
    const column = Math.round(((((longitudeDeg + 180) % 360) + 360) % 360) * (turn / 360)) % turn;
    return land[row * turn + column] === 1;
  };
}

/** A map's own nodes as a field of rows that is at least `rows` fine. */
export function sampled(map: GlobalMap, rows: number): Field {
  return fieldOf(Math.max(rows, map.rows), (place) => mapValue(map, place));
}

/** Latitude beyond which no geostationary satellite is above the horizon. */
export const HIDDEN_DEG = 81.3;

/**
 * How far a quantised node may stray, in steps: half a step on land and at the poles, each of which is one place for many
 * tiles; so many at sea; four beyond the satellites' sight.
 */
export function tolerance(
  place: { latitudeDeg: number; longitudeDeg: number },
  land: boolean,
  seaSteps: number,
): number {
  const latitude = Math.abs(place.latitudeDeg);
  if (latitude === 90) return 0.5;
  return latitude > HIDDEN_DEG ? 4 : land ? 0.5 : seaSteps;
}
