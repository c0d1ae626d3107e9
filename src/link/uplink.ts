/** The way up: what reaches the satellite and how well. */

import { checkedLossDb, inRange } from '../antenna/guards.js';
import { BOLTZMANN_DBW_PER_K_HZ } from '../constants.js';
import { object } from '../errors.js';
import { checkedRangeKm, freeSpaceLoss, isotropicAreaDb } from './freeSpaceLoss.js';
import { type BudgetTerm, runningTerms } from './term.js';

/** The way up to a satellite. */
export interface Uplink {
  /** Power that the earth station sends towards the satellite in this carrier (EIRP), in dBW, -50 to 120. */
  readonly eirpDbw: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /** Distance in kilometres. */
  readonly slantRangeKm: number;
  /** Attenuation in clear weather in dB, 0 or more; default 0. */
  readonly clearAttenuationDb?: number;
  /** Further attenuation by weather in dB, 0 or more; default 0. */
  readonly rainAttenuationDb?: number;
  /** How much of that the station makes good by raising its power, in dB, 0 or more; default 0. */
  readonly powerControlDb?: number;
  /** Pointing and any other loss in dB, 0 or more; default 0. */
  readonly otherLossDb?: number;
  /** Figure of merit of the satellite towards the station in dB/K, -60 to 60. */
  readonly figureOfMeritDbPerK: number;
}

/** Uplink budget with its lines. */
export interface UplinkBudget {
  /** All lines in the order of the hand calculation; the last running sum is the carrier over noise density. */
  readonly terms: readonly BudgetTerm[];
  /** Power flux density at the satellite in dBW/m2. */
  readonly fluxDensityDbwPerM2: number;
  /** Uplink carrier over noise density in dBHz. */
  readonly cn0DbHz: number;
}

/**
 * Budget of an uplink: C/N0 = EIRP - losses + G/T - k, and the flux density that drives the transponder.
 *
 * Rain on the way up weakens the carrier only: the satellite looks at a warm Earth in any weather.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., section 12.7. Accuracy: rounding only.
 * @example
 * ```ts
 * import { uplinkBudget } from 'slantpath/link';
 * const up = uplinkBudget({
 *   eirpDbw: 45,
 *   frequencyGHz: 14.25,
 *   slantRangeKm: 37000,
 *   figureOfMeritDbPerK: 3,
 * });
 * up.cn0DbHz.toFixed(2); // => '69.71'
 * ```
 */
export function uplinkBudget(uplink: Uplink): UplinkBudget {
  const input = object('uplink', uplink);
  const eirpDbw = inRange('eirpDbw', input.eirpDbw, -50, 120, 'is the EIRP in dBW?');
  const freeSpaceDb = freeSpaceLoss(input).lossDb;
  const clearDb = checkedLossDb('clearAttenuationDb', input.clearAttenuationDb ?? 0);
  const rainDb = checkedLossDb('rainAttenuationDb', input.rainAttenuationDb ?? 0);
  const controlDb = Math.min(rainDb, checkedLossDb('powerControlDb', input.powerControlDb ?? 0));
  const otherDb = checkedLossDb('otherLossDb', input.otherLossDb ?? 0);
  const meritDb = inRange('figureOfMeritDbPerK', input.figureOfMeritDbPerK, -60, 60);
  const terms = runningTerms([
    ['station-eirp', eirpDbw, 'dBW'],
    ['free-space-loss', -freeSpaceDb, 'dB'],
    ['clear-attenuation', -clearDb, 'dB'],
    ['rain-attenuation', -rainDb, 'dB'],
    ['power-control', controlDb, 'dB'],
    ['other-loss', -otherDb, 'dB'],
    ['figure-of-merit', meritDb, 'dB/K'],
    ['boltzmann', -BOLTZMANN_DBW_PER_K_HZ, 'dBW/K/Hz'],
  ]);
  const isotropicDbw = terms[5]?.runningDb ?? 0;
  return {
    terms,
    // Power at an isotropic antenna over its area.
    fluxDensityDbwPerM2: isotropicDbw - isotropicAreaDb(input.frequencyGHz),
    cn0DbHz: terms[7]?.runningDb ?? 0,
  };
}

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
  const input = object('station', station);
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

/** A carrier that drives a transponder to a known back-off. */
export interface DrivenUplink {
  /** Flux density that saturates the transponder in dBW/m2, -150 to 0. */
  readonly saturationFluxDensityDbwPerM2: number;
  /** How far the carrier stays below it, in dB, 0 or more. */
  readonly inputBackOffDb: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /** Figure of merit of the satellite towards the station in dB/K. */
  readonly figureOfMeritDbPerK: number;
  /** Loss in the satellite's receiver feed in dB, 0 or more, where the figure of merit leaves it out; default 0. */
  readonly feedLossDb?: number;
}

/**
 * Uplink carrier over noise density from the transponder's side: saturation flux density less back-off, times
 * the area of an isotropic antenna.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., equation 12.53. Accuracy: rounding only.
 * @example
 * ```ts
 * import { drivenUplink } from 'slantpath/link';
 * const up = drivenUplink({
 *   saturationFluxDensityDbwPerM2: -98,
 *   inputBackOffDb: 10,
 *   frequencyGHz: 14,
 *   figureOfMeritDbPerK: 3,
 *   feedLossDb: 1,
 * });
 * up.cn0DbHz.toFixed(2); // => '78.22'
 * ```
 */
export function drivenUplink(uplink: DrivenUplink): UplinkBudget {
  const input = object('uplink', uplink);
  const saturationDb = checkedFlux(input.saturationFluxDensityDbwPerM2);
  const backOffDb = checkedLossDb('inputBackOffDb', input.inputBackOffDb);
  const merit = inRange('figureOfMeritDbPerK', input.figureOfMeritDbPerK, -60, 60);
  const feedDb = checkedLossDb('feedLossDb', input.feedLossDb ?? 0);
  freeSpaceLoss({ frequencyGHz: input.frequencyGHz, slantRangeKm: 1 });
  const terms = runningTerms([
    ['saturation-flux-density', saturationDb, 'dBW/m2'],
    ['input-back-off', -backOffDb, 'dB'],
    ['isotropic-area', isotropicAreaDb(input.frequencyGHz), 'dBm2'],
    ['figure-of-merit', merit, 'dB/K'],
    ['feed-loss', -feedDb, 'dB'],
    ['boltzmann', -BOLTZMANN_DBW_PER_K_HZ, 'dBW/K/Hz'],
  ]);
  return {
    terms,
    fluxDensityDbwPerM2: saturationDb - backOffDb,
    cn0DbHz: terms[5]?.runningDb ?? 0,
  };
}

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
  const input = object('path', path);
  const fluxDb = checkedFlux(input.fluxDensityDbwPerM2, 'fluxDensityDbwPerM2');
  const rangeM = checkedRangeKm(input.slantRangeKm) * 1000;
  const lossDb = checkedLossDb('lossDb', input.lossDb ?? 0);
  return fluxDb + 10 * Math.log10(4 * Math.PI * rangeM * rangeM) + lossDb;
}

/** Returns a power flux density of -250 to 50 dBW/m2, otherwise throws. */
export function checkedFlux(value: number, parameter = 'saturationFluxDensityDbwPerM2'): number {
  return inRange(parameter, value, -250, 50, 'is the flux density in dBW/m2?');
}
