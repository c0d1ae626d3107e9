/**
 * Grid references: plus codes and the Military Grid Reference System.
 *
 * @module gridref
 */

export type { GridCell } from './cell.js';
export { coordinatesToMgrs, type MgrsDigits, mgrsToCoordinates } from './mgrs.js';
export { coordinatesToPlusCode, type PlusCodeLength, plusCodeToCoordinates } from './plusCode.js';
