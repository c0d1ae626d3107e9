import { checkAnswer, worksheet } from 'slantpath/teaching';

const sheet = worksheet({ seed: 7, count: 2, plans: ['free-space-loss', 'magnetic-bearing'] });
for (const { text } of sheet.exercises) console.log(text);

// Three pupils answer the same question.
const question = { plan: 'free-space-loss', inputs: { frequencyGHz: 12, slantRangeKm: 38000 } };
for (const answer of ['205,63', '205.6', '149.04']) {
  const check = checkAnswer(question, answer);
  const slips = check.kind === 'wrong' ? check.slips.map(({ explanation }) => explanation) : [];
  console.log([`${answer}: ${check.kind}`, ...slips].join('. '));
}
