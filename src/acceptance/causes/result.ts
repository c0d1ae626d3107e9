/** The outcome of the search of causes. */

import type { FaultCause } from './installation.js';
import type { CauseMeasurement, CauseObservation } from './observation.js';

/** One observation weighed for a cause. */
export interface CauseEvidence {
  /** The observation. */
  readonly observation: CauseObservation;
  /** What the cause, at its best parameters, predicts: a value in the observation's unit, or the chance (0 to 1) of what was seen. */
  readonly predicted: number;
  /** What is predicted where nothing is wrong, in the same sense. */
  readonly withoutFault: number;
  /** Reading less prediction in standard uncertainties, 0 for a look that has no number. */
  readonly deviationRatio: number;
  /** `for` or `against` the cause as compared with nothing wrong; `neutral` where both say about the same. */
  readonly speaks: 'for' | 'against' | 'neutral';
}

/** A cause with its probability and evidence. */
export interface RankedCause {
  /** The cause. */
  readonly cause: FaultCause;
  /** Probability among the causes considered, 0 to 1. */
  readonly probabilityRatio: number;
  /** Where it most likely lies: slot, segment, port or carrier; `null` for the whole antenna. */
  readonly location: string | null;
  /** Share of that location in the cause's probability, 0 to 1. */
  readonly locationRatio: number;
  /** Parameters that fit best, with units in their names. */
  readonly parameters: Readonly<Record<string, number>>;
  /** Every observation weighed, strongest first. */
  readonly evidence: readonly CauseEvidence[];
}

/** The measurement that best separates the two most likely causes. */
export interface NextMeasurement {
  /** What to read or look at. */
  readonly measurement: CauseMeasurement;
  /** The two causes. */
  readonly between: readonly [FaultCause, FaultCause];
  /** What each of them predicts, in the unit of the measurement, or the chance of yes or of the wanted service. */
  readonly predicted: readonly [number, number];
  /** Share of the chance of mistaking one for the other that the measurement takes away, 0 to 1. */
  readonly separationRatio: number;
}

/** A cause at a place that the readings cannot show. */
export interface UnseenCause {
  /** The cause. */
  readonly cause: FaultCause;
  /** Slot, segment, port or carrier; `null` for the whole antenna. */
  readonly location: string | null;
}

/** The outcome; read `kind` first. */
export type CauseRanking = {
  /**
   * `cause`: the first is at least four times as likely as the second. `nothing-wrong`: the readings are as
   * planned. `cannot-tell`: they do not decide.
   */
  readonly kind: 'cause' | 'nothing-wrong' | 'cannot-tell';
  /** Every cause, most likely first. */
  readonly ranking: readonly RankedCause[];
  /** Causes that cannot be told apart, most likely first; empty unless `cannot-tell`. */
  readonly undecidedBetween: readonly FaultCause[];
  /**
   * Why it cannot be told: more readings would decide, no measurement known here would, or no cause fits
   * (several faults, or one that is not in the list). `null` unless `cannot-tell`.
   */
  readonly reason: 'too-few-readings' | 'same-readings' | 'no-cause-fits' | null;
  /** The next measurement; `null` where none separates the first two. */
  readonly next: NextMeasurement | null;
  /**
   * Causes that no reading so far bears on, with their place: a part in a branch that was not read, a look that was not taken.
   * 'Nothing wrong' says nothing about these.
   */
  readonly unseen: readonly UnseenCause[];
};
