/** What does the meter really say? From a marker, a MER or a level to C/N, Es/N0 and Eb/N0, with uncertainty. */

import {
  carrierPower,
  type DisplayAverage,
  energyRatios,
  noiseBandwidthRatio,
  occupiedBandwidthDb,
  signalWithoutNoise,
  spectralDensity,
  symbolEnergyFromMer,
} from 'slantpath/readings';
import { defineExample, literal } from '../lib/example.js';
import { choice, number } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const AVERAGES: Readonly<Record<DisplayAverage, string>> = {
  power: 'power (root mean square)',
  voltage: 'voltage',
  logarithm: 'logarithm (decibels)',
};
const WHAT = {
  spectrum: 'marker on the carrier and on the noise beside it',
  mer: 'MER',
} as const;
const only = (value: keyof typeof WHAT) => ({ choice: 'what', values: [value] }) as const;

/** Es/N0 behind a MER of an instrument with a ceiling, over all that it can show. */
function ceilingCurve(ceilingDb: number) {
  return Array.from({ length: 60 }, (_, i) => (i / 60) * (ceilingDb - 0.3)).map((valueDb) => ({
    x: valueDb,
    y: symbolEnergyFromMer({ valueDb, ceilingDb }).symbolEnergyToNoiseDb,
  }));
}

/** Signal to noise against the step over the noise that is read. */
const stepCurve = Array.from({ length: 80 }, (_, i) => 0.25 + i * 0.19).map((aboveDb) => {
  const signal = signalWithoutNoise({
    signalPlusNoiseDbm: aboveDb,
    noiseDbm: 0,
    standardUncertaintyDb: 0,
  });
  return { x: aboveDb, y: signal.carrierToNoiseDb };
});

export default defineExample({
  usual: ['what', 'markerDbm', 'noiseDbm', 'merDb', 'ceilingDb', 'standardUncertaintyDb'],
  inputs: {
    what: choice({ label: 'The meter shows', options: WHAT, value: 'spectrum' }),
    markerDbm: number({
      label: 'Marker on the top of the carrier',
      unit: 'dBm',
      value: -61.3,
      step: 0.5,
      onlyFor: only('spectrum'),
    }),
    noiseDbm: number({
      label: 'Marker on the noise beside it',
      unit: 'dBm',
      value: -67.4,
      step: 0.5,
      hint: 'On a free place of the transponder, or with the antenna turned away.',
      onlyFor: only('spectrum'),
    }),
    merDb: number({
      label: 'MER',
      unit: 'dB',
      value: 11.4,
      step: 0.1,
      min: -5,
      onlyFor: only('mer'),
    }),
    ceilingDb: number({
      label: 'Most that the meter can show',
      unit: 'dB',
      value: 20,
      step: 0.5,
      min: 5,
      max: 50,
      hint: 'From its data sheet, or what it shows on a carrier that is far stronger than needed.',
      onlyFor: only('mer'),
    }),
    standardUncertaintyDb: number({
      label: 'Standard uncertainty of the reading',
      unit: 'dB',
      value: 0.3,
      step: 0.1,
      min: 0,
      max: 5,
    }),
    resolutionBandwidthMHz: number({
      label: 'Resolution bandwidth',
      unit: 'MHz',
      value: 0.1,
      step: 0.1,
      min: 0.001,
      onlyFor: only('spectrum'),
    }),
    average: choice({ label: 'The display averages', options: AVERAGES, value: 'power' }),
    symbolRateMBd: number({ label: 'Symbol rate', unit: 'MBd', value: 27.5, step: 0.5, min: 0.01 }),
    rollOffRatio: number({ label: 'Roll-off', value: 0.2, step: 0.05, min: 0, max: 1 }),
    informationBitsPerSymbol: number({
      label: 'Information bits for each symbol',
      value: 1.98,
      step: 0.05,
      min: 0.1,
      max: 8,
      hint: 'After all coding: 1.98 for 8PSK 2/3, 1.49 for QPSK 3/4.',
    }),
  },
  fieldOf: (parameter) =>
    ({ valueDb: 'merDb', signalPlusNoiseDbm: 'markerDbm', carrierToDensityDbHz: 'markerDbm' })[
      parameter
    ],
  compute: ({
    what,
    markerDbm,
    noiseDbm,
    merDb,
    ceilingDb,
    standardUncertaintyDb,
    resolutionBandwidthMHz,
    average,
    symbolRateMBd,
    rollOffRatio,
    informationBitsPerSymbol,
  }) => {
    const reading = { resolutionBandwidthMHz, average };
    const signal = signalWithoutNoise({
      signalPlusNoiseDbm: markerDbm,
      noiseDbm,
      standardUncertaintyDb,
    });
    const mer = symbolEnergyFromMer({ valueDb: merDb, ceilingDb, standardUncertaintyDb });
    const symbolEnergyToNoiseDb =
      what === 'mer' ? mer.symbolEnergyToNoiseDb : signal.carrierToNoiseDb;
    const symbolRateDbHz = energyRatios({
      carrierToDensityDbHz: 0,
      symbolRateMBd,
      informationBitsPerSymbol,
    });
    const carrierToDensityDbHz = symbolEnergyToNoiseDb - symbolRateDbHz.symbolEnergyToNoiseDb;
    const { bitEnergyToNoiseDb } = energyRatios({
      carrierToDensityDbHz,
      symbolRateMBd,
      informationBitsPerSymbol,
    });
    return {
      kind: what === 'mer' ? mer.kind : signal.kind,
      standardUncertaintyDb:
        what === 'mer'
          ? mer.kind === 'value'
            ? mer.standardUncertaintyDb
            : null
          : signal.kind === 'signal'
            ? signal.standardUncertaintyDb
            : null,
      symbolEnergyToNoiseDb,
      bitEnergyToNoiseDb,
      carrierToDensityDbHz,
      occupiedCarrierToNoiseDb: symbolEnergyToNoiseDb + occupiedBandwidthDb(rollOffRatio),
      noiseDensityDbmHz: spectralDensity({ ...reading, markerDbm: noiseDbm }),
      carrierDbm: carrierPower({ ...reading, markerDbm: signal.levelDbm, symbolRateMBd }),
      noiseBandwidthRatio: noiseBandwidthRatio({ kind: 'gaussian' }),
    };
  },
  view: (
    {
      kind,
      standardUncertaintyDb,
      symbolEnergyToNoiseDb,
      bitEnergyToNoiseDb,
      carrierToDensityDbHz,
      occupiedCarrierToNoiseDb,
      noiseDensityDbmHz,
      carrierDbm,
    },
    { what, merDb, ceilingDb, markerDbm, noiseDbm },
  ) => {
    const value = shown(symbolEnergyToNoiseDb, 1);
    const sure = standardUncertaintyDb === null ? '' : shown(2 * standardUncertaintyDb, 1);
    const bound = { 'at-most': 'at most', 'at-least': 'at least', signal: '', value: '' }[kind];
    const above = markerDbm - noiseDbm;
    return {
      says:
        kind === 'at-most'
          ? `The carrier cannot be told from the noise: Es/N0 is at most ${value} dB.`
          : kind === 'at-least'
            ? `The meter is at its ceiling: Es/N0 is at least ${value} dB, and how much more it cannot tell.`
            : what === 'mer'
              ? `A MER of ${shown(merDb, 1)} dB means an Es/N0 of ${value} ± ${sure} dB.`
              : `The step of ${shown(above, 1)} dB means a C/N of ${value} ± ${sure} dB.`,
      outputs: [
        {
          label: 'Es/N0',
          value: symbolEnergyToNoiseDb,
          unit: 'dB',
          note: bound || 'C/N in the bandwidth of the symbol rate',
          main: true,
        },
        {
          label: 'Eb/N0',
          value: bitEnergyToNoiseDb,
          unit: 'dB',
          note: bound || 'for each information bit',
          main: true,
        },
        { label: 'C/N in the occupied bandwidth', value: occupiedCarrierToNoiseDb, unit: 'dB' },
        { label: 'C/N0', value: carrierToDensityDbHz, unit: 'dBHz', digits: 1 },
        ...(standardUncertaintyDb === null
          ? []
          : [
              {
                label: 'Standard uncertainty',
                value: standardUncertaintyDb,
                unit: 'dB',
                note: 'of each of these ratios',
              },
            ]),
        ...(what === 'spectrum'
          ? [
              {
                label: 'Power of the carrier',
                value: carrierDbm,
                unit: 'dBm',
                digits: 1,
                note: 'noise taken off, all of its bandwidth',
              },
              { label: 'Noise density', value: noiseDensityDbmHz, unit: 'dBm/Hz', digits: 1 },
            ]
          : []),
      ],
      figures: [
        what === 'mer'
          ? linePlot({
              title: 'Es/N0 behind a MER, for a meter with this ceiling',
              x: { label: 'MER shown', unit: 'dB', digits: 1, min: 0, max: ceilingDb + 1 },
              y: { label: 'Es/N0', unit: 'dB', digits: 1, min: 0, max: ceilingDb + 10 },
              series: [
                { label: 'behind this meter', points: ceilingCurve(ceilingDb) },
                {
                  label: 'a meter without a ceiling',
                  points: [
                    { x: 0, y: 0 },
                    { x: ceilingDb + 1, y: ceilingDb + 1 },
                  ],
                },
              ],
              rules: [{ axis: 'x', at: ceilingDb, label: 'ceiling' }],
              marks: [{ x: merDb, y: symbolEnergyToNoiseDb, label: 'this reading' }],
            })
          : linePlot({
              title: 'C/N against the step that the display shows',
              x: { label: 'Carrier with noise over noise', unit: 'dB', digits: 1, min: 0, max: 16 },
              y: { label: 'C/N', unit: 'dB', digits: 1, min: -12, max: 16 },
              series: [
                { label: 'noise taken off', points: stepCurve },
                {
                  label: 'step taken for C/N',
                  points: [
                    { x: 0, y: 0 },
                    { x: 16, y: 16 },
                  ],
                },
              ],
              marks: [{ x: above, y: symbolEnergyToNoiseDb, label: 'this reading' }],
            }),
      ],
      tables: [
        {
          caption: 'One carrier, four ratios',
          columns: ['Ratio', 'Noise in', 'Value / dB'],
          rows: [
            ['Es/N0', 'the symbol rate', shown(symbolEnergyToNoiseDb, 2)],
            ['C/N', 'the occupied bandwidth', shown(occupiedCarrierToNoiseDb, 2)],
            ['Eb/N0', 'the rate of information bits', shown(bitEnergyToNoiseDb, 2)],
            ['C/N0', 'one hertz', shown(carrierToDensityDbHz, 2)],
          ],
        },
      ],
    };
  },
  working: ({ what, merDb, ceilingDb }) =>
    what === 'mer' ? [{ plan: 'energy-from-mer', givens: { valueDb: merDb, ceilingDb } }] : [],
  hand: (
    { what, markerDbm, noiseDbm, standardUncertaintyDb, rollOffRatio, informationBitsPerSymbol },
    result,
  ) => {
    const energy = shown(result.symbolEnergyToNoiseDb, 2);
    const above = shown(markerDbm - noiseDbm, 1);
    return [
      ...(what === 'spectrum' && result.kind === 'signal'
        ? [
            {
              says: 'the step over the noise',
              formula: 'd = L - N',
              put: `d = ${shown(markerDbm, 1)} - (${shown(noiseDbm, 1)})`,
              result: `${above} dB`,
            },
            {
              says: 'the noise is taken off as a power',
              formula: 'E_s/N_0 = 10 \\cdot \\log_{10}(10^{d/10} - 1)',
              put: `E_s/N_0 = 10 \\cdot \\log_{10}(10^{${above}/10} - 1)`,
              result: `${energy} dB`,
            },
            {
              says: 'the uncertainty of the step grows as the carrier sinks into the noise',
              formula: 'u = \\frac{u_d}{1 - 10^{-d/10}}',
              put: `u = \\frac{${shown(standardUncertaintyDb, 2)}}{1 - 10^{-${above}/10}}`,
              result: `${shown(result.standardUncertaintyDb ?? 0, 2)} dB`,
            },
          ]
        : []),
      {
        says: 'for each information bit',
        formula: 'E_b/N_0 = E_s/N_0 - 10 \\cdot \\log_{10}(b)',
        put: `E_b/N_0 = ${energy} - 10 \\cdot \\log_{10}(${shown(informationBitsPerSymbol, 2)})`,
        result: `${shown(result.bitEnergyToNoiseDb, 2)} dB`,
      },
      {
        says: 'in the occupied bandwidth',
        formula: 'C/N = E_s/N_0 - 10 \\cdot \\log_{10}(1 + a)',
        put: `C/N = ${energy} - 10 \\cdot \\log_{10}(1 + ${shown(rollOffRatio, 2)})`,
        result: `${shown(result.occupiedCarrierToNoiseDb, 2)} dB`,
      },
    ];
  },
  code: ({ what, markerDbm, noiseDbm, merDb, ceilingDb, standardUncertaintyDb }) =>
    what === 'mer'
      ? `import { symbolEnergyFromMer } from 'slantpath/readings';

console.log(symbolEnergyFromMer(${literal({ valueDb: merDb, ceilingDb, standardUncertaintyDb })}));
`
      : `import { signalWithoutNoise } from 'slantpath/readings';

console.log(
  signalWithoutNoise(${literal({ signalPlusNoiseDbm: markerDbm, noiseDbm, standardUncertaintyDb })}),
);
`,
});
