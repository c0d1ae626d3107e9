/** Subjects of the link and of decibels: power, figure of merit, carrier to noise, clearance, levels. */

import { farFieldDistance } from '../../antenna/index.js';
import {
  BOLTZMANN_DBW_PER_K_HZ,
  REFERENCE_TEMPERATURE_K,
  SPEED_OF_LIGHT_M_PER_S,
} from '../../constants.js';
import { dbmToDbuv } from '../../distribution/index.js';
import { figureOfMerit, temperatureToNoiseFigure } from '../../link/index.js';
import { valueNamed } from '../../numeric/columns.js';
import type { FormulaValues } from './functions.js';
import type { FormulaSubject, FormulaVariable } from './subject.js';

const at = (values: FormulaValues, name: string): number => valueNamed(values, name);

const variable = (
  name: string,
  symbol: string,
  meaning: string,
  ends: readonly [from: number, to: number, least: number, most: number],
): FormulaVariable => {
  const [from, to, least, most] = ends;
  return { name, symbol, meaning, from, to, least, most };
};

const plain = (
  subject: Pick<
    FormulaSubject,
    'name' | 'meaning' | 'unit' | 'variables' | 'exact' | 'usualTolerance'
  >,
): FormulaSubject => ({ ...subject, period: null, areas: [] });

const FREQUENCY = variable('frequencyGHz', 'f', 'frequency in GHz', [3.4, 31, 0.1, 100]);
const DIAMETER = variable(
  'diameterM',
  'd',
  'diameter of the reflector in metres',
  [0.45, 3.7, 0.1, 30],
);
const LOSS = (name: string, meaning: string, from: number, to: number) =>
  variable(name, 'l', meaning, [from, to, 0, 400]);

/** The subjects, in the order of the job. */
export const LINK_SUBJECTS: readonly FormulaSubject[] = [
  plain({
    name: 'focal-length',
    meaning: 'focal length in metres of a prime-focus reflector from its diameter and depth',
    unit: 'm',
    usualTolerance: 0.01,
    variables: [
      DIAMETER,
      variable('depthM', 'c', 'depth of the reflector in metres', [0.05, 0.6, 0.01, 5]),
    ],
    exact: (v) => at(v, 'diameterM') ** 2 / (16 * at(v, 'depthM')),
  }),
  plain({
    name: 'far-field-distance',
    meaning: 'distance in metres from which a pattern may be measured (IEEE Std 145)',
    unit: 'm',
    usualTolerance: 2,
    variables: [DIAMETER, FREQUENCY],
    exact: (v) =>
      farFieldDistance({ diameterM: at(v, 'diameterM'), frequencyGHz: at(v, 'frequencyGHz') }),
  }),
  plain({
    name: 'fresnel-radius',
    meaning: 'radius in metres of the first Fresnel zone at an obstacle on the path (ITU-R P.526)',
    unit: 'm',
    usualTolerance: 0.2,
    variables: [
      variable(
        'firstDistanceKm',
        'd1',
        'distance of the obstacle from one end in km',
        [0.1, 20, 0.001, 100],
      ),
      variable(
        'secondDistanceKm',
        'd2',
        'distance of the obstacle from the other end in km',
        [0.1, 20, 0.001, 50000],
      ),
      FREQUENCY,
    ],
    exact: (v) => {
      const [first, second] = [at(v, 'firstDistanceKm'), at(v, 'secondDistanceKm')];
      const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (at(v, 'frequencyGHz') * 1e9);
      return Math.sqrt((wavelengthM * first * second * 1e3) / (first + second));
    },
  }),
  plain({
    name: 'eirp',
    meaning: 'equivalent isotropically radiated power in dBW from power in watts, loss and gain',
    unit: 'dBW',
    usualTolerance: 0.1,
    variables: [
      variable('transmitPowerW', 'p', 'transmit power in watts', [1, 40, 0.001, 10000]),
      LOSS('transmitLossDb', 'loss between amplifier and feed in dB', 0, 3),
      variable('gainDbi', 'g', 'antenna gain in dBi', [30, 50, -10, 80]),
    ],
    exact: (v) =>
      10 * Math.log10(at(v, 'transmitPowerW')) - at(v, 'transmitLossDb') + at(v, 'gainDbi'),
  }),
  plain({
    name: 'figure-of-merit',
    meaning: 'figure of merit G/T in dB/K',
    unit: 'dB/K',
    usualTolerance: 0.1,
    variables: [
      variable('gainDbi', 'g', 'antenna gain in dBi', [30, 50, -10, 80]),
      variable(
        'systemNoiseTemperatureK',
        't',
        'system noise temperature in kelvins',
        [50, 400, 10, 10000],
      ),
    ],
    exact: (v) =>
      figureOfMerit({
        antennaGainDbi: at(v, 'gainDbi'),
        systemNoiseK: at(v, 'systemNoiseTemperatureK'),
      }),
  }),
  plain({
    name: 'carrier-to-noise',
    meaning: 'carrier-to-noise ratio in dB from EIRP, losses, figure of merit and noise bandwidth',
    unit: 'dB',
    usualTolerance: 0.1,
    variables: [
      variable(
        'eirpDbw',
        'eirp',
        'equivalent isotropically radiated power in dBW',
        [40, 56, -20, 100],
      ),
      LOSS('pathLossDb', 'free-space loss and all others in dB', 195, 215),
      variable('figureOfMeritDbPerK', 'm', 'figure of merit G/T in dB/K', [8, 25, -30, 50]),
      variable('noiseBandwidthMHz', 'b', 'noise bandwidth in MHz', [1, 36, 0.001, 1000]),
    ],
    exact: (v) =>
      at(v, 'eirpDbw') -
      at(v, 'pathLossDb') +
      at(v, 'figureOfMeritDbPerK') -
      BOLTZMANN_DBW_PER_K_HZ -
      10 * Math.log10(at(v, 'noiseBandwidthMHz') * 1e6),
  }),
  plain({
    name: 'noise-figure',
    meaning: 'noise figure in dB of a noise temperature',
    unit: 'dB',
    usualTolerance: 0.05,
    variables: [
      variable('noiseTemperatureK', 't', 'noise temperature in kelvins', [
        10,
        REFERENCE_TEMPERATURE_K,
        0,
        10000,
      ]),
    ],
    exact: (v) => temperatureToNoiseFigure(at(v, 'noiseTemperatureK')),
  }),
  plain({
    name: 'power-in-dbm',
    meaning: 'power in dBm of a power in watts',
    unit: 'dBm',
    usualTolerance: 0.1,
    variables: [variable('powerW', 'p', 'power in watts', [0.01, 100, 1e-9, 1e6])],
    exact: (v) => 10 * Math.log10(at(v, 'powerW') * 1000),
  }),
  plain({
    name: 'level-in-dbuv',
    meaning: 'level in dBµV in 75 ohm of a level in dBm',
    unit: 'dBµV',
    usualTolerance: 0.1,
    variables: [variable('levelDbm', 'p', 'level in dBm', [-80, 0, -200, 100])],
    exact: (v) => dbmToDbuv(at(v, 'levelDbm')),
  }),
  plain({
    name: 'decibels-of-a-power-ratio',
    meaning: 'decibels of a ratio of two powers',
    unit: 'dB',
    usualTolerance: 0.1,
    variables: [variable('powerRatio', 'x', 'ratio of two powers', [0.01, 100, 1e-12, 1e12])],
    exact: (v) => 10 * Math.log10(at(v, 'powerRatio')),
  }),
  plain({
    name: 'decibels-of-a-voltage-ratio',
    meaning: 'decibels of a ratio of two voltages across equal impedances',
    unit: 'dB',
    usualTolerance: 0.1,
    variables: [variable('voltageRatio', 'x', 'ratio of two voltages', [0.01, 100, 1e-12, 1e12])],
    exact: (v) => 20 * Math.log10(at(v, 'voltageRatio')),
  }),
];
