/** What the command can add for a network: levels, links, reflectors, verdicts, outages. */

import { conformityVerdicts, decideConformityBatch } from '../../acceptance/index.js';
import {
  availabilityBatch,
  availabilityOutcomes,
  footprintLevelBatch,
  footprintOutcomes,
  reflectorOutcomes,
  smallestReflectorBatch,
} from '../../link/index.js';
import { outageOutcomes, sunOutagesBatch } from '../../sun/index.js';
import { columnsOf, PLACE, type Step } from './step.js';

/** The steps by the name of their function, without `Batch`. */
export const NETWORK_STEPS: Readonly<Record<string, Step>> = {
  availability: {
    needs: [
      'latitudeDeg',
      'heightM',
      'rainHeightKm',
      'rainRate001MmPerH',
      'elevationDeg',
      'tiltDeg',
    ],
    may: ['slantRangeKm', 'eirpDbw', 'clearAttenuationDb', 'diameterM'],
    gives: {
      marginDb: null,
      exceededPercent: null,
      outcome: availabilityOutcomes,
    },
    aboveHorizon: true,
    asks: ['link'],
    batch: (stations, { link }) => columnsOf(availabilityBatch({ link, stations } as never)),
  },
  smallestReflector: {
    needs: ['attenuationDb'],
    follows: ['gasDb', 'rainDb', 'cloudDb'],
    may: ['eirpDbw', 'slantRangeKm', 'clearAttenuationDb', 'targetMarginDb'],
    gives: { diameterM: null, marginDb: null, outcome: reflectorOutcomes },
    aboveHorizon: true,
    asks: ['link'],
    batch: ({ targetMarginDb = 0, ...stations }, { link }) =>
      columnsOf(smallestReflectorBatch({ link, stations, targetMarginDb } as never)),
  },
  footprintLevel: {
    needs: ['latitudeDeg', 'longitudeDeg'],
    gives: { levelDb: null, toNearestDeg: null, outcome: footprintOutcomes },
    asks: ['footprint'],
    batch: (places, { footprint }) =>
      columnsOf(footprintLevelBatch({ footprint, places } as never)),
  },
  decideConformity: {
    needs: ['reading', 'standardUncertainty'],
    may: ['lowerLimit', 'upperLimit', 'degreesOfFreedom'],
    gives: {
      outcome: conformityVerdicts,
      conformityProbabilityRatio: null,
      guardBand: null,
      margin: null,
    },
    batch: (input) => columnsOf(decideConformityBatch(input as never)),
  },
  sunOutages: {
    needs: [...PLACE, 'orbitalLongitudeDeg', 'diameterM', 'frequencyGHz', 'systemNoiseK'],
    may: ['thresholdLossDb', 'beamwidthDeg', 'attenuationDb'],
    gives: {
      count: null,
      totalMin: null,
      longestMin: null,
      lossDb: null,
      firstPeakMs: null,
      lastPeakMs: null,
      outcome: outageOutcomes,
    },
    aboveHorizon: true,
    asks: ['from', 'to'],
    batch: (input, { from, to }) => columnsOf(sunOutagesBatch({ ...input, from, to } as never)),
  },
};
