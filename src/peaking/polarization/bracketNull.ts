/** The null of the cross-polar level, bracketed: half way between two rotations of the same level. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { asinDeg, cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../../numeric/angle.js';

/** Two rotations of the feed at which the cross-polar level reads the same. */
export interface NullBracketing {
  /** Rotation of the feed at the first place in degrees. */
  readonly firstDeg: number;
  /** Rotation of the feed at the second place in degrees, 2 to 170 from the first. */
  readonly secondDeg: number;
  /** Step of the displayed level in dB; default 0. */
  readonly levelStepDb?: number;
  /** Standard deviation of one displayed level in dB; default 0. */
  readonly standardDeviationDb?: number;
}

const NULL_BRACKETING_KEYS = {
  firstDeg: true,
  secondDeg: true,
  levelStepDb: true,
  standardDeviationDb: true,
} satisfies Keys<NullBracketing>;

/** The rotation of the null. */
export interface NullBracket {
  /** `bracketed`; `blind` where the step is so coarse that the null may lie outside the two places. */
  readonly kind: 'bracketed' | 'blind';
  /** Rotation of the null in degrees: half way. */
  readonly nullDeg: number;
  /** Largest error from the step alone, in degrees; `null` without a bound. */
  readonly worstErrorDeg: number | null;
  /** Standard uncertainty from step and scatter in degrees. */
  readonly standardUncertaintyDeg: number;
  /** Isolation in dB that is left, antenna ideal, at the largest error plus twice what scatter adds; at most 100. */
  readonly isolationAtLeastDb: number;
}

/**
 * Rotation of the null of a cross-polar level from two places of equal level on either side.
 *
 * The cross level goes as sin^2 of the rotation from the null. Two levels that may differ by a step q put the null off
 * the middle by at most d with sin(h + d) / sin(h - d) = 10^(q/20), h half the way: tan d = tan h tanh(q ln 10 / 40).
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: own derivation; bracketing the null is common practice of the trade.
 * Accuracy: `isolationAtLeastDb` holds in 95 % or more of simulated bracketings from 10 degrees out on, with a leak of any phase 26 to 36 dB down; where the
 * step is coarser than the scatter, the error is up to 1.4 of `standardUncertaintyDeg` (`tests/peaking/others.simulation.test.ts`).
 * @example
 * ```ts
 * import { bracketNull } from 'slantpath/peaking';
 * const bracket = bracketNull({ firstDeg: -18, secondDeg: 24, levelStepDb: 1 });
 * bracket.nullDeg; // => 3
 * bracket.worstErrorDeg?.toFixed(2); // => '1.26'
 * ```
 */
export function bracketNull(bracketing: NullBracketing): NullBracket {
  knownOnly('bracketing', bracketing, NULL_BRACKETING_KEYS);
  const firstDeg = inRange('firstDeg', bracketing.firstDeg, -360, 360);
  const secondDeg = inRange('secondDeg', bracketing.secondDeg, -360, 360);
  const wayDeg = inRange(
    'secondDeg',
    Math.abs(secondDeg - firstDeg),
    2,
    170,
    'the two places lie on either side of the null, 2 to 170 degrees apart',
  );
  const stepDb = inRange('levelStepDb', bracketing.levelStepDb ?? 0, 0, 20);
  const standardDeviationDb = inRange(
    'standardDeviationDb',
    bracketing.standardDeviationDb ?? 0,
    0,
    20,
  );
  const half = wayDeg / 2;
  const ratio = Math.tanh((stepDb * Math.LN10) / 40);
  const worst = asinDegOfTan((sinDeg(half) / cosDeg(half)) * ratio);
  // Slope of the level there: 20 / ln 10 cot(h) dB per radian, on each side.
  const perDb = (DEGREES_PER_RADIAN * Math.LN10 * sinDeg(half)) / (40 * cosDeg(half));
  const standardUncertaintyDeg =
    perDb * Math.sqrt((stepDb * stepDb) / 6 + 2 * standardDeviationDb * standardDeviationDb);
  const error = Math.min(45, worst + 2 * perDb * Math.SQRT2 * standardDeviationDb);
  const tangent = sinDeg(error) / cosDeg(error);
  return {
    kind: worst < half ? 'bracketed' : 'blind',
    nullDeg: (firstDeg + secondDeg) / 2,
    worstErrorDeg: worst < half ? worst : null,
    standardUncertaintyDeg,
    isolationAtLeastDb: Math.min(100, tangent > 0 ? -20 * Math.log10(tangent) : 100),
  };
}

/** Angle in degrees of a tangent of 0 or more. */
function asinDegOfTan(tangent: number): number {
  return asinDeg(tangent / Math.sqrt(1 + tangent * tangent));
}
