/**
 * Moodle XML, read back and marked as the numerical question type marks: the first answer within its absolute tolerance
 * counts (Moodle, question/type/numerical: get_matching_answer, within_tolerance).
 */

import { likelySlips, SOLUTION_PLANS, worksheet, worksheetMoodle } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';
import { readXml, within, type XmlElement } from '../support/xml.js';

/** Fractions that Moodle knows (question/engine, question_bank: fraction options), those that are used here. */
const FRACTIONS = ['100', '75', '0'];

const plans = SOLUTION_PLANS.map(({ name }) => name).filter(
  (_, at) => runs(10) === 10 || at % 5 === 1,
);
const sheet = worksheet({ seed: 21, count: plans.length, plans, title: 'Rain & "snow" <1>' });
const root = readXml(worksheetMoodle(sheet));
const questions = root.children.filter(({ attributes }) => attributes['type'] === 'numerical');

const one = (element: XmlElement, name: string) =>
  element.children.find((child) => child.name === name)?.children[0]?.text ??
  element.children.find((child) => child.name === name)?.text ??
  '';

/** Share of the marks and the feedback for a typed number. */
function marked(question: XmlElement, typed: number) {
  for (const answer of question.children.filter(({ name }) => name === 'answer')) {
    const tolerance = Number(one(answer, 'tolerance')) + 1e-14 * Math.abs(typed);
    if (Math.abs(typed - Number(one(answer, 'text'))) <= tolerance)
      return {
        share: Number(answer.attributes['fraction']),
        feedback: within(answer, 'feedback')[0]?.children[0]?.text ?? '',
      };
  }
  return { share: 0, feedback: '' };
}

test('the document is a quiz with a category and one numerical question for each exercise', () => {
  expect(root.name).toBe('quiz');
  expect(within(root, 'category')[0]?.children[0]?.text).toBe('$course$/Rain & "snow" <1>');
  expect(questions.length).toBe(sheet.exercises.length);
});

describe('each question', () => {
  test('has what the format asks for', () => {
    for (const question of questions) {
      for (const name of ['name', 'questiontext', 'generalfeedback'])
        expect(one(question, name)).not.toBe('');
      for (const { attributes } of within(question, 'answer'))
        expect(FRACTIONS).toContain(attributes['fraction']);
      expect(within(question, 'answer')[0]?.attributes['fraction']).toBe('100');
    }
  });

  test('gives all marks to the right answer and none to a wrong one', () => {
    sheet.exercises.forEach(({ answer, tolerance, decimals }, at) => {
      const question = questions[at] as XmlElement;
      expect(marked(question, Number(answer.toFixed(decimals))).share).toBe(100);
      expect(marked(question, answer + 0.99 * tolerance).share).toBe(100);
      expect(marked(question, 1e6 + 12.345).share).toBe(0);
    });
  });

  test('tells the slip that gives the answer', () => {
    let told = 0;
    sheet.exercises.forEach((exercise, at) => {
      for (const { value, explanation } of likelySlips(exercise, 6)) {
        const { share, feedback } = marked(questions[at] as XmlElement, value);
        expect(share).toBeLessThan(100);
        if (share === 0) {
          // Two slips may lie within each other's tolerance; then the first is told.
          expect(feedback).not.toBe('');
          if (feedback.includes(explanation.replace(/&/g, '&amp;').replace(/"/g, '&quot;'))) told++;
        }
      }
    });
    expect(told).toBeGreaterThan(sheet.exercises.length);
  });
});
