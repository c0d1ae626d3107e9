/** What a user typed stays as it was typed, though it is a word that the page's language would translate. */

import { describe, expect, test } from 'vitest';
import type { Example } from '../../site/src/lib/example.js';
import type { Inputs } from '../../site/src/lib/inputs/inputs.js';
import { defaultsOf, joinRows, readValues } from '../../site/src/lib/inputs/state.js';
import {
  ENGLISH,
  finderOf,
  inLanguage,
  type Language,
  own,
  said,
  unmarked,
} from '../../site/src/lib/language/language.js';
import { languageFor } from '../../site/src/lib/language/languages.js';
import { escapeHtml } from '../../site/src/lib/language/text.js';
import { renderTop, renderView } from '../../site/src/lib/render.js';

const definitions = import.meta.glob<{ default: Example }>('../../site/src/examples/*.ts');

/** Names as users give them that the German pages have words for, and the German of each. */
const NAMES: readonly (readonly [name: string, german: string])[] = [
  ['Level', 'Pegel'],
  ['Station', 'Standort'],
  ['Slot', 'Position'],
  ['east', 'Ost'],
  ['yes', 'ja'],
  ['Level 1.5', 'Level 1,5'],
];

/** The inputs of an example with a user's name in them. */
const NAMED: Readonly<Record<string, (name: string) => Readonly<Record<string, string>>>> = {
  'levels-at-every-outlet': (name) => ({
    parts: `run: series-11 60\n  splitter: splitter 6.5\n    drop 1: series-6 15\n      ${name}: outlet 1\n    drop 2: series-6 90\n      class 2: outlet 1`,
  }),
  'which-frequency-do-i-tune': (name) => ({
    carriers: joinRows([[name, '11.938', '33', 'horizontal']]),
  }),
  'does-a-mobile-mast-disturb': (name) => ({
    carriers: joinRows([[name, '11.603', '33', '9.75']]),
    frequencyMHz: '1853',
  }),
};

const count = (text: string, what: string) => text.split(what).length - 1;

describe.each(Object.keys(NAMED))('%s', (page) => {
  const drawn = async (name: string) => {
    const example = (await definitions[`../../site/src/examples/${page}.ts`]?.())
      ?.default as Example<Inputs>;
    const language = await languageFor('de', page, true);
    const raw = { ...defaultsOf(example.inputs), ...NAMED[page]?.(name) };
    return inLanguage(language, () => {
      const values = readValues(example.inputs, raw);
      const view = example.view(example.compute(values), values);
      return renderTop(language.words, view) + renderView(language.words, view).join('');
    });
  };

  test.each(NAMES)('%s stays', async (name, german) => {
    const html = await drawn(name);
    const neutral = await drawn('Qqq');
    expect(count(html, name) - count(neutral, name)).toBe(count(neutral, 'Qqq'));
    expect(count(html, german)).toBe(count(neutral, german));
    expect(unmarked(html)).toBe(html);
  });
});

describe('own words', () => {
  const language: Language = {
    ...ENGLISH,
    code: 'de',
    decimal: ',',
    find: finderOf({ '{} is {}': '{} ist {}', Level: 'Pegel', 'at {}': 'bei {}' }),
  };
  const speak = (text: string) => inLanguage(language, () => escapeHtml(said(text)));

  test('alone, in a sentence, and where they would split a sentence elsewhere', () => {
    expect(speak(own('Level'))).toBe('Level');
    expect(speak('Level')).toBe('Pegel');
    expect(speak(`at ${own('Level')}`)).toBe('bei Level');
    expect(speak(`${own('what is Level')} is Level`)).toBe('what is Level ist Pegel');
    expect(speak(`${own('Room 1.5')} is 1.5`)).toBe('Room 1.5 ist 1,5');
  });

  test('said twice they are the same; in English too no mark reaches the page', () => {
    expect(inLanguage(language, () => escapeHtml(said(said(`at ${own('Level')}`))))).toBe(
      'bei Level',
    );
    expect(escapeHtml(said(`at ${own('Level')}`))).toBe('at Level');
  });
});
