/** Section of the plan: level and carrier-to-noise ratio to expect of each carrier, clear and in rain. */

import type { Climate } from '../../climate/index.js';
import { type AttenuationOver, attenuationOver } from '../../climate/internal.js';
import { dbmToDbuv } from '../../distribution/index.js';
import { within } from '../../errors.js';
import {
  availabilityForMargin,
  dvbMode,
  fadedBudget,
  type LinkBudget,
  type LinkBudgetInput,
  linkBudget,
  type ModeThreshold,
} from '../../link/index.js';
import { normalProbability } from '../../numeric/normal.js';
import type { JobCarrier, JobFile } from '../file/jobFile.js';
import { type DirectionPlan, isLinear } from './directions.js';
import type { Ledger } from './ledger.js';
import type { ReflectorPlan } from './mountParts.js';
import type { MountPlan } from './mounts.js';
import { servedBy } from './tuning.js';

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

/** What is promised of one carrier, and whether the plan keeps it. */
export interface PromisePlan {
  /** Share of the average year for which the carrier may fail, in per cent. */
  readonly promisedPercent: number;
  /** Attenuation exceeded for that share. */
  readonly fade: FadePlan;
  /** Margin left in that fade in dB, the rise of noise counted in. */
  readonly fadedMarginDb: number;
  /** Share of the average year for which the carrier fails in per cent, 0.001 to 50. */
  readonly exceededPercent: number;
  /** `available`: that share; `better-than`: it fails for less than 0.001; `worse-than`: for more than 50. */
  readonly availability: 'available' | 'better-than' | 'worse-than';
  /** Probability that the promise is kept, from the margin in the fade and the fade's spread, 0 to 1. */
  readonly keptProbabilityRatio: number;
}

/** What to expect of one carrier. */
export interface SignalPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Name of the mount. */
  readonly mount: string;
  /** Name of the receiving unit. */
  readonly unit: string;
  /** Loss in dB because its slot is not on the reflector's axis. */
  readonly sharingLossDb: number;
  /** Level at the output of the outdoor unit in clear sky, in dBuV at 75 ohm. */
  readonly levelDbuv: number;
  /** Carrier-to-noise ratio in the symbol rate's bandwidth in clear sky, in dB. */
  readonly carrierToNoiseDb: number;
  /** Standard uncertainty of the level expected in dB. */
  readonly levelStandardUncertaintyDb: number;
  /** Standard uncertainty of the ratio expected in dB. */
  readonly ratioStandardUncertaintyDb: number;
  /** Ratio that the mode needs, implementation loss included, in dB; `null` without a mode. */
  readonly requiredDb: number | null;
  /** Margin in clear sky in dB; `null` without a mode. */
  readonly clearMarginDb: number | null;
  /** The promise; `null` where none is given or the mode or the climate is not known. */
  readonly promise: PromisePlan | null;
  /** Lines of the clear-sky budget in the order of the hand calculation. */
  readonly terms: LinkBudget['terms'];
  /** Fields outside the range that a recommendation states. */
  readonly outsideStatedRange: readonly string[];
}

/** Standard uncertainties of what is expected in dB: EIRP, unit and parts as planned (practice of the trade). */
export const EXPECTATION = { levelDb: 1.5, ratioDb: 0.7 };

/** Probability with which a promise must be kept where the job does not say: odds of four to one (own choice). */
export const REQUIRED_PROBABILITY = 0.8;

/** A mode that needs nothing, where the file names none: its threshold is not told. */
const NO_MODE: ModeThreshold = dvbMode('DVB-S2', 'QPSK 1/4');

interface Neighbours {
  readonly directions: readonly DirectionPlan[];
  readonly mounts: readonly MountPlan[];
  readonly climate: Climate | null;
}

interface Place {
  readonly slot: string;
  readonly direction: DirectionPlan;
  readonly mount: MountPlan;
  readonly reflector: ReflectorPlan;
  readonly unit: {
    readonly noiseFigureDb: number;
    readonly gainDb: number;
    readonly feedLossDb: number;
  };
  readonly unitName: string;
  readonly implementationLossDb: number;
  readonly climate: Climate | null;
}

/** Expectations for every carrier of a slot above the horizon of which enough is known. */
export function signalPlans(
  job: JobFile,
  { directions, mounts, climate }: Neighbours,
  notes: Ledger,
): readonly SignalPlan[] {
  return job.slots.flatMap((slot, slotIndex) => {
    const direction = directions[slotIndex];
    if (!direction || direction.kind === 'below-horizon') return [];
    const mountIndex = job.mounts.findIndex(({ slots }) => slots.includes(slot.name));
    const mount = mounts[mountIndex];
    if ((slot.carriers ?? []).length === 0)
      notes.miss('levels', `slots[${slotIndex}].carriers`, { slot: slot.name });
    return (slot.carriers ?? []).flatMap((carrier, index): SignalPlan[] => {
      const path = `slots[${slotIndex}].carriers[${index}]`;
      const at = { slot: slot.name, carrier: carrier.name };
      const { unit } = servedBy(job, slot, carrier);
      const unitPath = unit ? `units[${job.units?.indexOf(unit)}]` : 'units';
      const missing = [
        [mount?.reflector, `mounts[${mountIndex}].reflector.diameterM`],
        [carrier.eirpDbw, `${path}.eirpDbw`],
        [carrier.symbolRateMBd, `${path}.symbolRateMBd`],
        [unit, 'units'],
        [unit ? unit.noiseFigureDb : 0, `${unitPath}.noiseFigureDb`],
        [unit ? unit.gainDb : 0, `${unitPath}.gainDb`],
      ] as const;
      for (const [value, field] of missing)
        if (value === undefined || value === null) notes.miss('levels', field, at);
      const reflector = mount?.reflector;
      const { noiseFigureDb, gainDb } = unit ?? {};
      const { eirpDbw, symbolRateMBd } = carrier;
      if (
        !mount ||
        !reflector ||
        !unit ||
        noiseFigureDb === undefined ||
        gainDb === undefined ||
        eirpDbw === undefined ||
        symbolRateMBd === undefined
      )
        return [];
      if (carrier.mode === undefined) notes.miss('promise', `${path}.mode`, at);
      return [
        within(path, () =>
          signalPlan(
            job,
            { ...carrier, eirpDbw, symbolRateMBd },
            {
              slot: slot.name,
              direction,
              mount,
              reflector,
              unit: {
                noiseFigureDb,
                gainDb,
                feedLossDb: notes.number(unit.feedLossDb, `${unitPath}.feedLossDb`, 0, 'dB'),
              },
              unitName: unit.name,
              implementationLossDb: notes.number(
                carrier.implementationLossDb,
                `${path}.implementationLossDb`,
                0.8,
                'dB',
              ),
              climate,
            },
          ),
        ),
      ];
    });
  });
}

type KnownCarrier = JobCarrier & { readonly eirpDbw: number; readonly symbolRateMBd: number };

/** The link in clear sky, gas counted in. */
function clearLink(
  carrier: KnownCarrier,
  place: Place,
  sharingLossDb: number,
  gasDb: number,
): LinkBudgetInput {
  return {
    carrier: {
      symbolRateMBd: carrier.symbolRateMBd,
      mode:
        carrier.mode === undefined ? NO_MODE : dvbMode(carrier.standard ?? 'DVB-S2', carrier.mode),
      implementationLossDb: place.implementationLossDb,
    },
    downlink: {
      eirpDbw: carrier.eirpDbw,
      frequencyGHz: carrier.frequencyGHz,
      slantRangeKm: place.direction.slantRangeKm,
      clearAttenuationDb: gasDb,
    },
    receiver: {
      diameterM: place.reflector.diameterM,
      efficiencyRatio: place.reflector.efficiencyRatio,
      surfaceErrorMm: place.reflector.surfaceErrorMm,
      pointingLossDb: Math.min(sharingLossDb, WORST_LOSS_DB),
      feedLossDb: place.unit.feedLossDb,
      noiseFigureDb: place.unit.noiseFigureDb,
    },
  };
}

/** A loss of sharing beyond this leaves nothing to be received; more would only be figures. */
const WORST_LOSS_DB = 60;

/** Share of the year at which gas is taken for clear sky where nothing is promised, in per cent. */
const CLEAR_PERCENT = 1;

function signalPlan(job: JobFile, carrier: KnownCarrier, place: Place): SignalPlan {
  const { direction, climate, mount } = place;
  const sharingLossDb =
    mount.losses.find((loss) => loss.slot === place.slot && loss.carrier === carrier.name)
      ?.lossDb ?? 0;
  const promisedPercent = job.target?.exceededPercent;
  const fading = climate
    ? attenuationOver(climate, {
        frequencyGHz: carrier.frequencyGHz,
        elevationDeg: Math.max(0.1, direction.elevationDeg),
        tiltDeg: polarizationTiltDeg(carrier.polarization, direction.skewDeg ?? 0),
        diameterM: place.reflector.diameterM,
        efficiencyRatio: place.reflector.efficiencyRatio,
      })
    : undefined;
  const promised = fading?.at(promisedPercent ?? CLEAR_PERCENT);
  const link = clearLink(carrier, place, sharingLossDb, promised?.gasDb ?? 0);
  const clear = linkBudget(link);
  const known = carrier.mode !== undefined;
  return {
    slot: place.slot,
    carrier: carrier.name,
    mount: mount.mount,
    unit: place.unitName,
    sharingLossDb,
    levelDbuv: dbmToDbuv(clear.carrierDbw + 30 + place.unit.gainDb),
    carrierToNoiseDb: clear.esN0Db,
    levelStandardUncertaintyDb: EXPECTATION.levelDb,
    ratioStandardUncertaintyDb: EXPECTATION.ratioDb,
    requiredDb: known ? clear.requiredEsN0Db : null,
    clearMarginDb: known ? clear.marginDb : null,
    promise:
      known && fading && promised && promisedPercent !== undefined
        ? promisePlan(link, fading.total, promised, promisedPercent)
        : null,
    terms: clear.terms,
    outsideStatedRange: promised?.outsideStatedRange ?? [],
  };
}

function promisePlan(
  link: LinkBudgetInput,
  fade: AttenuationOver['total'],
  promised: ReturnType<AttenuationOver['at']>,
  promisedPercent: number,
): PromisePlan {
  const { standardUncertaintyDb } = promised.spread;
  const availability = availabilityForMargin({ link, fade });
  const marginIn = (moreDb: number) =>
    fadedBudget(link, {
      fade: () => ({
        attenuationDb: Math.max(promised.gasDb, promised.attenuationDb + moreDb),
        gasDb: promised.gasDb,
        rainDb: Math.max(0, promised.rainDb + moreDb),
        cloudDb: promised.cloudDb,
      }),
      exceededPercent: promisedPercent,
    }).marginDb;
  const fadedMarginDb = fadedBudget(link, { fade, exceededPercent: promisedPercent }).marginDb;
  // The margin falls faster than the fade grows, since rain adds noise: what one standard deviation takes is computed.
  const deviationDb =
    fadedMarginDb >= 0
      ? marginIn(0) - marginIn(standardUncertaintyDb)
      : marginIn(-standardUncertaintyDb) - marginIn(0);
  return {
    promisedPercent,
    fade: {
      gasDb: promised.gasDb,
      rainDb: promised.rainDb,
      cloudDb: promised.cloudDb,
      scintillationDb: promised.scintillationDb,
      attenuationDb: promised.attenuationDb,
      standardUncertaintyDb,
    },
    fadedMarginDb,
    exceededPercent: availability.exceededPercent,
    availability: availability.kind,
    keptProbabilityRatio:
      deviationDb > 1e-9
        ? normalProbability(fadedMarginDb / deviationDb)
        : fadedMarginDb >= 0
          ? 1
          : 0,
  };
}

/** Tilt of the polarization against the local horizontal for rain: 0 horizontal, 90 vertical, 45 circular. */
function polarizationTiltDeg(polarization: JobCarrier['polarization'], skewDeg: number): number {
  if (!isLinear(polarization)) return 45;
  return (polarization === 'horizontal' ? 0 : 90) + skewDeg;
}
