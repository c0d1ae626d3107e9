/** For how much of the year an attenuation is exceeded: P.618-14, sections 2.2.1.1 and 2.5, turned round. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { sinDeg } from '../../numeric/angle.js';
import { bracketedRoot } from '../../numeric/root.js';
import { checkedElevationDeg, checkedLatitudeDeg } from '../inputs.js';
import { EDITION } from './edition.js';
import { RAIN_PATH_KEYS, type RainPath, rainAttenuation } from './rain.js';
import {
  attenuationAtPercentDb,
  latitudeExponent,
  latitudeTermDeg,
  percentTerms,
} from './rainSteps.js';
import { scintillationFade, scintillationPercentFactor } from './scintillation.js';
import { combinedDb, type TotalAttenuationInput, totalAttenuation } from './total.js';

/** For how much of an average year an attenuation is exceeded; read `kind` first. */
export type ExceededPercent =
  | {
      /** The attenuation lies on the curve. */
      readonly kind: 'exceeded';
      /** Edition computed. */
      readonly edition: 'P.618-14';
      /** Percent of an average year for which the attenuation is exceeded. */
      readonly exceededPercent: number;
    }
  | {
      /** `rarer`: deeper than the method reaches. `more-often`: shallower than it reaches. */
      readonly kind: 'rarer' | 'more-often';
      /** Edition computed. */
      readonly edition: 'P.618-14';
      /** End of the method on that side, percent of an average year. */
      readonly limitPercent: number;
      /** Attenuation exceeded there, dB. */
      readonly limitAttenuationDb: number;
    };

/** Ends of the stated range of the rain method, percent. */
const RAREST = 0.001;
const OFTENEST = 5;

/**
 * Percentage from which on the rain curve falls all the way. With heavy rain low over the horizon in the tropics the
 * published curve turns down again towards 0.001 %; it has one maximum at most, left of 1 %.
 */
function fallsFrom(attenuation001Db: number, beta: (percent: number) => number, sine: number) {
  const slope = (log: number): number => {
    const percent = Math.exp(log);
    const b = beta(percent);
    const distance = log - Math.log(0.01);
    return (
      -(0.655 + 0.033 * log - 0.045 * Math.log(attenuation001Db) - b * (1 - percent) * sine) -
      (0.033 + b * percent * sine) * distance
    );
  };
  const from = Math.log(RAREST);
  if (slope(from) <= 0) return from;
  return bracketedRoot(slope, { from, to: Math.log(0.999) }) ?? from;
}

function solve(
  curve: (percent: number) => number,
  logFrom: number,
  level: number,
): ExceededPercent {
  const logTo = Math.log(OFTENEST);
  const highest = curve(Math.exp(logFrom));
  if (level > highest)
    return {
      kind: 'rarer',
      edition: EDITION,
      limitPercent: Math.exp(logFrom),
      limitAttenuationDb: highest,
    };
  const lowest = curve(OFTENEST);
  if (level < lowest || lowest === highest)
    return {
      kind: 'more-often',
      edition: EDITION,
      limitPercent: OFTENEST,
      limitAttenuationDb: lowest,
    };
  const log =
    bracketedRoot((x) => curve(Math.exp(x)) - level, { from: logFrom, to: logTo }) ?? logTo;
  return { kind: 'exceeded', edition: EDITION, exceededPercent: Math.exp(log) };
}

/** The rain curve of a path and where it begins to fall; `undefined` without rain on the path. */
function rainCurve(path: RainPath) {
  const { attenuation001Db } = rainAttenuation({ ...path, exceededPercent: 0.01 });
  const elevationDeg = checkedElevationDeg(path.elevationDeg);
  const sine = sinDeg(elevationDeg);
  const latitudeTerm = latitudeTermDeg(checkedLatitudeDeg(path.latitudeDeg));
  const beta = (percent: number) => latitudeExponent(percent, latitudeTerm, elevationDeg, sine);
  if (!(attenuation001Db > 0)) return { curve: () => 0, logFrom: Math.log(RAREST) };
  return {
    curve: (percent: number) =>
      attenuationAtPercentDb(attenuation001Db, percentTerms(percent), beta(percent), sine),
    logFrom: fallsFrom(attenuation001Db, beta, sine),
  };
}

/**
 * Percent of an average year for which rain alone takes more than an attenuation.
 *
 * Solved on the part of the curve that falls, between 0.001 and 5 % of the time, so that more attenuation never comes
 * out as exceeded for more time.
 *
 * @param path  The path and its rain.
 * @param attenuationDb  Attenuation in dB, 0 or more.
 * @returns The percentage, or on which side of the method the attenuation lies.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.2.1.1, step 10, solved by bracketing.
 * @example
 * ```ts
 * import { rainExceedance } from 'slantpath/propagation';
 * const path = {
 *   latitudeDeg: 46.4,
 *   heightM: 1900,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 12,
 *   elevationDeg: 36,
 *   tiltDeg: 0,
 * };
 * const outage = rainExceedance(path, 3);
 * outage.kind; // => 'exceeded'
 * ```
 */
export function rainExceedance(path: RainPath, attenuationDb: number): ExceededPercent {
  known('path', path, RAIN_PATH_KEYS);
  const level = inRange('attenuationDb', attenuationDb, 0, 1e4);
  const { curve, logFrom } = rainCurve(path);
  return solve(curve, logFrom, level);
}

const TOTAL_EXCEEDANCE_PATH_KEYS = {
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
} satisfies Keys<Parameters<typeof totalExceedance>[0]>;

/**
 * Percent of an average year for which rain, cloud, gas and scintillation together take more than an attenuation.
 *
 * @param path  The path as for `totalAttenuation`, gas and cloud at 5 % of the time; its percentage is not read.
 * @param attenuationDb  Attenuation in dB, 0 or more.
 * @returns The percentage between 0.001 and 5, or on which side of it the attenuation lies.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.5, solved by bracketing.
 * @example
 * ```ts
 * import { totalExceedance } from 'slantpath/propagation';
 * const path = {
 *   latitudeDeg: 46.4,
 *   heightM: 1900,
 *   rainHeightKm: 2.9,
 *   rainRate001MmPerH: 35,
 *   frequencyGHz: 20,
 *   elevationDeg: 36,
 *   tiltDeg: 45,
 *   diameterM: 0.9,
 *   wetRefractivityNUnits: 45,
 *   gasDb: 0.4,
 *   cloudDb: 0.6,
 * };
 * totalExceedance(path, 100).kind; // => 'rarer'
 * ```
 */
export function totalExceedance(
  path: Omit<TotalAttenuationInput, 'exceededPercent'>,
  attenuationDb: number,
): ExceededPercent {
  known('path', path, TOTAL_EXCEEDANCE_PATH_KEYS);
  const level = inRange('attenuationDb', attenuationDb, 0, 1e4);
  const { gasDb, cloudDb } = totalAttenuation({ ...path, exceededPercent: 1 });
  const { standardDeviationDb } = scintillationFade({ ...path, exceededPercent: 1 });
  const { curve, logFrom } = rainCurve(path);
  return solve(
    (percent) =>
      combinedDb(
        gasDb,
        curve(percent),
        cloudDb,
        standardDeviationDb * Math.max(0, scintillationPercentFactor(percent)),
      ),
    logFrom,
    level,
  );
}
