/** Modes that DVB-S2X adds: normal frames of 64,800 bits. */

import type { DvbMode } from './mode.js';
import { bitsPerSymbol, slotsOf } from './modesDvbS2.js';

/** Parity bits of the outer code that corrects 12 errors in a normal frame. */
const OUTER_PARITY_BITS = 192;

/**
 * Modulation, code rate (L: constellation for the linear channel), Es/N0 in dB on the ideal linear channel and
 * Csat/(N0 Rs) in dB on the hard-limited channel, at a frame error ratio of 1e-5 (ETSI EN 302 307-2, Table 20a);
 * last the outer parity where the code of DVB-S2 is reused.
 */
const TABLE_20A: readonly (readonly [
  modulation: string,
  codeRate: string,
  esN0Db: number,
  saturatedCarrierToNoiseDb: number,
  parityBits?: number,
])[] = [
  ['QPSK', '2/9', -2.85, -2.45],
  ['QPSK', '13/45', -2.03, -1.6],
  ['QPSK', '9/20', 0.22, 0.69],
  ['QPSK', '11/20', 1.45, 1.97],
  ['8APSK', '5/9-L', 4.73, 5.95],
  ['8APSK', '26/45-L', 5.13, 6.35],
  ['8PSK', '23/36', 6.12, 6.96],
  ['8PSK', '25/36', 7.02, 7.93],
  ['8PSK', '13/18', 7.49, 8.42],
  ['16APSK', '1/2-L', 5.97, 8.4],
  ['16APSK', '8/15-L', 6.55, 9],
  ['16APSK', '5/9-L', 6.84, 9.35],
  ['16APSK', '26/45', 7.51, 9.17],
  ['16APSK', '3/5', 7.8, 9.38],
  ['16APSK', '3/5-L', 7.41, 9.94],
  ['16APSK', '28/45', 8.1, 9.76],
  ['16APSK', '23/36', 8.38, 10.04],
  ['16APSK', '2/3-L', 8.43, 11.06],
  ['16APSK', '25/36', 9.27, 11.04],
  ['16APSK', '13/18', 9.71, 11.52],
  ['16APSK', '7/9', 10.65, 12.5],
  ['16APSK', '77/90', 11.99, 14],
  ['32APSK', '2/3-L', 11.1, 13.81, 160],
  ['32APSK', '32/45', 11.75, 14.5],
  ['32APSK', '11/15', 12.17, 14.91],
  ['32APSK', '7/9', 13.05, 15.84],
  ['64APSK', '32/45-L', 13.98, 17.7],
  ['64APSK', '11/15', 14.81, 17.97],
  ['64APSK', '7/9', 15.47, 19.1],
  ['64APSK', '4/5', 15.87, 19.54],
  ['64APSK', '5/6', 16.55, 20.44, 160],
  ['128APSK', '3/4', 17.73, 21.43],
  ['128APSK', '7/9', 18.53, 22.21],
  ['256APSK', '29/45-L', 16.98, 21.6],
  ['256APSK', '2/3-L', 17.24, 21.89],
  ['256APSK', '31/45-L', 18.1, 22.9],
  ['256APSK', '32/45', 18.59, 22.91],
  ['256APSK', '11/15-L', 18.84, 23.8],
  ['256APSK', '3/4', 19.57, 24.02],
];

/** Bits of the outer code's block: the inner rate of 64,800 bits less the outer parity. */
function outerBlockBits(codeRate: string, parityBits: number): number {
  const [over = 0, under = 1] = codeRate.replace('-L', '').split('/').map(Number);
  return (64800 * over) / under - parityBits;
}

/** The 39 modes in the order of the standard's table. */
export const DVB_S2X_MODES: readonly DvbMode[] = /* @__PURE__ */ TABLE_20A.map(
  ([modulation, codeRate, esN0Db, saturatedCarrierToNoiseDb, parityBits]) => ({
    standard: 'DVB-S2X',
    name: `${modulation} ${codeRate}`,
    modulation,
    codeRate,
    esN0Db,
    saturatedCarrierToNoiseDb,
    bitsPerSymbol: bitsPerSymbol(
      // The inner block first loses the outer parity.
      outerBlockBits(codeRate, parityBits ?? OUTER_PARITY_BITS),
      slotsOf(modulation),
    ),
    status: 'published',
  }),
);
