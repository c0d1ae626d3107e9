/** The modes of the broadcast standards, by standard and by name. */

import { oneOf } from '../../errors.js';
import { known } from '../../keys.js';
import type { DvbMode, DvbStandard } from './mode.js';
import { checkedMode, DVB_MODE_KEYS } from './mode.js';
import { DVB_S_MODES } from './modesDvbS.js';
import { DVB_S2_MODES, slotsOf } from './modesDvbS2.js';
import { DVB_S2X_MODES } from './modesDvbS2x.js';
import { VERY_LOW_SNR_MODES } from './modesVeryLowSnr.js';

const MODES: Readonly<Record<DvbStandard, readonly DvbMode[]>> = {
  'DVB-S': DVB_S_MODES,
  'DVB-S2': DVB_S2_MODES,
  'DVB-S2X': DVB_S2X_MODES,
  'DVB-S2X VL-SNR': VERY_LOW_SNR_MODES,
};

/**
 * All modes of a standard, in the order of its table.
 *
 * @throws {@link DomainError} `not-an-option` for an unknown standard.
 *
 * The modes of DVB-S2X are those it adds; it has those of DVB-S2 besides.
 *
 * Source: ETSI EN 300 421 (DVB-S), EN 302 307-1 V1.4.1 Table 13 (DVB-S2), EN 302 307-2 Table 20a (DVB-S2X) and V1.3.1
 * Table 17a (VL-SNR, thresholds from memory but one: see `status`). Normal frames without pilots, ideal channel.
 * Accuracy: thresholds as printed there; efficiencies by the frame's formula.
 * @example
 * ```ts
 * import { dvbModes } from 'slantpath/link';
 * dvbModes('DVB-S2').length; // => 28
 * ```
 */
export function dvbModes(standard: DvbStandard): readonly DvbMode[] {
  return MODES[oneOf('standard', standard, Object.keys(MODES) as DvbStandard[])];
}

/**
 * A mode by its name.
 *
 * @param name  Modulation and code rate: `8PSK 2/3`.
 * @throws {@link DomainError} `not-an-option` for an unknown standard or name.
 *
 * Source: as {@link dvbModes}.
 * @example
 * ```ts
 * import { dvbMode } from 'slantpath/link';
 * dvbMode('DVB-S2', '8PSK 2/3').esN0Db; // => 6.62
 * ```
 */
export function dvbMode(standard: DvbStandard, name: string): DvbMode {
  const modes = dvbModes(standard);
  const names = modes.map((mode) => mode.name);
  return modes[names.indexOf(oneOf('name', name, names))] as DvbMode;
}

/**
 * The mode with pilot symbols: 36 after every 16 slots, so a little less capacity for the same threshold.
 *
 * @param mode  A mode of DVB-S2 or DVB-S2X; the others have no such choice.
 * @throws {@link DomainError} `not-an-option` for another standard.
 *
 * Source: ETSI EN 302 307-1, section 5.5.3. Accuracy: rounding only.
 * @example
 * ```ts
 * import { dvbMode, modeWithPilots } from 'slantpath/link';
 * modeWithPilots(dvbMode('DVB-S2', 'QPSK 1/4')).bitsPerSymbol.toFixed(9); // => '0.478577009'
 * ```
 */
export function modeWithPilots(mode: DvbMode): DvbMode {
  oneOf('standard', known('mode', mode, DVB_MODE_KEYS).standard, ['DVB-S2', 'DVB-S2X']);
  const { bitsPerSymbol } = checkedMode(mode);
  const slots = slotsOf(mode.modulation);
  const symbols = 90 * (slots + 1);
  const pilots = 36 * Math.floor((slots - 1) / 16);
  return { ...mode, bitsPerSymbol: (bitsPerSymbol * symbols) / (symbols + pilots) };
}
