/** How far the intervals of two axes can be relied on. */

import { valueAt } from '../../numeric/columns.js';
import type { IntervalCoverage } from '../fit/peakOutcome.js';
import { foreignSuspected } from '../fit/suspects.js';
import type { SurfaceFit, SurfaceReadings } from './surfaceFit.js';

/** Readings to spare, or fewest where the scatter was told, below which a foreign one hides. */
const FEWEST_SPARE = 3;
/** Reach of the readings to each side of the peak on each axis, in scaled units. */
const LEAST_SIDE = 0.2;
/** Relative uncertainty of a bend from which it hardly stands out. */
const WEAK_BEND = 0.25;

/** `at-least` where enough was read about the peak, and none of it looks foreign. */
export function coupledCoverage(
  fit: SurfaceFit,
  { u, v }: SurfaceReadings,
  peak: readonly [number, number],
  told: boolean,
): Exclude<IntervalCoverage, 'nominal'> {
  const lopsided = [u, v].some((places, k) => {
    const at = valueAt(peak, k);
    return at - Math.min(...places) < LEAST_SIDE || Math.max(...places) - at < LEAST_SIDE;
  });
  const weak = [3, 5].some(
    (k) =>
      fit.standardDeviationDb * Math.sqrt(fit.covariance[k]?.[k] ?? 0) >
      WEAK_BEND * Math.abs(valueAt(fit.surface, k)),
  );
  return fit.beyond || fit.spare < FEWEST_SPARE || lopsided || weak || foreignSuspected(fit, told)
    ? 'not-assured'
    : 'at-least';
}
