/** Acceptance of a lot of installations by looking at some of them: the plan by lot size and quality level. */

import { DomainError, inRange, oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';

/** A plan: how many to look at, and how many bad ones are still accepted. */
export interface SamplingPlan {
  /** Code letter of the plan that the lot size leads to. */
  readonly codeLetter: string;
  /** How many installations are looked at, drawn by chance; the whole lot where the plan asks for as many or more. */
  readonly sampleSize: number;
  /** Accepted with this many bad ones or fewer. */
  readonly acceptanceNumber: number;
  /** Not accepted with this many or more: the acceptance number plus 1. */
  readonly rejectionNumber: number;
  /** True where the plan asks for the whole lot. */
  readonly wholeLot: boolean;
}

const LETTERS = 'ABCDEFGHJKLMNPQR';
const SIZES = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000];
const LOT_ENDS = [8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000, 150_000, 500_000];
const LEVEL_I = 'AABCCDEFGHJKLMN';
const QUALITY_LEVELS = [0.65, 1, 1.5, 2.5, 4, 6.5] as const;

/** Acceptable quality levels that the plans are made for, in percent bad. */
export type AcceptableQualityPercent = (typeof QUALITY_LEVELS)[number];

/**
 * Acceptance numbers along the plans: size and quality level together say where a plan stands, because both rise by the same factor
 * (10^(1/5) about). 0 first, then a gap of two (an arrow up, an arrow down), then these.
 */
const ACCEPTANCE = [1, 2, 3, 5, 7, 10, 14, 21];

const SAMPLING_PLAN_LOT_KEYS = {
  lotSize: true,
  inspectionLevel: true,
  acceptableQualityPercent: true,
} satisfies Keys<Parameters<typeof samplingPlan>[0]>;

/**
 * Single sampling plan, normal inspection, for a lot.
 *
 * The plans are those of MIL-STD-105E (public), which ISO 2859-1 has too. Where the place in the table is an arrow, the plan that the
 * arrow leads to is given, with its own size.
 *
 * @param lot  Number of installations, 2 to 10 million; inspection level, `II` by default; acceptable quality level in percent bad, one
 *   of 0.65, 1, 1.5, 2.5, 4, 6.5.
 * @throws {@link DomainError} naming the field.
 * Source: MIL-STD-105E, Tables I and II-A (code letters, sizes and numbers read in open texts; 0/1 and the arrows in part from memory).
 * Accuracy: exact.
 * @example
 * ```ts
 * import { samplingPlan } from 'slantpath/acceptance';
 * const plan = samplingPlan({ lotSize: 300, acceptableQualityPercent: 2.5 });
 * `${plan.sampleSize}: ${plan.acceptanceNumber}`; // => '50: 3'
 * ```
 */
export function samplingPlan(lot: {
  readonly lotSize: number;
  readonly inspectionLevel?: 'I' | 'II' | 'III';
  readonly acceptableQualityPercent: AcceptableQualityPercent;
}): SamplingPlan {
  const given = knownOnly('lot', lot, SAMPLING_PLAN_LOT_KEYS);
  const lotSize = wholeNumber('lotSize', given.lotSize, 2, 1e7);
  const level = oneOf('inspectionLevel', given.inspectionLevel ?? 'II', ['I', 'II', 'III']);
  const quality = QUALITY_LEVELS.indexOf(given.acceptableQualityPercent);
  if (quality < 0)
    throw new DomainError({
      code: given.acceptableQualityPercent === undefined ? 'missing' : 'not-an-option',
      parameter: 'acceptableQualityPercent',
      received: given.acceptableQualityPercent,
      allowed: `one of ${QUALITY_LEVELS.join(', ')}`,
    });
  const ends = LOT_ENDS.findIndex((end) => lotSize <= end);
  const row = ends < 0 ? LOT_ENDS.length : ends;
  const letter =
    level === 'I'
      ? LETTERS.indexOf(LEVEL_I.charAt(row))
      : Math.min(level === 'II' ? row : row + 1, LETTERS.length - 1);
  const placed = planAt(letter, quality);
  const wholeLot = placed.sampleSize >= lotSize;
  return {
    codeLetter: LETTERS.charAt(letter),
    ...placed,
    sampleSize: wholeLot ? lotSize : placed.sampleSize,
    wholeLot,
  };
}

/** The plan that a letter and a quality level lead to, arrows followed. */
function planAt(letter: number, quality: number) {
  const place = letter + quality - 5;
  const at = (step: number, acceptanceNumber: number) => ({
    sampleSize: valueAt(SIZES, Math.min(SIZES.length - 1, Math.max(0, letter + step))),
    acceptanceNumber,
    rejectionNumber: acceptanceNumber + 1,
  });
  if (place <= 0) return at(-place, 0);
  if (place === 1) return at(-1, 0);
  if (place === 2) return at(1, 1);
  const last = ACCEPTANCE.length - 1;
  const step = place - 3;
  return step <= last
    ? at(0, valueAt(ACCEPTANCE, step))
    : at(last - step, valueAt(ACCEPTANCE, last));
}

/** A whole number within bounds. */
export function wholeNumber(
  parameter: string,
  value: number,
  minimum: number,
  maximum: number,
): number {
  const checked = inRange(parameter, value, minimum, maximum);
  if (Number.isInteger(checked)) return checked;
  throw new DomainError({
    code: 'out-of-range',
    parameter,
    received: value,
    allowed: `a whole number from ${minimum} to ${maximum}`,
  });
}
