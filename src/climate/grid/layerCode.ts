/**
 * The code of one layer's nodes in one tile: each is predicted from its neighbours already known, and only the surprise
 * is coded.
 *
 * One function serves both ways: a decoder's bits say what the surprise was, an encoder's `choose` does.
 */

import type { BitCoder } from './bitDecoder.js';
import {
  FIRST_COLUMN,
  FIRST_ROW,
  INSIDE,
  MARGIN,
  PART_BITS,
  Padded,
  type Predictor,
} from './predictor.js';
import { codedSurprise, FIRST_ACTIVITY } from './surprise.js';

/** What the encoder adds: the value of a node, given what is predicted for it. */
export type Choose = (row: number, column: number, predicted: number) => number;

/** A layer in one tile, beside the bits. */
export interface LayerTile {
  readonly height: number;
  readonly width: number;
  /** What the first node is predicted to be. */
  readonly first: number;
  /** How far predictions are off where nothing nearby tells, in 128ths of a step. */
  readonly restless: number;
  /** First of the contexts that the layer uses. */
  readonly contexts: number;
}

const HALF = 1 << (PART_BITS - 1);

/** Fills what lies above a node of the first row with the value west of it. */
function level(values: Int16Array | Int32Array, at: number, stride: number, value: number): void {
  values.fill(value, at - stride - MARGIN, at - stride + MARGIN + 1);
  values.fill(value, at - 2 * stride - 1, at - 2 * stride + 2);
}

/** How far predictions around a node were off, the nearest counting most: 768ths of a step. */
function activityAt(wrong: Int32Array, at: number, stride: number): number {
  const north = at - stride;
  return (
    4 * ((wrong[at - 1] as number) + (wrong[north] as number)) +
    2 * ((wrong[north + 1] as number) + (wrong[north - 1] as number)) +
    (wrong[at - 2] as number) +
    (wrong[north - stride] as number)
  );
}

/**
 * Codes a layer's nodes in a tile both ways.
 *
 * @param choose  Absent when decoding.
 */
export function codeLayer(
  coder: BitCoder,
  tile: LayerTile,
  predictor: Predictor,
  choose?: Choose,
): Padded {
  const { height, width, first, restless, contexts } = tile;
  const padded = new Padded(height, width);
  const { values, stride, start } = padded;
  const wrong = new Int32Array(values.length);
  for (let row = 0; row < height; row++) {
    const begin = start + row * stride;
    for (let column = 0; column < width; column++) {
      const at = begin + column;
      // A tile must decode without its neighbours, so its first row and column lack what lies above or west: stand-ins and weights of their own.
      let set = INSIDE;
      if (row === 0) {
        if (column === 0) {
          values[at - 1] = values[at - 2] = first;
          wrong[at - 1] = wrong[at - 2] = restless;
        }
        level(values, at, stride, values[at - 1] as number);
        level(wrong, at, stride, wrong[at - 1] as number);
        set = FIRST_ROW;
      } else if (column === 0) {
        values[at - 1] = values[at - 2] = values[at - stride] as number;
        wrong[at - 1] = wrong[at - 2] = wrong[at - stride] as number;
        set = FIRST_COLUMN;
      }
      const firstOfAll = row === 0 && column === 0;
      // In 128ths: what rounding drops tells on which side of the prediction the value likely lies.
      const guess = firstOfAll ? first << PART_BITS : predictor.guess(values, at, stride, set);
      const predicted = (guess + HALF) >> PART_BITS;
      const fraction = guess - (predicted << PART_BITS);
      // Nodes have 16 bits, so that a surprise needs no more.
      const chosen = choose ? ((choose(row, column, predicted) - predicted) << 16) >> 16 : 0;
      // Where predictions nearby were off, this one will be: coast and mountains get other odds than the sea.
      const activity = firstOfAll ? FIRST_ACTIVITY : activityAt(wrong, at, stride);
      const value = predicted + codedSurprise(coder, contexts, activity, fraction, chosen);
      values[at] = value;
      // The first surprise only says how high the tile lies; it would make the next nodes look restless.
      wrong[at] = firstOfAll ? restless : Math.abs((value << PART_BITS) - guess);
      // Now that the value is known, it is a better stand-in for what lies west than the guess was.
      if (firstOfAll) values[at - 1] = values[at - 2] = value;
    }
    // The row below looks past both ends of this one.
    padded.close(row);
    const last = begin + width - 1;
    wrong[begin - 1] = wrong[begin - 2] = wrong[begin] as number;
    wrong[last + 1] = wrong[last + 2] = wrong[last] as number;
  }
  return padded;
}
