/** Accept or not? Repeated readings, a limit, a rule; the guard band drawn. */

import { type DecisionRule, decideConformity, decideRepeated } from 'slantpath/acceptance';
import { englishWords } from 'slantpath/sheet';
import { defineExample, literal, type Working } from '../lib/example.js';
import { choice, number, optionalNumber, rows } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

interface Values {
  readonly readings: readonly { readonly reading: number }[];
  readonly instrumentStandardUncertainty: number;
  readonly lowerLimit?: number | undefined;
  readonly upperLimit?: number | undefined;
  readonly rule: 'risk' | 'guard-band' | 'simple';
  readonly riskPercent: number;
  readonly guardBandRatio: number;
}

const ruleOf = ({ rule, riskPercent, guardBandRatio }: Values): DecisionRule =>
  rule === 'simple'
    ? { kind: 'simple' }
    : rule === 'risk'
      ? { kind: 'risk', riskPercent }
      : { kind: 'guard-band', guardBandRatio };

const questionOf = (values: Values) => ({
  readings: values.readings.map(({ reading }) => reading),
  instrumentStandardUncertainty: values.instrumentStandardUncertainty,
  ...(values.lowerLimit === undefined ? {} : { lowerLimit: values.lowerLimit }),
  ...(values.upperLimit === undefined ? {} : { upperLimit: values.upperLimit }),
  rule: ruleOf(values),
});

const SAYS = {
  accept: 'Accept: the mean stands inside the limit by more than the guard band.',
  refuse:
    'Refuse: the mean stands outside the limit by more than the guard band, on enough readings.',
} as const;
/** The inner end of the guard band at a limit: moved, it becomes a share of the expanded uncertainty, in steps of the field. */
function guardHandle(limit: number, inside: 1 | -1, guardBand: number, sigma: number) {
  const ratio = guardBand / (2 * sigma);
  const held = (share: number) => ({
    rule: 'guard-band',
    guardBandRatio: Math.min(3, Math.max(0, Math.round(10 * share) / 10)),
  });
  return {
    label: 'Guard band',
    says: `${shown(guardBand)} dB`,
    x: limit + inside * guardBand,
    y: 0.6,
    now: guardBand,
    min: 0,
    max: 6 * sigma,
    put: (level: number) => held((inside * (level - limit)) / (2 * sigma)),
    step: (right: number, up: number) => held(ratio + (inside * right + up) / 10),
  };
}

/** The same without a guard band. */
const SAYS_SIMPLY = {
  accept: 'Accept: the mean stands inside the limit.',
  refuse: 'Refuse: the mean stands outside the limit, on enough readings.',
} as const;

export default defineExample({
  usual: ['readings', 'instrumentStandardUncertainty', 'lowerLimit', 'upperLimit'],
  inputs: {
    readings: rows({
      label: 'Readings',
      columns: { reading: { label: 'Reading', unit: 'dBµV', step: 0.1 } },
      value: [{ reading: 47.9 }, { reading: 48.6 }, { reading: 48.4 }],
      add: { reading: 48.2 },
    }),
    instrumentStandardUncertainty: number({
      label: 'Standard uncertainty of the instrument',
      unit: 'dB',
      value: 0.6,
      step: 0.1,
      min: 0,
      max: 5,
      hint: 'Shared by all readings. A calibration of ±1 dB (rectangular) is 0.58 dB; ±1.2 dB with k\u00a0=\u00a02 is 0.6 dB.',
    }),
    lowerLimit: optionalNumber({
      label: 'Lower limit',
      unit: 'dBµV',
      value: 47,
      step: 1,
      empty: 'none',
    }),
    upperLimit: optionalNumber({
      label: 'Upper limit',
      unit: 'dBµV',
      value: 77,
      step: 1,
      empty: 'none',
    }),
    rule: choice({
      label: 'Rule of decision',
      options: {
        risk: 'Guard band by risk',
        'guard-band': 'Guard band, share of U',
        simple: 'The mean alone decides',
      },
      value: 'risk',
    }),
    riskPercent: number({
      label: 'Largest risk at the limit',
      unit: '%',
      value: 5,
      step: 1,
      min: 0.1,
      max: 50,
      onlyFor: { choice: 'rule', values: ['risk'] },
    }),
    guardBandRatio: number({
      label: 'Guard band over U',
      value: 1,
      step: 0.1,
      min: 0,
      max: 3,
      hint: 'U is the expanded uncertainty, k = 2.',
      onlyFor: { choice: 'rule', values: ['guard-band'] },
    }),
  },
  compute: (values) => {
    const question = questionOf(values);
    const repeated = decideRepeated(question);
    const { combined } = repeated;
    const limits = {
      ...(question.lowerLimit === undefined ? {} : { lowerLimit: question.lowerLimit }),
      ...(question.upperLimit === undefined ? {} : { upperLimit: question.upperLimit }),
    };
    const rules: readonly (readonly [string, DecisionRule])[] = [
      ['simple, the mean alone', { kind: 'simple' }],
      ['guard band for 5 %', { kind: 'risk', riskPercent: 5 }],
      ['guard band for 2.5 %', { kind: 'risk', riskPercent: 2.5 }],
      ['guard band of U', { kind: 'guard-band', guardBandRatio: 1 }],
    ];
    const others = rules.map(([name, rule]) => ({
      name,
      decision: decideConformity({
        reading: combined.mean,
        standardUncertainty: combined.standardUncertainty || 1e-9,
        ...(combined.degreesOfFreedom === null
          ? {}
          : { degreesOfFreedom: combined.degreesOfFreedom }),
        ...limits,
        rule,
      }),
    }));
    return { repeated, others };
  },
  view: (
    { repeated: { combined, decision, next }, others },
    { readings, lowerLimit, upperLimit },
  ) => {
    const sigma = combined.standardUncertainty || 0.01;
    const near = [lowerLimit, upperLimit].filter(
      (limit): limit is number =>
        limit !== undefined && Math.abs(limit - combined.mean) < 12 * sigma + 3,
    );
    const values = [
      ...readings.map(({ reading }) => reading),
      ...near.flatMap((limit) => [limit - decision.guardBand, limit + decision.guardBand]),
      combined.mean - 3.5 * sigma,
      combined.mean + 3.5 * sigma,
    ];
    const [from, to] = [Math.min(...values) - 0.3, Math.max(...values) + 0.3];
    const density = Array.from({ length: 121 }, (_, i) => {
      const x = from + ((to - from) * i) / 120;
      return { x, y: Math.exp(-0.5 * ((x - combined.mean) / sigma) ** 2) };
    });
    // Guard bands that meet are one.
    const guarded = near
      .filter(() => decision.guardBand > 0)
      .map((limit) => [limit - decision.guardBand, limit + decision.guardBand] as const);
    const [lower, upper] = guarded;
    const bands = (
      lower && upper && upper[0] <= lower[1] ? [[lower[0], upper[1]] as const] : guarded
    ).map(([start, end]) => ({ axis: 'x' as const, from: start, to: end, label: 'undecided' }));
    return {
      says:
        next === 'repeat'
          ? decision.verdict === 'undecided'
            ? 'Undecided: the mean stands in the guard band. Read again, or with a better instrument.'
            : `Repeat before it is believed: ${combined.count === 1 ? 'one reading' : `${combined.count} readings`} outside the limit, three are asked for a refusal.`
          : (decision.guardBand > 0 ? SAYS : SAYS_SIMPLY)[next],
      outputs: [
        {
          label: 'Verdict',
          value: englishWords.codes.verdicts[decision.verdict],
          note: `next: ${next}`,
          main: true,
        },
        {
          label: 'Probability that it conforms',
          value: 100 * decision.conformityProbabilityRatio,
          unit: '%',
          digits: 1,
          main: true,
        },
        { label: 'Mean', value: combined.mean, unit: 'dBµV' },
        { label: 'Standard uncertainty', value: combined.standardUncertainty, unit: 'dB' },
        { label: 'Guard band', value: decision.guardBand, unit: 'dB' },
        {
          label: '95 % interval',
          value: `${shown(combined.interval.from)} to ${shown(combined.interval.to)}`,
          unit: 'dBµV',
          note: `coverage factor ${shown(combined.coverageFactor)}`,
        },
      ],
      figures: [
        linePlot({
          title: 'The mean with its uncertainty, the limit, and the guard band to both sides of it',
          x: { label: 'Level', unit: 'dBµV' },
          y: { label: 'Likelihood of the true level', min: 0, max: 1.25, digits: 3 },
          series: [
            { label: 'true level', points: density },
            {
              label: 'readings',
              style: 'samples',
              points: readings.map(({ reading }) => ({ x: reading, y: 0.05 })),
            },
          ],
          bands,
          rules: near.map((limit) => ({ axis: 'x' as const, at: limit, label: `limit ${limit}` })),
          marks: [{ x: combined.mean, y: 1, label: `mean ${shown(combined.mean)}` }],
          handles: near.map((limit) =>
            guardHandle(limit, limit === lowerLimit ? 1 : -1, decision.guardBand, sigma),
          ),
        }),
      ],
      tables: [
        {
          caption: 'The same readings under other rules',
          columns: ['Rule', 'Guard band / dB', 'Verdict'],
          rows: others.map(({ name, decision: other }) => [
            name,
            shown(other.guardBand),
            englishWords.codes.verdicts[other.verdict],
          ]),
        },
      ],
    };
  },
  working: (
    { readings, instrumentStandardUncertainty, lowerLimit, upperLimit },
    { repeated: { combined, decision } },
  ) => {
    const { mean, standardUncertainty, degreesOfFreedom } = combined;
    const [first, second, third, more] = readings.map(({ reading }) => reading);
    const together: readonly Working[] =
      first !== undefined && second !== undefined && third !== undefined && more === undefined
        ? [
            {
              plan: 'mean-of-three-readings',
              givens: {
                firstDbuv: first,
                secondDbuv: second,
                thirdDbuv: third,
                instrumentStandardUncertaintyDb: instrumentStandardUncertainty,
              },
            },
          ]
        : [];
    if (lowerLimit === undefined || standardUncertainty === 0) return together;
    const held = { limitDbuv: lowerLimit, standardUncertaintyDb: standardUncertainty };
    const verdict = { readingDbuv: mean, ...held };
    // By hand one limit is enough, as long as the other one takes nothing that is shown.
    const byLower = decideConformity({
      reading: mean,
      standardUncertainty,
      lowerLimit,
      ...(degreesOfFreedom === null ? {} : { degreesOfFreedom }),
    });
    const taken = byLower.conformityProbabilityRatio - decision.conformityProbabilityRatio;
    return [
      ...together,
      {
        plan: 'guard-band',
        givens: { ...held, guardBandFactor: decision.guardBand / standardUncertainty },
      },
      ...(upperLimit !== undefined && taken > 1e-6
        ? []
        : degreesOfFreedom === null
          ? [{ plan: 'conformity-probability', givens: verdict }]
          : [{ plan: 'conformity-of-few-readings', givens: { ...verdict, degreesOfFreedom } }]),
    ];
  },
  code: (values) =>
    `import { decideRepeated } from 'slantpath/acceptance';

const { decision, next } = decideRepeated(${literal(questionOf(values))});
console.log(decision.verdict, next, decision.conformityProbabilityRatio);
`,
});
