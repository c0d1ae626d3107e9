/** A worksheet in GIFT, the plain text format of questions that learning systems import. */

import type { Exercise } from './exercise.js';
import { numericalAnswers } from './numericalAnswers.js';
import { solutionLines } from './solutionLines.js';
import type { Worksheet } from './worksheet.js';

/** Text with the signs that GIFT uses itself escaped; a line break is a backslash and n. */
const escaped = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(/[\\~=#{}:]/g, (sign) => `\\${sign}`)
    .replace(/\n/g, '\\n');

/** A number to 12 digits without an exponent, which not every reader of the format knows. */
function decimal(value: number): string {
  if (value === 0) return '0';
  const places = Math.min(100, Math.max(0, 11 - Math.floor(Math.log10(Math.abs(value)))));
  const digits = value.toFixed(places);
  return digits.includes('.') ? digits.replace(/\.?0+$/, '') : digits;
}

function question(exercise: Exercise, index: number): string {
  const { text, solution } = exercise;
  const answers = numericalAnswers(exercise).map(
    ({ share, value, tolerance, feedback }) =>
      `\t=%${share}%${decimal(value)}:${decimal(tolerance)}#${escaped(feedback)}`,
  );
  return `::${escaped(`${index + 1}. ${solution.title}`)}::[plain]${escaped(text)}{#
${answers.join('\n')}
\t####${escaped(solutionLines(exercise).join('\n'))}
}`;
}

/**
 * A worksheet as a file in GIFT: numerical questions in a category of the sheet's title.
 *
 * Right is what lies within the exercise's tolerance; the round Earth earns three quarters, at level 1 all; answers that a
 * likely slip gives earn nothing, with the slip told as feedback. The worked solution is the feedback of the question. The
 * number is typed without a unit. GIFT has no marks of a question: each counts as much as the learning system gives it.
 *
 * @returns The text of one file in UTF-8, with an empty line between questions.
 *
 * Source: Moodle documentation, 'GIFT format': numerical answers `{#=%share%value:tolerance#feedback}`, general feedback
 * after `####`, and a backslash before each of `~ = # { } :` that belongs to a text.
 * @example
 * ```ts
 * import { worksheet, worksheetGift } from 'slantpath/teaching';
 * worksheetGift(worksheet({ seed: 3, count: 2 })).match(/\{#/g)?.length; // => 2
 * ```
 */
export function worksheetGift(sheet: Worksheet): string {
  // A category is a path up to the end of its line, in which a slash is doubled and nothing can be escaped.
  const category = sheet.title
    .replace(/[\s\\]+/g, ' ')
    .trim()
    .replace(/\//g, '//');
  return `$CATEGORY: $course$/${category}

${sheet.exercises.map(question).join('\n\n')}
`;
}
