/** Tables that are pasted, tables that are too long, and errors in the page's words. */

import { describe, expect, test } from 'vitest';
import { choice, rows } from '../../site/src/lib/inputs/inputs.js';
import { linesOf, pasted } from '../../site/src/lib/inputs/pasted.js';
import { defaultsOf, joinRows, MOST_ROWS, readValues } from '../../site/src/lib/inputs/state.js';
import { parameterWords } from '../../site/src/lib/parameterWords.js';

const table = [
  ['1', '2'],
  ['3', '4'],
];

describe('a pasted table', () => {
  test('takes the place of all rows, without its heading', () => {
    expect(pasted(table, 'Turns\tLevel\n0\t-43\n1\t-41\n2\t-44\n', 0, 0)).toEqual([
      ['0', '-43'],
      ['1', '-41'],
      ['2', '-44'],
    ]);
  });

  test('a column alone is laid over the table', () => {
    expect(pasted(table, '7\n8', 0, 1)).toEqual([
      ['1', '7'],
      ['3', '8'],
    ]);
  });

  test('reads semicolons with decimal commas, and commas with points', () => {
    expect(linesOf('0;-43,5\n1;-41,2')).toEqual([
      ['0', '-43,5'],
      ['1', '-41,2'],
    ]);
    expect(linesOf('0,-43.5\n1,-41.2')).toEqual([
      ['0', '-43.5'],
      ['1', '-41.2'],
    ]);
  });
});

describe('refusals', () => {
  const inputs = {
    samples: rows({
      label: 'Samples',
      columns: { x: { label: 'X', step: 1 } },
      add: { x: 0 },
      value: [{ x: 1 }],
    }),
    kind: choice({ label: 'Kind', options: { 'a-b': 'A or B', c: 'C alone' }, value: 'c' }),
  };
  const read = (typed: Record<string, string>) =>
    readValues(inputs, { ...defaultsOf(inputs), ...typed });

  test('thousands of rows, before anything is computed', () => {
    const samples = joinRows(Array.from({ length: 3000 }, () => ['1']));
    expect(() => read({ samples })).toThrow(`at most ${MOST_ROWS} rows`);
    // What is pasted is cut to just over the limit, so that the page stays quick and still says so.
    expect(pasted([['1']], '1\n'.repeat(3000), 0, 0).length).toBeLessThanOrEqual(MOST_ROWS + 2);
  });

  test('options by what the list says, not by their codes', () => {
    expect(() => read({ kind: 'd' })).toThrow('one of A or B, C alone');
  });

  test('parameters in words, rows from one', () => {
    expect(parameterWords('systemNoiseK')).toBe('system noise');
    expect(parameterWords('samples[2].levelDbm')).toBe('level, row 3');
    expect(parameterWords('orbitalLongitudeDeg')).toBe('orbital longitude');
  });
});
