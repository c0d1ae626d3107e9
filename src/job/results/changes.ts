/** Readings of a later visit against those of an earlier one: what changed, and what it means. */

import type { ReadingQuantity, ReadingVerdict } from './verdicts.js';
import { placeOf } from './verdicts.js';

/** One reading at both visits. */
export interface ReadingChange {
  /** Test point, slot, carrier and quantity of the reading. */
  readonly testPoint: string;
  readonly slot: string | null;
  readonly carrier: string | null;
  readonly quantity: ReadingQuantity;
  /** Unit of the values. */
  readonly unit: ReadingVerdict['unit'];
  /** Reading at the first visit. */
  readonly before: number;
  /** Reading at the later visit. */
  readonly after: number;
  /** Later less earlier. */
  readonly change: number;
  /** Standard uncertainty of the change, from both readings. */
  readonly standardUncertainty: number;
  /** Whether the change is more than twice its uncertainty. */
  readonly significant: boolean;
  /** Verdicts at both visits; `null` where no limit applied. */
  readonly verdictBefore: string | null;
  readonly verdictAfter: string | null;
}

/** All levels and ratios together, of one quantity. */
export interface PooledChange {
  readonly quantity: ReadingQuantity;
  /** Readings that it rests on. */
  readonly count: number;
  /** Mean of the changes in dB. */
  readonly meanDb: number;
  /** Standard uncertainty of that mean in dB, the readings' errors being independent. */
  readonly standardUncertaintyDb: number;
  /** Whether the mean is more than twice its uncertainty. */
  readonly significant: boolean;
}

/** What the changes mean, as a fixed word. */
export type ChangeMeaning =
  | 'no-common-readings'
  | 'unchanged'
  | 'all-lower-alike'
  | 'all-higher-alike'
  | 'one-slot-lower'
  | 'one-test-point-lower'
  | 'mixed';

/** What changed between two lists of verdicts. */
export interface Changes {
  /** Readings taken at both visits. */
  readonly readings: readonly ReadingChange[];
  /** Readings of the first visit that were not taken again, as `test point, slot, carrier, quantity`. */
  readonly notRepeated: readonly string[];
  /** Levels and ratios pooled, each quantity by itself. */
  readonly pooled: readonly PooledChange[];
  /** What the changes mean. */
  readonly meaning: ChangeMeaning;
}

/** Quantities in decibels that fall and rise with the signal. */
const POOLED = ['level', 'carrier-to-noise', 'modulation-error-ratio'] as const;

/** Least number of readings that are pooled. */
const LEAST_POOLED = 3;

/** Compares two lists of verdicts. */
export function changesBetween(
  first: readonly ReadingVerdict[],
  later: readonly ReadingVerdict[],
): Changes {
  const after = new Map(later.map((verdict) => [placeOf(verdict), verdict]));
  const readings = first.flatMap((verdict): ReadingChange[] => {
    const again = after.get(placeOf(verdict));
    // Where only an end is known, there is nothing to take a difference of.
    if (!again || again.bound !== null || verdict.bound !== null) return [];
    const change = again.reading - verdict.reading;
    const standardUncertainty = Math.hypot(verdict.standardUncertainty, again.standardUncertainty);
    return [
      {
        testPoint: verdict.testPoint,
        slot: verdict.slot,
        carrier: verdict.carrier,
        quantity: verdict.quantity,
        unit: verdict.unit,
        before: verdict.reading + 0,
        after: again.reading + 0,
        change,
        standardUncertainty,
        significant: Math.abs(change) > 2 * standardUncertainty,
        verdictBefore: verdict.decision?.verdict ?? null,
        verdictAfter: again.decision?.verdict ?? null,
      },
    ];
  });
  const pooled = POOLED.flatMap((quantity): PooledChange[] => {
    const of = readings.filter((reading) => reading.quantity === quantity);
    if (of.length < LEAST_POOLED) return [];
    const meanDb = of.reduce((sum, { change }) => sum + change, 0) / of.length;
    const standardUncertaintyDb =
      Math.sqrt(of.reduce((sum, { standardUncertainty: u }) => sum + u * u, 0)) / of.length;
    return [
      {
        quantity,
        count: of.length,
        meanDb,
        standardUncertaintyDb,
        significant: Math.abs(meanDb) > 2 * standardUncertaintyDb,
      },
    ];
  });
  return {
    readings,
    notRepeated: first
      .filter((verdict) => !after.has(placeOf(verdict)))
      .map(({ testPoint, slot, carrier, quantity }) =>
        [testPoint, slot, carrier, quantity].filter((part) => part !== null).join(', '),
      ),
    pooled,
    meaning: meaningOf(readings, pooled),
  };
}

/** Whether all changes agree with their mean. */
function alike(readings: readonly ReadingChange[]): boolean {
  const mean = readings.reduce((sum, { change }) => sum + change, 0) / readings.length;
  return readings.every(
    ({ change, standardUncertainty }) => Math.abs(change - mean) <= 2 * standardUncertainty,
  );
}

function meaningOf(all: readonly ReadingChange[], pooled: readonly PooledChange[]): ChangeMeaning {
  if (all.length === 0) return 'no-common-readings';
  const readings = all.filter(({ quantity }) => (POOLED as readonly string[]).includes(quantity));
  const changed = readings.filter(({ significant }) => significant);
  const otherChanged = all.some((reading) => reading.significant && !readings.includes(reading));
  const moved = pooled.filter(({ significant }) => significant);
  if (changed.length === 0) {
    const [strongest] = [...moved].sort(
      (a, b) =>
        Math.abs(b.meanDb) / b.standardUncertaintyDb - Math.abs(a.meanDb) / a.standardUncertaintyDb,
    );
    if (strongest) return strongest.meanDb < 0 ? 'all-lower-alike' : 'all-higher-alike';
    return otherChanged ? 'mixed' : 'unchanged';
  }
  const lower = changed.filter(({ change }) => change < 0);
  if (changed.length === readings.length && readings.length > 1 && alike(readings))
    return lower.length > changed.length / 2 ? 'all-lower-alike' : 'all-higher-alike';
  // Some stand out, the others moved the same way by less than their uncertainty: still all alike.
  const byQuantity = POOLED.map((quantity) =>
    readings.filter((reading) => reading.quantity === quantity),
  ).filter(({ length }) => length >= LEAST_POOLED);
  if (moved.length > 0 && byQuantity.length > 0 && byQuantity.every(alike))
    return (moved[0]?.meanDb ?? 0) < 0 ? 'all-lower-alike' : 'all-higher-alike';
  if (lower.length !== changed.length) return 'mixed';
  const only = (field: 'slot' | 'testPoint') => {
    const names = new Set(lower.map((reading) => reading[field]));
    const [name] = names;
    return (
      names.size === 1 &&
      readings.every((reading) => reading[field] !== name || reading.significant) &&
      readings.some((reading) => reading[field] !== name)
    );
  };
  if (only('testPoint')) return 'one-test-point-lower';
  return only('slot') ? 'one-slot-lower' : 'mixed';
}
