/** How far down the lobe a bracketing must go. */

import { inRange, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { bracketedRoot } from '../../numeric/root.js';

/** What is read, and what pointing loss may be left. */
export interface UsefulDropInput {
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
  /** Standard deviation of one reading in dB; default 0. */
  readonly standardDeviationDb?: number;
  /** Pointing loss that may be left after the move half way back, in dB; default 0.1. */
  readonly wantedLossDb?: number;
}

const USEFUL_DROP_INPUT_KEYS = {
  levelStepDb: true,
  standardDeviationDb: true,
  wantedLossDb: true,
} satisfies Keys<UsefulDropInput>;

/**
 * Smallest drop from peak to reference, in dB, at which an equal-level bracketing leaves no more than the
 * wanted loss: from rounding at its worst, plus scatter at 95 %.
 *
 * On a parabola in dB the answer does not depend on the beamwidth. With a drop d and a step q the peak is
 * off by h (r - 1) / (r + 1), r = sqrt(d / (d - q)), h the half way; scatter s adds 1.96 h s sqrt(2) / (4 d).
 * The loss left is d (error / h)^2.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: own derivation.
 * @example
 * ```ts
 * import { usefulDrop } from 'slantpath/peaking';
 * usefulDrop({ levelStepDb: 1 }).toFixed(2); // => '1.55'
 * usefulDrop({ levelStepDb: 1, standardDeviationDb: 0.5 }).toFixed(1); // => '4.0'
 * ```
 */
export function usefulDrop(input: UsefulDropInput): number {
  knownOnly('input', input, USEFUL_DROP_INPUT_KEYS);
  const stepDb = inRange('levelStepDb', input.levelStepDb ?? 0, 0, 20);
  const standardDeviationDb = inRange('standardDeviationDb', input.standardDeviationDb ?? 0, 0, 20);
  const wantedDb = positive('wantedLossDb', input.wantedLossDb ?? 0.1);
  inRange('wantedLossDb', wantedDb, 1e-6, 20);
  if (stepDb === 0 && standardDeviationDb === 0) return 0;
  const share = Math.sqrt(wantedDb);
  const excess = (dropDb: number): number => {
    const root = Math.sqrt(dropDb / (dropDb - stepDb));
    const rounding = (root - 1) / (root + 1);
    const scatter = (1.96 * standardDeviationDb * Math.SQRT2) / (4 * dropDb);
    return Math.sqrt(dropDb) * (rounding + scatter) - share;
  };
  // Far out both terms fall as 1 / sqrt(d), so this end always satisfies.
  const far = stepDb + (stepDb + 1.96 * standardDeviationDb * Math.SQRT2) ** 2 / wantedDb + 1;
  const near = stepDb * (1 + 1e-12) + 1e-12;
  return bracketedRoot(excess, { from: near, to: far }) ?? near;
}
