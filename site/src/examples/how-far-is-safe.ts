/** How far is safe? Power density in front of a transmitting reflector and a published limit of exposure. */

import { exposureLimit, powerDensity, safeDistance } from 'slantpath/antenna';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, optionalNumber } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';
import { reflector } from '../lib/plans.js';

const STANDARDS = {
  'ICNIRP 2020 whole body': 'ICNIRP 2020, whole body',
  'ICNIRP 2020 local': 'ICNIRP 2020, local',
  'FCC 1.1310': '47 CFR 1.1310',
} as const;
const GROUPS = { public: 'general public', occupational: 'at work, trained' } as const;

/** Whole decades that hold some values. */
const decades = (values: readonly number[]) => ({
  min: 10 ** Math.floor(Math.log10(Math.min(...values))),
  max: 10 ** Math.ceil(Math.log10(Math.max(...values))),
});

export default defineExample({
  inputs: {
    diameterM: number({
      label: 'Diameter of the reflector',
      unit: 'm',
      value: 2.4,
      step: 0.1,
      min: 0.3,
      max: 10,
    }),
    frequencyGHz: number({
      label: 'Transmit frequency',
      unit: 'GHz',
      value: 14.25,
      step: 0.25,
      min: 1,
      max: 40,
    }),
    powerW: number({
      label: 'Mean power at the antenna',
      unit: 'W',
      value: 40,
      step: 1,
      min: 0.1,
      hint: 'After the loss of the feed, while it transmits without pause.',
    }),
    antennaGainDbi: optionalNumber({
      label: 'Gain from the data sheet',
      unit: 'dBi',
      step: 0.1,
      min: 20,
      empty: 'from size',
      hint: 'Without it, from diameter and frequency with an efficiency of 0.65.',
    }),
    standard: choice({ label: 'Limit', options: STANDARDS, value: 'ICNIRP 2020 whole body' }),
    group: choice({ label: 'For whom', options: GROUPS, value: 'public' }),
  },
  compute: ({ standard, group, antennaGainDbi, ...rest }) => {
    const transmitter = antennaGainDbi === undefined ? rest : { ...rest, antennaGainDbi };
    const safe = safeDistance(transmitter, { standard, group });
    const last = 4 * Math.max(safe.farFieldFromM, safe.kind === 'distance' ? safe.distanceM : 0);
    const curve = Array.from({ length: 90 }, (_, i) => {
      const distanceM = (last / 400) * 400 ** (i / 89);
      return { distanceM, ...powerDensity(transmitter, distanceM) };
    }).map(({ distanceM, powerDensityWPerM2 }) => ({ distanceM, powerDensityWPerM2 }));
    return {
      safe,
      curve,
      limit: exposureLimit({ standard, group, frequencyGHz: rest.frequencyGHz }),
    };
  },
  view: ({ safe, curve, limit }) => {
    const densities = curve.map(({ powerDensityWPerM2 }) => powerDensityWPerM2);
    const says = {
      distance: () =>
        `Keep out of the beam: the limit is exceeded up to ${shown(safe.kind === 'distance' ? safe.distanceM : 0, 1)} m in front of the reflector.`,
      'at-the-surface': () =>
        'In the beam the limit is kept, but at the surface of the reflector and at the feed it may be exceeded.',
      'not-reached': () =>
        'By this estimate the limit is kept everywhere in front of the reflector; the feed itself is another matter.',
    }[safe.kind];
    return {
      caution:
        'This is arithmetic, not an assessment: the limits of local law bind, and a licensed practitioner judges the site. Switch off and lock the transmitter before work in front of the reflector; never look into a feed or enter the space before it while it can transmit.',
      says: says(),
      outputs: [
        {
          label: 'Distance in front of the reflector',
          value:
            safe.kind === 'distance'
              ? safe.distanceM
              : safe.kind === 'not-reached'
                ? 'none'
                : 'at its surface',
          unit: safe.kind === 'distance' ? 'm' : '',
          digits: 1,
          main: true,
        },
        {
          label: 'Limit',
          value: limit.powerDensityWPerM2,
          unit: 'W/m²',
          note: `averaged over ${limit.averagingMin} minutes`,
          main: true,
        },
        { label: 'At the surface of the reflector', value: safe.surfaceWPerM2, unit: 'W/m²' },
        { label: 'In the near field', value: safe.nearFieldWPerM2, unit: 'W/m²' },
        { label: 'End of the near field', value: safe.nearFieldEndM, unit: 'm', digits: 1 },
        { label: 'Beginning of the far field', value: safe.farFieldFromM, unit: 'm', digits: 1 },
      ],
      figures: [
        linePlot({
          title: 'Highest power density on the axis of the beam against distance',
          x: {
            label: 'Distance',
            unit: 'm',
            scale: 'log',
            digits: 1,
            min: curve[0]?.distanceM ?? 1,
            max: curve[curve.length - 1]?.distanceM ?? 100,
          },
          y: {
            label: 'Power density',
            unit: 'W/m²',
            scale: 'log',
            digits: 3,
            ...decades([...densities, limit.powerDensityWPerM2]),
          },
          series: [
            {
              label: 'power density',
              points: curve.map(({ distanceM, powerDensityWPerM2 }) => ({
                x: distanceM,
                y: powerDensityWPerM2,
              })),
            },
          ],
          rules: [
            { axis: 'y', at: limit.powerDensityWPerM2, label: 'limit' },
            ...(safe.kind === 'distance'
              ? [{ axis: 'x' as const, at: safe.distanceM, label: `${shown(safe.distanceM, 1)} m` }]
              : []),
          ],
        }),
      ],
      notes: safe.cautions,
    };
  },
  working: ({ diameterM, frequencyGHz, antennaGainDbi }) => [
    ...(antennaGainDbi === undefined ? reflector(diameterM, frequencyGHz).slice(1) : []),
    { plan: 'far-field', givens: { diameterM, frequencyGHz } },
  ],
  code: ({ standard, group, antennaGainDbi, ...rest }) =>
    `import { safeDistance } from 'slantpath/antenna';

const safe = safeDistance(
  ${literal(antennaGainDbi === undefined ? rest : { ...rest, antennaGainDbi })},
  { standard: ${literal(standard)}, group: ${literal(group)} },
);
console.log(safe.kind === 'distance' ? safe.distanceM : safe.kind);
for (const caution of safe.cautions) console.log(caution);
`,
});
