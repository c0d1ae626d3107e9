/** What the plans of all kinds of mount share. */

import type { Station } from '../../earth/index.js';
import { within } from '../../errors.js';
import { type OffsetReflectorPreset, offsetReflectorPreset } from '../../pointing/index.js';
import type { JobFile, JobMount } from '../file/jobFile.js';
import type { DirectionPlan } from './directions.js';
import type { Ledger } from './ledger.js';

/** Outer diameter of a feed in metres where the file names none (practice of the trade). */
export const USUAL_FEED_DIAMETER_M = 0.06;

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
