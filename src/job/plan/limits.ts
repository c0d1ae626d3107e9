/** Limits of a job at a test point: the test point's own before those of all outlets, a slot's own before those of all slots. */

import type { JobFile, JobLimit } from '../file/jobFile.js';
import { type PartName, partNames } from '../file/partNames.js';

/** Limits of level and ratio at a place; `null` where none is set. */
export interface LevelLimits {
  /** Lowest level in dBuV. */
  readonly minimumDbuv: number | null;
  /** Highest level in dBuV. */
  readonly maximumDbuv: number | null;
  /** Lowest carrier-to-noise ratio in dB. */
  readonly minimumRatioDb: number | null;
}

/** Outlets and receivers of the job, in the order of the trees. */
export function terminals(job: JobFile): readonly PartName[] {
  return (job.distribution?.trees ?? []).flatMap((tree, index) =>
    partNames(tree, `distribution.trees[${index}]`).filter(
      ({ kind }) => kind === 'outlet' || kind === 'receiver',
    ),
  );
}

/** Whether `outlets` in a limit means this test point: every outlet, and a receiver that hangs on none. */
function isOutlet(job: JobFile, testPoint: string): boolean {
  return terminals(job).some(
    ({ name, kind, behindOutlet }) =>
      name === testPoint && (kind === 'outlet' || (kind === 'receiver' && !behindOutlet)),
  );
}

/** The limit that holds for a quantity at a test point; undefined where none does. */
export function limitFor(
  job: JobFile,
  quantity: JobLimit['quantity'],
  testPoint: string,
  slot: string | undefined,
): JobLimit | undefined {
  const rank = (limit: JobLimit): number => {
    if (limit.quantity !== quantity) return 0;
    if (limit.slot !== undefined && limit.slot !== slot) return 0;
    const own = limit.testPoint === testPoint;
    const general = limit.testPoint === 'outlets' && isOutlet(job, testPoint);
    if (!own && !general) return 0;
    return 1 + (own ? 2 : 0) + (limit.slot !== undefined ? 1 : 0);
  };
  let best: JobLimit | undefined;
  for (const limit of job.limits ?? []) if (rank(limit) > (best ? rank(best) : 0)) best = limit;
  return best;
}

/** Ends of a limit in the unit of its quantity; a bit error ratio as ten times its logarithm. */
export function limitEnds(limit: JobLimit): { readonly lower?: number; readonly upper?: number } {
  const ends = (lower: number | undefined, upper: number | undefined) => ({
    ...(lower === undefined ? {} : { lower }),
    ...(upper === undefined ? {} : { upper }),
  });
  switch (limit.quantity) {
    case 'level':
      return ends(limit.minimumDbuv, limit.maximumDbuv);
    case 'noise-level':
      return ends(undefined, limit.maximumDbuv);
    case 'bit-error-ratio':
      return ends(undefined, 10 * Math.log10(limit.maximumRatio));
    case 'supply-voltage':
      return ends(limit.minimumV, limit.maximumV);
    default:
      return ends(limit.minimumDb, undefined);
  }
}

/** Limits of level and ratio at a place; a receiver without a limit of the job has its own window. */
export function limitsAt(job: JobFile, testPoint: string, slot: string): LevelLimits {
  const level = limitFor(job, 'level', testPoint, slot);
  const ratio = limitFor(job, 'carrier-to-noise', testPoint, slot);
  const { lower, upper } = level ? limitEnds(level) : {};
  return {
    minimumDbuv: lower ?? null,
    maximumDbuv: upper ?? null,
    minimumRatioDb: (ratio && limitEnds(ratio).lower) ?? null,
  };
}
