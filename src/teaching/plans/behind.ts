/** Plans of worked solutions for peaking, distribution and acceptance. */

import { decideConformity } from '../../acceptance/index.js';
import {
  cableLossDb,
  type DistributionPart,
  dbuvToDbm,
  outletLevels,
} from '../../distribution/index.js';
import { normalExceedanceQuantile } from '../../numeric/normal.js';
import { bracketPeak } from '../../peaking/index.js';
import { constant, given, input, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const BRACKETING: SolutionPlan = {
  name: 'bracketing',
  title: 'How many turns back to the peak?',
  part: 'peaking',
  functionName: 'bracketPeak',
  givens: [
    given('turnsBack', 'n', 'n', 'turns back until the same level returned', 'turns', [2, 8, 0.25]),
    given('backlashTurns', 'b', 'b', 'turns lost in the backlash', 'turns', [0, 0.5, 0.25]),
  ],
  constants: [],
  steps: stepRows`
      h | h | half the way | (n - b) / 2 | turns | 3 | equal levels lie on both sides of the peak
      m | m | turns to turn back, the lost ones included | h + b | turns | 2
        | the backlash comes again when the sense changes
    `,
  compute: (inputs) => {
    const turnsBack = input(inputs, 'turnsBack');
    const backlashTurns = input(inputs, 'backlashTurns');
    const bracket = bracketPeak({
      peakLevelDbm: -30,
      referenceLevelDbm: -33,
      turnsOut: turnsBack,
      turnsBack,
      backlashTurns,
    });
    return { h: turnsBack - bracket.peakFromStartTurns, m: bracket.moveBackTurns };
  },
};

const CABLE: SolutionPlan = {
  name: 'cable-loss',
  title: 'How much does the cable take?',
  part: 'distribution',
  functionName: 'cableLossDb',
  givens: [
    given('lengthM', 'l', 'l', 'length', 'm', [10, 90, 1]),
    given('frequencyMHz', 'f', 'f', 'intermediate frequency', 'MHz', [950, 2150, 50]),
  ],
  constants: [
    constant(
      'a',
      'a',
      'loss by skin effect at 1000 MHz',
      19.965,
      'dB/100 m',
      'series 6, fitted to published points',
    ),
    constant(
      'b',
      'b',
      'loss in the dielectric at 1000 MHz',
      1.334,
      'dB/100 m',
      'series 6, fitted to published points',
    ),
  ],
  steps: stepRows`
      L | L | cable loss | (a * sqrt(f / 1000) + b * f / 1000) * l / 100 | dB | 1
        | skin effect and dielectric
    `,
  compute: (inputs) => ({
    L: cableLossDb({
      cable: { skinLossDbPer100m: 19.965, dielectricLossDbPer100m: 1.334 },
      lengthM: input(inputs, 'lengthM'),
      frequencyMHz: input(inputs, 'frequencyMHz'),
    }),
  }),
};

const CABLE_RUN: SolutionPlan = {
  name: 'cable-run',
  title: 'How much does a cable of this type take, as warm as it is?',
  part: 'distribution',
  functionName: 'cableLossDb',
  givens: [
    given(
      'skinLossDbPer100m',
      'a',
      'a',
      'loss by skin effect at 1000 MHz',
      'dB/100 m',
      [13, 27, 0.5],
    ),
    given(
      'dielectricLossDbPer100m',
      'b',
      'b',
      'loss in the dielectric at 1000 MHz',
      'dB/100 m',
      [0.5, 2, 0.1],
    ),
    given('lengthM', 'l', 'l', 'length', 'm', [10, 90, 1]),
    given('frequencyMHz', 'f', 'f', 'intermediate frequency', 'MHz', [950, 2150, 50]),
    given('temperatureC', 'T', 'T', 'temperature of the cable', 'degrees Celsius', [-10, 45, 5]),
  ],
  constants: [constant('g', 'g', 'growth of the loss', 0.2, 'percent/K', 'practice of the trade')],
  steps: stepRows`
      A | A | loss of 100 m at 20 °C | a * sqrt(f / 1000) + b * f / 1000 | dB | 2
        | skin effect and dielectric
      W | W | growth with the temperature | 1 + g / 100 * (T - 20) | | 3 | practice of the trade
      L | L | cable loss | A * W * l / 100 | dB | 1 | in proportion to the length
    `,
  compute: (inputs) => {
    const cable = {
      skinLossDbPer100m: input(inputs, 'skinLossDbPer100m'),
      dielectricLossDbPer100m: input(inputs, 'dielectricLossDbPer100m'),
    };
    const lengthM = input(inputs, 'lengthM');
    const frequencyMHz = input(inputs, 'frequencyMHz');
    const temperatureC = input(inputs, 'temperatureC');
    return {
      A: cableLossDb({ cable, lengthM: 100, frequencyMHz }),
      W: cableLossDb({
        cable: { skinLossDbPer100m: 1 },
        lengthM: 100,
        frequencyMHz: 1000,
        temperatureC,
      }),
      L: cableLossDb({ cable, lengthM, frequencyMHz, temperatureC }),
    };
  },
};

const OUTLET: SolutionPlan = {
  name: 'outlet-level',
  title: 'Which level is left at the outlet?',
  part: 'distribution',
  functionName: 'outletLevels',
  givens: [
    given('sourceLevelDbuv', 'S', 'S', 'level behind the outdoor unit', 'dBuV', [68, 84, 0.5]),
    given('cableLossDb', 'C', 'L_c', 'cable loss', 'dB', [4, 18, 0.5]),
    given('splitterLossDb', 'P', 'L_s', 'splitter loss', 'dB', [4, 10, 0.5]),
    given('outletLossDb', 'O', 'L_o', 'outlet loss', 'dB', [0.5, 3, 0.5]),
  ],
  constants: [],
  steps: stepRows`
      V | V | level at the outlet | S - C - P - O | dBuV | 1 | sum of decibels
    `,
  compute: (inputs) => {
    const [outlet] = outletLevels(
      {
        source: { levelDbuv: input(inputs, 'sourceLevelDbuv') },
        tree: {
          kind: 'attenuator',
          lossDb: input(inputs, 'cableLossDb'),
          to: {
            kind: 'attenuator',
            lossDb: input(inputs, 'splitterLossDb'),
            to: { kind: 'outlet', name: 'room', lossDb: input(inputs, 'outletLossDb') },
          },
        },
      },
      [1500],
    );
    return { V: outlet?.lowestDbuv ?? Number.NaN };
  },
};

const OUTLET_BUDGET: SolutionPlan = {
  name: 'outlet-budget',
  title: 'Which level is left at the outlet behind amplifier, cables, splitters and taps?',
  part: 'distribution',
  functionName: 'outletLevels',
  givens: [
    given('sourceLevelDbuv', 'S', 'S', 'level behind the outdoor unit', 'dBuV', [68, 84, 0.5]),
    given('amplifierGainDb', 'G', 'G', 'gain of the amplifiers', 'dB', [8, 24, 1]),
    given('cableLossDb', 'C', 'L_c', 'cable loss', 'dB', [8, 30, 0.5]),
    given('splitterLossDb', 'P', 'L_s', 'splitter loss', 'dB', [4, 10, 0.5]),
    given('tapLossDb', 'Q', 'L_t', 'tap loss', 'dB', [8, 20, 1]),
    given(
      'outletLossDb',
      'O',
      'L_o',
      'loss of outlet, connectors and the like',
      'dB',
      [0.5, 3, 0.5],
    ),
  ],
  constants: [],
  steps: stepRows`
      B | B | level behind the amplifiers | S + G | dBuV | 1 | sum of decibels
      V | V | level at the outlet | B - C - P - Q - O | dBuV | 1 | sum of decibels
    `,
  compute: (inputs) => {
    const loss = (name: string, to: DistributionPart): DistributionPart => ({
      kind: 'attenuator',
      lossDb: input(inputs, name),
      to,
    });
    const outlet: DistributionPart = {
      kind: 'outlet',
      name: 'room',
      lossDb: input(inputs, 'outletLossDb'),
    };
    const [room] = outletLevels(
      {
        source: { levelDbuv: input(inputs, 'sourceLevelDbuv') },
        tree: {
          kind: 'amplifier',
          gainDb: input(inputs, 'amplifierGainDb'),
          noiseFigureDb: 7,
          to: loss('cableLossDb', loss('splitterLossDb', loss('tapLossDb', outlet))),
        },
      },
      [1500],
    );
    return {
      B: input(inputs, 'sourceLevelDbuv') + (room?.terms[0]?.gainDb[0] ?? Number.NaN),
      V: room?.lowestDbuv ?? Number.NaN,
    };
  },
};

const LEVEL_UNITS: SolutionPlan = {
  name: 'level-in-dbm',
  title: 'Which level in dBm is this at 75 ohm?',
  part: 'distribution',
  functionName: 'dbuvToDbm',
  givens: [given('levelDbuv', 'V', 'V', 'level', 'dBuV', [40, 90, 0.5])],
  constants: [constant('Z', 'Z', 'impedance', 75, 'ohm', 'coaxial distribution')],
  steps: stepRows`
      P | P | level | V - 90 - 10 * log(Z) | dBm | 1 | power of a voltage across an impedance
    `,
  compute: (inputs) => ({ P: dbuvToDbm(input(inputs, 'levelDbuv')) }),
};

const ACCEPTANCE: SolutionPlan = {
  name: 'acceptance-limit',
  title: 'From which reading on does the level conform (risk 5 %)?',
  part: 'acceptance',
  functionName: 'decideConformity',
  givens: [
    given('limitDbuv', 'T', 'T', 'lowest level that conforms', 'dBuV', [45, 60, 0.5]),
    given('expandedUncertaintyDb', 'U', 'U', 'expanded uncertainty (k = 2)', 'dB', [0.5, 4, 0.1]),
  ],
  constants: [
    constant(
      'z',
      'z',
      'one-sided 95 % point of the normal distribution',
      normalExceedanceQuantile(0.05),
      '',
      'normal distribution',
    ),
  ],
  steps: stepRows`
      w | w | guard band | z * U / 2 | dB | 2 | JCGM 106:2012, section 8
      A | A | acceptance limit | T + w | dBuV | 2 | JCGM 106:2012, section 8
    `,
  compute: (inputs) => {
    const lowerLimit = input(inputs, 'limitDbuv');
    const decision = decideConformity({
      reading: lowerLimit,
      standardUncertainty: input(inputs, 'expandedUncertaintyDb') / 2,
      lowerLimit,
      rule: { kind: 'risk', riskPercent: 5 },
    });
    return { w: decision.guardBand, A: decision.acceptance.from ?? Number.NaN };
  },
};

/** Plans for peaking, distribution and acceptance. */
export const BEHIND_PLANS: readonly SolutionPlan[] = [
  BRACKETING,
  CABLE,
  CABLE_RUN,
  OUTLET,
  OUTLET_BUDGET,
  LEVEL_UNITS,
  ACCEPTANCE,
];
