/** Pointing loss now and after a move to the peak, in the band read and in others. */

import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import type { BandLoss, Interval95Deg } from './peakOutcome.js';
import type { PeakBand } from './peakSamples.js';

/** The position found and where the antenna stands. */
interface Found {
  readonly positionDeg: number;
  readonly interval95Deg: Interval95Deg;
  readonly beamwidthDeg: number;
  readonly nowDeg: number;
}

/** Losses in the band read and in each other band; a bound is the loss from the farther end of the interval. */
export function lossesOf(
  found: Found,
  bands: readonly Required<PeakBand>[],
): { readonly own: Omit<BandLoss, 'name'>; readonly bands: readonly BandLoss[] } {
  const losses = (widthDeg: number, squintDeg: number): Omit<BandLoss, 'name'> => {
    const [fromDeg, toDeg] = found.interval95Deg;
    const worst = (x: number) =>
      Math.max(
        gaussianLobeLossDb(x - fromDeg - squintDeg, widthDeg),
        gaussianLobeLossDb(x - toDeg - squintDeg, widthDeg),
      );
    return {
      lossNowDb: gaussianLobeLossDb(found.nowDeg - found.positionDeg - squintDeg, widthDeg),
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
