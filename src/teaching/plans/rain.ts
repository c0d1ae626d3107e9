/** Plans of worked solutions for `propagation`. */

import {
  rainAttenuation,
  rainHeight,
  skyNoise,
  specificRainAttenuation,
} from '../../propagation/index.js';
import { rainCoefficients } from '../../propagation/p838-3-coefficients.js';
import type { SolutionPlan } from '../solution/plan.js';
import { constant, given, input, step } from './parts.js';

/** Coefficients are read from the recommendation's table; the exercises stay at one frequency. */
const FREQUENCY_GHZ = 12;
const AT_12 = rainCoefficients(FREQUENCY_GHZ);
const TABLE = 'ITU-R P.838-3, Table 5, 12 GHz';
const COEFFICIENTS = [
  constant('kH', 'k_H', 'k, horizontal', AT_12.kHorizontal, '', TABLE),
  constant('kV', 'k_V', 'k, vertical', AT_12.kVertical, '', TABLE),
  constant('aH', '\\alpha_H', 'alpha, horizontal', AT_12.alphaHorizontal, '', TABLE),
  constant('aV', '\\alpha_V', 'alpha, vertical', AT_12.alphaVertical, '', TABLE),
];
const CIRCULAR = 45;
const K = step(
  'k',
  'k',
  'k for circular polarization',
  '(kH + kV) / 2',
  '',
  5,
  'ITU-R P.838-3, equation 4',
);
const ALPHA = step(
  'al',
  '\\alpha',
  'alpha for circular polarization',
  '(kH * aH + kV * aV) / (2 * k)',
  '',
  4,
  'ITU-R P.838-3, equation 5',
);
const GAMMA = step(
  'g',
  '\\gamma',
  'specific attenuation',
  'k * R^al',
  'dB/km',
  4,
  'ITU-R P.838-3, equation 1',
);

const SPECIFIC: SolutionPlan = {
  name: 'specific-rain-attenuation',
  title: 'How much does rain take on each kilometre (12 GHz, circular)?',
  part: 'propagation',
  functionName: 'specificRainAttenuation',
  givens: [given('rainRateMmPerH', 'R', 'R', 'rain rate', 'mm/h', [5, 90, 1])],
  constants: COEFFICIENTS,
  steps: [K, ALPHA, GAMMA],
  compute: (inputs) => {
    const rain = specificRainAttenuation({
      frequencyGHz: FREQUENCY_GHZ,
      elevationDeg: 0,
      tiltDeg: CIRCULAR,
      rainRateMmPerH: input(inputs, 'rainRateMmPerH'),
    });
    return { k: rain.k, al: rain.alpha, g: rain.attenuationDbPerKm };
  },
};

const P618 = 'ITU-R P.618-14, 2.2.1.1';

const RAIN: SolutionPlan = {
  name: 'rain-attenuation',
  title:
    'How much rain attenuation is exceeded for a share of the year (12 GHz, circular, north of 36 N)?',
  part: 'propagation',
  functionName: 'rainAttenuation',
  givens: [
    given(
      'rainRate001MmPerH',
      'R',
      'R_{0.01}',
      'rain rate exceeded for 0.01 %',
      'mm/h',
      [15, 60, 1],
    ),
    given('rainHeightKm', 'hR', 'h_R', 'rain height', 'km', [2.4, 4, 0.1]),
    given('stationHeightKm', 'hs', 'h_s', 'height of the station', 'km', [0, 1.5, 0.1]),
    given('elevationDeg', 'el', '\\varepsilon', 'elevation', 'deg', [15, 45, 1]),
    given('exceededPercent', 'p', 'p', 'share of the year', 'percent', [0.05, 0.5, 0.05]),
  ],
  constants: [constant('f', 'f', 'frequency', FREQUENCY_GHZ, 'GHz', 'chosen'), ...COEFFICIENTS],
  steps: [
    step('Ls', 'L_s', 'slant path', '(hR - hs) / sin(el)', 'km', 3, `${P618}, step 2`),
    step('LG', 'L_G', 'its projection', 'Ls * cos(el)', 'km', 3, `${P618}, step 3`),
    K,
    ALPHA,
    GAMMA,
    step(
      'r',
      'r',
      'horizontal reduction',
      '1 / (1 + 0.78 * sqrt(LG * g / f) - 0.38 * (1 - exp(-2 * LG)))',
      '',
      4,
      `${P618}, step 6`,
    ),
    step(
      'LR',
      'L_R',
      'path through the rain cell',
      'min(LG * r / cos(el), (hR - hs) / sin(el))',
      'km',
      3,
      `${P618}, step 7`,
    ),
    step(
      'v',
      'v',
      'vertical adjustment',
      '1 / (1 + sqrt(sin(el)) * (31 * (1 - exp(-el)) * sqrt(LR * g) / f^2 - 0.45))',
      '',
      4,
      `${P618}, step 7`,
    ),
    step('LE', 'L_E', 'effective path', 'LR * v', 'km', 3, `${P618}, step 8`),
    step('A1', 'A_{0.01}', 'attenuation exceeded for 0.01 %', 'g * LE', 'dB', 3, `${P618}, step 9`),
    step(
      'A',
      'A_p',
      'attenuation exceeded for p',
      'A1 * (p / 0.01)^(0 - (0.655 + 0.033 * ln(p) - 0.045 * ln(A1)))',
      'dB',
      2,
      `${P618}, step 10`,
    ),
  ],
  compute: (inputs) => {
    const rain = rainAttenuation({
      latitudeDeg: 47,
      stationHeightKm: input(inputs, 'stationHeightKm'),
      rainHeightKm: input(inputs, 'rainHeightKm'),
      rainRate001MmPerH: input(inputs, 'rainRate001MmPerH'),
      frequencyGHz: FREQUENCY_GHZ,
      elevationDeg: input(inputs, 'elevationDeg'),
      tiltDeg: CIRCULAR,
      exceededPercent: input(inputs, 'exceededPercent'),
    });
    const specific = specificRainAttenuation({
      frequencyGHz: FREQUENCY_GHZ,
      elevationDeg: input(inputs, 'elevationDeg'),
      tiltDeg: CIRCULAR,
      rainRateMmPerH: input(inputs, 'rainRate001MmPerH'),
    });
    return {
      Ls: rain.slantPathKm,
      LG: rain.horizontalProjectionKm,
      k: specific.k,
      al: specific.alpha,
      g: rain.specificAttenuationDbPerKm,
      r: rain.horizontalReductionRatio,
      LR: rain.cellPathKm,
      v: rain.verticalAdjustmentRatio,
      LE: rain.effectivePathKm,
      A1: rain.attenuation001Db,
      A: rain.attenuationDb,
    };
  },
};

const RAIN_HEIGHT: SolutionPlan = {
  name: 'rain-height',
  title: 'How high does the rain reach?',
  part: 'propagation',
  functionName: 'rainHeight',
  givens: [
    given('isothermHeightKm', 'h0', 'h_0', 'height of the 0 degree isotherm', 'km', [1.5, 5, 0.05]),
  ],
  constants: [],
  steps: [step('hR', 'h_R', 'rain height', 'h0 + 0.36', 'km', 2, 'ITU-R P.839-4')],
  compute: (inputs) => ({ hR: rainHeight(input(inputs, 'isothermHeightKm')).rainHeightKm }),
};

const SKY_NOISE: SolutionPlan = {
  name: 'sky-noise',
  title: 'How warm does the sky get in rain?',
  part: 'propagation',
  functionName: 'skyNoise',
  givens: [given('attenuationDb', 'A', 'A', 'attenuation', 'dB', [0.2, 10, 0.1])],
  constants: [
    constant('Tm', 'T_m', 'mean radiating temperature', 275, 'K', 'ITU-R P.618-14, section 3'),
    constant('Tc', 'T_c', 'cosmic background', 2.7, 'K', 'ITU-R P.618-14, section 3'),
  ],
  steps: [
    step(
      'M',
      'T_1',
      'share of the medium',
      'Tm * (1 - 10^(0 - A / 10))',
      'K',
      2,
      'ITU-R P.618-14, equation 69',
    ),
    step(
      'B',
      'T_2',
      'share of the background',
      'Tc * 10^(0 - A / 10)',
      'K',
      2,
      'ITU-R P.618-14, equation 69',
    ),
    step('T', 'T', 'sky noise temperature', 'M + B', 'K', 1, 'ITU-R P.618-14, equation 69'),
  ],
  compute: (inputs) => {
    const noise = skyNoise(input(inputs, 'attenuationDb'));
    return { M: noise.mediumTemperatureK, B: noise.backgroundTemperatureK, T: noise.temperatureK };
  },
};

/** Plans for `propagation`. */
export const RAIN_PLANS: readonly SolutionPlan[] = [RAIN_HEIGHT, SPECIFIC, RAIN, SKY_NOISE];
