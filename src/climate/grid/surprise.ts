/** The code of a surprise, the whole number by which a node departs from its prediction. */

import type { BitCoder } from './bitDecoder.js';

/** Bounds between levels of recent activity: how far predictions nearby were off, in sixths of a step (0.33 to 36 steps). */
const ACTIVITY = [2, 4, 6, 9, 13, 18, 25, 36, 54, 84, 132, 216] as const;
const MOST_ACTIVE = 217;
/** Level of each activity. */
const LEVEL = /* @__PURE__ */ (() =>
  Uint8Array.from(
    { length: MOST_ACTIVE + 1 },
    (_, active) => ACTIVITY.filter((bound) => active >= bound).length,
  ))();
/** Activity of the first node of a tile, which has a level of its own. */
export const FIRST_ACTIVITY = -1;
const LEVELS = ACTIVITY.length + 2;
/** Sizes coded one by one before the tail begins. */
const LONGEST = 10;
const MOST_DIGITS = 14;

// Blocks of contexts, each by level of activity.
const ZERO = 0;
const SIGN = ZERO + 3 * LEVELS;
const UNARY = SIGN + 6 * LEVELS;
const TAIL = UNARY + LONGEST * LEVELS;
/** Context of plain digits. */
const RAW = TAIL + (MOST_DIGITS + 1) * LEVELS;
/** How many contexts the code needs, an even number. */
export const CONTEXTS = RAW + 2;

/** Level of an activity given in 768ths of a step. */
function level(activity: number): number {
  if (activity === FIRST_ACTIVITY) return LEVELS - 1;
  return LEVEL[Math.min(MOST_ACTIVE, activity >> 7)] as number;
}

/**
 * Codes a surprise: zero or not, sign, size; the odds of each depend on the activity nearby and on how far
 * the prediction was from a whole number.
 *
 * @param contexts  First of the contexts to use.
 * @param fraction  Prediction less its nearest whole number, -64 to 63 128ths.
 * @param value  The surprise when encoding; a decoder does not look at it.
 */
export function codedSurprise(
  coder: BitCoder,
  contexts: number,
  activity: number,
  fraction: number,
  value: number,
): number {
  // Odds are kept for each level of activity: over the sea zero is almost sure, in mountains almost never.
  const context = contexts + level(activity);
  // A prediction close to a whole number is more often right; the side on which it lies foretells the sign.
  const closeness = Math.min(2, (6 * Math.abs(fraction)) >> 7);
  if (coder.bit(ZERO + closeness * LEVELS + context, value === 0 ? 0 : 1) === 0) return 0;
  const side = (6 * (fraction + 64)) >> 7;
  const sign = coder.bit(SIGN + side * LEVELS + context, value < 0 ? 1 : 0) === 1 ? -1 : 1;
  const wanted = Math.abs(value);
  // Small sizes are commonest, so each has odds of its own; the rare long ones share a tail.
  for (let size = 1; size < LONGEST; size++)
    if (coder.bit(UNARY + size * LEVELS + context, wanted > size ? 1 : 0) === 0) return sign * size;
  return sign * (LONGEST - 1 + codedTail(coder, contexts, context, wanted - LONGEST + 1));
}

/** Codes a number of 1 or more: how many digits, then the digits. */
function codedTail(coder: BitCoder, contexts: number, context: number, value: number): number {
  let digits = 0;
  while (
    digits < MOST_DIGITS &&
    coder.bit(TAIL + digits * LEVELS + context, value >> (digits + 1) > 0 ? 1 : 0) === 1
  )
    digits++;
  // Low digits of a rare size follow no odds: one context serves all of them.
  let number = 1;
  for (let place = digits - 1; place >= 0; place--)
    number = number * 2 + coder.bit(contexts + RAW, (value >> place) & 1);
  return number;
}
