/** The code of a surprise, the whole number by which a node departs from its prediction. */

import type { BitCoder } from './bitDecoder.js';

/** Bounds between levels of recent activity: how far predictions nearby were off, in steps. */
const ACTIVITY = [0.3, 0.6, 1, 1.5, 2.2, 3, 4.2, 6, 9, 14, 22, 36] as const;
const LEVELS = ACTIVITY.length + 1;
/** Sizes coded one by one before the tail begins. */
const LONGEST = 14;
const MOST_DIGITS = 15;

// Blocks of contexts, each by level of activity.
const ZERO = 0;
const SIGN = ZERO + 3 * LEVELS;
const UNARY = SIGN + 6 * LEVELS;
const TAIL = UNARY + LONGEST * LEVELS;
/** Context of plain digits. */
const RAW = TAIL + (MOST_DIGITS + 1) * LEVELS;
/** How many contexts the code needs. */
export const CONTEXTS = RAW + 1;

/** Level of an activity. */
function level(activity: number): number {
  let at = 0;
  while (at < ACTIVITY.length && activity > (ACTIVITY[at] as number)) at++;
  return at;
}

/**
 * Codes a surprise: zero or not, sign, size; the odds of each depend on the activity nearby and on how far
 * the prediction was from a whole number.
 *
 * @param fraction  Prediction less its nearest whole number, -0.5 to 0.5.
 * @param value  The surprise when encoding; a decoder does not look at it.
 */
export function codedSurprise(
  coder: BitCoder,
  activity: number,
  fraction: number,
  value: number,
): number {
  const context = level(activity);
  const closeness = Math.min(2, Math.floor(Math.abs(fraction) * 6));
  if (coder.bit(ZERO + closeness * LEVELS + context, value === 0 ? 0 : 1) === 0) return 0;
  const side = Math.min(5, Math.floor((fraction + 0.5) * 6));
  const sign = coder.bit(SIGN + side * LEVELS + context, value < 0 ? 1 : 0) === 1 ? -1 : 1;
  const wanted = Math.abs(value);
  for (let size = 1; size < LONGEST; size++)
    if (coder.bit(UNARY + size * LEVELS + context, wanted > size ? 1 : 0) === 0) return sign * size;
  return sign * (LONGEST - 1 + codedTail(coder, context, wanted - LONGEST + 1));
}

/** Codes a number of 1 or more: how many digits, then the digits. */
function codedTail(coder: BitCoder, context: number, value: number): number {
  let digits = 0;
  while (
    digits < MOST_DIGITS &&
    coder.bit(TAIL + digits * LEVELS + context, value >> (digits + 1) > 0 ? 1 : 0) === 1
  )
    digits++;
  return codedDigits(coder, digits, value, 1);
}

/** Codes the lowest binary digits of a value below a given top. */
export function codedDigits(coder: BitCoder, digits: number, value: number, top: number): number {
  let number = top;
  for (let place = digits - 1; place >= 0; place--)
    number = number * 2 + coder.bit(RAW, (value >> place) & 1);
  return number;
}
