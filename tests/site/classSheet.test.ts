/** The sheet for the class offers every kind of exercise that the library has. */

import { expect, test } from 'vitest';
import sheet from '../../site/src/examples/a-sheet-for-the-class.js';
import { SOLUTION_PLANS } from '../../src/teaching/index.js';

test('each plan stands in one group of the form', () => {
  const offered = Object.values(sheet.inputs.kinds.groups).flatMap((group) => Object.keys(group));
  expect([...offered].sort()).toEqual(SOLUTION_PLANS.map(({ name }) => name).sort());
});
