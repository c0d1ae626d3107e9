/** Section of the plan: commissioning of a transmitted carrier, from the drive of the amplifier to what stands past the satellite. */

import { exposureLimit, halfPowerBeamwidth } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { ratioToDb } from '../../numeric/decibel.js';
import {
  type CommissioningStep,
  commissioningSteps,
  compressionPoint,
  crossPolarIsolationRead,
  lineUp,
  type OffAxisMaskName,
  offAxisMargin,
  type PowerControlMargin,
  uplinkPowerControl,
} from '../../transmit/index.js';
import type { JobFile, JobTransmit } from '../file/jobFile.js';

/** What is planned of a transmitted carrier besides. */
interface Sent {
  readonly slot: string;
  readonly carrier: string;
  readonly frequencyGHz: number;
  /** Power at the flange in watts. */
  readonly powerW: number;
  readonly outputBackOffDb: number;
  readonly antennaGainDbi: number;
  readonly eirpDbw: number;
  readonly exposureGroup: 'public' | 'occupational';
}

/** Commissioning of one transmitted carrier. */
export interface CommissioningPlan {
  readonly slot: string;
  readonly carrier: string;
  /** Frequency on the cable to the upconverter (BUC) in MHz; `null` without its local oscillator. */
  readonly intermediateFrequencyMHz: number | null;
  /** Whether the spectrum is turned round there. */
  readonly inverted: boolean;
  /** Output of the amplifier as planned: saturation less back-off, in dBm. */
  readonly plannedOutputDbm: number;
  /** Output that the drive level and the gain give in dBm; `null` where one of them is not given. */
  readonly driveOutputDbm: number | null;
  /** Compression from the measured pairs; `null` without pairs. */
  readonly compression: {
    readonly kind: 'compressed' | 'not-compressed';
    /** Gain of the first pair in dB. */
    readonly linearGainDb: number;
    /** Output at 1 dB of compression in dBm; `null` where it was not reached. */
    readonly outputDbm: number | null;
    /** Loss of gain at the last pair in dB; `null` where 1 dB was reached before. */
    readonly lastCompressionDb: number | null;
  } | null;
  /** EIRP at which to stop and ask, in dBW: 20, 10 and 3 dB below, full. */
  readonly stepsDbw: readonly number[];
  /** Error of pointing that the masks were held against, in degrees. */
  readonly mispointingDeg: number;
  /** Off-axis density against each mask that the job names. */
  readonly masks: readonly {
    readonly name: OffAxisMaskName;
    /** Least margin in dB, below 0 where the mask is broken; `null` where the pattern says nothing at its angles. */
    readonly marginDb: number | null;
    readonly offAxisDeg: number | null;
    /** How sure the mask itself is. */
    readonly status: 'read' | 'from-memory' | null;
  }[];
  /** What uplink power control makes up for; `null` without the rise that the network allows or a fade. */
  readonly powerControl: (PowerControlMargin & { readonly fadeDb: number }) | null;
  /** Cross-polar isolation from levels near the noise; `null` where none were read. */
  readonly crossPolar: {
    /** `at-least`: the leak cannot be told from the noise. */
    readonly kind: 'isolation' | 'at-least';
    readonly isolationDb: number;
    readonly standardUncertaintyDb: number | null;
  } | null;
  /** Highest power density at the reflector's surface in W/m2. */
  readonly reflectorWPerM2: number;
  /** Highest power density at the mouth of the feed in W/m2. */
  readonly feedWPerM2: number;
  /** Limit of exposure in W/m2 for whom the job names. */
  readonly exposureLimitWPerM2: number;
}

/** The work at a two-way station; `null` where nothing is sent. */
export interface CommissioningWork {
  readonly carriers: readonly CommissioningPlan[];
  /** The order of the work, with its stops. */
  readonly steps: readonly CommissioningStep[];
}

/** Outer diameter of a feed where the job gives none, in metres. */
const FEED_DIAMETER_M = 0.06;

/**
 * Commissioning of everything that the terminal sends.
 *
 * @param uplinkFade  Fade of an uplink in dB at a frequency, for the promised share of the year; `null` where it is not known.
 */
export function commissioningWork(
  job: JobFile,
  sent: readonly Sent[],
  uplinkFade: (slot: string, frequencyGHz: number) => number | null,
): CommissioningWork | null {
  if ((job.transmit ?? []).length === 0) return null;
  return {
    carriers: sent.flatMap((each) => {
      const index = (job.transmit ?? []).findIndex(
        ({ slot, name }) => slot === each.slot && name === each.carrier,
      );
      const given = job.transmit?.[index];
      return given
        ? [within(`transmit[${index}]`, () => commissioningPlan(job, given, each, uplinkFade))]
        : [];
    }),
    steps: commissioningSteps,
  };
}

function commissioningPlan(
  job: JobFile,
  given: JobTransmit,
  sent: Sent,
  uplinkFade: (slot: string, frequencyGHz: number) => number | null,
): CommissioningPlan {
  const mount = job.mounts.find(({ slots }) => slots.includes(sent.slot));
  const diameterM = mount?.reflector?.diameterM ?? 1;
  const oscillatorGHz = given.upconverterLocalOscillatorGHz;
  const plannedOutputDbm = ratioToDb(given.saturatedPowerW) + 30 - sent.outputBackOffDb;
  const limit = exposureLimit({
    standard: 'ICNIRP 2020 local',
    group: sent.exposureGroup,
    frequencyGHz: sent.frequencyGHz,
  });
  const feeds = mount?.kind === 'fixed' ? mount.feeds : undefined;
  const feedM = feeds?.feedDiameterM || FEED_DIAMETER_M;
  const { stepsDbw } = lineUp({
    powerW: sent.powerW,
    antennaGainDbi: Math.max(-10, sent.antennaGainDbi),
    symbolRateMBd: given.symbolRateMBd ?? 1,
  });
  const mispointingDeg = given.mispointingDeg ?? allowedOffDeg(job, diameterM, sent.frequencyGHz);
  return {
    slot: sent.slot,
    carrier: sent.carrier,
    intermediateFrequencyMHz:
      oscillatorGHz === undefined
        ? null
        : Math.round(Math.abs(sent.frequencyGHz - oscillatorGHz) * 1e9) / 1e6,
    inverted: oscillatorGHz !== undefined && oscillatorGHz > sent.frequencyGHz,
    plannedOutputDbm,
    driveOutputDbm:
      given.linearDriveLevelDbm === undefined || given.upconverterGainDb === undefined
        ? null
        : given.linearDriveLevelDbm + given.upconverterGainDb,
    compression: compressionOf(given),
    stepsDbw,
    mispointingDeg,
    masks: masksOf(given, sent, diameterM, mispointingDeg),
    powerControl: powerControlOf(given, sent, uplinkFade(sent.slot, sent.frequencyGHz)),
    crossPolar: crossPolarOf(given),
    // 4 P / A, the highest density in front of an aperture that carries all of the power.
    reflectorWPerM2: (16 * sent.powerW) / (Math.PI * diameterM ** 2),
    feedWPerM2: (16 * sent.powerW) / (Math.PI * feedM ** 2),
    exposureLimitWPerM2: limit.powerDensityWPerM2,
  };
}

/** How far the beam may be off for the pointing loss that the job allows, in degrees: the parabola of the main lobe. */
function allowedOffDeg(job: JobFile, diameterM: number, frequencyGHz: number): number {
  const lossDb = job.target?.pointingLossDb ?? 0;
  return Math.min(10, halfPowerBeamwidth({ diameterM, frequencyGHz }) * Math.sqrt(lossDb / 12));
}

function compressionOf(given: JobTransmit): CommissioningPlan['compression'] {
  if (!given.measuredPairs) return null;
  const point = compressionPoint(given.measuredPairs);
  return point.kind === 'compressed'
    ? {
        kind: point.kind,
        linearGainDb: point.linearGainDb,
        outputDbm: point.outputDbm,
        lastCompressionDb: null,
      }
    : {
        kind: point.kind,
        linearGainDb: point.linearGainDb,
        outputDbm: null,
        lastCompressionDb: point.compressionDb,
      };
}

/** Least size in wavelengths for which the reference pattern is defined. */
const LEAST_WAVELENGTHS = 10;

function masksOf(
  given: JobTransmit,
  sent: Sent,
  diameterM: number,
  mispointingDeg: number,
): CommissioningPlan['masks'] {
  const { symbolRateMBd, offAxisMaskNames = [] } = given;
  const tooSmall = (diameterM * sent.frequencyGHz) / 0.299792458 < LEAST_WAVELENGTHS;
  return offAxisMaskNames.map((name) => {
    const nothing = { name, marginDb: null, offAxisDeg: null, status: null };
    if (symbolRateMBd === undefined || tooSmall) return nothing;
    const margin = offAxisMargin({
      powerW: sent.powerW,
      symbolRateMBd,
      pattern: { kind: 'S.580-6', diameterM, frequencyGHz: sent.frequencyGHz },
      mispointingDeg,
      mask: name,
    });
    return margin.kind === 'no-answer'
      ? nothing
      : {
          name,
          marginDb: margin.marginDb,
          offAxisDeg: margin.offAxisDeg,
          status: margin.status,
        };
  });
}

function powerControlOf(
  given: JobTransmit,
  sent: Sent,
  fadeDb: number | null,
): CommissioningPlan['powerControl'] {
  if (given.allowedRiseDb === undefined || fadeDb === null) return null;
  return {
    fadeDb,
    ...uplinkPowerControl({
      fadeDb: Math.min(100, fadeDb),
      // What the amplifier has left is the back-off beyond the least one that keeps the carrier clean.
      amplifierReserveDb: Math.max(0, sent.outputBackOffDb - (given.minimumBackOffDb ?? 0)),
      allowedRiseDb: given.allowedRiseDb,
      ...(given.controlErrorDb === undefined ? {} : { controlErrorDb: given.controlErrorDb }),
    }),
  };
}

function crossPolarOf(given: JobTransmit): CommissioningPlan['crossPolar'] {
  if (!given.crossPolarTest) return null;
  const read = crossPolarIsolationRead(given.crossPolarTest);
  return {
    kind: read.kind,
    isolationDb: read.isolationDb,
    standardUncertaintyDb: read.kind === 'isolation' ? read.standardUncertaintyDb : null,
  };
}
