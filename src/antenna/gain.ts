/** Gain of a reflector from its size, frequency and what takes away from the ideal. */

import { SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';
import { checkedDiameterM, checkedFrequencyGHz, checkedLossDb } from './guards.js';
import { ruzeLossDb } from './surface.js';

/** A reflector for {@link antennaGain}. */
export interface AntennaGainInput {
  /** Diameter of the aperture in metres, 0.05 to 100; for an offset reflector its width. */
  readonly diameterM: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /**
   * Aperture efficiency, above 0 up to 1; default 0.65. It stands for all that the fields below do not
   * name: illumination, and blockage, spillover and resistance where they are not given apart.
   */
  readonly efficiencyRatio?: number;
  /** Root-mean-square error of the surface in millimetres, 0 to 100; default 0. */
  readonly surfaceErrorMm?: number;
  /** Power that misses the reflector, in dB, 0 or more; default 0 (within the efficiency). */
  readonly spilloverLossDb?: number;
  /** Resistive loss of feed and waveguide up to the reference point, in dB, 0 or more; default 0. */
  readonly ohmicLossDb?: number;
}

const ANTENNA_GAIN_INPUT_KEYS = {
  diameterM: true,
  frequencyGHz: true,
  efficiencyRatio: true,
  surfaceErrorMm: true,
  spilloverLossDb: true,
  ohmicLossDb: true,
} satisfies Keys<AntennaGainInput>;

/** Gain with its terms in the order of the hand calculation. */
export interface AntennaGain {
  /** Wavelength in metres. */
  readonly wavelengthM: number;
  /** Gain of a lossless, evenly illuminated aperture of that size, (pi D / wavelength)^2, in dBi. */
  readonly idealGainDbi: number;
  /** What the aperture efficiency takes away, in dB. */
  readonly efficiencyLossDb: number;
  /** What spillover takes away, in dB. */
  readonly spilloverLossDb: number;
  /** What the uneven surface takes away (Ruze), in dB. */
  readonly surfaceLossDb: number;
  /** What resistance takes away, in dB. */
  readonly ohmicLossDb: number;
  /** Gain on the axis in dBi. */
  readonly gainDbi: number;
  /** All efficiencies together, 0 to 1. */
  readonly totalEfficiencyRatio: number;
}

/**
 * Gain of a reflector on its axis.
 *
 * G = 10 log10((pi D / wavelength)^2) less the losses of efficiency, spillover, surface and resistance.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: IEEE Std 145 (gain and aperture efficiency); surface term by J. Ruze, Proc. IEEE 54 (1966), p. 633.
 * Accuracy: rounding only; the efficiency is the uncertain input (0.55 to 0.75 for small reflectors).
 * @example
 * ```ts
 * import { antennaGain } from 'slantpath/antenna';
 * antennaGain({ diameterM: 0.9, frequencyGHz: 11.7 }).gainDbi.toFixed(2); // => '38.98'
 * ```
 */
export function antennaGain(antenna: AntennaGainInput): AntennaGain {
  const input = knownOnly('antenna', antenna, ANTENNA_GAIN_INPUT_KEYS);
  const diameterM = checkedDiameterM(input.diameterM);
  const frequencyGHz = checkedFrequencyGHz(input.frequencyGHz);
  const efficiencyRatio = inRange(
    'efficiencyRatio',
    input.efficiencyRatio ?? 0.65,
    0.01,
    1,
    'is the efficiency a ratio, not a percentage?',
  );
  const surfaceErrorMm = inRange('surfaceErrorMm', input.surfaceErrorMm ?? 0, 0, 100);
  const spilloverLossDb = checkedLossDb('spilloverLossDb', input.spilloverLossDb ?? 0);
  const ohmicLossDb = checkedLossDb('ohmicLossDb', input.ohmicLossDb ?? 0);
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (frequencyGHz * 1e9);
  const idealGainDbi = 2 * ratioToDb((Math.PI * diameterM) / wavelengthM);
  const efficiencyLossDb = -ratioToDb(efficiencyRatio) + 0;
  const surfaceLossDb = ruzeLossDb(surfaceErrorMm / 1000, wavelengthM);
  const lossDb = efficiencyLossDb + spilloverLossDb + surfaceLossDb + ohmicLossDb;
  return {
    wavelengthM,
    idealGainDbi,
    efficiencyLossDb,
    spilloverLossDb,
    surfaceLossDb,
    ohmicLossDb,
    gainDbi: idealGainDbi - lossDb,
    totalEfficiencyRatio: dbToRatio(-lossDb),
  };
}
