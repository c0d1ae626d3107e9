/** A sheet for the class: exercises from a seed, the same for everyone who has the link. */

import { SOLUTION_PLANS, type Worksheet, worksheet } from 'slantpath/teaching';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, several } from '../lib/inputs/inputs.js';

/** Groups of kinds by part of the library, in the order of the job. */
const GROUPS: readonly (readonly [title: string, parts: readonly string[]])[] = [
  ['Direction, mount and view', ['pointing', 'magnetic', 'survey', 'earth']],
  ['Antenna', ['antenna']],
  ['Rain and noise of the sky', ['propagation']],
  ['Link', ['link']],
  ['Peak, cables and acceptance', ['peaking', 'distribution', 'acceptance']],
  ['Tuning, meters, transmitting and wind', ['tuning', 'readings', 'transmit', 'wind', 'ingress']],
];

const LEVELS = {
  '1': 'round numbers',
  '2': 'usual numbers',
  '3': 'numbers as they come',
} as const;

const FORMS = { A: 'A', B: 'B: the same kinds with other numbers' } as const;

const asked = (values: {
  readonly seed: number;
  readonly count: number;
  readonly level: keyof typeof LEVELS;
  readonly form: keyof typeof FORMS;
  readonly kinds: readonly string[];
}) => ({
  seed: values.seed,
  count: values.count,
  level: Number(values.level) as 1 | 2 | 3,
  ...(values.form === 'B' ? { form: values.form } : {}),
  ...(values.kinds.length > 0 ? { plans: values.kinds } : {}),
});

export default defineExample({
  inputs: {
    seed: number({
      label: 'Seed',
      value: 7,
      step: 1,
      min: 0,
      hint: 'The same seed gives everyone the same sheet.',
    }),
    count: number({ label: 'Exercises', value: 5, step: 1, min: 1, max: 100 }),
    level: choice({ label: 'Level', options: LEVELS, value: '2' }),
    form: choice({
      label: 'Form',
      options: FORMS,
      value: 'A',
      hint: 'Neighbours get different forms.',
    }),
    kinds: several({
      label: 'Kinds',
      hint: 'None ticked: all of them.',
      groups: Object.fromEntries(
        GROUPS.map(([title, parts]) => [
          title,
          Object.fromEntries(
            SOLUTION_PLANS.filter(({ part }) => parts.includes(part)).map((plan) => [
              plan.name,
              plan.title,
            ]),
          ),
        ]),
      ),
      value: ['azimuth', 'elevation', 'magnetic-bearing', 'free-space-loss', 'bracketing'],
    }),
  },
  compute: (values): Worksheet => worksheet(asked(values)),
  view: (sheet) => {
    const kinds = new Set(sheet.exercises.map(({ plan }) => plan));
    const count = sheet.exercises.length;
    return {
      says: `Sheet ${sheet.seed} ${sheet.form}: ${count} ${count === 1 ? 'exercise' : 'exercises'} with ${LEVELS[`${sheet.level}`]}. Everyone with its link has the same numbers.`,
      outputs: [
        { label: 'Exercises', value: count, digits: 0 },
        { label: 'Different kinds', value: kinds.size, digits: 0 },
      ],
    };
  },
  actions: [{ label: 'Next sheet', change: ({ seed }) => ({ seed: seed + 1 }) }],
  fieldOf: (parameter) => (parameter.startsWith('plans') ? 'kinds' : undefined),
  code: (values) => `import { worksheet } from 'slantpath/teaching';

const sheet = worksheet(${literal(asked(values))});
for (const { text, answer, decimals, unit } of sheet.exercises)
  console.log(text, answer.toFixed(decimals), unit);
`,
});
