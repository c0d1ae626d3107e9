/** Level, slope, noise and carrier-to-noise ratio at every outlet and receiver of a distribution. */

import { BOLTZMANN_DBW_PER_K_HZ, REFERENCE_TEMPERATURE_K } from '../constants.js';
import { DomainError, inRange, object } from '../errors.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';
import { byFrequency } from './byFrequency.js';
import { checkedFrequencyMHz } from './cable.js';
import { compiledTree, type Stage } from './compiledTree.js';
import { dbmToDbuv, dbuvToDbm } from './level.js';
import type { DistributionSource, DistributionSystem } from './tree.js';

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

/** Signal behind a stage: level and noise power per frequency, noise as a ratio to one microvolt squared. */
interface Signal {
  readonly levelDbuv: number[];
  readonly noise: number[];
  readonly gainDb: number[];
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

/** Noise of a warm 75 ohm line in a bandwidth, k 290 K B, as dBuV. */
export function warmNoiseDbuv(bandwidthMHz: number): number {
  return dbmToDbuv(
    BOLTZMANN_DBW_PER_K_HZ + 10 * Math.log10(REFERENCE_TEMPERATURE_K * bandwidthMHz) + 90,
  );
}

/** Guards a source and gives its level and noise per frequency. */
export function sourceSignal(source: DistributionSource, frequencies: readonly number[]): Signal {
  object('source', source);
  const level = byFrequency('source.levelDbuv', source.levelDbuv, { minimum: -50, maximum: 150 });
  const bandwidthMHz = inRange('source.bandwidthMHz', source.bandwidthMHz ?? 27.5, 0.001, 2500);
  const warm = dbToRatio(warmNoiseDbuv(bandwidthMHz));
  const ratio =
    source.carrierToNoiseDb === undefined
      ? undefined
      : byFrequency('source.carrierToNoiseDb', source.carrierToNoiseDb, {
          minimum: -20,
          maximum: 100,
        });
  const levelDbuv = frequencies.map(level);
  return {
    levelDbuv,
    noise: frequencies.map((frequencyMHz, index) =>
      ratio ? dbToRatio((levelDbuv[index] as number) - ratio(frequencyMHz)) : warm,
    ),
    gainDb: [],
  };
}

/** Signal behind a port of a stage. */
export function passed(
  stage: Stage,
  port: number,
  input: Pick<Signal, 'levelDbuv' | 'noise'>,
  frequencies: readonly number[],
  warm: number,
): Signal {
  let gainDb = frequencies.map((frequencyMHz) => stage.gainDb(frequencyMHz, port));
  const { part } = stage;
  if (part.kind === 'amplifier' && part.automaticGain !== undefined) {
    const { outputLevelDbuv, rangeDb } = part.automaticGain;
    const mean =
      gainDb.reduce((sum, gain, index) => sum + gain + (input.levelDbuv[index] as number), 0) /
      gainDb.length;
    const fall = Math.min(rangeDb, Math.max(0, mean - outputLevelDbuv));
    gainDb = gainDb.map((gain) => gain - fall);
  }
  const levelDbuv = gainDb.map((gain, index) => (input.levelDbuv[index] as number) + gain);
  const noise = gainDb.map((gain, index) => {
    const noiseFactor = dbToRatio(noiseFigureDb(stage, gain));
    return dbToRatio(gain) * ((input.noise[index] as number) + warm * (noiseFactor - 1));
  });
  return { levelDbuv, noise, gainDb };
}

/** Noise figure of a part: that of an amplifier, else its loss (a passive part at 290 K). */
function noiseFigureDb({ part }: Stage, gainDb: number): number {
  if (part.kind === 'amplifier') return part.noiseFigureDb;
  if (part.kind === 'switch' && gainDb > 0) return part.noiseFigureDb ?? 8;
  if (part.kind === 'receiver') return part.noiseFigureDb ?? 10;
  return Math.max(0, -gainDb);
}

/** Signals behind every stage towards the port of each child; key is the child's index. */
export function signalsInto(
  stages: readonly Stage[],
  source: DistributionSource,
  frequencies: readonly number[],
): { readonly input: Signal[]; readonly warm: number } {
  const warm = dbToRatio(warmNoiseDbuv(source.bandwidthMHz ?? 27.5));
  const first = sourceSignal(source, frequencies);
  const input: Signal[] = [];
  for (const stage of stages) {
    const parent = stages[stage.parent];
    const before = input[stage.parent];
    input.push(parent && before ? passed(parent, stage.port, before, frequencies, warm) : first);
  }
  return { input, warm };
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
    terms.unshift({ name, kind: part.kind, gainDb });
    gainDb = (input[at] as Signal).gainDb;
    at = parent;
  }
  const points = frequencies.map((frequencyMHz, i) => {
    const levelDbuv = behind.levelDbuv[i] as number;
    const noiseDbuv = ratioToDb(behind.noise[i] as number);
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
