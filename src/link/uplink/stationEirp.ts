/** What an earth station sends: its EIRP, and the EIRP that a flux density at the satellite asks for. */

import { checkedLossDb } from '../../antenna/internal.js';
import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { checkedRangeKm } from '../budget/freeSpaceLoss.js';
import { type BudgetTerm, runningTerms } from '../budget/term.js';
import { checkedFlux } from './uplink.js';

/** What an earth station sends with. */
export interface SendingStation {
  /** Power of the amplifier at saturation in watts, above 0 up to 1e6. */
  readonly saturatedPowerW: number;
  /** How far the carrier stays below that, in dB, 0 or more; default 0. */
  readonly outputBackOffDb?: number;
  /** Loss between amplifier and antenna in dB, 0 or more; default 0. */
  readonly feedLossDb?: number;
  /** Gain of the antenna in dBi, -50 to 100. */
  readonly antennaGainDbi: number;
  /** Pointing loss in dB, 0 or more; default 0. */
  readonly pointingLossDb?: number;
}

const SENDING_STATION_KEYS = {
  saturatedPowerW: true,
  outputBackOffDb: true,
  feedLossDb: true,
  antennaGainDbi: true,
  pointingLossDb: true,
} satisfies Keys<SendingStation>;

/** EIRP with its lines. */
export interface StationEirp {
  /** All lines in the order of the hand calculation; the last running sum is the EIRP. */
  readonly terms: readonly BudgetTerm[];
  /** Power radiated towards the satellite, referred to an isotropic antenna, in dBW. */
  readonly eirpDbw: number;
}

/**
 * EIRP of an earth station: amplifier power less back-off and losses, plus antenna gain.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., section 12.7.3. Accuracy: rounding only.
 * @example
 * ```ts
 * import { stationEirp } from 'slantpath/link';
 * stationEirp({ saturatedPowerW: 4, feedLossDb: 0.5, antennaGainDbi: 43.2 }).eirpDbw.toFixed(2); // => '48.72'
 * ```
 */
export function stationEirp(station: SendingStation): StationEirp {
  const input = known('station', station, SENDING_STATION_KEYS);
  const powerW = inRange('saturatedPowerW', input.saturatedPowerW, 1e-9, 1e6, 'is it in watts?');
  const backOffDb = checkedLossDb('outputBackOffDb', input.outputBackOffDb ?? 0);
  const feedDb = checkedLossDb('feedLossDb', input.feedLossDb ?? 0);
  const gainDbi = inRange('antennaGainDbi', input.antennaGainDbi, -50, 100);
  const pointingDb = checkedLossDb('pointingLossDb', input.pointingLossDb ?? 0);
  const terms = runningTerms([
    ['saturated-power', 10 * Math.log10(powerW), 'dBW'],
    ['output-back-off', -backOffDb, 'dB'],
    ['feed-loss', -feedDb, 'dB'],
    ['antenna-gain', gainDbi, 'dBi'],
    ['pointing-loss', -pointingDb, 'dB'],
  ]);
  return { terms, eirpDbw: terms[4]?.runningDb ?? 0 };
}

const EIRP_FOR_FLUX_PATH_KEYS = {
  fluxDensityDbwPerM2: true,
  slantRangeKm: true,
  lossDb: true,
} satisfies Keys<Parameters<typeof eirpForFlux>[0]>;

/**
 * EIRP in dBW that an earth station needs to bring a flux density to a satellite.
 *
 * @param path  `fluxDensityDbwPerM2` wanted; `slantRangeKm`; `lossDb` of the path besides spreading, 0 or more, default 0.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., equation 12.47. Accuracy: rounding only.
 * @example
 * ```ts
 * import { eirpForFlux } from 'slantpath/link';
 * eirpForFlux({ fluxDensityDbwPerM2: -90, slantRangeKm: 37000 }).toFixed(2); // => '72.36'
 * ```
 */
export function eirpForFlux(path: {
  readonly fluxDensityDbwPerM2: number;
  readonly slantRangeKm: number;
  readonly lossDb?: number;
}): number {
  const input = known('path', path, EIRP_FOR_FLUX_PATH_KEYS);
  const fluxDb = checkedFlux(input.fluxDensityDbwPerM2, 'fluxDensityDbwPerM2');
  const rangeM = checkedRangeKm(input.slantRangeKm) * 1000;
  const lossDb = checkedLossDb('lossDb', input.lossDb ?? 0);
  return fluxDb + 10 * Math.log10(4 * Math.PI * rangeM * rangeM) + lossDb;
}
