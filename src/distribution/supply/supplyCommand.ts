/** Voltage and tone by which a receiver chooses polarization and band. */

import { inRange, oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';

/** What a receiver asks of the unit. */
export interface SupplyCommand {
  /** Nominal voltage. */
  readonly nominalV: 13 | 18;
  /** Range of voltages at the unit that mean the same, in volts. */
  readonly atUnit: { readonly fromV: number; readonly toV: number };
  /** Whether the 22 kHz tone is on. */
  readonly tone: boolean;
}

/** What a unit understands; read `kind` first. */
export type UnderstoodCommand =
  | {
      readonly kind: 'understood';
      /** Vertical stands for right-hand, horizontal for left-hand circular too. */
      readonly polarization: 'vertical' | 'horizontal';
      /** Band. */
      readonly band: 'low' | 'high';
    }
  /** Between the two ranges: a unit may take it for either. */
  | { readonly kind: 'ambiguous'; readonly band: 'low' | 'high' }
  /** Below or above every range. */
  | { readonly kind: 'out-of-range'; readonly side: 'below' | 'above' };

const LOW = { fromV: 11.5, toV: 14 };
const HIGH = { fromV: 16, toV: 19 };

const SUPPLY_COMMAND_CHOICE_KEYS = { polarization: true, band: true } satisfies Keys<
  Parameters<typeof supplyCommand>[0]
>;

/**
 * Voltage and tone for a polarization and band: 13 V vertical or right-hand, 18 V horizontal or left-hand; tone for the
 * high band.
 *
 * @throws {@link DomainError} `not-an-option`.
 * Source: practice of the trade, 11.5 to 14 V and 16 to 19 V at the unit, 22 kHz; the standard (EN 61319-1) is not open and was not read.
 * Accuracy: a unit may switch anywhere between the two ranges.
 * @example
 * ```ts
 * import { supplyCommand } from 'slantpath/distribution';
 * supplyCommand({ polarization: 'horizontal', band: 'high' }).nominalV; // => 18
 * ```
 */
export function supplyCommand(choice: {
  readonly polarization: 'vertical' | 'horizontal' | 'right-hand' | 'left-hand';
  readonly band: 'low' | 'high';
}): SupplyCommand {
  knownOnly('choice', choice, SUPPLY_COMMAND_CHOICE_KEYS);
  const polarization = oneOf('polarization', choice?.polarization, [
    'vertical',
    'horizontal',
    'right-hand',
    'left-hand',
  ]);
  const band = oneOf('band', choice.band, ['low', 'high']);
  const isLow = polarization === 'vertical' || polarization === 'right-hand';
  return { nominalV: isLow ? 13 : 18, atUnit: isLow ? LOW : HIGH, tone: band === 'high' };
}

const UNDERSTOOD_COMMAND_ARRIVING_KEYS = { voltageV: true, toneVpp: true } satisfies Keys<
  Parameters<typeof understoodCommand>[0]
>;

/**
 * What a unit makes of the voltage and tone that arrive at it.
 *
 * @param arriving  Voltage at the unit in volts; peak-to-peak voltage of the tone, 0 by default. From 0.4 V up the tone counts.
 * @throws {@link DomainError} for a voltage that is not finite or out of 0 to 60.
 * Source: practice of the trade, tone of 0.65 V peak to peak, 0.25 either way; the standard (EN 61319-1) is not open and was not read.
 * Accuracy: a unit may switch anywhere between the two ranges.
 * @example
 * ```ts
 * import { understoodCommand } from 'slantpath/distribution';
 * understoodCommand({ voltageV: 15.1 }).kind; // => 'ambiguous'
 * ```
 */
export function understoodCommand(arriving: {
  readonly voltageV: number;
  readonly toneVpp?: number;
}): UnderstoodCommand {
  knownOnly('arriving', arriving, UNDERSTOOD_COMMAND_ARRIVING_KEYS);
  const voltageV = inRange('voltageV', arriving?.voltageV, 0, 60);
  const band = inRange('toneVpp', arriving.toneVpp ?? 0, 0, 10) >= 0.4 ? 'high' : 'low';
  if (voltageV < LOW.fromV) return { kind: 'out-of-range', side: 'below' };
  if (voltageV <= LOW.toV) return { kind: 'understood', polarization: 'vertical', band };
  if (voltageV < HIGH.fromV) return { kind: 'ambiguous', band };
  if (voltageV <= HIGH.toV) return { kind: 'understood', polarization: 'horizontal', band };
  return { kind: 'out-of-range', side: 'above' };
}
