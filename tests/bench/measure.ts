/**
 * Timing by ratio: two or more ways of doing the same work, interleaved in one run on one machine.
 *
 * A bench file default-exports a function that returns rows; `npm run bench` prints them all. Absolute
 * times depend on the machine; only ratios of processor time are held to budgets, which a busy machine moves least.
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
  /** Median processor time of one item in nanoseconds, helper threads of the engine included. */
  readonly nanosecondsPerItem: number;
  /** Median time on the clock of one item in nanoseconds: longer where the machine is shared. */
  readonly wallNanosecondsPerItem: number;
  /** Median of what one item leaves on the heap before a collection, in bytes. */
  readonly heapBytesPerItem: number;
  /** Median processor time over that of the first contender. */
  readonly ratio: number;
  /** Largest ratio allowed, if the budget names one. */
  readonly budgetRatio?: number;
}

let sink = 0;

/** Most rounds of a bench: fewer where the machine is busy, `BENCH_ROUNDS=7 npm run bench`. */
export const MOST_ROUNDS = Number(process.env['BENCH_ROUNDS'] ?? 25);

/**
 * Measures the contenders in turn, round by round, and compares medians with the first one's.
 *
 * @param items  How many items each `run` handles (a few thousand, so that one run takes milliseconds).
 */
export function measure(
  bench: string,
  items: number,
  contenders: readonly (Contender & { readonly budgetRatio?: number })[],
  wanted = 25,
): BenchRow[] {
  const rounds = Math.min(wanted, MOST_ROUNDS);
  for (let warm = 0; warm < 5; warm++) for (const { run } of contenders) sink += run();
  const columns = contenders.map(() => ({
    cpu: [] as number[],
    wall: [] as number[],
    heap: [] as number[],
  }));
  for (let round = 0; round < rounds; round++)
    contenders.forEach(({ run }, index) => {
      const heap = process.memoryUsage().heapUsed;
      const cpu = process.cpuUsage();
      const begin = process.hrtime.bigint();
      sink += run();
      const wall = Number(process.hrtime.bigint() - begin);
      const { user, system } = process.cpuUsage(cpu);
      const left = process.memoryUsage().heapUsed - heap;
      columns[index]?.wall.push(wall / items);
      columns[index]?.cpu.push((1000 * (user + system)) / items);
      // A run in which a collection fell tells nothing of what was left.
      if (left >= 0) columns[index]?.heap.push(left / items);
    });
  const median = (list: readonly number[] | undefined): number =>
    [...(list ?? [])].sort((a, b) => a - b)[(list?.length ?? 0) >> 1] ?? 0;
  if (Number.isNaN(sink)) console.log('a contender returned NaN');
  const first = median(columns[0]?.cpu);
  return contenders.map(({ name, budgetRatio }, index) => ({
    bench,
    name,
    nanosecondsPerItem: median(columns[index]?.cpu),
    wallNanosecondsPerItem: median(columns[index]?.wall),
    heapBytesPerItem: median(columns[index]?.heap),
    ratio: median(columns[index]?.cpu) / first,
    ...(budgetRatio === undefined ? {} : { budgetRatio }),
  }));
}
