/**
 * Is the view clear: horizon profiles, obstructions, and where a reflector sees every slot.
 *
 * @module survey
 */

export { type HorizonAt, horizonAt } from './horizonAt.js';
export {
  type HorizonPoint,
  type HorizonProfile,
  horizonProfile,
  type Sighting,
  type SightingDirection,
  type SightingHeight,
} from './horizonProfile.js';
export { type SlotView, slotViews } from './slotViews.js';
export { type ViewClearance, viewClearance } from './viewClearance.js';
