/** Do the neighbours disturb? Carrier over interference from the slots beside, against the size of the reflector. */

import { type AntennaPattern, antennaGain } from 'slantpath/antenna';
import { adjacentSatellites } from 'slantpath/link';
import { slotSeparation } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place, rows } from '../lib/inputs/inputs.js';
import { diameter, frequency, sight, slot } from '../lib/inputs/linkInputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { linePlot, type Point } from '../lib/pictures/plot.js';
import { reflector } from '../lib/plans.js';

const PATTERNS = {
  'RR-AP8': 'Radio Regulations, Appendix 8',
  'S.465-6': 'ITU-R S.465-6',
  'S.580-6': 'ITU-R S.580-6',
  'S.1428-1': 'ITU-R S.1428-1',
} as const;
type Kind = keyof typeof PATTERNS;

/** Sizes of the curve: 0.4 to 4 m, further where the reflector is smaller or larger. */
const sizesWith = (diameterM: number) => {
  const [from, to] = [Math.min(0.4, diameterM), Math.max(4, diameterM)];
  return Array.from({ length: 61 }, (_, i) => Number((from * (to / from) ** (i / 60)).toFixed(4)));
};

interface Question {
  readonly kind: Kind;
  readonly frequencyGHz: number;
  readonly efficiencyRatio: number;
  readonly eirpDensityDbwPerMHz: number;
  readonly pointingOffsetDeg: number;
  readonly neighbours: readonly {
    readonly separationDeg: number;
    readonly eirpDensityDbwPerMHz: number;
    readonly polarizationIsolationDb: number;
  }[];
}

/** Interference behind a reflector of one size. */
function behind(diameterM: number, question: Question) {
  const { kind, frequencyGHz, efficiencyRatio } = question;
  const pattern: AntennaPattern = { kind, diameterM, frequencyGHz };
  return adjacentSatellites({
    pattern,
    wantedGainDbi: antennaGain({ diameterM, frequencyGHz, efficiencyRatio }).gainDbi,
    eirpDensityDbwPerMHz: question.eirpDensityDbwPerMHz,
    neighbours: question.neighbours,
    pointingOffsetDeg: question.pointingOffsetDeg,
  });
}

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'diameterM', 'neighbours', 'frequencyGHz'],
  inputs: {
    station: place(),
    orbitalLongitudeDeg: slot(),
    frequencyGHz: frequency(11.7),
    diameterM: diameter(),
    efficiencyRatio: number({
      label: 'Aperture efficiency',
      value: 0.65,
      step: 0.05,
      min: 0.3,
      max: 0.9,
    }),
    kind: choice({ label: 'Pattern of the antenna', options: PATTERNS, value: 'RR-AP8' }),
    eirpDensityDbwPerMHz: number({
      label: 'Power of the wanted satellite per megahertz',
      unit: 'dBW/MHz',
      value: 35.6,
      step: 0.5,
      hint: 'EIRP less ten times the logarithm of the bandwidth in MHz.',
    }),
    neighbours: rows({
      label: 'Neighbours in the same band',
      columns: {
        longitudeDeg: { label: 'Slot', unit: '° east', step: 0.1 },
        eirpDensityDbwPerMHz: { label: 'Power', unit: 'dBW/MHz', step: 0.5 },
        polarizationIsolationDb: { label: 'Isolation', unit: 'dB', step: 1 },
      },
      value: [
        { longitudeDeg: 13.4, eirpDensityDbwPerMHz: 36, polarizationIsolationDb: 0 },
        { longitudeDeg: 19.4, eirpDensityDbwPerMHz: 35, polarizationIsolationDb: 0 },
      ],
      add: { longitudeDeg: 22.4, eirpDensityDbwPerMHz: 35, polarizationIsolationDb: 0 },
      hint: 'Isolation: 0 for the same polarization, 15 to 25 for the other one.',
    }),
    pointingOffsetDeg: number({
      label: 'Pointing error towards the neighbours',
      unit: '°',
      value: 0,
      step: 0.1,
      min: 0,
      max: 1,
    }),
  },
  compute: ({ station, orbitalLongitudeDeg, neighbours, diameterM, ...rest }) => {
    const question: Question = {
      ...rest,
      neighbours: neighbours.map(({ longitudeDeg, ...neighbour }) => ({
        ...neighbour,
        separationDeg: slotSeparation({
          station,
          fromLongitudeDeg: orbitalLongitudeDeg,
          toLongitudeDeg: longitudeDeg,
        }).topocentricDeg,
      })),
    };
    return {
      hidden: sight(station, orbitalLongitudeDeg).hidden,
      separationsDeg: question.neighbours.map(({ separationDeg }) => separationDeg),
      here: behind(diameterM, question),
      curve: sizesWith(diameterM).map((size) => ({
        diameterM: size,
        result: behind(size, question),
      })),
    };
  },
  view: ({ hidden, separationsDeg, here, curve }, values) => {
    if (hidden)
      return {
        says: `The slot at ${longitudeText(values.orbitalLongitudeDeg)} is hidden by the Earth from this station.`,
        outputs: [],
      };
    const points: Point[] = curve.map(({ diameterM, result }) => ({
      x: diameterM,
      y: result.kind === 'interference' ? result.carrierToInterferenceDb : Number.NaN,
    }));
    const known = points.filter(({ y }) => Number.isFinite(y));
    return {
      says:
        here.kind === 'interference'
          ? `With ${values.diameterM} m the carrier is ${shown(here.carrierToInterferenceDb, 1)} dB above all neighbours together.`
          : `The pattern says nothing that close to the axis: it begins at ${shown(here.specifiedFromDeg)}°, the neighbour stands at ${shown(separationsDeg[here.neighbour] ?? 0)}°.`,
      outputs: [
        {
          label: 'Carrier over interference',
          value: here.kind === 'interference' ? here.carrierToInterferenceDb : 'not specified',
          unit: here.kind === 'interference' ? 'dB' : '',
          main: true,
        },
      ],
      figures:
        known.length > 1
          ? [
              linePlot({
                title: 'Carrier over interference against the size of the reflector',
                x: {
                  label: 'Diameter',
                  unit: 'm',
                  scale: 'log',
                  min: points[0]?.x ?? 0.4,
                  max: points.at(-1)?.x ?? 4,
                },
                y: { label: 'Carrier over interference', unit: 'dB' },
                series: [{ label: 'all neighbours', points: known }],
                rules: [{ axis: 'x', at: values.diameterM, label: `${values.diameterM} m` }],
              }),
            ]
          : [],
      tables:
        here.kind === 'interference'
          ? [
              {
                caption: 'Each neighbour',
                columns: ['Slot', 'Seen at / °', 'Gain there / dBi', 'Carrier over it / dB'],
                rows: here.neighbours.map(
                  ({ offAxisDeg, gainDbi, carrierToInterferenceDb }, index) => [
                    longitudeText(values.neighbours[index]?.longitudeDeg ?? 0),
                    shown(offAxisDeg, 3),
                    shown(gainDbi),
                    shown(carrierToInterferenceDb),
                  ],
                ),
              },
            ]
          : [],
      notes: [
        'A reference pattern is an envelope: a real antenna lies below it most of the time and may have a null just there.',
      ],
    };
  },
  fieldOf: (parameter) => {
    const at = /^neighbours\[(\d+)\]\.separationDeg$/.exec(parameter);
    if (at) return `neighbours[${at[1]}].longitudeDeg`;
    return parameter === 'toLongitudeDeg' ? 'neighbours[0].longitudeDeg' : undefined;
  },
  working: ({ diameterM, frequencyGHz, efficiencyRatio }) => [
    ...reflector(diameterM, frequencyGHz).slice(0, 1),
    {
      plan: 'antenna-gain',
      givens: { diameterM, frequencyGHz, efficiencyPercent: 100 * efficiencyRatio },
    },
  ],
  code: (values) =>
    `import { antennaGain } from 'slantpath/antenna';
import { adjacentSatellites } from 'slantpath/link';
import { slotSeparation } from 'slantpath/pointing';

const station = ${literal(values.station)};
const antenna = { diameterM: ${literal(values.diameterM)}, frequencyGHz: ${literal(values.frequencyGHz)} };
const neighbours = [
${values.neighbours.map((row) => `  ${literal(row)},`).join('\n')}
].map(({ longitudeDeg, ...neighbour }) => ({
  ...neighbour,
  separationDeg: slotSeparation({
    station,
    fromLongitudeDeg: ${literal(values.orbitalLongitudeDeg)},
    toLongitudeDeg: longitudeDeg,
  }).topocentricDeg,
}));
console.log(
  adjacentSatellites({
    pattern: { kind: ${literal(values.kind)}, ...antenna },
    wantedGainDbi: antennaGain({ ...antenna, efficiencyRatio: ${literal(values.efficiencyRatio)} }).gainDbi,
    eirpDensityDbwPerMHz: ${literal(values.eirpDensityDbwPerMHz)},
    neighbours,
    pointingOffsetDeg: ${literal(values.pointingOffsetDeg)},
  }),
);
`,
});
