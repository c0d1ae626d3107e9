/** Recommendation ITU-R P.618-14 (08/2023), section 2.4.1: tropospheric scintillation above 5 degrees. */

import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { sinDeg } from '../../numeric/angle.js';
import {
  checkedFrequencyGHz,
  checkedPercent,
  checkedRaisedElevationDeg,
  namesOutside,
} from '../inputs.js';
import { EDITION } from './edition.js';

/** What scintillation depends on besides the percentage of time. */
export interface ScintillationPath {
  /** Frequency in GHz; stated range 4 to 55. */
  readonly frequencyGHz: number;
  /** Elevation in degrees, 0.1 to 90; stated range 5 to 90. */
  readonly elevationDeg: number;
  /** Diameter of the antenna in metres: a large aperture averages the flicker. */
  readonly diameterM: number;
  /** Efficiency of the antenna, 0.01 to 1; 0.5, the cautious value, where not given. */
  readonly efficiencyRatio?: number | undefined;
  /** Median wet term of the surface refractivity in N-units (P.453-14). */
  readonly wetRefractivityNUnits: number;
  /** Height of the turbulent layer in metres; 1000 where not given. */
  readonly turbulenceHeightM?: number | undefined;
}

/** Input of {@link scintillationFade}. */
export interface ScintillationFadeInput extends ScintillationPath {
  /** Percent of time for which the fade is exceeded; stated range 0.01 to 50. */
  readonly exceededPercent: number;
}

const SCINTILLATION_FADE_INPUT_KEYS = {
  exceededPercent: true,
  frequencyGHz: true,
  elevationDeg: true,
  diameterM: true,
  efficiencyRatio: true,
  wetRefractivityNUnits: true,
  turbulenceHeightM: true,
} satisfies Keys<ScintillationFadeInput>;

/** Scintillation fade with its terms in the order of the steps of the recommendation. */
export interface ScintillationFade {
  /** Edition computed. */
  readonly edition: 'P.618-14';
  /** Standard deviation of the reference signal, dB. */
  readonly referenceStandardDeviationDb: number;
  /** Length of the path through the turbulent layer, metres. */
  readonly turbulentPathM: number;
  /** Effective diameter of the antenna, metres. */
  readonly effectiveDiameterM: number;
  /** Antenna averaging factor, 0 to 1. */
  readonly averagingRatio: number;
  /** Standard deviation of the signal, dB. */
  readonly standardDeviationDb: number;
  /** Time percentage factor a(p). */
  readonly percentFactorRatio: number;
  /** Fade exceeded for the percentage of time, dB, 0 or more. */
  readonly attenuationDb: number;
  /** Names of inputs outside the stated ranges (4 to 55 GHz, 5 degrees and up, 0.01 to 50 % of time). */
  readonly outsideStatedRange: readonly string[];
}

/** Time percentage factor a(p); equation of step 8. It falls with p all the way. */
export function scintillationPercentFactor(exceededPercent: number): number {
  const log = Math.log10(exceededPercent);
  return 3 + log * (-1.71 + log * (0.072 - 0.061 * log));
}

/** Steps 3 to 7, from checked values. */
export function scintillationDeviation(
  frequencyGHz: number,
  elevationDeg: number,
  effectiveDiameterM: number,
  wetRefractivity: number,
  turbulenceHeightM: number,
) {
  const sine = sinDeg(elevationDeg);
  const referenceStandardDeviationDb = 3.6e-3 + 1e-4 * wetRefractivity;
  const turbulentPathM = (2 * turbulenceHeightM) / (Math.sqrt(sine * sine + 2.35e-4) + sine);
  const x = (1.22 * effectiveDiameterM * effectiveDiameterM * frequencyGHz) / turbulentPathM;
  // Beyond x of 7 the aperture is so large that nothing is left; the formula would turn imaginary.
  const squared =
    x >= 7
      ? 0
      : 3.86 * (x * x + 1) ** (11 / 12) * Math.sin((11 / 6) * Math.atan2(1, x)) -
        7.08 * x ** (5 / 6);
  const averagingRatio = Math.sqrt(Math.max(0, squared));
  return {
    referenceStandardDeviationDb,
    turbulentPathM,
    averagingRatio,
    standardDeviationDb:
      (referenceStandardDeviationDb * frequencyGHz ** (7 / 12) * averagingRatio) / sine ** 1.2,
  };
}

/** Checks what every scintillation call takes. */
export function checkedScintillation(input: ScintillationPath, row?: number) {
  const efficiency = inRange(
    'efficiencyRatio',
    input.efficiencyRatio ?? 0.5,
    0.01,
    1,
    'was it given in per cent?',
    row,
  );
  const diameterM = inRange(
    'diameterM',
    input.diameterM,
    0.01,
    100,
    'was it given in centimetres?',
    row,
  );
  return {
    frequencyGHz: checkedFrequencyGHz(input.frequencyGHz, row),
    elevationDeg: checkedRaisedElevationDeg(input.elevationDeg, row),
    effectiveDiameterM: diameterM * Math.sqrt(efficiency),
    wetRefractivity: inRange(
      'wetRefractivityNUnits',
      input.wetRefractivityNUnits,
      0,
      500,
      undefined,
      row,
    ),
    turbulenceHeightM: inRange('turbulenceHeightM', input.turbulenceHeightM ?? 1000, 10, 20000),
  };
}

/**
 * Fade by scintillation, the flicker of turbulent clear air, exceeded for a percentage of time.
 *
 * @param input  Frequency, elevation, antenna, wet refractivity and percentage of time; see the fields.
 * @returns Fade in dB (positive is a loss) with each step's value.
 * @throws {@link DomainError} naming the field that is missing, not finite or out of its domain.
 *
 * Source: Recommendation ITU-R P.618-14, section 2.4.1, steps 3 to 9.
 * Accuracy: 1e-9 relative against the ITU-R validation examples.
 * @example
 * ```ts
 * import { scintillationFade } from 'slantpath/propagation';
 * const fade = scintillationFade({
 *   frequencyGHz: 14.25,
 *   elevationDeg: 31.077,
 *   diameterM: 1,
 *   efficiencyRatio: 0.65,
 *   wetRefractivityNUnits: 50.389,
 *   exceededPercent: 0.1,
 * });
 * fade.attenuationDb.toFixed(3); // => '0.423'
 * ```
 */
export function scintillationFade(input: ScintillationFadeInput): ScintillationFade {
  const checked = checkedScintillation(known('input', input, SCINTILLATION_FADE_INPUT_KEYS));
  const { frequencyGHz, elevationDeg, effectiveDiameterM } = checked;
  const exceededPercent = checkedPercent(input.exceededPercent);
  const terms = scintillationDeviation(
    frequencyGHz,
    elevationDeg,
    effectiveDiameterM,
    checked.wetRefractivity,
    checked.turbulenceHeightM,
  );
  const percentFactorRatio = Math.max(0, scintillationPercentFactor(exceededPercent));
  return {
    edition: EDITION,
    referenceStandardDeviationDb: terms.referenceStandardDeviationDb,
    turbulentPathM: terms.turbulentPathM,
    effectiveDiameterM,
    averagingRatio: terms.averagingRatio,
    standardDeviationDb: terms.standardDeviationDb,
    percentFactorRatio,
    attenuationDb: percentFactorRatio * terms.standardDeviationDb,
    outsideStatedRange: namesOutside(
      ['frequencyGHz', frequencyGHz, 4, 55],
      ['elevationDeg', elevationDeg, 5, 90],
      ['exceededPercent', exceededPercent, 0.01, 50],
    ),
  };
}
