/** Where is the null? The cross-polar level over the rotation of the feed: bracketed, and fitted. */

import { bracketNull, crossPolarLevelDbm, fitNull } from 'slantpath/peaking';
import { defineExample, literal } from '../lib/example.js';
import { number, rows } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const READ = [
  [-20, -48.5],
  [-12, -51.9],
  [-5, -57.3],
  [2, -69.6],
  [10, -58.3],
  [18, -51.8],
  [25, -48.7],
] as const;

export default defineExample({
  usual: ['firstDeg', 'secondDeg', 'samples'],
  inputs: {
    firstDeg: number({
      label: 'Rotation at the first place',
      unit: '°',
      value: -18,
      step: 0.5,
      min: -90,
      max: 90,
      hint: 'Clockwise positive, seen from behind the antenna.',
    }),
    secondDeg: number({
      label: 'Rotation at the second place',
      unit: '°',
      value: 24,
      step: 0.5,
      min: -90,
      max: 90,
      hint: 'Where the same cross-polar level returns.',
    }),
    levelStepDb: number({
      label: 'Step of the display',
      unit: 'dB',
      value: 1,
      step: 0.1,
      min: 0,
      max: 3,
    }),
    standardDeviationDb: number({
      label: 'Flicker of the level',
      unit: 'dB',
      value: 0,
      step: 0.1,
      min: 0,
      max: 3,
      hint: 'Standard deviation of one reading.',
    }),
    samples: rows({
      label: 'Readings of the cross-polar level',
      columns: {
        rotationDeg: { label: 'Rotation', unit: '°', step: 0.5 },
        levelDbm: { label: 'Level', unit: 'dBm', step: 0.1 },
      },
      value: READ.map(([rotationDeg, levelDbm]) => ({ rotationDeg, levelDbm })),
      add: { rotationDeg: 0, levelDbm: -60 },
    }),
  },
  compute: ({ samples, ...bracketing }) => {
    const fit = fitNull({
      rotationDeg: samples.map((row) => row.rotationDeg),
      levelDbm: samples.map((row) => row.levelDbm),
    });
    return {
      bracket: bracketNull(bracketing),
      fit,
      curve:
        fit.kind === 'null'
          ? Array.from({ length: 181 }, (_, i) => fit.nullDeg - 45 + i / 2).map((x) => ({
              x,
              y: crossPolarLevelDbm(fit, x),
            }))
          : [],
    };
  },
  fieldOf: (parameter) => {
    const row = /^(rotationDeg|levelDbm)\[(\d+)\]$/.exec(parameter);
    return row ? `samples[${row[2]}].${row[1]}` : undefined;
  },
  view: ({ bracket, fit, curve }, { samples, firstDeg, secondDeg }) => ({
    caution:
      'A feed that transmits in the wrong polarization disturbs others. Set it with the operator’s access centre on the line, and do not switch the transmitter on before.',
    says:
      bracket.kind === 'blind'
        ? 'Blind: with so coarse a display the null may lie outside the two places.'
        : `Turn the feed to ${shown(bracket.nullDeg, 1)}°: half way between ${shown(firstDeg, 1)}° and ${shown(secondDeg, 1)}°.`,
    outputs: [
      { label: 'Null, bracketed', value: bracket.nullDeg, unit: '°', digits: 1, main: true },
      {
        label: 'Largest error',
        value: bracket.worstErrorDeg === null ? 'no bound' : bracket.worstErrorDeg,
        unit: bracket.worstErrorDeg === null ? '' : '°',
        note: 'from the step of the display alone',
      },
      {
        label: 'Isolation left at least',
        value: bracket.isolationAtLeastDb,
        unit: 'dB',
        digits: 1,
        note: 'were the antenna ideal',
      },
      ...(fit.kind === 'null'
        ? [
            {
              label: 'Null, fitted to the readings',
              value: fit.nullDeg,
              unit: '°',
              note: `95 %: ${shown(fit.interval95Deg[0])}° to ${shown(fit.interval95Deg[1])}°`,
              main: true,
            },
            {
              label: 'Isolation of antenna and wave',
              value: fit.depthDb,
              unit: 'dB',
              digits: 1,
              note: 'how deep the null is',
            },
          ]
        : []),
    ],
    notes:
      fit.kind === 'null'
        ? fit.coverage === 'not-assured'
          ? [
              'The 95 % are not assured: read six places or more, two on each side of the null, and read again what stands out.',
            ]
          : []
        : [
            {
              'not-enclosed': 'The null lies beyond the readings: turn on and read there.',
              flat: 'No null stands out from the scatter of the readings.',
              'too-few': 'Four readings are needed to fit the null.',
            }[fit.kind],
          ],
    figures: [
      linePlot({
        title: 'Cross-polar level over the rotation of the feed',
        x: { label: 'Rotation', unit: '°', digits: 1 },
        y: { label: 'Level', unit: 'dBm', digits: 1 },
        series: [
          { label: 'fit', points: curve },
          {
            label: 'read',
            style: 'samples',
            points: samples.map((row) => ({ x: row.rotationDeg, y: row.levelDbm })),
          } as const,
        ].filter(({ points }) => points.length > 0),
        bands:
          bracket.worstErrorDeg === null
            ? []
            : [
                {
                  axis: 'x',
                  from: bracket.nullDeg - bracket.worstErrorDeg,
                  to: bracket.nullDeg + bracket.worstErrorDeg,
                  label: 'bracketed',
                },
              ],
      }),
    ],
  }),
  working: ({ firstDeg, secondDeg, levelStepDb, standardDeviationDb }) => [
    { plan: 'null-half-way', givens: { firstDeg, secondDeg } },
    { plan: 'null-isolation', givens: { firstDeg, secondDeg, levelStepDb, standardDeviationDb } },
  ],
  code: ({ samples, ...bracketing }) =>
    `import { bracketNull, fitNull } from 'slantpath/peaking';

console.log(bracketNull(${literal(bracketing)}));
console.log(
  fitNull({
    rotationDeg: ${literal(samples.map((row) => row.rotationDeg))},
    levelDbm: ${literal(samples.map((row) => row.levelDbm))},
  }),
);
`,
});
