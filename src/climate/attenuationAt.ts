/** Attenuation of a path at a place by every cause, straight from its climate. */

import { inRange, object } from '../errors.js';
import { type Keys, known } from '../keys.js';
import {
  approximateGasAttenuation,
  cloudAttenuation,
  heldPercent,
  type RainAttenuationInput,
  rainAttenuation,
  referenceAtmosphere,
  type TotalAttenuation,
  totalAttenuation,
} from '../propagation/index.js';
import type { Climate } from './climateAt.js';
import { CLIMATE_KEYS } from './climateAt.js';
import { waterAloftAt } from './waterAloftAt.js';

/** The path from a place to a satellite, apart from the place. */
export interface SkyPath {
  /** Frequency in GHz; stated range 4 to 55. */
  readonly frequencyGHz: number;
  /** Elevation in degrees, 0.1 to 90; stated range 5 to 90. */
  readonly elevationDeg: number;
  /** Tilt of the polarization from horizontal in degrees; 45 for circular. */
  readonly tiltDeg: number;
  /** Diameter of the antenna in metres, for scintillation. */
  readonly diameterM: number;
  /** Efficiency of the antenna, 0.01 to 1; 0.5 where not given. */
  readonly efficiencyRatio?: number | undefined;
  /** Percentage of an average year, 0.000001 to 50; stated range 0.001 to 50. */
  readonly exceededPercent: number;
}

const SKY_PATH_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  tiltDeg: true,
  diameterM: true,
  efficiencyRatio: true,
  exceededPercent: true,
} satisfies Keys<SkyPath>;

/** How far the attenuation may be off, in decibels of standard deviation. */
export interface AttenuationSpread {
  /** From the uncertain rain rate. */
  readonly rainInputDb: number;
  /** From the scatter of the rain model itself about measured fades: 0.3 of the rain fade, a usual size and not a figure of the recommendation. */
  readonly rainModelDb: number;
  /** Both together: the long-term attenuation. */
  readonly standardUncertaintyDb: number;
  /** Of single years about the long-term attenuation. */
  readonly singleYearDb: number;
}

/** Total attenuation at a place, with its causes and how far it may be off. */
export interface AttenuationAt extends TotalAttenuation {
  /** The percentage asked for. */
  readonly exceededPercent: number;
  /** Spread of the total. */
  readonly spread: AttenuationSpread;
}

const RAIN_MODEL_RATIO = 0.3;

/** The lowest and highest ground for which the reference atmosphere is asked. */
function pressureHpa(heightM: number): number {
  return referenceAtmosphere(
    Math.max(0, inRange('climate.heightM', heightM, -1000, 100_000) / 1000),
  ).pressureHpa;
}

/** Percent of time, at most 50, where P.618-14 ends: an availability typed for an exceedance is refused. */
export function checkedExceededPercent(value: number, index?: number): number {
  return inRange('exceededPercent', value, 1e-6, 50, 'is it the availability?', index);
}

/** The spread of the rain rate as a climate states it: 0 where a person is sure of it. */
function checkedUncertainty(climate: Climate): {
  readonly standardUncertaintyRatio: number;
  readonly singleYearRatio: number;
} {
  const path = 'climate.rainUncertainty';
  const given = object(path, climate.rainUncertainty);
  const ratio = (name: 'standardUncertaintyRatio' | 'singleYearRatio'): number => {
    const value = inRange(`${path}.${name}`, given[name], 0, 10);
    // Too small a step of the difference quotient would divide rounding by rounding.
    return value < 1e-6 ? 0 : value;
  };
  return {
    standardUncertaintyRatio: ratio('standardUncertaintyRatio'),
    singleYearRatio: ratio('singleYearRatio'),
  };
}

/** Gas and cloud at the percentage to which P.618-14 holds them. */
export function gasAndCloud(
  climate: Climate,
  path: Pick<SkyPath, 'frequencyGHz' | 'elevationDeg' | 'exceededPercent'>,
): { readonly gasDb: number; readonly cloudDb: number } {
  const { frequencyGHz, elevationDeg } = path;
  const water = waterAloftAt(climate, heldPercent(path.exceededPercent));
  const mean = {
    pressureHpa: pressureHpa(climate.heightM),
    temperatureK: climate.meanTemperatureK,
    waterVapourDensityGPerM3: waterAloftAt(climate, 50).waterVapourDensityGPerM3,
  };
  const gas = approximateGasAttenuation({
    ...mean,
    frequencyGHz,
    elevationDeg,
    waterVapourContentKgPerM2: water.waterVapourContentKgPerM2,
    atPercent: { ...mean, waterVapourDensityGPerM3: water.waterVapourDensityGPerM3 },
  });
  const cloud = cloudAttenuation({
    frequencyGHz,
    elevationDeg,
    liquidWaterKgPerM2: water.liquidWaterKgPerM2,
  });
  return { gasDb: gas.attenuationDb, cloudDb: cloud.attenuationDb };
}

/**
 * Attenuation by rain, cloud, gas and scintillation exceeded for a percentage of an average year at a place.
 *
 * Each cause by its recommendation from the climate of the place: rain by P.618-14 with P.838-3 and P.839-4, gas by the
 * second annex of P.676-13, cloud by P.840-9, together by P.618-14. Surface pressure is that of P.835-6 at the
 * station's height.
 *
 * @param climate  Climate of the place, from `climateAt`.
 * @param path  Frequency 1 to 70 GHz, elevation, tilt, antenna, percentage.
 * @returns Attenuation in dB (positive is a loss), each cause, and the spread of the total.
 * @throws {@link DomainError} naming the field.
 *
 * Source: ITU-R P.618-14, section 2.5.
 * Accuracy: the official validation examples within 2.5 % from the full maps and 3.2 % from the shipped grid.
 * @example
 * ```ts
 * import { attenuationAt, climateAt } from 'slantpath/climate';
 * const climate = climateAt({ latitudeDeg: -0.4, longitudeDeg: 102, heightM: 35 });
 * const faded = attenuationAt(climate, {
 *   frequencyGHz: 14.2, elevationDeg: 80, tiltDeg: 0, diameterM: 1.8, exceededPercent: 0.1,
 * });
 * faded.attenuationDb.toFixed(1); // => '11.2'
 * ```
 */
export function attenuationAt(climate: Climate, path: SkyPath): AttenuationAt {
  const over = attenuationOver(climate, path);
  return over.at(checkedExceededPercent(path.exceededPercent));
}

/** The attenuation of one path against the percentage, for a search over percentages. */
export interface AttenuationOver {
  /** The causes and their total; bit for bit as {@link attenuationAt} has them. */
  readonly total: (exceededPercent: number) => TotalAttenuation;
  /** The same with its spread. */
  readonly at: (exceededPercent: number) => AttenuationAt;
}

/** As {@link attenuationAt} for many percentages: gas and cloud, held below 5 %, are worked out once. */
export function attenuationOver(
  climate: Climate,
  path: Omit<SkyPath, 'exceededPercent'>,
): AttenuationOver {
  known('climate', climate, CLIMATE_KEYS);
  known<SkyPath | Omit<SkyPath, 'exceededPercent'>>('path', path, SKY_PATH_KEYS);
  const { frequencyGHz, elevationDeg, tiltDeg, diameterM, efficiencyRatio } = path;
  const { latitudeDeg, heightM, rainHeightKm, rainRate001MmPerH, wetRefractivityNUnits } = climate;
  const held = new Map<number, ReturnType<typeof gasAndCloud>>();
  const aloft = (exceededPercent: number): ReturnType<typeof gasAndCloud> => {
    const percent = heldPercent(exceededPercent);
    const before = held.get(percent);
    if (before) return before;
    const found = gasAndCloud(climate, { frequencyGHz, elevationDeg, exceededPercent });
    held.set(percent, found);
    return found;
  };
  const rainAt = (exceededPercent: number) => ({
    latitudeDeg,
    heightM,
    rainHeightKm,
    rainRate001MmPerH,
    frequencyGHz,
    elevationDeg,
    tiltDeg,
    exceededPercent,
  });
  const total = (exceededPercent: number): TotalAttenuation => {
    const { gasDb, cloudDb } = aloft(exceededPercent);
    return totalAttenuation({
      ...rainAt(exceededPercent),
      diameterM,
      efficiencyRatio,
      wetRefractivityNUnits,
      gasDb,
      cloudDb,
    });
  };
  const at = (exceededPercent: number): AttenuationAt => {
    const whole = total(exceededPercent);
    const spread = spreadOf(climate, rainAt(exceededPercent), whole);
    return { ...whole, exceededPercent, spread };
  };
  return { total, at };
}

/** How far a total may be off. */
function spreadOf(
  climate: Climate,
  rain: RainAttenuationInput,
  { rainDb, cloudDb, scintillationDb }: TotalAttenuation,
): AttenuationSpread {
  const { standardUncertaintyRatio, singleYearRatio } = checkedUncertainty(climate);
  // How much of a change in rain reaches the total: scintillation adds in squares.
  const wetDb = rainDb + cloudDb;
  const share = rainDb === 0 ? 0 : wetDb / Math.hypot(wetDb, scintillationDb);
  const change = (ratio: number): number => {
    if (share === 0 || ratio === 0) return 0;
    const at = (part: number) =>
      rainAttenuation({ ...rain, rainRate001MmPerH: Math.min(1000, rain.rainRate001MmPerH * part) })
        .attenuationDb;
    const step = Math.min(ratio, 0.5);
    return ((at(1 + step) - at(1 - step)) / (2 * step)) * ratio * share;
  };
  const rainInputDb = change(standardUncertaintyRatio);
  const rainModelDb = RAIN_MODEL_RATIO * rainDb * share;
  return {
    rainInputDb,
    rainModelDb,
    standardUncertaintyDb: Math.hypot(rainInputDb, rainModelDb),
    singleYearDb: change(singleYearRatio),
  };
}
