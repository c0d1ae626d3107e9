/** Slips from practice: typical wrong answers, named by hand, against what the check says of them. */

import { checkAnswer, exercise, SOLUTION_PLANS } from 'slantpath/teaching';
import { expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { type PracticeRule, practiceRules } from '../support/practiceSlips.js';
import { runs } from '../support/runs.js';

/** Names of the table for which the check has a wider or another word that says the same. */
const SAME: Readonly<Record<string, readonly string[]>> = {
  'factor-left-out': ['item-forgotten'],
  'reduction-left-out': ['item-forgotten'],
  'square-not-taken': ['sum-for-root-of-squares'],
  'difference-reversed': ['item-reversed', 'givens-exchanged'],
  'half-not-taken': ['twice-too-much'],
  'unit-of-input': ['conversion-left-out'],
  'step-for-answer': ['other-unit'],
};

/** What is said of an answer, in names. */
function said(question: Parameters<typeof checkAnswer>[0], answer: string) {
  const check = checkAnswer(question, answer);
  if (check.kind === 'other-unit')
    return {
      kind: check.kind,
      names: ['other-unit', ...(check.unit === 'rad' ? ['radians-in-answer'] : [])],
    };
  return {
    kind: check.kind,
    names: 'slips' in check ? check.slips.map(({ name }) => name) : [],
  };
}

/** Counts over inputs of the rules: those of the table, or seeded ones. */
function tried(
  rules: readonly PracticeRule[],
  inputsOf: (rule: PracticeRule) => readonly Readonly<Record<string, number>>[],
) {
  const count = { answers: 0, named: 0, misnamed: 0, praised: 0 };
  const missed: string[] = [];
  for (const rule of rules)
    for (const inputs of inputsOf(rule)) {
      const { wrong, exact, decimals } = rule.at(inputs);
      const answer = wrong.toFixed(decimals);
      const question = { plan: rule.plan, inputs, level: 2 as const };
      // An answer that is right in the decimals asked for is no wrong answer, whatever led to it.
      if (!Number.isFinite(wrong) || rule.same(answer, exact, inputs)) continue;
      const { kind, names } = said(question, answer);
      const named = rule.expected.every((list) =>
        list.some((name) => [name, ...(SAME[name] ?? [])].some((each) => names.includes(each))),
      );
      count.answers++;
      if (named) count.named++;
      else if (['right', 'badly-rounded', 'other-way'].includes(kind)) count.praised++;
      else if (names.length > 0) count.misnamed++;
      if (!named) missed.push(`${rule.plan}: ${rule.words}: ${kind} ${names.join(' ')}`);
    }
  return { ...count, missed };
}

const rules = practiceRules();
const percent = (part: number, all: number) => (100 * part) / all;

test('the table holds at least 120 typical wrong answers over at least 40 plans', () => {
  expect(rules.length).toBeGreaterThanOrEqual(120);
  expect(new Set(rules.map(({ plan }) => plan)).size).toBeGreaterThanOrEqual(40);
});

test('of the table at least 90 % are named and under 2 % misnamed, none praised', () => {
  const short = runs(5) < 5;
  const some = rules.filter((_, at) => !short || at % 5 === 2);
  const result = tried(some, ({ inputs }) => [inputs]);
  console.log('practice slips of the table', result);
  expect(percent(result.named, result.answers)).toBeGreaterThanOrEqual(90);
  expect(percent(result.misnamed, result.answers)).toBeLessThan(2);
  expect(result.praised).toBe(0);
});

test('with seeded numbers, no conceptual error is praised without being named', () => {
  const short = runs(5) < 5;
  const some = rules.filter((_, at) => !short || at % 9 === 4);
  const seeds = short ? 2 : 75;
  const result = tried(some, ({ plan }) =>
    Array.from({ length: seeds }, (_, seed) => exercise({ plan, seed: seed + 77 }).inputs),
  );
  const kinds = new Map<string, number>();
  for (const each of result.missed) kinds.set(each, (kinds.get(each) ?? 0) + 1);
  console.log('practice slips, seeded', {
    ...result,
    missed: [...kinds].sort((a, b) => b[1] - a[1]).slice(0, 12),
  });
  expect(percent(result.named, result.answers)).toBeGreaterThanOrEqual(90);
  expect(result.praised).toBe(0);
});

test('a wrong answer without a slip is seldom given a name by chance', () => {
  const stream = randomStream(5);
  const count = { answers: 0, named: 0 };
  const short = runs(12) < 12;
  const some = SOLUTION_PLANS.filter((_, at) => !short || at % 9 === 0);
  for (const { name } of some)
    for (let seed = 500; seed < 500 + runs(12); seed++) {
      const one = exercise({ plan: name, seed });
      // From 2.5 % to 47.5 % off, to either side.
      const off = (0.025 + 0.00045 * stream.integer(1000)) * (stream.integer(2) === 0 ? -1 : 1);
      const check = checkAnswer(one, (one.answer * (1 + off)).toFixed(one.decimals));
      if (check.kind === 'right') continue;
      count.answers++;
      if ('slips' in check && check.slips.length > 0) count.named++;
    }
  console.log('named by chance', count);
  // The few answers of the short form scatter.
  expect(percent(count.named, count.answers)).toBeLessThan(short ? 50 : 12);
});
