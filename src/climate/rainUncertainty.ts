/** How far the rain rate exceeded for 0.01 % of an average year may be off, and how far single years stray from it. */

import { normalExceedance, normalExceedanceQuantile } from '../numeric/normal.js';
import type { RainSource } from './rainSource.js';

/** One reason why a rain rate is uncertain. */
export interface RainUncertaintyTerm {
  /** The reason. */
  readonly cause: 'grid' | 'model' | 'measurement' | 'short-record' | 'zone';
  /** Standard deviation as a part of the rain rate. */
  readonly standardUncertaintyRatio: number;
  /** `computed` here, or a figure that is `practice` of the trade and not of the recommendation. */
  readonly basis: 'computed' | 'practice';
}

/** Uncertainty of a rain rate at 0.01 %. */
export interface RainUncertainty {
  /** Standard deviation of the long-term rain rate as a part of it, all terms together. */
  readonly standardUncertaintyRatio: number;
  /** The terms, whose squares add. */
  readonly terms: readonly RainUncertaintyTerm[];
  /** Standard deviation of a single year's rain rate at 0.01 % about the long-term one, as a part of it. */
  readonly singleYearRatio: number;
}

/** Scatter of P.837-7 against measured rain rates at 0.01 %. Usual size in comparisons, not a figure of the recommendation. */
const MODEL_RATIO = 0.25;
/** Scatter of a zone against measured rain rates. Usual size, not a figure of the recommendation. */
const ZONE_RATIO = 0.4;
/** A rain gauge and its one-minute reading. Usual size. */
const GAUGE_RATIO = 0.1;
/**
 * Spread of single years about 0.01 % of the time, as a part of it: `yearToYear` of P.678-3 for 0.01 % and a climatic
 * ratio of 0.2, a usual size where the recommendation's map is not at hand.
 */
export const SINGLE_YEAR_PERCENT_RATIO = 0.52081141;
const PERCENT = 0.01;
const SPREAD = 1.26;

/** Relative change of the rain rate for a relative change of the percentage near 0.01 %, from P.837-7's lognormal. */
function rateForPercent(rainProbabilityPercent: number): number {
  const share = PERCENT / Math.max(rainProbabilityPercent, 2 * PERCENT);
  const z = normalExceedanceQuantile(share);
  const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  return (SPREAD * normalExceedance(z)) / density;
}

/**
 * Uncertainty of a rain rate by its source.
 *
 * @param gridErrorMmPerH  Error of the grid that 95 % of places on land do not exceed.
 */
export function uncertaintyOf(rain: {
  readonly source: RainSource;
  readonly rainRate001MmPerH: number;
  readonly rainProbabilityPercent: number;
  readonly years: number | undefined;
  readonly gridErrorMmPerH: number;
}): RainUncertainty {
  const singleYearRatio = SINGLE_YEAR_PERCENT_RATIO * rateForPercent(rain.rainProbabilityPercent);
  const terms: RainUncertaintyTerm[] = [];
  if (rain.source === 'measured') {
    const record = singleYearRatio / Math.sqrt(rain.years ?? 1);
    terms.push({ cause: 'measurement', standardUncertaintyRatio: GAUGE_RATIO, basis: 'practice' });
    terms.push({ cause: 'short-record', standardUncertaintyRatio: record, basis: 'computed' });
  } else if (rain.source === 'rain-zone') {
    terms.push({ cause: 'zone', standardUncertaintyRatio: ZONE_RATIO, basis: 'practice' });
  } else {
    terms.push({ cause: 'model', standardUncertaintyRatio: MODEL_RATIO, basis: 'practice' });
    if (rain.source === 'climate-grid')
      terms.push({
        cause: 'grid',
        standardUncertaintyRatio: Math.min(
          1,
          rain.gridErrorMmPerH / 2 / Math.max(rain.rainRate001MmPerH, 0.5),
        ),
        basis: 'computed',
      });
  }
  const square = terms.reduce(
    (sum, { standardUncertaintyRatio }) => sum + standardUncertaintyRatio ** 2,
    0,
  );
  return { standardUncertaintyRatio: Math.sqrt(square), terms, singleYearRatio };
}
