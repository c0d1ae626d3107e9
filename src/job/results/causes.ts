/** Section of the record: what to look at first where a reading fails or stands off its expectation. */

import {
  type CauseInstallation,
  type CauseMeasurement,
  type CauseObservation,
  type CauseRanking,
  type CauseTestPoint,
  causeTestPoints,
  type FaultCause,
  rankCauses,
  type UnseenCause,
} from '../../acceptance/index.js';
import { within } from '../../errors.js';
import type { JobCarrier, JobFile } from '../file/jobFile.js';
import { branchesOf } from '../plan/branches.js';
import { onCable } from '../plan/outlets.js';
import type { JobPlan } from '../plan/planJob.js';
import { servedBy, switchedPolarization } from '../plan/tuning.js';
import type { ReadingVerdict } from './verdicts.js';

/** What to look at first. */
export interface FirstLook {
  /** `cause`: the first is named; `cannot-tell`: more readings are needed; `nothing-wrong`: the pattern is as planned. */
  readonly kind: CauseRanking['kind'];
  /** Why it cannot be told; `null` where it can. */
  readonly reason: CauseRanking['reason'];
  /** Mount whose readings were weighed. */
  readonly mount: string;
  /** Causes by probability, the likeliest first, those under 2 % left out. */
  readonly causes: readonly {
    readonly cause: FaultCause;
    readonly probabilityRatio: number;
    /** Slot, segment, port or carrier; `null` for the whole antenna. */
    readonly location: string | null;
  }[];
  /** The one next measurement that separates the first two best; `null` where none does. */
  readonly next: CauseMeasurement | null;
  /** Causes, with their place, on which no reading so far bears: what is said above says nothing about these. */
  readonly unseen: readonly UnseenCause[];
}

/** Band of a carrier's outdoor unit: high from 11.7 GHz in the Ku band (common practice). */
function bandOf({ frequencyGHz }: JobCarrier): 'low' | 'high' {
  return frequencyGHz >= 11.7 && frequencyGHz < 13 ? 'high' : 'low';
}

const carrierName = (at: { readonly slot: string | null; readonly carrier: string | null }) =>
  `${at.slot}, ${at.carrier}`;

/** Whether a verdict asks for a cause. */
function isBad({ decision, finding, wet }: ReadingVerdict): boolean {
  if (wet) return false;
  return finding === 'below' || (decision !== null && decision.verdict !== 'conforms');
}

function installationOf(job: JobFile, plan: JobPlan, mount: string): CauseInstallation | null {
  const reflector = plan.mounts.find((each) => each.mount === mount)?.reflector;
  if (!reflector) return null;
  const points = new Map<string, CauseTestPoint>();
  const signals = plan.signals.filter((signal) => signal.mount === mount);
  const carriers = signals.flatMap((signal) => {
    const slot = job.slots.find(({ name }) => name === signal.slot);
    const carrier = slot?.carriers?.find(({ name }) => name === signal.carrier);
    const frequencyMHz = plan.tuning.find(
      (each) => each.slot === signal.slot && each.carrier === signal.carrier,
    )?.intermediateFrequencyMHz;
    if (!slot || !carrier || typeof frequencyMHz !== 'number' || !onCable(frequencyMHz)) return [];
    return [
      {
        slot,
        carrier,
        cause: {
          name: carrierName(signal),
          slot: signal.slot,
          polarization: switchedPolarization(carrier),
          band: bandOf(carrier),
          frequencyGHz: carrier.frequencyGHz,
          frequencyMHz,
          levelDbuv: signal.levelDbuv,
          carrierToNoiseDb: signal.carrierToNoiseDb,
          ...(signal.requiredDb === null ? {} : { thresholdDb: signal.requiredDb }),
        },
      },
    ];
  });
  if (carriers.length === 0) return null;
  const frequenciesMHz = carriers.map(({ cause }) => cause.frequencyMHz);
  for (const { slot, carrier } of carriers)
    for (const branch of branchesOf(job, carrier, servedBy(job, slot, carrier)))
      for (const point of causeTestPoints(branch.tree, { frequenciesMHz }))
        if (!points.has(point.name)) points.set(point.name, point);
  return {
    diameterM: reflector.diameterM,
    slots: plan.directions
      .filter(({ kind, slot }) => kind !== 'below-horizon' && signals.some((s) => s.slot === slot))
      .map(({ slot, azimuthDeg, elevationDeg }) => ({
        name: slot,
        azimuthDeg: azimuthDeg ?? 0,
        elevationDeg,
      })),
    carriers: carriers.map(({ cause }) => cause),
    testPoints: [
      { name: 'antenna', lossDb: 0 },
      ...[...points.values()].map((point) => ({ ...point, behind: point.behind ?? 'antenna' })),
    ],
  };
}

function observationOf(verdict: ReadingVerdict): CauseObservation | null {
  if (verdict.slot === null || verdict.carrier === null || verdict.bound !== null) return null;
  const at = {
    carrier: carrierName(verdict),
    testPoint: verdict.testPoint,
    standardUncertaintyDb: Math.max(0.05, verdict.standardUncertainty),
  };
  switch (verdict.quantity) {
    case 'level':
      return { kind: 'level', levelDbuv: verdict.reading, ...at };
    case 'carrier-to-noise':
      return { kind: 'carrier-to-noise', carrierToNoiseDb: verdict.reading, ...at };
    case 'cross-polar-isolation':
      return { kind: 'isolation', isolationDb: verdict.reading, ...at };
    default:
      return null;
  }
}

/** The first look; `null` where every reading conforms and stands where it was expected. */
export function firstLook(
  job: JobFile,
  plan: JobPlan,
  verdicts: readonly ReadingVerdict[],
): FirstLook | null {
  const bad = verdicts.find(isBad);
  if (!bad) return null;
  const mount = job.mounts.find(({ slots }) => bad.slot !== null && slots.includes(bad.slot));
  if (!mount) return null;
  return within('', () => {
    const installation = installationOf(job, plan, mount.name);
    if (!installation) return null;
    const known = new Set(installation.carriers.map(({ name }) => name));
    const points = new Set(installation.testPoints.map(({ name }) => name));
    const observations = verdicts.flatMap((verdict) => {
      if (verdict.wet || !known.has(carrierName(verdict)) || !points.has(verdict.testPoint))
        return [];
      return observationOf(verdict) ?? [];
    });
    if (observations.length === 0) return null;
    const found = rankCauses({ installation, observations });
    return {
      kind: found.kind,
      reason: found.reason,
      mount: mount.name,
      causes: found.ranking
        .filter(({ probabilityRatio }) => probabilityRatio >= 0.02)
        .map(({ cause, probabilityRatio, location }) => ({ cause, probabilityRatio, location })),
      next: found.next?.measurement ?? null,
      unseen: found.unseen,
    };
  });
}
