/** Noise of a receiving system: noise figures, stages in a row, and the whole at the amplifier's input. */

import { checkedLossDb } from '../../antenna/internal.js';
import { REFERENCE_TEMPERATURE_K } from '../../constants.js';
import { DomainError, finite, inRange, object } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';

/**
 * Noise temperature in kelvin, 0 or more, of a noise figure in decibels: 290 (10^(NF/10) - 1).
 *
 * @throws {@link DomainError} naming `noiseFigureDb` where it is not from 0 to 100.
 *
 * Source: IEEE definition of noise figure, reference 290 K. Accuracy: rounding only.
 * @example
 * ```ts
 * import { noiseFigureToTemperature } from 'slantpath/link';
 * noiseFigureToTemperature(1.5).toFixed(2); // => '119.64'
 * ```
 */
export function noiseFigureToTemperature(noiseFigureDb: number): number {
  return REFERENCE_TEMPERATURE_K * (dbToRatio(inRange('noiseFigureDb', noiseFigureDb, 0, 100)) - 1);
}

/**
 * Noise figure in decibels, 0 or more, of a noise temperature in kelvin: 10 log10(1 + T / 290).
 *
 * @throws {@link DomainError} naming `temperatureK` where it is not from 0 to 1e9.
 *
 * Source: IEEE definition of noise figure, reference 290 K. Accuracy: rounding only.
 * @example
 * ```ts
 * import { temperatureToNoiseFigure } from 'slantpath/link';
 * temperatureToNoiseFigure(290).toFixed(4); // => '3.0103'
 * ```
 */
export function temperatureToNoiseFigure(temperatureK: number): number {
  return ratioToDb(1 + inRange('temperatureK', temperatureK, 0, 1e9) / REFERENCE_TEMPERATURE_K);
}

/** A stage of a receiving chain: what it adds at its own input, and its gain. */
export interface NoiseStage {
  /** Noise temperature of the stage at its own input in kelvin, 0 to 1e9. */
  readonly noiseTemperatureK: number;
  /** Gain in dB, -200 to 200; a loss is a negative gain. */
  readonly gainDb: number;
}

const NOISE_STAGE_KEYS = { noiseTemperatureK: true, gainDb: true } satisfies Keys<NoiseStage>;

/**
 * Noise temperature in kelvin of stages in a row, at the input of the first (Friis):
 * T1 + T2 / G1 + T3 / (G1 G2) + ...
 *
 * @param stages  At least one, first the one that the signal meets first.
 * @throws {@link DomainError} `empty` for no stage; otherwise naming the bad field by its path.
 *
 * Source: H. T. Friis, Noise figures of radio receivers, Proc. IRE 32 (1944), p. 419. Accuracy: rounding only.
 * @example
 * ```ts
 * import { cascadeNoise } from 'slantpath/link';
 * const stages = [
 *   { noiseTemperatureK: 20, gainDb: 30 },
 *   { noiseTemperatureK: 360, gainDb: 10 },
 *   { noiseTemperatureK: 1000, gainDb: 0 },
 * ];
 * cascadeNoise(stages).toFixed(2); // => '20.46'
 * ```
 */
export function cascadeNoise(stages: readonly NoiseStage[]): number {
  if (!Array.isArray(object('stages', stages)) || stages.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'stages',
      received: stages,
      allowed: 'at least one stage',
    });
  let temperatureK = 0;
  let gainRatio = 1;
  stages.forEach((stage, index) => {
    const path = `stages[${index}]`;
    const { noiseTemperatureK, gainDb } = known(path, stage, NOISE_STAGE_KEYS);
    temperatureK += inRange(`${path}.noiseTemperatureK`, noiseTemperatureK, 0, 1e9) / gainRatio;
    gainRatio *= dbToRatio(inRange(`${path}.gainDb`, gainDb, -200, 200));
  });
  return finite('stages', temperatureK);
}

/** Input of {@link systemNoise}. */
export interface SystemNoiseInput {
  /** Noise temperature of the antenna at its flange in kelvin, 0 to 1e6. */
  readonly antennaNoiseK: number;
  /** Loss between flange and amplifier in dB, 0 or more; default 0. */
  readonly feedLossDb?: number;
  /** Physical temperature of that loss in kelvin, 0 to 400; default 290. */
  readonly feedTemperatureK?: number;
  /** Noise temperature in kelvin of all from the amplifier's input on, 0 to 1e6: see {@link cascadeNoise}. */
  readonly receiverNoiseK: number;
}

const SYSTEM_NOISE_INPUT_KEYS = {
  antennaNoiseK: true,
  feedLossDb: true,
  feedTemperatureK: true,
  receiverNoiseK: true,
} satisfies Keys<SystemNoiseInput>;

/** System noise at the amplifier's input with its terms in the order of the hand calculation. */
export interface SystemNoise {
  /** Antenna noise after the feed's loss, in kelvin. */
  readonly antennaContributionK: number;
  /** What the feed's loss radiates, in kelvin. */
  readonly feedContributionK: number;
  /** The amplifier and all behind it, in kelvin. */
  readonly receiverContributionK: number;
  /** The sum, at the amplifier's input. */
  readonly systemNoiseK: number;
}

/**
 * System noise temperature at the amplifier's input: T_ant / L + T_feed (1 - 1 / L) + T_receiver.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: IEEE definition of noise temperature; T. Pratt and others, Satellite Communications, link design chapter.
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { systemNoise } from 'slantpath/link';
 * systemNoise({ antennaNoiseK: 35, receiverNoiseK: 100 }).systemNoiseK; // => 135
 * ```
 */
export function systemNoise(chain: SystemNoiseInput): SystemNoise {
  const input = knownOnly('chain', chain, SYSTEM_NOISE_INPUT_KEYS);
  return systemNoiseTerms(
    inRange('antennaNoiseK', input.antennaNoiseK, 0, 1e6),
    checkedLossDb('feedLossDb', input.feedLossDb ?? 0),
    inRange('feedTemperatureK', input.feedTemperatureK ?? 290, 0, 400),
    inRange('receiverNoiseK', input.receiverNoiseK, 0, 1e6),
  );
}

/** The sum behind {@link systemNoise}, without checks. */
export function systemNoiseTerms(
  antennaNoiseK: number,
  feedLossDb: number,
  feedTemperatureK: number,
  receiverNoiseK: number,
): SystemNoise {
  const throughRatio = dbToRatio(-feedLossDb);
  const antennaContributionK = antennaNoiseK * throughRatio;
  const feedContributionK = feedTemperatureK * (1 - throughRatio);
  return {
    antennaContributionK,
    feedContributionK,
    receiverContributionK: receiverNoiseK,
    systemNoiseK: antennaContributionK + feedContributionK + receiverNoiseK,
  };
}
