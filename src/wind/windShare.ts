/** How much of the year the wind is stronger than a speed. */

import { inRange, positive } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { logGamma } from '../numeric/beta.js';

const WIND_EXCEEDED_PERCENT_WIND_KEYS = {
  windSpeedMPerS: true,
  meanSpeedMPerS: true,
  shape: true,
} satisfies Keys<Parameters<typeof windExceededPercent>[0]>;

/**
 * Percent of the year in which the mean wind exceeds a speed, by Weibull's distribution.
 *
 * @param wind  Speed in metres a second, 0 to 100; mean speed of the place over the year at the same height, above 0 to 30; shape of the
 *   distribution, 1 to 4, default 2 (usual on land).
 * @returns Percent of the year, 0 to 100.
 * @throws {@link DomainError} naming the field.
 * Source: Weibull's distribution as used for wind (general practice). Accuracy: of the shape: at three times the mean speed a shape of 1.8
 * instead of 2 gives 3.4 times the share.
 * @example
 * ```ts
 * import { windExceededPercent } from 'slantpath/wind';
 * windExceededPercent({ windSpeedMPerS: 12, meanSpeedMPerS: 5 }).toFixed(2); // => '1.08'
 * ```
 */
export function windExceededPercent(wind: {
  readonly windSpeedMPerS: number;
  readonly meanSpeedMPerS: number;
  readonly shape?: number;
}): number {
  const given = knownOnly('wind', wind, WIND_EXCEEDED_PERCENT_WIND_KEYS);
  const speed = inRange('windSpeedMPerS', given.windSpeedMPerS, 0, 100, 'is it in km/h?');
  const mean = inRange(
    'meanSpeedMPerS',
    positive('meanSpeedMPerS', given.meanSpeedMPerS),
    0,
    30,
    'is it in km/h?',
  );
  const shape = inRange('shape', given.shape ?? 2, 1, 4);
  const scale = mean / Math.exp(logGamma(1 + 1 / shape));
  return 100 * Math.exp(-((speed / scale) ** shape));
}
