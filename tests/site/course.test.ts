/** The course: 45 minutes a lesson, prerequisites that come before, pages and kinds that exist, slips to expect. */

import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { LESSONS } from '../../site/src/lib/course.js';
import { exercise, likelySlips, SOLUTION_PLANS } from '../../src/teaching/index.js';

const root = new URL('../../docs/', import.meta.url);
const kinds = new Set(SOLUTION_PLANS.map(({ name }) => name));

test('eight to ten lessons, the primer in the first', () => {
  expect(LESSONS.length).toBeGreaterThanOrEqual(8);
  expect(LESSONS.length).toBeLessThanOrEqual(10);
  expect(LESSONS[0]?.pages[0]).toBe('/start/primer/');
});

describe.each(LESSONS.map((lesson, at) => ({ ...lesson, number: at + 1 })))(
  'lesson $number',
  (lesson) => {
    test('takes 45 minutes', () => {
      expect(lesson.phases.reduce((sum, [minutes]) => sum + minutes, 0)).toBe(45);
    });

    test('comes after the lessons that it needs', () => {
      for (const before of lesson.after) expect(before).toBeLessThan(lesson.number);
    });

    test('names pages and kinds that exist', () => {
      for (const page of lesson.pages)
        expect(existsSync(new URL(`.${page.replace(/\/$/, '')}.mdx`, root)), page).toBe(true);
      for (const plan of lesson.plans) expect(kinds.has(plan), plan).toBe(true);
    });

    test('has slips to expect for each kind', () => {
      for (const plan of lesson.plans)
        expect(likelySlips(exercise({ plan, seed: 1 }), 3).length, plan).toBeGreaterThan(0);
    });
  },
);
