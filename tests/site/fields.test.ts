import { describe, expect, test } from 'vitest';
import { choice, optionalNumber, several } from '../../site/src/lib/inputs/inputs.js';
import {
  decodeState,
  defaultsOf,
  encodeState,
  readValues,
} from '../../site/src/lib/inputs/state.js';
import { en } from '../../site/src/lib/language/words.js';
import { renderForm } from '../../site/src/lib/render.js';

const inputs = {
  subject: choice({ label: 'Subject', options: { a: 'A', b: 'B' }, value: 'a' }),
  limit: optionalNumber({
    label: 'Limit',
    step: 1,
    empty: 'usual',
    onlyFor: { choice: 'subject', values: ['b'] },
  }),
  kinds: several({
    label: 'Kinds',
    groups: { first: { x: 'X', y: 'Y' }, second: { z: 'Z' } },
    value: ['x', 'z'],
  }),
};
const defaults = defaultsOf(inputs);
const read = (query: string) => readValues(inputs, decodeState(query, defaults));

describe('boxes to tick', () => {
  test('go to the URL and back, none of them too', () => {
    expect(read('').kinds).toEqual(['x', 'z']);
    for (const kinds of ['y', 'x*y*z', '']) {
      const query = encodeState({ ...defaults, kinds }, defaults);
      expect(read(query).kinds).toEqual(kinds === '' ? [] : kinds.split('*'));
    }
  });

  test('a name that is none is refused by the field', () => {
    expect(() => read('kinds=x*nothing')).toThrow(expect.objectContaining({ parameter: 'kinds' }));
  });
});

describe('a field that belongs to a choice', () => {
  test('is read only while its choice is made', () => {
    expect(read('subject=b&limit=3').limit).toBe(3);
    expect(read('subject=a&limit=3').limit).toBeUndefined();
    expect(read('subject=a&limit=three').limit).toBeUndefined();
    expect(() => read('subject=b&limit=three')).toThrow(
      expect.objectContaining({ parameter: 'limit' }),
    );
  });

  test('is hidden otherwise', () => {
    const field = (subject: string) =>
      /<div class="ex-field" data-only-for="subject" data-values="b"( hidden)?>/.exec(
        renderForm(en, 'page', inputs, { ...defaults, subject }),
      );
    expect(field('a')?.[1]).toBe(' hidden');
    expect(field('b')).not.toBeNull();
    expect(field('b')?.[1]).toBeUndefined();
  });
});
