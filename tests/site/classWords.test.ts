/** Every text of the class has words in each language that has the class sheet: fields, hints, verdicts, slips, the report. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { renderClass } from '../../site/src/lib/classView.js';
import { inLanguage, said } from '../../site/src/lib/language/language.js';
import { languageFor } from '../../site/src/lib/language/languages.js';
import {
  hintLabel,
  hintsOf,
  renderSheet,
  stepSays,
  verdictHtml,
  verdictOn,
} from '../../site/src/lib/sheet.js';
import {
  type AnswerCheck,
  exercise,
  SLIPS,
  SOLUTION_PLANS,
  type StepCheck,
  worksheet,
} from '../../src/teaching/index.js';
import { runs } from '../support/runs.js';

const codes = Object.keys(import.meta.glob('../../site/src/words/*/a-sheet-for-the-class.ts')).map(
  (path) => path.split('/').at(-2) ?? '',
);

/** A part of the plans in the short run. */
const plans = SOLUTION_PLANS.filter((_, at) => runs(10) === 10 || at % 7 === 3);

/** All outcomes of an answer, with the fields that they are told with. */
const CHECKS: readonly AnswerCheck[] = [
  { kind: 'right', exact: 1, by: 'round-earth', moreDecimals: true, creditRatio: 1 },
  { kind: 'other-way', way: 'round-earth', exact: 1, error: 0.1, slips: [], creditRatio: 0.75 },
  { kind: 'badly-rounded', exact: 1, error: 0.1, decimals: 2, creditRatio: 0.75 },
  { kind: 'other-unit', exact: 1, unit: 'rad', askedUnit: 'deg', creditRatio: 0.5 },
  { kind: 'wrong-unit', exact: 1, unit: 'V', askedUnit: '', creditRatio: 0.5 },
  { kind: 'unreadable' },
  ...[0, 1, 2].map(
    (count): AnswerCheck => ({
      kind: 'wrong',
      exact: 1,
      slips: SLIPS.slice(0, count).map(({ name, explanation }) => ({
        name,
        explanation,
        value: 1,
      })),
      ambiguous: false,
      together: count === 2,
      perhapsRounded: true,
      wrongUnit: 'V',
      creditRatio: 0,
    }),
  ),
];
const STEPS: readonly StepCheck['kind'][] = [
  'right',
  'carried-forward',
  'wrong',
  'wrong-unit',
  'unreadable',
];

/** Texts that the parts of the page say themselves. */
function textsOf(component: string): readonly string[] {
  const source = readFileSync(
    new URL(`../../site/src/components/${component}.astro`, import.meta.url),
    'utf8',
  );
  return [...source.matchAll(/say\('([^']+)'\)/g)].map(([, text = '']) => text);
}

describe.each(codes)('%s', (code) => {
  const missedIn = async (draw: () => void) => {
    const missing = new Set<string>();
    const language = await languageFor(code, 'a-sheet-for-the-class');
    expect(language.code).toBe(code);
    inLanguage(language, draw, missing);
    return [...missing];
  };

  test('sheets, hints, verdicts and steps', async () => {
    const sheet = worksheet({
      seed: 5,
      count: plans.length,
      plans: plans.map(({ name }) => name),
      level: 1,
    });
    const missing = await missedIn(() => {
      for (const use of ['trainer', 'practice', 'test'] as const) renderSheet(sheet, use);
      for (const each of sheet.exercises) {
        hintsOf(each, 'trainer');
        hintLabel(each, 0, 'trainer');
        hintLabel(each, 99, 'trainer');
        for (const check of CHECKS) verdictHtml(verdictOn(check, each));
      }
      for (const kind of STEPS)
        stepSays({ symbol: 'x', meaning: 'x', kind, slips: [], creditRatio: 0 });
    });
    expect(missing).toEqual([]);
  });

  test('the reason of every plan', async () => {
    const language = await languageFor(code, 'a-sheet-for-the-class');
    const without = SOLUTION_PLANS.filter(({ name }) => language.find(`why ${name}`) === undefined);
    expect(without.map(({ name }) => name)).toEqual([]);
  });

  test('every slip, in general and at each item', async () => {
    const missing = await missedIn(() => {
      for (const slip of SLIPS) {
        said(slip.explanation);
        for (const plan of plans)
          for (const { says } of slip.changes(plan)) if (says !== undefined) said(says);
      }
    });
    expect(missing).toEqual([]);
  });

  test('the report of a class, and what stands around it', async () => {
    const [one] = [exercise({ plan: 'elevation', seed: 1 })];
    const outcomes = [...CHECKS.map(({ kind }) => kind), 'empty' as const, 'no-answer' as const];
    const missing = await missedIn(() => {
      renderClass({
        learners: outcomes.map((outcome) => ({
          name: '',
          form: 'A',
          marks: 1.5,
          mostMarks: 2,
          exercises: [{ answer: '1', outcome, marks: 1.5, mostMarks: 2, steps: [], slips: [] }],
        })),
        exercises: [
          { plan: one.plan, title: one.solution.title, answered: 1, right: 1, meanRatio: 0.5 },
        ],
        slips: [
          {
            name: 'x',
            explanation: SLIPS[0]?.explanation ?? '',
            times: 1,
            exerciseNumbers: [1],
            learners: [''],
          },
        ],
        unread: (['no-code', 'damaged', 'other-sheet', 'replaced'] as const).map((kind) => ({
          line: 1,
          text: 'x',
          kind,
        })),
      });
      for (const component of ['ClassSheet', 'LearnerSheet', 'ClassView'])
        for (const text of textsOf(component)) said(text);
      for (const text of [
        'Copied',
        'Copying is not allowed here',
        'This is not a code from the foot of a sheet.',
        'Remove everything that was typed on this sheet?',
        'The sheet for the printer',
        '1 of 2 right',
        'error carried forward',
      ])
        said(text);
    });
    expect(missing).toEqual([]);
  });
});

test('the learner’s page holds no exercise, no answer and no key', () => {
  const source = readFileSync(
    new URL('../../site/src/components/LearnerSheet.astro', import.meta.url),
    'utf8',
  );
  expect(source).not.toMatch(/renderSheet|worksheet\(|data-take|\bkey\b/i);
  const practice = worksheet({ seed: 5, count: 3 });
  for (const { solution, ...each } of practice.exercises) {
    const shown = renderSheet({ ...practice, exercises: [{ ...each, solution }] }, 'practice');
    const answer = each.answer.toFixed(each.decimals);
    expect(shown).not.toContain(`>${answer}`);
    const hints = hintsOf({ ...each, solution }, 'practice').join(' ');
    for (const { substitutedText } of solution.steps) expect(hints).not.toContain(substitutedText);
  }
});
