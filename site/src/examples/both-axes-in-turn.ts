/** Both axes in turn: a lobe over two coupled axes, and the way of an alternating search. */

import { alternatingSearch, fitCoupledPeak } from 'slantpath/peaking';
import { defineExample, literal } from '../lib/example.js';
import { number, rows } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { lobePlan } from '../lib/pictures/lobePlan.js';

const LEVELS = [-48.5, -42.1, -41.4, -44.7, -40.2, -41.5, -45.1, -42.3, -45.3];

export default defineExample({
  inputs: {
    readings: rows({
      label: 'Readings',
      columns: {
        firstDeg: { label: 'Azimuth on the sky', unit: '°', step: 0.1 },
        secondDeg: { label: 'Elevation', unit: '°', step: 0.1 },
        levelDbm: { label: 'Level', unit: 'dBm', step: 0.1 },
      },
      value: LEVELS.map((levelDbm, i) => ({
        firstDeg: (i % 3) * 0.8 - 0.8,
        secondDeg: Math.floor(i / 3) * 0.8 - 0.8,
        levelDbm,
      })),
      add: { firstDeg: 0, secondDeg: 0, levelDbm: -40 },
      hint: 'Azimuth times the cosine of the elevation; at least seven readings.',
    }),
    firstNowDeg: number({
      label: 'Azimuth now',
      unit: '°',
      value: -0.8,
      step: 0.1,
      min: -5,
      max: 5,
    }),
    secondNowDeg: number({
      label: 'Elevation now',
      unit: '°',
      value: 0.8,
      step: 0.1,
      min: -5,
      max: 5,
    }),
    targetLossDb: number({
      label: 'Wanted pointing loss',
      unit: 'dB',
      value: 0.1,
      step: 0.05,
      min: 0.05,
      max: 1,
    }),
  },
  compute: ({ readings, firstNowDeg, secondNowDeg, targetLossDb }) => {
    const fit = fitCoupledPeak({
      firstDeg: readings.map((row) => row.firstDeg),
      secondDeg: readings.map((row) => row.secondDeg),
      levelDbm: readings.map((row) => row.levelDbm),
      currentDeg: [firstNowDeg, secondNowDeg],
    });
    const search =
      fit.kind === 'peak'
        ? alternatingSearch({
            beamwidthDeg: fit.beamwidthDeg,
            narrowAxisDeg: fit.narrowAxisDeg,
            startDeg: [firstNowDeg - fit.positionDeg[0], secondNowDeg - fit.positionDeg[1]],
            targetLossDb,
          })
        : null;
    return { fit, search };
  },
  fieldOf: (parameter) => {
    const row = /^(firstDeg|secondDeg|levelDbm)\[(\d+)\]$/.exec(parameter);
    if (row) return `readings[${row[2]}].${row[1]}`;
    return parameter === 'currentDeg[1]'
      ? 'secondNowDeg'
      : parameter === 'currentDeg[0]'
        ? 'firstNowDeg'
        : undefined;
  },
  view: ({ fit, search }, { readings, firstNowDeg, secondNowDeg }) => {
    if (fit.kind !== 'peak' || search === null)
      return {
        says: {
          saddle: 'The level rises one way and falls the other: these readings hold no peak.',
          flat: 'No bend stands out from the scatter. Read further from the peak.',
          outside: 'The peak lies beyond the readings. Go on that way and read around it.',
          'too-few': 'Seven readings are needed at least, on three places of each axis.',
          peak: '',
        }[fit.kind],
        outputs: [],
      };
    const [first, second] = fit.positionDeg;
    const way = [
      [firstNowDeg, secondNowDeg] as const,
      ...search.steps.map(
        (step) => [first + step.offsetDeg[0], second + step.offsetDeg[1]] as const,
      ),
    ];
    const interval = ([from, to]: readonly [number, number]) => `${shown(from)}° to ${shown(to)}°`;
    return {
      caution:
        'On a mast or a roof, secure yourself and the tools first and keep clear of power lines. Nobody stands in front of a transmitting reflector while it is moved.',
      says:
        search.steps.length === 0
          ? 'The antenna stands within the wanted loss already.'
          : `Peak the axes in turn: after ${search.steps.length} ${search.steps.length === 1 ? 'peaking' : 'peakings'} the loss is ${shown(search.steps.at(-1)?.lossDb ?? 0, 3)} dB.`,
      outputs: [
        {
          label: 'Peak in azimuth',
          value: first,
          unit: '°',
          digits: 2,
          note: `95 %: ${interval(fit.interval95Deg[0])}`,
          main: true,
        },
        {
          label: 'Peak in elevation',
          value: second,
          unit: '°',
          digits: 2,
          note: `95 %: ${interval(fit.interval95Deg[1])}`,
          main: true,
        },
        { label: 'Loss now', value: fit.lossNowDb, unit: 'dB' },
        {
          label: 'Coupling of the axes',
          value: fit.couplingRatio,
          note: '0 where they do not disturb each other',
        },
        {
          label: 'Loss after each further peaking',
          value: 100 * search.lossRatioPerStep,
          unit: '%',
          digits: 1,
          note: 'of the one before',
        },
        {
          label: 'Beamwidths of the lobe',
          value: `${shown(fit.beamwidthDeg[0])}° and ${shown(fit.beamwidthDeg[1])}°`,
          note: `the narrow one ${shown(fit.narrowAxisDeg, 0)}° from azimuth towards elevation`,
        },
      ],
      notes:
        fit.coverage === 'not-assured'
          ? [
              'The 95 % are not assured: read nine places or more within half a beamwidth, on both sides of the peak on each axis, and read again what stands out.',
            ]
          : [],
      figures: [
        lobePlan({
          title: 'The lobe, the readings, and the way of the alternating search',
          peakDeg: fit.positionDeg,
          beamwidthDeg: fit.beamwidthDeg,
          narrowAxisDeg: fit.narrowAxisDeg,
          readings: readings.map((row) => [row.firstDeg, row.secondDeg]),
          way,
          axes: ['Azimuth', 'Elevation'],
        }),
      ],
      tables: [
        {
          caption: 'Axis by axis',
          columns: ['Peaked', 'Azimuth / °', 'Elevation / °', 'Loss / dB'],
          rows: [
            ['start', shown(firstNowDeg), shown(secondNowDeg), shown(search.startLossDb, 3)],
            ...search.steps.map((step, i) => [
              `${i + 1}. ${step.axis === 'first' ? 'azimuth' : 'elevation'}`,
              shown(way[i + 1]?.[0] ?? 0),
              shown(way[i + 1]?.[1] ?? 0),
              shown(step.lossDb, 3),
            ]),
          ],
        },
      ],
    };
  },
  working: ({ firstNowDeg, secondNowDeg }, { fit, search }) => {
    if (fit.kind !== 'peak' || search === null) return [];
    const [narrowDeg, wideDeg] = fit.beamwidthDeg;
    const lobe = { narrowDeg, wideDeg, narrowAxisDeg: fit.narrowAxisDeg };
    const start = {
      firstOffsetDeg: firstNowDeg - fit.positionDeg[0],
      secondOffsetDeg: secondNowDeg - fit.positionDeg[1],
    };
    return [
      { plan: 'axis-coupling', givens: lobe },
      ...(search.steps.length >= 2
        ? [{ plan: 'loss-after-both-axes', givens: { ...lobe, ...start } }]
        : []),
    ];
  },
  code: ({ readings }) =>
    `import { fitCoupledPeak } from 'slantpath/peaking';

console.log(
  fitCoupledPeak({
    firstDeg: ${literal(readings.map((row) => row.firstDeg))},
    secondDeg: ${literal(readings.map((row) => row.secondDeg))},
    levelDbm: ${literal(readings.map((row) => row.levelDbm))},
  }),
);
`,
});
