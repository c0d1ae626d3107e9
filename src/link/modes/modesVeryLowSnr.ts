/** Very low signal-to-noise modes of DVB-S2X: long headers, spreading, thresholds down to -10 dB. */

import type { DvbMode, ThresholdStatus } from './mode.js';

/** Symbols of a whole frame with header, slots and pilots, by set (ETSI EN 302 307-2; from memory, consistent with 90 + 900 + data + pilots). */
const FRAME_SYMBOLS = { 1: 33282, 2: 16686 } as const;

/**
 * Name, code rate, set, outer block bits (EN 302 307-2 V1.3.1, Table 17a) and Es/N0 in dB. Only the first
 * threshold was read in a source; the others are from memory and marked so in the result.
 */
const MODES: readonly (readonly [
  modulation: string,
  codeRate: string,
  frame: string,
  set: 1 | 2,
  outerBlockBits: number,
  esN0Db: number,
  status: ThresholdStatus,
])[] = [
  ['QPSK', '2/9', 'normal', 1, 14208, -2.85, 'published'],
  ['BPSK', '1/5', 'medium', 1, 5660, -6.85, 'from-memory'],
  ['BPSK', '11/45', 'medium', 1, 7740, -5.5, 'from-memory'],
  ['BPSK', '1/3', 'medium', 1, 10620, -4, 'from-memory'],
  ['BPSK-S', '1/5', 'short', 1, 2512, -9.9, 'from-memory'],
  ['BPSK-S', '11/45', 'short', 1, 3792, -8.3, 'from-memory'],
  ['BPSK', '1/5', 'short', 2, 3072, -6.1, 'from-memory'],
  ['BPSK', '4/15', 'short', 2, 4152, -4.9, 'from-memory'],
  ['BPSK', '1/3', 'short', 2, 5232, -3.72, 'from-memory'],
];

/** The nine modes by set; the frame's size is part of the name, since code rates recur. */
export const VERY_LOW_SNR_MODES: readonly DvbMode[] = /* @__PURE__ */ MODES.map(
  ([modulation, codeRate, frame, set, outerBlockBits, esN0Db, status]) => ({
    standard: 'DVB-S2X VL-SNR',
    name: `${modulation} ${codeRate} ${frame}`,
    modulation,
    codeRate,
    esN0Db,
    saturatedCarrierToNoiseDb: null,
    bitsPerSymbol: (outerBlockBits - 80) / FRAME_SYMBOLS[set],
    status,
  }),
);
