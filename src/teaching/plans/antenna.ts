/** Plans of worked solutions for `antenna`. */

import {
  antennaGain,
  farFieldDistance,
  halfPowerBeamwidth,
  pointingLoss,
  polarizationMismatchLoss,
  surfaceLoss,
} from '../../antenna/index.js';
import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { constant, given, input, step, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const DIAMETER = given('diameterM', 'D', 'D', 'diameter of the reflector', 'm', [0.6, 2.4, 0.1]);
const FREQUENCY = given('frequencyGHz', 'f', 'f', 'frequency', 'GHz', [10.7, 20.7, 0.1]);
const LIGHT = constant(
  'c',
  'c',
  'speed of light in metres and nanoseconds',
  SPEED_OF_LIGHT_M_PER_S / 1e9,
  'm/ns',
  'SI, exact',
);
const WAVELENGTH = step('wl', '\\lambda', 'wavelength', 'c / f', 'm', 5, 'definition');

const dish = (inputs: Readonly<Record<string, number>>) => ({
  diameterM: input(inputs, 'diameterM'),
  frequencyGHz: input(inputs, 'frequencyGHz'),
});

const BEAMWIDTH: SolutionPlan = {
  name: 'beamwidth',
  title: 'How wide is the beam?',
  part: 'antenna',
  functionName: 'halfPowerBeamwidth',
  givens: [DIAMETER, FREQUENCY],
  constants: [LIGHT],
  steps: [
    WAVELENGTH,
    ...stepRows`
      bw | \theta | half-power beamwidth | 70 * wl / D | deg | 2
        | common practice: 70 wavelengths over the diameter
    `,
  ],
  compute: (inputs) => ({
    wl: antennaGain(dish(inputs)).wavelengthM,
    bw: halfPowerBeamwidth(dish(inputs)),
  }),
};

const GAIN: SolutionPlan = {
  name: 'antenna-gain',
  title: 'What is the gain of the reflector?',
  part: 'antenna',
  functionName: 'antennaGain',
  givens: [
    DIAMETER,
    FREQUENCY,
    given('efficiencyPercent', 'eta', '\\eta', 'aperture efficiency', 'percent', [55, 75, 1]),
  ],
  constants: [LIGHT],
  steps: [
    WAVELENGTH,
    ...stepRows`
      ideal | G_0 | gain of a lossless, evenly lit aperture | 20 * log(pi * D / wl) | dBi | 2
        | definition of aperture gain
      loss | L | loss by the aperture efficiency | 10 * log(1 / (eta / 100)) | dB | 2 | definition
      G | G | gain | ideal - loss | dBi | 2 | sum of decibels
    `,
  ],
  compute: (inputs) => {
    const gain = antennaGain({
      ...dish(inputs),
      efficiencyRatio: input(inputs, 'efficiencyPercent') / 100,
    });
    return {
      wl: gain.wavelengthM,
      ideal: gain.idealGainDbi,
      loss: gain.efficiencyLossDb,
      G: gain.gainDbi,
    };
  },
};

const POINTING_LOSS: SolutionPlan = {
  name: 'pointing-loss',
  title: 'What does the pointing error cost?',
  part: 'antenna',
  functionName: 'pointingLoss',
  givens: [
    given('offsetDeg', 'off', '\\vartheta', 'pointing error', 'deg', [0.1, 0.8, 0.05]),
    given('beamwidthDeg', 'bw', '\\theta', 'half-power beamwidth', 'deg', [0.8, 2.4, 0.1]),
  ],
  constants: [],
  steps: stepRows`
      L | L | pointing loss | 12 * (off / bw)^2 | dB | 2 | Gaussian main lobe
    `,
  compute: (inputs) => ({
    L: pointingLoss({
      offsetDeg: input(inputs, 'offsetDeg'),
      beamwidthDeg: input(inputs, 'beamwidthDeg'),
    }),
  }),
};

const SURFACE_LOSS: SolutionPlan = {
  name: 'surface-loss',
  title: 'What does the rough surface cost?',
  part: 'antenna',
  functionName: 'surfaceLoss',
  givens: [
    given(
      'surfaceErrorMm',
      's',
      's',
      'root-mean-square error of the surface',
      'mm',
      [0.2, 1.2, 0.1],
    ),
    FREQUENCY,
  ],
  constants: [LIGHT],
  steps: [
    WAVELENGTH,
    ...stepRows`
      L | L | surface loss | 10 * log(e) * (4 * pi * s / 1000 / wl)^2 | dB | 3
        | J. Ruze, Proc. IEEE 54 (1966)
    `,
  ],
  compute: (inputs) => {
    const surface = {
      surfaceErrorMm: input(inputs, 'surfaceErrorMm'),
      frequencyGHz: input(inputs, 'frequencyGHz'),
    };
    const { wavelengthM } = antennaGain({ diameterM: 1, frequencyGHz: surface.frequencyGHz });
    return { wl: wavelengthM, L: surfaceLoss(surface) };
  },
};

const FAR_FIELD: SolutionPlan = {
  name: 'far-field',
  title: 'Where does the far field begin?',
  part: 'antenna',
  functionName: 'farFieldDistance',
  givens: [DIAMETER, FREQUENCY],
  constants: [LIGHT],
  steps: [
    WAVELENGTH,
    ...stepRows`
      R | R | far-field distance | 2 * D^2 / wl | m | 1
        | common definition, phase error of 22.5 degrees
    `,
  ],
  compute: (inputs) => ({
    wl: antennaGain(dish(inputs)).wavelengthM,
    R: farFieldDistance(dish(inputs)),
  }),
};

const MISMATCH: SolutionPlan = {
  name: 'polarization-mismatch',
  title: 'What does a wrongly turned feed cost?',
  part: 'antenna',
  functionName: 'polarizationMismatchLoss',
  givens: [given('rotationErrorDeg', 'rot', '\\rho', 'rotation error', 'deg', [2, 60, 1])],
  constants: [],
  steps: stepRows`
      L | L | polarization mismatch loss | -20 * log(cos(rot)) | dB | 2 | definition
    `,
  compute: (inputs) => ({ L: polarizationMismatchLoss(input(inputs, 'rotationErrorDeg')) }),
};

/** Plans for `antenna`. */
export const ANTENNA_PLANS: readonly SolutionPlan[] = [
  BEAMWIDTH,
  GAIN,
  POINTING_LOSS,
  SURFACE_LOSS,
  FAR_FIELD,
  MISMATCH,
];
