/** The plan: everything about a job that can be known before anything is read. */

import { attenuationAt } from '../../climate/attenuationAt.js';
import type { Climate } from '../../climate/index.js';
import { DomainError } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import type { JobFile } from '../file/jobFile.js';
import { type JobInput, jobOf } from '../file/jobOf.js';
import { type CommissioningWork, commissioningWork } from '../sent/commissioningPlan.js';
import { type WindPlan, windPlans } from '../wind/windPlan.js';
import { type Caution, cautions } from './cautions.js';
import {
  type DirectionPlan,
  directionPlans,
  type NorthPlan,
  northPlan,
  stationOf,
} from './directions.js';
import { type InputsPlan, inputsPlan } from './inputs.js';
import { type Assumption, type Ledger, ledger, type NotSaid } from './ledger.js';
import { type MountPlan, mountPlans } from './mounts.js';
import { type AmplifierPlan, distributionPlan, type OutletPlan } from './outlets.js';
import { type ClimateSource, jobClimate, type RainPlan, rainPlan } from './rain.js';
import { type ReceiverPlan, receiverPlans } from './receivers.js';
import { REQUIRED_PROBABILITY, type SignalPlan, signalPlans } from './signals.js';
import { type StackingPlan, stackingPlan } from './stacking.js';
import { type SupplyPlan, supplyPlans } from './supplies.js';
import { type TransmitPlan, transmitPlans } from './transmits.js';
import { type TuningPlan, tuningPlans } from './tuning.js';
import { type ViewPlan, viewPlans } from './views.js';

/** The plan of a job, in the order of the work. */
export interface JobPlan {
  /** What to mind. */
  readonly cautions: readonly Caution[];
  /** Magnetic north on the day; `null` for a job without a day. */
  readonly north: NorthPlan | null;
  /** Where each slot stands. */
  readonly directions: readonly DirectionPlan[];
  /** How each mount is preset. */
  readonly mounts: readonly MountPlan[];
  /** Whether the view is clear. */
  readonly views: readonly ViewPlan[];
  /** The rain of the place; `null` without a source of climate. */
  readonly rain: RainPlan | null;
  /** Which unit receives each carrier, and at which frequency on the cable. */
  readonly tuning: readonly TuningPlan[];
  /** What to expect of each carrier at the antenna. */
  readonly signals: readonly SignalPlan[];
  /** What to expect at each outlet and receiver. */
  readonly outlets: readonly OutletPlan[];
  /** Several receivers on one cable; `null` where the job has no channel stacking. */
  readonly stacking: StackingPlan | null;
  /** What comes by the inputs of switches: terrestrial signals, leaks from one to another, supply. */
  readonly inputs: InputsPlan;
  /** Load of the amplifiers behind the units. */
  readonly amplifiers: readonly AmplifierPlan[];
  /** What the supply along the cable brings. */
  readonly supplies: readonly SupplyPlan[];
  /** Levels at receivers against their own windows. */
  readonly receivers: readonly ReceiverPlan[];
  /** What a two-way terminal sends. */
  readonly transmit: readonly TransmitPlan[];
  /** Commissioning of what is sent, step by step; `null` where nothing is. */
  readonly commissioning: CommissioningWork | null;
  /** What the wind does to each mount; empty where the job says nothing of the wind. */
  readonly wind: readonly WindPlan[];
  /** What the file did not give and what was taken in its place. */
  readonly assumptions: readonly Assumption[];
  /** What could not be said, and which field would let it be. */
  readonly notSaid: readonly NotSaid[];
}

/** What a plan needs beside the job. */
export interface PlanSources {
  /** Climate of the place: `climateAt` of `slantpath/climate` or the like; `null` plans without rain. */
  readonly climate: ClimateSource | null;
}

/** Fields of the sources. */
const PLAN_SOURCES_KEYS = { climate: true } satisfies Keys<PlanSources>;

/**
 * Plan of a job with a climate of the caller's own, so that the embedded grid need not be loaded.
 *
 * @param input  A job file of either version: JSON text, a parsed value or what `parseJob` gave.
 * @param sources  `climate`: where the climate comes from; `null` to plan without rain.
 * @throws {@link DomainError} naming the field by its path in the job file.
 *
 * Source: the parts of the library; each result names its own.
 * @example
 * ```ts
 * import { planJobWith } from 'slantpath/job';
 * const plan = planJobWith(
 *   {
 *     format: 'slantpath-job', version: 2, date: '2026-07-14',
 *     station: { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 2240 },
 *     slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4 }],
 *   },
 *   { climate: null },
 * );
 * plan.directions[0]?.elevationDeg.toFixed(2); // => '36.10'
 * plan.rain; // => null
 * ```
 */
export function planJobWith(input: JobInput, sources: PlanSources): JobPlan {
  return planOf(jobOf(input), sources);
}

/** What readings are taken to mean where the file does not say. */
function assumeReferences(job: JobFile, notes: Ledger): void {
  job.visits.forEach((visit, at) => {
    visit.peaking?.forEach((peaking, index) => {
      if (peaking.axis === 'azimuth')
        notes.word(
          peaking.azimuthReference,
          `visits[${at}].peaking[${index}].azimuthReference`,
          'on-scale',
        );
    });
  });
  if (job.target?.exceededPercent !== undefined)
    notes.number(
      job.target.requiredProbabilityRatio,
      'target.requiredProbabilityRatio',
      REQUIRED_PROBABILITY,
      '',
    );
  notes.word(job.timeZone, 'timeZone', 'UTC');
}

/** Fade of an uplink for the promised share of the year in dB; `null` without a promise or a climate. */
function uplinkFade(
  job: JobFile,
  at: { readonly slot: string; readonly frequencyGHz: number; readonly elevationDeg: number },
  climate: Climate | null,
): number | null {
  const exceededPercent = job.target?.exceededPercent;
  const reflector = job.mounts.find(({ slots }) => slots.includes(at.slot))?.reflector;
  if (climate === null || exceededPercent === undefined || !reflector) return null;
  return attenuationAt(climate, {
    frequencyGHz: at.frequencyGHz,
    elevationDeg: Math.max(0.1, at.elevationDeg),
    // The worst turn of a linear wave for rain is level; the difference is some tenths of a decibel.
    tiltDeg: 0,
    diameterM: reflector.diameterM,
    efficiencyRatio: reflector.efficiencyRatio ?? 0.65,
    exceededPercent,
  }).attenuationDb;
}

/** The plan of a checked job. */
export function planOf(job: JobFile, sources: PlanSources): JobPlan {
  const { climate: source } = knownOnly('sources', sources, PLAN_SOURCES_KEYS);
  if (source !== null && typeof source !== 'function')
    throw new DomainError({
      code: source === undefined ? 'missing' : 'malformed',
      parameter: 'sources.climate',
      received: source,
      allowed: 'a function such as climateAt, or null to plan without rain',
    });
  const notes = ledger();
  const station = stationOf(job, notes);
  const north = northPlan(job, station, notes);
  const directions = directionPlans(job, station, north);
  const mounts = mountPlans(job, station, directions, north, notes);
  const views = viewPlans(job, { directions, mounts, north }, notes);
  const climate = jobClimate(job.rain, station, source, notes);
  const tuning = tuningPlans(job, notes);
  const signals = signalPlans(job, { directions, mounts, climate }, notes);
  const { outlets, amplifiers } = distributionPlan(job, signals, tuning, notes);
  const supplies = supplyPlans(job, notes);
  const transmit = transmitPlans(job, mounts, notes);
  const elevationDeg = (slot: string) =>
    directions.find((each) => each.slot === slot)?.elevationDeg ?? 0;
  const wind = windPlans(job, elevationDeg, notes);
  const commissioning = commissioningWork(job, transmit, (slot, frequencyGHz) =>
    uplinkFade(job, { slot, frequencyGHz, elevationDeg: elevationDeg(slot) }, climate),
  );
  assumeReferences(job, notes);
  if (job.target?.exceededPercent === undefined) notes.miss('promise', 'target.exceededPercent');
  if (job.target?.pointingLossDb === undefined) notes.miss('pointing', 'target.pointingLossDb');
  if ((job.limits ?? []).length === 0) notes.miss('limits', 'limits');
  return {
    cautions: cautions(job),
    north,
    directions,
    mounts,
    views,
    rain: rainPlan(job, climate),
    tuning,
    signals,
    outlets,
    stacking: stackingPlan(job, signals, tuning),
    inputs: inputsPlan(job, signals, tuning),
    amplifiers,
    supplies,
    receivers: receiverPlans(job, outlets),
    transmit,
    commissioning,
    wind,
    assumptions: notes.assumptions,
    notSaid: notes.notSaid,
  };
}
