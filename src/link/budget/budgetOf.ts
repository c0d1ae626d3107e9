/** The lines of a prepared link's budget. */

import { BOLTZMANN_DBW_PER_K_HZ } from '../../constants.js';
import { ratioToDb } from '../../numeric/decibel.js';
import type { AntennaNoise } from '../noise/antennaNoise.js';
import type { SystemNoise } from '../noise/systemNoise.js';
import { combinedDb } from './combine.js';
import { noiseThrough, type PreparedLink, requiredDb, type Weather } from './preparedLink.js';
import { type BudgetTerm, runningTerms, type TermSeed } from './term.js';

/** A budget with its lines. */
export interface LinkBudget {
  /** All lines in the order of the hand calculation; the last running sum is the margin. */
  readonly terms: readonly BudgetTerm[];
  /** The antenna's noise and its parts. */
  readonly antennaNoise: AntennaNoise;
  /** The system's noise and its parts. */
  readonly systemNoise: SystemNoise;
  /** Antenna gain less all losses behind the aperture and system noise, in dB/K. */
  readonly figureOfMeritDbPerK: number;
  /** Carrier power at the amplifier's input in dBW. */
  readonly carrierDbw: number;
  /** Downlink carrier over thermal noise density in dBHz. */
  readonly downlinkCarrierToNoiseDensityDbHz: number;
  /** Downlink energy per symbol over noise density in dB; equals C/N in the symbol-rate bandwidth. */
  readonly downlinkEsN0Db: number;
  /** With all impairments: energy per symbol over the density of noise and interference, in dB. */
  readonly esN0Db: number;
  /** The same per useful bit, in dB. */
  readonly ebN0Db: number;
  /** What the receiver needs, implementation loss included, in dB. */
  readonly requiredEsN0Db: number;
  /** What is left, in dB; negative where the link does not close. */
  readonly marginDb: number;
}

/** Budget of a prepared link in a weather, its own unless another is given. */
export function budgetOf(link: PreparedLink, weather: Weather = link.weather): LinkBudget {
  const { terminal, threshold } = link;
  const { antenna, system, noiseDb } = noiseThrough(link, weather.clearDb + weather.rainDb);
  const seeds: TermSeed[] = [
    ['satellite-eirp', link.eirpDbw, 'dBW'],
    ['free-space-loss', -link.freeSpaceDb, 'dB'],
    ['clear-attenuation', -weather.clearDb, 'dB'],
    ['rain-attenuation', -weather.rainDb, 'dB'],
    ['scintillation', -weather.scintillationDb, 'dB'],
    ['other-loss', -link.otherDb, 'dB'],
    ['antenna-gain', terminal.antennaGainDbi, 'dBi'],
    ['pointing-loss', -terminal.pointingLossDb, 'dB'],
    ['polarization-loss', -terminal.polarizationLossDb, 'dB'],
    ['feed-loss', -terminal.feedLossDb, 'dB'],
    ['system-noise', -noiseDb, 'dB/K'],
    ['boltzmann', -BOLTZMANN_DBW_PER_K_HZ, 'dBW/K/Hz'],
    ['symbol-rate', -link.symbolRateDb, 'dBHz'],
  ];
  const received = runningTerms(seeds);
  const sumDb = (name: string): number =>
    received.find((term) => term.name === name)?.runningDb ?? 0;
  const downlinkEsN0Db = sumDb('symbol-rate');
  const ratiosDb = [downlinkEsN0Db];
  let esN0Db = downlinkEsN0Db;
  link.impairmentsDb.forEach((ratioDb, index) => {
    ratiosDb.push(ratioDb);
    const combined = combinedDb(ratiosDb);
    seeds.push([link.impairmentNames[index] ?? 'impairment', combined - esN0Db, 'dB']);
    esN0Db = combined;
  });
  seeds.push(
    ['implementation-loss', -link.implementationDb, 'dB'],
    ['threshold', -threshold.esN0Db, 'dB'],
  );
  const requiredEsN0Db = requiredDb(link);
  return {
    terms: runningTerms(seeds),
    antennaNoise: antenna,
    systemNoise: system,
    figureOfMeritDbPerK:
      terminal.antennaGainDbi -
      terminal.pointingLossDb -
      terminal.polarizationLossDb -
      terminal.feedLossDb -
      noiseDb,
    carrierDbw: sumDb('feed-loss'),
    downlinkCarrierToNoiseDensityDbHz: sumDb('boltzmann'),
    downlinkEsN0Db,
    esN0Db,
    ebN0Db: esN0Db - ratioToDb(threshold.bitsPerSymbol),
    requiredEsN0Db,
    marginDb: esN0Db - requiredEsN0Db,
  };
}
