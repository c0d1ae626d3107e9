/** Fade distributions from the recommendations, in the shape that the link functions take. */

import { type Keys, known } from '../../keys.js';
import { sinDeg } from '../../numeric/angle.js';
import {
  attenuationAtPercentDb,
  latitudeExponent,
  latitudeTermDeg,
  percentTerms,
  RAIN_PATH_KEYS,
} from '../../propagation/internal.js';
import { rainExceedance } from '../../propagation/p618-14/exceedance.js';
import { type RainPath, rainAttenuation } from '../../propagation/p618-14/rain.js';
import { type TotalAttenuationInput, totalAttenuation } from '../../propagation/p618-14/total.js';
import type { FadeDistribution } from './fade.js';

/** A path as for `totalAttenuation`, without the percentage. */
export type TotalPath = Omit<TotalAttenuationInput, 'exceededPercent'>;

const TOTAL_PATH_KEYS = {
  gasDb: true,
  cloudDb: true,
  latitudeDeg: true,
  heightM: true,
  rainHeightKm: true,
  rainRate001MmPerH: true,
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  diameterM: true,
  efficiencyRatio: true,
  wetRefractivityNUnits: true,
  turbulenceHeightM: true,
} satisfies Keys<TotalPath>;

/** Rain attenuation in dB against percent, from that at 0.01 %. */
export function rainCurve(
  attenuation001Db: number,
  latitudeDeg: number,
  elevationDeg: number,
): (exceededPercent: number) => number {
  if (!(attenuation001Db > 0)) return () => 0;
  const sinElevation = sinDeg(elevationDeg);
  const latitudeTerm = latitudeTermDeg(latitudeDeg);
  return (percent) =>
    attenuationAtPercentDb(
      attenuation001Db,
      percentTerms(percent),
      latitudeExponent(percent, latitudeTerm, elevationDeg, sinElevation),
      sinElevation,
    );
}

/**
 * Rarest percentage down to which a rain curve rises. Low over the horizon in heavy tropical rain the published curve
 * turns down again towards 0.001 %; a distribution must not, so it is held at its highest value from there on.
 */
export function risesDownTo(curve: (exceededPercent: number) => number, path: RainPath): number {
  const highest = curve(0.001);
  if (highest >= curve(0.00101)) return 0;
  const end = rainExceedance(path, 1e4);
  return end.kind === 'rarer' ? end.limitPercent : 0;
}

/**
 * Rain on a path as a fade distribution (P.618-14), on top of the link's clear attenuation.
 *
 * Where the published curve turns down again towards 0.001 % (low elevation, heavy tropical rain) it is held at its highest value.
 *
 * @throws {@link DomainError} naming the field of the path that is missing or outside its interval.
 *
 * Source: ITU-R P.618-14, section 2.2.1.1. Accuracy: as `rainAttenuation`.
 * @example
 * ```ts
 * import { rainFade } from 'slantpath/link';
 * const fade = rainFade({
 *   latitudeDeg: 46.4,
 *   heightM: 1900,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 12,
 *   elevationDeg: 36,
 *   tiltDeg: 0,
 * });
 * fade(0.01).attenuationDb.toFixed(2); // => '2.85'
 * ```
 */
export function rainFade(path: RainPath): FadeDistribution {
  const { attenuation001Db } = rainAttenuation({
    ...known('path', path, RAIN_PATH_KEYS),
    exceededPercent: 0.01,
  });
  const curve = rainCurve(attenuation001Db, path.latitudeDeg, path.elevationDeg);
  const least = risesDownTo(curve, path);
  return (exceededPercent) => ({ attenuationDb: curve(Math.max(least, exceededPercent)) });
}

/**
 * Rain, cloud, gas and scintillation on a path as a fade distribution (P.618-14); its gas takes the place of the link's
 * clear attenuation.
 *
 * Gas and cloud are those at 5 % of the time throughout: what the recommendation asks for below 5 %, and a little too much above.
 *
 * @throws {@link DomainError} naming the field of the path that is missing or outside its interval.
 *
 * Source: ITU-R P.618-14, section 2.5. Accuracy: as `totalAttenuation`.
 * @example
 * ```ts
 * import { totalFade } from 'slantpath/link';
 * const fade = totalFade({
 *   latitudeDeg: 46.4,
 *   heightM: 1900,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   tiltDeg: 45,
 *   diameterM: 0.9,
 *   efficiencyRatio: 0.65,
 *   wetRefractivityNUnits: 45,
 *   gasDb: 0.4,
 *   cloudDb: 0.6,
 * });
 * fade(0.1).attenuationDb.toFixed(2); // => '3.39'
 * ```
 */
export function totalFade(path: TotalPath): FadeDistribution {
  const input = known('path', path, TOTAL_PATH_KEYS);
  const { attenuation001Db } = rainAttenuation({ ...input, exceededPercent: 0.01 });
  const curve = rainCurve(attenuation001Db, input.latitudeDeg, input.elevationDeg);
  const least = risesDownTo(curve, input);
  return (exceededPercent) =>
    totalAttenuation({ ...input, exceededPercent: Math.max(least, exceededPercent) });
}
