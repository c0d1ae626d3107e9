/** Whether amplifiers are overloaded when they carry many carriers. */

import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { ratioToDb, sumPowerDbm } from '../../numeric/decibel.js';
import { compiledTree } from '../tree/compiledTree.js';
import type { DistributionSystem } from '../tree/tree.js';
import { checkedFrequencies } from './outletLevels.js';
import { passed, type Signal, signalsInto } from './signal.js';

/** Load of an amplifier. */
export interface AmplifierLoad {
  /** Name of the amplifier. */
  readonly name: string;
  /** Highest output level of a carrier in dBuV. */
  readonly highestOutputDbuv: number;
  /** Power of all carriers together at the output in dBuV. */
  readonly totalOutputDbuv: number;
  /** Ratio of a carrier to the third-order products in its channel, in dB; `null` where the part gives no highest output level. */
  readonly thirdOrderRatioDb: number | null;
  /** Highest output level per carrier that keeps the required ratio, in dBuV; `null` as above. */
  readonly allowedOutputDbuv: number | null;
  /** Allowed less highest output level, in dB; negative where the amplifier is overloaded; `null` as above. */
  readonly headroomDb: number | null;
}

/** What the amplifiers must carry and keep. */
export interface AmplifierLoadOptions {
  /** Carriers on the cable, 2 or more; the count of frequencies by default. */
  readonly carrierCount?: number;
  /** Ratio of carrier to third-order products to be kept, in dB; 20 by default. */
  readonly requiredRatioDb?: number;
}

const AMPLIFIER_LOAD_KEYS = {
  carrierCount: true,
  requiredRatioDb: true,
  frequenciesMHz: true,
} satisfies Keys<Parameters<typeof amplifierLoads>[1]>;

/**
 * Triple beats that fall into a channel in the middle of `count` evenly spaced carriers, 3 n^2 / 8; for two and three
 * carriers the one product that there is.
 */
function beats(count: number): number {
  return Math.max(1, (3 * count * count) / 8);
}

/**
 * Ratio of a carrier to third-order products with `count` equal carriers, where two carriers at `ratedDbuv` give
 * 35 dB: two decibels for each decibel of level; a triple beat is 6 dB above a product of two.
 */
function thirdOrderRatioDb(ratedDbuv: number, levelDbuv: number, count: number): number {
  const two = 35 + 2 * (ratedDbuv - levelDbuv);
  return count < 3 ? two : two - 6 - ratioToDb(beats(count));
}

/**
 * Load of every amplifier of a distribution with many carriers, and its headroom.
 *
 * @param system  The distribution; amplifiers give `maximumOutputDbuv`, two carriers with products 35 dB below.
 * @param load  Frequencies in MHz, how many carriers, and the ratio to be kept.
 * @throws {@link DomainError} as {@link outletLevels}, or naming `carrierCount`, `requiredRatioDb`.
 * Source: third-order products of equal carriers, 3 n^2 / 8 triple beats in the middle channel (cable television engineering);
 * rating by two carriers at 35 dB as in EN 60728-3 for satellite amplifiers (from memory).
 * Accuracy: 1 to 2 dB in practice, since real carriers are neither equal nor evenly spaced.
 * @example
 * ```ts
 * import { amplifierLoads } from 'slantpath/distribution';
 * const [load] = amplifierLoads(
 *   {
 *     source: { levelDbuv: 75 },
 *     tree: {
 *       kind: 'amplifier', gainDb: 20, noiseFigureDb: 6, maximumOutputDbuv: 115,
 *       to: { kind: 'outlet', name: 'hall' },
 *     },
 *   },
 *   { frequenciesMHz: [950, 2150], carrierCount: 30 },
 * );
 * load?.headroomDb?.toFixed(1); // => '11.9'
 * ```
 */
export function amplifierLoads(
  system: DistributionSystem,
  load: AmplifierLoadOptions & { readonly frequenciesMHz: ArrayLike<number> },
): readonly AmplifierLoad[] {
  const stages = compiledTree(system);
  knownOnly('load', load, AMPLIFIER_LOAD_KEYS);
  const frequencies = checkedFrequencies(load.frequenciesMHz);
  const count = inRange(
    'carrierCount',
    load.carrierCount ?? Math.max(2, frequencies.length),
    2,
    1000,
  );
  const required = inRange('requiredRatioDb', load.requiredRatioDb ?? 20, 0, 80);
  const { input, warm } = signalsInto(stages, system.source, frequencies);
  return stages.flatMap((stage, index): AmplifierLoad[] => {
    if (stage.part.kind !== 'amplifier') return [];
    const { levelDbuv } = passed(stage, 0, input[index] as Signal, frequencies, warm);
    const highestOutputDbuv = Math.max(...levelDbuv);
    const meanPower = sumPowerDbm(levelDbuv) - ratioToDb(levelDbuv.length);
    const rated = stage.part.maximumOutputDbuv;
    const ratio = rated === undefined ? null : thirdOrderRatioDb(rated, highestOutputDbuv, count);
    return [
      {
        name: stage.name,
        highestOutputDbuv,
        totalOutputDbuv: meanPower + ratioToDb(count),
        thirdOrderRatioDb: ratio,
        allowedOutputDbuv: ratio === null ? null : highestOutputDbuv + (ratio - required) / 2,
        headroomDb: ratio === null ? null : (ratio - required) / 2,
      },
    ];
  });
}
