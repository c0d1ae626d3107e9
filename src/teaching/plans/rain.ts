/** Plans of worked solutions for `propagation`. */

import {
  rainAttenuation,
  rainHeight,
  skyNoise,
  specificRainAttenuation,
} from '../../propagation/index.js';
import { combinedDb, latitudeTermDeg, rainCoefficients } from '../../propagation/internal.js';
import { constant, given, input, step, stepRows } from './parts.js';
import type { SolutionConstant, SolutionPlan } from './plan.js';

/** Coefficients are read from the recommendation's table; the exercises stay at this frequency. */
const FREQUENCY_GHZ = 12;
function coefficientsAt(frequencyGHz: number): readonly SolutionConstant[] {
  const at = rainCoefficients(frequencyGHz);
  const table = `ITU-R P.838-3, Table 5, ${frequencyGHz} GHz`;
  return [
    constant('kH', 'k_H', 'k, horizontal', at.kHorizontal, '', table),
    constant('kV', 'k_V', 'k, vertical', at.kVertical, '', table),
    constant('aH', '\\alpha_H', 'alpha, horizontal', at.alphaHorizontal, '', table),
    constant('aV', '\\alpha_V', 'alpha, vertical', at.alphaVertical, '', table),
  ];
}
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
  constants: coefficientsAt(FREQUENCY_GHZ),
  steps: [K, ALPHA, GAMMA],
  compute: (inputs) => {
    const rain = specificRainAttenuation({
      frequencyGHz: FREQUENCY_GHZ,
      elevationDeg: 0,
      tiltDeg: CIRCULAR,
      rainRateMmPerH: input(inputs, 'rainRateMmPerH'),
    });
    return { k: rain.k, al: rain.alpha, g: rain.specificAttenuationDbPerKm };
  },
};

const P618 = 'ITU-R P.618-14, 2.2.1.1';

const RAIN_GIVENS = [
  given('rainRate001MmPerH', 'R', 'R_{0.01}', 'rain rate exceeded for 0.01 %', 'mm/h', [15, 60, 1]),
  given('rainHeightKm', 'hR', 'h_R', 'rain height', 'km', [2.4, 4, 0.1]),
  given('heightM', 'hs', 'h_s', 'height of the station', 'm', [0, 1500, 100]),
  given('elevationDeg', 'el', '\\varepsilon', 'elevation', 'deg', [15, 45, 1]),
  given('exceededPercent', 'p', 'p', 'share of the year', 'percent', [0.05, 0.5, 0.05]),
  { ...given('frequencyGHz', 'f', 'f', 'frequency', 'GHz', [10.7, 30, 0.1]), otherwise: 12 },
  {
    ...given(
      'tiltDeg',
      'tau',
      '\\tau',
      'tilt of the polarization, 45 for circular',
      'deg',
      [0, 90, 5],
    ),
    otherwise: CIRCULAR,
  },
  {
    ...given('latitudeDeg', 'lat', '\\varphi', 'latitude, north positive', 'deg', [-60, 60, 1]),
    otherwise: 47,
  },
];

/** The coefficients at the frequency asked for, and which terms of step 10 apply. */
function rainLookedUp(inputs: Readonly<Record<string, number>>): readonly SolutionConstant[] {
  const latitude = Math.abs(input(inputs, 'latitudeDeg'));
  const applies = latitude < 36 && input(inputs, 'exceededPercent') < 1;
  return [
    ...coefficientsAt(input(inputs, 'frequencyGHz')),
    constant(
      'n1',
      'n_1',
      '1 nearer than 36 degrees to the equator and below 1 % of the year, otherwise 0',
      applies ? 1 : 0,
      '',
      `${P618}, step 10`,
    ),
    constant(
      'n2',
      'n_2',
      '1 below 25 degrees of elevation, otherwise 0',
      input(inputs, 'elevationDeg') < 25 ? 1 : 0,
      '',
      `${P618}, step 10`,
    ),
  ];
}

const RAIN: SolutionPlan = {
  name: 'rain-attenuation',
  title: 'How much rain attenuation is exceeded for a share of the year?',
  part: 'propagation',
  functionName: 'rainAttenuation',
  givens: RAIN_GIVENS,
  constants: [],
  lookedUp: rainLookedUp,
  steps: [
    step('Ls', 'L_s', 'slant path', '(hR - hs / 1000) / sin(el)', 'km', 3, `${P618}, step 2`),
    step('LG', 'L_G', 'its projection', 'Ls * cos(el)', 'km', 3, `${P618}, step 3`),
    ...stepRows`
      k | k | k for this path and polarization
        | (kH + kV + (kH - kV) * cos(el)^2 * cos(2 * tau)) / 2 | | 5 | ITU-R P.838-3, equation 4
      al | \alpha | alpha for this path and polarization
        | (kH * aH + kV * aV + (kH * aH - kV * aV) * cos(el)^2 * cos(2 * tau)) / (2 * k) | | 4
        | ITU-R P.838-3, equation 5
    `,
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
      'min(LG * r / cos(el), (hR - hs / 1000) / sin(el))',
      'km',
      3,
      `${P618}, step 7`,
    ),
    step(
      'chi',
      '\\chi',
      'degrees nearer than 36 to the equator',
      'max(0, 36 - abs(lat))',
      'deg',
      1,
      `${P618}, step 7`,
    ),
    step(
      'v',
      'v',
      'vertical adjustment',
      '1 / (1 + sqrt(sin(el)) * (31 * (1 - exp(-el / (1 + chi))) * sqrt(LR * g) / f^2 - 0.45))',
      '',
      4,
      `${P618}, step 7`,
    ),
    step('LE', 'L_E', 'effective path', 'LR * v', 'km', 3, `${P618}, step 8`),
    step('A1', 'A_{0.01}', 'attenuation exceeded for 0.01 %', 'g * LE', 'dB', 3, `${P618}, step 9`),
    step(
      'be',
      '\\beta',
      'exponent of latitude and elevation',
      'n1 * (0.005 * chi + n2 * (1.8 - 4.25 * sin(el)))',
      '',
      4,
      `${P618}, step 10`,
    ),
    step(
      'A',
      'A_p',
      'attenuation exceeded for p',
      'A1 * (p / 0.01)^(0 - (0.655 + 0.033 * ln(p) - 0.045 * ln(A1) - be * (1 - p) * sin(el)))',
      'dB',
      2,
      `${P618}, step 10`,
    ),
  ],
  compute: (inputs) => {
    const elevationDeg = input(inputs, 'elevationDeg');
    if (elevationDeg < 5) return 'below-5-degrees';
    if (elevationDeg > 89) return 'straight-up';
    const latitudeDeg = input(inputs, 'latitudeDeg');
    const frequencyGHz = input(inputs, 'frequencyGHz');
    const tiltDeg = input(inputs, 'tiltDeg');
    const rain = rainAttenuation({
      latitudeDeg,
      heightM: input(inputs, 'heightM'),
      rainHeightKm: input(inputs, 'rainHeightKm'),
      rainRate001MmPerH: input(inputs, 'rainRate001MmPerH'),
      frequencyGHz,
      elevationDeg,
      tiltDeg,
      exceededPercent: input(inputs, 'exceededPercent'),
    });
    if (!(rain.attenuation001Db > 0)) return 'no-rain-on-the-path';
    const specific = specificRainAttenuation({
      frequencyGHz,
      elevationDeg,
      tiltDeg,
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
      chi: latitudeTermDeg(latitudeDeg),
      v: rain.verticalAdjustmentRatio,
      LE: rain.effectivePathKm,
      A1: rain.attenuation001Db,
      be: rain.latitudeExponentRatio,
      A: rain.attenuationDb,
    };
  },
};

const TOTAL: SolutionPlan = {
  name: 'total-attenuation',
  title: 'How much do rain, cloud, scintillation and gases take together?',
  part: 'propagation',
  functionName: 'totalAttenuation',
  givens: [
    given('rainDb', 'R', 'A_R', 'attenuation by rain', 'dB', [0.5, 8, 0.1]),
    given('cloudDb', 'C', 'A_C', 'attenuation by cloud', 'dB', [0.1, 1, 0.05]),
    given('scintillationDb', 'S', 'A_S', 'fade by scintillation', 'dB', [0.1, 0.8, 0.05]),
    given('gasDb', 'G', 'A_G', 'attenuation by gases', 'dB', [0.1, 1, 0.05]),
  ],
  constants: [],
  steps: stepRows`
      W | W | rain and cloud | R + C | dB | 2 | ITU-R P.618-14, section 2.5
      A | A | attenuation by all together | G + sqrt(W^2 + S^2) | dB | 2
        | ITU-R P.618-14, section 2.5
    `,
  compute: (inputs) => {
    const [gas, rain, cloud, scintillation] = ['gasDb', 'rainDb', 'cloudDb', 'scintillationDb'].map(
      (name) => input(inputs, name),
    ) as [number, number, number, number];
    return { W: combinedDb(0, rain, cloud, 0), A: combinedDb(gas, rain, cloud, scintillation) };
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
  steps: stepRows`
      hR | h_R | rain height | h0 + 0.36 | km | 2 | ITU-R P.839-4
    `,
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
  steps: stepRows`
      M | T_1 | share of the medium | Tm * (1 - 10^(0 - A / 10)) | K | 2
        | ITU-R P.618-14, equation 69
      B | T_2 | share of the background | Tc * 10^(0 - A / 10) | K | 2
        | ITU-R P.618-14, equation 69
      T | T | sky noise temperature | M + B | K | 1 | ITU-R P.618-14, equation 69
    `,
  compute: (inputs) => {
    const noise = skyNoise(input(inputs, 'attenuationDb'));
    return { M: noise.mediumNoiseK, B: noise.backgroundNoiseK, T: noise.skyNoiseK };
  },
};

/** Plans for `propagation`. */
export const RAIN_PLANS: readonly SolutionPlan[] = [RAIN_HEIGHT, SPECIFIC, RAIN, TOTAL, SKY_NOISE];
