/** What a run says of itself while it goes on, on standard error. */

/** Milliseconds between two lines where nobody watches a terminal. */
const EVERY_MS = 5000;

const grouped = (value: number) => Math.round(value).toLocaleString('en-GB');

/** Tells how far a run is. */
export interface Progress {
  readonly say: (line: string) => void;
  /** `done` of `total` rows, `refused` among those of this run. */
  readonly rows: (done: number, refused: number) => void;
}

/**
 * Progress of a run over `total` rows, of which `before` were done by an earlier one.
 *
 * @param clock  Milliseconds from any beginning.
 */
export function progressOf(
  total: number,
  before: number,
  clock: () => number = () => performance.now(),
): Progress {
  const begun = clock();
  let last = begun;
  const say = (line: string) => process.stderr.write(`${line}\n`);
  return {
    say,
    rows: (done, refused) => {
      const now = clock();
      if (done < total && now - last < EVERY_MS) return;
      last = now;
      const seconds = Math.max((now - begun) / 1000, 1e-3);
      const percent = total === 0 ? 100 : Math.floor((100 * done) / total);
      const memory = process.memoryUsage.rss() / 1e6;
      say(
        `${grouped(done)} of ${grouped(total)} rows (${percent} %), ${grouped((done - before) / seconds)} rows/s, ${seconds.toFixed(0)} s, ${grouped(memory)} MB, ${grouped(refused)} refused`,
      );
    },
  };
}
