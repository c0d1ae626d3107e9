/** The peak of a lobe from any samples of level against position. */

import { peakInterval } from '../lobe/peakInterval.js';
import { beforeTheLobe, edgeOf, lobeStart, scatterBasis, vertex } from './beforeTheLobe.js';
import { foundPeak } from './foundPeak.js';
import { fitLobe } from './lobeFit.js';
import { lobeWork, withoutForeign } from './lobeWork.js';
import type { PeakFit } from './peakOutcome.js';
import { checkedSamples, type PeakSamples } from './peakSamples.js';
import { countOf, problemOf } from './prepared.js';

/**
 * Fits the main lobe of a reflector and gives its peak with an honest 95 % interval.
 *
 * Least squares of level against position, with noise floor, drift and scatter known or found. Beyond the half-power points
 * the lobe falls faster than a parabola in dB, by as much as the taper says or as reflectors do, and may be a little lopsided;
 * a given beamwidth counts as no better known than `beamwidthStandardUncertaintyRatio`. What is not known of width and shape
 * widens the interval. Which readings are foreign to the lobe is weighed by probability, and readings beyond the main lobe
 * are left out. With `lobe: 'parabola'` the interval is Fieller's: all positions at which the slope of the fit does not differ
 * from zero, with Student's t for the readings to spare. Readings are taken as independent: flicker slower than the reading
 * (see {@link averagedScatter}) makes every interval too short.
 *
 * @param samples  Positions and levels, and what else is known.
 * @returns One of six outcomes, by `kind`: `peak`, `edge`, `flat`, `not-main-lobe`, `too-few`, `contradictory`.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16, 175 (1954), for the parabola 12 (offset / beamwidth)^2 dB; the lobe of a
 * tapered round aperture for the reflector.
 * Accuracy: where `coverage` does not say `not-assured`, 95 % or more of the intervals hold the peak in every cell of the
 * coverage table (700 simulated runs a cell on lobes of real apertures and bent wavefronts); as priors and limits were chosen on the
 * same simulation, that is no independent proof.
 * @example
 * ```ts
 * import { fitPeak } from 'slantpath/peaking';
 * const fit = fitPeak({
 *   positionDeg: [-1, -0.5, 0, 0.5, 1],
 *   levelDbm: [-44.1, -41.2, -39.9, -40.9, -43.6],
 * });
 * fit.kind === 'peak' && fit.positionDeg.toFixed(2); // => '0.04'
 * ```
 */
export function fitPeak(samples: PeakSamples): PeakFit {
  const checked = checkedSamples(samples);
  const work = lobeWork(checked);
  const count = countOf(checked, work.used, work.design);
  if (count.readings < count.readingsNeeded)
    return { kind: 'too-few', reason: 'readings', ...count };
  if (count.places < count.placesNeeded) return { kind: 'too-few', reason: 'places', ...count };
  const full = fitLobe(work.design);
  if (full === undefined)
    return {
      kind: 'too-few',
      reason: work.design.times === undefined ? 'places' : 'drift',
      ...count,
    };
  const begun = withoutForeign(work, work.design, full);
  const early = beforeTheLobe(work, begun);
  if (early !== undefined) return early;
  const unitDeg = checked.widthDeg ?? work.scaleDeg * Math.sqrt(-12 / begun.fit.c);
  const { middleDeg } = work;
  const problem = problemOf(checked, work.used, work.design, { middleDeg, unitDeg });
  const basis = scatterBasis(work);
  const start = lobeStart(work, problem, basis, begun.fit, unitDeg);
  if ('kind' in start) return start;
  const all = new Float64Array(problem.places.length).fill(1);
  const found = peakInterval(problem, basis, start.state, all, checked.keepAll || checked.fitFloor);
  if (found === undefined) return edgeOf(work, vertex(begun.fit));
  return foundPeak(work, { problem, found, unitDeg, begun: begun.fit });
}
