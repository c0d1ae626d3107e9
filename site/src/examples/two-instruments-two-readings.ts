/** Two instruments, two readings: how far they are apart, what they say together, and what an offset does to a verdict. */

import { decideConformity } from 'slantpath/acceptance';
import {
  meanOfDifferingReadings,
  pairedDifference,
  pooledReading,
  unitOffsets,
} from 'slantpath/readings';
import { defineExample, literal } from '../lib/example.js';
import { number, rows } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const VERDICTS = {
  conforms: 'conforms',
  'does-not-conform': 'does not conform',
  undecided: 'undecided',
} as const;

export default defineExample({
  usual: ['points', 'lowerLimitDbuv', 'firstUncertaintyDb', 'secondUncertaintyDb'],
  inputs: {
    points: rows({
      label: 'The same points, read by both',
      columns: {
        firstDbuv: { label: 'First', unit: 'dBµV', step: 0.1 },
        secondDbuv: { label: 'Second', unit: 'dBµV', step: 0.1 },
      },
      value: [
        { firstDbuv: 48.2, secondDbuv: 46.4 },
        { firstDbuv: 55, secondDbuv: 53.1 },
        { firstDbuv: 61.2, secondDbuv: 59.6 },
        { firstDbuv: 66.1, secondDbuv: 64.1 },
        { firstDbuv: 70.3, secondDbuv: 68.7 },
      ],
      add: { firstDbuv: 58, secondDbuv: 56.2 },
    }),
    lowerLimitDbuv: number({
      label: 'Lowest level that conforms',
      unit: 'dBµV',
      value: 47,
      step: 1,
    }),
    firstUncertaintyDb: number({
      label: 'Standard uncertainty of the first',
      unit: 'dB',
      value: 0.65,
      step: 0.05,
      min: 0.05,
      max: 5,
      hint: 'Half of the ± on its certificate.',
    }),
    secondUncertaintyDb: number({
      label: 'Standard uncertainty of the second',
      unit: 'dB',
      value: 0.65,
      step: 0.05,
      min: 0.05,
      max: 5,
    }),
    riskPercent: number({
      label: 'Risk taken by a verdict',
      unit: '%',
      value: 5,
      step: 1,
      min: 0.1,
      max: 40,
    }),
  },
  fieldOf: (parameter) =>
    /^(readings|firstDb|secondDb)/.test(parameter)
      ? 'points'
      : parameter === 'standardUncertaintyDb'
        ? 'firstUncertaintyDb'
        : undefined,
  compute: ({ points, lowerLimitDbuv, firstUncertaintyDb, secondUncertaintyDb, riskPercent }) => {
    const firstDb = points.map((point) => point.firstDbuv);
    const secondDb = points.map((point) => point.secondDbuv);
    const apart = pairedDifference({ firstDb, secondDb });
    const verdict = (reading: number, standardUncertainty: number) =>
      decideConformity({
        reading,
        standardUncertainty,
        lowerLimit: lowerLimitDbuv,
        rule: { kind: 'risk', riskPercent },
      }).verdict;
    const all = points.map(({ firstDbuv, secondDbuv }) => {
      const both = [
        { valueDb: firstDbuv, standardUncertaintyDb: firstUncertaintyDb },
        { valueDb: secondDbuv, standardUncertaintyDb: secondUncertaintyDb },
      ];
      const together = meanOfDifferingReadings(both);
      return {
        firstDbuv,
        secondDbuv,
        together,
        stated: pooledReading(both).statedUncertaintyDb,
        verdicts: [
          verdict(firstDbuv, firstUncertaintyDb),
          verdict(secondDbuv, secondUncertaintyDb),
          verdict(together.valueDb, together.standardUncertaintyDb),
        ] as const,
      };
    });
    return {
      apart,
      all,
      offsets: unitOffsets(
        points.flatMap(({ firstDbuv, secondDbuv }, row) => [
          { site: String(row), unit: 'first', valueDb: firstDbuv },
          { site: String(row), unit: 'second', valueDb: secondDbuv },
        ]),
      ),
    };
  },
  view: ({ apart, all, offsets }, { firstUncertaintyDb, secondUncertaintyDb }) => {
    const { differenceDb, halfWidth95Db } = apart;
    const seen = Math.abs(differenceDb) > halfWidth95Db;
    const split = all.filter(({ verdicts: [a, b] }) => a !== b).length;
    const stated = Math.hypot(firstUncertaintyDb, secondUncertaintyDb);
    return {
      says: `${
        seen
          ? `The first reads ${shown(Math.abs(differenceDb), 1)} ± ${shown(halfWidth95Db, 1)} dB ${differenceDb > 0 ? 'higher' : 'lower'} than the second`
          : 'What the two differ by can be chance'
      }; ${split === 0 ? 'no verdict depends on it.' : `${split} of ${all.length} verdicts depend on which one is used.`}`,
      outputs: [
        {
          label: 'First less second',
          value: differenceDb,
          unit: 'dB',
          note: `± ${shown(halfWidth95Db, 2)} dB (95 %)`,
          main: true,
        },
        {
          label: 'Verdicts that depend on it',
          value: `${split} of ${all.length}`,
          main: true,
        },
        {
          label: 'Difference that the certificates allow',
          value: 2 * stated,
          unit: 'dB',
          note: 'expanded (k = 2), either way',
        },
        {
          label: 'Spread of one difference',
          value: apart.standardDeviationDb,
          unit: 'dB',
          note: 'standard deviation',
        },
        ...(offsets.kind === 'offsets'
          ? [
              {
                label: 'Spread of one reading',
                value: offsets.standardDeviationDb,
                unit: 'dB',
                note: 'standard deviation, offsets taken out',
              },
            ]
          : []),
      ],
      figures: [
        linePlot({
          title: 'First less second, point by point',
          x: { label: 'Level of the second', unit: 'dBµV', digits: 1 },
          y: { label: 'Difference', unit: 'dB', digits: 1 },
          series: [
            {
              label: 'read',
              style: 'samples',
              points: all.map(({ firstDbuv, secondDbuv }) => ({
                x: secondDbuv,
                y: firstDbuv - secondDbuv,
              })),
            },
          ],
          rules: [
            { axis: 'y', at: differenceDb, label: 'mean' },
            { axis: 'y', at: 0, label: 'alike' },
          ],
          bands: [
            {
              axis: 'y',
              from: differenceDb - halfWidth95Db,
              to: differenceDb + halfWidth95Db,
              label: '95 %',
            },
          ],
        }),
      ],
      tables: [
        {
          caption: 'Verdict by each, and by both together',
          columns: ['Point', 'First', 'Second', 'Together / dBµV', 'Uncertainty / dB', 'Together'],
          rows: all.map(({ together, verdicts: [a, b, c] }, index) => [
            String(index + 1),
            VERDICTS[a],
            VERDICTS[b],
            shown(together.valueDb, 1),
            shown(together.standardUncertaintyDb, 2),
            VERDICTS[c],
          ]),
        },
      ],
      notes: [
        Math.abs(differenceDb) > 2 * stated
          ? 'The two differ by more than their certificates allow: have both checked before either gives a verdict.'
          : 'The difference lies within what the certificates allow: neither of the two is shown to be wrong, and a level by itself does not say that an antenna is peaked.',
      ],
    };
  },
  hand: ({ points, firstUncertaintyDb, secondUncertaintyDb }, { apart }) => {
    const n = points.length;
    const spread = shown(apart.standardDeviationDb, 2);
    return [
      {
        says: 'the mean of the differences, point by point',
        formula: 'd = \\frac{1}{n} \\cdot \\sum (a - b)',
        put: `d = \\frac{${shown(
          points.reduce((sum, { firstDbuv, secondDbuv }) => sum + firstDbuv - secondDbuv, 0),
          1,
        )}}{${n}}`,
        result: `${shown(apart.differenceDb, 2)} dB`,
      },
      {
        says: 'its standard uncertainty, from the standard deviation of the differences',
        formula: 'u = \\frac{s}{\\sqrt{n}}',
        put: `u = \\frac{${spread}}{\\sqrt{${n}}}`,
        result: `${shown(apart.standardUncertaintyDb, 2)} dB`,
      },
      {
        says: 'what the two certificates allow, at two standard deviations',
        formula: 'U = 2 \\cdot \\sqrt{u_a^{2} + u_b^{2}}',
        put: `U = 2 \\cdot \\sqrt{${shown(firstUncertaintyDb, 2)}^{2} + ${shown(secondUncertaintyDb, 2)}^{2}}`,
        result: `${shown(2 * Math.hypot(firstUncertaintyDb, secondUncertaintyDb), 2)} dB`,
      },
    ];
  },
  code: ({ points }) =>
    `import { pairedDifference } from 'slantpath/readings';

const apart = pairedDifference({
  firstDb: ${literal(points.map((point) => point.firstDbuv))},
  secondDb: ${literal(points.map((point) => point.secondDbuv))},
});
console.log(apart.differenceDb, apart.halfWidth95Db);
`,
});
