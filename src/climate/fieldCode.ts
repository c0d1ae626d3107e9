/**
 * The code of one field of whole numbers on a grid of the Earth: each node is predicted from its neighbours
 * already known, and only the surprise is coded.
 *
 * One function serves both ways: a decoder's bits say what the surprise was, an encoder's `choose` does.
 */

import type { BitCoder } from './bitDecoder.js';
import type { CodedField } from './codedField.js';
import { Predictor } from './predictor.js';
import { codedDigits, codedSurprise } from './surprise.js';

/** What the encoder adds: the value of a node, given what is predicted for it. */
export type Choose = (index: number, predicted: number) => number;

/** Nodes kept on both sides of a row, so that no neighbour falls outside: the Earth is round. */
const MARGIN = 2;

/** Fills a row's margins from its other end. */
function closeRing(row: Float64Array, columns: number): void {
  row[0] = row[columns] as number;
  row[1] = row[columns + 1] as number;
  row[columns + 2] = row[2] as number;
  row[columns + 3] = row[3] as number;
}

/** How far predictions around a node were off, the nearest counting most. */
function activityAt(
  wrong: Float64Array,
  above: Float64Array,
  above2: Float64Array,
  at: number,
): number {
  return (
    (2 * Math.abs(wrong[at - 1] as number) +
      2 * Math.abs(above[at] as number) +
      Math.abs(above[at + 1] as number) +
      Math.abs(above[at - 1] as number) +
      0.5 * Math.abs(wrong[at - 2] as number) +
      0.5 * Math.abs(above2[at] as number)) /
    3
  );
}

/**
 * Codes a field both ways. The first row is a pole, hence one number, given in 16 digits.
 *
 * @param companion  A field of the same size already known, or undefined.
 * @param choose  Absent when decoding.
 */
export function codeField(
  coder: BitCoder,
  size: { readonly rows: number; readonly columns: number },
  companion?: CodedField,
  choose?: Choose,
): CodedField {
  const { rows, columns } = size;
  const values = new Int16Array(rows * columns);
  const predictor = new Predictor(companion);
  const width = columns + 2 * MARGIN;
  let [row, above, above2] = [0, 0, 0].map(() => new Float64Array(width)) as Rings;
  let [wrong, wrongAbove, wrongAbove2] = [0, 0, 0].map(() => new Float64Array(width)) as Rings;

  const pole = (codedDigits(coder, 16, choose ? choose(0, 0) : 0, 0) << 16) >> 16;
  values.fill(pole, 0, columns);
  above2.fill(pole);
  above.fill(pole);

  for (let line = 1; line < rows; line++) {
    row.fill(above[MARGIN] as number, 0, MARGIN);
    wrong.fill(0, 0, MARGIN);
    for (let column = 0; column < columns; column++) {
      const at = column + MARGIN;
      const west = row[at - 1] as number;
      const north = above[at] as number;
      const base = (west + north) / 2;
      predictor.takeNear(row, above, above2, at, base);
      predictor.takeBeside(line, column);
      const guess = predictor.guess(base);
      const northWest = above[at - 1] as number;
      const northEast = above[at + 1] as number;
      const lowest = Math.min(west, north, northEast, northWest);
      const highest = Math.max(west, north, northEast, northWest);
      const reach = highest - lowest + 2;
      const held = Math.min(Math.max(guess, lowest - reach), highest + reach);
      const predicted = Math.round(held);
      const index = line * columns + column;
      const chosen = choose ? choose(index, predicted) - predicted : 0;
      const activity = activityAt(wrong, wrongAbove, wrongAbove2, at);
      const value = predicted + codedSurprise(coder, activity, held - predicted, chosen);
      values[index] = value;
      row[at] = value;
      wrong[at] = value - held;
      predictor.learn(value - guess);
    }
    closeRing(row, columns);
    closeRing(wrong, columns);
    [row, above, above2] = [above2, row, above];
    [wrong, wrongAbove, wrongAbove2] = [wrongAbove2, wrong, wrongAbove];
  }
  return { rows, columns, values };
}

type Rings = [Float64Array, Float64Array, Float64Array];
