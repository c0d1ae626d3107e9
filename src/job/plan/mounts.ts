/** Section of the plan: how each mount is preset. */

import type { Station } from '../../earth/index.js';
import { trueToMagneticBearing } from '../../magnetic/index.js';
import type { JobFile, JobReflector } from '../file/jobFile.js';
import type { DirectionPlan, NorthPlan } from './directions.js';
import type { Ledger } from './ledger.js';
import {
  type MountQuestion,
  type OneSlotPlan,
  presetOf,
  type ReflectorPlan,
  type SharingLoss,
} from './mountParts.js';
import { type PolarPlan, polarPlan } from './polarMount.js';
import { type SharedPlan, sharedPlan } from './sharedReflector.js';
import { type TrackingPlan, trackingPlan } from './tracking.js';

/** A mount: its name, its slots, and how it is set; read `kind` first. */
export type MountPlan = {
  /** Name of the mount. */
  readonly mount: string;
  /** Its slots above the horizon. */
  readonly slots: readonly string[];
  /** Its reflector; `null` where the file gives none. */
  readonly reflector: ReflectorPlan | null;
  /** Loss of each carrier by error of the mount or by sharing; empty for one slot on the axis. */
  readonly losses: readonly SharingLoss[];
} & (
  | OneSlotPlan
  | SharedPlan
  | PolarPlan
  | TrackingPlan
  /** `no-slot`: nothing above the horizon. `too-far-apart`: no one reflector takes the slots. `not-given`: several slots need the reflector. */
  | { readonly kind: 'no-slot' | 'too-far-apart' | 'not-given' }
);

/** Usual figures where the file names none (practice of the trade). */
const USUAL = { efficiencyRatio: 0.65, focalRatio: 0.6, surfaceErrorMm: 0 };

function reflectorPlan(
  reflector: JobReflector | undefined,
  path: string,
  notes: Ledger,
): ReflectorPlan | null {
  if (!reflector) {
    notes.miss('mount', `${path}.reflector.diameterM`);
    return null;
  }
  const at = `${path}.reflector`;
  if (reflector.offsetAngleDeg === undefined) notes.miss('mount', `${at}.offsetAngleDeg`);
  return {
    diameterM: reflector.diameterM,
    efficiencyRatio: notes.number(
      reflector.efficiencyRatio,
      `${at}.efficiencyRatio`,
      USUAL.efficiencyRatio,
      '',
    ),
    offsetAngleDeg: reflector.offsetAngleDeg ?? null,
    focalLengthM: reflector.focalLengthM ?? USUAL.focalRatio * reflector.diameterM,
    surfaceErrorMm: notes.number(
      reflector.surfaceErrorMm,
      `${at}.surfaceErrorMm`,
      USUAL.surfaceErrorMm,
      'mm',
    ),
  };
}

/** Mounts of the job. */
export function mountPlans(
  job: JobFile,
  station: Station,
  directions: readonly DirectionPlan[],
  north: NorthPlan | null,
  notes: Ledger,
): readonly MountPlan[] {
  return job.mounts.map((mount, index) => {
    const path = `mounts[${index}]`;
    const reflector = reflectorPlan(mount.reflector, path, notes);
    const slots = job.slots.filter(
      (slot, at) => mount.slots.includes(slot.name) && directions[at]?.kind !== 'below-horizon',
    );
    const head = { mount: mount.name, slots: slots.map(({ name }) => name), reflector };
    if (slots.length === 0) return { ...head, losses: [], kind: 'no-slot' };
    const question: MountQuestion = {
      job,
      station,
      mount,
      path,
      reflector,
      slots,
      directions,
      magnetic: (azimuthDeg) =>
        azimuthDeg === null || north === null
          ? null
          : trueToMagneticBearing({ azimuthDeg, declinationDeg: north.declinationDeg }),
      notes,
    };
    if (mount.kind === 'polar') return { ...head, ...polarPlan(question, mount) };
    if (mount.kind === 'tracking') return { ...head, ...trackingPlan(question, mount) };
    if (slots.length === 1) return { ...head, losses: [], ...oneSlotPlan(question) };
    if (!reflector) return { ...head, losses: [], kind: 'not-given' };
    return { ...head, ...sharedPlan(question, mount, reflector) };
  });
}

function oneSlotPlan(question: MountQuestion): OneSlotPlan {
  const slot = question.slots[0]?.name ?? '';
  const direction = question.directions.find((each) => each.slot === slot);
  const azimuthDeg = direction?.azimuthDeg ?? null;
  const elevationDeg = direction?.apparentElevationDeg ?? 90;
  return {
    kind: 'one-slot',
    boresightAzimuthDeg: azimuthDeg,
    magneticBearingDeg: question.magnetic(azimuthDeg),
    boresightElevationDeg: elevationDeg,
    preset: presetOf(question, elevationDeg),
    tiltDeg: 0,
    feeds: [
      {
        slot,
        acrossMm: 0,
        upMm: 0,
        alongMm: 0,
        turnDeg: direction?.skewDeg ?? null,
        turnAgainstRowDeg: null,
      },
    ],
  };
}
