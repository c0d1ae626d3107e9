/** Limits of exposure to radio waves, for the general public and at work. */

import { inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';

/** Whose limit. */
export type ExposureStandard = 'ICNIRP 2020 local' | 'ICNIRP 2020 whole body' | 'FCC 1.1310';

/** Who is exposed: anyone, or trained people who know of it. */
export type ExposureGroup = 'public' | 'occupational';

/** A limit with where it comes from. */
export interface ExposureLimit {
  /** Limit of the power density in W/m2, averaged over the time below. */
  readonly powerDensityWPerM2: number;
  /** Averaging time in minutes. */
  readonly averagingMin: number;
  /** Document and table. */
  readonly source: string;
}

/** Input of {@link exposureLimit}. */
export interface ExposureLimitInput {
  readonly standard: ExposureStandard;
  readonly group: ExposureGroup;
  /** Frequency in GHz: 0.4 to 300 for ICNIRP, 0.3 to 100 for the FCC. */
  readonly frequencyGHz: number;
}

const EXPOSURE_LIMIT_INPUT_KEYS = {
  standard: true,
  group: true,
  frequencyGHz: true,
} satisfies Keys<ExposureLimitInput>;

const MHZ_SLIP = 'is the frequency in GHz, not MHz?';

/**
 * Reference level of exposure at a frequency.
 *
 * ICNIRP 2020, local: 0.058 f^0.86 W/m2 (f in MHz) to 2 GHz, 40 to 6 GHz, 55 / f^0.177 (f in GHz) beyond; at work five
 * times as much. Whole body: f / 200 (MHz) to 2 GHz, 10 beyond; at work five times as much. FCC: f / 150 (MHz)
 * to 1.5 GHz, 10 beyond; at work five times as much.
 *
 * The limits that bind are those of local law; this is arithmetic, not advice.
 *
 * @throws {@link DomainError} naming `standard`, `group` or `frequencyGHz`.
 *
 * Source: ICNIRP Guidelines, Health Phys. 118 (2020), tables 5 and 6, read as reproduced in a textbook (local) and in an open program
 * (whole body); 47 CFR 1.1310 table 1, read. Accuracy: as printed there.
 * @example
 * ```ts
 * import { exposureLimit } from 'slantpath/antenna';
 * const limit = exposureLimit({ standard: 'ICNIRP 2020 local', group: 'public', frequencyGHz: 14 });
 * limit.powerDensityWPerM2.toFixed(2); // => '34.47'
 * ```
 */
export function exposureLimit(exposure: ExposureLimitInput): ExposureLimit {
  const input = knownOnly('exposure', exposure, EXPOSURE_LIMIT_INPUT_KEYS);
  oneOf('standard', input.standard, ['ICNIRP 2020 local', 'ICNIRP 2020 whole body', 'FCC 1.1310']);
  const atWork = oneOf('group', input.group, ['public', 'occupational']) === 'occupational';
  const factor = atWork ? 5 : 1;
  if (input.standard === 'FCC 1.1310') {
    const fGHz = inRange('frequencyGHz', input.frequencyGHz, 0.3, 100, MHZ_SLIP);
    return {
      powerDensityWPerM2: factor * (fGHz < 1.5 ? fGHz / 0.15 : 10),
      averagingMin: atWork ? 6 : 30,
      source: '47 CFR 1.1310, table 1',
    };
  }
  const fGHz = inRange('frequencyGHz', input.frequencyGHz, 0.4, 300, MHZ_SLIP);
  if (input.standard === 'ICNIRP 2020 whole body')
    return {
      powerDensityWPerM2: factor * (fGHz <= 2 ? fGHz * 5 : 10),
      averagingMin: 30,
      source: 'ICNIRP 2020, table 5 (whole body)',
    };
  const publicWPerM2 =
    fGHz <= 2 ? 0.058 * (1000 * fGHz) ** 0.86 : fGHz <= 6 ? 40 : 55 / fGHz ** 0.177;
  return {
    powerDensityWPerM2: factor * publicWPerM2,
    averagingMin: 6,
    source: 'ICNIRP 2020, table 6 (local)',
  };
}
