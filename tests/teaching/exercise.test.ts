import {
  checkAnswer,
  exercise,
  SOLUTION_PLANS,
  worksheet,
  worksheetCsv,
  worksheetHtml,
  worksheetQti,
} from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { solutionPlan } from '../../src/teaching/plans/index.js';
import { runs } from '../support/runs.js';

describe.each(SOLUTION_PLANS.map(({ name }) => name))('1,000 exercises: %s', (plan) => {
  test('all have an answer that the library gives, and hints in order', () => {
    const seeds = randomStream(99);
    for (let i = 0; i < runs(1000); i++) {
      const one = exercise({
        plan,
        seed: seeds.integer(2 ** 31),
        level: ((i % 3) + 1) as 1 | 2 | 3,
      });
      const values = solutionPlan(plan).compute(one.inputs);
      if (typeof values === 'string') throw new Error(values);
      const steps = one.solution.steps;
      expect(one.answer).toBe(values[steps[steps.length - 1]?.symbol ?? '']);
      expect(Number.isFinite(one.answer)).toBe(true);
      // From the way, through the formulas, to the numbers put in; the answer itself is not given away.
      expect(one.hints.length).toBe(2 * steps.length + 2);
      expect(one.hints[2]).toContain(steps[0]?.formulaText);
      expect(one.hints[one.hints.length - 1]).toBe(steps[steps.length - 1]?.substitutedText);
    }
  });
});

describe('exercise', () => {
  test('the same seed gives the same exercise, another seed another one', () => {
    expect(exercise({ plan: 'azimuth', seed: 5 })).toEqual(exercise({ plan: 'azimuth', seed: 5 }));
    expect(exercise({ plan: 'azimuth', seed: 5 }).text).not.toBe(
      exercise({ plan: 'azimuth', seed: 6 }).text,
    );
  });
  test.each(SOLUTION_PLANS.map((plan) => [plan.name, plan] as const))(
    '%s tells every given and constant that its formulas need',
    (plan, { constants }) => {
      const { text, solution } = exercise({ plan, seed: 3 });
      for (const { meaning } of [...solution.givens, ...constants]) expect(text).toContain(meaning);
    },
  );
  test.each([
    [{ plan: 'nothing', seed: 1 }, 'name'],
    [{ plan: 'azimuth', seed: Number.NaN }, 'seed'],
    [{ plan: 'azimuth', seed: 1, level: 4 }, 'level'],
    [{ plan: 'azimuth', seed: 1, level: 1.5 }, 'level'],
  ])('refuses %j', (input, parameter) => {
    expect(() => exercise(input as never)).toThrow(expect.objectContaining({ parameter }));
  });
});

describe('worksheet', () => {
  const sheet = worksheet({ seed: 42, count: 12 });

  test('takes every kind before one comes again', () => {
    const kinds = Math.min(12, SOLUTION_PLANS.length);
    expect(new Set(sheet.exercises.slice(0, kinds).map(({ plan }) => plan)).size).toBe(kinds);
  });

  test('its key is right', () => {
    for (const one of sheet.exercises)
      expect(checkAnswer(one, one.answer.toFixed(one.decimals)).kind).toBe('right');
  });

  test('as CSV: one line each, quotes doubled, no cell that a spreadsheet would run', () => {
    const lines = worksheetCsv(sheet).split('\r\n');
    expect(lines.length).toBe(14);
    for (const line of lines) expect(line).not.toMatch(/(^|,)"?[=+@]/);
  });

  test('as QTI: every item is well-formed and the manifest names it', () => {
    const files = worksheetQti(sheet);
    const manifest = files[0]?.content ?? '';
    for (const { path, content } of files.slice(1)) {
      expect(manifest).toContain(`href="${path}"`);
      const opened = [...content.matchAll(/<([a-zA-Z]+)(?:\s[^<>]*[^/])?>/g)].map(([, tag]) => tag);
      const closed = [...content.matchAll(/<\/([a-zA-Z]+)>/g)].map(([, tag]) => tag);
      expect(opened.sort()).toEqual(closed.sort());
    }
  });

  test('as QTI: a right answer lies between both bounds, a wrong one does not, and the test names every item', () => {
    const [, whole, ...items] = worksheetQti(sheet);
    expect(items.length).toBe(sheet.exercises.length);
    items.forEach(({ path, content }, index) => {
      expect(whole?.content).toContain(`href="${path}"`);
      expect(content).not.toContain('toleranceMode');
      const bound = (comparison: string) =>
        Number(
          new RegExp(`<${comparison}>.*?<baseValue baseType="float">([^<]+)<`).exec(content)?.[1],
        );
      const { answer, tolerance, decimals } = sheet.exercises[
        index
      ] as (typeof sheet.exercises)[number];
      const given = Number(answer.toFixed(decimals));
      expect(given).toBeGreaterThanOrEqual(bound('gte'));
      expect(given).toBeLessThanOrEqual(bound('lte'));
      expect(answer + 1.01 * tolerance).toBeGreaterThan(bound('lte'));
      expect(answer - 1.01 * tolerance).toBeLessThan(bound('gte'));
    });
  });

  test('for the printer: lines to write on, or the key', () => {
    expect(worksheetHtml(sheet)).not.toContain('class="steps"');
    expect(worksheetHtml(sheet, { key: true })).toContain('class="steps"');
  });
});
