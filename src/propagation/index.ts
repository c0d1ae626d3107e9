/**
 * The Earth-space path by the recommendations of the ITU-R, one file each, the edition in every result.
 *
 * @module propagation
 */

export {
  apparentElevation,
  geometricElevation,
  type Refraction,
} from '../pointing/look/refraction.js';
export {
  filmThicknessMm,
  type LayerLoss,
  layerLoss,
  type SurfaceLayer,
} from './layerLoss.js';
export {
  medianWetRefractivity,
  type WetRefractivity,
  wetRefractivity,
} from './p453-14.js';
export {
  type CrossPolarDiscrimination,
  type CrossPolarDiscriminationInput,
  crossPolarDiscrimination,
} from './p618-14/crossPolar.js';
export {
  type ScaledCrossPolarDiscrimination,
  scaledCrossPolarDiscrimination,
} from './p618-14/crossPolarScaling.js';
export {
  type DiversitySite,
  type SiteDiversity,
  siteDiversity,
} from './p618-14/diversity.js';
export { type DiversityGain, diversityGain } from './p618-14/diversityGain.js';
export { type ExceededPercent, rainExceedance, totalExceedance } from './p618-14/exceedance.js';
export {
  type RainAttenuationLognormal,
  type RainAttenuationLognormalInput,
  rainAttenuationLognormal,
} from './p618-14/lognormal.js';
export {
  type LowElevationFade,
  type LowElevationFadeInput,
  lowElevationFade,
} from './p618-14/lowElevation.js';
export { meanRadiatingTemperature, type SkyNoise, skyNoise } from './p618-14/noise.js';
export {
  type RainAttenuationProbability,
  type RainAttenuationProbabilityInput,
  rainAttenuationProbability,
} from './p618-14/probability.js';
export {
  type RainAttenuation,
  type RainAttenuationInput,
  type RainPath,
  rainAttenuation,
} from './p618-14/rain.js';
export {
  type RainAttenuationColumns,
  type RainAttenuationResult,
  rainAttenuationBatch,
} from './p618-14/rainBatch.js';
export {
  frequencyScaledRain,
  type PolarizationScaledRain,
  polarizationScaledRain,
  type ScaledRainAttenuation,
} from './p618-14/scaling.js';
export {
  type ScintillationFade,
  type ScintillationFadeInput,
  type ScintillationPath,
  scintillationFade,
} from './p618-14/scintillation.js';
export {
  heldPercent,
  type TotalAttenuation,
  type TotalAttenuationInput,
  totalAttenuation,
} from './p618-14/total.js';
export {
  type TotalAttenuationColumns,
  type TotalAttenuationResult,
  totalAttenuationBatch,
} from './p618-14/totalBatch.js';
export {
  type ApproximateGasAttenuation,
  type ApproximateGasAttenuationInput,
  approximateGasAttenuation,
  type SurfaceAir,
} from './p676-13/approximate.js';
export type { AirAboveStation } from './p676-13/column.js';
export {
  type GasSlantAttenuation,
  type GasSlantAttenuationInput,
  gasSlantAttenuation,
} from './p676-13/slant.js';
export {
  type GasSlantAttenuationBatchInput,
  type GasSlantAttenuationColumns,
  gasSlantAttenuationBatch,
} from './p676-13/slantBatch.js';
export {
  type AirState,
  type SpecificGasAttenuation,
  type SpecificGasAttenuationInput,
  specificGasAttenuation,
} from './p676-13/specific.js';
export { type YearToYear, yearToYear } from './p678-3.js';
export { type BeamSpreadingLoss, beamSpreadingLoss } from './p834-9.js';
export { REFERENCE_ATMOSPHERES, type ReferenceAtmosphere } from './p835-6/atmospheres.js';
export { type AtmosphereAtHeight, referenceAtmosphere } from './p835-6/referenceAtmosphere.js';
export {
  type WaterVapour,
  type WaterVapourInput,
  type WaterVapourMaps,
  waterVapour,
} from './p836-6.js';
export {
  type MonthlyNormals,
  type RainMonth,
  type RainProbability,
  type RainRate,
  rainProbability,
  rainRate,
} from './p837-7.js';
export type { RainCoefficients } from './p838-3/coefficients.js';
export {
  type SpecificRainAttenuation,
  type SpecificRainAttenuationInput,
  specificRainAttenuation,
} from './p838-3/specificRainAttenuation.js';
export { type RainHeight, rainHeight } from './p839-4.js';
export {
  type CloudAttenuation,
  cloudAttenuation,
  cloudAttenuationLognormal,
  cloudSpecificCoefficient,
} from './p840-9/cloudAttenuation.js';
export {
  type CloudLiquid,
  type CloudLiquidInput,
  type CloudLognormal,
  cloudLiquid,
  cloudLiquidLognormal,
} from './p840-9/cloudLiquid.js';
export {
  annualPercent,
  type WorstMonth,
  type WorstMonthClimate,
  worstMonthPercent,
} from './p841-6.js';
export { type GlobalMap, type MapPlace, mapValue, mapValueBicubic } from './p1144.js';
export { meanTemperature } from './p1510-1.js';
export { groundAltitude } from './p1511-1.js';
export { type FadeDuration, type FadeDurationInput, fadeDuration } from './p1623-1.js';
