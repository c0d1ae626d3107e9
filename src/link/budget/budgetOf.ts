/** The lines of a prepared link's budget. */

import { BOLTZMANN_DBW_PER_K_HZ } from '../../constants.js';
import { ratioToDb } from '../../numeric/decibel.js';
import { combinedDb } from './combine.js';
import type { LinkBudget } from './linkBudget.js';
import { noiseThrough, type PreparedLink, requiredDb, type Weather } from './preparedLink.js';
import { runningTerms, type TermSeed } from './term.js';

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
