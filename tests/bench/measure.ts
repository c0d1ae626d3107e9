/**
 * Timing by ratio: two or more ways of doing the same work, interleaved in one run on one machine.
 *
 * A bench file default-exports a function that returns rows; `npm run bench` prints them all. Absolute
 * times depend on the machine; only ratios are held to budgets.
 */

/** One way of doing the work. */
export interface Contender {
  readonly name: string;
  /** Does the work on `items` items and returns a number that depends on all of it. */
  readonly run: () => number;
}

/** What was measured of one contender. */
export interface BenchRow {
  readonly bench: string;
  readonly name: string;
  /** Median time of one item in nanoseconds. */
  readonly nanosecondsPerItem: number;
  /** Median time over that of the first contender. */
  readonly ratio: number;
  /** Largest ratio allowed, if the budget names one. */
  readonly budgetRatio?: number;
}

let sink = 0;

/**
 * Measures the contenders in turn, round by round, and compares medians with the first one's.
 *
 * @param items  How many items each `run` handles (a few thousand, so that one run takes milliseconds).
 */
export function measure(
  bench: string,
  items: number,
  contenders: readonly (Contender & { readonly budgetRatio?: number })[],
  rounds = 25,
): BenchRow[] {
  for (let warm = 0; warm < 5; warm++) for (const { run } of contenders) sink += run();
  const times = contenders.map((): number[] => []);
  for (let round = 0; round < rounds; round++)
    contenders.forEach(({ run }, index) => {
      const begin = process.hrtime.bigint();
      sink += run();
      times[index]?.push(Number(process.hrtime.bigint() - begin) / items);
    });
  const medians = times.map((list) => list.sort((a, b) => a - b)[list.length >> 1] ?? 0);
  if (Number.isNaN(sink)) console.log('a contender returned NaN');
  return contenders.map(({ name, budgetRatio }, index) => ({
    bench,
    name,
    nanosecondsPerItem: medians[index] ?? 0,
    ratio: (medians[index] ?? 0) / (medians[0] ?? 1),
    ...(budgetRatio === undefined ? {} : { budgetRatio }),
  }));
}
