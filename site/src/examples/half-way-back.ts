/** Half way back: an equal-level bracketing of a peak with an adjuster. */

import { type Bracket, bracketPeak } from 'slantpath/peaking';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, optionalNumber } from '../lib/inputs/inputs.js';
import { said } from '../lib/language/language.js';
import { shown } from '../lib/language/text.js';
import { linePlot, type Point } from '../lib/pictures/plot.js';

const turns = (count: number) => `${shown(count, 2)} ${Math.abs(count) === 1 ? 'turn' : 'turns'}`;

function says(bracket: Bracket): string {
  const move = `Turn back ${turns(bracket.moveBackTurns)}.`;
  switch (bracket.kind) {
    case 'bracketed':
      return `${move} The peak is then at most ${turns(Math.max(bracket.worstErrorTurns ?? 0, bracket.error95Turns ?? 0))} away.`;
    case 'not-far-enough':
      return `Not far enough from the peak: a drop of ${shown(bracket.leastUsefulDropDb, 1)} dB is needed for the accuracy wanted. Go another turn out and repeat.`;
    case 'too-far':
      return `${move} But so far down the flanks the lobe may be too lopsided for the accuracy wanted: repeat with a level nearer to the peak.`;
    case 'blind':
      return 'Blind: the level did not drop by more than one step of the display, so the peak may be anywhere between. Go further out and repeat.';
  }
}

/** To the quarter turns and whole decibels that the fields step by, within their bounds. */
const quarter = (count: number, most: number) =>
  Math.min(most, Math.max(0.25, Math.round(4 * count) / 4));

/** The places that can be moved: both stops along the turns, the peak up and down. */
function handles(values: {
  readonly turnsOut: number;
  readonly turnsBack: number;
  readonly backlashTurns: number;
  readonly peakLevelDbm: number;
  readonly referenceLevelDbm: number;
}) {
  const { turnsOut, turnsBack, backlashTurns, peakLevelDbm, referenceLevelDbm } = values;
  const level = (dbm: number) => ({ peakLevelDbm: Math.max(referenceLevelDbm, Math.round(dbm)) });
  const out = (count: number) => ({ turnsOut: quarter(count, 40) });
  const back = (count: number) => ({ turnsBack: quarter(count, 80) });
  const far = turnsOut - (turnsBack - backlashTurns);
  return [
    {
      label: 'Stop on the way out',
      says: `${shown(turnsOut, 2)} turns out`,
      x: turnsOut,
      y: referenceLevelDbm,
      now: turnsOut,
      min: 0.25,
      max: 40,
      put: (x: number) => out(x),
      step: (right: number, up: number) => out(turnsOut + (right + up) / 4),
    },
    {
      label: 'Stop on the far side',
      says: `${shown(turnsBack, 2)} turns back`,
      x: far,
      y: referenceLevelDbm,
      now: turnsBack,
      min: 0.25,
      max: 80,
      put: (x: number) => back(turnsOut - x + backlashTurns),
      step: (right: number, up: number) => back(turnsBack + (up - right) / 4),
    },
    {
      label: 'Highest level read',
      says: `${shown(peakLevelDbm, 1)} dBm`,
      x: (turnsOut + far) / 2,
      y: peakLevelDbm,
      now: peakLevelDbm,
      min: referenceLevelDbm,
      max: referenceLevelDbm + 40,
      put: (_: number, y: number) => level(y),
      step: (right: number, up: number) => level(peakLevelDbm + right + up),
    },
  ];
}

/** Where in its step the level was when the turning stopped. */
const STOPS = {
  anywhere: 'anywhere in the step',
  'at-change': 'just as the display came down to it',
} as const;

/** The lobe through the three places, a parabola in dB, a little past both ends. */
function lobe(peakAt: number, half: number, topDbm: number, dropDb: number): Point[] {
  return Array.from({ length: 61 }, (_, index) => {
    const offset = (index / 30 - 1) * 1.25;
    return { x: peakAt + offset * half, y: topDbm - dropDb * offset * offset };
  });
}

export default defineExample({
  usual: ['turnsOut', 'turnsBack', 'peakLevelDbm', 'referenceLevelDbm', 'levelStepDb'],
  inputs: {
    peakLevelDbm: number({ label: 'Highest level read', unit: 'dBm', value: -47, step: 1 }),
    referenceLevelDbm: number({
      label: 'Level after turning out',
      unit: 'dBm',
      value: -51,
      step: 1,
      hint: 'The same level is found again on the far side.',
    }),
    turnsOut: number({ label: 'Turns out', value: 3, step: 0.25, min: 0.25, max: 40 }),
    turnsBack: number({
      label: 'Turns back through the peak',
      value: 5,
      step: 0.25,
      min: 0.25,
      max: 80,
    }),
    levelStepDb: number({
      label: 'Step of the display',
      unit: 'dB',
      value: 1,
      step: 0.1,
      min: 0,
      max: 3,
      hint: 'The smallest change of level that it shows.',
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
    outStop: choice({ label: 'Stopped on the way out', options: STOPS, value: 'anywhere' }),
    farStop: choice({ label: 'Stopped on the far side', options: STOPS, value: 'anywhere' }),
    backlashTurns: number({
      label: 'Turns lost on reversing',
      value: 0,
      step: 0.05,
      min: 0,
      max: 5,
      hint: 'Turns of the adjuster before the antenna follows.',
    }),
    degPerTurn: optionalNumber({
      label: 'Sky for one turn',
      unit: '°',
      step: 0.1,
      min: 0,
      empty: 'not known',
    }),
  },
  compute: ({ degPerTurn, ...rest }) =>
    bracketPeak(degPerTurn === undefined ? rest : { ...rest, degPerTurn }),
  view: (bracket, values) => {
    const half = (values.turnsBack - values.backlashTurns) / 2;
    const peakAt = bracket.peakFromStartTurns;
    const far = values.turnsOut - 2 * half;
    const error = bracket.worstErrorTurns;
    return {
      says: says(bracket),
      caution:
        'Before you turn: are you and the tool tied on, are power lines out of reach? If this antenna transmits, it radiates while it is peaked: stay out of the beam and keep others out.',
      outputs: [
        { label: 'Turn back', value: bracket.moveBackTurns, unit: 'turns', main: true },
        {
          label: 'Largest error',
          value: error === null ? 'no bound' : error,
          unit: error === null ? '' : 'turns',
          note: 'from the step of the display alone',
        },
        {
          label: 'Standard uncertainty',
          value: bracket.standardUncertaintyTurns,
          unit: 'turns',
          note: 'step, flicker and a lopsided lobe together',
        },
        {
          label: 'Loss that may be left',
          value: bracket.lossUpper95Db === null ? 'no bound' : bracket.lossUpper95Db,
          unit: bracket.lossUpper95Db === null ? '' : 'dB',
          digits: 3,
          note: '95 %, on the lobe of a real reflector',
        },
        { label: 'Drop from the peak', value: bracket.dropDb, unit: 'dB', digits: 1 },
        {
          label: 'Least useful drop',
          value: bracket.leastUsefulDropDb,
          unit: 'dB',
          digits: 1,
          note: 'for at most 0.1 dB of pointing loss',
        },
        ...(bracket.moveBackDeg === null
          ? []
          : [{ label: 'Move back on the sky', value: bracket.moveBackDeg, unit: '°', digits: 3 }]),
      ],
      notes:
        values.backlashTurns > 0
          ? ['Lost turns are counted in. Make the last approach from the same side every time.']
          : [],
      figures: [
        linePlot({
          title: 'The lobe over the turns of the adjuster, with the places that were read',
          x: { label: 'Turns from the start' },
          // Room over the peak, so that its name stands free of the curve.
          y: {
            label: 'Level',
            unit: 'dBm',
            digits: 1,
            max: values.peakLevelDbm + 0.3 * Math.max(bracket.dropDb, 0.2),
          },
          series: [
            {
              label: 'lobe through the readings',
              points: lobe(peakAt, half, values.peakLevelDbm, Math.max(bracket.dropDb, 0.2)),
            },
            {
              label: 'read',
              style: 'samples',
              points: [
                { x: values.turnsOut, y: values.referenceLevelDbm },
                { x: far, y: values.referenceLevelDbm },
              ],
            },
          ],
          rules: [{ axis: 'y', at: values.referenceLevelDbm, label: 'equal level' }],
          bands:
            error === null
              ? []
              : [{ axis: 'x', from: peakAt - error, to: peakAt + error, label: 'peak' }],
          marks: [{ x: peakAt, y: values.peakLevelDbm, label: 'half way back' }],
          handles: handles(values),
        }),
      ],
    };
  },
  working: ({ turnsBack, backlashTurns }) => [
    { plan: 'bracketing', givens: { turnsBack, backlashTurns } },
  ],
  hand: (
    { turnsBack, backlashTurns, levelStepDb, outStop, farStop },
    { dropDb, worstErrorTurns },
  ) => {
    // With both stops as the display changed the step drops out of the sum.
    if (
      worstErrorTurns === null ||
      levelStepDb <= 0 ||
      outStop !== 'anywhere' ||
      farStop !== 'anywhere'
    )
      return [];
    const half = (turnsBack - backlashTurns) / 2;
    const [d, q] = [shown(dropDb, 1), shown(levelStepDb, 1)];
    const ratio = Math.sqrt(dropDb / (dropDb - levelStepDb));
    return [
      {
        says: 'the two equal readings may differ by one step of the display, q',
        formula: 'r = \\sqrt{\\frac{d}{d - q}}',
        put: `r = \\sqrt{\\frac{${d}}{${d} - ${q}}}`,
        result: shown(ratio, 3),
      },
      {
        says: 'the peak of the worst lobe that shows the same readings is off the middle by',
        formula: 'e = h \\cdot \\frac{r - 1}{r + 1}',
        put: `e = ${shown(half, 2)} \\cdot \\frac{${shown(ratio, 3)} - 1}{${shown(ratio, 3)} + 1}`,
        result: said(turns(worstErrorTurns)),
      },
      {
        says: 'which costs, of the drop d',
        formula: 'L = d \\cdot \\left(\\frac{e}{h}\\right)^{2}',
        put: `L = ${d} \\cdot \\left(\\frac{${shown(worstErrorTurns, 2)}}{${shown(half, 2)}}\\right)^{2}`,
        result: `${shown(dropDb * (worstErrorTurns / half) ** 2, 2)} dB`,
      },
    ];
  },
  code: (values) =>
    `import { bracketPeak } from 'slantpath/peaking';

const bracket = bracketPeak(${literal(Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)))});
console.log(bracket.kind, bracket.moveBackTurns, bracket.worstErrorTurns);
`,
});
