/**
 * ITU-R P.840-9, the statistics of cloud: integrated liquid water exceeded for a percentage of an average
 * year, from the recommendation's maps or from its lognormal approximation.
 */

import { inRange, objects, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';
import { betweenPercents, blend } from '../mapsByPercent.js';
import { type GlobalMap, type MapPlace, mapValue } from '../p1144.js';
import { EDITION } from './edition.js';

/** Integrated cloud liquid water exceeded for a percentage of an average year. */
export interface CloudLiquid {
  /** The recommendation implemented. */
  readonly edition: 'P.840-9';
  /** The percentage asked for. */
  readonly exceededPercent: number;
  /** Integrated cloud liquid water content, kg/m2 (equal to mm of water), 0 or more. */
  readonly liquidWaterKgPerM2: number;
  /** `exceededPercent` where it lies beyond the maps, whose end is then used. */
  readonly outsideStatedRange: readonly string[];
}

/** Arguments of {@link cloudLiquid}. */
export interface CloudLiquidInput extends MapPlace {
  /** Percentage of an average year, 0.000000001 to 100. */
  readonly exceededPercent: number;
  /** Map of liquid water, kg/m2, for one or more percentages, smallest percentage first. */
  readonly maps: readonly { readonly exceededPercent: number; readonly liquid: GlobalMap }[];
}

const CLOUD_LIQUID_INPUT_KEYS = {
  exceededPercent: true,
  maps: true,
  latitudeDeg: true,
  longitudeDeg: true,
} satisfies Keys<CloudLiquidInput>;

/**
 * Integrated cloud liquid water at a place for a percentage of an average year, from the maps of P.840-9.
 *
 * Bilinear in place; between two percentages linear in the logarithm of the percentage.
 *
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.840-9, Annex 1, section 3.
 * Accuracy: the official validation examples to 1e-7 relative with the recommendation's maps.
 * @example
 * ```ts
 * import { cloudLiquid } from 'slantpath/propagation';
 * const flat = (value: number) => ({ rows: 2, columns: 2, values: [value, value, value, value] });
 * const cloud = cloudLiquid({
 *   latitudeDeg: 46.4, longitudeDeg: 9.6, exceededPercent: 10,
 *   maps: [{ exceededPercent: 5, liquid: flat(0.5) }, { exceededPercent: 20, liquid: flat(0.3) }],
 * });
 * cloud.liquidWaterKgPerM2.toFixed(3); // => '0.400'
 * ```
 */
export function cloudLiquid(input: CloudLiquidInput): CloudLiquid {
  const { maps, exceededPercent } = known('input', input, CLOUD_LIQUID_INPUT_KEYS);
  const percents = objects<(typeof maps)[number]>('maps', maps).map(
    (entry, at) =>
      known(`maps[${at}]`, entry, { exceededPercent: true, liquid: true }).exceededPercent,
  );
  const { below, above, ratio, outside } = betweenPercents('maps', percents, exceededPercent);
  const at = (index: number): number =>
    mapValue((maps[index] as (typeof maps)[number]).liquid, input);
  return {
    edition: EDITION,
    exceededPercent,
    liquidWaterKgPerM2: ratio === 0 ? at(below) : blend(at(below), at(above), ratio),
    outsideStatedRange: outside ? ['exceededPercent'] : [],
  };
}

/** Parameters of the lognormal approximation at a place, each bilinear from its map. */
export interface CloudLognormal {
  /** Mean of the natural logarithm of the liquid water content in kg/m2. */
  readonly logMean: number;
  /** Standard deviation of the natural logarithm of the liquid water content in kg/m2, 0 or more. */
  readonly logDeviation: number;
  /** Probability of cloud, percent, 0 to 100. */
  readonly cloudProbabilityPercent: number;
}

const CLOUD_LIQUID_LOGNORMAL_INPUT_KEYS = {
  logMean: true,
  logDeviation: true,
  cloudProbabilityPercent: true,
  exceededPercent: true,
} satisfies Keys<Parameters<typeof cloudLiquidLognormal>[0]>;

/**
 * Integrated cloud liquid water from the lognormal approximation of P.840-9.
 *
 * @returns Liquid water in kg/m2; 0 where `exceededPercent` is the probability of cloud or more.
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.840-9, Annex 1, section 4: exp(m + s Q^-1(p/P)).
 * Accuracy: the official validation examples to 1e-6 relative with the recommendation's maps.
 * @example
 * ```ts
 * import { cloudLiquidLognormal } from 'slantpath/propagation';
 * cloudLiquidLognormal({
 *   logMean: -2.481, logDeviation: 0.886, cloudProbabilityPercent: 59.072, exceededPercent: 15.5,
 * }).liquidWaterKgPerM2.toFixed(4); // => '0.1470'
 * ```
 */
export function cloudLiquidLognormal(
  input: CloudLognormal & { readonly exceededPercent: number },
): CloudLiquid {
  const { logMean, logDeviation, cloudProbabilityPercent, exceededPercent } = knownOnly(
    'input',
    input,
    CLOUD_LIQUID_LOGNORMAL_INPUT_KEYS,
  );
  const mean = inRange('logMean', logMean, -50, 10);
  const spread = inRange('logDeviation', logDeviation, 0, 10);
  const probability = inRange('cloudProbabilityPercent', cloudProbabilityPercent, 0, 100);
  const percent = inRange(
    'exceededPercent',
    positive('exceededPercent', exceededPercent),
    1e-9,
    100,
  );
  const liquid =
    percent >= probability
      ? 0
      : Math.exp(mean + spread * normalExceedanceQuantile(percent / probability));
  return {
    edition: EDITION,
    exceededPercent: percent,
    liquidWaterKgPerM2: liquid,
    outsideStatedRange: [],
  };
}
