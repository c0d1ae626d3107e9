/** What is wrong here? Readings of a hut, causes ranked, evidence, and the next measurement; cases for a class. */

import { type CauseObservation, causeRanker } from 'slantpath/acceptance';
import { halfPowerBeamwidth } from 'slantpath/antenna';
import { englishWords } from 'slantpath/sheet';
import { asked, CAUSES, cautionFor, predictedText, seen } from '../lib/causeWords.js';
import { defineExample, literal, type Working } from '../lib/example.js';
import { choice, optionalNumber, rows, toggle } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { bars } from '../lib/pictures/bars.js';
import { faultCases, observationsOf, rowsOfLines, tarnfell } from '../lib/tarnfellChain.js';

/** Prepared once; a ranking then takes a few milliseconds. */
const rank = causeRanker({ installation: tarnfell });

/** The causes in a word or two. */
const SHORT = englishWords.codes.causes;

const LOOK = { unknown: 'not looked', yes: 'yes', no: 'no' } as const;
type Look = keyof typeof LOOK;
const slots = { '7.2 E': '7.2° E', '16.4 E': '16.4° E', '21.8 E': '21.8° E' } as const;
const segments = {
  head: 'from the switch to the head',
  hall: 'from the head to the hall',
  attic: 'from the head to the attic',
  'lead of 7.2 E': 'lead of the unit for 7.2° E',
  'lead of 16.4 E': 'lead of the unit for 16.4° E',
  'lead of 21.8 E': 'lead of the unit for 21.8° E',
} as const;
const named = (list: readonly { readonly name: string }[]): Readonly<Record<string, string>> =>
  Object.fromEntries(list.map(({ name }) => [name, name]));
const look = (label: string, value: Look = 'unknown') => choice({ label, options: LOOK, value });

interface Checks {
  readonly slot: string;
  readonly rain: Look;
  readonly sun: Look;
  readonly obstacle: Look;
  readonly leanDeg?: number | undefined;
  readonly riseDb?: number | undefined;
  readonly turnDeg?: number | undefined;
  readonly voltageV?: number | undefined;
  readonly changeDb?: number | undefined;
  readonly segment: string;
  readonly connector: Look;
  readonly cable: Look;
}

/** The looks and measurements that were made. */
function checksOf(c: Checks): readonly CauseObservation[] {
  const list: (CauseObservation | false)[] = [
    c.rain !== 'unknown' && { kind: 'rain-seen', seen: c.rain === 'yes' },
    c.sun !== 'unknown' && { kind: 'sun-near', slot: c.slot, seen: c.sun === 'yes' },
    c.obstacle !== 'unknown' && { kind: 'obstacle-seen', slot: c.slot, seen: c.obstacle === 'yes' },
    c.leanDeg !== undefined && { kind: 'mast-lean', leanDeg: c.leanDeg },
    c.riseDb !== undefined && { kind: 'search', slot: c.slot, riseDb: c.riseDb },
    c.turnDeg !== undefined && { kind: 'polarization-null', slot: c.slot, turnDeg: c.turnDeg },
    c.voltageV !== undefined && { kind: 'supply-voltage', testPoint: 'hall', voltageV: c.voltageV },
    c.changeDb !== undefined && { kind: 'repeat-later', changeDb: c.changeDb },
    c.connector !== 'unknown' && {
      kind: 'connector-check',
      segment: c.segment,
      seen: c.connector === 'yes',
    },
    c.cable !== 'unknown' && { kind: 'cable-check', segment: c.segment, seen: c.cable === 'yes' },
  ];
  return list.filter((entry): entry is CauseObservation => entry !== false);
}

/** Nothing looked at yet: put before the readings of a new case. */
const UNCHECKED = {
  sun: 'unknown',
  obstacle: 'unknown',
  leanDeg: undefined,
  riseDb: undefined,
  turnDeg: undefined,
  voltageV: undefined,
  changeDb: undefined,
  connector: 'unknown',
  cable: 'unknown',
} as const;

export default defineExample({
  usual: ['readings', 'rain', 'leanDeg'],
  inputs: {
    readings: rows({
      label: 'Readings',
      columns: {
        carrier: { label: 'Carrier', options: named(tarnfell.carriers) },
        testPoint: { label: 'Place', options: named(tarnfell.testPoints) },
        levelDbuv: { label: 'Level', unit: 'dBµV', step: 0.1 },
        ratio: { label: 'C/N / dB', text: true },
        received: {
          label: 'Received',
          options: { wanted: 'wanted', nothing: 'nothing', other: 'another' },
        },
      },
      add: { carrier: '16.4 H', testPoint: 'hall', levelDbuv: 55, ratio: '', received: 'wanted' },
      value: rowsOfLines(
        '7.2 V hall 51.9 9.6\n16.4 V hall 55.7 10.7\n16.4 H hall 50.2 8.1\n21.8 H hall 53.4 8.4',
      ),
    }),
    rain: look('It rains along the path', 'no'),
    leanDeg: optionalNumber({
      label: 'Lean of the mast',
      unit: '°',
      step: 0.1,
      min: 0,
      max: 10,
      empty: 'not measured',
    }),
    slot: choice({ label: 'Slot of the next four', options: slots, value: '16.4 E' }),
    sun: look('The Sun stands near it'),
    obstacle: look('Something stands in the view', 'no'),
    riseDb: optionalNumber({
      label: 'More level found by swinging',
      unit: 'dB',
      step: 0.5,
      min: 0,
      max: 30,
      empty: 'not tried',
    }),
    turnDeg: optionalNumber({
      label: 'Turn of the feed to the null',
      unit: '°',
      step: 1,
      min: -90,
      max: 90,
      empty: 'not tried',
      hint: 'Clockwise positive, from behind the antenna.',
    }),
    voltageV: optionalNumber({
      label: 'Voltage at the unit, asked for the higher one from the hall',
      unit: 'V',
      step: 0.5,
      min: 0,
      max: 24,
      empty: 'not measured',
    }),
    changeDb: optionalNumber({
      label: 'C/N an hour later less now',
      unit: 'dB',
      step: 0.5,
      min: -20,
      max: 20,
      empty: 'not read',
    }),
    segment: choice({ label: 'Segment of the next two', options: segments, value: 'head' }),
    connector: look('A connector of it is bad'),
    cable: look('Its cable is not as planned'),
    hide: toggle({
      label: 'Hide the answer (for a class)',
      value: false,
      hint: 'The cases below are readings of one fault each.',
    }),
  },
  fieldOf: (parameter) => (/^observations\b/.test(parameter) ? 'readings' : undefined),
  actions: faultCases.map(({ label, readings, rain }) => ({
    label,
    change: () => ({ ...UNCHECKED, readings: rowsOfLines(readings), rain }),
  })),
  compute: (values) => {
    const observations = [...observationsOf(values.readings as never), ...checksOf(values)];
    return { observations, ...rank(observations) };
  },
  view: (result, { hide }) => {
    const { observations, ranking, kind, reason, next, undecidedBetween } = result;
    const [first, second] = ranking;
    const levels = observations.flatMap((o) => {
      if (o.kind !== 'level') return [];
      const entry = first?.evidence.find(
        ({ observation: e }) =>
          e.kind === 'level' && e.carrier === o.carrier && e.testPoint === o.testPoint,
      );
      return [{ ...o, planned: entry?.withoutFault ?? o.levelDbuv }];
    });
    const plan = {
      caption: 'Levels read and planned',
      columns: ['Carrier', 'Place', 'Read / dBµV', 'Planned / dBµV', 'Difference / dB'],
      rows: levels.map(({ carrier, testPoint, levelDbuv, planned }) => [
        carrier,
        testPoint,
        shown(levelDbuv, 1),
        shown(planned, 1),
        shown(levelDbuv - planned, 1),
      ]),
    };
    if (hide)
      return {
        says: 'What is wrong here? Compare the slots, the bands and the places, and write down a cause before you show the answer.',
        outputs: [{ label: 'Readings', value: levels.length, digits: 0 }],
        tables: [plan],
      };
    const top = ranking.filter(({ probabilityRatio }) => probabilityRatio > 0.005).slice(0, 6);
    const evidence = (first?.evidence ?? []).slice(0, 10);
    const says =
      kind === 'cause'
        ? `Most likely ${CAUSES[first?.cause ?? 'nothing']}${first?.location ? ` (${first.location})` : ''}.`
        : kind === 'nothing-wrong'
          ? 'Nothing is wrong: the readings are as planned.'
          : reason === 'no-cause-fits'
            ? 'Cannot tell: no single cause explains these readings. Look for a slip in a reading, or for two faults.'
            : `Cannot tell yet: ${undecidedBetween.map((cause) => CAUSES[cause]).join(', or ')}.`;
    return {
      says: next ? `${says} Next: ${asked(next.measurement)}.` : says,
      ...(next ? { caution: cautionFor(next.measurement.kind) } : {}),
      outputs: [
        { label: 'First', value: CAUSES[first?.cause ?? 'nothing'], main: true },
        {
          label: 'Probability',
          value: 100 * (first?.probabilityRatio ?? 0),
          unit: '%',
          digits: 0,
          note: 'among the causes considered, for one fault',
          main: true,
        },
        {
          label: 'Next measurement',
          value: next ? asked(next.measurement) : 'none separates the first two',
          ...(next && second
            ? {
                note: `tells ${SHORT[first?.cause ?? 'nothing']} from ${SHORT[second.cause]}`,
              }
            : {}),
        },
      ],
      figures: [
        bars(
          'Causes by probability',
          top.map(({ cause, probabilityRatio, location }) => ({
            label: SHORT[cause],
            share: probabilityRatio,
            words: location ?? '',
          })),
        ),
      ],
      tables: [
        {
          caption: `Evidence on the first cause, ${SHORT[first?.cause ?? 'nothing']}, strongest first`,
          columns: ['Seen', 'By this cause', 'If all were well', 'Speaks'],
          rows: evidence.map((entry) => [
            seen(entry.observation),
            predictedText(entry.observation, entry.predicted),
            predictedText(entry.observation, entry.withoutFault),
            entry.speaks,
          ]),
        },
        plan,
        ...(result.unseen.length > 0
          ? [
              {
                caption: 'What no reading so far bears on',
                columns: ['Cause', 'Place'],
                rows: result.unseen.map(({ cause, location }) => [
                  SHORT[cause],
                  location ?? 'the antenna',
                ]),
              },
            ]
          : []),
      ],
    };
  },
  working: ({ hide }, { observations, ranking }) => {
    const [first, second] = ranking;
    if (hide || !first || !second) return [];
    const missing = first.evidence
      .flatMap(({ observation: seenHere, withoutFault }) =>
        seenHere.kind === 'level'
          ? [{ carrier: seenHere.carrier, lossDb: withoutFault - seenHere.levelDbuv }]
          : [],
      )
      .reduce((a, b) => (b.lossDb > a.lossDb ? b : a), { carrier: '', lossDb: 0 });
    const carrier = tarnfell.carriers.find(({ name }) => name === missing.carrier);
    const pointed = [first, second].some(({ cause }) => /^(mispointed|mast-leaning)$/.test(cause));
    const beam = carrier && { diameterM: tarnfell.diameterM, frequencyGHz: carrier.frequencyGHz };
    const pointing: readonly Working[] =
      beam && pointed && missing.lossDb >= 1
        ? [
            { plan: 'beamwidth', givens: beam },
            {
              plan: 'offset-from-loss',
              givens: {
                pointingLossDb: missing.lossDb,
                beamwidthDeg: halfPowerBeamwidth(beam),
              },
            },
          ]
        : [];
    if (observations.length < 2) return pointing;
    // What the last observation changed between the first two: prior odds, likelihood ratio, odds after it.
    const before = rank(observations.slice(0, -1)).ranking;
    const [priorFirst, priorSecond] = [first, second].map(
      ({ cause }) => 100 * (before.find((other) => other.cause === cause)?.probabilityRatio ?? 0),
    ) as [number, number];
    const odds = first.probabilityRatio / second.probabilityRatio;
    const likelihoodRatio = (odds * priorSecond) / priorFirst;
    return Number.isFinite(likelihoodRatio) && likelihoodRatio > 0
      ? [
          ...pointing,
          {
            plan: 'two-suspects',
            givens: {
              priorFirst,
              priorSecond,
              likelihoodRatio,
              othersPercent: Math.max(
                0,
                100 * (1 - first.probabilityRatio - second.probabilityRatio),
              ),
            },
          },
        ]
      : pointing;
  },
  code: (_, { observations }) =>
    `import { rankCauses } from 'slantpath/acceptance';

const installation = ${literal(tarnfell)} as const;
const observations = [
${observations.map((observation) => `  ${literal(observation)},`).join('\n')}
] as const;
const { kind, ranking, next } = rankCauses({ installation, observations });
console.log(kind, ranking[0]?.cause, ranking[0]?.probabilityRatio, next?.measurement);
`,
});
