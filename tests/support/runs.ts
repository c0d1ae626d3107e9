/**
 * How many runs a simulation or a fuzz test makes: all where `FULL_RUNS=1` (`.ci/run` sets it), a tenth otherwise.
 */

/** Whether everything is run. */
export const FULL_RUNS = process.env['FULL_RUNS'] === '1';

/** `full` runs where everything is run, otherwise `short` of them, a tenth where nothing is said. */
export const runs = (full: number, short: number = Math.ceil(full / 10)): number =>
  FULL_RUNS ? full : short;

/**
 * What a share of about 95 % found in `count` runs may stray from that of 10,000, in percentage points: two
 * standard deviations of such a share; nothing where everything is run.
 */
export const slackPercentOf = (count: number): number =>
  FULL_RUNS ? 0 : 200 * Math.sqrt((0.95 * 0.05) / count);

/** What a root mean square of `count` normal values may stray from that of 10,000, as a ratio: two standard deviations. */
export const slackRatioOf = (count: number): number => (FULL_RUNS ? 0 : 2 / Math.sqrt(2 * count));

/** That of the runs of `runs(10_000)`. */
export const slackPercent = slackPercentOf(runs(10_000));

/** All of a list where everything is run, otherwise every fifth or `every`th, so that a short walk still meets every part. */
export const share = <T>(list: readonly T[], every = 5): readonly T[] =>
  FULL_RUNS ? list : list.filter((_, index) => index % every === 0);
