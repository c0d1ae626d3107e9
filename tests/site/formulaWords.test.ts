/** What is said of formulas as they are handed around has German words, and the formula in it stays as it was typed. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import page from '../../site/src/examples/does-your-formula-hold.js';
import { formulaApart, typedApart } from '../../site/src/lib/formulaApart.js';
import { defaultsOf, readValues } from '../../site/src/lib/inputs/state.js';
import { inLanguage, said, unmarked } from '../../site/src/lib/language/language.js';
import { languageFor } from '../../site/src/lib/language/languages.js';
import { renderTop, renderView } from '../../site/src/lib/render.js';
import { DomainError } from '../../src/index.js';
import { FULL_RUNS } from '../support/runs.js';

const german = await languageFor('de', 'does-your-formula-hold');
const inGerman = (text: string) => inLanguage(german, () => unmarked(said(text)));

test('every sentence about the formulas of the table has German words', () => {
  const missing = new Set<string>();
  const rows = readFileSync(new URL('../reference/teaching/formulas.tsv', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .filter((_, at) => FULL_RUNS || at % 15 === 4);
  expect(rows.length).toBeGreaterThan(7);
  inLanguage(
    german,
    () => {
      for (const row of rows)
        try {
          const [subject = '', formula = '', legend = ''] = row.split('\t');
          const values = readValues(page.inputs, {
            ...defaultsOf(page.inputs),
            subject,
            formula,
            legend: legend.replaceAll(', ', '\n'),
          });
          const view = page.view(page.compute(values), values);
          renderView(german.words, view);
          renderTop(german.words, view);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          said(typedApart(error.message).replace(error.parameter, 'X'));
        }
    },
    missing,
  );
  expect([...missing]).toEqual([]);
});

test.each([
  [
    'There is a plus where a minus belongs, before atan(tan(dlon) / sin(lat)).',
    'Plus statt Minus vor atan(tan(dlon) / sin(lat)).',
  ],
  [
    'There is a sine where a tangent belongs, of latitude of the site.',
    'Sinus statt Tangens von latitude of the site.',
  ],
  [
    'It multiplies by 0.5 * to where it should divide.',
    'Sie multipliziert mit 0.5 * to, statt zu dividieren.',
  ],
])('%s', (english, other) => {
  expect(inGerman(formulaApart(english))).toBe(other);
});

test.each([
  [
    `formula must be readable: after 'tan(2 of' (character 9) an operator is expected, got "tan(2 of; 3"; is a * or a decimal point missing?`,
    'Formel: verlangt ist etwas Lesbares: nach „tan(2 of“ (Zeichen 9) wird erwartet: ein Rechenzeichen, nicht "tan(2 of; 3"; fehlt ein * oder ein Dezimalpunkt?',
  ],
  [
    `formula must be readable: at its beginning a name that is known here (lat, dlon) is expected, got "f"; 'f' is unknown; say what it stands for, as in f = …`,
    'Formel: verlangt ist etwas Lesbares: am Anfang wird erwartet: ein hier bekannter Name (lat, dlon), nicht "f"; „f“ ist unbekannt; angeben, wofür es steht, etwa f = …',
  ],
])('the error %s', (english, other) => {
  expect(inGerman(typedApart(english).replace('formula', 'Formel'))).toBe(other);
});
