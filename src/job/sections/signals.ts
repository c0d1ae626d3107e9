/** Section of the plan: level and carrier-to-noise ratio to expect of each carrier, clear and in rain. */

import { dbmToDbuv } from '../../distribution/index.js';
import { dvbMode, type LinkBudget, linkBudget } from '../../link/index.js';
import { bracketedRoot } from '../../numeric/root.js';
import { rainAttenuation } from '../../propagation/index.js';
import type { JobCarrier, JobFile } from '../jobFile.js';
import { within } from '../within.js';
import { type DirectionPlan, isLinear } from './directions.js';
import type { MountPlan } from './mount.js';
import type { RainPlan } from './rain.js';

/** What to expect of one carrier. */
export interface SignalPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Loss in dB because one reflector serves several slots. */
  readonly sharingLossDb: number;
  /** Level at the output of the outdoor unit in clear sky, in dBuV at 75 ohm. */
  readonly levelDbuv: number;
  /** Carrier-to-noise ratio in the symbol rate's bandwidth in clear sky, in dB. */
  readonly carrierToNoiseDb: number;
  /** Ratio that the mode needs, implementation loss included, in dB. */
  readonly requiredDb: number;
  /** Margin in clear sky in dB. */
  readonly clearMarginDb: number;
  /** Rain attenuation exceeded for the promised share of the year in dB. */
  readonly rainAttenuationDb: number;
  /** Margin left in that rain in dB, the rise of noise counted in. */
  readonly rainMarginDb: number;
  /** Share of the average year for which the carrier fails in per cent, from 0.001; `null` where it fails for more than 5. */
  readonly exceededPercent: number | null;
  /** Lines of the clear-sky budget in the order of the hand calculation. */
  readonly terms: LinkBudget['terms'];
}

/** Least and largest share of the year that the rain model covers, in per cent. */
const COVERED_PERCENT = { from: 0.001, to: 5 } as const;

interface Neighbours {
  readonly directions: readonly DirectionPlan[];
  readonly mount: MountPlan;
  readonly rain: RainPlan;
}

/** Expectations for every carrier of a slot above the horizon. */
export function signalPlans(
  job: JobFile,
  { directions, mount, rain }: Neighbours,
): readonly SignalPlan[] {
  return job.slots.flatMap((slot, slotIndex) => {
    const direction = directions[slotIndex];
    if (!direction || direction.kind === 'below-horizon') return [];
    return slot.carriers.map((carrier, index) =>
      within(`slots[${slotIndex}].carriers[${index}]`, () => {
        const sharingLossDb =
          mount.losses.find((loss) => loss.slot === slot.name && loss.carrier === carrier.name)
            ?.lossDb ?? 0;
        return signalPlan(job, carrier, { slot: slot.name, direction, sharingLossDb, rain });
      }),
    );
  });
}

function signalPlan(
  job: JobFile,
  carrier: JobCarrier,
  place: {
    readonly slot: string;
    readonly direction: DirectionPlan;
    readonly sharingLossDb: number;
    readonly rain: RainPlan;
  },
): SignalPlan {
  const { direction, rain } = place;
  const budgetIn = (rainAttenuationDb: number): LinkBudget =>
    linkBudget({
      carrier: {
        symbolRateMBd: carrier.symbolRateMBd,
        mode: dvbMode('DVB-S2', carrier.mode),
        implementationLossDb: carrier.implementationLossDb ?? 0.8,
      },
      downlink: {
        eirpDbw: carrier.eirpDbw,
        frequencyGHz: carrier.frequencyGHz,
        slantRangeKm: direction.slantRangeKm,
        rainAttenuationDb,
      },
      receiver: {
        diameterM: job.antenna.diameterM,
        efficiencyRatio: job.antenna.apertureEfficiencyRatio,
        surfaceErrorMm: job.antenna.surfaceErrorMm ?? 0,
        pointingLossDb: place.sharingLossDb,
        feedLossDb: job.receiver.feedLossDb ?? 0,
        noiseFigureDb: job.receiver.noiseFigureDb,
      },
    });
  const rainDb = (exceededPercent: number): number =>
    rainAttenuation({
      latitudeDeg: job.station.latitudeDeg,
      stationHeightKm: job.station.heightM / 1000,
      rainHeightKm: rain.rainHeightKm,
      rainRate001MmPerH: rain.rainRate001MmPerH,
      frequencyGHz: carrier.frequencyGHz,
      elevationDeg: direction.elevationDeg,
      tiltDeg: polarizationTiltDeg(carrier.polarization, direction.skewDeg ?? 0),
      exceededPercent,
    }).attenuationDb;
  const marginAt = (exceededPercent: number): number => budgetIn(rainDb(exceededPercent)).marginDb;
  const clear = budgetIn(0);
  const promised = job.target.exceededPercent;
  return {
    slot: place.slot,
    carrier: carrier.name,
    sharingLossDb: place.sharingLossDb,
    levelDbuv: dbmToDbuv(clear.carrierDbw + 30 + job.receiver.gainDb),
    carrierToNoiseDb: clear.esN0Db,
    requiredDb: clear.requiredEsN0Db,
    clearMarginDb: clear.marginDb,
    rainAttenuationDb: rainDb(promised),
    rainMarginDb: marginAt(promised),
    exceededPercent: failingPercent(marginAt),
    terms: clear.terms,
  };
}

/** Share of the year at which the margin is just used up. */
function failingPercent(marginAt: (exceededPercent: number) => number): number | null {
  if (marginAt(COVERED_PERCENT.from) >= 0) return COVERED_PERCENT.from;
  const root = bracketedRoot((logPercent) => marginAt(Math.exp(logPercent)), {
    from: Math.log(COVERED_PERCENT.from),
    to: Math.log(COVERED_PERCENT.to),
    tolerance: 1e-9,
  });
  return root === undefined ? null : Math.exp(root);
}

/** Tilt of the polarization against the local horizontal for rain: 0 horizontal, 90 vertical, 45 circular. */
function polarizationTiltDeg(polarization: JobCarrier['polarization'], skewDeg: number): number {
  if (!isLinear(polarization)) return 45;
  return (polarization === 'horizontal' ? 0 : 90) + skewDeg;
}
