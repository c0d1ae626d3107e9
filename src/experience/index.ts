/**
 * Experience: from the records of many installations to a better plan for the next one.
 *
 * @module experience
 */

export type { ExperienceRecord } from './experienceRecord.js';
export {
  type EirpCorrection,
  type ExcessReading,
  footprintCorrection,
  type LearntCorrection,
} from './footprintCorrection.js';
export { type RainExperience, rainExperience, type SiteYear } from './rainExperience.js';
export {
  type CarrierExperience,
  type RecordExperience,
  recordExperience,
} from './recordExperience.js';
export { type SiteDrift, siteDrift, type VisitReading } from './siteDrift.js';
