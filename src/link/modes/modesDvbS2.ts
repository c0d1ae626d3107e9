/** Modes of DVB-S2: normal frames of 64,800 bits, ideal additive white Gaussian noise channel. */

import { oneOf } from '../../errors.js';
import type { DvbMode } from './mode.js';

/** Bits of the outer code's block by code rate (ETSI EN 302 307-1, Table 5a), normal frames. */
const OUTER_BLOCK_BITS: Readonly<Record<string, number>> = {
  '1/4': 16008,
  '1/3': 21408,
  '2/5': 25728,
  '1/2': 32208,
  '3/5': 38688,
  '2/3': 43040,
  '3/4': 48408,
  '4/5': 51648,
  '5/6': 53840,
  '8/9': 57472,
  '9/10': 58192,
};

/** Bits per symbol of each modulation in its name. */
const MODULATION_BITS: Readonly<Record<string, number>> = {
  QPSK: 2,
  '8PSK': 3,
  '8APSK': 3,
  '16APSK': 4,
  '32APSK': 5,
  '64APSK': 6,
  '128APSK': 7,
  '256APSK': 8,
};

/** Slots of 90 symbols that hold a normal frame, without the header's (EN 302 307-1, Table 11). */
export function slotsOf(modulation: string): number {
  const known = oneOf('modulation', modulation, Object.keys(MODULATION_BITS));
  return Math.ceil(64800 / (MODULATION_BITS[known] ?? 1) / 90);
}

/**
 * Useful bits per symbol of a frame without pilots: (outer block - 80 bits of base-band header) over the
 * symbols of the slots and of the frame's header slot.
 */
export function bitsPerSymbol(outerBlockBits: number, slots: number): number {
  return (outerBlockBits - 80) / (90 * (slots + 1));
}

/** Modulation, code rate and Es/N0 in dB at a packet error ratio of 1e-7 (EN 302 307-1 V1.4.1, Table 13). */
const TABLE_13: readonly (readonly [modulation: string, codeRate: string, esN0Db: number])[] = [
  ['QPSK', '1/4', -2.35],
  ['QPSK', '1/3', -1.24],
  ['QPSK', '2/5', -0.3],
  ['QPSK', '1/2', 1],
  ['QPSK', '3/5', 2.23],
  ['QPSK', '2/3', 3.1],
  ['QPSK', '3/4', 4.03],
  ['QPSK', '4/5', 4.68],
  ['QPSK', '5/6', 5.18],
  ['QPSK', '8/9', 6.2],
  ['QPSK', '9/10', 6.42],
  ['8PSK', '3/5', 5.5],
  ['8PSK', '2/3', 6.62],
  ['8PSK', '3/4', 7.91],
  ['8PSK', '5/6', 9.35],
  ['8PSK', '8/9', 10.69],
  ['8PSK', '9/10', 10.98],
  ['16APSK', '2/3', 8.97],
  ['16APSK', '3/4', 10.21],
  ['16APSK', '4/5', 11.03],
  ['16APSK', '5/6', 11.61],
  ['16APSK', '8/9', 12.89],
  ['16APSK', '9/10', 13.13],
  ['32APSK', '3/4', 12.73],
  ['32APSK', '4/5', 13.64],
  ['32APSK', '5/6', 14.28],
  ['32APSK', '8/9', 15.69],
  ['32APSK', '9/10', 16.05],
];

/** The 28 modes in the order of the standard's table. */
export const DVB_S2_MODES: readonly DvbMode[] = /* @__PURE__ */ TABLE_13.map(
  ([modulation, codeRate, esN0Db]) => ({
    standard: 'DVB-S2',
    name: `${modulation} ${codeRate}`,
    modulation,
    codeRate,
    esN0Db,
    saturatedCarrierToNoiseDb: null,
    bitsPerSymbol: bitsPerSymbol(OUTER_BLOCK_BITS[codeRate] ?? 0, slotsOf(modulation)),
    status: 'published',
  }),
);
