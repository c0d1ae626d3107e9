/** Equal-level bracketing: half way back between two places of the same level lies the peak. */

import { finite, inRange, oneOf, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { bracketRange, bracketVariance } from './bracketRange.js';
import { lobeVariance } from './lobeVariance.js';
import { usefulDrop } from './usefulDrop.js';

/**
 * Where in a step of the display the turning stopped: `anywhere`, or `at-change`, just as the display came
 * down to that level.
 */
export type BracketStop = 'anywhere' | 'at-change';

/** One bracketing of a peak with an adjuster. */
export interface Bracketing {
  /** Highest level read on the way through the peak, in dBm as displayed. */
  readonly peakLevelDbm: number;
  /** Level read after turning out, in dBm as displayed; below the peak. */
  readonly referenceLevelDbm: number;
  /** Level read on the far side, in dBm as displayed; default the reference level again. */
  readonly farLevelDbm?: number;
  /** Turns from the start out to the reference level, above 0. */
  readonly turnsOut: number;
  /** Turns back through the peak to the far place, above 0, as counted. */
  readonly turnsBack: number;
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
  /** Where in its step the level was on the way out; default `anywhere`. */
  readonly outStop?: BracketStop;
  /** Where in its step the level was on the far side; default `anywhere`. */
  readonly farStop?: BracketStop;
  /** Standard deviation of one displayed level from flicker, in dB; default 0. */
  readonly standardDeviationDb?: number;
  /** How finely turns are counted (0.25 for quarter turns); default 0 (exactly). */
  readonly countStepTurns?: number;
  /** Turns lost when the sense of turning changes; default 0. */
  readonly backlashTurns?: number;
  /** Degrees on the sky for one turn; default unknown, then no result in degrees. */
  readonly degPerTurn?: number;
  /** Pointing loss in dB that may be left; default 0.1. */
  readonly wantedLossDb?: number;
  /**
   * `reflector` (default): the lobe may be lopsided, as feeds off their place and uneven surfaces make it, and the level may
   * drift by a tenth of a decibel. `parabola`: neither, as in the arithmetic by hand.
   */
  readonly lobe?: 'reflector' | 'parabola';
  /** Largest error wanted, in turns; default the turns that cost `wantedLossDb` on this lobe. */
  readonly wantedTurns?: number;
}

const BRACKETING_KEYS = {
  peakLevelDbm: true,
  referenceLevelDbm: true,
  farLevelDbm: true,
  turnsOut: true,
  turnsBack: true,
  levelStepDb: true,
  outStop: true,
  farStop: true,
  standardDeviationDb: true,
  countStepTurns: true,
  backlashTurns: true,
  degPerTurn: true,
  wantedLossDb: true,
  lobe: true,
  wantedTurns: true,
} satisfies Keys<Bracketing>;

/** What a bracketing says; read `kind` first. */
export interface Bracket {
  /**
   * `bracketed`: the peak is within the wanted accuracy. `not-far-enough`: the reference is too near the
   * peak for that; turn another turn out and repeat. `too-far`: so far down the flanks the lobe may be too lopsided for that;
   * take a reference nearer to the peak. `blind`: the drop does not exceed the step, so nothing is known.
   */
  readonly kind: 'bracketed' | 'not-far-enough' | 'too-far' | 'blind';
  /** Level lost at the reference place, peak less reference as displayed, in dB. */
  readonly dropDb: number;
  /** Turns to turn back from the far place, the lost ones included. */
  readonly moveBackTurns: number;
  /** The same in degrees on the sky, without lost turns; `null` where the turn is not known in degrees. */
  readonly moveBackDeg: number | null;
  /** Peak relative to the place of the start, in turns, positive towards the side turned out to. */
  readonly peakFromStartTurns: number;
  /** Least and greatest move back over all lobes whose levels round to those displayed; `null` without a bound. */
  readonly moveBackRangeTurns: readonly [number, number] | null;
  /** Largest error of the move over all those lobes, in turns; `null` without a bound. */
  readonly worstErrorTurns: number | null;
  /** Standard uncertainty of the peak's place from step, scatter, counting, drift and a lopsided lobe, in turns. */
  readonly standardUncertaintyTurns: number;
  /** The same in degrees, or `null`. */
  readonly standardUncertaintyDeg: number | null;
  /** Error that is not exceeded with 95 % confidence, in turns; `null` without a bound. */
  readonly error95Turns: number | null;
  /** Pointing loss in dB that such an error costs on this lobe; `null` without a bound. */
  readonly lossUpper95Db: number | null;
  /** Half-power beamwidth of the lobe as bracketed, in turns; `null` without a drop. */
  readonly beamwidthTurns: number | null;
  /** Smallest drop in dB that keeps the loss within `wantedLossDb`, rounding and scatter counted. */
  readonly leastUsefulDropDb: number;
}

/**
 * Place of the peak from a bracketing: turn out to a reference level, come back through the peak until the
 * level returns, turn half of that back.
 *
 * With a lobe that falls as a parabola in dB, levels rounded to the step q, a drop d and a half way h
 * the peak is off the middle by at most h (r - 1) / (r + 1), r = sqrt(d / (d - q)). Two levels that are
 * not equal share the way back by the square roots of their drops. Lost turns: the counted way back holds
 * them once and the move back needs them once more.
 *
 * @returns The move back and its uncertainty; `blind` where the drop is not above the step.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * A real lobe may be lopsided, the more the further down, and no reading of two equal levels tells: `error95Turns` and
 * `lossUpper95Db` allow for it, `worstErrorTurns` is the arithmetic by hand.
 *
 * Source: own derivation; the procedure is common practice of the trade.
 * Accuracy: exact for a parabola; `worstErrorTurns` is that of an enumeration of all readings that round so. `error95Turns` and
 * `lossUpper95Db` hold in 95 % or more of the simulated bracketings in each cell, on lobes of real apertures
 * (`tests/peaking/others.simulation.test.ts`).
 * @example
 * ```ts
 * import { bracketPeak } from 'slantpath/peaking';
 * const bracket = bracketPeak({
 *   peakLevelDbm: -47,
 *   referenceLevelDbm: -51,
 *   turnsOut: 3,
 *   turnsBack: 5,
 *   levelStepDb: 1,
 * });
 * bracket.moveBackTurns; // => 2.5
 * bracket.worstErrorTurns?.toFixed(3); // => '0.179'
 * ```
 */
export function bracketPeak(bracketing: Bracketing): Bracket {
  const input = checkedBracketing(bracketing);
  const { stepDb, lostTurns, degPerTurn } = input;
  const path = input.turnsBack - lostTurns;
  const half = stepDb / 2;
  const around = (level: number, stop: BracketStop) =>
    stop === 'at-change'
      ? { low: level + half, high: level + half }
      : { low: level - half, high: level + half };
  const top = { low: input.peakLevelDbm - half, high: input.peakLevelDbm + half };
  const out = around(input.referenceLevelDbm, input.outStop);
  const far = around(input.farLevelDbm, input.farStop);
  const { best, bounds } = bracketRange({ top, out, far, path });
  const outDropDb = input.peakLevelDbm - (out.low + out.high) / 2;
  const farDropDb = input.peakLevelDbm - (far.low + far.high) / 2;
  const width2 = (range: { low: number; high: number }) => (range.high - range.low) ** 2 / 12;
  const flicker = input.standardDeviationDb ** 2;
  const sloped = outDropDb > 0 && farDropDb > 0;
  const fromScatter = sloped
    ? bracketVariance(
        { outDb: outDropDb, farDb: farDropDb, path },
        { top: 0, out: flicker, far: flicker },
      )
    : path * path;
  const fromSteps = sloped
    ? bracketVariance(
        { outDb: outDropDb, farDb: farDropDb, path },
        { top: width2(top), out: width2(out), far: width2(far) },
      )
    : 0;
  // The count of the way back begins and ends within a step; half the error goes into the middle.
  const fromCount = input.countStepTurns ** 2 / 24;
  const fromLobe = input.parabola || !sloped ? 0 : lobeVariance((outDropDb + farDropDb) / 2, path);
  const standard = Math.sqrt(fromScatter + fromSteps + fromCount + fromLobe);
  const worst = bounds === null ? null : Math.max(bounds[1] - best, best - bounds[0]);
  const error95 =
    worst === null
      ? null
      : Math.min(1.96 * standard, worst + 1.96 * Math.sqrt(fromScatter + fromCount + fromLobe));
  const lossPerTurn2 = sloped ? farDropDb / best ** 2 : null;
  const loss = (turns: number) => (lossPerTurn2 ?? 0) * turns * turns;
  const wanted =
    input.wantedTurns ?? (lossPerTurn2 === null ? 0 : Math.sqrt(input.wantedLossDb / lossPerTurn2));
  return {
    kind:
      worst === null || error95 === null
        ? 'blind'
        : Math.max(worst, error95) <= wanted
          ? 'bracketed'
          : fromLobe > standard ** 2 / 2
            ? 'too-far'
            : 'not-far-enough',
    dropDb: input.peakLevelDbm - input.referenceLevelDbm,
    moveBackTurns: best + lostTurns,
    moveBackDeg: degPerTurn === null ? null : best * degPerTurn,
    peakFromStartTurns: input.turnsOut - path + best,
    moveBackRangeTurns: bounds === null ? null : [bounds[0] + lostTurns, bounds[1] + lostTurns],
    worstErrorTurns: worst,
    standardUncertaintyTurns: standard,
    standardUncertaintyDeg: degPerTurn === null ? null : Math.abs(degPerTurn) * standard,
    error95Turns: error95,
    lossUpper95Db: error95 === null ? null : loss(error95),
    beamwidthTurns: lossPerTurn2 === null ? null : Math.sqrt(12 / lossPerTurn2),
    leastUsefulDropDb: usefulDrop({
      levelStepDb: stepDb,
      standardDeviationDb: input.standardDeviationDb,
      wantedLossDb: input.wantedLossDb,
    }),
  };
}

function checkedBracketing(bracketing: Bracketing) {
  knownOnly('bracketing', bracketing, BRACKETING_KEYS);
  const stops = ['anywhere', 'at-change'] as const;
  const peakLevelDbm = inRange('peakLevelDbm', bracketing.peakLevelDbm, -300, 300);
  const swapped = 'were peak and reference swapped?';
  const level = (name: string, value: number) => inRange(name, value, -300, peakLevelDbm, swapped);
  const referenceLevelDbm = level('referenceLevelDbm', bracketing.referenceLevelDbm);
  const turnsBack = inRange('turnsBack', positive('turnsBack', bracketing.turnsBack), 1e-6, 1e6);
  const { degPerTurn, wantedTurns } = bracketing;
  return {
    peakLevelDbm,
    referenceLevelDbm,
    farLevelDbm: level('farLevelDbm', bracketing.farLevelDbm ?? referenceLevelDbm),
    turnsOut: inRange('turnsOut', positive('turnsOut', bracketing.turnsOut), 1e-6, 1e6),
    turnsBack,
    stepDb: inRange('levelStepDb', bracketing.levelStepDb ?? 0, 0, 20),
    outStop: oneOf('outStop', bracketing.outStop ?? 'anywhere', stops),
    farStop: oneOf('farStop', bracketing.farStop ?? 'anywhere', stops),
    standardDeviationDb: inRange('standardDeviationDb', bracketing.standardDeviationDb ?? 0, 0, 20),
    countStepTurns: inRange('countStepTurns', bracketing.countStepTurns ?? 0, 0, 100),
    lostTurns: inRange(
      'backlashTurns',
      bracketing.backlashTurns ?? 0,
      0,
      turnsBack * 0.999,
      'were more turns lost than turned?',
    ),
    degPerTurn:
      degPerTurn === undefined
        ? null
        : inRange('degPerTurn', finite('degPerTurn', degPerTurn), -360, 360),
    wantedLossDb: inRange('wantedLossDb', bracketing.wantedLossDb ?? 0.1, 1e-6, 20),
    parabola:
      oneOf('lobe', bracketing.lobe ?? 'reflector', ['reflector', 'parabola']) === 'parabola',
    wantedTurns: wantedTurns === undefined ? undefined : positive('wantedTurns', wantedTurns),
  };
}
