/** Isolation between outlets: how much a signal sent into one is weakened on its way to another. */

import { valueAt } from '../../numeric/columns.js';
import { byFrequency } from '../tree/byFrequency.js';
import { compiledTree, type Stage } from '../tree/compiledTree.js';
import type { DecibelsByFrequency, DistributionSystem } from '../tree/tree.js';
import { checkedFrequencies } from './outletLevels.js';

/** Isolation of two outlets. */
export interface OutletIsolation {
  /** The two outlets or receivers. */
  readonly between: readonly [string, string];
  /** Part at which their ways meet. */
  readonly at: string;
  /** Isolation by frequency in dB, in the order asked. */
  readonly isolationDb: readonly number[];
  /** Lowest of them in dB. */
  readonly lowestDb: number;
}

/** Weakening of an amplifier against its direction where nothing is known, dB (practice of the trade). */
const AMPLIFIER_REVERSE_DB = 30;
const LIMITS = { minimum: 0, maximum: 200 };

/** Weakening between two ports of the part where two ways meet. */
function portIsolation(stage: Stage, a: number, b: number): (frequencyMHz: number) => number {
  const { part, path } = stage;
  const value = (field: string, given: DecibelsByFrequency | undefined, usual: number) =>
    byFrequency(`${path}.${field}`, given ?? usual, LIMITS);
  if (part.kind === 'splitter') return value('isolationDb', part.isolationDb, 20);
  if (part.kind === 'switch') return value('isolationDb', part.isolationDb, 25);
  if (part.kind !== 'tap') return () => 0;
  if (a > 0 && b > 0) return value('tapIsolationDb', part.tapIsolationDb, 20);
  if (part.isolationDb !== undefined) return value('isolationDb', part.isolationDb, 0);
  // Without a figure, the coupler is taken to have a directivity of 10 dB over its tap value.
  const tap = byFrequency(`${path}.tapLossDb`, part.tapLossDb, LIMITS);
  return (frequencyMHz) => tap(frequencyMHz) + 10;
}

/** Loss of a part on the way, in either direction: never a gain. */
function lossOnWay(stage: Stage, port: number, upward: boolean, frequencyMHz: number): number {
  if (stage.part.kind === 'receiver') return 0;
  if (upward && (stage.part.kind === 'amplifier' || stage.part.kind === 'switch'))
    return Math.max(AMPLIFIER_REVERSE_DB, -stage.gainDb(frequencyMHz, port));
  return -stage.gainDb(frequencyMHz, port);
}

/**
 * Isolation between every two outlets or receivers that hang on different branches.
 *
 * From the first outlet upwards to the part where the ways meet, across its ports, and down to the second. Gains on
 * the way down count; an amplifier or switch lets 30 dB less back. The worse of the two directions is given.
 *
 * @throws {@link DomainError} as {@link outletLevels}.
 * Source: addition of decibels along the way; usual figures of splitters (20 dB), switches (25 dB) and couplers by practice of the
 * trade where the part gives none.
 * Accuracy: that of the parts' figures.
 * @example
 * ```ts
 * import { outletIsolation } from 'slantpath/distribution';
 * const [pair] = outletIsolation(
 *   {
 *     source: { levelDbuv: 75 },
 *     tree: {
 *       kind: 'splitter', lossDb: 4, isolationDb: 22,
 *       outputs: [{ kind: 'outlet', name: 'class 1', lossDb: 1 }, { kind: 'outlet', name: 'class 2', lossDb: 1 }],
 *     },
 *   },
 *   [950, 2150],
 * );
 * pair?.lowestDb; // => 24
 * ```
 */
export function outletIsolation(
  system: DistributionSystem,
  frequenciesMHz: ArrayLike<number>,
): readonly OutletIsolation[] {
  const stages = compiledTree(system);
  const frequencies = checkedFrequencies(frequenciesMHz);
  const ways = stages.flatMap((stage, index) =>
    stage.part.kind === 'outlet' || stage.part.kind === 'receiver' ? [wayUp(stages, index)] : [],
  );
  const results: OutletIsolation[] = [];
  ways.forEach((a, i) => {
    for (const b of ways.slice(i + 1)) {
      const found = between(stages, a, b, frequencies);
      if (found) results.push(found);
    }
  });
  return results;
}

/** Indices from a stage up to the first. */
function wayUp(stages: readonly Stage[], index: number): readonly number[] {
  const way: number[] = [];
  for (let at = index; at >= 0; at = (stages[at] as Stage).parent) way.push(at);
  return way;
}

function between(
  stages: readonly Stage[],
  a: readonly number[],
  b: readonly number[],
  frequencies: readonly number[],
): OutletIsolation | undefined {
  const inB = new Set(b);
  const meetingA = a.findIndex((index) => inB.has(index));
  const meeting = valueAt(a, meetingA);
  const meetingB = b.indexOf(meeting);
  // One behind the other: a receiver at an outlet has no branch to it.
  if (meetingA === 0 || meetingB === 0) return undefined;
  const stage = stages[meeting] as Stage;
  const portA = (stages[valueAt(a, meetingA - 1)] as Stage).port;
  const portB = (stages[valueAt(b, meetingB - 1)] as Stage).port;
  const across = portIsolation(stage, portA, portB);
  const along = (way: readonly number[], end: number, upward: boolean, f: number): number => {
    let loss = 0;
    for (let i = 0; i < end; i++) {
      const port = i === 0 ? 0 : (stages[valueAt(way, i - 1)] as Stage).port;
      loss += lossOnWay(stages[valueAt(way, i)] as Stage, port, upward, f);
    }
    return loss;
  };
  const isolationDb = frequencies.map((f) => {
    const forth = along(a, meetingA, true, f) + along(b, meetingB, false, f);
    const back = along(b, meetingB, true, f) + along(a, meetingA, false, f);
    return across(f) + Math.min(forth, back);
  });
  const names = [a, b].map((way) => (stages[valueAt(way, 0)] as Stage).name);
  return {
    between: names as unknown as readonly [string, string],
    at: stage.name,
    isolationDb,
    lowestDb: Math.min(...isolationDb),
  };
}
