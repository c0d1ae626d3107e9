/** Recommendation ITU-R P.676-13 (08/2022), Annex 2: gases along a slant path from surface values. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { checkedRaisedElevationDeg, namesOutside } from '../inputs.js';
import { ANNEX_2_TABLE, TABLE_FROM_GHZ, TABLE_ROW, TABLE_TO_GHZ } from './annex2Table.js';
import { EDITION } from './edition.js';
import {
  checkedAirTemperatureK,
  checkedPressureHpa,
  checkedVapourDensity,
  specificGasAttenuation,
  waterVapourPressureHpa,
} from './specific.js';

/** Air at the surface. */
export interface SurfaceAir {
  /** Total barometric pressure in hPa, vapour included. */
  readonly pressureHpa: number;
  /** Temperature in kelvin. */
  readonly temperatureK: number;
  /** Water vapour density in g/m3. */
  readonly waterVapourDensityGPerM3: number;
}

const SURFACE_AIR_KEYS = {
  pressureHpa: true,
  temperatureK: true,
  waterVapourDensityGPerM3: true,
} satisfies Keys<SurfaceAir>;

/** Input of {@link approximateGasAttenuation}: the air at an instant, or its annual mean. */
export interface ApproximateGasAttenuationInput extends SurfaceAir {
  /** Frequency in GHz, 1 to 70. */
  readonly frequencyGHz: number;
  /** Elevation in degrees, 0.1 to 90; stated range 5 to 90. */
  readonly elevationDeg: number;
  /**
   * Water vapour above the station in kg/m2, of the instant or exceeded for the percentage of time of interest. With
   * it the vapour's part is found by the recommendation's second method, without it from the surface density.
   */
  readonly waterVapourContentKgPerM2?: number | undefined;
  /** Surface air at the percentage of time of interest, for the height of oxygen; the air itself where not given. */
  readonly atPercent?: SurfaceAir | undefined;
}

const APPROXIMATE_GAS_ATTENUATION_INPUT_KEYS = {
  frequencyGHz: true,
  elevationDeg: true,
  waterVapourContentKgPerM2: true,
  atPercent: true,
  pressureHpa: true,
  temperatureK: true,
  waterVapourDensityGPerM3: true,
} satisfies Keys<ApproximateGasAttenuationInput>;

/** Approximate gas attenuation with its terms. */
export interface ApproximateGasAttenuation {
  /** Edition computed. */
  readonly edition: 'P.676-13';
  /** Specific attenuation of oxygen at the surface, dB/km. */
  readonly oxygenDbPerKm: number;
  /** Equivalent height of oxygen, km. */
  readonly oxygenHeightKm: number;
  /** Oxygen along the path, dB. */
  readonly oxygenDb: number;
  /** How the vapour was found: from its content above the station, or from its density at the surface. */
  readonly waterVapourFrom: 'content' | 'surface-density';
  /** Water vapour at the zenith, dB. */
  readonly waterVapourZenithDb: number;
  /** Water vapour along the path, dB. */
  readonly waterVapourDb: number;
  /** Both together, dB, positive as a loss. */
  readonly attenuationDb: number;
  /** Names of inputs outside the stated range (5 degrees and up). */
  readonly outsideStatedRange: readonly string[];
}

/** Coefficient of a column of the table at a frequency, linear between its rows. */
function coefficient(frequencyGHz: number, column: number): number {
  const place = (frequencyGHz - TABLE_FROM_GHZ) * 2;
  const row = Math.min(Math.floor(place), ANNEX_2_TABLE.length / TABLE_ROW - 2);
  const at = row * TABLE_ROW + column;
  const low = valueAt(ANNEX_2_TABLE, at);
  const high = valueAt(ANNEX_2_TABLE, at + TABLE_ROW);
  return low + (high - low) * (place - row);
}

/** Equivalent height of water vapour, km; equation (37) and Table 4. */
function vapourHeightKm(f: number): number {
  return (
    5.6585e-5 * f +
    1.8348 +
    2.6846 / ((f - 22.23508) ** 2 + 2.7649) +
    5.8905 / ((f - 183.310087) ** 2 + 4.9219) +
    2.981 / ((f - 325.152888) ** 2 + 3.0748)
  );
}

function checkedSurface(air: SurfaceAir, path: string): SurfaceAir {
  return {
    pressureHpa: inRange(
      `${path}pressureHpa`,
      checkedPressureHpa(`${path}pressureHpa`, air.pressureHpa),
      300,
      1200,
      'was it given in another unit?',
    ),
    temperatureK: checkedAirTemperatureK(air.temperatureK, `${path}temperatureK`),
    waterVapourDensityGPerM3: checkedVapourDensity(
      air.waterVapourDensityGPerM3,
      `${path}waterVapourDensityGPerM3`,
    ),
  };
}

/**
 * Attenuation by oxygen and water vapour along a slant path, from values at the surface.
 *
 * Oxygen: specific attenuation at the surface times an equivalent height. Water vapour: mass absorption times the
 * content above the station, or specific attenuation times an equivalent height. Both over the sine of the elevation.
 *
 * For statistics give the annual mean of the surface air, its values exceeded for the percentage in `atPercent`,
 * and the water vapour content exceeded for it.
 *
 * @param input  Frequency, elevation, surface air and, if known, water vapour content; see the fields.
 * @returns Attenuation in dB (positive is a loss) with its terms.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain. Above 70 GHz use
 *   `gasSlantAttenuation`, which has no such limit.
 *
 * Source: Recommendation ITU-R P.676-13, Annex 2, sections 1 and 2.
 * Accuracy: 2e-10 relative against the ITU-R validation examples (instantaneous, from surface density).
 * @example
 * ```ts
 * import { approximateGasAttenuation } from 'slantpath/propagation';
 * const gas = approximateGasAttenuation({
 *   frequencyGHz: 20,
 *   elevationDeg: 35,
 *   pressureHpa: 1013.25,
 *   temperatureK: 288.15,
 *   waterVapourDensityGPerM3: 7.5,
 * });
 * gas.attenuationDb.toFixed(3); // => '0.471'
 * ```
 */
export function approximateGasAttenuation(
  input: ApproximateGasAttenuationInput,
): ApproximateGasAttenuation {
  const air = checkedSurface(known('input', input, APPROXIMATE_GAS_ATTENUATION_INPUT_KEYS), '');
  const frequencyGHz = inRange(
    'frequencyGHz',
    input.frequencyGHz,
    TABLE_FROM_GHZ,
    TABLE_TO_GHZ,
    'was the frequency given in MHz?',
  );
  const elevationDeg = checkedRaisedElevationDeg(input.elevationDeg);
  const content =
    input.waterVapourContentKgPerM2 === undefined
      ? undefined
      : inRange('waterVapourContentKgPerM2', input.waterVapourContentKgPerM2, 0, 200);
  const at =
    input.atPercent === undefined
      ? air
      : checkedSurface(known('atPercent', input.atPercent, SURFACE_AIR_KEYS), 'atPercent.');

  const { pressureHpa, temperatureK, waterVapourDensityGPerM3: density } = air;
  const specific = specificGasAttenuation({
    frequencyGHz,
    dryPressureHpa: pressureHpa - waterVapourPressureHpa(density, temperatureK),
    temperatureK,
    waterVapourDensityGPerM3: density,
  });
  const oxygenHeightKm = Math.max(
    0,
    coefficient(frequencyGHz, 0) +
      coefficient(frequencyGHz, 1) * at.temperatureK +
      coefficient(frequencyGHz, 2) * at.pressureHpa +
      coefficient(frequencyGHz, 3) * at.waterVapourDensityGPerM3,
  );
  const massAbsorption = Math.max(
    0,
    coefficient(frequencyGHz, 4) +
      coefficient(frequencyGHz, 5) * density +
      coefficient(frequencyGHz, 6) * temperatureK +
      coefficient(frequencyGHz, 7) * pressureHpa,
  );
  const waterVapourZenithDb =
    content === undefined
      ? specific.waterVapourDbPerKm * vapourHeightKm(frequencyGHz)
      : massAbsorption * content;
  const sine = sinDeg(elevationDeg);
  const oxygenDb = (specific.oxygenDbPerKm * oxygenHeightKm) / sine;
  const waterVapourDb = waterVapourZenithDb / sine;
  return {
    edition: EDITION,
    oxygenDbPerKm: specific.oxygenDbPerKm,
    oxygenHeightKm,
    oxygenDb,
    waterVapourFrom: content === undefined ? 'surface-density' : 'content',
    waterVapourZenithDb,
    waterVapourDb,
    attenuationDb: oxygenDb + waterVapourDb,
    outsideStatedRange: namesOutside(['elevationDeg', elevationDeg, 5, 90]),
  };
}
