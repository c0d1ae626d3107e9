/** Pressure of the wind: from a speed, and the peak pressure at a height above a kind of terrain. */

import { inRange, oneOf } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';

/** Air density that EN 1991-1-4 recommends, kg/m^3; national annexes differ. */
const AIR_DENSITY_KG_PER_M3 = 1.25;

const VELOCITY_PRESSURE_WIND_KEYS = {
  windSpeedMPerS: true,
  airDensityKgPerM3: true,
} satisfies Keys<Parameters<typeof velocityPressure>[0]>;

/**
 * Velocity pressure in pascals (newtons per square metre): half the air density times the square of the speed.
 *
 * @param wind  Speed in metres a second, 0 to 100; air density in kg/m^3, 0.5 to 1.5, default 1.25.
 * @throws {@link DomainError} naming the field.
 * Source: EN 1991-1-4:2005, 4.5 (read in open texts that quote it). Accuracy: rounding only.
 * @example
 * ```ts
 * import { velocityPressure } from 'slantpath/wind';
 * velocityPressure({ windSpeedMPerS: 27 }); // => 455.625
 * ```
 */
export function velocityPressure(wind: {
  readonly windSpeedMPerS: number;
  readonly airDensityKgPerM3?: number;
}): number {
  const given = knownOnly('wind', wind, VELOCITY_PRESSURE_WIND_KEYS);
  const speed = inRange('windSpeedMPerS', given.windSpeedMPerS, 0, 100, 'is it in km/h?');
  const density = inRange(
    'airDensityKgPerM3',
    given.airDensityKgPerM3 ?? AIR_DENSITY_KG_PER_M3,
    0.5,
    1.5,
  );
  return (density * speed * speed) / 2;
}

/** Terrain of EN 1991-1-4, Table 4.1. */
export type TerrainCategory = '0' | 'I' | 'II' | 'III' | 'IV';

/** Roughness length and least height of each category in metres. */
const TERRAIN: Readonly<Record<TerrainCategory, readonly [roughnessM: number, leastM: number]>> = {
  '0': [0.003, 1],
  I: [0.01, 1],
  II: [0.05, 2],
  III: [0.3, 5],
  IV: [1, 10],
};

/** Peak pressure with the steps of the hand calculation. */
export interface PeakVelocityPressure {
  /** Height that counts in metres: the given one, or the least height of the terrain. */
  readonly countingHeightM: number;
  /** Terrain factor, a ratio. */
  readonly terrainRatio: number;
  /** Roughness factor at the height, a ratio. */
  readonly roughnessRatio: number;
  /** Turbulence intensity, a ratio. */
  readonly turbulenceRatio: number;
  /** Mean wind speed at the height in metres a second. */
  readonly meanSpeedMPerS: number;
  /** Peak velocity pressure in pascals. */
  readonly peakPressurePa: number;
}

const PEAK_VELOCITY_PRESSURE_PLACE_KEYS = {
  basicSpeedMPerS: true,
  terrain: true,
  heightM: true,
} satisfies Keys<Parameters<typeof peakVelocityPressure>[0]>;

/**
 * Peak velocity pressure at a height, for a basic wind speed and a kind of terrain.
 *
 * Terrain: 0 sea and coast; I lakes, flat land without obstacles; II low vegetation, single obstacles; III villages, suburbs,
 * forest; IV towns with 15 % of buildings over 15 m. Hills, ridges and roof edges raise the pressure and are not in it (orography and
 * turbulence factor 1). The basic speed, and often the rule itself, are set by each country.
 *
 * @param place  Basic wind speed in metres a second, 5 to 60; category; height above the ground in metres, 0 to 200.
 * @throws {@link DomainError} naming the field; above 200 m the formula does not hold.
 * Source: EN 1991-1-4:2005, 4.3 to 4.5, Table 4.1 (read in open programs that follow it; national annexes change it).
 * Accuracy: rounding; the wind itself is as uncertain as the map of basic speeds.
 * @example
 * ```ts
 * import { peakVelocityPressure } from 'slantpath/wind';
 * const place = { basicSpeedMPerS: 24, terrain: 'II', heightM: 10 } as const;
 * peakVelocityPressure(place).peakPressurePa.toFixed(0); // => '847'
 * ```
 */
export function peakVelocityPressure(place: {
  readonly basicSpeedMPerS: number;
  readonly terrain: TerrainCategory;
  readonly heightM: number;
}): PeakVelocityPressure {
  const given = known('place', place, PEAK_VELOCITY_PRESSURE_PLACE_KEYS);
  const basic = inRange('basicSpeedMPerS', given.basicSpeedMPerS, 5, 60, 'is it in km/h?');
  const terrain = oneOf('terrain', given.terrain, ['0', 'I', 'II', 'III', 'IV']);
  const [roughnessM, leastM] = TERRAIN[terrain];
  const countingHeightM = Math.max(leastM, inRange('heightM', given.heightM, 0, 200));
  const terrainRatio = 0.19 * (roughnessM / 0.05) ** 0.07;
  const logarithm = Math.log(countingHeightM / roughnessM);
  const roughnessRatio = terrainRatio * logarithm;
  const turbulenceRatio = 1 / logarithm;
  const meanSpeedMPerS = roughnessRatio * basic;
  const peakPressurePa =
    (1 + 7 * turbulenceRatio) * velocityPressure({ windSpeedMPerS: meanSpeedMPerS });
  return {
    countingHeightM,
    terrainRatio,
    roughnessRatio,
    turbulenceRatio,
    meanSpeedMPerS,
    peakPressurePa,
  };
}
