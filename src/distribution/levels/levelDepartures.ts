/** Where measured levels depart from the tree. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { checkedFrequencyMHz } from '../cable/cable.js';
import { compiledTree, type Stage } from '../tree/compiledTree.js';
import type { DistributionSystem } from '../tree/tree.js';
import { outletLevels } from './outletLevels.js';

/** A level measured at an outlet or receiver. */
export interface MeasuredLevel {
  /** Name of the outlet or receiver. */
  readonly name: string;
  /** Frequency in MHz. */
  readonly frequencyMHz: number;
  /** Level in dBuV at 75 ohm. */
  readonly levelDbuv: number;
}

const MEASURED_LEVEL_KEYS = {
  name: true,
  frequencyMHz: true,
  levelDbuv: true,
} satisfies Keys<MeasuredLevel>;

/** Departures, and the part at which they begin. */
export interface LevelDepartures {
  /** `as-planned`: none beyond the tolerance. `common-part`: all of them lie behind one part and no good reading does. `scattered`: they do not. */
  readonly kind: 'as-planned' | 'common-part' | 'scattered';
  /** The part nearest to the outlets that all departing readings share and no good one does; else `null`. */
  readonly part: string | null;
  /** Every reading with its plan. */
  readonly readings: readonly {
    /** Name of the outlet or receiver. */
    readonly name: string;
    /** Frequency in MHz. */
    readonly frequencyMHz: number;
    /** Planned level in dBuV. */
    readonly plannedDbuv: number;
    /** Measured less planned in dB. */
    readonly differenceDb: number;
    /** Whether the difference exceeds the tolerance. */
    readonly departs: boolean;
  }[];
}

const LEVEL_DEPARTURES_MEASURED_KEYS = { levels: true, toleranceDb: true } satisfies Keys<
  Parameters<typeof levelDepartures>[1]
>;

/**
 * Compares measured levels with the tree and finds the part behind which they depart.
 *
 * @param system  The distribution as planned.
 * @param measured  Levels, and the tolerance of a difference in dB, 3 by default.
 * @throws {@link DomainError} naming `levels[i]`.
 * Source: {@link outletLevels}; the common part is the deepest on the way to every departing outlet.
 * Accuracy: that of the plan and the readings.
 * @example
 * ```ts
 * import { levelDepartures } from 'slantpath/distribution';
 * const found = levelDepartures(
 *   {
 *     source: { levelDbuv: 70 },
 *     tree: {
 *       kind: 'splitter', lossDb: 4,
 *       outputs: [
 *         { kind: 'connector', name: 'wall joint', lossDb: 0.2, to: { kind: 'outlet', name: 'a' } },
 *         { kind: 'outlet', name: 'b' },
 *       ],
 *     },
 *   },
 *   { levels: [{ name: 'a', frequencyMHz: 1200, levelDbuv: 57 }, { name: 'b', frequencyMHz: 1200, levelDbuv: 66.4 }] },
 * );
 * found.part; // => 'wall joint'
 * ```
 */
export function levelDepartures(
  system: DistributionSystem,
  measured: { readonly levels: readonly MeasuredLevel[]; readonly toleranceDb?: number },
): LevelDepartures {
  const stages = compiledTree(system);
  knownOnly('measured', measured, LEVEL_DEPARTURES_MEASURED_KEYS);
  const tolerance = inRange('toleranceDb', measured.toleranceDb ?? 3, 0, 60);
  if (!Array.isArray(measured.levels) || measured.levels.length === 0)
    throw new DomainError({
      code: measured.levels === undefined ? 'missing' : 'empty',
      parameter: 'levels',
      received: measured.levels,
      allowed: 'a list of at least one level',
    });
  const readings = measured.levels.map((entry: MeasuredLevel, index) => {
    known(`levels[${index}]`, entry, MEASURED_LEVEL_KEYS);
    const frequencyMHz = checkedFrequencyMHz(`levels[${index}].frequencyMHz`, entry.frequencyMHz);
    const levelDbuv = inRange(`levels[${index}].levelDbuv`, entry.levelDbuv, -60, 160);
    const planned = outletLevels(system, [frequencyMHz]).find(({ name }) => name === entry.name);
    const plannedDbuv = planned?.points[0]?.levelDbuv;
    if (plannedDbuv === undefined)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `levels[${index}].name`,
        received: entry.name,
        allowed: 'the name of an outlet or receiver of the tree',
      });
    const differenceDb = levelDbuv - plannedDbuv;
    return {
      name: entry.name,
      frequencyMHz,
      plannedDbuv,
      differenceDb,
      departs: Math.abs(differenceDb) > tolerance,
    };
  });
  const ways = readings.map(({ name, departs }) => ({ way: wayFrom(stages, name), departs }));
  const bad = ways.filter(({ departs }) => departs).map(({ way }) => way);
  const good = ways.filter(({ departs }) => !departs).map(({ way }) => way);
  const [first, ...others] = bad;
  if (first === undefined) return { kind: 'as-planned', part: null, readings };
  // Parts that every departing reading passes and no good one does, from the outlets upwards.
  const suspects = first.filter(
    (index) =>
      others.every((way) => way.includes(index)) && !good.some((way) => way.includes(index)),
  );
  const [nearest] = suspects;
  return nearest === undefined
    ? { kind: 'scattered', part: null, readings }
    : { kind: 'common-part', part: (stages[blamed(stages, suspects)] as Stage).name, readings };
}

/** Of suspects from the outlet upwards the first that is not the outlet itself. */
function blamed(stages: readonly Stage[], suspects: readonly number[]): number {
  const isEnd = (index: number): boolean => {
    const { kind } = (stages[index] as Stage).part;
    return kind === 'outlet' || kind === 'receiver';
  };
  return suspects.find((index) => !isEnd(index)) ?? valueAt(suspects, 0);
}

function wayFrom(stages: readonly Stage[], name: string): readonly number[] {
  const way: number[] = [];
  for (let at = stages.findIndex((stage) => stage.name === name); at >= 0; ) {
    way.push(at);
    at = (stages[at] as Stage).parent;
  }
  return way;
}
