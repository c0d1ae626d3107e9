/**
 * Test vectors: the reference values that this library is checked against, for the formulas of others.
 *
 * The tables are JSON files beside this entry (`slantpath/vectors/index.json` lists them).
 *
 * @module
 */

export { checkVectors, type VectorFieldReport, type VectorReport } from './checkVectors.js';
export type { VectorFormula, VectorSlip } from './vectorSlips.js';
export type {
  VectorAnswer,
  VectorField,
  VectorQuestion,
  VectorTable,
  VectorValue,
} from './vectorTable.js';
