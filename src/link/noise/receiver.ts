/** A receiving terminal: what its antenna gathers and what its chain adds. */

import { halfPowerBeamwidth } from '../../antenna/beamwidth.js';
import { type AntennaGain, antennaGain } from '../../antenna/gain.js';
import { checkedLossDb } from '../../antenna/internal.js';
import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { noiseFigureToTemperature } from './systemNoise.js';

/** A receiving terminal. */
export interface ReceivingTerminal {
  /** Diameter of the reflector in metres, 0.05 to 100. */
  readonly diameterM: number;
  /** Aperture efficiency, 0.01 to 1; default 0.65. */
  readonly efficiencyRatio?: number;
  /** Root-mean-square error of the surface in millimetres; default 0. */
  readonly surfaceErrorMm?: number;
  /** Gain from a data sheet in dBi, -100 to 100, instead of the one from size, efficiency and surface. */
  readonly antennaGainDbi?: number;
  /** Pointing error in degrees on the sky, 0 to 10; its loss follows from the beamwidth, 70 wavelength / D. Default 0. */
  readonly pointingOffsetDeg?: number;
  /** Further pointing loss in dB, 0 or more; default 0. */
  readonly pointingLossDb?: number;
  /** Loss of polarization mismatch in dB, 0 or more; default 0. */
  readonly polarizationLossDb?: number;
  /** Loss between the antenna's flange and the amplifier in dB, 0 or more; default 0. */
  readonly feedLossDb?: number;
  /** Physical temperature of that loss in kelvin, 0 to 400; default 290. */
  readonly feedTemperatureK?: number;
  /** Noise figure of the low-noise block in dB, 0 to 100. */
  readonly noiseFigureDb: number;
  /** What the chain behind the block adds at the block's input in kelvin, 0 to 1e6; default 0. */
  readonly backEndNoiseK?: number;
  /** Share of the pattern that looks at the ground, 0 to 1; default 0.06. */
  readonly groundShareRatio?: number;
  /** Temperature of the ground in kelvin, 0 to 350; default 290. */
  readonly groundTemperatureK?: number;
}

export const RECEIVING_TERMINAL_KEYS = {
  diameterM: true,
  efficiencyRatio: true,
  surfaceErrorMm: true,
  antennaGainDbi: true,
  pointingOffsetDeg: true,
  pointingLossDb: true,
  polarizationLossDb: true,
  feedLossDb: true,
  feedTemperatureK: true,
  noiseFigureDb: true,
  backEndNoiseK: true,
  groundShareRatio: true,
  groundTemperatureK: true,
} satisfies Keys<ReceivingTerminal>;

/** What the budget takes from a terminal. */
export interface ReceiverTerms {
  readonly antennaGainDbi: number;
  readonly pointingLossDb: number;
  readonly polarizationLossDb: number;
  readonly feedLossDb: number;
  readonly feedTemperatureK: number;
  readonly receiverNoiseK: number;
  readonly groundShareRatio: number;
  readonly groundTemperatureK: number;
}

/** The terminal's checked figures at a frequency. */
export function receiverTerms(receiver: ReceivingTerminal, frequencyGHz: number): ReceiverTerms {
  const input = known('receiver', receiver, RECEIVING_TERMINAL_KEYS);
  const { diameterM } = input;
  const gain: Pick<AntennaGain, 'gainDbi'> =
    input.antennaGainDbi === undefined
      ? antennaGain({
          diameterM,
          frequencyGHz,
          efficiencyRatio: input.efficiencyRatio ?? 0.65,
          surfaceErrorMm: input.surfaceErrorMm ?? 0,
        })
      : { gainDbi: inRange('antennaGainDbi', input.antennaGainDbi, -100, 100) };
  const offsetDeg = inRange('pointingOffsetDeg', input.pointingOffsetDeg ?? 0, 0, 10);
  return {
    antennaGainDbi: gain.gainDbi,
    pointingLossDb:
      gaussianLobeLossDb(offsetDeg, halfPowerBeamwidth({ diameterM, frequencyGHz })) +
      checkedLossDb('pointingLossDb', input.pointingLossDb ?? 0),
    polarizationLossDb: checkedLossDb('polarizationLossDb', input.polarizationLossDb ?? 0),
    feedLossDb: checkedLossDb('feedLossDb', input.feedLossDb ?? 0),
    feedTemperatureK: inRange('feedTemperatureK', input.feedTemperatureK ?? 290, 0, 400),
    groundShareRatio: inRange('groundShareRatio', input.groundShareRatio ?? 0.06, 0, 1),
    groundTemperatureK: inRange('groundTemperatureK', input.groundTemperatureK ?? 290, 0, 350),
    receiverNoiseK:
      noiseFigureToTemperature(input.noiseFigureDb) +
      inRange('backEndNoiseK', input.backEndNoiseK ?? 0, 0, 1e6),
  };
}
