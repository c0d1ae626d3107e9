/** What a transmission mode asks of the link. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';

/** A mode as the link needs it: what it must have, what it carries. */
export interface ModeThreshold {
  /** Energy per symbol over noise density that the mode needs on an ideal channel, in dB. */
  readonly esN0Db: number;
  /** Useful bits per symbol, above 0. */
  readonly bitsPerSymbol: number;
}

const MODE_THRESHOLD_KEYS = { esN0Db: true, bitsPerSymbol: true } satisfies Keys<ModeThreshold>;

/** Standard of a mode. */
export type DvbStandard = 'DVB-S' | 'DVB-S2' | 'DVB-S2X' | 'DVB-S2X VL-SNR';

/** How sure a threshold is: `published` in the standard's table, or `from-memory` and not to be relied on. */
export type ThresholdStatus = 'published' | 'from-memory';

/** A mode of a broadcast standard. */
export interface DvbMode extends ModeThreshold {
  /** Standard that defines the mode. */
  readonly standard: DvbStandard;
  /** Modulation and code rate as the standard writes them: `8PSK 2/3`. */
  readonly name: string;
  /** Modulation: `8PSK`. */
  readonly modulation: string;
  /** Code rate as a fraction: `2/3`. */
  readonly codeRate: string;
  /**
   * Saturated carrier over noise in the symbol rate that the mode needs on the standard's hard-limited channel, in dB; null where its
   * table has none.
   */
  readonly saturatedCarrierToNoiseDb: number | null;
  /** How sure the threshold is. */
  readonly status: ThresholdStatus;
}

export const DVB_MODE_KEYS = {
  standard: true,
  name: true,
  modulation: true,
  codeRate: true,
  saturatedCarrierToNoiseDb: true,
  status: true,
  esN0Db: true,
  bitsPerSymbol: true,
} satisfies Keys<DvbMode>;

/** Returns the mode with its numbers in their intervals, otherwise throws. */
export function checkedMode(mode: ModeThreshold, path = 'mode'): ModeThreshold {
  const { esN0Db, bitsPerSymbol } = known(path, mode, MODE_THRESHOLD_KEYS);
  return {
    esN0Db: inRange(`${path}.esN0Db`, esN0Db, -50, 60),
    bitsPerSymbol: inRange(`${path}.bitsPerSymbol`, bitsPerSymbol, 0.001, 20),
  };
}
