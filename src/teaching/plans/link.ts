/** Plans of worked solutions for `link`. */

import { BOLTZMANN_DBW_PER_K_HZ, SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import {
  carrierRatios,
  combineCarrierRatios,
  dvbMode,
  figureOfMerit,
  freeSpaceLoss,
  linkBudget,
  noiseFigureToTemperature,
  systemNoise,
} from '../../link/index.js';
import { constant, given, input, step, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const FREE_SPACE_LOSS: SolutionPlan = {
  name: 'free-space-loss',
  title: 'How much is lost on the way through free space?',
  part: 'link',
  functionName: 'freeSpaceLoss',
  givens: [
    given('frequencyGHz', 'f', 'f', 'frequency', 'GHz', [10.7, 12.7, 0.1]),
    given('slantRangeKm', 'r', 'r', 'slant range', 'km', [36000, 41000, 500]),
  ],
  constants: [
    constant(
      'K',
      'K',
      'loss at 1 GHz and 1 km',
      freeSpaceLoss({ frequencyGHz: 1, slantRangeKm: 1 }).constantDb,
      'dB',
      'ITU-R P.525: 20 log10(4 pi 1e12 / c)',
    ),
  ],
  steps: stepRows`
      F | F | frequency term | 20 * log(f) | dB | 2 | ITU-R P.525
      R | R | distance term | 20 * log(r) | dB | 2 | ITU-R P.525
      L | L | free-space loss | K + F + R | dB | 2 | ITU-R P.525
    `,
  compute: (inputs) => {
    const loss = freeSpaceLoss({
      frequencyGHz: input(inputs, 'frequencyGHz'),
      slantRangeKm: input(inputs, 'slantRangeKm'),
    });
    return { F: loss.frequencyTermDb, R: loss.distanceTermDb, L: loss.lossDb };
  },
};

const NOISE_TEMPERATURE: SolutionPlan = {
  name: 'noise-temperature',
  title: 'Which noise temperature belongs to this noise figure?',
  part: 'link',
  functionName: 'noiseFigureToTemperature',
  givens: [given('noiseFigureDb', 'nf', 'F', 'noise figure', 'dB', [0.2, 3, 0.1])],
  constants: [
    constant('T0', 'T_0', 'reference temperature', 290, 'K', 'definition of the noise figure'),
  ],
  steps: stepRows`
      T | T | noise temperature | T0 * (10^(nf / 10) - 1) | K | 1 | definition of the noise figure
    `,
  compute: (inputs) => ({ T: noiseFigureToTemperature(input(inputs, 'noiseFigureDb')) }),
};

const SYSTEM_NOISE: SolutionPlan = {
  name: 'system-noise',
  title: 'How much noise does the receiver see in all?',
  part: 'link',
  functionName: 'systemNoise',
  givens: [
    given('antennaNoiseK', 'Ta', 'T_a', 'antenna noise', 'K', [20, 80, 1]),
    given('feedLossDb', 'L', 'L', 'feed loss', 'dB', [0.1, 1, 0.1]),
    given('receiverNoiseK', 'Tr', 'T_r', 'receiver noise', 'K', [30, 120, 5]),
  ],
  constants: [constant('T0', 'T_0', 'temperature of the feed', 290, 'K', 'usual reference')],
  steps: stepRows`
      A | T_1 | antenna noise behind the feed | Ta * 10^(0 - L / 10) | K | 2
        | noise of an attenuator
      B | T_2 | noise of the feed itself | T0 * (1 - 10^(0 - L / 10)) | K | 2
        | noise of an attenuator
      T | T | system noise | A + B + Tr | K | 1 | sum of noise powers
    `,
  compute: (inputs) => {
    const noise = systemNoise({
      antennaNoiseK: input(inputs, 'antennaNoiseK'),
      feedLossDb: input(inputs, 'feedLossDb'),
      receiverNoiseK: input(inputs, 'receiverNoiseK'),
    });
    return { A: noise.antennaContributionK, B: noise.feedContributionK, T: noise.systemNoiseK };
  },
};

const FIGURE_OF_MERIT: SolutionPlan = {
  name: 'figure-of-merit',
  title: 'What is the figure of merit G/T?',
  part: 'link',
  functionName: 'figureOfMerit',
  givens: [
    given('antennaGainDbi', 'G', 'G', 'antenna gain', 'dBi', [34, 48, 0.5]),
    given('feedLossDb', 'L', 'L', 'feed loss', 'dB', [0.1, 1, 0.1]),
    given('systemNoiseK', 'T', 'T', 'system noise at the receiver', 'K', [60, 250, 5]),
  ],
  constants: [],
  steps: stepRows`
      M | G/T | figure of merit | G - L - 10 * log(T) | dB/K | 2 | definition
    `,
  compute: (inputs) => ({
    M: figureOfMerit({
      antennaGainDbi: input(inputs, 'antennaGainDbi'),
      feedLossDb: input(inputs, 'feedLossDb'),
      systemNoiseK: input(inputs, 'systemNoiseK'),
    }),
  }),
};

const DENSITY = [
  given(
    'carrierToNoiseDensityDbHz',
    'C',
    'C/N_0',
    'carrier over noise density',
    'dBHz',
    [75, 95, 0.5],
  ),
  given('symbolRateMBd', 'Rs', 'R_s', 'symbol rate', 'MBd', [5, 45, 0.5]),
];
const SYMBOL_STEP = step(
  'E',
  'E_s/N_0',
  'energy per symbol over noise density',
  'C - 10 * log(Rs * 10^6)',
  'dB',
  2,
  'definition',
);

const ES_N0: SolutionPlan = {
  name: 'symbol-energy',
  title: 'Which Es/N0 belongs to this C/N0?',
  part: 'link',
  functionName: 'carrierRatios',
  givens: DENSITY,
  constants: [],
  steps: [SYMBOL_STEP],
  compute: (inputs) => ({
    E: carrierRatios(
      { carrierToNoiseDensityDbHz: input(inputs, 'carrierToNoiseDensityDbHz') },
      // The bits do not enter; the function wants them for the other ratios.
      { symbolRateMBd: input(inputs, 'symbolRateMBd'), bitsPerSymbol: 1 },
    ).esN0Db,
  }),
};

const EB_N0: SolutionPlan = {
  name: 'bit-energy',
  title: 'Which Eb/N0 belongs to this C/N0?',
  part: 'link',
  functionName: 'carrierRatios',
  givens: [
    ...DENSITY,
    given('bitsPerSymbol', 'b', 'b', 'useful bits per symbol', '', [0.8, 3, 0.1]),
  ],
  constants: [],
  steps: [
    SYMBOL_STEP,
    ...stepRows`
      B | E_b/N_0 | energy per useful bit over noise density | E - 10 * log(b) | dB | 2
        | definition
    `,
  ],
  compute: (inputs) => {
    const ratios = carrierRatios(
      { carrierToNoiseDensityDbHz: input(inputs, 'carrierToNoiseDensityDbHz') },
      {
        symbolRateMBd: input(inputs, 'symbolRateMBd'),
        bitsPerSymbol: input(inputs, 'bitsPerSymbol'),
      },
    );
    return { E: ratios.esN0Db, B: ratios.ebN0Db };
  },
};

const COMBINED: SolutionPlan = {
  name: 'combined-ratio',
  title: 'Which C/N is left of uplink and downlink together?',
  part: 'link',
  functionName: 'combineCarrierRatios',
  givens: [
    given('uplinkRatioDb', 'U', '(C/N)_u', 'carrier to noise of the uplink', 'dB', [14, 26, 0.5]),
    given(
      'downlinkRatioDb',
      'D',
      '(C/N)_d',
      'carrier to noise of the downlink',
      'dB',
      [10, 22, 0.5],
    ),
  ],
  constants: [],
  steps: stepRows`
      T | C/N | carrier to noise of both | 0 - 10 * log(10^(0 - U / 10) + 10^(0 - D / 10)) | dB
        | 2 | noise powers add
    `,
  compute: (inputs) => ({
    T: combineCarrierRatios([input(inputs, 'uplinkRatioDb'), input(inputs, 'downlinkRatioDb')]),
  }),
};

/** The terminal of the margin exercise; its clear-sky noise does not depend on the frequency. */
const NOISE_FIGURE_DB = 0.7;
const MODE = dvbMode('DVB-S2', 'QPSK 3/4');

const budgetOf = (inputs: Readonly<Record<string, number>>) =>
  linkBudget({
    carrier: { symbolRateMBd: input(inputs, 'symbolRateMBd'), mode: MODE },
    downlink: {
      eirpDbw: input(inputs, 'eirpDbw'),
      frequencyGHz: input(inputs, 'frequencyGHz'),
      slantRangeKm: input(inputs, 'slantRangeKm'),
    },
    receiver: { diameterM: input(inputs, 'diameterM'), noiseFigureDb: NOISE_FIGURE_DB },
  });

const MARGIN: SolutionPlan = {
  name: 'clear-sky-margin',
  title:
    'What margin does the link have in clear sky (QPSK 3/4, noise figure 0.7 dB, efficiency 0.65)?',
  part: 'link',
  functionName: 'linkBudget',
  givens: [
    given(
      'eirpDbw',
      'E',
      'EIRP',
      'power that the satellite sends towards the station',
      'dBW',
      [46, 56, 0.5],
    ),
    given('frequencyGHz', 'f', 'f', 'frequency', 'GHz', [10.7, 12.7, 0.1]),
    given('slantRangeKm', 'r', 'r', 'slant range', 'km', [36000, 41000, 500]),
    given('diameterM', 'D', 'D', 'diameter of the reflector', 'm', [0.6, 1.8, 0.1]),
    given('symbolRateMBd', 'Rs', 'R_s', 'symbol rate', 'MBd', [5, 30, 0.5]),
  ],
  constants: [
    ...FREE_SPACE_LOSS.constants,
    constant(
      'c',
      'c',
      'speed of light in metres and nanoseconds',
      SPEED_OF_LIGHT_M_PER_S / 1e9,
      'm/ns',
      'SI, exact',
    ),
    constant(
      'T',
      'T',
      'system noise of the terminal in clear sky',
      budgetOf({
        eirpDbw: 50,
        frequencyGHz: 11.7,
        slantRangeKm: 38000,
        diameterM: 0.9,
        symbolRateMBd: 20,
      }).systemNoise.systemNoiseK,
      'K',
      'linkBudget for this noise figure',
    ),
    constant('k', 'k', 'Boltzmann constant', BOLTZMANN_DBW_PER_K_HZ, 'dBW/K/Hz', 'SI, exact'),
    constant(
      'N',
      'E_s/N_{0,min}',
      'threshold of the mode',
      MODE.esN0Db,
      'dB',
      'EN 302 307-1, Table 13',
    ),
  ],
  steps: [
    ...FREE_SPACE_LOSS.steps,
    ...stepRows`
      G | G | antenna gain | 20 * log(pi * D * f / c) - 10 * log(1 / 0.65) | dBi | 2
        | definition of aperture gain
      C | C/N_0 | carrier over noise density | E - L + G - 10 * log(T) - k | dBHz | 2
        | sum of decibels
      S | E_s/N_0 | energy per symbol over noise density | C - 10 * log(Rs * 10^6) | dB | 2
        | definition
      M | M | margin | S - N | dB | 2 | definition
    `,
  ],
  compute: (inputs) => {
    const loss = FREE_SPACE_LOSS.compute({
      frequencyGHz: input(inputs, 'frequencyGHz'),
      slantRangeKm: input(inputs, 'slantRangeKm'),
    });
    if (typeof loss === 'string') return loss;
    const budget = budgetOf(inputs);
    return {
      ...loss,
      G: budget.terms.find(({ name }) => name === 'antenna-gain')?.contributionDb ?? Number.NaN,
      C: budget.downlinkCarrierToNoiseDensityDbHz,
      S: budget.esN0Db,
      M: budget.marginDb,
    };
  },
};

/** Plans for `link`. */
export const LINK_PLANS: readonly SolutionPlan[] = [
  FREE_SPACE_LOSS,
  NOISE_TEMPERATURE,
  SYSTEM_NOISE,
  FIGURE_OF_MERIT,
  MARGIN,
  ES_N0,
  EB_N0,
  COMBINED,
];
