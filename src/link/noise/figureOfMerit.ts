/** Figure of merit of a receiving system. */

import { checkedLossDb } from '../../antenna/internal.js';
import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { ratioToDb } from '../../numeric/decibel.js';

/** Returns a system noise temperature of 0.01 to 1e7 K, otherwise throws. */
export function checkedSystemNoiseK(systemNoiseK: number, parameter = 'systemNoiseK'): number {
  return inRange(parameter, systemNoiseK, 0.01, 1e7, 'is the temperature in kelvin?');
}

const FIGURE_OF_MERIT_RECEIVER_KEYS = {
  antennaGainDbi: true,
  feedLossDb: true,
  systemNoiseK: true,
} satisfies Keys<Parameters<typeof figureOfMerit>[0]>;

/**
 * Figure of merit G/T in dB/K at the amplifier's input: antenna gain less the loss before the amplifier, less
 * 10 log10 of the system noise temperature there.
 *
 * @param receiver  `antennaGainDbi` -100 to 100 at the flange; `feedLossDb` 0 or more, default 0; `systemNoiseK`
 *   0.01 to 1e7 at the amplifier's input.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: ITU-R S.733 (G/T of earth stations). Accuracy: rounding only.
 * @example
 * ```ts
 * import { figureOfMerit } from 'slantpath/link';
 * figureOfMerit({ antennaGainDbi: 45, systemNoiseK: 97 }).toFixed(2); // => '25.13'
 * ```
 */
export function figureOfMerit(receiver: {
  readonly antennaGainDbi: number;
  readonly feedLossDb?: number;
  readonly systemNoiseK: number;
}): number {
  const input = known('receiver', receiver, FIGURE_OF_MERIT_RECEIVER_KEYS);
  const gainDbi = inRange('antennaGainDbi', input.antennaGainDbi, -100, 100);
  const feedLossDb = checkedLossDb('feedLossDb', input.feedLossDb ?? 0);
  return gainDbi - feedLossDb - ratioToDb(checkedSystemNoiseK(input.systemNoiseK));
}
