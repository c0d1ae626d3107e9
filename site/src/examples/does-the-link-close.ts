/** Does the link close? The budget as a waterfall, a field for each line. */

import { type LinkBudget, linkBudget } from 'slantpath/link';
import { defineExample, literal } from '../lib/example.js';
import { number, optionalNumber, place } from '../lib/inputs/inputs.js';
import {
  diameter,
  frequency,
  linkOf,
  loss,
  mode,
  sight,
  slot,
  symbolRate,
  termWords,
} from '../lib/inputs/linkInputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { waterfall } from '../lib/pictures/waterfall.js';
import { reflector, towards } from '../lib/plans.js';

/** Lines that are large whatever one does; the others decide. */
const LARGE = new Set([
  'satellite-eirp',
  'free-space-loss',
  'antenna-gain',
  'system-noise',
  'boltzmann',
  'symbol-rate',
]);

/** The lines that make the ideal Es/N0, and those that then take from it. */
function parted({ terms }: LinkBudget) {
  const change = (term: (typeof terms)[number]) => ({
    label: termWords(term),
    change: term.contributionDb,
  });
  const large = terms.filter(({ name }) => LARGE.has(name));
  const small = terms.filter(
    ({ name, contributionDb }) => !LARGE.has(name) && contributionDb !== 0,
  );
  return {
    large: large.map(change),
    small: small.map(change),
    idealDb: large.reduce((sum, { contributionDb }) => sum + contributionDb, 0),
  };
}

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'frequencyGHz', 'eirpDbw', 'modeName', 'diameterM'],
  inputs: {
    station: place(),
    orbitalLongitudeDeg: slot(),
    frequencyGHz: frequency(11.7),
    eirpDbw: number({
      label: 'EIRP of the satellite at the station',
      unit: 'dBW',
      value: 50,
      step: 0.5,
      min: 30,
      max: 65,
      hint: 'From the contours of its footprint.',
    }),
    symbolRateMBd: symbolRate(27.5),
    modeName: mode('8PSK 2/3'),
    diameterM: diameter(),
    noiseFigureDb: loss('Noise figure of the low-noise block', 0.7),
    clearAttenuationDb: loss('Gas and thin cloud', 0.2),
    rainDb: loss('Rain', 0, 'Takes twice: the carrier falls and the noise rises.'),
    pointingOffsetDeg: number({
      label: 'Pointing error',
      unit: '°',
      value: 0.1,
      step: 0.05,
      min: 0,
      max: 1,
    }),
    polarizationLossDb: loss('Polarization mismatch', 0.05),
    feedLossDb: loss('Loss before the amplifier', 0.1),
    implementationLossDb: loss('Implementation loss of the receiver', 0.8),
    interferenceRatioDb: optionalNumber({
      label: 'Carrier over interference of adjacent satellites',
      unit: 'dB',
      value: 22,
      step: 1,
      min: 0,
      empty: 'none',
    }),
  },
  compute: ({
    station,
    orbitalLongitudeDeg,
    interferenceRatioDb,
    rainDb,
    polarizationLossDb,
    feedLossDb,
    ...fields
  }) => {
    const { slantRangeKm, elevationDeg, hidden } = sight(station, orbitalLongitudeDeg);
    const link = linkOf({ ...fields, slantRangeKm });
    const budget = linkBudget({
      ...link,
      downlink: { ...link.downlink, rainDb },
      receiver: { ...link.receiver, polarizationLossDb, feedLossDb },
      impairments:
        interferenceRatioDb === undefined
          ? []
          : [{ name: 'adjacent-satellites', carrierToImpairmentDb: interferenceRatioDb }],
    });
    return { hidden, elevationDeg, slantRangeKm, budget };
  },
  fieldOf: (parameter) => (parameter.startsWith('impairments') ? 'interferenceRatioDb' : undefined),
  view: ({ hidden, elevationDeg, slantRangeKm, budget }, { orbitalLongitudeDeg, modeName }) => {
    if (hidden)
      return {
        says: `The slot at ${longitudeText(orbitalLongitudeDeg)} is hidden by the Earth from this station.`,
        outputs: [{ label: 'Elevation', value: elevationDeg, unit: '°' }],
      };
    const { large, small, idealDb } = parted(budget);
    const { marginDb } = budget;
    return {
      says:
        marginDb >= 0
          ? `The link closes for ${modeName} with ${shown(marginDb, 1)} dB to spare.`
          : `The link does not close for ${modeName}: ${shown(-marginDb, 1)} dB are lacking.`,
      outputs: [
        { label: 'Margin', value: marginDb, unit: 'dB', main: true },
        {
          label: 'Es/N0 with interference',
          value: budget.esN0Db,
          unit: 'dB',
          note: `needed ${shown(budget.requiredEsN0Db)} dB`,
          main: true,
        },
        {
          label: 'C/N0 of the way down',
          value: budget.downlinkCarrierToNoiseDensityDbHz,
          unit: 'dBHz',
        },
        { label: 'G/T', value: budget.figureOfMeritDbPerK, unit: 'dB/K' },
        { label: 'System noise', value: budget.systemNoise.systemNoiseK, unit: 'K', digits: 1 },
        { label: 'Slant range', value: slantRangeKm, unit: 'km', digits: 1 },
      ],
      figures: [
        waterfall({
          title: 'The large lines: from the satellite’s power to an ideal Es/N0',
          unit: 'dB',
          steps: large,
          end: 'ideal Es/N0',
        }),
        waterfall({
          title: 'The small lines, magnified: from the ideal Es/N0 to the margin',
          unit: 'dB',
          start: { label: 'ideal Es/N0', value: idealDb },
          steps: small,
          end: 'margin',
        }),
      ],
      tables: [
        {
          caption: 'The budget in the order of the hand calculation',
          columns: ['Line', 'Contribution', 'Unit', 'Sum so far'],
          rows: budget.terms.map((term) => [
            termWords(term),
            shown(term.contributionDb),
            term.unit,
            shown(term.runningDb),
          ]),
        },
      ],
    };
  },
  working: (
    { station, orbitalLongitudeDeg, frequencyGHz, diameterM, noiseFigureDb, feedLossDb },
    { hidden, slantRangeKm, budget: { antennaNoise, systemNoise } },
  ) =>
    hidden
      ? []
      : [
          ...towards(['slant-range'], station, orbitalLongitudeDeg),
          { plan: 'free-space-loss', givens: { frequencyGHz, slantRangeKm } },
          ...reflector(diameterM, frequencyGHz).slice(1),
          { plan: 'noise-temperature', givens: { noiseFigureDb } },
          {
            plan: 'system-noise',
            givens: {
              antennaNoiseK: antennaNoise.antennaNoiseK,
              feedLossDb,
              receiverNoiseK: systemNoise.receiverContributionK,
            },
          },
        ],
  code: (values, { slantRangeKm }) =>
    `import { dvbMode, linkBudget } from 'slantpath/link';

const budget = linkBudget({
  carrier: {
    symbolRateMBd: ${literal(values.symbolRateMBd)},
    mode: dvbMode('DVB-S2', ${literal(values.modeName)}),
    implementationLossDb: ${literal(values.implementationLossDb)},
  },
  downlink: {
    eirpDbw: ${literal(values.eirpDbw)},
    frequencyGHz: ${literal(values.frequencyGHz)},
    slantRangeKm: ${slantRangeKm.toFixed(3)},
    clearAttenuationDb: ${literal(values.clearAttenuationDb)},
    rainDb: ${literal(values.rainDb)},
  },
  receiver: {
    diameterM: ${literal(values.diameterM)},
    noiseFigureDb: ${literal(values.noiseFigureDb)},
    pointingOffsetDeg: ${literal(values.pointingOffsetDeg)},
    polarizationLossDb: ${literal(values.polarizationLossDb)},
    feedLossDb: ${literal(values.feedLossDb)},
  },${
    values.interferenceRatioDb === undefined
      ? ''
      : `
  impairments: [{ name: 'adjacent-satellites', carrierToImpairmentDb: ${literal(values.interferenceRatioDb)} }],`
  }
});
for (const { name, contributionDb, runningDb } of budget.terms)
  console.log(name, contributionDb.toFixed(2), runningDb.toFixed(2));
console.log(budget.marginDb);
`,
});
