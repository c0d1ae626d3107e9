/** How long a clearance lasts under growing trees. */

import { knownOnly } from '../keys.js';
import { cosDeg } from '../numeric/angle.js';
import {
  checkedObstruction,
  clearanceOf,
  OBSTRUCTION_INPUT_KEYS,
  type ObstructionInput,
} from './obstructionClearance.js';

/** The years until a growing top eats the clearance wanted; read `kind` first. */
export type YearsClear =
  | {
      /** `until`: the growth will use up the clearance. */
      readonly kind: 'until';
      /** Years from now, 0 or more. */
      readonly years: number;
    }
  | {
      /** `already`: the clearance is not there now. `never`: nothing grows, or not within 1000 years. */
      readonly kind: 'already' | 'never';
    };

/**
 * How long the clearance over a growing obstruction will last.
 *
 * @param input  As for {@link obstructionClearance}; `years` is not used.
 * @returns `until` with the years, `already` too high, or `never`.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: own derivation. Accuracy: that of the growth, a guess.
 * @example
 * ```ts
 * import { yearsClear } from 'slantpath/survey';
 * const left = yearsClear({
 *   distanceM: 12,
 *   topHeightM: 9,
 *   centreHeightM: 2,
 *   elevationDeg: 36.2,
 *   diameterM: 0.9,
 *   growthMPerYear: 0.5,
 * });
 * left.kind === 'until' && left.years.toFixed(2); // => '2.45'
 * ```
 */
export function yearsClear(input: ObstructionInput): YearsClear {
  const checked = checkedObstruction(knownOnly('input', input, OBSTRUCTION_INPUT_KEYS));
  const { edgeClearanceM } = clearanceOf({ ...checked, years: 0 });
  const spareM = edgeClearanceM - checked.requiredClearanceM;
  if (spareM < 0) return { kind: 'already' };
  // A metre of growth takes cos e metres of the clearance across the beam.
  const lossMPerYear = checked.growthMPerYear * cosDeg(checked.elevationDeg);
  if (spareM >= 1000 * lossMPerYear) return { kind: 'never' };
  return { kind: 'until', years: spareM / lossMPerYear };
}
