/** How far a lopsided lobe and a drift move the middle between two equal levels. */

import { bracketedRoot } from '../../numeric/root.js';
import {
  reflectorShape,
  SHAPE_REACH,
  shapeLevelDb,
  shapeLopsided,
  shapeSlope,
} from '../lobe/lobeShape.js';

/** Standard deviation in dB of a drift between the two places. */
const DRIFT_DB = 0.1;

/**
 * Variance of the peak's place for two places `dropDb` below it, a `path` apart, in the unit of the path squared.
 *
 * A lobe that is lopsided by l dB there moves both places by l over its slope, and so does their middle; a drift d between them moves
 * one place by d over the slope, the middle by half of that.
 */
export function lobeVariance(dropDb: number, path: number): number {
  const { nullRatio, bend, lopsidedDb } = reflectorShape();
  const levelDb = (offset: number) => shapeLevelDb(offset, nullRatio, bend);
  const offset =
    bracketedRoot((x) => levelDb(x) + dropDb, { from: 1e-6, to: SHAPE_REACH }) ?? SHAPE_REACH;
  const slope = Math.abs(shapeSlope(offset, nullRatio, bend));
  const perDb = path / 2 / offset / slope;
  return perDb ** 2 * ((lopsidedDb * shapeLopsided(offset, nullRatio)) ** 2 + DRIFT_DB ** 2 / 4);
}
