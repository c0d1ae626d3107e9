/** Pointing loss now and after a move to the peak, in the band read and in others. */

import { shapeLevelDb } from '../lobe/lobeShape.js';
import type { BandLoss, Interval95Deg } from './peakOutcome.js';
import type { PeakBand } from './peakSamples.js';

/** The position found and where the antenna stands. */
interface Found {
  readonly positionDeg: number;
  readonly interval95Deg: Interval95Deg;
  readonly beamwidthDeg: number;
  /** Width that the bounds reckon with: narrower by its standard uncertainty. */
  readonly narrowestRatio: number;
  /** Shape of the lobe: see the lobe's own file. */
  readonly nullRatio: number;
  readonly nowDeg: number;
}

/** Losses in the band read and in each other band; a bound is the loss from the farther end of the interval. */
export function lossesOf(
  found: Found,
  bands: readonly Required<PeakBand>[],
): { readonly own: Omit<BandLoss, 'name'>; readonly bands: readonly BandLoss[] } {
  const losses = (widthDeg: number, squintDeg: number): Omit<BandLoss, 'name'> => {
    const [fromDeg, toDeg] = found.interval95Deg;
    const loss = (x: number, ratio: number) =>
      -shapeLevelDb(x / (ratio * widthDeg), found.nullRatio) + 0;
    const worst = (x: number) =>
      Math.max(
        loss(x - fromDeg - squintDeg, found.narrowestRatio),
        loss(x - toDeg - squintDeg, found.narrowestRatio),
      );
    return {
      lossNowDb: loss(found.nowDeg - found.positionDeg - squintDeg, 1),
      lossNowUpper95Db: worst(found.nowDeg),
      lossAtPeakUpper95Db: worst(found.positionDeg),
    };
  };
  return {
    own: losses(found.beamwidthDeg, 0),
    bands: bands.map((band) => ({
      name: band.name,
      ...losses(band.beamwidthDeg, band.squintDeg),
    })),
  };
}
