/** Section of the plan: how each mount is preset. */

import type { Station } from '../../earth/index.js';
import { within } from '../../errors.js';
import { trueToMagneticBearing } from '../../magnetic/index.js';
import { type OffsetReflectorPreset, offsetReflectorPreset } from '../../pointing/index.js';
import type { JobFile, JobMount, JobReflector } from '../file/jobFile.js';
import type { DirectionPlan, NorthPlan } from './directions.js';
import type { Ledger } from './ledger.js';
import { type PolarPlan, polarPlan } from './polarMount.js';
import { type SharedPlan, sharedPlan } from './sharedReflector.js';
import { type TrackingPlan, trackingPlan } from './tracking.js';

/** A reflector with what was taken where the file gives nothing. */
export interface ReflectorPlan {
  /** Diameter in metres. */
  readonly diameterM: number;
  /** Aperture efficiency. */
  readonly efficiencyRatio: number;
  /** Offset angle in degrees; `null` where it is not given. */
  readonly offsetAngleDeg: number | null;
  /** Focal length in metres. */
  readonly focalLengthM: number;
  /** Surface error, r.m.s., in millimetres. */
  readonly surfaceErrorMm: number;
}

/** Place and turn of one feed. */
export interface FeedPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Millimetres to the right of the focus, seen from behind. */
  readonly acrossMm: number;
  /** Millimetres up from the focus. */
  readonly upMm: number;
  /** Millimetres from the focus towards the reflector. */
  readonly alongMm: number;
  /** Turn against the reflector's vertical in degrees, clockwise seen from behind facing the satellite; `null` for circular polarization. */
  readonly turnDeg: number | null;
  /** The same against the row of feeds, where it is tilted. */
  readonly turnAgainstRowDeg: number | null;
}

/** Loss of one carrier because its slot is not on the axis. */
export interface SharingLoss {
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Loss in dB, 0 or more. */
  readonly lossDb: number;
  /** Whether the loss lies beyond what the model was checked for, so that the figure is no more than a sign. */
  readonly beyondModel: boolean;
}

/** One slot with one reflector. */
export interface OneSlotPlan {
  readonly kind: 'one-slot';
  /** True azimuth of the boresight in degrees; `null` straight overhead. */
  readonly boresightAzimuthDeg: number | null;
  /** The same from magnetic north. */
  readonly magneticBearingDeg: number | null;
  /** Elevation of the boresight in degrees, with refraction: where the beam points. */
  readonly boresightElevationDeg: number;
  /** Lean of the reflector's face; `null` without an offset angle. */
  readonly preset: OffsetReflectorPreset | null;
  /** Turn of the row of feeds; 0. */
  readonly tiltDeg: number;
  /** The feed in the focus. */
  readonly feeds: readonly FeedPlan[];
}

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

/** What a mount is planned from. */
export interface MountQuestion {
  readonly job: JobFile;
  readonly station: Station;
  readonly mount: JobMount;
  /** Path of the mount in the file. */
  readonly path: string;
  readonly reflector: ReflectorPlan | null;
  /** Its slots above the horizon. */
  readonly slots: JobFile['slots'];
  /** Directions of all slots. */
  readonly directions: readonly DirectionPlan[];
  /** Magnetic bearing of a true azimuth; `null` without a day. */
  readonly magnetic: (azimuthDeg: number | null) => number | null;
  readonly notes: Ledger;
}

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

/** Lean of the face for a beam elevation. */
export function presetOf(
  { reflector, path }: MountQuestion,
  elevationDeg: number,
): OffsetReflectorPreset | null {
  const offsetAngleDeg = reflector?.offsetAngleDeg;
  if (offsetAngleDeg === undefined || offsetAngleDeg === null) return null;
  return within(`${path}.reflector`, () =>
    offsetReflectorPreset({ elevationDeg: Math.min(90, elevationDeg), offsetAngleDeg }),
  );
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
