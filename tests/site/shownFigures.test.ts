/** Figures and placeholders as a reader sees them. */

import { describe, expect, test } from 'vitest';
import type { Example } from '../../site/src/lib/example.js';
import { inLanguage, said } from '../../site/src/lib/language/language.js';
import { languageFor } from '../../site/src/lib/language/languages.js';
import { brief } from '../../site/src/lib/pictures/errorMap.js';

const definitions = import.meta.glob<{ default: Example }>('../../site/src/examples/*.ts');

test('what is left of rounding is printed as nothing, and nothing as a power of ten', () => {
  expect(brief(1.04e-14)).toBe('0');
  expect(brief(-2.2e-16)).toBe('0');
  expect(brief(0)).toBe('0');
  expect(brief(2.5e-7)).toBe('0.00000025');
  expect(brief(-0.01234)).toBe('−0.0123');
  expect(brief(123456.7)).toBe('123457');
});

/** So many characters fit between the buttons of a field on the narrowest phone. */
const FITS = 13;

describe('what stands in an empty field is never cut', () => {
  test.each(Object.entries(definitions))('%s', async (path, load) => {
    const { inputs } = (await load()).default;
    const name = path.split('/').at(-1)?.replace('.ts', '') ?? '';
    const german = await languageFor('de', name, false);
    for (const input of Object.values(inputs))
      if (input.kind === 'optional-number') {
        expect(input.empty.length).toBeLessThanOrEqual(FITS);
        expect(inLanguage(german, () => said(input.empty)).length).toBeLessThanOrEqual(FITS);
      }
  });
});
