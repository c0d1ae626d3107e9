/** The worked solution as lines of plain text, for files of other systems. */

import { plainSteps } from '../print/formulas.js';
import { englishNotes, noteText } from '../print/notes.js';
import { fixedNumber, withUnit } from '../print/units.js';
import type { Exercise } from './exercise.js';

/** One line for each step: `slant path: L = 3.2 / sin(33°) = 5.88 km`. */
export function solutionLines({ solution }: Exercise): readonly string[] {
  return plainSteps(solution).map(({ symbol, formula, numbers, notes }, at) => {
    const step = solution.steps[at];
    if (!step) return '';
    const value = withUnit(fixedNumber(step.value, step.decimals), step.unit);
    const note = notes.length === 0 ? '' : ` (${noteText(notes, englishNotes)})`;
    return `${step.meaning}: ${symbol} = ${formula} = ${numbers} = ${value}${note}`;
  });
}
