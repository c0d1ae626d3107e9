/** What is wrong here? Causes ranked by how likely they make the pattern of readings. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { checkedObservation, measurementKey } from './checkedObservation.js';
import { causeContext } from './context.js';
import { whitenedSquare } from './covariance.js';
import { evidenceFor } from './evidence.js';
import { allHypotheses } from './hypotheses.js';
import { type CauseInstallation, FAULT_CAUSES, type FaultCause } from './installation.js';
import { logLikelihoods } from './likelihood.js';
import { nextMeasurement } from './nextMeasurement.js';
import type { CauseObservation } from './observation.js';
import { type ObservedPattern, observedPattern, scatterClasses } from './pattern.js';
import { type CauseShare, causeRanges, causeShares, logPriors } from './posterior.js';
import { type PredictedColumn, predictionsOf } from './predictions.js';
import type { CauseRanking, RankedCause } from './result.js';
import { unseenCauses } from './unseen.js';

/** Odds of the first cause over the second from which it is named alone. */
const DECISIVE_ODDS = 4;
/** Most probability of causes that no reading bears on with which 'nothing wrong' is still said. */
const MOST_UNSEEN = 0.1;

/** An installation and what is thought of the causes before anything is read. */
export interface CauseQuestion {
  /** The installation as planned. */
  readonly installation: CauseInstallation;
  /**
   * Weight of causes before the readings, 0 or more; 0 rules a cause out. Left out, 4 for `nothing` and 1 for every
   * other: most chains that are looked at are sound.
   */
  readonly priorWeights?: { readonly [cause in FaultCause]?: number };
}

const CAUSE_QUESTION_KEYS = {
  installation: true,
  priorWeights: true,
} satisfies Keys<CauseQuestion>;

const RANK_CAUSES_QUESTION_KEYS = {
  ...CAUSE_QUESTION_KEYS,
  observations: true,
} satisfies Keys<Parameters<typeof rankCauses>[0]>;

/** Ranks the causes for one list of observations of the installation. */
export type CauseRanker = (observations: readonly CauseObservation[]) => CauseRanking;

/**
 * Prepares the search of causes for an installation, so that many lists of observations can be ranked quickly.
 *
 * @param question  The installation, and prior weights of causes.
 * @returns A function from observations to a ranking; see {@link rankCauses}.
 * @throws {@link DomainError} naming the field of the installation; the function throws for bad observations.
 *
 * Source: see {@link rankCauses}.
 * Accuracy: see {@link rankCauses}.
 * @example
 * ```ts
 * import { causeRanker } from 'slantpath/acceptance';
 * const rank = causeRanker({
 *   installation: {
 *     diameterM: 0.9,
 *     slots: [{ name: '16.4 E', azimuthDeg: 170, elevationDeg: 36 }],
 *     carriers: [
 *       { name: 'A', slot: '16.4 E', polarization: 'vertical', band: 'low', frequencyGHz: 11, frequencyMHz: 1250, levelDbuv: 75, carrierToNoiseDb: 14 },
 *     ],
 *     testPoints: [{ name: 'hut', lossDb: 10 }],
 *   },
 * });
 * rank([{ kind: 'level', carrier: 'A', testPoint: 'hut', levelDbuv: 65.2 }]).ranking.length; // => 16
 * ```
 */
export function causeRanker(question: CauseQuestion): CauseRanker {
  known('question', question, CAUSE_QUESTION_KEYS);
  // All of this hangs on the installation alone; a simulation ranks thousands of lists of readings on one.
  const context = causeContext(question.installation);
  const prior = priorOf(question.priorWeights ?? {});
  const hypotheses = allHypotheses(context);
  const scatter = { hypotheses, classes: scatterClasses(hypotheses) };
  const predictions = predictionsOf(context, hypotheses);
  const ranges = causeRanges(hypotheses);
  const logPrior = logPriors(hypotheses, ranges, prior);
  return (observations) => {
    const results = checkedList(observations).map((observation, index) =>
      checkedObservation(context, observation, `observations[${index}]`),
    );
    const columns = observations.map((observation) => predictions(observation));
    const pattern = observedPattern(context, observations, results, columns, scatter);
    const logs = logLikelihoods(hypotheses.length, columns, results, pattern);
    // A cause counts by the mean over its hypotheses, not by its best one: many parameters must not help by being many.
    const { weights, shares } = causeShares(hypotheses, ranges, logPrior, logs);
    const ranking = shares.map(({ cause, share, best, locationRatio }): RankedCause => {
      const hypothesis = hypotheses[best];
      return {
        cause,
        probabilityRatio: share,
        location: hypothesis?.location ?? null,
        locationRatio,
        parameters: hypothesis?.parameters ?? {},
        // Evidence is laid out for causes that are in question; the list would be long otherwise.
        evidence: share > 0.01 ? evidenceFor(best, observations, results, pattern, columns) : [],
      };
    });
    const [first, second] = shares as [CauseShare, CauseShare];
    // Probabilities add up to 1 even when no cause in the list is true, so the fit of the best one is judged by itself.
    const unexplained = fitsBadly(first.best, pattern, columns);
    const unseen = unseenCauses(hypotheses, columns, weights);
    // Sound readings say nothing of a branch that was not read: 'nothing wrong' needs most of what can be wrong to have been looked at.
    const unread = first.cause === 'nothing' && unseen.probabilityRatio > MOST_UNSEEN;
    // Where only the unread speaks against 'nothing wrong', the next reading goes there.
    const hidden = unread
      ? shares.find(({ cause }) => unseen.causes.some((one) => one.cause === cause))
      : undefined;
    // A measurement that parts causes further down would not change what is done next.
    const next = nextMeasurement(context, weights, [first, hidden ?? second], {
      made: new Set(observations.map(measurementKey)),
      predictions,
    });
    const undecided = first.share < DECISIVE_ODDS * second.share || unexplained || unread;
    return {
      // A wrong name sends someone up the mast for nothing; 'cannot tell' costs one more reading.
      kind: undecided ? 'cannot-tell' : first.cause === 'nothing' ? 'nothing-wrong' : 'cause',
      ranking,
      undecidedBetween: undecided
        ? shares
            .filter(({ share }) => first.share < DECISIVE_ODDS * share)
            .map(({ cause }) => cause)
        : [],
      reason: !undecided
        ? null
        : unexplained
          ? 'no-cause-fits'
          : next
            ? 'too-few-readings'
            : 'same-readings',
      next,
      unseen: unseen.causes,
    };
  };
}

/**
 * What is wrong here? Every cause with its probability, the evidence for and against it, and the next measurement.
 *
 * Each cause is a forward model with parameters: what it would do to level, carrier-to-noise ratio, isolation and
 * reception of each slot, polarization and band at each test point, and to the checks. Its likelihood is averaged over the
 * parameters, so that a cause which could explain anything does not win by that. Readings scatter by their own
 * uncertainty and by what the plan does not know of EIRP, units, carriers and cables. 'Cannot tell' is an answer.
 *
 * @param question  Installation, prior weights, and `observations`: what was read or looked at, in any order; one reading is enough to begin.
 * @returns Causes by probability; the probability is one among the causes listed, given one fault.
 * @throws {@link DomainError} naming the field, `observations[3].levelDbuv`.
 *
 * Source: Bayes's rule with marginal likelihoods; antenna lobe 12 (offset / half-power width)^2, noise of a lossy medium, skin
 * effect as elsewhere in the library; chances of checks by practice of the trade.
 * Accuracy: on simulated faults the confusion table in docs "What is wrong here?".
 * @example
 * ```ts
 * import { rankCauses } from 'slantpath/acceptance';
 * const carrier = { slot: '16.4 E', polarization: 'vertical', band: 'low', levelDbuv: 75, carrierToNoiseDb: 14 } as const;
 * const found = rankCauses({
 *   installation: {
 *     diameterM: 0.9,
 *     slots: [{ name: '16.4 E', azimuthDeg: 170, elevationDeg: 36 }],
 *     carriers: [
 *       { ...carrier, name: 'A', frequencyGHz: 10.8, frequencyMHz: 1050 },
 *       { ...carrier, name: 'B', band: 'high', frequencyGHz: 12.6, frequencyMHz: 2000 },
 *     ],
 *     testPoints: [{ name: 'hut', lossDb: 10 }],
 *   },
 *   observations: [
 *     { kind: 'level', carrier: 'A', testPoint: 'hut', levelDbuv: 65.4 },
 *     { kind: 'level', carrier: 'B', testPoint: 'hut', levelDbuv: 65.5 },
 *     { kind: 'carrier-to-noise', carrier: 'A', testPoint: 'hut', carrierToNoiseDb: 9.1 },
 *     { kind: 'carrier-to-noise', carrier: 'B', testPoint: 'hut', carrierToNoiseDb: 9.3 },
 *   ],
 * });
 * found.kind; // => 'cannot-tell'
 * ```
 */
export function rankCauses(
  question: CauseQuestion & { readonly observations: readonly CauseObservation[] },
): CauseRanking {
  const { observations, ...installed } = known('question', question, RANK_CAUSES_QUESTION_KEYS);
  return causeRanker(installed)(observations);
}

function checkedList(observations: readonly CauseObservation[]): readonly CauseObservation[] {
  if (Array.isArray(observations) && observations.length > 0 && observations.length <= 400)
    return observations;
  throw new DomainError({
    code:
      observations === undefined
        ? 'missing'
        : !Array.isArray(observations)
          ? 'malformed'
          : observations.length === 0
            ? 'empty'
            : 'out-of-range',
    parameter: 'observations',
    received: observations,
    allowed: 'a list of 1 to 400 observations',
  });
}

const PRIOR_OF_PRIOR_WEIGHTS_KEYS = {
  nothing: true,
  mispointed: true,
  'mast-leaning': true,
  'polarization-rotated': true,
  'wrong-slot': true,
  'side-lobe': true,
  obstructed: true,
  'bad-connector': true,
  'wrong-cable': true,
  'part-failed': true,
  'supply-low': true,
  'unit-out-of-tolerance': true,
  overloaded: true,
  interference: true,
  rain: true,
  'sun-outage': true,
} satisfies Keys<Parameters<typeof priorOf>[0]>;

function priorOf(
  weights: NonNullable<CauseQuestion['priorWeights']>,
): Readonly<Record<FaultCause, number>> {
  known('priorWeights', weights, PRIOR_OF_PRIOR_WEIGHTS_KEYS);
  const prior = Object.fromEntries(
    FAULT_CAUSES.map((cause) => [
      cause,
      inRange(`priorWeights['${cause}']`, weights[cause] ?? (cause === 'nothing' ? 4 : 1), 0, 1e6),
    ]),
  ) as Record<FaultCause, number>;
  if (Object.values(prior).filter((weight) => weight > 0).length < 2)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'priorWeights',
      received: weights,
      allowed: 'above 0 for at least two causes',
    });
  return prior;
}

/** Whether even the best hypothesis leaves far more scatter than the uncertainties allow. */
function fitsBadly(
  h: number,
  pattern: ObservedPattern,
  columns: readonly PredictedColumn[],
): boolean {
  const n = pattern.readings.length;
  const whiten = pattern.whiteningFor(h);
  if (n === 0) return false;
  const means = pattern.readingIndex.map((index) => (columns[index] as PredictedColumn).mean);
  const room = new Float64Array(n);
  const square = whitenedSquare(whiten, pattern.values, means, h, room, Number.POSITIVE_INFINITY);
  // Chi-squared five deviations above its mean, with room for the grid of parameters.
  return square > n + 5 * Math.sqrt(2 * n) + 8;
}
