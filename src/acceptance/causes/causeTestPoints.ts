/** Test points of a distribution tree for the search of causes. */

import type { DistributionPart } from '../../distribution/index.js';
import { checkedFrequencies, compiledTree, type Stage } from '../../distribution/internal.js';
import { type Keys, knownOnly } from '../../keys.js';
import { entryAt, valueAt } from '../../numeric/columns.js';
import type { CauseTestPoint } from './installation.js';

const CAUSE_TEST_POINT_OPTIONS_KEYS = {
  frequenciesMHz: true,
  temperatureC: true,
} satisfies Keys<Parameters<typeof causeTestPoints>[1]>;

/**
 * Test points of a tree: every outlet and receiver, and the input of every part at which the tree branches.
 *
 * Losses are those of the tree at the given frequencies; each point says which one feeds it, so that a
 * segment of cable can be blamed by the readings on both sides.
 *
 * @param tree  The tree behind the outdoor units.
 * @param options  Frequencies of the carriers in MHz; temperature of cables in degrees Celsius, 20 by default.
 * @throws {@link DomainError} as `outletLevels`.
 * Source: the tree itself. Automatic gain is taken at its full gain.
 * Accuracy: as `outletLevels`.
 * @example
 * ```ts
 * import { causeTestPoints } from 'slantpath/acceptance';
 * const points = causeTestPoints(
 *   {
 *     kind: 'splitter', name: 'splitter', lossDb: 4,
 *     outputs: [{ kind: 'outlet', name: 'class 1' }, { kind: 'outlet', name: 'class 2' }],
 *   },
 *   { frequenciesMHz: [1200, 1800] },
 * );
 * points.map(({ name }) => name); // => ['splitter', 'class 1', 'class 2']
 * ```
 */
export function causeTestPoints(
  tree: DistributionPart,
  options: { readonly frequenciesMHz: ArrayLike<number>; readonly temperatureC?: number },
): readonly CauseTestPoint[] {
  knownOnly('options', options, CAUSE_TEST_POINT_OPTIONS_KEYS);
  const stages = compiledTree({
    source: { levelDbuv: 0 },
    tree,
    ...(options.temperatureC === undefined ? {} : { temperatureC: options.temperatureC }),
  });
  const frequencies = [...new Set(checkedFrequencies(options.frequenciesMHz))].sort(
    (a, b) => a - b,
  );
  const children = new Map<number, number>();
  for (const { parent } of stages) children.set(parent, (children.get(parent) ?? 0) + 1);
  const isPoint = (stage: Stage, index: number): boolean =>
    stage.part.kind === 'outlet' ||
    stage.part.kind === 'receiver' ||
    (children.get(index) ?? 0) > 1;
  // Gain from the source to the input of each stage, and what lies between it and the point before.
  const gains: number[][] = [];
  const before: (string | undefined)[] = [];
  const amplified: number[] = [];
  const points: CauseTestPoint[] = [];
  stages.forEach((stage, index) => {
    const parent = stages[stage.parent];
    const above = gains[stage.parent];
    gains.push(
      frequencies.map((f, i) =>
        parent && above ? valueAt(above, i) + parent.gainDb(f, stage.port) : 0,
      ),
    );
    const parentIsPoint = parent !== undefined && isPoint(parent, stage.parent);
    before.push(parentIsPoint ? parent.name : before[stage.parent]);
    const carried = parentIsPoint ? 0 : (amplified[stage.parent] ?? 0);
    amplified.push(carried + (stage.part.kind === 'amplifier' ? meanGain(stage, frequencies) : 0));
    if (!isPoint(stage, index)) return;
    const isEnd = stage.part.kind === 'outlet';
    const behind = before[index];
    points.push({
      name: stage.name,
      ...(behind === undefined ? {} : { behind }),
      lossDb: frequencies.map((frequencyMHz, i) => ({
        frequencyMHz,
        valueDb:
          0 - valueAt(entryAt(gains, index), i) - (isEnd ? stage.gainDb(frequencyMHz, 0) : 0),
      })),
      ...(amplified[index] ? { amplifierGainDb: amplified[index] } : {}),
    });
  });
  return points;
}

function meanGain(stage: Stage, frequencies: readonly number[]): number {
  const sum = frequencies.reduce((total, f) => total + stage.gainDb(f, 0), 0);
  return Math.max(0, sum / frequencies.length);
}
