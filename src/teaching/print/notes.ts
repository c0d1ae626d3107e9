/** What is said in words beside a printed formula. */

import type { SchoolNote } from './school.js';

/** The words of a language. */
export interface FormulaNoteWords {
  /** Beside an arctangent that may lie in any quadrant. */
  readonly quadrant: string;
  /** `{period}`, `{from}`, `{below}` are angles in degrees. */
  readonly turned: string;
  readonly normal: string;
  readonly student: string;
}

/** English. */
export const englishNotes: FormulaNoteWords = {
  quadrant: 'the signs give the quadrant: numerator as the sine, denominator as the cosine',
  turned: 'add or subtract {period}° until it lies from {from}° to below {below}°',
  normal: 'Φ from the table of the normal distribution',
  student: 'S from the table of Student’s t',
};

/** The notes of a formula in words; empty for none. */
export function noteText(notes: readonly SchoolNote[], words: FormulaNoteWords): string {
  const degrees = (angle: number) => String(angle).replace('-', '−');
  return notes
    .map((note) =>
      note.kind === 'turned'
        ? words.turned
            .replace('{period}', degrees(note.periodDeg))
            .replace('{from}', degrees(note.fromDeg))
            .replace('{below}', degrees(note.belowDeg))
        : words[note.kind],
    )
    .join('; ');
}
