/** Section of the plan: level and carrier-to-noise ratio to expect of each carrier, clear and in rain. */

import { attenuationAt, type Climate } from '../../climate/index.js';
import { dbmToDbuv } from '../../distribution/index.js';
import { within } from '../../errors.js';
import {
  availabilityForMargin,
  dvbMode,
  fadedBudget,
  type LinkBudget,
  type LinkBudgetInput,
  linkBudget,
} from '../../link/index.js';
import type { JobCarrier, JobFile } from '../jobFile.js';
import { type DirectionPlan, isLinear } from './directions.js';
import type { MountPlan } from './mount.js';

/** Attenuation exceeded for the promised share of the year, by cause, in dB. */
export interface FadePlan {
  readonly gasDb: number;
  readonly rainDb: number;
  readonly cloudDb: number;
  readonly scintillationDb: number;
  /** All together, after P.618-14. */
  readonly attenuationDb: number;
  /** Standard deviation of the total: the rain input and the model's own scatter. */
  readonly standardUncertaintyDb: number;
}

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
  /** Attenuation exceeded for the promised share of the year. */
  readonly fade: FadePlan;
  /** Margin left in that fade in dB, the rise of noise counted in. */
  readonly fadedMarginDb: number;
  /** Share of the average year for which the carrier fails in per cent, 0.001 to 50. */
  readonly exceededPercent: number;
  /** `available`: that share; `better-than`: it fails for less than 0.001; `worse-than`: for more than 50. */
  readonly availability: 'available' | 'better-than' | 'worse-than';
  /** Lines of the clear-sky budget in the order of the hand calculation. */
  readonly terms: LinkBudget['terms'];
}

interface Neighbours {
  readonly directions: readonly DirectionPlan[];
  readonly mount: MountPlan;
  readonly climate: Climate;
}

/** Expectations for every carrier of a slot above the horizon. */
export function signalPlans(
  job: JobFile,
  { directions, mount, climate }: Neighbours,
): readonly SignalPlan[] {
  return job.slots.flatMap((slot, slotIndex) => {
    const direction = directions[slotIndex];
    if (!direction || direction.kind === 'below-horizon') return [];
    return slot.carriers.map((carrier, index) =>
      within(`slots[${slotIndex}].carriers[${index}]`, () => {
        const sharingLossDb =
          mount.losses.find((loss) => loss.slot === slot.name && loss.carrier === carrier.name)
            ?.lossDb ?? 0;
        return signalPlan(job, carrier, { slot: slot.name, direction, sharingLossDb, climate });
      }),
    );
  });
}

interface Place {
  readonly slot: string;
  readonly direction: DirectionPlan;
  readonly sharingLossDb: number;
  readonly climate: Climate;
}

/** The link in clear sky, gas counted in. */
function clearLink(
  job: JobFile,
  carrier: JobCarrier,
  place: Place,
  gasDb: number,
): LinkBudgetInput {
  return {
    carrier: {
      symbolRateMBd: carrier.symbolRateMBd,
      mode: within('', () => dvbMode('DVB-S2', carrier.mode), { name: 'mode' }),
      implementationLossDb: carrier.implementationLossDb ?? 0.8,
    },
    downlink: {
      eirpDbw: carrier.eirpDbw,
      frequencyGHz: carrier.frequencyGHz,
      slantRangeKm: place.direction.slantRangeKm,
      clearAttenuationDb: gasDb,
    },
    receiver: {
      diameterM: job.antenna.diameterM,
      efficiencyRatio: job.antenna.apertureEfficiencyRatio,
      surfaceErrorMm: job.antenna.surfaceErrorMm ?? 0,
      pointingLossDb: place.sharingLossDb,
      feedLossDb: job.receiver.feedLossDb ?? 0,
      noiseFigureDb: job.receiver.noiseFigureDb,
    },
  };
}

function signalPlan(job: JobFile, carrier: JobCarrier, place: Place): SignalPlan {
  const { direction, climate } = place;
  const fade = (exceededPercent: number) =>
    attenuationAt(climate, {
      frequencyGHz: carrier.frequencyGHz,
      elevationDeg: direction.elevationDeg,
      tiltDeg: polarizationTiltDeg(carrier.polarization, direction.skewDeg ?? 0),
      diameterM: job.antenna.diameterM,
      efficiencyRatio: job.antenna.apertureEfficiencyRatio,
      exceededPercent,
    });
  const promised = fade(job.target.exceededPercent);
  const link = clearLink(job, carrier, place, promised.gasDb);
  const clear = linkBudget(link);
  const availability = availabilityForMargin({ link, fade });
  return {
    slot: place.slot,
    carrier: carrier.name,
    sharingLossDb: place.sharingLossDb,
    levelDbuv: dbmToDbuv(clear.carrierDbw + 30 + job.receiver.gainDb),
    carrierToNoiseDb: clear.esN0Db,
    requiredDb: clear.requiredEsN0Db,
    clearMarginDb: clear.marginDb,
    fade: {
      gasDb: promised.gasDb,
      rainDb: promised.rainDb,
      cloudDb: promised.cloudDb,
      scintillationDb: promised.scintillationDb,
      attenuationDb: promised.attenuationDb,
      standardUncertaintyDb: promised.spread.standardUncertaintyDb,
    },
    fadedMarginDb: fadedBudget(link, { fade, exceededPercent: job.target.exceededPercent })
      .marginDb,
    exceededPercent: availability.exceededPercent,
    availability: availability.kind,
    terms: clear.terms,
  };
}

/** Tilt of the polarization against the local horizontal for rain: 0 horizontal, 90 vertical, 45 circular. */
function polarizationTiltDeg(polarization: JobCarrier['polarization'], skewDeg: number): number {
  if (!isLinear(polarization)) return 45;
  return (polarization === 'horizontal' ? 0 : 90) + skewDeg;
}
