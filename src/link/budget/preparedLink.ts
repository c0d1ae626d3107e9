/** A link with its input checked and all computed that does not depend on the weather. */

import { checkedLossDb } from '../../antenna/internal.js';
import { BOLTZMANN_DBW_PER_K_HZ } from '../../constants.js';
import { inRange, object } from '../../errors.js';
import { known } from '../../keys.js';
import { ratioToDb } from '../../numeric/decibel.js';
import { checkedMode, type ModeThreshold } from '../modes/mode.js';
import { antennaNoiseTerms } from '../noise/antennaNoise.js';
import { checkedSystemNoiseK } from '../noise/figureOfMerit.js';
import { type ReceiverTerms, receiverTerms } from '../noise/receiver.js';
import { systemNoiseTerms } from '../noise/systemNoise.js';
import { checkedRate } from './carrierRatios.js';
import { combinedDb, IMPAIRMENT_KEYS } from './combine.js';
import { freeSpaceLoss } from './freeSpaceLoss.js';
import type { LinkBudgetInput } from './linkBudgetInput.js';
import { CARRIER_KEYS, DOWNLINK_KEYS, LINK_BUDGET_INPUT_KEYS } from './linkBudgetInput.js';

/** What weather does to a path, in dB. */
export interface Weather {
  /** Gas and thin cloud, which absorb. */
  readonly clearDb: number;
  /** Rain and cloud, which absorb. */
  readonly rainDb: number;
  /** Fades that add no noise. */
  readonly scintillationDb: number;
}

/** A checked link. */
export interface PreparedLink {
  readonly eirpDbw: number;
  readonly freeSpaceDb: number;
  readonly otherDb: number;
  readonly mediumK: number;
  readonly terminal: ReceiverTerms;
  readonly symbolRateDb: number;
  readonly threshold: ModeThreshold;
  readonly implementationDb: number;
  readonly impairmentNames: readonly string[];
  readonly impairmentsDb: readonly number[];
  /** The weather that the input describes. */
  readonly weather: Weather;
}

/** Checks a link's input, once. */
export function preparedLink(link: LinkBudgetInput): PreparedLink {
  const { carrier, downlink, receiver, impairments } = known('link', link, LINK_BUDGET_INPUT_KEYS);
  const { symbolRateMBd, mode, implementationLossDb } = known('carrier', carrier, CARRIER_KEYS);
  const path = known('downlink', downlink, DOWNLINK_KEYS);
  const causes = object('impairments', impairments ?? []);
  return {
    symbolRateDb: ratioToDb(checkedRate('symbolRateMBd', symbolRateMBd) * 1e6),
    threshold: checkedMode(mode),
    implementationDb: checkedLossDb('implementationLossDb', implementationLossDb ?? 0),
    eirpDbw: inRange('eirpDbw', path.eirpDbw, -50, 100, 'is the EIRP in dBW?'),
    freeSpaceDb: freeSpaceLoss(path).lossDb,
    otherDb: checkedLossDb('otherLossDb', path.otherLossDb ?? 0),
    mediumK: inRange('meanRadiatingTemperatureK', path.meanRadiatingTemperatureK ?? 275, 100, 350),
    terminal: receiverTerms(receiver, path.frequencyGHz),
    impairmentNames: causes.map(
      (cause, index) => known(`impairments[${index}]`, cause, IMPAIRMENT_KEYS).name,
    ),
    impairmentsDb: causes.map(({ carrierToImpairmentDb }, index) =>
      inRange(`impairments[${index}].carrierToImpairmentDb`, carrierToImpairmentDb, -400, 400),
    ),
    weather: {
      clearDb: checkedLossDb('clearAttenuationDb', path.clearAttenuationDb ?? 0),
      rainDb: checkedLossDb('rainDb', path.rainDb ?? 0),
      scintillationDb: checkedLossDb('scintillationDb', path.scintillationDb ?? 0),
    },
  };
}

/** System noise temperature in kelvin through an absorbing path. */
export function noiseThrough(link: PreparedLink, absorptionDb: number) {
  const { terminal } = link;
  const antenna = antennaNoiseTerms(
    absorptionDb,
    link.mediumK,
    terminal.groundShareRatio,
    terminal.groundTemperatureK,
  );
  const system = systemNoiseTerms(
    antenna.antennaNoiseK,
    terminal.feedLossDb,
    terminal.feedTemperatureK,
    terminal.receiverNoiseK,
  );
  return { antenna, system, noiseDb: ratioToDb(checkedSystemNoiseK(system.systemNoiseK)) };
}

/** Downlink Es/N0 in dB in a weather: the lines of the budget summed in their order, so that both give the same bits. */
export function downlinkEsN0Db(link: PreparedLink, weather: Weather): number {
  const { terminal } = link;
  return (
    link.eirpDbw -
    link.freeSpaceDb -
    weather.clearDb -
    weather.rainDb -
    weather.scintillationDb -
    link.otherDb +
    terminal.antennaGainDbi -
    terminal.pointingLossDb -
    terminal.polarizationLossDb -
    terminal.feedLossDb -
    noiseThrough(link, weather.clearDb + weather.rainDb).noiseDb -
    BOLTZMANN_DBW_PER_K_HZ -
    link.symbolRateDb
  );
}

/** Es/N0 in dB in a weather with all impairments. */
export function totalEsN0Db(link: PreparedLink, weather: Weather): number {
  const downlinkDb = downlinkEsN0Db(link, weather);
  return link.impairmentsDb.length === 0
    ? downlinkDb
    : combinedDb([downlinkDb, ...link.impairmentsDb]);
}

/** What the receiver needs, in dB. */
export function requiredDb(link: PreparedLink): number {
  return link.threshold.esN0Db + link.implementationDb;
}
