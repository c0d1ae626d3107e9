/** Section of the plan: levels at every outlet and receiver, carrier by carrier, and the load of amplifiers. */

import { type AmplifierLoad, amplifierLoads, outletLevels } from '../../distribution/index.js';
import { DomainError } from '../../errors.js';
import type { JobFile } from '../file/jobFile.js';
import { partNames } from '../file/partNames.js';
import { type Branch, branchesOf } from './branches.js';
import type { Ledger } from './ledger.js';
import { type LevelLimits, limitsAt } from './limits.js';
import type { SignalPlan } from './signals.js';
import { userBandCentres } from './stacking.js';
import { servedBy, type TuningPlan } from './tuning.js';

/** What to expect of one carrier at one outlet or receiver. */
export interface OutletPlan {
  /** Name of the outlet or receiver. */
  readonly outlet: string;
  /** `outlet`: behind the outlet. `receiver`: at its input, its own noise counted in. */
  readonly kind: 'outlet' | 'receiver';
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Frequency on the cable in MHz. */
  readonly intermediateFrequencyMHz: number;
  /** Loss from the outdoor unit to the outlet in dB; negative where amplifiers win. */
  readonly lossDb: number;
  /** Level in dBuV at 75 ohm. */
  readonly levelDbuv: number;
  /** Carrier-to-noise ratio in dB. */
  readonly carrierToNoiseDb: number;
  /** Limits that hold there: those of the job, or for a receiver its own window. */
  readonly limits: LevelLimits;
}

/** Load of one amplifier of the distribution. */
export interface AmplifierPlan extends AmplifierLoad {
  /** Carriers counted on. */
  readonly carrierCount: number;
}

/** Expectations at the outlets, and the amplifiers on the way. */
export interface DistributionPlan {
  readonly outlets: readonly OutletPlan[];
  readonly amplifiers: readonly AmplifierPlan[];
}

/** A signal with its way. */
interface Sent {
  readonly signal: SignalPlan;
  readonly frequencyMHz: number;
  readonly bandwidthMHz: number;
  readonly branches: readonly Branch[];
  /** Carriers of one slot, unit, band and polarization share a cable at one time. */
  readonly group: string;
}

/** Expectations at every outlet and receiver. */
export function distributionPlan(
  job: JobFile,
  signals: readonly SignalPlan[],
  tuning: readonly TuningPlan[],
  notes: Ledger,
): DistributionPlan {
  if (!job.distribution) {
    notes.miss('outlets', 'distribution');
    return { outlets: [], amplifiers: [] };
  }
  const temperatureC = notes.number(
    job.distribution.temperatureC,
    'distribution.temperatureC',
    20,
    'deg C',
  );
  const sent = signals.flatMap((signal): Sent[] => {
    const slot = job.slots.find(({ name }) => name === signal.slot);
    const carrier = slot?.carriers?.find(({ name }) => name === signal.carrier);
    const tuned = tuning.find(
      (each) => each.slot === signal.slot && each.carrier === signal.carrier,
    );
    const frequencyMHz = tuned?.intermediateFrequencyMHz ?? null;
    if (!slot || !carrier || frequencyMHz === null || !onCable(frequencyMHz)) return [];
    const served = servedBy(job, slot, carrier);
    return [
      {
        signal,
        frequencyMHz,
        bandwidthMHz: carrier.symbolRateMBd ?? 27.5,
        branches: branchesOf(job, carrier, served),
        group: JSON.stringify([slot.name, signal.unit, tuned?.band, carrier.polarization]),
      },
    ];
  });
  return {
    outlets: sent.flatMap((each) => outletsOf(job, each, temperatureC)),
    amplifiers: amplifierPlans(job, sent, temperatureC, notes),
  };
}

/** Whether a frequency can run down a cable at all. */
export function onCable(frequencyMHz: number): boolean {
  return frequencyMHz >= 5 && frequencyMHz <= 10000;
}

/** Runs a computation on a branch; its errors get the path in the job file. */
function onBranch<T>({ pathOf }: Branch, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const { code, received, allowed, slip, index } = error;
    // What enters a tree was computed from the carriers of the slots: the file has no such field.
    const computed = error.parameter.startsWith('source.');
    throw new DomainError({
      code,
      parameter: computed ? 'slots' : pathOf(error.parameter),
      received,
      allowed,
      slip,
      index,
    });
  }
}

function outletsOf(
  job: JobFile,
  { signal, frequencyMHz, bandwidthMHz, branches }: Sent,
  temperatureC: number,
): readonly OutletPlan[] {
  const found = new Map<string, OutletPlan>();
  const { stacking } = job.distribution ?? {};
  // Behind a unit that stacks channels a receiver finds every carrier in its own user band, at the level that the unit keeps.
  const centres = userBandCentres(job);
  const placesMHz = [...new Set([frequencyMHz, ...centres.values()])];
  for (const branch of branches)
    for (const placeMHz of placesMHz) {
      const stacked = placeMHz !== frequencyMHz || [...centres.values()].includes(placeMHz);
      const sourceDbuv = (stacked ? stacking?.outputLevelDbuv : undefined) ?? signal.levelDbuv;
      const levels = onBranch(branch, () =>
        outletLevels(
          {
            source: {
              levelDbuv: sourceDbuv,
              carrierToNoiseDb: signal.carrierToNoiseDb,
              bandwidthMHz,
            },
            tree: branch.tree,
            temperatureC,
          },
          [placeMHz],
        ),
      );
      for (const { name, kind, points } of levels) {
        const [point] = points;
        if (!point || found.has(name) || (centres.get(name) ?? frequencyMHz) !== placeMHz) continue;
        found.set(name, {
          outlet: name,
          kind,
          slot: signal.slot,
          carrier: signal.carrier,
          intermediateFrequencyMHz: placeMHz,
          lossDb: sourceDbuv - point.levelDbuv,
          levelDbuv: point.levelDbuv,
          carrierToNoiseDb: point.carrierToNoiseDb,
          limits: limitsAt(job, name, signal.slot),
        });
      }
    }
  return [...found.values()];
}

/** The heaviest load of each amplifier over all groups of carriers that share a cable. */
function amplifierPlans(
  job: JobFile,
  sent: readonly Sent[],
  temperatureC: number,
  notes: Ledger,
): readonly AmplifierPlan[] {
  const { trees = [], lines = [] } = job.distribution ?? {};
  const any =
    trees.some((tree) => partNames(tree, '').some(({ kind }) => kind === 'amplifier')) ||
    lines.some(({ parts }) => parts?.some(({ kind }) => kind === 'amplifier'));
  if (!any) return [];
  const worst = new Map<string, AmplifierPlan>();
  for (const group of new Set(sent.map((each) => each.group))) {
    const byFrequency = new Map<number, Sent>();
    for (const each of sent) if (each.group === group) byFrequency.set(each.frequencyMHz, each);
    const carriers = [...byFrequency.values()].sort((a, b) => a.frequencyMHz - b.frequencyMHz);
    const count = Math.max(
      2,
      notes.number(
        job.distribution?.carrierCount,
        'distribution.carrierCount',
        Math.max(2, carriers.length),
        '',
      ),
    );
    for (const branch of carriers[0]?.branches ?? []) {
      const loads = onBranch(branch, () =>
        amplifierLoads(
          {
            source: {
              levelDbuv: carriers.map(({ frequencyMHz, signal }) => ({
                frequencyMHz,
                valueDb: signal.levelDbuv,
              })),
            },
            tree: branch.tree,
            temperatureC,
          },
          { frequenciesMHz: carriers.map(({ frequencyMHz }) => frequencyMHz), carrierCount: count },
        ),
      );
      for (const load of loads) {
        const before = worst.get(load.name);
        if (!before || load.totalOutputDbuv > before.totalOutputDbuv)
          worst.set(load.name, { ...load, carrierCount: count });
      }
    }
  }
  return [...worst.values()];
}
