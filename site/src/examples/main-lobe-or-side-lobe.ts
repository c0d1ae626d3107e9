/** Main lobe or side lobe? The width and the level of a peak against the lobes of the aperture. */

import { apertureLevelDb, apertureLobes, sideLobeTest } from 'slantpath/peaking';
import { defineExample, literal } from '../lib/example.js';
import { number, optionalNumber } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const NAMES = ['main lobe', 'first side lobe', 'second side lobe'];

/** A probability in percent; one that rounds to nothing is not nothing. */
const percent = (probability: number): string =>
  probability < 0.0005 ? '< 0.1' : shown(100 * probability, 1);

export default defineExample({
  usual: ['diameterM', 'frequencyGHz', 'beamwidthDeg', 'beamwidthStandardUncertaintyDeg'],
  inputs: {
    diameterM: number({
      label: 'Diameter',
      unit: 'm',
      value: 0.9,
      step: 0.05,
      min: 0.3,
      max: 5,
      hint: 'Across the axis that was turned.',
    }),
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 11.7,
      step: 0.1,
      min: 3,
      max: 40,
    }),
    edgeTaperDb: number({
      label: 'Rim below the centre',
      unit: 'dB',
      value: 10,
      step: 1,
      min: 0,
      max: 20,
      hint: 'How the feed lights the reflector; about 10 dB is usual.',
    }),
    beamwidthDeg: number({
      label: 'Width of the peak found',
      unit: '°',
      value: 0.8,
      step: 0.05,
      min: 0.1,
      max: 10,
      hint: 'Between the points 3 dB below its own top.',
    }),
    beamwidthStandardUncertaintyDeg: number({
      label: 'Uncertainty of the width',
      unit: '°',
      value: 0.1,
      step: 0.01,
      min: 0,
      max: 2,
      hint: 'Standard uncertainty.',
    }),
    peakLevelDbm: optionalNumber({
      label: 'Level of the peak found',
      unit: 'dBm',
      step: 0.5,
      empty: 'none',
    }),
    expectedLevelDbm: optionalNumber({
      label: 'Level expected of the main lobe',
      unit: 'dBm',
      step: 0.5,
      empty: 'none',
    }),
    noiseFloorDbm: optionalNumber({
      label: 'Level without signal',
      unit: 'dBm',
      step: 0.5,
      empty: 'far below',
    }),
  },
  compute: ({
    diameterM,
    frequencyGHz,
    edgeTaperDb,
    peakLevelDbm,
    expectedLevelDbm,
    noiseFloorDbm,
    ...found
  }) => {
    const aperture = { diameterM, frequencyGHz, illumination: { edgeTaperDb } };
    const lobes = apertureLobes(aperture);
    const reach = 1.35 * (lobes[2]?.offsetDeg ?? 1);
    return {
      test: sideLobeTest({
        aperture,
        ...found,
        ...(peakLevelDbm === undefined ? {} : { peakLevelDbm }),
        ...(expectedLevelDbm === undefined ? {} : { expectedLevelDbm }),
        ...(noiseFloorDbm === undefined ? {} : { noiseFloorDbm }),
      }),
      lobes,
      pattern: Array.from({ length: 241 }, (_, i) => {
        const x = (i / 120 - 1) * reach;
        return { x, y: Math.max(-45, apertureLevelDb(aperture, x)) };
      }),
    };
  },
  view: ({ test, lobes, pattern }) => {
    const move = `${shown(test.decidingMoveDeg)}°`;
    const rise = `${shown(test.changeIfSideLobeDb, 0)} dB`;
    return {
      caution:
        'Before you turn: secure yourself and the tools, and keep clear of power lines. Side lobes radiate, too: in front of a transmitting reflector keep the safe distance in every direction.',
      says: {
        'main-lobe': 'This is the main lobe.',
        'side-lobe': `This is a side lobe. Turn ${move} to either side: on one side the level rises by about ${rise}.`,
        undecided: `Not decided. Turn ${move} to either side: from the main lobe the level falls on both, from a side lobe it rises on one.`,
        neither:
          'No lobe of this reflector is that wide. Check the diameter, the frequency and the degrees per turn.',
      }[test.kind],
      outputs: [
        {
          label: 'Probability of the main lobe',
          value: percent(test.mainProbabilityRatio),
          unit: '%',
          main: true,
        },
        {
          label: 'The move that decides',
          value: test.decidingMoveDeg,
          unit: '°',
          note: 'to either side, on the sky',
        },
        {
          label: 'Level there, from the main lobe',
          value: test.changeIfMainDb,
          unit: 'dB',
          digits: 1,
          note: 'on both sides',
        },
        {
          label: 'Level there, from the first side lobe',
          value: `+${shown(test.changeIfSideLobeDb, 1)}`,
          unit: 'dB',
          note: 'on one side',
        },
      ],
      tables: [
        {
          caption: 'The peak against each lobe',
          columns: [
            'Lobe',
            'Width / °',
            'Below main / dB',
            'Width off by',
            'Level off by',
            'Probability',
          ],
          rows: test.hypotheses.map((one) => [
            NAMES[one.order] ?? '',
            shown(one.beamwidthDeg),
            shown(one.belowMainDb, 1),
            `${shown(one.widthDeviations, 1)} σ`,
            one.levelDeviations === null ? '–' : `${shown(one.levelDeviations, 1)} σ`,
            `${percent(one.probabilityRatio)} %`,
          ]),
        },
      ],
      figures: [
        linePlot({
          title: 'The pattern of the reflector about its axis',
          x: { label: 'Off the axis', unit: '°' },
          y: { label: 'Level', unit: 'dB', digits: 1 },
          series: [{ label: 'pattern', points: pattern }],
          marks: lobes.slice(1, 2).map((lobe) => ({
            x: lobe.offsetDeg,
            y: -lobe.belowMainDb,
            label: 'first side lobe',
          })),
        }),
      ],
    };
  },
  working: ({ diameterM, frequencyGHz }) => [
    { plan: 'beamwidth', givens: { diameterM, frequencyGHz } },
  ],
  code: ({ diameterM, frequencyGHz, edgeTaperDb, ...found }) =>
    `import { sideLobeTest } from 'slantpath/peaking';

console.log(
  sideLobeTest({
    aperture: ${literal({ diameterM, frequencyGHz, illumination: { edgeTaperDb } })},
${Object.entries(found)
  .filter(([, value]) => value !== undefined)
  .map(([name, value]) => `    ${name}: ${literal(value)},`)
  .join('\n')}
  }),
);
`,
});
