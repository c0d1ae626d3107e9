import { checkSteps, exercise, SOLUTION_PLANS } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { formulaTree } from '../../src/teaching/formula/parse.js';
import { evaluatePlan } from '../../src/teaching/solution/evaluate.js';

const LOSS = { plan: 'free-space-loss', inputs: { frequencyGHz: 12, slantRangeKm: 38000 } };

const checked = (answers: Readonly<Record<string, string>>, question = LOSS) => {
  const sheet = checkSteps(question, answers);
  if (sheet.kind !== 'checked') throw new Error(sheet.kind);
  return sheet;
};

describe('an answer sheet with steps', () => {
  test('all right', () => {
    const sheet = checked({ F: '21.58', R: '91.60', L: '205.63 dB' });
    expect(sheet).toMatchObject({ firstWrong: '', creditRatio: 1 });
  });

  test('a slip in the second step, right from there on: told so and marked so', () => {
    // 20 log 38 000 = 91.596; with 10 log 45.798; 92.448 + 21.584 + 45.80 = 159.83.
    const sheet = checked({ F: '21.58', R: '45.80', L: '159.83' });
    expect(sheet.steps.map(({ kind }) => kind)).toEqual(['right', 'wrong', 'carried-forward']);
    expect(sheet.firstWrong).toBe('R');
    expect(sheet.steps[1]?.slips.map(({ name }) => name)).toContain('ten-log-for-twenty');
    expect(sheet.creditRatio).toBeCloseTo(2 / 3, 12);
  });

  test('a second slip after the first is seen as one', () => {
    const sheet = checked({ F: '10.79', R: '91.60', L: '102.39' });
    expect(sheet.steps.map(({ kind }) => kind)).toEqual(['wrong', 'right', 'wrong']);
    expect(sheet.steps[2]?.slips.map(({ name }) => name)).toContain('item-forgotten');
  });

  test('steps left out, unreadable or in another unit', () => {
    const sheet = checked({ R: 'many', L: '205.63 W' });
    expect(sheet.steps.map(({ kind }) => kind)).toEqual(['empty', 'unreadable', 'wrong-unit']);
    expect(checked({}).creditRatio).toBe(0);
  });

  test('a question without an answer says why', () => {
    const question = {
      plan: 'elevation',
      inputs: { latitudeDeg: 85, longitudeDeg: 0, orbitalLongitudeDeg: 0 },
    };
    expect(checkSteps(question, {})).toEqual({ kind: 'no-answer', reason: 'below-horizon' });
  });
});

test.each(
  SOLUTION_PLANS.filter(({ steps }) => steps.length > 1).map((plan) => [plan.name, plan] as const),
)(
  '%s: rounded as shown all steps are right, and after a wrong first step all follow',
  (name, plan) => {
    const { inputs, solution } = exercise({ plan: name, seed: 4 });
    const shown = Object.fromEntries(
      solution.steps.map(({ symbol, rounded, decimals }) => [symbol, rounded.toFixed(decimals)]),
    );
    const sheet = checked(shown, { plan: name, inputs } as typeof LOSS);
    expect(sheet.steps.map(({ kind }) => kind)).toEqual(sheet.steps.map(() => 'right'));

    const [first] = plan.steps;
    const wrong = evaluatePlan(plan, inputs, {
      tree: (tree, step) =>
        step === first ? formulaTree(`1.07 * (${step.expression}) + 0.1`) : tree,
    });
    const answers = Object.fromEntries(
      plan.steps.map(({ symbol }) => [symbol, String(wrong[symbol])]),
    );
    if (Object.values(wrong).some((value) => !Number.isFinite(value))) return;
    const carried = checked(answers, { plan: name, inputs } as typeof LOSS);
    expect(carried.firstWrong).toBe(first?.symbol);
    for (const { kind } of carried.steps.slice(1))
      expect(['right', 'carried-forward']).toContain(kind);
  },
);
