/** What weather takes from a link's Es/N0 in clear sky, exact also where it takes next to nothing. */

import { COSMIC_BACKGROUND_K } from '../../constants.js';
import { dbToRatio } from '../../numeric/decibel.js';
import { combinedDb } from '../budget/combine.js';
import {
  downlinkEsN0Db,
  noiseThrough,
  type PreparedLink,
  type Weather,
} from '../budget/preparedLink.js';

/** Nepers of power in a decibel. */
const NEPERS_PER_DB = Math.LN10 / 10;

/**
 * Loss of Es/N0 in decibels against the link's own weather, as a function of the weather.
 *
 * The attenuation's difference and the rise of noise 10 log10(T / T_clear) make the loss of the thermal part; with
 * impairments only the thermal share of all noise grows by it. Differences are taken before the logarithms, so
 * that a loss of 1e-9 dB still has its digits.
 */
export function weatherLoss(link: PreparedLink): (weather: Weather) => number {
  const { weather: clear, terminal } = link;
  const absorbedDb = clear.clearDb + clear.rainDb;
  const clearK = noiseThrough(link, absorbedDb).system.systemNoiseK;
  // Kelvin at the amplifier per unit of lost transparency of the sky.
  const contrastK =
    (1 - terminal.groundShareRatio) *
    (link.mediumK - COSMIC_BACKGROUND_K) *
    dbToRatio(-absorbedDb - terminal.feedLossDb);
  let thermalShare = 1;
  if (link.impairmentsDb.length > 0) {
    const thermalDb = downlinkEsN0Db(link, clear);
    thermalShare = dbToRatio(combinedDb([thermalDb, ...link.impairmentsDb]) - thermalDb);
  }
  return (weather) => {
    const moreAbsorbedDb = weather.clearDb - clear.clearDb + (weather.rainDb - clear.rainDb);
    const riseK = -contrastK * Math.expm1(-NEPERS_PER_DB * moreAbsorbedDb);
    const thermalNepers =
      NEPERS_PER_DB * (moreAbsorbedDb + (weather.scintillationDb - clear.scintillationDb)) +
      Math.log1p(riseK / clearK);
    return thermalShare === 1
      ? thermalNepers / NEPERS_PER_DB
      : Math.log1p(thermalShare * Math.expm1(thermalNepers)) / NEPERS_PER_DB;
  };
}
