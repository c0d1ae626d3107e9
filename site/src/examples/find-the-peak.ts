/** Find the peak: a bench with an adjuster, a level that flickers, and a lobe that is shown only afterwards. */

import { pointingLoss } from 'slantpath/antenna';
import { nextMove } from 'slantpath/peaking';
import { defineExample, literal, type Table } from '../lib/example.js';
import { choice, number, rows, toggle } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import {
  FLOOR_DBM,
  LOSS_SEEN_DB,
  levelsAt,
  lobeCurve,
  lobeOf,
  METERS,
  TARGET_DB,
} from '../lib/peakBench/bench.js';
import { methods } from '../lib/peakBench/methods.js';
import { asked, searchOf, WITHOUT_PLACE } from '../lib/peakBench/search.js';
import { benchWorking } from '../lib/peakBench/working.js';
import { adjusterBench } from '../lib/pictures/adjusterBench.js';
import { linePlot } from '../lib/pictures/plot.js';

/** The whole way of the adjuster: an interval as wide as that says nothing. */
const TRAVEL_TURNS = 16;

/** A loss, as far as a level can show it. */
const lossText = (lossDb: number) =>
  lossDb > LOSS_SEEN_DB ? `over ${LOSS_SEEN_DB}` : shown(lossDb, 3);

const CAUTION =
  'On a real mast, secure yourself and the tools first and keep clear of power lines. A transmitting antenna radiates while it is peaked: keep everyone out of the beam and let licensed staff do what is theirs.';

export default defineExample({
  inputs: {
    bench: number({
      label: 'Bench',
      value: 1,
      step: 1,
      min: 1,
      max: 999,
      hint: 'Each number hides another peak.',
    }),
    meter: choice({
      label: 'Meter',
      options: {
        fine: 'tenths, flicker 0.1 dB',
        ordinary: 'half dB, flicker 0.3 dB',
        coarse: 'whole dB, flicker 0.5 dB',
      },
      value: 'ordinary',
    }),
    placeTurns: number({
      label: 'The adjuster stands at',
      unit: 'turns',
      value: 3,
      step: 0.25,
      min: -8,
      max: 8,
      hint: 'Turn it here, or with the buttons.',
    }),
    notes: rows({
      label: 'Notes',
      columns: {
        placeTurns: { label: 'Turns', step: 0.25 },
        levelDbm: { label: 'Level', unit: 'dBm', step: 0.5 },
      },
      value: [
        { placeTurns: 0, levelDbm: -45 },
        { placeTurns: 3, levelDbm: -42 },
      ],
      add: { placeTurns: 0, levelDbm: -40 },
    }),
    hint: toggle({ label: 'Tell me the next move', value: false }),
    shown: toggle({
      label: 'I stand on the peak: show the lobe',
      value: false,
      hint: 'The wanted pointing loss is 0.1 dB.',
    }),
  },
  actions: [
    {
      label: 'Note this level',
      change: ({ bench, meter, placeTurns, notes }) => ({
        notes: [
          ...notes,
          { placeTurns, levelDbm: levelsAt(bench, meter, placeTurns, notes.length)[0] ?? 0 },
        ],
      }),
    },
    { label: 'One turn up', change: ({ placeTurns }) => ({ placeTurns: placeTurns + 1 }) },
    { label: 'One turn down', change: ({ placeTurns }) => ({ placeTurns: placeTurns - 1 }) },
    {
      label: 'Make the next move',
      change: ({ bench, meter, placeTurns, notes }) => {
        const move = nextMove(searchOf(bench, meter, placeTurns, notes));
        if (move.kind === 'done' || move.kind === 'stop') return {};
        const toTurns = Number(move.toTurns.toFixed(2));
        if (move.kind === 'go-to-peak') return { placeTurns: toTurns };
        const levelDbm = levelsAt(bench, meter, toTurns, notes.length)[0] ?? 0;
        return { placeTurns: toTurns, notes: [...notes, { placeTurns: toTurns, levelDbm }] };
      },
    },
    {
      label: 'Next bench',
      change: ({ bench }) => ({ bench: bench + 1, placeTurns: 0, notes: [], shown: false }),
    },
  ],
  compute: ({ bench, meter, placeTurns, notes, hint, shown: revealed }) => {
    const { peakTurns, widthTurns } = lobeOf(bench);
    const lossAt = (turns: number) =>
      pointingLoss({ offsetDeg: turns - peakTurns, beamwidthDeg: widthTurns });
    const judged = notes.length === 0 ? null : methods(bench, meter, notes);
    const places = judged && {
      'the highest reading': judged.highestTurns,
      'half way between the outermost notes': judged.bracketTurns,
      'a lobe of free width':
        judged.free.kind === 'peak' ? judged.free.positionDeg : judged.free.kind,
      'a lobe of the known width':
        judged.known.kind === 'peak' ? judged.known.positionDeg : judged.known.kind,
    };
    return {
      widthTurns,
      levelsDbm: levelsAt(bench, meter, placeTurns, notes.length),
      nextMove: hint || revealed ? asked(searchOf(bench, meter, placeTurns, notes)) : null,
      answer: revealed
        ? {
            peakTurns,
            lossHereDb: lossAt(placeTurns),
            fit: judged?.known ?? null,
            methods: Object.entries(places ?? {}).map(([method, found]) => ({
              method,
              found,
              lossDb: typeof found === 'number' ? lossAt(found) : null,
            })),
            lobe: lobeCurve(
              peakTurns,
              widthTurns,
              Math.min(peakTurns - 1.2 * widthTurns, ...notes.map((note) => note.placeTurns)),
              Math.max(peakTurns + 1.2 * widthTurns, ...notes.map((note) => note.placeTurns)),
            ),
          }
        : null,
    };
  },
  fieldOf: (parameter) =>
    /placeTurns|toTurns|offsetDeg/.test(parameter) ? 'placeTurns' : undefined,
  view: ({ widthTurns, levelsDbm, nextMove: move, answer }, { placeTurns, notes }) => {
    const bench = adjusterBench({
      title: 'The head of the adjuster, and the level with its last four values',
      placeTurns,
      levelsDbm,
      scaleDbm: [-58, -36],
      travelTurns: TRAVEL_TURNS / 2,
    });
    const given = [
      { label: 'Level now', value: levelsDbm[0] ?? 0, unit: 'dBm', digits: 1, main: true },
      {
        label: 'Beamwidth',
        value: widthTurns,
        unit: 'turns',
        digits: 1,
        note: 'given; the noise floor is −56 dBm',
      },
      { label: 'Notes', value: String(notes.length) },
    ];
    const notesOf = move === null ? [] : [`Next move: ${move}.`];
    if (answer === null)
      return {
        says: `The level flickers about ${shown(levelsDbm[0] ?? 0, 1)} dBm at ${shown(placeTurns)} turns. Note it or turn on; show the lobe when you stand on the peak.`,
        caution: CAUTION,
        outputs: given,
        figures: [bench],
        notes: notesOf,
      };
    const { fit } = answer;
    const told = fit?.kind === 'peak' && fit.interval95Deg[1] - fit.interval95Deg[0] < TRAVEL_TURNS;
    const within = answer.lossHereDb <= TARGET_DB;
    const table: Table = {
      caption: 'What each method makes of your notes',
      columns: ['Method', 'Peak / turns', 'Loss there / dB'],
      rows: answer.methods.map(({ method, found, lossDb }) => [
        method,
        typeof found === 'number'
          ? shown(found)
          : found === null
            ? 'no answer'
            : (WITHOUT_PLACE[found] ?? found),
        lossDb === null ? '–' : lossText(lossDb),
      ]),
    };
    return {
      caution: CAUTION,
      says:
        answer.lossHereDb > LOSS_SEEN_DB
          ? `You stand ${shown(Math.abs(placeTurns - answer.peakTurns))} turns from the peak: the lobe is under the noise there.`
          : `You stand ${shown(Math.abs(placeTurns - answer.peakTurns))} turns from the peak and lose ${shown(answer.lossHereDb, 3)} dB: ${within ? 'within' : 'over'} the 0.1 dB wanted.`,
      outputs: [
        {
          label: 'Loss where you stand',
          value: lossText(answer.lossHereDb),
          unit: 'dB',
          main: true,
        },
        { label: 'True peak', value: answer.peakTurns, unit: 'turns', digits: 2, main: true },
        ...(fit?.kind === 'peak'
          ? [
              {
                label: 'Peak by the fit',
                ...(told
                  ? {
                      value: `${shown(fit.positionDeg)} (${shown(fit.interval95Deg[0])} to ${shown(fit.interval95Deg[1])})`,
                      unit: 'turns',
                      note:
                        fit.coverage === 'not-assured'
                          ? '95 % not assured: too few notes'
                          : '95 %, known width',
                    }
                  : { value: 'anywhere', note: 'the notes do not tell' }),
              },
            ]
          : []),
        ...given.slice(1),
      ],
      figures: [
        linePlot({
          title: 'The true lobe, your notes, and the interval of the fit',
          x: { label: 'Adjuster', unit: 'turns' },
          y: { label: 'Level', unit: 'dBm', digits: 1, max: -36 },
          series: [
            { label: 'true lobe', points: answer.lobe },
            {
              label: 'your notes',
              style: 'samples',
              points: notes.map((note) => ({ x: note.placeTurns, y: note.levelDbm })),
            } as const,
          ].filter(({ points }) => points.length > 0),
          bands: told
            ? [{ axis: 'x', from: fit.interval95Deg[0], to: fit.interval95Deg[1], label: '95 %' }]
            : [],
          rules: [{ axis: 'x', at: placeTurns, label: 'you' }],
        }),
        bench,
      ],
      tables: table.rows.length > 0 ? [table] : [],
      notes: notesOf,
    };
  },
  handWaits:
    'The steps by hand come with the lobe: before it is shown they would tell where the peak is.',
  // Before the lobe is shown the working would give it away.
  working: (values, { answer }) => (answer === null ? [] : benchWorking(values, answer)),
  code: ({ bench, meter, notes }) =>
    notes.length === 0
      ? `import { fitPeak } from 'slantpath/peaking';

console.log(fitPeak.name, 'waits for the first note');
`
      : `import { fitPeak } from 'slantpath/peaking';

// One turn counts as one degree on this bench.
console.log(
  fitPeak({
    positionDeg: ${literal(notes.map((note) => note.placeTurns))},
    levelDbm: ${literal(notes.map((note) => note.levelDbm))},
    beamwidthDeg: ${lobeOf(bench).widthTurns},
    lobe: 'parabola',
    noiseFloorDbm: ${FLOOR_DBM},
    standardDeviationDb: ${METERS[meter].standardDeviationDb},
    levelStepDb: ${METERS[meter].levelStepDb},
  }),
);
`,
});
