import {
  checkAnswer,
  exercise,
  germanPrint,
  SOLUTION_PLANS,
  worksheet,
  worksheetCsv,
  worksheetHtml,
  worksheetOfCode,
  worksheetQti,
} from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { solutionPlan } from '../../src/teaching/plans/index.js';
import { plainSteps } from '../../src/teaching/print/formulas.js';
import { plainSymbol } from '../../src/teaching/print/symbols.js';
import { runs } from '../support/runs.js';

describe.each(SOLUTION_PLANS.map(({ name }) => name))('1,000 exercises: %s', (plan) => {
  test('all have an answer that the library gives, and hints in order', () => {
    const seeds = randomStream(99);
    for (let i = 0; i < runs(1000, 30); i++) {
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
      expect(one.hints[2]).toContain(`${steps[0]?.meaning}: `);
      const last = one.hints[one.hints.length - 1] ?? '';
      expect(last).toBe(
        `${plainSymbol(steps.at(-1)?.tex ?? '')} = ${plainSteps(one.solution).at(-1)?.numbers}`,
      );
      expect(last.endsWith(`= ${one.answer.toFixed(one.decimals)}`)).toBe(false);
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

  test('as CSV: negative answers are numbers, cells parted as the spreadsheet wants them', () => {
    const negative = worksheet({ seed: 5, count: 6, plans: ['level-in-dbm', 'off-axis-density'] });
    const csv = worksheetCsv(negative);
    const below = negative.exercises.filter(({ answer }) => answer < 0);
    expect(below.length).toBeGreaterThan(1);
    for (const { answer, decimals } of below)
      expect(csv).toContain(`,${answer.toFixed(decimals)},`);
    const german = worksheetCsv(negative, { separator: ';', decimalSign: ',' });
    expect(german.split('\r\n')[0]).toBe(
      'number;plan;question;answer;unit;decimals;tolerance;hints',
    );
    expect(german).toContain(
      `;${negative.exercises[0]?.answer.toFixed(negative.exercises[0].decimals).replace('.', ',')};`,
    );
    expect(() => worksheetCsv(negative, { decimalSign: ',' })).toThrow(
      expect.objectContaining({ parameter: 'decimalSign' }),
    );
  });

  test('form B has the kinds of form A with other numbers, and a code makes a sheet again', () => {
    const a = worksheet({ seed: 9, count: 5 });
    const b = worksheet({ seed: 9, count: 5, form: 'B' });
    expect(b.exercises.map(({ plan }) => plan)).toEqual(a.exercises.map(({ plan }) => plan));
    expect(b.exercises.map(({ text }) => text)).not.toEqual(a.exercises.map(({ text }) => text));
    for (const sheet of [a, b, worksheet({ seed: 1, count: 2, level: 1, plans: ['skew'] })])
      expect(worksheetOfCode(sheet.code)).toEqual(sheet);
    expect(() => worksheetOfCode('7')).toThrow(expect.objectContaining({ parameter: 'code' }));
  });

  test('for the printer: name, date, marks, room, signs of print, the code, tables where needed', () => {
    const printed = worksheet({
      seed: 2,
      count: 2,
      plans: ['conformity-probability', 'level-in-dbm'],
    });
    const paper = worksheetHtml(printed);
    for (const word of ['Name', 'Date', 'marks', 'class="room"', 'dBµV', printed.code])
      expect(paper).toContain(word);
    expect(paper).not.toMatch(/dBuV|\bdeg\b| \* /);
    // Standard normal distribution, as in any table: 84.1 % below 1, 97.7 % below 2.
    expect(paper).toContain('<tr><th>1.0</th><td>84.1</td>');
    expect(paper).toContain('<tr><th>2.0</th><td>97.7</td>');
    expect(worksheetHtml(worksheet({ seed: 2, count: 1, plans: ['skyline'] }))).not.toContain(
      '<table',
    );
    const t = worksheetHtml(
      worksheet({ seed: 2, count: 1, plans: ['conformity-of-few-readings'] }),
    );
    // Student's t with 2 degrees of freedom has a closed form: 1/2 + t / (2 sqrt(2 + t^2)); t = 2: 90.8 %.
    expect(t).toContain('<tr><th>2.0</th><td>90.8</td>');
    expect(worksheetHtml(printed, { key: true })).toContain('class="answers"');
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

describe('a sheet printed in German', () => {
  const sheet = worksheet({ seed: 4, count: 3, plans: ['elevation', 'guard-band'], level: 1 });
  const translate = (text: string) => `«${text}»`;
  const words = { ...germanPrint, translate };

  test('has its words, decimal commas and translated titles, and the same code', () => {
    for (const key of [false, true]) {
      const html = worksheetHtml(sheet, { key, words });
      expect(html).toContain('<html lang="de">');
      expect(html).toContain(`Aufgabenblatt ${sheet.seed} A`);
      for (const { solution } of sheet.exercises) expect(html).toContain(`«${solution.title}»`);
      expect(html).toContain(`Code ${sheet.code}`);
      // No decimal point is left in a number of the sheet; the style and the code at the foot have theirs.
      const body = html
        .replace(/[\s\S]*<body>/, '')
        .replace(/<footer>[\s\S]*/, '')
        .replace(/<mspace[^>]*>/g, '');
      expect(body).not.toMatch(/\d\.\d/);
      expect(body).not.toMatch(/\b(Answer|Marks|Name of|Date|decimals)\b/);
    }
  });

  test('gives the answer of the round Earth too where it will do', () => {
    const [each] = sheet.exercises.filter(({ plan }) => plan === 'elevation');
    const html = worksheetHtml(sheet, { key: true, words });
    expect(html).toContain(germanPrint.roundEarth);
    const [first] = SOLUTION_PLANS.find(({ name }) => name === 'elevation')?.otherWays?.(
      each?.inputs ?? {},
    ) ?? [Number.NaN];
    expect(html).toContain(first?.toFixed(2).replace('.', ',').replace('-', '−'));
  });
});
