/** What an antenna hears besides the satellite: sky, rain and ground. */

import { checkedLossDb } from '../../antenna/internal.js';
import { COSMIC_BACKGROUND_K } from '../../constants.js';
import { inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { dbToRatio } from '../../numeric/decibel.js';

/** Input of {@link antennaNoise}. */
export interface AntennaNoiseInput {
  /**
   * Attenuation along the path by what absorbs, in dB, 0 or more: gas, cloud and rain, without
   * scintillation and free-space loss.
   */
  readonly absorptionDb: number;
  /** Mean radiating temperature of air and rain in kelvin, 100 to 350; default 275 (P.618 without local data). */
  readonly meanRadiatingTemperatureK?: number;
  /** Share of the antenna's pattern that looks at the ground, 0 to 1; default 0.06 (practice for a small offset reflector). */
  readonly groundShareRatio?: number;
  /** Temperature of the ground in kelvin, 0 to 350; default 290. */
  readonly groundTemperatureK?: number;
}

const ANTENNA_NOISE_INPUT_KEYS = {
  absorptionDb: true,
  meanRadiatingTemperatureK: true,
  groundShareRatio: true,
  groundTemperatureK: true,
} satisfies Keys<AntennaNoiseInput>;

/** Antenna noise with its terms in the order of the hand calculation. */
export interface AntennaNoise {
  /** What air and rain radiate, in kelvin. */
  readonly mediumNoiseK: number;
  /** What is left of the cosmic background, in kelvin. */
  readonly backgroundNoiseK: number;
  /** Brightness of the sky along the path: the sum of both. */
  readonly skyNoiseK: number;
  /** What the share of the pattern on the ground adds, in kelvin. */
  readonly groundNoiseK: number;
  /** Noise temperature of the antenna: sky weighted with what is not ground, plus ground. */
  readonly antennaNoiseK: number;
}

/**
 * Noise temperature of an antenna that looks through an absorbing sky.
 *
 * sky = T_m (1 - 10^(-A/10)) + 2.7 * 10^(-A/10), antenna = (1 - s) sky + s T_ground.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: ITU-R P.618-14, section 3, equations 69 and 70, for the sky; the ground by the share of the pattern.
 * Accuracy: the sky within some kelvin; the share of the ground is practice unless measured.
 * @example
 * ```ts
 * import { antennaNoise } from 'slantpath/link';
 * antennaNoise({ absorptionDb: 3, groundShareRatio: 0 }).skyNoiseK.toFixed(3); // => '138.527'
 * ```
 */
export function antennaNoise(antenna: AntennaNoiseInput): AntennaNoise {
  const input = knownOnly('antenna', antenna, ANTENNA_NOISE_INPUT_KEYS);
  const absorptionDb = checkedLossDb('absorptionDb', input.absorptionDb);
  const mediumK = inRange(
    'meanRadiatingTemperatureK',
    input.meanRadiatingTemperatureK ?? 275,
    100,
    350,
  );
  const share = inRange('groundShareRatio', input.groundShareRatio ?? 0.06, 0, 1);
  const groundK = inRange('groundTemperatureK', input.groundTemperatureK ?? 290, 0, 350);
  return antennaNoiseTerms(absorptionDb, mediumK, share, groundK);
}

/** The sum behind {@link antennaNoise}, without checks. */
export function antennaNoiseTerms(
  absorptionDb: number,
  mediumK: number,
  groundShare: number,
  groundK: number,
): AntennaNoise {
  const throughRatio = dbToRatio(-absorptionDb);
  const mediumNoiseK = mediumK * (1 - throughRatio);
  const backgroundNoiseK = COSMIC_BACKGROUND_K * throughRatio;
  const skyNoiseK = mediumNoiseK + backgroundNoiseK;
  const groundNoiseK = groundShare * groundK;
  return {
    mediumNoiseK,
    backgroundNoiseK,
    skyNoiseK,
    groundNoiseK,
    antennaNoiseK: (1 - groundShare) * skyNoiseK + groundNoiseK,
  };
}
