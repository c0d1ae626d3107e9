import { checkAnswer, exercise, SLIPS, SOLUTION_PLANS } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { evaluatePlan } from '../../src/teaching/solution/evaluate.js';
import { runs } from '../support/runs.js';

const SEEDS = runs(60);

/** Answers of every slip for seeded exercises of a plan, where the slip shows in the numbers. */
function slipped() {
  return SOLUTION_PLANS.flatMap((plan) =>
    Array.from({ length: SEEDS }, (_, seed) => exercise({ plan: plan.name, seed })).flatMap(
      (question) => {
        const last = plan.steps[plan.steps.length - 1];
        if (!last) return [];
        return SLIPS.flatMap((slip) =>
          slip.changes(plan).flatMap((change) => {
            const value = evaluatePlan(plan, question.inputs, change)[last.symbol] as number;
            const shows =
              Number.isFinite(value) && Math.abs(value - question.answer) > 4 * question.tolerance;
            return shows
              ? [{ plan, question, slip: slip.name, value, decimals: last.decimals }]
              : [];
          }),
        );
      },
    ),
  );
}

describe('slips', () => {
  const answers = slipped();

  test('are named rightly for at least 95 % of generated single-slip answers', () => {
    const missed = new Map<string, number>();
    let alone = 0;
    let among = 0;
    for (const { question, slip, value, decimals, plan } of answers) {
      const check = checkAnswer(question, value.toFixed(decimals));
      const names = check.kind === 'wrong' ? check.slips.map(({ name }) => name) : [];
      if (names.includes(slip)) {
        among++;
        if (names.length === 1) alone++;
      } else {
        const key = `${plan.name}: ${slip} seen as ${check.kind} ${names.join(' ')}`;
        missed.set(key, (missed.get(key) ?? 0) + 1);
      }
    }
    console.log(
      `slips: ${answers.length} answers, named ${((100 * among) / answers.length).toFixed(2)} %, alone ${((100 * alone) / answers.length).toFixed(2)} %`,
      [...missed].sort((a, b) => b[1] - a[1]).slice(0, 8),
    );
    expect(answers.length).toBeGreaterThan(runs(2000));
    expect(among / answers.length).toBeGreaterThanOrEqual(0.95);
  });

  test('where several are named, the check says that it is ambiguous', () => {
    for (const { question, value, decimals } of answers.filter((_, i) => i % 10 === 0)) {
      const check = checkAnswer(question, value.toFixed(decimals));
      if (check.kind === 'wrong') expect(check.ambiguous).toBe(check.slips.length > 1);
    }
  });

  test.each(SLIPS.map(({ name }) => name))('%s happens in some plan', (name) => {
    const slip = SLIPS.find((each) => each.name === name);
    expect(SOLUTION_PLANS.some((plan) => (slip?.changes(plan).length ?? 0) > 0)).toBe(true);
  });
});

describe('right answers', () => {
  test('rightly rounded ones are right, in any notation: under 0.1 % false alarms', () => {
    let alarms = 0;
    let count = 0;
    for (const plan of SOLUTION_PLANS)
      for (let seed = 0; seed < runs(200); seed++) {
        const question = exercise({
          plan: plan.name,
          seed: seed + 10_000,
          level: ((seed % 3) + 1) as 1 | 2 | 3,
        });
        const text = question.answer.toFixed(question.decimals);
        for (const answer of [
          text,
          text.replace('.', ','),
          `${text} ${question.unit}`,
          question.answer,
        ]) {
          count++;
          if (checkAnswer(question, answer).kind !== 'right') alarms++;
        }
      }
    console.log(`right answers: ${count}, false alarms ${alarms}`);
    expect(alarms / count).toBeLessThan(0.001);
  });

  test('one decimal too few is badly rounded, never wrong', () => {
    for (const plan of SOLUTION_PLANS)
      for (let seed = 0; seed < runs(50); seed++) {
        const question = exercise({ plan: plan.name, seed });
        if (question.decimals === 0) continue;
        const check = checkAnswer(question, question.answer.toFixed(question.decimals - 1));
        expect(['right', 'badly-rounded']).toContain(check.kind);
      }
  });

  test('another unit is named', () => {
    const question = {
      plan: 'elevation',
      inputs: { latitudeDeg: 46, longitudeDeg: 10, orbitalLongitudeDeg: 16 },
    };
    const exact = checkAnswer(question, '1');
    if (exact.kind === 'unreadable' || exact.kind === 'no-answer') throw new Error(exact.kind);
    const check = checkAnswer(question, ((exact.exact * Math.PI) / 180).toFixed(4));
    expect(check).toMatchObject({ kind: 'other-unit', unit: 'rad', askedUnit: 'deg' });
  });

  test('a number that lies near a conversion is none', () => {
    // 1.58 dB are a power ratio of 1.44: 1.44 is that, 1 is not.
    const question = {
      plan: 'rain-attenuation',
      inputs: {
        rainRate001MmPerH: 32,
        rainHeightKm: 3.9,
        heightM: 200,
        elevationDeg: 16,
        exceededPercent: 0.35,
      },
    };
    expect(checkAnswer(question, '1.44').kind).toBe('other-unit');
    expect(checkAnswer(question, '1').kind).toBe('wrong');
  });

  test.each(['', 'forty', '1.2.3', '--3', 'NaN', 'Infinity', '1e999'])(
    '%j is unreadable',
    (text) => {
      const question = {
        plan: 'free-space-loss',
        inputs: { frequencyGHz: 12, slantRangeKm: 38000 },
      };
      expect(checkAnswer(question, text).kind).toBe('unreadable');
    },
  );

  test('a question without an answer says why', () => {
    const question = {
      plan: 'elevation',
      inputs: { latitudeDeg: 85, longitudeDeg: 0, orbitalLongitudeDeg: 0 },
    };
    expect(checkAnswer(question, 3)).toEqual({ kind: 'no-answer', reason: 'below-horizon' });
  });
});
