/** The modes of the broadcast standards, by standard and by name. */

import { oneOf } from '../errors.js';
import type { DvbMode, DvbStandard } from './mode.js';
import { DVB_S_MODES } from './modesDvbS.js';
import { DVB_S2_MODES } from './modesDvbS2.js';

const MODES: Readonly<Record<DvbStandard, readonly DvbMode[]>> = {
  'DVB-S': DVB_S_MODES,
  'DVB-S2': DVB_S2_MODES,
};

/**
 * All modes of a standard, in the order of its table.
 *
 * @throws {@link DomainError} `not-an-option` for an unknown standard.
 *
 * Source: ETSI EN 300 421 (DVB-S), EN 302 307-1 Table 13 (DVB-S2). Accuracy: thresholds as printed there.
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
