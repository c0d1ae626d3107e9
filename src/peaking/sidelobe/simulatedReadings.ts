/** A level that flickers, for exercises and tests: lobe, noise floor, slow and quick scatter, drift, steps. */

import { inRange, object, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { randomStream } from '../../numeric/random.js';
import { type ApertureInput, apertureLevelDb } from './apertureLobes.js';

/** The true lobe and the level meter. */
export interface SimulatedLevelInput {
  /** Offsets from the true peak at which the level is read, in degrees, in order. */
  readonly offsetDeg: ArrayLike<number>;
  /** Half-power beamwidth of the lobe in degrees; a parabola in dB. Or the pattern of an aperture with its side lobes. */
  readonly lobe: { readonly beamwidthDeg: number } | ApertureInput;
  /** Level at the peak in dBm, without noise. */
  readonly peakLevelDbm: number;
  /** Level without signal in dBm; default none. */
  readonly noiseFloorDbm?: number;
  /** Standard deviation of one reading in dB; default 0. */
  readonly standardDeviationDb?: number;
  /** Correlation of one reading's flicker with the next, 0 to 0.999; default 0. */
  readonly correlationRatio?: number;
  /** Drift in dB from one reading to the next; default 0. */
  readonly driftDbPerReading?: number;
  /** Share of readings that fall into a short fade, 0 to 1; default 0. */
  readonly fadeRatio?: number;
  /** Mean depth of such a fade in dB; default 6. */
  readonly fadeDb?: number;
  /** Step of the displayed level in dB; default 0. */
  readonly levelStepDb?: number;
  /** Seed: equal seeds give equal readings. */
  readonly seed: number;
}

const SIMULATED_LEVEL_INPUT_KEYS = {
  offsetDeg: true,
  lobe: true,
  peakLevelDbm: true,
  noiseFloorDbm: true,
  standardDeviationDb: true,
  correlationRatio: true,
  driftDbPerReading: true,
  fadeRatio: true,
  fadeDb: true,
  levelStepDb: true,
  seed: true,
} satisfies Keys<SimulatedLevelInput>;

/** Step of the instrument: none, or one that a level can be counted in. */
function checkedStepDb(stepDb: number): number {
  const step = inRange('levelStepDb', stepDb, 0, 20);
  return step === 0 ? 0 : inRange('levelStepDb', step, 1e-6, 20);
}

/**
 * Simulated readings in dBm, one for each offset: the bench of the worked examples.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: the model of {@link fitPeak}; random numbers from the seed alone.
 * @example
 * ```ts
 * import { simulatedReadings } from 'slantpath/peaking';
 * simulatedReadings({
 *   offsetDeg: [-1, 0, 1],
 *   lobe: { beamwidthDeg: 2 },
 *   peakLevelDbm: -40,
 *   levelStepDb: 0.5,
 *   seed: 1,
 * }); // => [-43, -40, -43]
 * ```
 */
export function simulatedReadings(input: SimulatedLevelInput): readonly number[] {
  knownOnly('input', input, SIMULATED_LEVEL_INPUT_KEYS);
  const { lobe } = input;
  known('lobe', lobe, {
    diameterM: true,
    frequencyGHz: true,
    illumination: true,
    beamwidthDeg: true,
  });
  const offsets = Array.from(object('offsetDeg', input.offsetDeg), (deg, i) =>
    inRange('offsetDeg', deg, -90, 90, undefined, i),
  );
  const peak = inRange('peakLevelDbm', input.peakLevelDbm, -200, 200);
  const floor = inRange('noiseFloorDbm', input.noiseFloorDbm ?? -400, -400, 200);
  const scatter = inRange('standardDeviationDb', input.standardDeviationDb ?? 0, 0, 20);
  const correlation = inRange('correlationRatio', input.correlationRatio ?? 0, 0, 0.999);
  const drift = inRange('driftDbPerReading', input.driftDbPerReading ?? 0, -10, 10);
  const fadeShare = inRange('fadeRatio', input.fadeRatio ?? 0, 0, 1);
  const fadeDb = inRange('fadeDb', input.fadeDb ?? 6, 0, 60);
  const step = checkedStepDb(input.levelStepDb ?? 0);
  const random = randomStream(inRange('seed', input.seed, -1e9, 1e9));
  let lossDb: (offsetDeg: number) => number;
  if ('beamwidthDeg' in lobe) {
    const width = positive('lobe.beamwidthDeg', lobe.beamwidthDeg);
    lossDb = (offsetDeg) => gaussianLobeLossDb(offsetDeg, width);
  } else lossDb = (offsetDeg) => -apertureLevelDb(lobe, offsetDeg);
  let flicker = random.normal();
  return offsets.map((offsetDeg, i) => {
    if (i > 0)
      flicker = correlation * flicker + Math.sqrt(1 - correlation * correlation) * random.normal();
    const faded = random.uniform() < fadeShare ? -fadeDb * Math.log(1 - random.uniform()) : 0;
    const signal = peak - Math.min(300, lossDb(offsetDeg)) - faded + drift * i;
    const level = signal + ratioToDb(1 + dbToRatio(floor - signal)) + scatter * flicker;
    return step > 0 ? step * Math.round(level / step) + 0 : level;
  });
}
