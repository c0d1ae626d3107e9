/** A worksheet in the XML format of Moodle's question bank, which several learning systems read. */

import type { Exercise } from './exercise.js';
import { escapedXml } from './exportQti.js';
import { mostMarksOf } from './marks.js';
import { type NumericalAnswer, numericalAnswers } from './numericalAnswers.js';
import { solutionLines } from './solutionLines.js';
import type { Worksheet } from './worksheet.js';

/** A number without the noise of its last binary digits. */
const plain = (value: number): string => String(Number(value.toPrecision(12)));

/** HTML inside XML. */
const html = (tag: string, content: string, indent = '    ') =>
  `${indent}<${tag} format="html"><text>${escapedXml(content)}</text></${tag}>`;

const answer = ({ share, value, tolerance, feedback }: NumericalAnswer) =>
  `    <answer fraction="${share}" format="moodle_auto_format">
      <text>${plain(value)}</text>
      <tolerance>${plain(tolerance)}</tolerance>
${html('feedback', feedback === '' ? '' : `<p>${escapedXml(feedback)}</p>`, '      ')}
    </answer>`;

function question(exercise: Exercise, index: number): string {
  const { text, solution } = exercise;
  const steps = solutionLines(exercise).map((line) => `<li>${escapedXml(line)}</li>`);
  const answers = numericalAnswers(exercise).map(answer);
  return `  <question type="numerical">
    <name><text>${escapedXml(`${index + 1}. ${solution.title}`)}</text></name>
${html('questiontext', `<p>${escapedXml(text)}</p>`)}
${html('generalfeedback', `<ol>${steps.join('')}</ol>`)}
    <defaultgrade>${mostMarksOf(exercise)}</defaultgrade>
    <penalty>0</penalty>
    <hidden>0</hidden>
${answers.join('\n')}
    <unitgradingtype>0</unitgradingtype>
    <unitpenalty>0</unitpenalty>
    <showunits>3</showunits>
    <unitsleft>0</unitsleft>
  </question>`;
}

/**
 * A worksheet as a file in Moodle XML: numerical questions in a category of the sheet's title.
 *
 * Right is what lies within the exercise's tolerance; the round Earth earns three quarters, at level 1 all; answers that a
 * likely slip gives earn nothing, with the slip told as feedback. The number
 * is typed without a unit.
 *
 * @returns One XML document in UTF-8.
 *
 * Source: Moodle documentation, 'Moodle XML format', and the numerical question type, in which the first answer within its
 * absolute tolerance counts.
 * @example
 * ```ts
 * import { worksheet, worksheetMoodle } from 'slantpath/teaching';
 * worksheetMoodle(worksheet({ seed: 3, count: 2 })).match(/type="numerical"/g)?.length; // => 2
 * ```
 */
export function worksheetMoodle(sheet: Worksheet): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
<quiz>
  <question type="category"><category><text>$course$/${escapedXml(sheet.title.replace(/\//g, '//'))}</text></category></question>
${sheet.exercises.map(question).join('\n')}
</quiz>
`;
}
