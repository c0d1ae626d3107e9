/**
 * The Gaussian main lobe: the one formula for the loss of a misaligned antenna, and its inverse.
 *
 * Source: loss = 12 (offset / half-power width)^2, the main-lobe form of ITU-R reference patterns and of
 * the textbooks; it gives exactly 3 dB at half the half-power width.
 * Accuracy: within 0.1 dB of a uniformly lit circular aperture up to 1 dB of loss; the true lobe falls
 * faster beyond the half-power width.
 */

/**
 * Loss in dB, 0 or more, of a direction `offsetDeg` away from the peak (either sign), for a lobe whose full
 * half-power width is `beamwidthDeg` (above 0).
 */
export function gaussianLobeLossDb(offsetDeg: number, beamwidthDeg: number): number {
  const ratio = offsetDeg / beamwidthDeg;
  return 12 * ratio * ratio;
}

/**
 * Offset from the peak in degrees, 0 or more, at which the lobe has fallen by `lossDb` (0 or more), for a
 * full half-power width of `beamwidthDeg`.
 */
export function gaussianLobeOffsetDeg(lossDb: number, beamwidthDeg: number): number {
  return beamwidthDeg * Math.sqrt(lossDb / 12);
}
