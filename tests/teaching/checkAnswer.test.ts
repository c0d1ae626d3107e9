import { lookAngles } from 'slantpath/pointing';
import { checkAnswer, exercise, SLIPS, SOLUTION_PLANS } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { evaluatePlan } from '../../src/teaching/solution/evaluate.js';
import { runs } from '../support/runs.js';

/** Answers of the variants of every slip for seeded exercises, one of them for each slip and plan, where it shows. */
function slipped() {
  return SOLUTION_PLANS.flatMap((plan, at) => {
    const question = exercise({ plan: plan.name, seed: at });
    const last = plan.steps[plan.steps.length - 1];
    if (!last) return [];
    return SLIPS.flatMap((slip) => {
      const changes = slip.changes(plan);
      // One of many variants, another one from plan to plan.
      const change = changes[at % Math.max(1, changes.length)];
      if (!change) return [];
      const value = evaluatePlan(plan, question.inputs, change)[last.symbol] as number;
      const shows =
        Number.isFinite(value) &&
        value !== 0 &&
        Math.abs(value - question.answer) > 2 * question.tolerance;
      return shows ? [{ plan, question, slip: slip.name, value, decimals: last.decimals }] : [];
    });
  });
}

describe('slips', () => {
  // The full run asks every plan, the short one some of them.
  const answers = slipped().filter((_, at) => at % Math.round(runs(1000) === 1000 ? 1 : 7) === 0);

  test('are named for at least four in five of the answers that their variants give', () => {
    const missed = new Map<string, number>();
    let among = 0;
    for (const { question, slip, value, decimals, plan } of answers) {
      const check = checkAnswer(question, value.toFixed(decimals));
      const names = check.kind === 'wrong' ? check.slips.map(({ name }) => name) : [];
      const unit = check.kind === 'other-unit';
      if (names.includes(slip) || unit || names.length === 3) among++;
      else {
        const key = `${plan.name}: ${slip} seen as ${check.kind} ${names.join(' ')}`;
        missed.set(key, (missed.get(key) ?? 0) + 1);
      }
    }
    console.log(
      `slips: ${answers.length} answers, named ${((100 * among) / answers.length).toFixed(2)} %`,
      [...missed].sort((a, b) => b[1] - a[1]).slice(0, 80),
    );
    expect(answers.length).toBeGreaterThan(150);
    expect(among / answers.length).toBeGreaterThanOrEqual(0.8);
  });

  test('where several are named, the check says whether each alone or all at once explain it', () => {
    for (const { question, value, decimals } of answers.filter((_, i) => i % 10 === 0)) {
      const check = checkAnswer(question, value.toFixed(decimals));
      if (check.kind === 'wrong')
        expect(check.ambiguous).toBe(check.slips.length > 1 && !check.together);
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
      for (let seed = 0; seed < runs(40); seed++) {
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

  test('one decimal too few is badly rounded, or said to be that or a slip', () => {
    let count = 0;
    let slips = 0;
    for (const plan of SOLUTION_PLANS)
      for (let seed = 0; seed < runs(10); seed++) {
        const question = exercise({ plan: plan.name, seed });
        if (question.decimals === 0) continue;
        const check = checkAnswer(question, question.answer.toFixed(question.decimals - 1));
        count++;
        // Where a usual slip gives just this number, both are said; so may the short form on the round Earth and another unit.
        if (check.kind === 'wrong') {
          expect(check.perhapsRounded).toBe(true);
          slips++;
        } else if (check.kind === 'other-way' || check.kind === 'other-unit') slips++;
        else expect(['right', 'badly-rounded']).toContain(check.kind);
      }
    expect(slips / count).toBeLessThan(0.03);
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

test('who types 5 degrees 24 minutes as 5.24 is told that minutes are no decimals', () => {
  const station = { longitudeDeg: 9, heightM: 0 };
  const orbitalLongitudeDeg = 19;
  // 24 minutes are 24 / 60 = 0.4 of a degree.
  const inputs = { ...station, latitudeDeg: 5 + 24 / 60, orbitalLongitudeDeg };
  const wrong = lookAngles({ ...station, latitudeDeg: 5.24 }, orbitalLongitudeDeg);
  if (wrong.kind === 'overhead') throw new Error('no azimuth');
  const check = checkAnswer({ plan: 'azimuth', inputs }, wrong.azimuthDeg.toFixed(3));
  expect('slips' in check && check.slips.map(({ name }) => name)).toContain('minutes-for-decimals');
});
