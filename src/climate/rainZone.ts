/** The historical rain zones of P.837-1: superseded, kept for checking old designs and where nothing better is at hand. */

import { inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { valueAt } from '../numeric/columns.js';

/** Percentages of the table. */
const PERCENTS = [0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1] as const;

/** Rain rate in mm/h exceeded for those percentages; the 1 % entry of A is printed as "< 0.1". */
const ZONES = {
  A: [22, 14, 8, 5, 2, 0.8, 0.1],
  B: [32, 21, 12, 6, 3, 2, 0.5],
  C: [42, 26, 15, 9, 5, 2.8, 0.7],
  D: [42, 29, 19, 13, 8, 4.5, 2.1],
  E: [70, 41, 22, 12, 6, 2.4, 0.6],
  F: [78, 54, 28, 15, 8, 4.5, 1.7],
  G: [65, 45, 30, 20, 12, 7, 3],
  H: [83, 55, 32, 18, 10, 4, 2],
  J: [55, 45, 35, 28, 20, 13, 8],
  K: [100, 70, 42, 23, 12, 4.2, 1.5],
  L: [150, 105, 60, 33, 15, 7, 2],
  M: [120, 95, 63, 40, 22, 11, 4],
  N: [180, 140, 95, 65, 35, 15, 5],
  P: [250, 200, 145, 105, 65, 34, 12],
  Q: [170, 142, 115, 96, 72, 49, 24],
} as const;

/** A zone of P.837-1: A (driest) to Q; there is no I and no O. */
export type RainZone = keyof typeof ZONES;

/** Names of all zones. */
export const RAIN_ZONES = Object.keys(ZONES) as readonly RainZone[];

/** Rain rate of a historical zone. */
export interface RainZoneRate {
  /** The edition of the table. */
  readonly edition: 'P.837-1';
  /** The table is superseded by P.837-7 and must not be used for new designs. */
  readonly superseded: true;
  /** The zone asked for. */
  readonly zone: RainZone;
  /** The percentage asked for. */
  readonly exceededPercent: number;
  /** Rain rate exceeded for that part of an average year, mm/h. */
  readonly rainRateMmPerH: number;
}

const RAIN_ZONE_RATE_INPUT_KEYS = { zone: true, exceededPercent: true } satisfies Keys<
  Parameters<typeof rainZoneRate>[0]
>;

/**
 * Rain rate of a historical rain zone (P.837-1, superseded).
 *
 * Between the table's percentages both scales are taken as logarithmic.
 *
 * @param input  `zone`, A to Q, and `exceededPercent`, 0.001 to 1.
 * @throws {@link DomainError} naming `zone` or `exceededPercent`.
 *
 * Source: ITU-R P.837-1, Table 1, as read in an open implementation.
 * Accuracy: the printed table; a zone spans a factor of about two in rain rate.
 * @example
 * ```ts
 * import { rainZoneRate } from 'slantpath/climate';
 * rainZoneRate({ zone: 'K', exceededPercent: 0.01 }).rainRateMmPerH; // => 42
 * ```
 */
export function rainZoneRate(input: {
  readonly zone: RainZone;
  readonly exceededPercent: number;
}): RainZoneRate {
  const { zone, exceededPercent } = knownOnly('input', input, RAIN_ZONE_RATE_INPUT_KEYS);
  const row = ZONES[oneOf('zone', zone, RAIN_ZONES)];
  const percent = inRange('exceededPercent', exceededPercent, 0.001, 1);
  const after = Math.max(
    1,
    PERCENTS.findIndex((entry) => entry >= percent),
  );
  const [low, high] = [valueAt(PERCENTS, after - 1), valueAt(PERCENTS, after)];
  const [more, less] = [valueAt(row, after - 1), valueAt(row, after)];
  const ratio = Math.log(percent / low) / Math.log(high / low);
  return {
    edition: 'P.837-1',
    superseded: true,
    zone,
    exceededPercent: percent,
    rainRateMmPerH: ratio === 0 ? more : ratio === 1 ? less : more * (less / more) ** ratio,
  };
}
