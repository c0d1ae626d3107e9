/**
 * The usual slips, each as a wrong variant of the computation: changed inputs, changed formulas of a plan, another
 * quantity for the answer. What learners get wrong is common practice of the trade's training; no source.
 */

import { CONSTANT_SLIPS } from './constants.js';
import { DECIBEL_SLIPS } from './decibels.js';
import { DIRECTION_SLIPS } from './direction.js';
import { FUNCTION_SLIPS } from './functions.js';
import { ITEM_SLIPS } from './items.js';
import { QUANTITY_SLIPS } from './quantity.js';
import { RULE_SLIPS } from './rules.js';
import { SAMPLE_SLIPS } from './sample.js';
import type { Slip } from './slip.js';
import { UNIT_SLIPS } from './units.js';

/** All slips that are looked for. Where two give the same answer, both are named. */
export const SLIPS: readonly Slip[] = [
  ...DIRECTION_SLIPS,
  ...UNIT_SLIPS,
  ...DECIBEL_SLIPS,
  ...RULE_SLIPS,
  ...SAMPLE_SLIPS,
  ...CONSTANT_SLIPS,
  ...FUNCTION_SLIPS,
  ...ITEM_SLIPS,
  ...QUANTITY_SLIPS,
];
