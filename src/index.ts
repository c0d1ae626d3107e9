/**
 * slantpath: satellite pointing math. This entry holds the parts that need no dependency and no tables; the others
 * (`slantpath/magnetic`, `/geodesic`, `/gridref`, `/sun`, `/orbit`, `/climate`, `/job`, `/teaching`)
 * are entries of their own.
 *
 * @module slantpath
 */

export * from './acceptance/index.js';
export * from './antenna/index.js';
export * from './distribution/index.js';
export * from './earth/index.js';
export {
  DomainError,
  type DomainErrorCode,
  type DomainErrorDetails,
  type DomainErrorJson,
  isDomainError,
} from './errors.js';
export * from './experience/index.js';
export * from './ingress/index.js';
export * from './link/index.js';
export { sumPowerDbm } from './numeric/decibel.js';
export { type MarkedRows, markBadRows, rowOutcomes } from './numeric/rows/markBadRows.js';
export { fieldsOutside, outsideStatedFields } from './numeric/rows/outsideFields.js';
export * from './peaking/index.js';
export * from './pointing/index.js';
export * from './propagation/index.js';
export * from './readings/index.js';
export * from './survey/index.js';
export * from './transmit/index.js';
export * from './tuning/index.js';
export * from './wind/index.js';
