/** Plans of worked solutions for what stands beside one's own link: a second instrument, a transmitter near by, other installations. */

import { acceptanceProbability } from '../../acceptance/index.js';
import { discriminationFromAxialRatio } from '../../antenna/index.js';
import { ingressLevel, screeningAttenuation } from '../../ingress/index.js';
import { pairedDifference } from '../../readings/index.js';
import { constant, given, input, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const AXIAL_RATIO: SolutionPlan = {
  name: 'axial-ratio',
  title: 'What discrimination does a circular wave have that is not quite round?',
  part: 'antenna',
  functionName: 'discriminationFromAxialRatio',
  givens: [given('axialRatioDb', 'a', 'A', 'axial ratio', 'dB', [0.5, 4, 0.1])],
  constants: [],
  steps: stepRows`
      r | r | axial ratio as a ratio of fields | 10 ^ (a / 20) | | 4 | definition
      x | X | cross-polar discrimination | 20 * log10((r + 1) / (r - 1)) | dB | 1
        | the two hands of the wave have the fields (r + 1) / 2 and (r - 1) / 2
    `,
  compute: (inputs) => {
    const axialRatioDb = input(inputs, 'axialRatioDb');
    return { r: 10 ** (axialRatioDb / 20), x: discriminationFromAxialRatio(axialRatioDb) };
  },
};

const INGRESS: SolutionPlan = {
  name: 'ingress-level',
  title: 'What level does a transmitter near by bring into a screened cable?',
  part: 'ingress',
  functionName: 'ingressLevel',
  givens: [
    given('eirpDbm', 'P', 'P', 'EIRP of the transmitter', 'dBm', [20, 60, 1]),
    given('distanceM', 'd', 'd', 'distance of the transmitter', 'm', [5, 200, 5]),
    given('frequencyMHz', 'f', 'f', 'frequency', 'MHz', [1010, 1990, 10]),
    given('screeningDb', 'S', 'S', 'screening of the cable', 'dB', [65, 85, 10]),
  ],
  constants: [
    constant('k', 'k', 'field of 1 mW at 1 m', 104.7712125, '', '10 log of 30 ohm times 10^9'),
    constant(
      'w',
      'w',
      'matched antenna of 0 dBi at 1 MHz, 75 ohm',
      31.53462238,
      'dB',
      'definition',
    ),
    constant('D', 'D', 'gain of a half-wave dipole', 2.15, 'dBi', 'definition'),
  ],
  steps: stepRows`
      F | E | field strength in dBµV/m | P - 20 * log10(d) + k | | 1 | free space
      L | L | level that a dipole would take from it | F + D - 20 * log10(f) + w | dBuV | 1
        | effective area of a matched antenna
      x | V | level in the cable | L - S | dBuV | 1 | practice of the trade
    `,
  compute: (inputs) => {
    const cable = { screeningClass: 'A', frequencyMHz: input(inputs, 'frequencyMHz') } as const;
    const found = ingressLevel({
      eirpDbm: input(inputs, 'eirpDbm'),
      distanceM: input(inputs, 'distanceM'),
      ...cable,
    });
    // Screening goes off in decibels: with that of one class added again, any other can be taken off.
    const dipoleDbuv = found.ingressDbuv + screeningAttenuation(cable);
    return {
      F: found.fieldDbuvPerM,
      L: dipoleDbuv,
      x: dipoleDbuv - input(inputs, 'screeningDb'),
    };
  },
};

const INSTRUMENT_OFFSET: SolutionPlan = {
  name: 'instrument-offset',
  title: 'How far may the difference of two instruments be off, read at three points?',
  part: 'readings',
  functionName: 'pairedDifference',
  givens: [
    given('firstPointDb', 'a', 'a', 'first less second, at the first point', 'dB', [0.8, 1.3, 0.1]),
    given('secondPointDb', 'b', 'b', 'at the second point', 'dB', [1.5, 2.1, 0.1]),
    given('thirdPointDb', 'c', 'c', 'at the third point', 'dB', [0.9, 1.9, 0.1]),
  ],
  constants: [
    constant(
      't',
      't',
      'coverage factor for 2 degrees of freedom',
      4.3026527297,
      '',
      'JCGM 100, G.2',
    ),
  ],
  steps: stepRows`
      m | m | mean difference | (a + b + c) / 3 | dB | 2 | mean
      s | s | standard deviation of one difference | sqrt(((a - m)^2 + (b - m)^2 + (c - m)^2) / 2) | dB | 3
        | JCGM 100:2008, 4.2.2
      u | u | standard uncertainty of the mean | s / sqrt(3) | dB | 3 | JCGM 100:2008, 4.2.3
      h | h | half width of the 95 % interval | t * u | dB | 2 | Student's t with 2 degrees of freedom
    `,
  compute: (inputs) => {
    const apart = pairedDifference({
      firstDb: [
        input(inputs, 'firstPointDb'),
        input(inputs, 'secondPointDb'),
        input(inputs, 'thirdPointDb'),
      ],
      secondDb: [0, 0, 0],
    });
    return {
      m: apart.differenceDb,
      s: apart.standardDeviationDb,
      u: apart.standardUncertaintyDb,
      h: apart.halfWidth95Db,
    };
  },
};

const SAMPLE_SIZE = 20;

const SAMPLE: SolutionPlan = {
  name: 'sample-of-a-lot',
  title: 'How probably is a lot accepted in which some installations are bad?',
  part: 'acceptance',
  functionName: 'acceptanceProbability',
  givens: [
    given('badPercent', 'p', 'p', 'share of bad installations in the lot', 'percent', [1, 15, 0.5]),
  ],
  constants: [constant('n', 'n', 'installations looked at', SAMPLE_SIZE, '', 'of the exercise')],
  steps: stepRows`
      b | b | share of bad ones as a ratio | p / 100 | | 3 | definition
      z | P_0 | probability that none of the sample is bad | (1 - b) ^ n | | 4 | binomial distribution
      o | P_1 | probability that exactly one is | n * b * (1 - b) ^ (n - 1) | | 4
        | binomial distribution
      a | P | probability of acceptance with at most one bad | 100 * (z + o) | percent | 1
        | one of both happens
    `,
  compute: (inputs) => {
    const badRatio = input(inputs, 'badPercent') / 100;
    const accepted = (acceptanceNumber: number) =>
      acceptanceProbability({ sampleSize: SAMPLE_SIZE, acceptanceNumber, badRatio });
    return {
      b: badRatio,
      z: accepted(0),
      o: accepted(1) - accepted(0),
      a: 100 * accepted(1),
    };
  },
};

/** Plans for what stands beside one's own link. */
export const AROUND_PLANS: readonly SolutionPlan[] = [
  AXIAL_RATIO,
  INGRESS,
  INSTRUMENT_OFFSET,
  SAMPLE,
];
