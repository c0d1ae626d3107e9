/** What an instrument shows of one carrier at one test point, undisturbed or changed by a fault. */

import { valueAt } from '../../numeric/columns.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';
import { normalProbability } from '../../numeric/normal.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';

/** What a fault does to one carrier at one test point; a field left out does nothing. */
export interface Change {
  /** Change of the carrier before the cables in dB. */
  readonly carrierDb?: number;
  /** Rise of the noise before the cables in dB. */
  readonly noiseRiseDb?: number;
  /** Unwanted power as a ratio to the undisturbed carrier. */
  readonly unwantedRatio?: number;
  /** Change of everything by cables and parts in dB. */
  readonly gainDb?: number;
  /** Rotation of the polarization in degrees. */
  readonly rotationDeg?: number;
  /** Cross-polar isolation that the fault leaves at best, in dB. */
  readonly isolationDb?: number;
  /** Chance that a foreign service is received where the wanted one is not, 0 to 1. */
  readonly foreignRatio?: number;
}

/** What is shown. */
export interface Channel {
  /** Carrier, noise and unwanted power in dBuV. */
  readonly levelDbuv: number;
  /** Ratio of the carrier to all else in dB. */
  readonly carrierToNoiseDb: number;
  /** Cross-polar isolation in dB. */
  readonly isolationDb: number;
  /** Chances of what is received. */
  readonly reception: { readonly wanted: number; readonly other: number; readonly nothing: number };
}

const UNCHANGED: Change = {};

/** Rise of the system noise in dB by a lossy medium at `mediumK` in front of the antenna. */
export function noiseRiseDb(lossDb: number, mediumK: number, systemNoiseK: number): number {
  return ratioToDb(1 + (mediumK / systemNoiseK) * (1 - dbToRatio(-lossDb)));
}

/** The channel at a test point under a change. */
export function channel(
  context: CauseContext,
  carrier: CarrierContext,
  point: TestPointContext,
  change: Change = UNCHANGED,
): Channel {
  const rotationDeg = change.rotationDeg ?? 0;
  const tilt =
    rotationDeg === 0 ? 0 : Math.tan((Math.min(89, Math.abs(rotationDeg)) * Math.PI) / 180);
  const cosSquare = 1 / (1 + tilt * tilt);
  const undisturbed = dbToRatio(
    carrier.levelDbuv - valueAt(point.lossesDb, carrier.index) + (change.gainDb ?? 0),
  );
  const carrierRatio = change.carrierDb === undefined ? 1 : dbToRatio(change.carrierDb);
  const power = undisturbed * carrierRatio * cosSquare;
  const noise =
    undisturbed * dbToRatio((change.noiseRiseDb ?? 0) - carrier.carrierToNoiseDb) + point.noise;
  // The other polarization is taken to hold a carrier as strong as the wanted one.
  const crossed = undisturbed * carrierRatio * (1 - cosSquare);
  const unwanted = undisturbed * (change.unwantedRatio ?? 0) + crossed;
  const rest = noise + unwanted;
  const carrierToNoiseDb = ratioToDb(power / rest);
  const feed =
    tilt +
    context.crossPolarVoltageRatio +
    (change.isolationDb === undefined ? 0 : dbToRatio(-change.isolationDb / 2));
  const isolationDb = -ratioToDb(feed * feed + noise / power);
  // The threshold is soft: implementations and short fades differ.
  const wanted = 0.005 + 0.99 * normalProbability((carrierToNoiseDb - carrier.thresholdDb) / 0.8);
  const other = (1 - wanted) * Math.max(0.02, change.foreignRatio ?? 0);
  return {
    levelDbuv: ratioToDb(power + rest),
    carrierToNoiseDb,
    isolationDb,
    reception: { wanted, other, nothing: 1 - wanted - other },
  };
}
