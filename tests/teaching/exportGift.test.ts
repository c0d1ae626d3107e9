/** GIFT, read back strictly, and marked as a numerical question marks: the first answer within its tolerance counts. */

import {
  type Exercise,
  likelySlips,
  SOLUTION_PLANS,
  worksheet,
  worksheetGift,
} from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { type GiftQuestion, readGift } from '../support/gift.js';
import { runs } from '../support/runs.js';

const plans = SOLUTION_PLANS.map(({ name }) => name).filter(
  (_, at) => runs(10) === 10 || at % 5 === 3,
);
const sheet = worksheet({ seed: 21, count: plans.length, plans, title: 'Rain: {1} a/b ~ #=\\ x' });
const { category, questions } = readGift(worksheetGift(sheet));

/** Share of the marks and the feedback for a typed number. */
function marked({ answers }: GiftQuestion, typed: number) {
  const found = answers.find(({ value, tolerance }) => Math.abs(typed - value) <= tolerance);
  return { share: found?.share ?? 0, feedback: found?.feedback ?? '' };
}

test('the file is a category and one numerical question for each exercise', () => {
  expect(category).toBe('$course$/Rain: {1} a//b ~ #= x');
  expect(questions.length).toBe(sheet.exercises.length);
  sheet.exercises.forEach(({ text, solution }, at) => {
    const question = questions[at] as GiftQuestion;
    expect(question.text).toBe(text);
    expect(question.format).toBe('plain');
    expect(question.name).toBe(`${at + 1}. ${solution.title}`);
    expect(question.generalFeedback.split('\n').length).toBe(solution.steps.length);
  });
});

test('the right answer earns all, a wrong one nothing, a slip is told', () => {
  let told = 0;
  sheet.exercises.forEach((exercise, at) => {
    const question = questions[at] as GiftQuestion;
    const { answer, decimals, tolerance } = exercise;
    expect(marked(question, Number(answer.toFixed(decimals))).share).toBe(100);
    expect(marked(question, answer + 0.99 * tolerance).share).toBe(100);
    expect(marked(question, 1e6 + 12.345).share).toBe(0);
    for (const { value, explanation } of likelySlips(exercise, 6)) {
      const { share, feedback } = marked(question, value);
      expect(share).toBeLessThan(100);
      if (feedback === explanation) told++;
    }
  });
  expect(told).toBeGreaterThan(sheet.exercises.length);
});

describe('what stands in a text', () => {
  const [first] = sheet.exercises as readonly [Exercise];
  const of = (text: string, answer = 1, tolerance = 0.5) =>
    readGift(worksheetGift({ ...sheet, exercises: [{ ...first, text, answer, tolerance }] }))
      .questions[0] as GiftQuestion;

  test.each([
    ['each sign of the format', 'a ~ b = c # d { e } f : g \\ h'],
    ['signs one after the other', '{{::}} ==> ~~~ #### \\\\'],
    ['a backslash before n', 'folder\\names'],
    ['a line break', 'one\ntwo'],
    ['an empty line, which would end the question', 'one\n\ntwo'],
    ['what would be a comment', 'one\n// two'],
    ['what would be a format', '[html]<b>bold</b>'],
    ['letters and units', 'Δλ 16,4° − 3 dBµV, Küche'],
  ])('%s comes back as it was', (_, text) => {
    expect(of(text).text).toBe(text);
  });

  test('numbers have no exponent', () => {
    const [answer] = of('q', 1.25e-9, 2e-12).answers;
    expect(answer).toMatchObject({ value: 1.25e-9, tolerance: 2e-12 });
    expect(of('q', -3e15, 1).answers[0]?.value).toBe(-3e15);
  });
});
