/** Recommendation ITU-R P.835-6 (12/2017), Annex 1: reference atmospheres. */

import { inRange, oneOf } from '../../errors.js';
import { REFERENCE_ATMOSPHERES, type ReferenceAtmosphere } from './atmospheres.js';
import { EDITION } from './edition.js';
import { meanAnnualPressureHpa, meanAnnualTemperatureK } from './mean.js';
import { type Profile, SEASONAL_PROFILES } from './seasonal.js';

/** Air at a height. */
export interface AtmosphereAtHeight {
  /** Edition computed. */
  readonly edition: 'P.835-6';
  /** Total pressure in hPa, vapour included. */
  readonly pressureHpa: number;
  /** Temperature in kelvin. */
  readonly temperatureK: number;
  /** Water vapour density in g/m3. */
  readonly waterVapourDensityGPerM3: number;
}

/** Mean water vapour density at sea level in the global mean, g/m3. */
export const MEAN_SEA_LEVEL_DENSITY = 7.5;

/** Values at a height that is already checked. */
export function atmosphereState(
  heightKm: number,
  atmosphere: ReferenceAtmosphere,
  seaLevelDensity: number,
): AtmosphereAtHeight {
  if (atmosphere === 'mean-annual-global') {
    const pressureHpa = meanAnnualPressureHpa(heightKm);
    const temperatureK = meanAnnualTemperatureK(heightKm);
    const exponential = seaLevelDensity * Math.exp(-heightKm / 2);
    // Above a height the mixing ratio stays at 2e-6; a dry ground stays dry.
    const floor = Math.min(seaLevelDensity, (2e-6 * 216.7 * pressureHpa) / temperatureK);
    const mixingRatio = (exponential * temperatureK) / 216.7 / pressureHpa;
    return {
      edition: EDITION,
      pressureHpa,
      temperatureK,
      waterVapourDensityGPerM3: mixingRatio < 2e-6 ? floor : exponential,
    };
  }
  const profile: Profile = SEASONAL_PROFILES[atmosphere];
  return {
    edition: EDITION,
    pressureHpa: profile.pressureHpa(heightKm),
    temperatureK: profile.temperatureK(heightKm),
    waterVapourDensityGPerM3: profile.densityGPerM3(heightKm),
  };
}

/**
 * Pressure, temperature and water vapour of a reference atmosphere at a height.
 *
 * @param heightKm  Geometric height above mean sea level in kilometres, 0 to 100.
 * @param atmosphere  Which reference atmosphere; the global annual mean where none is named.
 * @returns Total pressure, temperature and water vapour density (7.5 g/m3 at sea level in the global mean).
 * @throws {@link DomainError} naming `heightKm` or `atmosphere`.
 *
 * Source: Recommendation ITU-R P.835-6, Annex 1, sections 1 to 4.
 * Accuracy: as printed; the global mean keeps to hydrostatic balance within 5e-5 up to 71 km.
 * @example
 * ```ts
 * import { referenceAtmosphere } from 'slantpath/propagation';
 * referenceAtmosphere(5).temperatureK.toFixed(3); // => '255.676'
 * ```
 */
export function referenceAtmosphere(
  heightKm: number,
  atmosphere: ReferenceAtmosphere = 'mean-annual-global',
): AtmosphereAtHeight {
  return atmosphereState(
    inRange('heightKm', heightKm, 0, 100, 'was it given in metres?'),
    oneOf('atmosphere', atmosphere, REFERENCE_ATMOSPHERES),
    MEAN_SEA_LEVEL_DENSITY,
  );
}
