/**
 * The code of a layer's refinement in one tile: departures of the nodes of a grid twice as fine from what lies between the
 * coarse ones.
 *
 * Most are zero, so that a coarse node and its three finer companions first share one bit: all zero or not. Its odds depend on
 * how bent the coarse field is there and on what the refinement was nearby.
 */

import type { BitCoder } from './bitDecoder.js';
import type { Padded } from './predictor.js';

/** The four nodes of the finer grid that go with a coarse one: itself, east, south, south-east. */
export const FOUR = 4;
/** Bounds between levels of the bend, in steps, and of the refinement nearby. */
const BENT = [0, 1, 2, 3, 5, 8, 12, 20] as const;
const BUSY = [0, 1, 3, 6, 12] as const;
const MOST = 21;
const levels = (bounds: readonly number[]) =>
  Uint8Array.from({ length: MOST + 1 }, (_, at) => bounds.filter((bound) => at > bound).length);
const BENT_LEVEL = /* @__PURE__ */ levels(BENT);
const BUSY_LEVEL = /* @__PURE__ */ levels(BUSY);
const BENT_LEVELS = BENT.length + 1;
const BUSY_LEVELS = BUSY.length + 1;
const LONGEST = 40;
const SIZES = 8;

const FLAG = 0;
const ZERO = FLAG + BENT_LEVELS * BUSY_LEVELS;
const SIGN = ZERO + FOUR * 3 * BUSY_LEVELS;
const SIZE = SIGN + FOUR * 3;
/** How many contexts the code needs. */
export const REFINEMENT_CONTEXTS = SIZE + SIZES * BUSY_LEVELS;

/** How bent the coarse field is at a node, in steps. */
function bend(coarse: Padded, row: number, column: number): number {
  const { values, stride, start } = coarse;
  const at = start + row * stride + column;
  const here = 2 * (values[at] as number);
  const north = row === 0 ? here / 2 : (values[at - stride] as number);
  return (
    Math.abs(north + (values[at + stride] as number) - here) +
    Math.abs((values[at - 1] as number) + (values[at + 1] as number) - here)
  );
}

/** Codes one departure of the four. */
function codedDeparture(
  coder: BitCoder,
  contexts: number,
  node: number,
  busy: number,
  before: number,
  value: number,
): number {
  // Odds by the place among the four and by the sign of the one before.
  const side = before === 0 ? 0 : before > 0 ? 1 : 2;
  const zero =
    contexts + ZERO + (node * 3 + (before === 0 ? 0 : Math.abs(before) > 1 ? 2 : 1)) * BUSY_LEVELS;
  if (coder.bit(zero + busy, value === 0 ? 0 : 1) === 0) return 0;
  const sign = coder.bit(contexts + SIGN + node * 3 + side, value < 0 ? 1 : 0) === 1 ? -1 : 1;
  const wanted = Math.abs(value);
  let size = 1;
  while (
    size < LONGEST &&
    coder.bit(
      contexts + SIZE + (Math.min(size, SIZES) - 1) * BUSY_LEVELS + busy,
      wanted > size ? 1 : 0,
    ) === 1
  )
    size++;
  return sign * size;
}

/**
 * Codes the refinement of a tile both ways.
 *
 * @param choose  Departure of a node of the finer grid when encoding, by its coarse node and its place among the four.
 * @returns Four departures for each coarse node, row by row.
 */
export function codeRefinement(
  coder: BitCoder,
  contexts: number,
  coarse: Padded,
  choose?: (row: number, column: number, node: number) => number,
): Int8Array {
  const { height, width } = coarse;
  const departures = new Int8Array(FOUR * height * width);
  const stride = width + 2;
  const sizes = new Uint16Array((height + 1) * stride);
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) {
      const at = (row + 1) * stride + column + 1;
      const north = at - stride;
      const nearby =
        2 * ((sizes[at - 1] as number) + (sizes[north] as number)) +
        (sizes[north - 1] as number) +
        (sizes[north + 1] as number);
      const busy = BUSY_LEVEL[Math.min(nearby, MOST)] as number;
      const bent = bend(coarse, row, column);
      const place = FOUR * (row * width + column);
      // One bit for all four: over most of the Earth what lies between the coarse nodes is right.
      let any = 0;
      if (choose)
        for (let node = 0; node < FOUR; node++) if (choose(row, column, node) !== 0) any = 1;
      const level = BENT_LEVEL[Math.min(bent, MOST)] as number;
      const flag = contexts + FLAG + level * BUSY_LEVELS + busy;
      if (coder.bit(flag, any) === 0) continue;
      // The four mostly depart to one side, so the last departure foretells the next one's sign and size.
      let before = 0;
      let sum = 0;
      for (let node = 0; node < FOUR; node++) {
        const wanted = choose ? choose(row, column, node) : 0;
        const departure = codedDeparture(coder, contexts, node, busy, before, wanted);
        departures[place + node] = departure;
        if (departure !== 0) before = departure;
        sum += Math.abs(departure);
      }
      // Kept for the row below: restless places lie together.
      sizes[at] = sum;
    }
  return departures;
}
