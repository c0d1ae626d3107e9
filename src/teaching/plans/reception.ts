/** Plans of worked solutions for tuning, readings, wind and transmitting stations. */

import { symbolEnergyFromMer } from '../../readings/index.js';
import { flangeDensity, lineUp } from '../../transmit/index.js';
import { intermediateFrequency } from '../../tuning/index.js';
import { ballast, mastUnderWind, reflectorLoad, velocityPressure } from '../../wind/index.js';
import { constant, given, input, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const INTERMEDIATE_FREQUENCY: SolutionPlan = {
  name: 'intermediate-frequency',
  title: 'At what intermediate frequency is the carrier found?',
  part: 'tuning',
  functionName: 'intermediateFrequency',
  givens: [
    given('frequencyGHz', 'f', 'f', 'radio frequency', 'GHz', [10.8, 11.6, 0.02]),
    given('localOscillatorGHz', 'o', 'f_o', 'local oscillator', 'GHz', [9.75, 10, 0.25]),
  ],
  constants: [],
  steps: stepRows`
      g | g | difference in gigahertz | abs(f - o) | GHz | 4 | difference of the mixer
      m | f_i | intermediate frequency | 1000 * g | MHz | 1 | a gigahertz is 1000 megahertz
    `,
  compute: (inputs) => {
    const { intermediateFrequencyMHz } = intermediateFrequency({
      frequencyGHz: input(inputs, 'frequencyGHz'),
      localOscillatorGHz: input(inputs, 'localOscillatorGHz'),
    });
    return { g: intermediateFrequencyMHz / 1000, m: intermediateFrequencyMHz };
  },
};

const ENERGY_FROM_MER: SolutionPlan = {
  name: 'energy-from-mer',
  title: 'Which Es/N0 lies behind the MER that the instrument shows?',
  part: 'readings',
  functionName: 'symbolEnergyFromMer',
  givens: [
    given('valueDb', 'm', 'M', 'MER shown', 'dB', [8, 16, 0.1]),
    given('ceilingDb', 'c', 'C', 'most that the instrument can show', 'dB', [19, 26, 1]),
  ],
  constants: [],
  steps: stepRows`
      e | e | error power shown | 10 ^ (-m / 10) | | 5 | power ratio
      o | o | error power of the instrument itself | 10 ^ (-c / 10) | | 5 | power ratio
      x | E_s/N_0 | energy per symbol over noise density, Es/N0 | -10 * log10(e - o) | dB | 2
        | independent error powers add, so they are taken off as powers
    `,
  compute: (inputs) => {
    const valueDb = input(inputs, 'valueDb');
    const ceilingDb = input(inputs, 'ceilingDb');
    return {
      e: 10 ** (-valueDb / 10),
      o: 10 ** (-ceilingDb / 10),
      x: symbolEnergyFromMer({ valueDb, ceilingDb }).symbolEnergyToNoiseDb,
    };
  },
};

const WIND_FORCE: SolutionPlan = {
  name: 'wind-moment',
  title: 'What moment does the wind bring to the foot of the mast?',
  part: 'wind',
  functionName: 'reflectorLoad',
  givens: [
    given('windSpeedMPerS', 'v', 'v', 'speed of the wind', 'm/s', [15, 40, 1]),
    given('diameterM', 'D', 'D', 'diameter', 'm', [0.6, 1.8, 0.1]),
    given('heightAboveFootM', 'h', 'h', 'height of its centre above the foot', 'm', [0.8, 3, 0.1]),
  ],
  constants: [
    constant('d', '\\rho', 'density of air', 1.25, 'kg/m^3', 'EN 1991-1-4, 4.5 (recommended)'),
    constant('c', 'c', 'force coefficient of a solid dish', 1.3, '', 'practice of the trade'),
  ],
  steps: stepRows`
      q | q | pressure of the wind | d * v ^ 2 / 2 | Pa | 0 | EN 1991-1-4, 4.5
      A | A | area of the reflector | pi * D ^ 2 / 4 | m^2 | 3 | area of a circle
      F | F | force | c * q * A | N | 0 | EN 1991-1-4, 5.3
      M | M | moment at the foot of the mast | F * h | N m | 0 | force times lever
    `,
  compute: (inputs) => {
    const diameterM = input(inputs, 'diameterM');
    const pressurePa = velocityPressure({ windSpeedMPerS: input(inputs, 'windSpeedMPerS') });
    const load = reflectorLoad({
      diameterM,
      pressurePa,
      heightAboveFootM: input(inputs, 'heightAboveFootM'),
    });
    return {
      q: pressurePa,
      A: (Math.PI * diameterM ** 2) / 4,
      F: load.forceN,
      M: load.footMomentNm,
    };
  },
};

const BALLAST: SolutionPlan = {
  name: 'ballast',
  title: 'How much must a mount on a flat roof weigh so that it does not slide?',
  part: 'wind',
  functionName: 'ballast',
  givens: [
    given('forceN', 'F', 'F', 'force of the wind', 'N', [200, 1500, 50]),
    given('frictionRatio', 'u', '\\mu', 'friction on the roof', '', [0.3, 0.6, 0.05]),
  ],
  constants: [
    constant('g', 'g', 'acceleration of gravity', 9.80665, 'm/s^2', 'ISO 80000-3'),
    constant('s', 's', 'safety factor', 1.5, '', 'practice of the trade'),
  ],
  steps: stepRows`
      W | W | weight that friction needs | s * F / u | N | 0 | friction
      m | m | total mass, mount included | W / g | kg | 0 | weight over gravity
    `,
  compute: (inputs) => {
    const { slidingKg } = ballast({
      forceN: input(inputs, 'forceN'),
      leverM: 0,
      baseM: 1,
      frictionRatio: input(inputs, 'frictionRatio'),
    });
    return { W: slidingKg * 9.80665, m: slidingKg };
  },
};

const MAST_SLOPE: SolutionPlan = {
  name: 'mast-slope',
  title: 'How far does a steel mast lean in the wind?',
  part: 'wind',
  functionName: 'mastUnderWind',
  givens: [
    given('forceN', 'F', 'F', 'force at its head', 'N', [100, 500, 20]),
    given('lengthM', 'L', 'L', 'free length', 'm', [0.8, 1.6, 0.1]),
    given('outsideDiameterM', 'D', 'D', 'outside diameter', 'm', [0.048, 0.076, 0.002]),
    given('wallM', 't', 't', 'wall thickness', 'm', [0.0026, 0.004, 0.0002]),
  ],
  constants: [
    constant('E', 'E', "Young's modulus of steel", 210e9, 'Pa', 'handbooks (from memory)'),
  ],
  steps: stepRows`
      I | I | second moment of area | pi * (D ^ 4 - (D - 2 * t) ^ 4) / 64 | m^4 | 9 | ring
      s | s | slope | F * L ^ 2 / (2 * E * I) | rad | 5 | beam fixed at its foot
      a | a | slope in degrees | s * 180 / pi | deg | 2 | radians to degrees
    `,
  compute: (inputs) => {
    const bent = mastUnderWind({
      forceN: input(inputs, 'forceN'),
      lengthM: input(inputs, 'lengthM'),
      outsideDiameterM: input(inputs, 'outsideDiameterM'),
      wallM: input(inputs, 'wallM'),
    });
    return {
      I: bent.secondMomentCm4 / 1e8,
      s: (bent.slopeDeg * Math.PI) / 180,
      a: bent.slopeDeg,
    };
  },
};

const EIRP_DENSITY: SolutionPlan = {
  name: 'eirp-density',
  title: 'What EIRP density does a station send in 40 kHz?',
  part: 'transmit',
  functionName: 'lineUp',
  givens: [
    given('powerW', 'P', 'P', 'power of the amplifier', 'W', [1, 40, 1]),
    given('feedLossDb', 'l', 'L', 'loss to the antenna', 'dB', [0.2, 1.5, 0.1]),
    given('antennaGainDbi', 'G', 'G', 'gain of the antenna', 'dBi', [41, 50, 0.5]),
    given('symbolRateMBd', 'R', 'R', 'symbol rate', 'MBd', [0.5, 8, 0.5]),
  ],
  constants: [constant('B', 'B', 'reference bandwidth', 0.04, 'MHz', 'masks at 14 and 30 GHz')],
  steps: stepRows`
      p | p | power at the flange | 10 * log10(P) - l | dBW | 2 | power less loss
      e | E | EIRP | p + G | dBW | 2 | definition
      d | d | EIRP density | e - 10 * log10(R / B) | dBW | 2
        | the power is spread over the symbol rate
    `,
  compute: (inputs) => {
    const line = lineUp({
      powerW: input(inputs, 'powerW'),
      feedLossDb: input(inputs, 'feedLossDb'),
      antennaGainDbi: input(inputs, 'antennaGainDbi'),
      symbolRateMBd: input(inputs, 'symbolRateMBd'),
    });
    return { p: line.flangeDbw, e: line.eirpDbw, d: line.densityDbw };
  },
};

const FLANGE_DENSITY: SolutionPlan = {
  name: 'off-axis-density',
  title: 'What does a station send past its satellite, by the side-lobe line of 29 - 25 log?',
  part: 'transmit',
  functionName: 'flangeDensity',
  givens: [
    given('powerW', 'P', 'P', 'power at the flange', 'W', [1, 40, 1]),
    given('symbolRateMBd', 'R', 'R', 'symbol rate', 'MBd', [0.5, 8, 0.5]),
    given('offAxisDeg', 'a', '\\theta', 'angle off the axis', 'deg', [2.5, 7, 0.5]),
  ],
  constants: [constant('B', 'B', 'reference bandwidth', 0.04, 'MHz', 'masks at 14 and 30 GHz')],
  steps: stepRows`
      d | d | density at the flange | 10 * log10(P) - 10 * log10(R / B) | dBW | 2
        | the power is spread over the symbol rate
      g | G | gain at the angle | 29 - 25 * log10(a) | dBi | 2 | ITU-R S.580-6
      x | D | density sent at the angle | d + g | dBW | 2 | density and gain add
    `,
  compute: (inputs) => {
    const flangeDbw = flangeDensity({
      powerW: input(inputs, 'powerW'),
      symbolRateMBd: input(inputs, 'symbolRateMBd'),
      referenceBandwidthMHz: 0.04,
    });
    const gainDbi = 29 - 25 * Math.log10(input(inputs, 'offAxisDeg'));
    return { d: flangeDbw, g: gainDbi, x: flangeDbw + gainDbi };
  },
};

/** Plans of what lies between the sky and the socket. */
export const RECEPTION_PLANS: readonly SolutionPlan[] = [
  INTERMEDIATE_FREQUENCY,
  ENERGY_FROM_MER,
  WIND_FORCE,
  BALLAST,
  MAST_SLOPE,
  EIRP_DENSITY,
  FLANGE_DENSITY,
];
