/** Bands: what a peak found at one frequency says about the pointing loss at another. */

import { inRange, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { gaussianLobeLossDb, gaussianLobeOffsetDeg } from '../../numeric/gaussianLobe.js';
import { bracketedRoot } from '../../numeric/root.js';
import { reflectorShape, SHAPE_REACH, shapeLevelDb, shapeLopsided } from '../lobe/lobeShape.js';

/** A pointing loss known in one band, and the other band. */
export interface BandLossInput {
  /** Pointing loss in the band that was read, in dB, 0 or more (of a {@link PeakFound}: any of its losses). */
  readonly lossDb: number;
  /** Half-power beamwidth in the band that was read, in degrees. */
  readonly beamwidthDeg: number;
  /** Frequency that was read, in GHz. */
  readonly frequencyGHz: number;
  /** Frequency of the other band, in GHz. */
  readonly otherFrequencyGHz: number;
  /** Half-power beamwidth in the other band in degrees; default scaled by frequency (same illumination). */
  readonly otherBeamwidthDeg?: number;
  /** Angle between the peaks of the two bands in degrees, 0 or more (feeds that squint); default 0. */
  readonly squintDeg?: number;
}

const BAND_LOSS_INPUT_KEYS = {
  lossDb: true,
  beamwidthDeg: true,
  frequencyGHz: true,
  otherFrequencyGHz: true,
  otherBeamwidthDeg: true,
  squintDeg: true,
} satisfies Keys<BandLossInput>;

/** The loss in the other band. */
export interface OtherBandLoss {
  /** Offset from the peak in the band that was read, in degrees. */
  readonly offsetDeg: number;
  /** Half-power beamwidth in the other band in degrees. */
  readonly otherBeamwidthDeg: number;
  /** Pointing loss in the other band in dB by the parabola, the squint added to the offset. */
  readonly otherLossDb: number;
  /** The same with the squint taken from the offset. */
  readonly otherLossAtLeastDb: number;
  /**
   * Bound of the loss in the other band on lobes as reflectors have them, with 95 % confidence, in dB; `null` where it lies a beamwidth or more off
   * the peak, beyond the main lobe.
   */
  readonly otherLossUpper95Db: number | null;
}

/**
 * Pointing loss in another band of the same reflector, from a loss known in one.
 *
 * The offset is the same angle, the beam narrower at the higher frequency, so the loss grows with the frequency squared:
 * peak on the higher band where there is one.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: beamwidth in proportion to wavelength over diameter; lobe 12 (offset / beamwidth)^2 dB.
 * Accuracy: `otherLossUpper95Db` holds at 95 % or more of the places on the simulated reflectors, from 0.04 beamwidth off the peak to 3 dB of loss in the
 * other band; its doubt of 3 % in the width was chosen on the same reflectors, so that this is no independent proof. The real loss is above `otherLossDb`,
 * the arithmetic by hand, at nine of ten of these places, by some 6 % (`tests/peaking/others.simulation.test.ts`).
 * @example
 * ```ts
 * import { bandLoss } from 'slantpath/peaking';
 * const ka = bandLoss({
 *   lossDb: 0.1,
 *   beamwidthDeg: 1.9,
 *   frequencyGHz: 11.7,
 *   otherFrequencyGHz: 19.9,
 * });
 * ka.otherLossDb.toFixed(2); // => '0.29'
 * ```
 */
export function bandLoss(input: BandLossInput): OtherBandLoss {
  knownOnly('input', input, BAND_LOSS_INPUT_KEYS);
  const lossDb = inRange('lossDb', input.lossDb, 0, 60);
  const widthDeg = inRange('beamwidthDeg', positive('beamwidthDeg', input.beamwidthDeg), 1e-4, 180);
  const megahertz = 'is the frequency in GHz?';
  const frequencyGHz = inRange('frequencyGHz', input.frequencyGHz, 0.1, 300, megahertz);
  const other = inRange('otherFrequencyGHz', input.otherFrequencyGHz, 0.1, 300, megahertz);
  const otherBeamwidthDeg =
    input.otherBeamwidthDeg === undefined
      ? (widthDeg * frequencyGHz) / other
      : inRange(
          'otherBeamwidthDeg',
          positive('otherBeamwidthDeg', input.otherBeamwidthDeg),
          1e-4,
          180,
        );
  const squintDeg = inRange('squintDeg', input.squintDeg ?? 0, 0, 90);
  const offsetDeg = gaussianLobeOffsetDeg(lossDb, widthDeg);
  return {
    offsetDeg,
    otherBeamwidthDeg,
    otherLossDb: gaussianLobeLossDb(offsetDeg + squintDeg, otherBeamwidthDeg),
    otherLossAtLeastDb: gaussianLobeLossDb(offsetDeg - squintDeg, otherBeamwidthDeg),
    otherLossUpper95Db: upperDb(
      lossDb,
      widthDeg / otherBeamwidthDeg,
      squintDeg / otherBeamwidthDeg,
    ),
  };
}

/** The width in the other band, given or scaled, is known to some 3 %: errors of the surface weigh more at the higher frequency. */
const WIDTH_DOUBT = 0.03;
/** Standard deviations by which null and lopsidedness are moved for the bound, both at once. */
const DEVIATIONS = [-2, 0, 2] as const;

/**
 * Largest loss where lobes of usual shapes lose `lossDb` in the band that was read, `ratio` times as many beamwidths off the peak and
 * `squint` more. The steeper side of a lobe is the same in both bands.
 */
function upperDb(lossDb: number, ratio: number, squint: number): number | null {
  const { nullRatio, nullRatioDoubt, lopsidedDb } = reflectorShape();
  let worst = 0;
  for (const byNull of DEVIATIONS)
    for (const byLean of DEVIATIONS) {
      const own = nullRatio + byNull * nullRatioDoubt;
      const loss = (offset: number) =>
        -shapeLevelDb(offset, own) + byLean * lopsidedDb * shapeLopsided(offset, own);
      if (loss(SHAPE_REACH) < lossDb) return null;
      const offset = bracketedRoot((x) => loss(x) - lossDb, { from: 0, to: SHAPE_REACH }) ?? 0;
      const other = (1 + WIDTH_DOUBT) * (ratio * offset + squint);
      if (other > SHAPE_REACH) return null;
      worst = Math.max(worst, loss(other));
    }
  return worst;
}
