/** Bands: what a peak found at one frequency says about the pointing loss at another. */

import { inRange, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { gaussianLobeLossDb, gaussianLobeOffsetDeg } from '../../numeric/gaussianLobe.js';

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
  /** Pointing loss in the other band in dB, at most: the squint adds to the offset. */
  readonly otherLossDb: number;
  /** Pointing loss in the other band in dB, at least: the squint takes from the offset. */
  readonly otherLossAtLeastDb: number;
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
 * Accuracy: to about 3 dB of loss; beyond, real lobes are steeper or end in side lobes.
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
  };
}
