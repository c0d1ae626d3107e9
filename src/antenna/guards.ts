/** Checks that the functions about antennas and links share, with the slips that are usual there. */

import { inRange } from '../errors.js';

/** Highest frequency of the library's radio functions in GHz; a number in MHz lies above it. */
const HIGHEST_GHZ = 400;

/** Returns a radio frequency of 0.1 to 400 GHz, otherwise throws. */
export function checkedFrequencyGHz(frequencyGHz: number, parameter = 'frequencyGHz'): number {
  return inRange(parameter, frequencyGHz, 0.1, HIGHEST_GHZ, 'is the frequency in GHz, not MHz?');
}

/** Returns a reflector's diameter of 0.05 to 100 m, otherwise throws. */
export function checkedDiameterM(diameterM: number, parameter = 'diameterM'): number {
  return inRange(parameter, diameterM, 0.05, 100, 'is the diameter in metres, not centimetres?');
}

/** Returns a half-power beamwidth above 0 up to 180 degrees, otherwise throws. */
export function checkedBeamwidthDeg(beamwidthDeg: number, parameter = 'beamwidthDeg'): number {
  return inRange(parameter, beamwidthDeg, 1e-6, 180, 'is the beamwidth in degrees?');
}

/** Returns a loss of 0 to 1000 dB, otherwise throws. */
export function checkedLossDb(parameter: string, lossDb: number): number {
  return inRange(parameter, lossDb, 0, 1000, 'a loss is positive and subtracted');
}
