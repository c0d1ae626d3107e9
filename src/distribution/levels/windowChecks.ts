/** Whether every outlet and receiver gets a level inside its window. */

import { DomainError, finite } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { compiledTree } from '../tree/compiledTree.js';
import type { DistributionSystem, ReceiverPart } from '../tree/tree.js';
import { dbmToDbuv } from './level.js';
import { type OutletLevels, outletLevels } from './outletLevels.js';
import { outletLimits } from './outletLimits.js';

/** A window of levels. */
export interface LevelWindow {
  /** Lowest level in dBuV at 75 ohm. */
  readonly lowestDbuv: number;
  /** Highest level in dBuV at 75 ohm. */
  readonly highestDbuv: number;
}

const LEVEL_WINDOW_KEYS = { lowestDbuv: true, highestDbuv: true } satisfies Keys<LevelWindow>;

/** An outlet or receiver against its window. */
export interface WindowCheck {
  /** Name of the outlet or receiver. */
  readonly name: string;
  /**
   * `inside`; `too-low` or `too-high` where levels leave the window on one side; `too-wide` where they leave it on
   * both, so that no shift helps, only an equaliser or better cable.
   */
  readonly kind: 'inside' | 'too-low' | 'too-high' | 'too-wide';
  /** The window. */
  readonly window: LevelWindow;
  /** Lowest level less the lower end in dB; negative where it is too low. */
  readonly marginLowDb: number;
  /** Upper end less the highest level in dB; negative where it is too high. */
  readonly marginHighDb: number;
  /** Level at the highest frequency less that at the lowest, in dB. */
  readonly slopeDb: number;
}

/** Window of a receiver where its part gives none: -65 to -25 dBm per carrier (a professional handbook). */
function receiverWindow(part: ReceiverPart): LevelWindow {
  return {
    lowestDbuv: part.minimumLevelDbuv ?? dbmToDbuv(-65),
    highestDbuv: part.maximumLevelDbuv ?? dbmToDbuv(-25),
  };
}

/** Guards a window. */
export function checkedWindow(parameter: string, window: LevelWindow): LevelWindow {
  known(parameter, window, LEVEL_WINDOW_KEYS);
  const lowestDbuv = finite(`${parameter}.lowestDbuv`, window.lowestDbuv);
  const highestDbuv = finite(`${parameter}.highestDbuv`, window.highestDbuv);
  if (lowestDbuv >= highestDbuv)
    throw new DomainError({
      code: 'inconsistent',
      parameter: `${parameter}.lowestDbuv`,
      received: lowestDbuv,
      allowed: `below ${parameter}.highestDbuv (${highestDbuv})`,
      slip: 'were the ends swapped?',
    });
  return { lowestDbuv, highestDbuv };
}

/** One outlet against a window. */
export function againstWindow(levels: OutletLevels, window: LevelWindow): WindowCheck {
  const marginLowDb = levels.lowestDbuv - window.lowestDbuv;
  const marginHighDb = window.highestDbuv - levels.highestDbuv;
  const kind =
    marginLowDb < 0
      ? marginHighDb < 0
        ? 'too-wide'
        : 'too-low'
      : marginHighDb < 0
        ? 'too-high'
        : 'inside';
  return { name: levels.name, kind, window, marginLowDb, marginHighDb, slopeDb: levels.slopeDb };
}

const WINDOW_CHECKS_CHECK_KEYS = { frequenciesMHz: true, window: true } satisfies Keys<
  Parameters<typeof windowChecks>[1]
>;

/**
 * Every outlet and receiver against its window over a range of frequencies.
 *
 * Outlets are held to `window`, by default that of satellite signals, 47 to 77 dBuV; receivers to their own.
 *
 * @param system  The distribution.
 * @param check  Frequencies in MHz, and the window of outlets.
 * @throws {@link DomainError} as {@link outletLevels}; `inconsistent` for a window with swapped ends.
 * Source: EN 60728-1 (outlets, secondary); a professional receiver handbook (-65 to -25 dBm).
 * Accuracy: as {@link outletLevels}.
 * @example
 * ```ts
 * import { genericCable, windowChecks } from 'slantpath/distribution';
 * const [far] = windowChecks(
 *   {
 *     source: { levelDbuv: 70 },
 *     tree: { kind: 'cable', cable: genericCable('series-6'), lengthM: 90, to: { kind: 'outlet', name: 'far hut' } },
 *   },
 *   { frequenciesMHz: [950, 2150] },
 * );
 * far?.kind; // => 'too-low'
 * ```
 */
export function windowChecks(
  system: DistributionSystem,
  check: { readonly frequenciesMHz: ArrayLike<number>; readonly window?: LevelWindow },
): readonly WindowCheck[] {
  knownOnly('check', check, WINDOW_CHECKS_CHECK_KEYS);
  const forOutlets = checkedWindow('window', check.window ?? outletLimits('satellite-if'));
  const parts = new Map(compiledTree(system).map((stage) => [stage.name, stage]));
  return outletLevels(system, check.frequenciesMHz).map((levels) => {
    const stage = parts.get(levels.name);
    return againstWindow(
      levels,
      stage?.part.kind === 'receiver'
        ? checkedWindow(`${stage.path}.levels`, receiverWindow(stage.part))
        : forOutlets,
    );
  });
}
