/** Equal-level bracketing: half way back between two places of the same level lies the peak. */

import { finite, inRange, object, positive } from '../errors.js';

/** One bracketing of a peak with an adjuster. */
export interface Bracketing {
  /** Highest level read near the peak, in dBm as displayed. */
  readonly peakLevelDbm: number;
  /** Level read after turning out, and found again on the far side, in dBm as displayed. */
  readonly referenceLevelDbm: number;
  /** Turns from the start out to the reference level, above 0. */
  readonly turnsOut: number;
  /** Turns back through the peak until the reference level returned, above 0, as counted. */
  readonly turnsBack: number;
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
  /** Standard deviation of one displayed level from flicker, in dB; default 0. */
  readonly scatterDb?: number;
  /** Turns lost when the sense of turning changes; default 0. */
  readonly backlashTurns?: number;
  /** Degrees on the sky for one turn; default unknown, then no result in degrees. */
  readonly degPerTurn?: number;
  /** Largest error wanted, in turns; default a tenth of the way back. */
  readonly wantedTurns?: number;
}

/** What a bracketing says; read `kind` first. */
export interface Bracket {
  /**
   * `bracketed`: the peak is within `worstErrorTurns`. `not-far-enough`: the reference is too near the
   * peak for the wanted accuracy. `blind`: the drop does not exceed the step, so nothing is known.
   */
  readonly kind: 'bracketed' | 'not-far-enough' | 'blind';
  /** Level lost at the reference place, peak less reference as displayed, in dB. */
  readonly dropDb: number;
  /** Turns to turn back from the far place, the lost ones included. */
  readonly moveBackTurns: number;
  /** The same in degrees on the sky, without lost turns; `null` where the turn is not known in degrees. */
  readonly moveBackDeg: number | null;
  /** Peak relative to the place of the start, in turns, positive towards the side turned out to. */
  readonly peakFromStartTurns: number;
  /** Standard uncertainty of the peak's place from step and scatter, in turns. */
  readonly standardUncertaintyTurns: number;
  /** The same in degrees, or `null`. */
  readonly standardUncertaintyDeg: number | null;
  /**
   * Largest error of the peak's place over all lobes whose levels round to those displayed, in turns;
   * `null` where there is no bound.
   */
  readonly worstErrorTurns: number | null;
  /** Smallest drop in dB that holds the wanted accuracy at this width, scatter left aside. */
  readonly leastUsefulDropDb: number;
}

/**
 * Place of the peak from an equal-level bracketing: turn out to a reference level, come back through
 * the peak until the level returns, turn half of that back.
 *
 * With a lobe that falls as a parabola in dB, levels rounded to the step q, a drop d and a half way h
 * the peak is off the middle by at most h (r - 1) / (r + 1), r = sqrt(d / (d - q)).
 *
 * @returns The move back and its uncertainty; `blind` where the drop is not above the step.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: own derivation; the procedure is common practice of the trade.
 * @example
 * ```ts
 * import { bracketPeak } from 'slantpath/peaking';
 * const bracket = bracketPeak({
 *   peakLevelDbm: -38,
 *   referenceLevelDbm: -42,
 *   turnsOut: 2,
 *   turnsBack: 4,
 *   levelStepDb: 1,
 * });
 * bracket.moveBackTurns; // => 2
 * bracket.worstErrorTurns?.toFixed(3); // => '0.144'
 * ```
 */
export function bracketPeak(bracketing: Bracketing): Bracket {
  object('bracketing', bracketing);
  const peakLevelDbm = inRange('peakLevelDbm', bracketing.peakLevelDbm, -200, 100);
  const referenceLevelDbm = inRange(
    'referenceLevelDbm',
    bracketing.referenceLevelDbm,
    -200,
    peakLevelDbm,
    'were peak and reference swapped?',
  );
  const turnsOut = positive('turnsOut', bracketing.turnsOut);
  const turnsBack = positive('turnsBack', bracketing.turnsBack);
  const stepDb = inRange('levelStepDb', bracketing.levelStepDb ?? 0, 0, 20);
  const scatterDb = inRange('scatterDb', bracketing.scatterDb ?? 0, 0, 20);
  const lostTurns = inRange(
    'backlashTurns',
    bracketing.backlashTurns ?? 0,
    0,
    turnsBack * 0.999,
    'more turns lost than turned?',
  );
  const degPerTurn =
    bracketing.degPerTurn === undefined ? null : finite('degPerTurn', bracketing.degPerTurn);
  const halfTurns = (turnsBack - lostTurns) / 2;
  const wantedTurns = positive('wantedTurns', bracketing.wantedTurns ?? turnsBack / 10);
  const dropDb = peakLevelDbm - referenceLevelDbm;
  const root = dropDb > stepDb ? Math.sqrt(dropDb / (dropDb - stepDb)) : null;
  const worstErrorTurns = root === null ? null : (halfTurns * (root - 1)) / (root + 1);
  const wantedRoot = (halfTurns + wantedTurns) / Math.max(halfTurns - wantedTurns, 1e-9);
  const leastUsefulDropDb = stepDb / (1 - 1 / (wantedRoot * wantedRoot));
  // Two rounded levels differ with variance q^2/6; the slope there is 2 d / h per turn.
  const differenceDb = Math.sqrt((stepDb * stepDb) / 6 + 2 * scatterDb * scatterDb);
  const standardUncertaintyTurns =
    dropDb > 0 ? (differenceDb * halfTurns) / (4 * dropDb) : halfTurns;
  return {
    kind:
      worstErrorTurns === null
        ? 'blind'
        : worstErrorTurns <= wantedTurns
          ? 'bracketed'
          : 'not-far-enough',
    dropDb,
    moveBackTurns: halfTurns + lostTurns,
    moveBackDeg: degPerTurn === null ? null : halfTurns * degPerTurn,
    peakFromStartTurns: turnsOut - halfTurns,
    standardUncertaintyTurns,
    standardUncertaintyDeg:
      degPerTurn === null ? null : Math.abs(degPerTurn) * standardUncertaintyTurns,
    worstErrorTurns,
    leastUsefulDropDb,
  };
}
