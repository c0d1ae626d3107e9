/** Ways to a right answer that are not the library's own: each step rounded as shown, and the round Earth of the textbook. */

import { checkAnswer, type Exercise, exercise, SOLUTION_PLANS } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../src/teaching/formula/expression.js';
import { formulaTree } from '../../src/teaching/formula/parse.js';
import { runs } from '../support/runs.js';

/** The answer of someone who writes each step down with the decimals shown and goes on with that. */
function roundedByHand(one: Exercise): number {
  const { givens, constants, steps } = one.solution;
  const values: Record<string, number> = Object.fromEntries(
    [...givens, ...constants].map(({ symbol, value }) => [symbol, value]),
  );
  const plan = SOLUTION_PLANS.find(({ name }) => name === one.plan);
  for (const { symbol, expression, decimals } of plan?.steps ?? []) {
    const step = compileTree(formulaTree(expression), Object.keys(values));
    values[symbol] = Number(step(values).toFixed(decimals));
  }
  return values[steps.at(-1)?.symbol ?? ''] ?? Number.NaN;
}

test.each(SOLUTION_PLANS.map(({ name }) => name))(
  '%s: whoever rounds each step as shown is right',
  (plan) => {
    for (let seed = 0; seed < runs(20); seed++) {
      const one = exercise({ plan, seed, level: ((seed % 3) + 1) as 1 | 2 | 3 });
      const answer = roundedByHand(one).toFixed(one.decimals);
      expect(checkAnswer(one, answer).kind, `${one.text} ${answer}`).toBe('right');
    }
  },
);

describe('the azimuth of the round Earth, 180 less the arctangent of tan Δλ over sin φ', () => {
  const degrees = Math.PI / 180;
  test.each([
    [1, 'right'],
    [2, 'other-way'],
    [3, 'other-way'],
  ] as const)('at level %d is never wrong, and where it differs it is %s', (level, kind) => {
    for (let seed = 0; seed < runs(350); seed++) {
      const one = exercise({ plan: 'azimuth', seed, level });
      const { latitudeDeg = 0, longitudeDeg = 0, orbitalLongitudeDeg = 0 } = one.inputs;
      const turned =
        Math.atan(
          Math.tan((orbitalLongitudeDeg - longitudeDeg) * degrees) /
            Math.sin(Math.abs(latitudeDeg) * degrees),
        ) / degrees;
      const azimuth = (latitudeDeg < 0 ? turned + 360 : 180 - turned) % 360;
      const check = checkAnswer(one, azimuth.toFixed(one.decimals));
      if (check.kind !== 'right') expect(check.kind, one.text).toBe(kind);
    }
  });
});
