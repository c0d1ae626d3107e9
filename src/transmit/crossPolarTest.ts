/** The cross-polar test of a transmitting station: isolation from readings near the noise, and leaks in line. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';
import { signalWithoutNoise } from '../readings/index.js';

/** Levels that the monitoring station reads. */
export interface CrossPolarReadings {
  /** Carrier in its own polarization with its noise in dBm. */
  readonly coPolarDbm: number;
  /** The same carrier in the other polarization with its noise in dBm. */
  readonly crossPolarDbm: number;
  /** Noise in the other polarization with the carrier off in dBm. */
  readonly noiseDbm: number;
  /** Standard uncertainty of the difference of two readings in dB, 0 to 10; default 0.2. */
  readonly standardUncertaintyDb?: number;
}

const CROSS_POLAR_READINGS_KEYS = {
  coPolarDbm: true,
  crossPolarDbm: true,
  noiseDbm: true,
  standardUncertaintyDb: true,
} satisfies Keys<CrossPolarReadings>;

/** Isolation measured; read `kind` first. */
export type CrossPolarIsolationRead =
  | {
      readonly kind: 'isolation';
      /** Carrier in its own polarization over the carrier in the other one, in dB. */
      readonly isolationDb: number;
      /** Standard uncertainty in dB: grows as the leak sinks into the noise. */
      readonly standardUncertaintyDb: number;
    }
  /** The leak cannot be told from the noise: the isolation is at least this (95 %). */
  | { readonly kind: 'at-least'; readonly isolationDb: number };

/**
 * Cross-polar isolation from readings near the noise.
 *
 * The noise is taken off both readings; where the leak cannot be told from it, only a least isolation is given.
 *
 * @throws {@link DomainError} naming the field; `coPolarDbm` must stand out of the noise.
 * Source: subtraction of powers; ITU-R S.727 (1992) asks for 25 dB within the 0.3 dB contour, 20 dB elsewhere; many operators
 * ask for more. Accuracy: as `signalWithoutNoise`.
 * @example
 * ```ts
 * import { crossPolarIsolationRead } from 'slantpath/transmit';
 * const readings = { coPolarDbm: -48.5, crossPolarDbm: -78.1, noiseDbm: -82 };
 * const read = crossPolarIsolationRead(readings);
 * read.isolationDb.toFixed(1); // => '31.9'
 * ```
 */
export function crossPolarIsolationRead(readings: CrossPolarReadings): CrossPolarIsolationRead {
  const given = knownOnly('readings', readings, CROSS_POLAR_READINGS_KEYS);
  const u = given.standardUncertaintyDb ?? 0.2;
  const noiseDbm = inRange('noiseDbm', given.noiseDbm, -200, 60);
  const coPolarDbm = inRange(
    'coPolarDbm',
    given.coPolarDbm,
    noiseDbm + 3,
    60,
    'is it the level in the other polarization?',
  );
  const co = signalWithoutNoise({
    signalPlusNoiseDbm: coPolarDbm,
    noiseDbm,
    standardUncertaintyDb: u,
  });
  const cross = signalWithoutNoise({
    signalPlusNoiseDbm: inRange('crossPolarDbm', given.crossPolarDbm, -200, 60),
    noiseDbm,
    standardUncertaintyDb: u,
  });
  const isolationDb = co.levelDbm - cross.levelDbm;
  if (cross.kind === 'at-most' || co.kind === 'at-most') return { kind: 'at-least', isolationDb };
  return {
    kind: 'isolation',
    isolationDb,
    standardUncertaintyDb: Math.hypot(co.standardUncertaintyDb, cross.standardUncertaintyDb),
  };
}

/** Two leaks in line: station and satellite, or antenna and feed. */
export interface LeaksInLine {
  /** Isolation in dB where the leaks add in phase: the least. */
  readonly worstDb: number;
  /** Isolation in dB where they add as powers: the usual expectation over unknown phases. */
  readonly powersDb: number;
  /** Isolation in dB where they oppose each other: the most; 200 where they cancel. */
  readonly bestDb: number;
}

const LEAKS_IN_LINE_LEAKS_KEYS = { firstDb: true, secondDb: true } satisfies Keys<
  Parameters<typeof leaksInLine>[0]
>;

/**
 * Isolation of two leaks in line. A measured value lies anywhere between worst and best: the phases are not known.
 *
 * @param leaks  Isolation of each in dB, 0 to 100.
 * @throws {@link DomainError} naming the field.
 * Source: sum of two small fields of unknown phase. Accuracy: first order in the leaks.
 * @example
 * ```ts
 * import { leaksInLine } from 'slantpath/transmit';
 * leaksInLine({ firstDb: 30, secondDb: 25 }).worstDb.toFixed(1); // => '21.1'
 * ```
 */
export function leaksInLine(leaks: {
  readonly firstDb: number;
  readonly secondDb: number;
}): LeaksInLine {
  const given = knownOnly('leaks', leaks, LEAKS_IN_LINE_LEAKS_KEYS);
  const first = dbToRatio(-inRange('firstDb', given.firstDb, 0, 100) / 2);
  const second = dbToRatio(-inRange('secondDb', given.secondDb, 0, 100) / 2);
  const isolation = (field: number): number => -2 * ratioToDb(Math.max(field, 1e-10)) + 0;
  return {
    worstDb: isolation(first + second),
    powersDb: isolation(Math.hypot(first, second)),
    bestDb: isolation(Math.abs(first - second)),
  };
}
