import { powerDensity } from 'slantpath/antenna';
import {
  adjacentSatellites,
  carrierRatios,
  cascadeNoise,
  combineCarrierRatios,
  drivenUplink,
  dvbMode,
  eirpForFlux,
  figureOfMerit,
  freeSpaceLoss,
  linkBudget,
  marginForAvailability,
  noiseFigureToTemperature,
  stationEirp,
  systemNoise,
  transponderState,
  uplinkBudget,
} from 'slantpath/link';
import { BOLTZMANN_J_PER_K } from '../../src/constants.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

/** Distance in kilometres whose free-space loss at a frequency is the one that the book starts from. */
const rangeFor = (lossDb: number, frequencyGHz: number): number =>
  10 ** ((lossDb - freeSpaceLoss({ frequencyGHz, slantRangeKm: 1 }).lossDb) / 20);

/** C/N0 of a path whose free-space loss is given. */
const cn0 = (eirpDbw: number, freeSpaceDb: number, figureOfMeritDbPerK: number, otherLossDb = 0) =>
  uplinkBudget({
    eirpDbw,
    frequencyGHz: 12,
    slantRangeKm: rangeFor(freeSpaceDb, 12),
    otherLossDb,
    figureOfMeritDbPerK,
  }).carrierToNoiseDensityDbHz;

/** Books round 10 log k to -228.6. */
const BOOK_CONSTANT_DB = 0.00083;

const interference = (separationDeg: number, kind: 'S.465-6' | 'S.580-6', wanted: number) => {
  const result = adjacentSatellites({
    pattern: { kind, diameterM: 5, frequencyGHz: 12 },
    wantedGainDbi: 50,
    eirpDensityDbwPerMHz: wanted,
    neighbours: [{ separationDeg, eirpDensityDbwPerMHz: 0 }],
  });
  return result.kind === 'interference' ? result.carrierToInterferenceDb : Number.NaN;
};

const clearLink = {
  carrier: { symbolRateMBd: 30, mode: { esN0Db: 10, bitsPerSymbol: 2 } },
  downlink: {
    eirpDbw: 50,
    frequencyGHz: 12,
    slantRangeKm: 38000,
    // Sky and background together give the book's 272 K in rain.
    meanRadiatingTemperatureK: 272 + 2.7,
  },
  receiver: {
    diameterM: 1,
    noiseFigureDb: 0,
    backEndNoiseK: 544 - 2.7,
    groundShareRatio: 0,
  },
} as const;

/** Attenuation at which the margin of 7.4 dB is used up, by bisection. */
function fadeAtThreshold(): number {
  let low = 0;
  let high = 20;
  for (let i = 0; i < 60; i++) {
    const attenuationDb = (low + high) / 2;
    const { marginDb } = marginForAvailability({
      link: clearLink,
      fade: () => ({ attenuationDb }),
      exceededPercent: 1,
    });
    if (marginDb > 7.4) high = attenuationDb;
    else low = attenuationDb;
  }
  return low;
}

const LOSSES = {
  carrier: { symbolRateMBd: 1, mode: dvbMode('DVB-S2', 'QPSK 1/2') },
  downlink: {
    eirpDbw: 40,
    frequencyGHz: 12,
    slantRangeKm: rangeFor(207, 12),
    clearAttenuationDb: 0.5,
  },
  receiver: { diameterM: 1, noiseFigureDb: 1, feedLossDb: 1.5, pointingLossDb: 0.5 },
};

/** What the library gives for each example. */
const COMPUTED: Readonly<Record<string, () => number>> = {
  // The book's constant 32.4 instead of 32.4478.
  'Roddy-12.3': () => freeSpaceLoss({ frequencyGHz: 6, slantRangeKm: 42000 }).lossDb - 0.04778,
  'Roddy-12.4': () =>
    linkBudget(LOSSES)
      .terms.filter(({ name }) => /loss|attenuation/.test(name))
      .reduce((sum, { contributionDb }) => sum - contributionDb, 0),
  'Roddy-12.5a': () =>
    systemNoise({ antennaNoiseK: 35, receiverNoiseK: 100 }).systemNoiseK * BOLTZMANN_J_PER_K,
  'Roddy-12.5b': () =>
    systemNoise({ antennaNoiseK: 35, receiverNoiseK: 100 }).systemNoiseK *
    BOLTZMANN_J_PER_K *
    36e18,
  'Roddy-12.6': () =>
    cascadeNoise([
      { noiseTemperatureK: 120, gainDb: 40 },
      { noiseTemperatureK: noiseFigureToTemperature(12), gainDb: 0 },
    ]),
  'Roddy-12.9': () => cn0(48, 206, 19.5, 4),
  'Roddy-12.10': () =>
    eirpForFlux({ fluxDensityDbwPerM2: -120, slantRangeKm: rangeFor(207, 14), lossDb: 2 }),
  'Roddy-12.12': () => 22 + 10 * Math.log10(36e6) - cn0(0, 200, 31),
  'Roddy-12.13b': () =>
    carrierRatios({ ebN0Db: 9.6 }, { symbolRateMBd: 30, bitsPerSymbol: 2 })
      .carrierToNoiseDensityDbHz - cn0(0, 200, 31),
  'Roddy-12.14': () => {
    const { eirpDbw } = transponderState(
      {
        saturationFluxDensityDbwPerM2: -90,
        saturatedEirpDbw: 25,
        outputBackOff: { kind: 'fixed', outputBackOffDb: 6 },
      },
      -101,
    );
    return cn0(eirpDbw, 196, 41, 1.5);
  },
  'Roddy-12.15': () =>
    56 -
    stationEirp({ saturatedPowerW: 1, outputBackOffDb: 6, feedLossDb: 2, antennaGainDbi: 50 })
      .eirpDbw,
  'Roddy-12.17': fadeAtThreshold,
  'Roddy-12.19a': () =>
    drivenUplink({
      saturationFluxDensityDbwPerM2: -67.5,
      inputBackOffDb: 11,
      // The frequency at which an isotropic antenna has -37 dBm2.
      frequencyGHz: 10 ** ((37 - 21.45568) / 20),
      figureOfMeritDbPerK: -11.6,
    }).carrierToNoiseDensityDbHz,
  'Roddy-12.19b': () => cn0(20.6, 196.7, 40.7),
  'Roddy-12.19c': () => combineCarrierRatios([101.5, 93.2]),
  'Roddy-12.20': () => combineCarrierRatios([23, 20, 24]),
  'Roddy-13.4': () => interference(4, 'S.580-6', 0) - interference(2, 'S.580-6', 0),
  'RC-19.14.1': () =>
    cn0(
      stationEirp({ saturatedPowerW: 600, feedLossDb: 1.5, antennaGainDbi: 50 }).eirpDbw,
      200,
      -8,
      3,
    ),
  'RC-19.14.2': () =>
    drivenUplink({
      saturationFluxDensityDbwPerM2: -98,
      inputBackOffDb: 10,
      frequencyGHz: 14,
      figureOfMeritDbPerK: 3,
      feedLossDb: 1,
    }).carrierToNoiseDensityDbHz,
  'RC-19.16.1': () => combineCarrierRatios([88, 78]),
  'RC-19.17.1': () =>
    carrierRatios({ ebN0Db: 9.6 }, { symbolRateMBd: 1.544, bitsPerSymbol: 1 })
      .carrierToNoiseDensityDbHz,
  'Maini-7.1': () =>
    powerDensity({ diameterM: 0.3, frequencyGHz: 10, powerW: 10, antennaGainDbi: 20 }, 3.6e7)
      .powerDensityWPerM2,
  'Maini-7.2': () => freeSpaceLoss({ frequencyGHz: 4, slantRangeKm: 10 }).lossDb,
  'Maini-7.4': () =>
    cascadeNoise([
      { noiseTemperatureK: 20, gainDb: 30 },
      { noiseTemperatureK: 360, gainDb: 10 },
      { noiseTemperatureK: 1000, gainDb: 0 },
    ]),
  'Maini-7.6': () =>
    systemNoise({ antennaNoiseK: 50, feedLossDb: 10 * Math.log10(1.778), receiverNoiseK: 30 })
      .feedContributionK,
  'Maini-7.9': () => interference(4, 'S.465-6', 5),
  'Maini-7.11': () => combineCarrierRatios([40, 35]),
  'Maini-7.13a': () =>
    systemNoise({
      antennaNoiseK: 60,
      feedLossDb: 10 * Math.log10(1.12),
      receiverNoiseK: cascadeNoise([
        { noiseTemperatureK: 140, gainDb: 60 },
        { noiseTemperatureK: 10000, gainDb: 0 },
      ]),
    }).systemNoiseK,
  'Maini-7.13b': () => figureOfMerit({ antennaGainDbi: 60, feedLossDb: 0.5, systemNoiseK: 224.65 }),
  'Blake-20.5': () =>
    figureOfMerit({
      antennaGainDbi: 40,
      feedLossDb: 0.4,
      systemNoiseK: systemNoise({ antennaNoiseK: 15, feedLossDb: 0.4, receiverNoiseK: 40 })
        .systemNoiseK,
    }),
  'Blake-20.6': () => noiseFigureToTemperature(1.5),
  'Beasley-13.4': () => figureOfMerit({ antennaGainDbi: 45, systemNoiseK: 25 + 70 + 2 }),
};

/** What of the books' own rounded constants comes on top of the last printed digit. */
const ROUNDED: Readonly<Record<string, number>> = {
  // 21.45 for 21.4557.
  'Roddy-12.10': 0.0057,
  'RC-19.14.2': 0.0057,
  // c = 3e8 m/s.
  'Maini-7.2': 0.006,
  // k = 1.38e-23 for 1.380649e-23.
  'Roddy-12.5a': 1e-24,
  'Roddy-12.5b': 4e-5,
};

/** One unit of the last printed digit: some books cut instead of rounding. */
function lastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e');
  const digits = mantissa.split('.')[1]?.length ?? 0;
  return 10 ** (Number(exponent) - digits);
}

const rows = referenceTable('link/textbooks.csv');

publishedTable({
  part: 'link',
  quantity: 'textbook examples, as printed',
  unit: '',
  source:
    'Roddy (2001), Roddy and Coolen, Maini and Agrawal (2010), Blake, Beasley and Miller: link chapters',
  status: 'published',
  limit: 0.05,
  reason:
    'half the last printed digit of each example (a whole one where the book cuts), and its rounded constants',
  count: 30,
  cases: () =>
    rows
      .filter((row) => row['published'] !== '')
      .map((row) => {
        const id = row['id'] ?? '';
        const cut = id === 'Roddy-12.5a';
        return {
          name: `${id} ${row['quantity']}`,
          expected: cell(row, 'published'),
          got: COMPUTED[id]?.() ?? Number.NaN,
          limit:
            lastDigit(row['published'] ?? '') * (cut ? 1 : 0.501) +
            (ROUNDED[id] ?? BOOK_CONSTANT_DB * lastDigit(row['published'] ?? '')),
        };
      }),
});

publishedTable({
  part: 'link',
  quantity: 'textbook examples, recomputed to more digits',
  unit: 'relative',
  source: 'the same examples recomputed independently with the rounded constants of the books',
  status: 'recomputed',
  limit: 3e-4,
  reason: 'constants that the books round: 228.6, 21.45, 1.38e-23, 32.4',
  relative: true,
  count: 32,
  cases: () =>
    rows.map((row) => ({
      name: row['id'] ?? '',
      expected: cell(row, 'recomputed'),
      got: COMPUTED[row['id'] ?? '']?.() ?? Number.NaN,
      ...(row['id'] === 'Roddy-12.5a' || row['id'] === 'Roddy-12.5b' ? { limit: 5e-4 } : {}),
    })),
});
