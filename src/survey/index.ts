/**
 * Is the view clear: horizon profiles, obstructions, and where a reflector sees every slot.
 *
 * @module survey
 */

export { type BeamClearance, type BeamInput, beamClearance } from './beamClearance.js';
export { type ArcStretch, clearArc } from './clearArc.js';
export { type ClearPlacesInput, clearPlaces, type PlaceView } from './clearPlaces.js';
export { type HorizonAt, horizonAt } from './horizonAt.js';
export {
  type HorizonPoint,
  type HorizonProfile,
  horizonProfile,
  type Sighting,
  type SightingDirection,
  type SightingHeight,
} from './horizonProfile.js';
export { type LocalPointM, type Obstacle, obstacleCorner } from './obstacle.js';
export {
  type ObstructionClearance,
  type ObstructionInput,
  obstructionClearance,
} from './obstructionClearance.js';
export {
  type ObstructionBatchInput,
  type ObstructionColumns,
  obstructionClearanceBatch,
} from './obstructionClearanceBatch.js';
export {
  type BeamDirection,
  type RowSpacing,
  type RowSpacingInput,
  rowSpacing,
} from './rowSpacing.js';
export { type SlotView, slotViews } from './slotViews.js';
export { type ViewClearance, viewClearance } from './viewClearance.js';
export { type YearsClear, yearsClear } from './yearsClear.js';
