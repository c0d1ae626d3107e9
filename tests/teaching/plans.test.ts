/** What every plan keeps: no idle step, a reason, and a learner who rounds each step as shown is right. */

import { checkAnswer, exercise, SOLUTION_PLANS } from 'slantpath/teaching';
import { expect, test } from 'vitest';
import { WHY } from '../../src/teaching/plans/why.js';
import { evaluateRounded } from '../../src/teaching/solution/evaluate.js';
import { runs } from '../support/runs.js';

/** Steps that tell the course of a job, though the answer does without: the loss from its start to its end. */
const TOLD: Readonly<Record<string, readonly string[]>> = {
  'loss-after-both-axes': ['L0', 'x1'],
};

test.each(SOLUTION_PLANS.map((plan) => [plan.name, plan] as const))(
  '%s: every step and given is used, and the first hint says why',
  (name, plan) => {
    const used = (symbol: string) =>
      plan.steps.some(({ expression }) => new RegExp(`\\b${symbol}\\b`).test(expression));
    for (const { symbol } of plan.steps.slice(0, -1))
      if (!(TOLD[name] ?? []).includes(symbol)) expect(used(symbol), symbol).toBe(true);
    for (const { symbol } of plan.givens) expect(used(symbol), symbol).toBe(true);
    expect(exercise({ plan: name, seed: 1 }).hints[0]).toBe(WHY[name]);
    expect(WHY[name]?.length).toBeGreaterThan(60);
  },
);

test('there is a reason for no plan that is not there', () => {
  expect(Object.keys(WHY).sort()).toEqual(SOLUTION_PLANS.map(({ name }) => name).sort());
});

test('who rounds each step to the decimals shown is right in every plan', () => {
  const wrong: string[] = [];
  let count = 0;
  for (const plan of SOLUTION_PLANS)
    for (let seed = 0; seed < runs(100); seed++) {
      const one = exercise({ plan: plan.name, seed, level: ((seed % 3) + 1) as 1 | 2 | 3 });
      const last = plan.steps[plan.steps.length - 1]?.symbol ?? '';
      const rounded = evaluateRounded(plan, one.inputs)[last] as number;
      count++;
      const check = checkAnswer(one, rounded.toFixed(one.decimals));
      const off = Math.abs(rounded - one.answer);
      const within = Math.min(off, Math.abs(360 - off)) <= one.tolerance + 1e-9;
      if (check.kind !== 'right' || !within) wrong.push(`${plan.name} ${seed}: ${check.kind}`);
    }
  console.log(
    `rounded at each step: ${count} answers, ${wrong.length} not right`,
    wrong.slice(0, 8),
  );
  expect(wrong).toEqual([]);
});
