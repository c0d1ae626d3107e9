/** What a pointing error costs on the main lobe. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { gaussianLobeLossDb, gaussianLobeOffsetDeg } from '../numeric/gaussianLobe.js';
import { checkedBeamwidthDeg } from './guards.js';

const POINTING_LOSS_ERROR_KEYS = { offsetDeg: true, beamwidthDeg: true } satisfies Keys<
  Parameters<typeof pointingLoss>[0]
>;

/**
 * Loss in dB, 0 or more, of an antenna that points `offsetDeg` beside the satellite, on a Gaussian main lobe:
 * 12 (offset / beamwidth)^2, that is 3 dB at half the beamwidth.
 *
 * @param error  `offsetDeg` angle on the sky between axis and satellite, either sign, within 180;
 *   `beamwidthDeg` above 0.
 * @throws {@link DomainError} naming `offsetDeg` or `beamwidthDeg`.
 *
 * Source: practice of the trade (Maral and Bousquet, Satellite Communications Systems); second-order form of any smooth lobe.
 * Accuracy: within 0.1 dB of an evenly lit aperture down to the 3 dB points; meaningless below about -10 dB,
 * where `patternGain` takes over.
 * @example
 * ```ts
 * import { pointingLoss } from 'slantpath/antenna';
 * pointingLoss({ offsetDeg: 0.25, beamwidthDeg: 2 }).toFixed(4); // => '0.1875'
 * ```
 */
export function pointingLoss(error: {
  readonly offsetDeg: number;
  readonly beamwidthDeg: number;
}): number {
  const input = knownOnly('error', error, POINTING_LOSS_ERROR_KEYS);
  const offsetDeg = inRange('offsetDeg', input.offsetDeg, -180, 180);
  return gaussianLobeLossDb(offsetDeg, checkedBeamwidthDeg(input.beamwidthDeg));
}

const POINTING_OFFSET_BUDGET_KEYS = { pointingLossDb: true, beamwidthDeg: true } satisfies Keys<
  Parameters<typeof pointingOffset>[0]
>;

/**
 * Offset in degrees, 0 or more, that costs a given pointing loss: the inverse of {@link pointingLoss}.
 *
 * @param budget  `pointingLossDb` 0 to 60; `beamwidthDeg` above 0.
 * @throws {@link DomainError} naming `pointingLossDb` or `beamwidthDeg`.
 *
 * Source: as {@link pointingLoss}. Accuracy: rounding only, as an inverse.
 * @example
 * ```ts
 * import { pointingOffset } from 'slantpath/antenna';
 * pointingOffset({ pointingLossDb: 3, beamwidthDeg: 2 }); // => 1
 * ```
 */
export function pointingOffset(budget: {
  readonly pointingLossDb: number;
  readonly beamwidthDeg: number;
}): number {
  const input = knownOnly('budget', budget, POINTING_OFFSET_BUDGET_KEYS);
  const lossDb = inRange('pointingLossDb', input.pointingLossDb, 0, 60);
  return gaussianLobeOffsetDeg(lossDb, checkedBeamwidthDeg(input.beamwidthDeg));
}
