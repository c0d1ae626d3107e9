/** The exported QTI, scored by an evaluator of its own: right answers earn the mark, wrong ones, slips and none do not. */

import { likelySlips, SOLUTION_PLANS, worksheet, worksheetQti } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { playedItem, playedTest } from '../support/qti.js';
import { runs } from '../support/runs.js';

const plans = SOLUTION_PLANS.map(({ name }) => name);
const count = { right: 0, wrong: 0 };

describe.each(Array.from({ length: runs(10) }, (_, seed) => [seed] as const))(
  'one item of each kind, seed %d',
  (seed) => {
    const sheet = worksheet({ seed, count: plans.length, plans });
    const [, assessment, ...items] = worksheetQti(sheet);
    const content = new Map(items.map((item) => [item.path, item.content]));

    test('scores what is typed as the specification says', () => {
      sheet.exercises.forEach(({ answer, tolerance, decimals }, at) => {
        const score = (typed: string) => {
          const played = playedItem(items[at]?.content ?? '', typed);
          // The solution is shown after every answer.
          expect(played.feedback).toBe(1);
          return played.score;
        };
        for (const off of [0, 0.98, -0.98]) {
          expect(score(String(answer + off * tolerance)), sheet.exercises[at]?.text).toBe(1);
          count.right++;
        }
        expect(score(answer.toFixed(decimals))).toBe(1);
        for (const off of [1.02, -1.02, 3, -3, 1e6]) {
          expect(score(String(answer + off * tolerance)), sheet.exercises[at]?.text).toBe(0);
          count.wrong++;
        }
        for (const nothing of ['', 'abc', 'NaN']) expect(score(nothing)).toBe(0);
      });
      console.log('QTI played', count);
    });

    test('adds the marks of a whole test', () => {
      const total = (right: (at: number) => boolean) =>
        playedTest(assessment?.content ?? '', (href) => {
          const at = items.findIndex(({ path }) => path === href);
          const one = sheet.exercises[at];
          const typed = right(at) ? (one?.answer ?? 0).toFixed(one?.decimals) : '';
          return playedItem(content.get(href) ?? '', typed).score;
        });
      expect(total(() => true)).toBe(plans.length);
      expect(total((at) => at % 2 === 0)).toBe(Math.ceil(plans.length / 2));
      expect(total(() => false)).toBe(0);
    });
  },
);

test('a usual slip earns nothing', () => {
  const some = plans.filter((_, at) => at % 13 === 0);
  const sheet = worksheet({ seed: 3, count: some.length, plans: some });
  const items = worksheetQti(sheet).slice(2);
  let tried = 0;
  sheet.exercises.forEach((one, at) => {
    for (const { value } of likelySlips(one, 6)) {
      if (Math.abs(value - one.answer) <= one.tolerance) continue;
      expect(playedItem(items[at]?.content ?? '', value.toFixed(one.decimals + 2)).score).toBe(0);
      tried++;
    }
  });
  expect(tried).toBeGreaterThan(some.length);
});

test('the evaluator refuses what it does not know, and knows NULL from false', () => {
  const [, , item] = worksheetQti(worksheet({ seed: 3, count: 1, plans: ['elevation'] }));
  const content = item?.content ?? '';
  expect(() => playedItem(content.replace(/gte>/g, 'gt>').replace('<gte>', '<gt>'), '1')).toThrow(
    'expression gt',
  );
  // Nothing typed is NULL: "not below the bound" is not true either.
  const inverted = content.replace('<and>', '<not><and>').replace('</and>', '</and></not>');
  expect(playedItem(inverted, '').score).toBe(0);
  expect(playedItem(inverted, '1e9').score).toBe(1);
});
