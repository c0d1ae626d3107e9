/** A worksheet in the XML format of Moodle's question bank, which several learning systems read. */

import { likelySlips } from '../answer/likelySlips.js';
import { solutionPlan } from '../plans/index.js';
import type { Exercise } from './exercise.js';
import { escapedXml } from './exportQti.js';
import { mostMarksOf } from './marks.js';
import type { Worksheet } from './worksheet.js';

/** A number without the noise of its last binary digits. */
const plain = (value: number): string => String(Number(value.toPrecision(12)));

/** HTML inside XML. */
const html = (tag: string, content: string, indent = '    ') =>
  `${indent}<${tag} format="html"><text>${escapedXml(content)}</text></${tag}>`;

/** One answer: what is right, right by another way, or a slip told by its own feedback. */
const answer = (share: number, value: number, tolerance: number, feedback: string) =>
  `    <answer fraction="${share}" format="moodle_auto_format">
      <text>${plain(value)}</text>
      <tolerance>${plain(tolerance)}</tolerance>
${html('feedback', feedback === '' ? '' : `<p>${escapedXml(feedback)}</p>`, '      ')}
    </answer>`;

/** Slips told beside the right answer. */
const MOST_SLIPS = 6;

function question(exercise: Exercise, index: number): string {
  const { text, tolerance, decimals, level, inputs, solution } = exercise;
  const half = 0.5 * 10 ** -decimals;
  const others = solutionPlan(exercise.plan).otherWays?.(inputs) ?? [];
  const steps = solution.steps.map(
    (step) =>
      `<li>${escapedXml(`${step.meaning}: ${step.substitutedText} = ${step.rounded} ${step.unit}`.trim())}</li>`,
  );
  const answers = [
    answer(100, exercise.answer, tolerance, ''),
    ...others.map((value) =>
      answer(level === 1 ? 100 : 75, value, half, 'By the formulas of the round Earth.'),
    ),
    // The first answer that fits counts, so that a slip never takes a right one away.
    ...likelySlips(exercise, MOST_SLIPS).map(({ value, explanation }) =>
      answer(0, value, half, explanation),
    ),
  ];
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
