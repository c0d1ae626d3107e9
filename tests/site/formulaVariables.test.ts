/** The page that tries formulas takes its variables from the library: a new subject or rule needs no word there. */

import { FORMULA_SUBJECTS, RULES_OF_THUMB } from 'slantpath/teaching';
import { expect, test } from 'vitest';
import page from '../../site/src/examples/does-your-formula-hold.js';

const inputs = page.inputs as Readonly<
  Record<string, { readonly label: string; readonly unit?: string }>
>;
const names = [...new Set(FORMULA_SUBJECTS.flatMap(({ variables }) => variables))].map(
  ({ name }) => name,
);

test.each(names)('%s has two fields with a label and a unit', (name) => {
  for (const end of ['From', 'To']) {
    const field = inputs[`${name}${end}`];
    expect(field?.label).toMatch(/^[A-Z][a-z ]+ (from|to)$/);
    expect(field?.unit).not.toBe('');
  }
});

test('every rule of thumb is offered, with its verdict', () => {
  const sets = page.presets?.sets ?? [];
  expect(sets.length).toBe(RULES_OF_THUMB.length);
});
