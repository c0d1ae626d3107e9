/** What misaligned or impure polarization costs, in the wanted and in the other polarization. */

import { inRange, oneOf } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { cosDeg, tanDeg } from '../numeric/angle.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';

/**
 * Loss in dB, 0 or more, of the wanted signal where a linear feed is turned by `rotationErrorDeg` against the
 * wave's plane: -20 log10 |cos|.
 *
 * @param rotationErrorDeg  Either sign, within 89.99; at a right angle nothing is left.
 * @throws {@link DomainError} naming `rotationErrorDeg`.
 *
 * Source: A. K. Maini and V. Agrawal, Satellite Communication (Wiley India, 2010), Example 7.3. Accuracy: rounding only.
 * @example
 * ```ts
 * import { polarizationMismatchLoss } from 'slantpath/antenna';
 * polarizationMismatchLoss(3).toFixed(3); // => '0.012'
 * ```
 */
export function polarizationMismatchLoss(rotationErrorDeg: number): number {
  const angleDeg = inRange('rotationErrorDeg', rotationErrorDeg, -89.99, 89.99);
  return -2 * ratioToDb(cosDeg(angleDeg)) + 0;
}

/** What limits the isolation of the two polarizations. */
export type PolarizationPurity =
  | {
      readonly kind: 'linear';
      /** Rotation of the feed against the wave's plane in degrees, either sign, within 45. */
      readonly rotationErrorDeg: number;
      /** Cross-polar isolation of the receiving antenna itself in dB, 0 to 100. */
      readonly antennaIsolationDb: number;
      /** Cross-polar isolation of the wave as the satellite sends it in dB, 0 to 100; default 100. */
      readonly waveIsolationDb?: number;
    }
  | {
      readonly kind: 'circular';
      /** Axial ratio of the receiving antenna in dB, 0 (round) to 40. */
      readonly antennaAxialRatioDb: number;
      /** Axial ratio of the wave in dB, 0 to 40; where both are 0 the isolation is given as 200 dB. */
      readonly waveAxialRatioDb: number;
    };

const POLARIZATION_PURITY_KEYS = {
  kind: true,
  rotationErrorDeg: true,
  antennaIsolationDb: true,
  waveIsolationDb: true,
  antennaAxialRatioDb: true,
  waveAxialRatioDb: true,
} satisfies Keys<PolarizationPurity>;

/** One cause of leakage between the polarizations. */
export interface Leakage {
  /** `rotation`, `antenna` or `wave`. */
  readonly cause: 'rotation' | 'antenna' | 'wave';
  /** Power that leaks over the wanted power, 0 or more. */
  readonly powerRatio: number;
}

/** Isolation with its causes. */
export interface CrossPolarIsolation {
  /** Each cause in the order of the calculation. */
  readonly leakages: readonly Leakage[];
  /** Isolation in dB where the causes add as powers (unknown phases, the usual case). */
  readonly isolationDb: number;
  /** Isolation in dB where all causes add in phase: the least there can be. */
  readonly worstCaseIsolationDb: number;
}

/** Field leak of an axial ratio in decibels: (r - 1) / (r + 1). */
function axialLeak(axialRatioDb: number): number {
  const ratio = 10 ** (axialRatioDb / 20);
  return (ratio - 1) / (ratio + 1);
}

/**
 * Isolation between two orthogonal polarizations at a receiving antenna.
 *
 * Linear: a rotation leaks tan^2 of the error, on top of what antenna and wave leak themselves. Circular: an axial
 * ratio r leaks ((r - 1) / (r + 1))^2.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: definitions; W. L. Stutzman, Polarization in Electromagnetic Systems (1993).
 * Accuracy: first order in the leaks when they combine: better than 0.1 dB above 20 dB of isolation.
 * @example
 * ```ts
 * import { crossPolarIsolation } from 'slantpath/antenna';
 * const purity = { kind: 'linear', rotationErrorDeg: 2, antennaIsolationDb: 30 } as const;
 * crossPolarIsolation(purity).isolationDb.toFixed(1); // => '26.5'
 * ```
 */
export function crossPolarIsolation(purity: PolarizationPurity): CrossPolarIsolation {
  const input = known('purity', purity, POLARIZATION_PURITY_KEYS);
  oneOf('kind', input.kind, ['linear', 'circular']);
  const fields: (readonly [Leakage['cause'], number])[] =
    input.kind === 'linear'
      ? [
          [
            'rotation',
            Math.abs(tanDeg(inRange('rotationErrorDeg', input.rotationErrorDeg, -45, 45))),
          ],
          ['antenna', Math.sqrt(isolationLeak('antennaIsolationDb', input.antennaIsolationDb))],
          ['wave', Math.sqrt(isolationLeak('waveIsolationDb', input.waveIsolationDb ?? 100))],
        ]
      : [
          ['antenna', axialLeak(inRange('antennaAxialRatioDb', input.antennaAxialRatioDb, 0, 40))],
          ['wave', axialLeak(inRange('waveAxialRatioDb', input.waveAxialRatioDb, 0, 40))],
        ];
  let power = 0;
  let amplitude = 0;
  for (const [, field] of fields) {
    power += field * field;
    amplitude += field;
  }
  // Two round polarizations isolate without limit: held at 200 dB.
  return {
    leakages: fields.map(([cause, field]) => ({ cause, powerRatio: field * field })),
    isolationDb: -ratioToDb(Math.max(power, 1e-20)) + 0,
    worstCaseIsolationDb: -2 * ratioToDb(Math.max(amplitude, 1e-10)) + 0,
  };
}

function isolationLeak(parameter: string, isolationDb: number): number {
  return dbToRatio(-inRange(parameter, isolationDb, 0, 100));
}
