/** Does a mobile mast disturb? Which carriers lie under terrestrial bands, and how much leaks into the cable. */

import {
  exposedCarriers,
  ingressLevel,
  type ScreeningClass,
  terrestrialBands,
} from 'slantpath/ingress';
import { intermediateFrequency } from 'slantpath/tuning';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, rows } from '../lib/inputs/inputs.js';
import { own } from '../lib/language/language.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';
import { spanRows } from '../lib/pictures/spans.js';

const CLASSES: Readonly<Record<ScreeningClass, string>> = {
  'A++': 'A++',
  'A+': 'A+',
  A: 'A',
  B: 'B',
  C: 'C',
};
const SENDERS = { handset: 'handset or cordless phone', mast: 'mast' } as const;
const WAYS = { cable: 'through the screen of the cable', unit: 'into the antenna' } as const;

const decadeOf = Array.from({ length: 49 }, (_, i) => 10 ** (i / 16));

/** A distance in round figures: two digits, and no nearer than the field allows. */
const roundMetres = (metres: number) =>
  Math.min(1000, Math.max(0.5, Number(metres.toPrecision(2))));

/** The sender, which can be moved along its distance, and the level that is needed, up and down. */
const handles = (distanceM: number, above: number, neededDb: number) => {
  const needed = (db: number) => ({ neededDb: Math.min(60, Math.max(0, Math.round(db))) });
  // One in the last of two digits.
  const step = 10 ** (Math.floor(Math.log10(distanceM)) - 1);
  return [
    ...(distanceM >= 1 && distanceM <= 1000
      ? [
          {
            label: 'Distance of the sender',
            says: `${shown(distanceM, distanceM < 10 ? 1 : 0)} m`,
            x: distanceM,
            y: above,
            now: distanceM,
            min: 0.5,
            max: 1000,
            put: (metres: number) => ({ distanceM: roundMetres(metres) }),
            step: (right: number, up: number) => ({
              distanceM: roundMetres(distanceM + step * (right + up)),
            }),
          },
        ]
      : []),
    {
      label: 'Wanted above unwanted, at least',
      says: `${shown(neededDb, 0)} dB`,
      x: 1.6,
      y: neededDb,
      now: neededDb,
      min: 0,
      max: 60,
      put: (_: number, db: number) => needed(db),
      step: (right: number, up: number) => needed(neededDb + right + up),
    },
  ];
};

export default defineExample({
  usual: ['carriers', 'eirpDbm', 'distanceM', 'frequencyMHz', 'screeningClass', 'wantedDbuv'],
  inputs: {
    carriers: rows({
      label: 'Carriers',
      columns: {
        name: { label: 'Name', text: true },
        frequencyGHz: { label: 'Frequency', unit: 'GHz', step: 0.001 },
        bandwidthMHz: { label: 'Width', unit: 'MHz', step: 1 },
        localOscillatorGHz: { label: 'Oscillator', unit: 'GHz', step: 0.05 },
      },
      value: [
        { name: 'A', frequencyGHz: 11.603, bandwidthMHz: 33, localOscillatorGHz: 9.75 },
        { name: 'B', frequencyGHz: 11.938, bandwidthMHz: 33, localOscillatorGHz: 10.6 },
        { name: 'C', frequencyGHz: 12.545, bandwidthMHz: 33, localOscillatorGHz: 10.6 },
      ],
      add: { name: 'D', frequencyGHz: 3.84, bandwidthMHz: 36, localOscillatorGHz: 5.15 },
    }),
    eirpDbm: number({
      label: 'EIRP of the sender',
      unit: 'dBm',
      value: 60,
      step: 1,
      min: -10,
      max: 90,
      hint: 'A mast about 60, a handset 23, a cordless phone 24.',
    }),
    distanceM: number({
      label: 'Distance of the sender',
      unit: 'm',
      value: 120,
      step: 10,
      min: 0.5,
    }),
    frequencyMHz: number({
      label: 'Frequency of the sender',
      unit: 'MHz',
      value: 1850,
      step: 5,
      min: 30,
      max: 3000,
    }),
    screeningClass: choice({ label: 'Screening class of the cable', options: CLASSES, value: 'B' }),
    wantedDbuv: number({ label: 'Wanted level there', unit: 'dBµV', value: 60, step: 1 }),
    neededDb: number({
      label: 'Wanted above unwanted, at least',
      unit: 'dB',
      value: 25,
      step: 1,
      min: 0,
      max: 60,
      hint: 'What the mode needs, and about 15 dB more so that the ingress costs little.',
    }),
    allBands: choice({
      label: 'Bands that are on the air',
      options: { all: 'all that are known', near: 'only the one of the sender' },
      value: 'all',
    }),
  },
  fieldOf: (parameter) =>
    /^carriers/.test(parameter) || parameter === 'localOscillatorGHz' ? 'carriers' : undefined,
  compute: ({
    carriers,
    eirpDbm,
    distanceM,
    frequencyMHz,
    screeningClass,
    wantedDbuv,
    allBands,
  }) => {
    const within = ([from, to]: readonly [number, number]) =>
      frequencyMHz >= from && frequencyMHz <= to;
    const bands = terrestrialBands.filter(
      ({ handset, mast }) => allBands === 'all' || within(handset) || within(mast),
    );
    const sender = { eirpDbm, frequencyMHz, wantedDbuv };
    return {
      bands,
      exposures: exposedCarriers({ carriers, bands }),
      ingress: ingressLevel({ ...sender, distanceM, screeningClass }),
      placed: carriers.map(({ name, frequencyGHz, localOscillatorGHz, bandwidthMHz }) => ({
        name,
        bandwidthMHz,
        ...intermediateFrequency({ frequencyGHz, localOscillatorGHz }),
      })),
      curves: (['A+', 'A', 'B'] as const).map((one) => ({
        screeningClass: one,
        points: decadeOf.map((metres) => ({
          x: metres,
          y:
            ingressLevel({ ...sender, distanceM: metres, screeningClass: one })
              .wantedAboveIngressDb ?? 0,
        })),
      })),
    };
  },
  view: (
    { bands, exposures, ingress, placed, curves },
    { distanceM, frequencyMHz, neededDb, screeningClass },
  ) => {
    const above = ingress.wantedAboveIngressDb ?? 0;
    const missing = Math.max(0, neededDb - above);
    const hit = placed.filter(
      ({ intermediateFrequencyMHz, bandwidthMHz }) =>
        Math.abs(intermediateFrequencyMHz - frequencyMHz) <= bandwidthMHz / 2,
    );
    const names = hit.map(({ name }) => own(name)).join(', ');
    const level = shown(above, 1);
    const onCable = new Set(exposures.filter(({ way }) => way === 'cable').map(({ band }) => band));
    return {
      says:
        hit.length === 0
          ? `At ${shown(frequencyMHz, 0)} MHz no carrier lies on the cable: this sender falls between them, and disturbs only where it drives an amplifier too far.`
          : missing > 0
            ? `${names}: what leaks in lies ${level} dB below the wanted signal, ${shown(missing, 1)} dB too near.`
            : `${names}: what leaks in lies ${level} dB below the wanted signal, which is enough.`,
      outputs: [
        {
          label: 'Wanted above unwanted',
          value: above,
          unit: 'dB',
          digits: 1,
          note: 'on a sound cable; ± 10 dB',
          main: true,
        },
        {
          label: 'Carriers under a band',
          value: new Set(exposures.map(({ carrier }) => carrier)).size,
          digits: 0,
          main: true,
        },
        {
          label: 'Field strength at the cable',
          value: ingress.fieldDbuvPerM,
          unit: 'dBµV/m',
          digits: 1,
        },
        {
          label: 'Level that leaks in',
          value: ingress.ingressDbuv,
          unit: 'dBµV',
          digits: 1,
          note: `class ${screeningClass}`,
        },
        { label: 'Screening that is missing', value: missing, unit: 'dB', digits: 1 },
      ],
      figures: [
        ...(placed.length > 0
          ? [
              spanRows({
                title: 'Carriers and terrestrial bands on the cable',
                axis: 'Frequency on the cable / MHz',
                shade: { from: 950, to: 2150, label: 'range of the receiver' },
                rows: [
                  ...placed.map(({ name, intermediateFrequencyMHz, bandwidthMHz }) => ({
                    label: `carrier ${own(name)}`,
                    spans: [
                      {
                        from: intermediateFrequencyMHz - bandwidthMHz / 2,
                        to: intermediateFrequencyMHz + bandwidthMHz / 2,
                      },
                    ],
                  })),
                  ...bands
                    .filter(({ name }) => onCable.has(name))
                    .map(({ name, handset, mast }) => ({
                      label: `band ${name}`,
                      spans: (handset[0] === mast[0] ? [handset] : [handset, mast]).map(
                        ([from, to]) => ({ from, to, hollow: true }),
                      ),
                    })),
                ],
              }),
            ]
          : []),
        linePlot({
          title: 'Wanted above unwanted against the distance of the sender',
          x: { label: 'Distance', unit: 'm', scale: 'log', digits: 0, min: 1, max: 1000 },
          y: { label: 'Wanted above unwanted', unit: 'dB', digits: 0 },
          series: curves.map((curve) => ({
            label: `class ${curve.screeningClass}`,
            points: curve.points,
          })),
          rules: [{ axis: 'y', at: neededDb, label: 'needed' }],
          marks:
            distanceM >= 1 && distanceM <= 1000 ? [{ x: distanceM, y: above, label: 'here' }] : [],
          handles: handles(distanceM, above, neededDb),
        }),
      ],
      tables: [
        {
          caption: 'Carriers under a terrestrial band',
          columns: ['Carrier', 'Band', 'Sender', 'How it gets in', 'Overlap / MHz'],
          rows: exposures.map(({ carrier, band, sender, way, overlapMHz }) => [
            own(carrier),
            band,
            SENDERS[sender],
            WAYS[way],
            shown(overlapMHz, 1),
          ]),
        },
      ].filter(({ rows }) => rows.length > 0),
      notes: [
        'The measurement that tells: put a terminating resistor in the place of the antenna. What is still there comes in through cable, connectors and outlets.',
      ],
    };
  },
  hand: ({ eirpDbm, distanceM, frequencyMHz, wantedDbuv }, { ingress }) => [
    {
      says: 'the field strength at the cable',
      formula: 'E = P - 20 \\cdot \\log_{10}(r) + 104.77',
      put: `E = ${shown(eirpDbm, 1)} - 20 \\cdot \\log_{10}(${shown(distanceM, 1)}) + 104.77`,
      result: `${shown(ingress.fieldDbuvPerM, 1)} dBµV/m`,
    },
    {
      says: 'what a dipole would take from it, less the screening',
      formula: 'U = E + 2.15 - 20 \\cdot \\log_{10}(f) + 31.53 - S',
      put: `U = ${shown(ingress.fieldDbuvPerM, 1)} + 2.15 - 20 \\cdot \\log_{10}(${shown(frequencyMHz, 0)}) + 31.53 - ${shown(ingress.fieldDbuvPerM + 2.15 - 20 * Math.log10(frequencyMHz) + 31.53 - ingress.ingressDbuv, 0)}`,
      result: `${shown(ingress.ingressDbuv, 1)} dBµV`,
    },
    {
      says: 'the wanted level above it',
      formula: 'a = W - U',
      put: `a = ${shown(wantedDbuv, 1)} - ${shown(ingress.ingressDbuv, 1)}`,
      result: `${shown(ingress.wantedAboveIngressDb ?? 0, 1)} dB`,
    },
  ],
  presets: {
    label: 'Sender',
    own: 'as put in',
    sets: [
      {
        label: 'mast at 1850 MHz, 120 m',
        values: { eirpDbm: 60, distanceM: 120, frequencyMHz: 1850, screeningClass: 'B' },
      },
      {
        label: 'handset at 1940 MHz, 1 m',
        values: { eirpDbm: 23, distanceM: 1, frequencyMHz: 1940, screeningClass: 'B' },
      },
      {
        label: 'cordless phone at 1890 MHz, 2 m',
        values: { eirpDbm: 24, distanceM: 2, frequencyMHz: 1890, screeningClass: 'B' },
      },
    ],
  },
  code: ({ carriers, eirpDbm, distanceM, frequencyMHz, screeningClass, wantedDbuv }) =>
    `import { exposedCarriers, ingressLevel } from 'slantpath/ingress';

const carriers = [
${carriers.map((carrier) => `  ${literal(carrier)},`).join('\n')}
];
for (const { carrier, band, sender, way } of exposedCarriers({ carriers }))
  console.log(carrier, band, sender, way);
console.log(ingressLevel(${literal({ eirpDbm, distanceM, frequencyMHz, screeningClass, wantedDbuv })}));
`,
});
