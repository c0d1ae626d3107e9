/** Level and noise on their way through the parts of a tree. */

import { BOLTZMANN_DBW_PER_K_HZ, REFERENCE_TEMPERATURE_K } from '../../constants.js';
import { inRange } from '../../errors.js';
import { known } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { dbToRatio } from '../../numeric/decibel.js';
import { byFrequency } from '../tree/byFrequency.js';
import type { Stage } from '../tree/compiledTree.js';
import type { DistributionSource } from '../tree/tree.js';
import { DISTRIBUTION_SOURCE_KEYS } from '../tree/tree.js';
import { dbmToDbuv } from './level.js';

/** Signal behind a stage: level and noise power per frequency, noise as a ratio to one microvolt squared. */
export interface Signal {
  readonly levelDbuv: number[];
  readonly noise: number[];
  readonly gainDb: number[];
}

/** Noise of a warm 75 ohm line in a bandwidth, k 290 K B, as dBuV. */
function warmNoiseDbuv(bandwidthMHz: number): number {
  return dbmToDbuv(
    BOLTZMANN_DBW_PER_K_HZ + 10 * Math.log10(REFERENCE_TEMPERATURE_K * bandwidthMHz) + 90,
  );
}

/** Guards a source and gives its level and noise per frequency. */
function sourceSignal(source: DistributionSource, frequencies: readonly number[]): Signal {
  known('source', source, DISTRIBUTION_SOURCE_KEYS);
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
      ratio ? dbToRatio(valueAt(levelDbuv, index) - ratio(frequencyMHz)) : warm,
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
      gainDb.reduce((sum, gain, index) => sum + gain + valueAt(input.levelDbuv, index), 0) /
      gainDb.length;
    const fall = Math.min(rangeDb, Math.max(0, mean - outputLevelDbuv));
    gainDb = gainDb.map((gain) => gain - fall);
  }
  const levelDbuv = gainDb.map((gain, index) => valueAt(input.levelDbuv, index) + gain);
  const noise = gainDb.map((gain, index) => {
    const noiseFactor = dbToRatio(noiseFigureDb(stage, gain));
    return dbToRatio(gain) * (valueAt(input.noise, index) + warm * (noiseFactor - 1));
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
