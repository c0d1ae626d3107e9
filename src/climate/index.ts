/**
 * Climate of any place on Earth, offline: what the propagation recommendations need to know of it, and the attenuation
 * that follows.
 *
 * @module climate
 */

export {
  type AttenuationAt,
  type AttenuationSpread,
  attenuationAt,
  type SkyPath,
} from './attenuationAt.js';
export {
  attenuationAtBatch,
  type PlannedAttenuation,
  type PlannedStations,
} from './attenuationAtBatch.js';
export type { Climate, WaterAloft } from './climateAt.js';
export {
  type ClimateAtBatchInput,
  type ClimateColumns,
  climateAtBatch,
} from './climateAtBatch.js';
export { CLIMATE_GRID as SHIPPED_CLIMATE_GRID } from './grid/gridData.js';
export type { ClimateGridFile, ClimateLayer, LayerTransform } from './grid/gridFile.js';
export type { LocalRain, MeasuredRain, RainSource } from './rainSource.js';
export type { RainUncertainty, RainUncertaintyTerm } from './rainUncertainty.js';
export { RAIN_ZONES, type RainZone, type RainZoneRate, rainZoneRate } from './rainZone.js';
export { climateAt, climateFromGrid } from './shipped.js';
export { waterAloftAt } from './waterAloftAt.js';
