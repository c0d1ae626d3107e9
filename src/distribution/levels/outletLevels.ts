/** Level, slope, noise and carrier-to-noise ratio at every outlet and receiver of a distribution. */

import { DomainError, object } from '../../errors.js';
import { valueAt } from '../../numeric/columns.js';
import { ratioToDb } from '../../numeric/decibel.js';
import { checkedFrequencyMHz } from '../cable/cable.js';
import { compiledTree, type Stage } from '../tree/compiledTree.js';
import type { DistributionSystem } from '../tree/tree.js';
import { dbuvToDbm } from './level.js';
import { passed, type Signal, signalsInto } from './signal.js';

/** Level at one place and frequency. */
export interface LevelPoint {
  /** Frequency in MHz. */
  readonly frequencyMHz: number;
  /** Level per carrier in dBuV at 75 ohm. */
  readonly levelDbuv: number;
  /** The same level in dBm. */
  readonly levelDbm: number;
  /** Noise in the carrier's bandwidth in dBuV at 75 ohm. */
  readonly noiseDbuv: number;
  /** Carrier-to-noise ratio in dB. */
  readonly carrierToNoiseDb: number;
}

/** What one part on the way does to the level. */
export interface LevelTerm {
  /** Name of the part. */
  readonly name: string;
  /** Kind of the part. */
  readonly kind: Stage['part']['kind'];
  /** Gain in dB by frequency, in the order asked; a loss is negative. */
  readonly gainDb: readonly number[];
}

/** Levels at an outlet or a receiver. */
export interface OutletLevels {
  /** Name of the outlet or receiver. */
  readonly name: string;
  /** `outlet`: behind the outlet. `receiver`: at its input, with the receiver's own noise counted in. */
  readonly kind: 'outlet' | 'receiver';
  /** The parts on the way from the source, in order. */
  readonly terms: readonly LevelTerm[];
  /** One point per frequency, in the order asked. */
  readonly points: readonly LevelPoint[];
  /** Level at the highest frequency less that at the lowest, in dB; negative where cable rules. */
  readonly slopeDb: number;
  /** Lowest level over the frequencies in dBuV. */
  readonly lowestDbuv: number;
  /** Highest level over the frequencies in dBuV. */
  readonly highestDbuv: number;
  /** Lowest carrier-to-noise ratio over the frequencies in dB. */
  readonly lowestCarrierToNoiseDb: number;
}

/** Guards the list of frequencies. */
export function checkedFrequencies(frequenciesMHz: ArrayLike<number>): number[] {
  object('frequenciesMHz', frequenciesMHz);
  if (!(frequenciesMHz.length > 0))
    throw new DomainError({
      code: 'empty',
      parameter: 'frequenciesMHz',
      received: frequenciesMHz,
      allowed: 'at least one frequency',
    });
  return Array.from(frequenciesMHz, (value, index) =>
    checkedFrequencyMHz('frequenciesMHz', value, index),
  );
}

/**
 * Level, slope, noise and carrier-to-noise ratio at every outlet and receiver of a distribution.
 *
 * Levels fall by the loss of each part and rise by gains. Noise follows the level, and each part adds its
 * own: a passive part k 290 K B (1 - 1/L), an amplifier k 290 K B (F - 1) at its input.
 *
 * @param system  Source, tree of parts and temperature.
 * @param frequenciesMHz  Intermediate or terrestrial frequencies in MHz, 5 to 10000, at least one.
 * @returns One entry per outlet and receiver, in the order of the tree.
 * @throws {@link DomainError} naming the part by its place, `tree.to.outputs[1].lengthM`.
 *
 * Source: addition of decibels; noise of cascaded parts after H. T. Friis (Proc. IRE 32, 1944).
 * Accuracy: exact to rounding for the losses and gains given.
 * @example
 * ```ts
 * import { genericCable, outletLevels } from 'slantpath/distribution';
 * const [hut] = outletLevels(
 *   {
 *     source: { levelDbuv: 75 },
 *     tree: { kind: 'cable', cable: genericCable('series-6'), lengthM: 40, to: { kind: 'outlet', name: 'hut' } },
 *   },
 *   [950, 2150],
 * );
 * hut?.points.map((point) => point.levelDbuv.toFixed(1)); // => ['66.7', '62.1']
 * ```
 */
export function outletLevels(
  system: DistributionSystem,
  frequenciesMHz: ArrayLike<number>,
): readonly OutletLevels[] {
  const stages = compiledTree(system);
  const frequencies = checkedFrequencies(frequenciesMHz);
  const { input, warm } = signalsInto(stages, system.source, frequencies);
  const results: OutletLevels[] = [];
  stages.forEach((stage, index) => {
    const { part } = stage;
    if (part.kind !== 'outlet' && part.kind !== 'receiver') return;
    const behind = passed(stage, 0, input[index] as Signal, frequencies, warm);
    results.push(summary(part.kind, index, stages, input, behind, frequencies));
  });
  return results;
}

function summary(
  kind: 'outlet' | 'receiver',
  index: number,
  stages: readonly Stage[],
  input: readonly Signal[],
  behind: Signal,
  frequencies: readonly number[],
): OutletLevels {
  const terms: LevelTerm[] = [];
  let gainDb = behind.gainDb;
  for (let at = index; at >= 0; ) {
    const { name, part, parent } = stages[at] as Stage;
    terms.unshift({ name, kind: part.kind, gainDb: gainDb.map((gain) => gain + 0) });
    gainDb = (input[at] as Signal).gainDb;
    at = parent;
  }
  const points = frequencies.map((frequencyMHz, i) => {
    const levelDbuv = valueAt(behind.levelDbuv, i);
    const noiseDbuv = ratioToDb(valueAt(behind.noise, i));
    return {
      frequencyMHz,
      levelDbuv,
      levelDbm: dbuvToDbm(levelDbuv),
      noiseDbuv,
      carrierToNoiseDb: levelDbuv - noiseDbuv,
    };
  });
  const byHeight = [...points].sort((a, b) => a.frequencyMHz - b.frequencyMHz);
  const low = byHeight[0] as LevelPoint;
  const high = byHeight[byHeight.length - 1] as LevelPoint;
  const levels = points.map((point) => point.levelDbuv);
  return {
    name: (stages[index] as Stage).name,
    kind,
    terms,
    points,
    slopeDb: high.levelDbuv - low.levelDbuv,
    lowestDbuv: Math.min(...levels),
    highestDbuv: Math.max(...levels),
    lowestCarrierToNoiseDb: Math.min(...points.map((point) => point.carrierToNoiseDb)),
  };
}
