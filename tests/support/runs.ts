/**
 * How many runs a simulation or a fuzz test makes: all where `FULL_RUNS=1` (`.ci/run` sets it), a fifth otherwise.
 */

/** Whether everything is run. */
export const FULL_RUNS = process.env['FULL_RUNS'] === '1';

/** `full` runs where everything is run, otherwise a fifth of them. */
export const runs = (full: number): number => (FULL_RUNS ? full : Math.ceil(full / 5));

/**
 * What a share found in a fifth of 10,000 runs may stray from that of all: two standard deviations of a share
 * of 95 %, 1 percentage point; nothing where everything is run.
 */
export const slackPercent = FULL_RUNS ? 0 : 1;

/** All of a list where everything is run, otherwise every third, so that each third of a long walk still meets every part. */
export const share = <T>(list: readonly T[]): readonly T[] =>
  FULL_RUNS ? list : list.filter((_, index) => index % 3 === 0);
