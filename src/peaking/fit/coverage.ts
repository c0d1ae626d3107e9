/** How far the 95 % of an interval can be relied on. */

import { denseAt } from '../../numeric/columns.js';
import { type LobeProblem, NARROW, PEAK } from '../lobe/lobeModel.js';
import type { PeakInterval } from '../lobe/peakInterval.js';
import type { IntervalCoverage } from './peakOutcome.js';

/** Fewest readings used, and fewest where the scatter was stated, so that a foreign one still shows. */
const FEWEST = { found: 5, stated: 7 } as const;
/** Fewest readings on the lobe, those left out counted in. */
const FEWEST_GIVEN = 6;
/** Readings to spare up to which rounded readings can hide their scatter. */
const ROUNDED_SPARE = 6;
/** Reach of the readings to each side of the peak, and in all, in beamwidths, from which the lobe is seen. */
const LEAST_SIDE = { few: 0.25, many: 0.12 } as const;
const MANY_READINGS = 12;
const LEAST_SPAN = 0.6;
/** Relative uncertainty of the squared width from which the bend hardly stands out. */
const WEAK_BEND = 0.4;
/** Doubt about which readings are foreign that few readings cannot bear. */
const MUCH_DOUBT = 0.3;
const FEW_READINGS = 9;

/**
 * The label: by what was read, not by how well it happened to fit, so that it is true for the sets that carry it.
 *
 * @param exactLobe  Whether the lobe is a parabola by statement: then nothing widens the interval but scatter.
 */
export function coverageOf(
  problem: LobeProblem,
  found: PeakInterval,
  basis: { readonly exactLobe: boolean; readonly stated: boolean; readonly stepDb: number },
): IntervalCoverage {
  const { lobe, answers } = found;
  const { solution, weights, spare } = lobe;
  const used = problem.places.filter((_, i) => denseAt(weights, i) > 0);
  const peak = denseAt(solution.state, PEAK);
  const root = Math.sqrt(denseAt(solution.state, NARROW));
  const below = root * (peak - used.reduce((a, b) => Math.min(a, b)));
  const above = root * (used.reduce((a, b) => Math.max(a, b)) - peak);
  const narrowAt = solution.active.indexOf(NARROW);
  const m = solution.active.length;
  const narrowDoubt =
    narrowAt < 0
      ? 0
      : Math.sqrt(lobe.variance * denseAt(solution.inverse, narrowAt * m + narrowAt)) / root ** 2;
  const doubtful = 1 - (answers[0]?.probability ?? 1);
  if (basis.exactLobe) {
    if (basis.stated && answers.length === 1) return 'nominal';
    if (spare < 3 && narrowDoubt > 0.13) return 'not-assured';
    if ((answers[0]?.leftOut.length ?? 0) > 0 && used.length < 12) return 'not-assured';
    return basis.stepDb > 0 && spare <= ROUNDED_SPARE ? 'at-least' : 'nominal';
  }
  return problem.places.length < FEWEST_GIVEN ||
    used.length < (basis.stated ? FEWEST.stated : FEWEST.found) ||
    Math.min(below, above) < (used.length < MANY_READINGS ? LEAST_SIDE.few : LEAST_SIDE.many) ||
    below + above < LEAST_SPAN ||
    narrowDoubt > WEAK_BEND ||
    (doubtful > MUCH_DOUBT && problem.places.length < FEW_READINGS)
    ? 'not-assured'
    : 'at-least';
}
