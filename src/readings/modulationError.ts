/** Modulation error ratio (MER): its definition, and the ceilings that keep an instrument from showing more. */

import { DomainError, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { dbToRatio, ratioToDb } from '../numeric/decibel.js';

/** Ideal and received points of a constellation. */
export interface ConstellationPoint {
  /** Ideal in-phase part. */
  readonly idealI: number;
  /** Ideal quadrature part. */
  readonly idealQ: number;
  /** Received in-phase part. */
  readonly receivedI: number;
  /** Received quadrature part. */
  readonly receivedQ: number;
}

/** Both usual measures of the same error. */
export interface ModulationError {
  /** Power of the ideal points over power of the errors in dB. */
  readonly merDb: number;
  /** Error over the root mean square of the ideal points in percent. */
  readonly errorVectorPercent: number;
}

/**
 * Modulation error ratio of received points.
 *
 * In noise alone, with an ideal receiver, MER is Es/N0; it counts every other impairment too.
 *
 * @param points  2 to 1,000,000 points.
 * @throws {@link DomainError} `too-few`; naming the part of a point (`points[3].receivedI`); `inconsistent` where there is no
 *   error or no signal at all.
 * Source: ETSI TR 101 290 (definition read in texts that cite it). Accuracy: rounding only.
 * @example
 * ```ts
 * import { modulationError } from 'slantpath/readings';
 * const points = [
 *   { idealI: 1, idealQ: 0, receivedI: 1.1, receivedQ: 0 },
 *   { idealI: -1, idealQ: 0, receivedI: -0.9, receivedQ: 0 },
 * ];
 * modulationError(points).merDb.toFixed(2); // => '20.00'
 * ```
 */
export function modulationError(points: readonly ConstellationPoint[]): ModulationError {
  if (!Array.isArray(points) || points.length < 2 || points.length > 1_000_000)
    throw new DomainError({
      code: Array.isArray(points) ? 'too-few' : 'malformed',
      parameter: 'points',
      received: points,
      allowed: 'an array of 2 to 1000000 points',
    });
  let signal = 0;
  let error = 0;
  points.forEach((point, index) => {
    const at = known(`points[${index}]`, point, {
      idealI: true,
      idealQ: true,
      receivedI: true,
      receivedQ: true,
    });
    const idealI = inRange(`points[${index}].idealI`, at.idealI, -1e6, 1e6);
    const idealQ = inRange(`points[${index}].idealQ`, at.idealQ, -1e6, 1e6);
    const errorI = inRange(`points[${index}].receivedI`, at.receivedI, -1e6, 1e6) - idealI;
    const errorQ = inRange(`points[${index}].receivedQ`, at.receivedQ, -1e6, 1e6) - idealQ;
    signal += idealI * idealI + idealQ * idealQ;
    error += errorI * errorI + errorQ * errorQ;
  });
  if (!(signal > 0 && error > 0 && signal < 1e300 && error / signal > 1e-20))
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'points',
      received: points,
      allowed: 'points with a signal and with an error',
    });
  return { merDb: ratioToDb(signal / error), errorVectorPercent: 100 * Math.sqrt(error / signal) };
}

/** An instrument's reading and the most that it can show. */
export interface MerReading {
  /** Modulation error ratio shown, or Es/N0, in dB, -20 to 60. */
  readonly valueDb: number;
  /** The most that instrument and transmitter together can show in dB, 0 to 80. */
  readonly ceilingDb: number;
  /** Standard uncertainty of the value in dB, 0 to 10; default 0. */
  readonly standardUncertaintyDb?: number;
}

const MER_READING_KEYS = {
  valueDb: true,
  ceilingDb: true,
  standardUncertaintyDb: true,
} satisfies Keys<MerReading>;

/**
 * MER in dB that an instrument with a ceiling shows for an Es/N0: the error powers add.
 *
 * @throws {@link DomainError} naming the field.
 * Source: practice of the trade: independent error powers add, 1/MER = 1/(Es/N0) + 1/ceiling. Accuracy: rounding only.
 * @example
 * ```ts
 * import { shownMer } from 'slantpath/readings';
 * shownMer({ valueDb: 12, ceilingDb: 20 }).toFixed(2); // => '11.36'
 * ```
 */
export function shownMer(reading: MerReading): number {
  const given = known('reading', reading, MER_READING_KEYS);
  const value = dbToRatio(-inRange('valueDb', given.valueDb, -20, 60));
  return -ratioToDb(value + dbToRatio(-inRange('ceilingDb', given.ceilingDb, 0, 80)));
}

/** What an MER says about Es/N0; read `kind` first. */
export type SymbolEnergyFromMer =
  | {
      readonly kind: 'value';
      /** Es/N0 in dB. */
      readonly symbolEnergyToNoiseDb: number;
      /** Standard uncertainty in dB: grows without limit towards the ceiling. */
      readonly standardUncertaintyDb: number;
    }
  | {
      /** The reading is so near its ceiling that Es/N0 is at least this, and how much more cannot be told. */
      readonly kind: 'at-least';
      /** Lowest Es/N0 in dB (95 %). */
      readonly symbolEnergyToNoiseDb: number;
    };

/**
 * Es/N0 behind an MER that is shown by an instrument with a ceiling.
 *
 * @throws {@link DomainError} naming the field; `inconsistent` where even the lowest value the reading may mean (95 %) lies
 *   above the ceiling.
 * Source: as `shownMer`, solved; first-order propagation (JCGM 100:2008, 5.1.2). Accuracy: rounding only.
 * @example
 * ```ts
 * import { symbolEnergyFromMer } from 'slantpath/readings';
 * symbolEnergyFromMer({ valueDb: 11.4, ceilingDb: 20 }).symbolEnergyToNoiseDb.toFixed(2); // => '12.05'
 * ```
 */
export function symbolEnergyFromMer(reading: MerReading): SymbolEnergyFromMer {
  const given = known('reading', reading, MER_READING_KEYS);
  const valueDb = inRange('valueDb', given.valueDb, -20, 60);
  const ceilingDb = inRange('ceilingDb', given.ceilingDb, 0, 80);
  const u = inRange('standardUncertaintyDb', given.standardUncertaintyDb ?? 0, 0, 10);
  const solve = (db: number): number => -ratioToDb(dbToRatio(-db) - dbToRatio(-ceilingDb));
  const lowestDb = valueDb - 1.6448536269514722 * u;
  if (lowestDb >= ceilingDb)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'valueDb',
      received: valueDb,
      allowed: `below the ceiling of ${ceilingDb} dB`,
    });
  const highestDb = valueDb + 1.6448536269514722 * u;
  if (highestDb >= ceilingDb) return { kind: 'at-least', symbolEnergyToNoiseDb: solve(lowestDb) };
  return {
    kind: 'value',
    symbolEnergyToNoiseDb: solve(valueDb),
    standardUncertaintyDb: u / (1 - dbToRatio(valueDb - ceilingDb)),
  };
}

/**
 * How much an error vector that is referred to the outermost points of 16APSK reads better than the MER, in dB.
 *
 * @param ringRatio  Radius of the outer ring over that of the inner one, 1 to 10.
 * @throws {@link DomainError} naming `ringRatio`.
 * Source: mean power of 4 inner and 12 outer points. Accuracy: rounding only.
 * @example
 * ```ts
 * import { outerRingAboveMeanDb } from 'slantpath/readings';
 * outerRingAboveMeanDb(3.15).toFixed(3); // => '1.106'
 * ```
 */
export function outerRingAboveMeanDb(ringRatio: number): number {
  const square = inRange('ringRatio', ringRatio, 1, 10) ** 2;
  return ratioToDb((16 * square) / (4 + 12 * square)) + 0;
}
