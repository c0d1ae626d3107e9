/** Levels that a system outlet must keep, by kind of signal (EN 60728-1). */

import { oneOf } from '../../errors.js';

/** Kind of signal at an outlet. */
export type OutletSignal =
  | 'satellite-if'
  | 'dvb-c-64-qam'
  | 'dvb-c-256-qam'
  | 'dvb-t-64-qam'
  | 'dvb-t2-64-qam';

/** Lowest and highest level at an outlet. */
export interface OutletLimits {
  /** Lowest level in dBuV at 75 ohm. */
  readonly lowestDbuv: number;
  /** Highest level in dBuV at 75 ohm. */
  readonly highestDbuv: number;
}

const LIMITS: Readonly<Record<OutletSignal, OutletLimits>> = {
  'satellite-if': { lowestDbuv: 47, highestDbuv: 77 },
  'dvb-c-64-qam': { lowestDbuv: 47, highestDbuv: 67 },
  'dvb-c-256-qam': { lowestDbuv: 54, highestDbuv: 74 },
  'dvb-t-64-qam': { lowestDbuv: 45, highestDbuv: 74 },
  'dvb-t2-64-qam': { lowestDbuv: 39, highestDbuv: 74 },
};

/**
 * Limits of the level at a system outlet.
 *
 * Satellite intermediate frequency counts for QPSK, 8PSK, 16APSK and 32APSK; DVB-T and T2 for code rate 2/3.
 *
 * @throws {@link DomainError} `not-an-option` for another kind of signal.
 * Source: EN 60728-1 as cited by two texts of the trade (secondary).
 * Accuracy: as printed, whole decibels.
 * @example
 * ```ts
 * import { outletLimits } from 'slantpath/distribution';
 * outletLimits('satellite-if').lowestDbuv; // => 47
 * ```
 */
export function outletLimits(signal: OutletSignal): OutletLimits {
  oneOf('signal', signal, [
    'satellite-if',
    'dvb-c-64-qam',
    'dvb-c-256-qam',
    'dvb-t-64-qam',
    'dvb-t2-64-qam',
  ]);
  return LIMITS[signal];
}
