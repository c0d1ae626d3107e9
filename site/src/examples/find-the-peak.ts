/** Find the peak: a bench with an adjuster, a level that flickers, and a lobe that is shown only afterwards. */

import { pointingLoss } from 'slantpath/antenna';
import {
  afterMove,
  afterReading,
  beginPeakSearch,
  bracketPeak,
  fitPeak,
  nextMove,
  type PeakFound,
  type PeakSearch,
  simulatedReadings,
} from 'slantpath/peaking';
import { defineExample, literal, type Table, type Working } from '../lib/example.js';
import { choice, number, rows, toggle } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { adjusterBench } from '../lib/pictures/adjusterBench.js';
import { linePlot, type Point } from '../lib/pictures/plot.js';

/** Scatter and step of three meters in dB. */
const METERS = {
  fine: { standardDeviationDb: 0.1, levelStepDb: 0.1 },
  ordinary: { standardDeviationDb: 0.3, levelStepDb: 0.5 },
  coarse: { standardDeviationDb: 0.5, levelStepDb: 1 },
} as const;
type Meter = keyof typeof METERS;

/** The whole way of the adjuster: an interval as wide as that says nothing. */
const TRAVEL_TURNS = 16;
const TARGET_DB = 0.1;
const PEAK_DBM = -38;
const FLOOR_DBM = -56;

interface Note {
  readonly placeTurns: number;
  readonly levelDbm: number;
}

/** Further down than this the lobe is lost in the noise. */
const LOSS_SEEN_DB = PEAK_DBM - FLOOR_DBM;

/** What a fit of the lobe says where it gives no place, and why a search stops. */
const WITHOUT_PLACE: Readonly<Record<string, string>> = {
  edge: 'beyond the notes',
  flat: 'no lobe seen',
  'not-main-lobe': 'another lobe',
  'too-few': 'too few notes',
  contradictory: 'notes disagree',
  'end-stop': 'the thread ends',
  'no-lobe': 'no lobe seen',
  'too-many': 'too many notes',
};

/** A loss, as far as a level can show it. */
const lossText = (lossDb: number) =>
  lossDb > LOSS_SEEN_DB ? `over ${LOSS_SEEN_DB}` : shown(lossDb, 3);

/** What a bench hides. One turn of its thread moves the beam by one degree. */
const lobeOf = (bench: number) => {
  const number = Math.abs(Math.round(bench));
  return { peakTurns: ((number * 37) % 41) / 10 - 2, widthTurns: 2 + ((number * 13) % 11) / 10 };
};

/** Five levels in a row where the adjuster stands, the newest first; a new note brings new ones. */
function levelsAt(bench: number, meter: Meter, placeTurns: number, notes: number) {
  const { peakTurns, widthTurns } = lobeOf(bench);
  return simulatedReadings({
    offsetDeg: new Array<number>(5).fill(placeTurns - peakTurns),
    lobe: { beamwidthDeg: widthTurns },
    peakLevelDbm: PEAK_DBM,
    noiseFloorDbm: FLOOR_DBM,
    correlationRatio: 0.3,
    seed: Math.round(bench) * 10_007 + notes * 101 + Math.round(placeTurns * 8),
    ...METERS[meter],
  });
}

/** The search after the notes so far, standing where the adjuster stands. */
function searchOf(
  bench: number,
  meter: Meter,
  placeTurns: number,
  notes: readonly Note[],
): PeakSearch {
  const started = beginPeakSearch({
    beamwidthTurns: lobeOf(bench).widthTurns,
    targetLossDb: TARGET_DB,
    noiseFloorDbm: FLOOR_DBM,
    ...METERS[meter],
  });
  const read = notes.reduce(
    (search, note) =>
      afterReading(
        afterMove(search, { legsTurns: [], toTurns: note.placeTurns, toPeak: false }),
        note.levelDbm,
      ),
    started,
  );
  return afterMove(read, { legsTurns: [], toTurns: placeTurns, toPeak: false });
}

/** What each method makes of the notes: a place, or why there is none. */
function methods(bench: number, meter: Meter, notes: readonly Note[]) {
  const { widthTurns } = lobeOf(bench);
  const samples = {
    positionDeg: notes.map((note) => note.placeTurns),
    levelDbm: notes.map((note) => note.levelDbm),
    noiseFloorDbm: FLOOR_DBM,
    // The bench's lobe is one by statement, as in the arithmetic by hand.
    lobe: 'parabola' as const,
    ...METERS[meter],
  };
  const known = fitPeak({ ...samples, beamwidthDeg: widthTurns });
  const free = fitPeak(samples);
  const highest = notes.reduce((a, b) => (b.levelDbm > a.levelDbm ? b : a));
  const ends = [...notes].sort((a, b) => a.placeTurns - b.placeTurns);
  const [low, high] = [ends[0], ends[ends.length - 1]];
  const way = low && high ? high.placeTurns - low.placeTurns : 0;
  const bracket =
    low && high && way > 0 && notes.length > 2
      ? bracketPeak({
          peakLevelDbm: highest.levelDbm,
          referenceLevelDbm: high.levelDbm,
          farLevelDbm: low.levelDbm,
          turnsOut: way,
          turnsBack: way,
          ...METERS[meter],
        })
      : undefined;
  return {
    known,
    free,
    highestTurns: highest.placeTurns,
    bracketTurns:
      bracket && low && bracket.kind !== 'blind' ? low.placeTurns + bracket.moveBackTurns : null,
  };
}

/** What a move asks for, in words. */
function asked(search: PeakSearch): string {
  const move = nextMove(search);
  switch (move.kind) {
    case 'turn-and-read':
      return move.legsTurns.length === 0
        ? 'note the level where the adjuster stands'
        : `turn to ${shown(move.toTurns)} turns and note the level`;
    case 'go-to-peak':
      return `turn to ${shown(move.toTurns)} turns: that is the peak, with at most ${shown(move.lossUpper95Db, 3)} dB lost`;
    case 'done':
      return 'nothing more: the adjuster stands on the peak';
    case 'stop':
      return `stop (${WITHOUT_PLACE[move.reason]}): begin again, or take the next bench`;
  }
}

const curve = (peakTurns: number, widthTurns: number, from: number, to: number): Point[] =>
  Array.from({ length: 81 }, (_, i) => from + ((to - from) * i) / 80).map((x) => ({
    x,
    y:
      simulatedReadings({
        offsetDeg: [x - peakTurns],
        lobe: { beamwidthDeg: widthTurns },
        peakLevelDbm: PEAK_DBM,
        noiseFloorDbm: FLOOR_DBM,
        seed: 0,
      })[0] ?? 0,
  }));

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
            lobe: curve(
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
  working: ({ bench, meter, placeTurns, notes }, { widthTurns, answer }) => {
    // Before the lobe is shown the working would give it away.
    if (answer === null) return [];
    const own = [...notes].sort((a, b) => a.placeTurns - b.placeTurns);
    const [first, second, third] = own;
    const { known, free } = first && second ? methods(bench, meter, notes) : {};
    const noiseFloorDbm = FLOOR_DBM;
    const signals = own.map(
      ({ levelDbm }): Working => ({
        plan: 'signal-over-noise-floor',
        givens: { levelDbm, noiseFloorDbm },
      }),
    );
    /** Level on a lobe that goes through every note: what is left of a note without the noise. */
    const on = (lobe: PeakFound, note: Note) =>
      lobe.peakLevelDbm -
      pointingLoss({
        offsetDeg: note.placeTurns - lobe.positionDeg,
        beamwidthDeg: lobe.beamwidthDeg,
      });
    const found: Working[] = [];
    if (known?.kind === 'peak' && first && second && own.length === 2)
      found.push(...signals, {
        plan: 'peak-from-two-flanks',
        givens: {
          firstTurns: first.placeTurns,
          firstLevelDbm: on(known, first),
          secondTurns: second.placeTurns,
          secondLevelDbm: on(known, second),
          beamwidthTurns: widthTurns,
        },
      });
    const spacingTurns = first && second ? second.placeTurns - first.placeTurns : 0;
    if (
      free?.kind === 'peak' &&
      free.outliers.length === 0 &&
      first &&
      second &&
      third &&
      own.length === 3 &&
      Math.abs(third.placeTurns - second.placeTurns - spacingTurns) < 1e-9
    )
      found.push(...signals, {
        plan: 'peak-from-three-readings',
        givens: {
          middleTurns: second.placeTurns,
          spacingTurns,
          lowerLevelDbm: on(free, first),
          middleLevelDbm: on(free, second),
          upperLevelDbm: on(free, third),
        },
      });
    if (answer.lossHereDb <= LOSS_SEEN_DB)
      found.push({
        plan: 'pointing-loss',
        givens: {
          offsetDeg: placeTurns - answer.peakTurns,
          beamwidthDeg: widthTurns,
        },
      });
    return found;
  },
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
