/** Recommendation ITU-R P.618-14, section 2.4.2: deep fades by scintillation and multipath below 5 degrees. */

import { inRange, oneOf } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { cosDeg, RADIANS_PER_DEGREE } from '../../numeric/angle.js';
import {
  checkedFrequencyGHz,
  checkedHeightM,
  checkedLatitudeDeg,
  checkedPercent,
  namesOutside,
} from '../inputs.js';
import { EDITION } from './edition.js';

/** Input of {@link lowElevationFade}. */
export interface LowElevationFadeInput {
  /** Latitude of the path in degrees, north positive. */
  readonly latitudeDeg: number;
  /** Height of the antenna above mean sea level in metres; 700 and up counts as high ground. */
  readonly heightM: number;
  /** Apparent elevation in degrees, with refraction; stated range 0.5 to 5. */
  readonly apparentElevationDeg: number;
  /** Frequency in GHz; stated range 1 to 45. */
  readonly frequencyGHz: number;
  /** Percent of time for which the fade is exceeded. */
  readonly exceededPercent: number;
  /** Whether the percentage is of an average year or of its worst month. */
  readonly period: 'average-year' | 'worst-month';
  /**
   * Percent of time in which the refractivity falls by more than 100 N-units per km in the lowest 100 m, in the
   * worst of February, May, August and November (P.453-14, figures 8 to 11).
   */
  readonly steepGradientPercent: number;
  /** Part of the path over water or coast, 0 to 1; 0 where not given. */
  readonly waterFractionRatio?: number | undefined;
}

const LOW_ELEVATION_FADE_INPUT_KEYS = {
  latitudeDeg: true,
  heightM: true,
  apparentElevationDeg: true,
  frequencyGHz: true,
  exceededPercent: true,
  period: true,
  steepGradientPercent: true,
  waterFractionRatio: true,
} satisfies Keys<LowElevationFadeInput>;

/** Deep fade at low elevation with its terms. */
export interface LowElevationFade {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Geoclimatic factor in decibels, 10 log10 Kw. */
  readonly geoclimaticFactorDb: number;
  /** What the average year has less than its worst month, dB; 0 for the worst month. */
  readonly yearReductionDb: number;
  /** Fade exceeded for the percentage of time, dB; 0 where the formula falls below it. */
  readonly attenuationDb: number;
  /** Names of what lies outside the stated range; `attenuationDb` below 25 dB, where the deep part does not hold. */
  readonly outsideStatedRange: readonly string[];
}

/**
 * Deep fades by scintillation, beam spreading and multipath on a path below 5 degrees of elevation.
 *
 * A(p) = 10 log Kw - v + 9 log f - 59.5 log(1 + theta) - 10 log p for the average year, and
 * A(p) = 10 log Kw + 9 log f - 55 log(1 + theta) - 10 log p for the worst month, theta in milliradians.
 * Holds for fades of 25 dB and more.
 *
 * @param input  Path, climate of refractivity gradients and percentage of time; see the fields.
 * @returns Fade in dB (positive is a loss) with its terms.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.4.2, steps 2 and 3; its coefficients are from memory; the text was
 * not read for them.
 * @example
 * ```ts
 * import { lowElevationFade } from 'slantpath/propagation';
 * const fade = lowElevationFade({
 *   latitudeDeg: 46.4,
 *   heightM: 200,
 *   apparentElevationDeg: 1,
 *   frequencyGHz: 12,
 *   exceededPercent: 0.1,
 *   period: 'worst-month',
 *   steepGradientPercent: 10,
 * });
 * fade.attenuationDb.toFixed(1); // => '41.1'
 * ```
 */
export function lowElevationFade(input: LowElevationFadeInput): LowElevationFade {
  known('input', input, LOW_ELEVATION_FADE_INPUT_KEYS);
  const latitude = Math.abs(checkedLatitudeDeg(input.latitudeDeg));
  const heightM = checkedHeightM(input.heightM);
  const elevationDeg = inRange(
    'apparentElevationDeg',
    input.apparentElevationDeg,
    0,
    5,
    'this method is for elevations below 5 degrees',
  );
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const exceededPercent = checkedPercent(input.exceededPercent);
  const period = oneOf('period', input.period, ['average-year', 'worst-month']);
  const gradientPercent = checkedPercent(
    input.steepGradientPercent,
    undefined,
    'steepGradientPercent',
  );
  const water = inRange('waterFractionRatio', input.waterFractionRatio ?? 0, 0, 1);

  const terrainDb = water > 0 ? 76 + 6 * water : heightM >= 700 ? 70 : 76;
  const latitudeDb = Math.min(7, Math.max(0, latitude - 53));
  const geoclimaticFactorDb = 15 * Math.log10(gradientPercent) + terrainDb + latitudeDb;
  const elevationMrad = elevationDeg * RADIANS_PER_DEGREE * 1000;
  const logElevation = Math.log10(1 + elevationMrad);
  const cosine = Math.abs(cosDeg(2 * latitude)) ** 0.7;
  const yearReductionDb =
    period === 'worst-month'
      ? 0
      : -1.8 - 5.6 * Math.log10(latitude <= 45 ? 1.1 + cosine : 1.1 - cosine) + 4.5 * logElevation;
  const attenuationDb = Math.max(
    0,
    geoclimaticFactorDb -
      yearReductionDb +
      9 * Math.log10(frequencyGHz) -
      55 * logElevation -
      10 * Math.log10(exceededPercent),
  );
  return {
    edition: EDITION,
    geoclimaticFactorDb,
    yearReductionDb,
    attenuationDb,
    outsideStatedRange: namesOutside(
      ['apparentElevationDeg', elevationDeg, 0.5, 5],
      ['frequencyGHz', frequencyGHz, 1, 45],
      ['attenuationDb', attenuationDb, 25, Number.POSITIVE_INFINITY],
    ),
  };
}
