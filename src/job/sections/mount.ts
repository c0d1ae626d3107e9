/** Section of the plan: how the mount is preset, for one slot or for several with one reflector. */

import { within } from '../../errors.js';
import { trueToMagneticBearing } from '../../magnetic/index.js';
import {
  type OffsetReflectorPreset,
  offsetReflectorPreset,
  severalSlots,
} from '../../pointing/index.js';
import type { JobFile } from '../jobFile.js';
import type { DirectionPlan, NorthPlan } from './directions.js';

/** Place of one feed. */
export interface FeedPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Millimetres to the right of the focus, seen from behind. */
  readonly acrossMm: number;
  /** Millimetres up from the focus. */
  readonly upMm: number;
  /** Millimetres from the focus towards the reflector. */
  readonly alongMm: number;
}

/** Loss of one carrier because its slot shares the reflector. */
export interface SharingLoss {
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Loss in dB, 0 or more. */
  readonly lossDb: number;
}

/** The mount; read `kind` first. */
export type MountPlan =
  | {
      /** `one-slot` or `shared`: where the reflector points. */
      readonly kind: 'one-slot' | 'shared';
      /** True azimuth of the boresight in degrees; `null` straight overhead. */
      readonly boresightAzimuthDeg: number | null;
      /** The same from magnetic north. */
      readonly magneticBearingDeg: number | null;
      /** Elevation of the boresight in degrees. */
      readonly boresightElevationDeg: number;
      /** Turn of the feed bar in degrees, clockwise seen from behind; 0 for one slot. */
      readonly tiltDeg: number;
      /** Lean of the reflector's face. */
      readonly preset: OffsetReflectorPreset;
      /** Feed places; empty for one slot, whose feed sits in the focus. */
      readonly feeds: readonly FeedPlan[];
      /** Loss of each carrier; empty for one slot. */
      readonly losses: readonly SharingLoss[];
      /** Pairs of slots whose feeds would need the same place, by name. */
      readonly collisions: readonly (readonly [string, string])[];
    }
  | {
      /** `no-slot`: nothing above the horizon. */
      readonly kind: 'no-slot';
      /** None. */
      readonly losses: readonly SharingLoss[];
    };

/** Focal length over diameter where the job file names none (practice of the trade). */
const USUAL_FOCAL_RATIO = 0.6;

/** Mount of the job. */
export function mountPlan(
  job: JobFile,
  directions: readonly DirectionPlan[],
  north: NorthPlan,
): MountPlan {
  const seen = job.slots.filter((_, index) => directions[index]?.kind !== 'below-horizon');
  const [only] = seen;
  if (!only) return { kind: 'no-slot', losses: [] };
  const preset = (elevationDeg: number) =>
    within('antenna', () =>
      offsetReflectorPreset({ elevationDeg, offsetAngleDeg: job.antenna.offsetAngleDeg }),
    );
  const magnetic = (azimuthDeg: number | null) =>
    azimuthDeg === null ? null : trueToMagneticBearing(azimuthDeg, north.declinationDeg);
  if (seen.length === 1) {
    const direction = directions.find(({ slot }) => slot === only.name);
    const azimuthDeg = direction?.azimuthDeg ?? null;
    const elevationDeg = direction?.elevationDeg ?? 90;
    return {
      kind: 'one-slot',
      boresightAzimuthDeg: azimuthDeg,
      magneticBearingDeg: magnetic(azimuthDeg),
      boresightElevationDeg: elevationDeg,
      tiltDeg: 0,
      preset: preset(elevationDeg),
      feeds: [],
      losses: [],
      collisions: [],
    };
  }
  const names = Object.fromEntries(
    seen.flatMap((slot, index) => {
      const at = `slots[${job.slots.indexOf(slot)}]`;
      return [
        [`slots[${index}]`, at],
        ...slot.carriers.map((_, carrier) => [
          `slots[${index}].frequenciesGHz[${carrier}]`,
          `${at}.carriers[${carrier}].frequencyGHz`,
        ]),
      ];
    }),
  );
  const several = within(
    '',
    () =>
      severalSlots({
        station: job.station,
        slots: seen.map((slot) => ({
          orbitalLongitudeDeg: slot.orbitalLongitudeDeg,
          frequenciesGHz: slot.carriers.map(({ frequencyGHz }) => frequencyGHz),
        })),
        reflector: {
          diameterM: job.antenna.diameterM,
          focalLengthM: job.antenna.focalLengthM ?? USUAL_FOCAL_RATIO * job.antenna.diameterM,
          offsetAngleDeg: job.antenna.offsetAngleDeg,
        },
      }),
    { ...names, reflector: 'antenna' },
  );
  if (several.kind === 'below-horizon') return { kind: 'no-slot', losses: [] };
  const nameOf = (orbitalLongitudeDeg: number) =>
    seen[several.slots.findIndex((slot) => slot.orbitalLongitudeDeg === orbitalLongitudeDeg)]
      ?.name ?? String(orbitalLongitudeDeg);
  return {
    kind: 'shared',
    boresightAzimuthDeg: several.boresight.azimuthDeg,
    magneticBearingDeg: magnetic(several.boresight.azimuthDeg),
    boresightElevationDeg: several.boresight.elevationDeg,
    tiltDeg: several.tiltDeg,
    preset: preset(several.boresight.elevationDeg),
    feeds: several.slots.map(({ feed }, index) => ({
      slot: seen[index]?.name ?? '',
      acrossMm: feed.rightM * 1000,
      upMm: feed.upM * 1000,
      alongMm: feed.alongM * 1000,
    })),
    losses: several.slots.flatMap(({ bands }, index) =>
      bands.map(({ lossDb }, at) => ({
        slot: seen[index]?.name ?? '',
        carrier: seen[index]?.carriers[at]?.name ?? '',
        lossDb,
      })),
    ),
    collisions: several.collisions.map(({ orbitalLongitudesDeg: [a, b] }) => [
      nameOf(a),
      nameOf(b),
    ]),
  };
}
