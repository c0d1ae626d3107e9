/** Radio brightness of the Sun. */

import { BOLTZMANN_J_PER_K, SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';

/** How active the Sun is, by its flux density at a wavelength of 10.7 cm: 67, 120 or 220 solar flux units. */
export type SolarActivity = 'quiet' | 'moderate' | 'active';

/** Radio brightness of the Sun at a frequency. */
export interface SolarBrightness {
  /** Brightness temperature of the quiet Sun in kelvins, averaged over the visible disc. */
  readonly quietTemperatureK: number;
  /** What active regions add, in kelvins. */
  readonly activityTemperatureK: number;
  /** Sum of the two in kelvins: what an antenna with the Sun filling its beam would read, in either polarization. */
  readonly brightnessTemperatureK: number;
  /** For comparison, in kelvins: half of 120000 f^-0.75, f in GHz, a textbook's fit for the higher bands. */
  readonly powerLawTemperatureK: number;
  /** `frequencyGHz` beyond the 1 to 100 GHz for which the quiet Sun's figure was read. */
  readonly outsideStatedRange: readonly string[];
}

/** Quiet Sun: GHz and kelvins read off the figure of ITU-R P.372-14. */
const QUIET: readonly (readonly [number, number])[] = [
  [1, 200000],
  [2, 90000],
  [3, 45000],
  [4, 29000],
  [5, 20000],
  [6, 16000],
  [7, 14000],
  [8, 13000],
  [9, 12000],
  [10, 10000],
  [20, 7000],
  [30, 6300],
  [40, 6200],
  [50, 6000],
  [100, 6000],
];

const FLUX_UNITS = { quiet: 67, moderate: 120, active: 220 } as const;
const QUIET_FLUX_UNITS = 67;
/** Solid angle of the disc at mean distance: pi (0.5331/2 degree)^2 in steradians. */
const DISC_STERADIANS = Math.PI * ((0.5331 / 2) * (Math.PI / 180)) ** 2;

const SOLAR_BRIGHTNESS_INPUT_KEYS = { frequencyGHz: true, activity: true } satisfies Keys<
  Parameters<typeof solarBrightness>[0]
>;

/**
 * Brightness temperature of the Sun over its visible disc.
 *
 * The quiet Sun is read off a figure; active regions add about the same flux density at all centimetre
 * waves as at 10.7 cm, T = S c^2 / (2 k f^2 disc), which fades with the square of the frequency. Bursts are not
 * in it: they can add ten times as much for minutes.
 *
 * @param input  `frequencyGHz` 0.5 to 100; `activity`, default `quiet`.
 * @throws {@link DomainError} `out-of-range`, `not-an-option` and so on.
 *
 * Source: ITU-R P.372-14, figure of the quiet Sun (read by eye); the power law after Maral and Bousquet, Satellite
 * Communications Systems (Wiley 1998), halved for one polarization as ITU-R S.1525 does; the part of the activity from
 * memory.
 * Accuracy: a factor of 1.5 from 4 to 30 GHz, where the two sources differ as much; below and above they part by up to 3.4.
 * @example
 * ```ts
 * import { solarBrightness } from 'slantpath/sun';
 * Math.round(solarBrightness({ frequencyGHz: 10 }).brightnessTemperatureK); // => 10000
 * ```
 */
export function solarBrightness(input: {
  readonly frequencyGHz: number;
  readonly activity?: SolarActivity;
}): SolarBrightness {
  const { frequencyGHz, activity } = knownOnly('input', input, SOLAR_BRIGHTNESS_INPUT_KEYS);
  const frequency = inRange('frequencyGHz', frequencyGHz, 0.5, 100, 'is the frequency in GHz?');
  const level = oneOf('activity', activity ?? 'quiet', ['quiet', 'moderate', 'active']);
  const quietTemperatureK = quietK(frequency);
  const fluxWPerM2Hz = (FLUX_UNITS[level] - QUIET_FLUX_UNITS) * 1e-22;
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (frequency * 1e9);
  const activityTemperatureK =
    (fluxWPerM2Hz * wavelengthM ** 2) / (2 * BOLTZMANN_J_PER_K * DISC_STERADIANS);
  return {
    quietTemperatureK,
    activityTemperatureK,
    brightnessTemperatureK: quietTemperatureK + activityTemperatureK,
    powerLawTemperatureK: 60000 * frequency ** -0.75,
    outsideStatedRange: frequency < 1 ? ['frequencyGHz'] : [],
  };
}

/** Straight lines between the figure's points on logarithmic axes; the first one is drawn on below 1 GHz. */
function quietK(frequencyGHz: number): number {
  const last = QUIET.length - 1;
  let index = 1;
  while (index < last && frequencyGHz > (QUIET[index]?.[0] ?? Number.POSITIVE_INFINITY)) index++;
  const [f1, t1] = QUIET[index - 1] ?? [1, 200000];
  const [f2, t2] = QUIET[index] ?? [100, 6000];
  const share = Math.log(frequencyGHz / f1) / Math.log(f2 / f1);
  return t1 * (t2 / t1) ** share;
}
