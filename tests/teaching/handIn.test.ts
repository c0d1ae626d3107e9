/** Codes that learners hand in: there and back, damaged, of another sheet; and the class that they make. */

import {
  classReport,
  exercise,
  type HandedAnswer,
  handInCode,
  readHandIn,
  worksheet,
} from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { crc24 } from '../../src/teaching/handIn/checkedText.js';
import { utf8Bytes, utf8Text } from '../../src/teaching/handIn/utf8.js';
import { runs } from '../support/runs.js';

const plans = ['azimuth', 'free-space-loss', 'skew', 'magnetic-bearing', 'bracketing'];
const sheet = worksheet({ seed: 7, count: 5, plans });
const other = worksheet({ seed: 7, count: 5, plans, form: 'B' });
const empty = sheet.exercises.map((): HandedAnswer => ({ answer: '' }));

test('the check has the value that its catalogue gives for 123456789', () => {
  // Check value of CRC-24/OPENPGP in the catalogue of parametrised CRC algorithms (from memory).
  expect(crc24(new TextEncoder().encode('123456789'))).toBe(0x21cf02);
});

/** Any typed texts: numbers with units, words in other scripts, signs that the code uses itself. */
function anyAnswers(seed: number): HandedAnswer[] {
  const stream = randomStream(seed);
  const texts = ['205,63 dB', '-0.5', '1.2e3', 'weiß nicht', '−7', '12°30′', '✓', '', 'W-1', '٣'];
  const any = () =>
    stream.integer(2) === 0
      ? (texts[stream.integer(texts.length)] ?? '')
      : (stream.normal() * 100).toFixed(stream.integer(4));
  return sheet.exercises.map(({ solution }) => {
    const steps = Object.fromEntries(
      solution.steps
        .slice(0, -1)
        .filter(() => stream.integer(3) === 0)
        .map(({ symbol }) => [symbol, any()] as const)
        .filter(([, text]) => text !== ''),
    );
    return { answer: any(), ...(Object.keys(steps).length > 0 ? { steps } : {}) };
  });
}

const plain = (answers: readonly HandedAnswer[]) =>
  JSON.parse(JSON.stringify(answers).replace(/−/g, '-'));

describe('a code', () => {
  test('brings back what was typed', () => {
    for (let seed = 0; seed < runs(500); seed++) {
      const answers = anyAnswers(seed);
      const read = readHandIn(`Ana-Lena Bär: ${handInCode(sheet, answers)}`, [other, sheet]);
      expect(read).toEqual({
        kind: 'read',
        name: 'Ana-Lena Bär',
        form: 'A',
        answers: plain(answers),
      });
    }
  });

  test('is about forty signs long for five answers', () => {
    const answers = sheet.exercises.map(({ answer, decimals }) => ({
      answer: answer.toFixed(decimals),
    }));
    expect(handInCode(sheet, answers).length).toBeLessThanOrEqual(55);
    expect(handInCode(sheet, empty).length).toBeLessThanOrEqual(20);
  });

  test('is read as people copy it', () => {
    const code = handInCode(sheet, [{ answer: '171.6' }, ...empty.slice(1)]);
    const copies = [
      code,
      `Mara ${code}`,
      `Mara: ${code.toLowerCase()}.`,
      `Mara\t${code.replace(/-/g, '')}`,
      `Mara: ${code.replace(/-/g, ' ')}`,
      `Mara: ${code.replace(/-/g, ' – ')}`,
      `Mara: ${code.replace(/0/g, 'O').replace(/1/g, 'l')}`,
    ];
    for (const copy of copies) {
      const read = readHandIn(copy, [sheet]);
      expect(read.kind === 'read' && read.answers[0], copy).toEqual({ answer: '171.6' });
      if (copy.startsWith('M')) expect(read.kind === 'read' && read.name).toBe('Mara');
    }
  });

  test('with a wrong, missing, doubled or exchanged sign is damaged', () => {
    const answers = anyAnswers(3);
    const code = handInCode(sheet, answers);
    const signs = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
    const wrong: string[] = [];
    [...code].forEach((sign, at) => {
      if (sign === '-') return;
      const [before, after] = [code.slice(0, at), code.slice(at + 1)];
      for (const another of signs) if (another !== sign) wrong.push(before + another + after);
      wrong.push(before + after, before + sign + sign + after);
      const next = after[0];
      if (next && next !== '-' && next !== sign) wrong.push(before + next + sign + after.slice(1));
    });
    expect(wrong.length).toBeGreaterThan(500);
    for (const each of wrong) expect(readHandIn(`Mara: ${each}`, [sheet]).kind).toBe('damaged');
    expect(readHandIn(`Mara: ${code.slice(0, -6)}`, [sheet]).kind).toBe('damaged');
  });

  test('of another sheet says so', () => {
    for (const change of [{ seed: 8 }, { level: 1 as const }, { count: 4 }, { plans: ['skew'] }]) {
      const foreign = worksheet({ seed: 7, count: 5, plans, ...change });
      const code = handInCode(
        foreign,
        foreign.exercises.map(() => ({ answer: '1' })),
      );
      expect(readHandIn(`Mara: ${code}`, [sheet, other])).toEqual({
        kind: 'other-sheet',
        name: 'Mara',
      });
    }
  });

  test('is not found in plain words', () => {
    for (const text of ['', 'I was ill', 'Mara: 42', 'well-known-fact', 'Tel. 030'])
      expect(readHandIn(text, [sheet]).kind).toBe('no-code');
  });
});

test('answers that do not belong to the sheet are refused', () => {
  expect(() => handInCode(sheet, empty.slice(1))).toThrow(/answers must be a list of 5/);
  expect(() => handInCode(sheet, [{ answer: 'x'.repeat(61) }, ...empty.slice(1)])).toThrow(
    /answers\[0\]\.answer must be text of at most 60 characters/,
  );
  expect(() =>
    handInCode(sheet, [{ answer: '1', steps: { none: '2' } }, ...empty.slice(1)]),
  ).toThrow(/answers\[0\]\.steps\.none/);
});

describe('a class of twenty', () => {
  const one = exercise({ plan: 'free-space-loss', seed: 1 });
  const loss = worksheet({ seed: 11, count: 1, plans: ['free-space-loss'] });
  const right = (loss.exercises[0] ?? one).answer;
  const { frequencyGHz = 0, slantRangeKm = 0 } = (loss.exercises[0] ?? one).inputs;
  // 10 log in place of 20 log, worked out by hand from the givens.
  const tenLog = 92.448 + 10 * Math.log10(frequencyGHz) + 10 * Math.log10(slantRangeKm);
  const line = (name: string, answer: string, steps?: Record<string, string>) =>
    `${name}: ${handInCode(loss, [{ answer, ...(steps ? { steps } : {}) }])}`;

  test('is marked, its slips counted and its bad lines told', () => {
    const lines = [
      ...Array.from({ length: 12 }, (_, at) => line(`Right ${at}`, right.toFixed(2))),
      ...Array.from({ length: 6 }, (_, at) => line(`Ten log ${at}`, tenLog.toFixed(2))),
      line('Empty', ''),
      line('Twice', '1'),
      line('twice', right.toFixed(2)),
      'Ill: no code today',
      `${line('Damaged', '200').slice(0, -1)}0`,
    ];
    const report = classReport([loss], lines.join('\n'));
    expect(report.learners).toHaveLength(20);
    expect(report.exercises).toEqual([
      expect.objectContaining({ plan: 'free-space-loss', answered: 19, right: 13 }),
    ]);
    expect(report.exercises[0]?.meanRatio).toBeCloseTo(13 / 20, 12);
    expect(report.slips[0]).toMatchObject({
      name: 'ten-log-for-twenty',
      times: 6,
      exerciseNumbers: [1],
    });
    expect(report.slips[0]?.learners).toContain('Ten log 5');
    expect(report.unread.map(({ kind, line: at }) => [kind, at])).toEqual([
      ['replaced', 20],
      ['no-code', 22],
      ['damaged', 23],
    ]);
  });

  test('steps that go on rightly from a wrong one keep their marks', () => {
    const first = 20 * Math.log10(frequencyGHz);
    const range = 20 * Math.log10(slantRangeKm);
    const steps = { F: (first / 2).toFixed(3), R: range.toFixed(3) };
    const answer = (92.448 + first / 2 + range).toFixed(2);
    const { learners } = classReport([loss], line('Mara', answer, steps));
    expect(learners[0]).toMatchObject({ marks: 2, mostMarks: 3 });
    expect(learners[0]?.exercises[0]?.steps.map(({ kind }) => kind)).toEqual([
      'wrong',
      'right',
      'carried-forward',
    ]);
  });

  test('a code that a mail program broke after a hyphen is put together', () => {
    const code = line('Mara', right.toFixed(2));
    const at = code.lastIndexOf('-') + 1;
    const report = classReport([loss], `${code.slice(0, at)}\n${code.slice(at)}\n`);
    expect(report.learners.map(({ name, marks }) => [name, marks])).toEqual([['Mara', 3]]);
    expect(report.unread).toEqual([]);
  });
});

// Byte values of RFC 3629, section 7, and a tab; half of a surrogate pair is the replacement character.
test.each([
  ['A\u2262\u0391.', [0x41, 0xe2, 0x89, 0xa2, 0xce, 0x91, 0x2e]],
  ['\u65e5\u672c\u8a9e', [0xe6, 0x97, 0xa5, 0xe6, 0x9c, 0xac, 0xe8, 0xaa, 0x9e]],
  ['a\tb', [0x61, 0x09, 0x62]],
])('UTF-8 of %j', (text, bytes) => {
  expect(utf8Bytes(text)).toEqual(bytes);
  expect(utf8Text(bytes)).toBe(text);
});

test('what is no text gives the replacement character', () => {
  expect(utf8Bytes('\ud800')).toEqual([0xef, 0xbf, 0xbd]);
  expect(utf8Text([0xff, 0xfe])).toBe('\ufffd');
});
