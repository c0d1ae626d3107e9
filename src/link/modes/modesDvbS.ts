/** Modes of DVB-S: QPSK with a convolutional inner code and a Reed-Solomon outer code. */

import { ratioToDb } from '../../numeric/decibel.js';
import type { DvbMode } from './mode.js';

/** Inner code rate and the Eb/N0 in dB for quasi-error-free reception in the IF loop, per useful bit (ETSI EN 300 421). */
const REQUIRED: readonly (readonly [codeRate: string, rateRatio: number, ebN0Db: number])[] = [
  ['1/2', 1 / 2, 4.5],
  ['2/3', 2 / 3, 5],
  ['3/4', 3 / 4, 5.5],
  ['5/6', 5 / 6, 6],
  ['7/8', 7 / 8, 6.4],
];

/** The five modes; Es/N0 follows from Eb/N0 with 2 r 188/204 useful bits per symbol. */
export const DVB_S_MODES: readonly DvbMode[] = /* @__PURE__ */ REQUIRED.map(
  ([codeRate, rateRatio, ebN0Db]) => {
    const bitsPerSymbol = (2 * rateRatio * 188) / 204;
    return {
      standard: 'DVB-S',
      name: `QPSK ${codeRate}`,
      modulation: 'QPSK',
      codeRate,
      esN0Db: ebN0Db + ratioToDb(bitsPerSymbol),
      saturatedCarrierToNoiseDb: null,
      bitsPerSymbol,
      status: 'published',
    };
  },
);
