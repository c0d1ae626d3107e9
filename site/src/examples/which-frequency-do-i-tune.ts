/** Which frequency do I tune? The intermediate frequency of each carrier, voltage and tone, and what goes wrong. */

import {
  type ConverterPlanName,
  carrierTakenInstead,
  converterPlans,
  oscillatorErrorKHz,
  type TuningRow,
  tuningTable,
} from 'slantpath/tuning';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, rows } from '../lib/inputs/inputs.js';
import { own } from '../lib/language/language.js';
import { shown } from '../lib/language/text.js';
import { spanRows } from '../lib/pictures/spans.js';

const PLANS: Readonly<Record<ConverterPlanName, string>> = {
  'ku-universal': 'Ku, universal: 9.75 and 10.6 GHz',
  'ku-10000': 'Ku, 10 GHz',
  'ku-10678': 'Ku, 10.678 GHz',
  'ku-10700': 'Ku, 10.7 GHz',
  'ku-10750': 'Ku, 10.75 GHz',
  'ku-11250': 'Ku, 11.25 GHz',
  'ku-11300': 'Ku, 11.3 GHz',
  'ku-stacked': 'Ku, both polarizations stacked: 11.25 and 14.35 GHz',
  'ku-wideband-10400': 'Ku, wideband: 10.4 GHz',
  'ku-wideband-10410': 'Ku, wideband: 10.41 GHz',
  'c-5150': 'C, 5.15 GHz',
  'c-extended-5150': 'C, 3.4 to 4.2 GHz: 5.15 GHz',
  'c-stacked': 'C, both polarizations stacked: 5.15 and 5.75 GHz',
  'ka-18750': 'Ka, 18.75 GHz',
  'ka-19250': 'Ka, 19.25 GHz',
  'ka-20250': 'Ka, 20.25 GHz',
};

const POLARIZATIONS = {
  vertical: 'vertical',
  horizontal: 'horizontal',
  'right-hand': 'right-hand',
  'left-hand': 'left-hand',
} as const;

const TONES = { on: 'tone on', off: 'tone off', ignored: 'no tone needed' } as const;

const VERDICTS = {
  'in-range': 'in range',
  'cut-off': 'cut off at the edge',
  'out-of-range': 'out of range',
} as const;

const STATUS = {
  read: 'The oscillators of this plan were read in an open text.',
  practice: 'The oscillators of this plan are practice of the trade: read the label of the unit.',
  'from-memory':
    'The oscillators of this plan were written down from memory: read the label of the unit.',
} as const;

type Tuned = Exclude<TuningRow, { kind: 'outside-the-unit' }>;

/** What comes instead where the tone is stuck: the other oscillator of a unit that is switched by it. */
function insteadOf(plan: ConverterPlanName, { frequencyGHz, localOscillatorGHz, tone }: Tuned) {
  const other = converterPlans
    .find(({ name }) => name === plan)
    ?.bands.find((band) => band.tone !== undefined && band.tone !== (tone === 'on'));
  if (tone === 'ignored' || !other) return undefined;
  return carrierTakenInstead({
    frequencyGHz,
    localOscillatorGHz,
    actualLocalOscillatorGHz: other.localOscillatorGHz,
  });
}

const dialled = (row: Tuned) =>
  `${shown(row.intermediateFrequencyMHz, 2)} MHz, ${row.supplyV} V, ${TONES[row.tone]}`;

export default defineExample({
  usual: ['carriers', 'plan'],
  inputs: {
    carriers: rows({
      label: 'Carriers',
      columns: {
        name: { label: 'Name', text: true },
        frequencyGHz: { label: 'Frequency', unit: 'GHz', step: 0.001 },
        bandwidthMHz: { label: 'Width', unit: 'MHz', step: 1 },
        polarization: { label: 'Polarization', options: POLARIZATIONS },
      },
      value: [
        { name: 'A', frequencyGHz: 11.938, bandwidthMHz: 33, polarization: 'horizontal' },
        { name: 'B', frequencyGHz: 10.788, bandwidthMHz: 36, polarization: 'vertical' },
        { name: 'C', frequencyGHz: 12.692, bandwidthMHz: 33, polarization: 'vertical' },
      ],
      add: { name: 'D', frequencyGHz: 11.5, bandwidthMHz: 33, polarization: 'vertical' },
    }),
    plan: choice({
      label: 'Local oscillator of the unit (LNB)',
      options: PLANS,
      value: 'ku-universal',
    }),
    lowestMHz: number({ label: 'Receiver tunes from', unit: 'MHz', value: 950, step: 50, min: 0 }),
    highestMHz: number({ label: 'Receiver tunes to', unit: 'MHz', value: 2150, step: 50, min: 0 }),
    stabilityPpm: number({
      label: 'Stability of the oscillator',
      unit: 'ppm',
      value: 150,
      step: 10,
      min: 0,
      max: 300,
      hint: 'Dielectric resonators 100 to 200, phase-locked units 2 to 30, with an outside reference below 0.1.',
    }),
  },
  fieldOf: (parameter) =>
    ({ 'receiver.lowestMHz': 'lowestMHz', 'receiver.highestMHz': 'highestMHz' })[parameter],
  compute: ({ plan, carriers, lowestMHz, highestMHz, stabilityPpm }) => {
    const table = tuningTable({
      plan,
      carriers: carriers.map((carrier) => ({
        ...carrier,
        polarization: carrier.polarization as keyof typeof POLARIZATIONS,
      })),
      receiver: { lowestMHz, highestMHz },
    });
    return table.map((row) =>
      row.kind === 'outside-the-unit'
        ? row
        : {
            ...row,
            insteadGHz: insteadOf(plan, row) ?? null,
            errorKHz: oscillatorErrorKHz({
              localOscillatorGHz: row.localOscillatorGHz,
              stabilityPpm,
            }),
          },
    );
  },
  view: (table, { plan, lowestMHz, highestMHz, carriers }) => {
    const [first] = table;
    const lost = table.filter(({ kind }) => kind !== 'in-range').length;
    const status = converterPlans.find(({ name }) => name === plan)?.status ?? 'practice';
    const tuned = table.flatMap((row, index) =>
      row.kind === 'outside-the-unit'
        ? []
        : [{ ...row, halfMHz: (carriers[index]?.bandwidthMHz ?? 0) / 2 }],
    );
    const inverted = tuned.some(({ spectrumInverted }) => spectrumInverted);
    return {
      says: !first
        ? 'Add a carrier.'
        : first.kind === 'outside-the-unit'
          ? `${own(first.name)}: this unit has no band for ${shown(first.frequencyGHz, 4)} GHz.`
          : `${own(first.name)}: tune ${dialled(first)}${lost > 0 ? `; ${lost} of ${table.length} carriers cannot be received whole.` : '.'}`,
      outputs:
        first && first.kind !== 'outside-the-unit'
          ? [
              {
                label: 'Intermediate frequency',
                value: first.intermediateFrequencyMHz,
                unit: 'MHz',
                note: `of ${own(first.name)}`,
                main: true,
              },
              {
                label: 'Supply',
                value: first.supplyV,
                unit: 'V',
                digits: 0,
                note: TONES[first.tone],
                main: true,
              },
              {
                label: 'Local oscillator',
                value: first.localOscillatorGHz,
                unit: 'GHz',
                digits: 3,
              },
              {
                label: 'Image',
                value: first.imageFrequencyGHz,
                unit: 'GHz',
                digits: 4,
                note: 'comes out at the same place; the filter of the unit keeps it away',
              },
              {
                label: 'May lie off by',
                value: first.errorKHz,
                unit: 'kHz',
                digits: 0,
                note: 'either way, by the oscillator',
              },
            ]
          : [],
      figures:
        tuned.length > 0
          ? [
              spanRows({
                title: 'Where the carriers lie on the cable',
                axis: 'Intermediate frequency / MHz',
                shade: { from: lowestMHz, to: highestMHz, label: 'range of the receiver' },
                rows: tuned.map((row) => ({
                  label: own(row.name),
                  words:
                    row.kind === 'in-range'
                      ? `${row.supplyV} V, ${TONES[row.tone]}`
                      : VERDICTS[row.kind],
                  spans: [
                    {
                      from: row.intermediateFrequencyMHz - Math.max(row.halfMHz, 1),
                      to: row.intermediateFrequencyMHz + Math.max(row.halfMHz, 1),
                      hollow: row.kind !== 'in-range',
                    },
                  ],
                })),
              }),
            ]
          : [],
      tables: [
        {
          caption: 'Tuning table',
          columns: [
            'Carrier',
            'Tune / MHz',
            'Supply / V',
            'Tone',
            'Oscillator / GHz',
            'Receiver',
            'With the tone wrong / GHz',
          ],
          rows: table.map((row) =>
            row.kind === 'outside-the-unit'
              ? [own(row.name), 'none', '–', '–', '–', 'outside the unit', '–']
              : [
                  own(row.name),
                  shown(row.intermediateFrequencyMHz, 2),
                  String(row.supplyV),
                  TONES[row.tone],
                  shown(row.localOscillatorGHz, 3),
                  VERDICTS[row.kind],
                  row.insteadGHz === null ? '–' : shown(row.insteadGHz, 4),
                ],
          ),
        },
      ],
      notes: [
        STATUS[status],
        ...(inverted
          ? [
              'The oscillator lies above the carrier: the spectrum is inverted, the lower radio edge is the upper edge on the cable.',
            ]
          : []),
      ],
    };
  },
  working: (_, table) => {
    const row = table.find(({ kind }) => kind !== 'outside-the-unit');
    return row && row.kind !== 'outside-the-unit'
      ? [
          {
            plan: 'intermediate-frequency',
            givens: { frequencyGHz: row.frequencyGHz, localOscillatorGHz: row.localOscillatorGHz },
          },
        ]
      : [];
  },
  hand: ({ stabilityPpm }, table) => {
    const row = table.find(({ kind }) => kind !== 'outside-the-unit');
    if (!row || row.kind === 'outside-the-unit') return [];
    return [
      {
        says: 'the oscillator may be off by',
        formula: 'e = f_o \\cdot s',
        put: `e = ${shown(1000 * row.localOscillatorGHz, 0)} \\cdot ${shown(stabilityPpm, 0)} \\cdot 10^{-6}`,
        result: `${shown(row.errorKHz / 1000, 3)} MHz`,
      },
      {
        says: 'the image lies as far on the other side of the oscillator',
        formula: 'f_m = 2 \\cdot f_o - f',
        put: `f_m = 2 \\cdot ${shown(row.localOscillatorGHz, 3)} - ${shown(row.frequencyGHz, 4)}`,
        result: `${shown(row.imageFrequencyGHz, 4)} GHz`,
      },
    ];
  },
  code: ({ plan, carriers, lowestMHz, highestMHz }) =>
    `import { tuningTable } from 'slantpath/tuning';

const table = tuningTable({
  plan: ${literal(plan)},
  carriers: [
${carriers.map((carrier) => `    ${literal(carrier)},`).join('\n')}
  ],
  receiver: { lowestMHz: ${lowestMHz}, highestMHz: ${highestMHz} },
});
for (const row of table)
  console.log(
    row.name,
    row.kind,
    row.kind === 'outside-the-unit' ? '' : [row.intermediateFrequencyMHz, row.supplyV, row.tone],
  );
`,
});
