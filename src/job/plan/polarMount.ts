/** A polar mount with its motor. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { polarMount } from '../../pointing/index.js';
import type { JobMount } from '../file/jobFile.js';
import type { MountQuestion, SharingLoss } from './mountParts.js';

/** Setting of a polar mount. */
export interface PolarPlan {
  readonly kind: 'polar';
  /** Elevation of the axis above the horizontal towards the nearer pole in degrees. */
  readonly axisElevationDeg: number;
  /** By how much the axis is tipped towards the equator from the Earth's axis in degrees. */
  readonly forwardTiltDeg: number;
  /** Angle of the beam below the plane across the axis in degrees. */
  readonly declinationDeg: number;
  /** Elevation of the arc's highest point in degrees. */
  readonly apexElevationDeg: number;
  /** Elevation of the beam at the highest point in degrees. */
  readonly apexBeamElevationDeg: number;
  /** Where the motor stops for each slot. */
  readonly stops: readonly {
    readonly slot: string;
    /** Rotation from the highest point in degrees, towards the east positive. */
    readonly rotationEastDeg: number;
    /** How far the beam passes beside the slot in degrees, the motor's half step counted in. */
    readonly errorDeg: number;
    /** Whether the motor reaches it. */
    readonly reached: boolean;
    /** Rotation beyond the motor's limit in degrees; 0 where it is reached. */
    readonly beyondDeg: number;
  }[];
}

/** Setting and stops. */
export function polarPlan(
  { job, station, slots, path, reflector, notes }: MountQuestion,
  mount: JobMount & { readonly kind: 'polar' },
):
  | (PolarPlan & { readonly losses: readonly SharingLoss[] })
  | { readonly kind: 'no-slot'; readonly losses: readonly SharingLoss[] } {
  const fit = notes.word(mount.fit, `${path}.fit`, 'least-worst');
  const limit = (side: 'eastLimitDeg' | 'westLimitDeg') =>
    notes.number(mount.motor?.[side], `${path}.motor.${side}`, 90, 'deg');
  const east = limit('eastLimitDeg');
  const west = limit('westLimitDeg');
  const stepDeg = notes.number(mount.motor?.stepDeg, `${path}.motor.stepDeg`, 0, 'deg');
  const set = within(path, () =>
    polarMount({
      station,
      fit,
      orbitalLongitudesDeg: slots.map(({ orbitalLongitudeDeg }) => orbitalLongitudeDeg),
    }),
  );
  if (set.kind === 'none') return { kind: 'no-slot', losses: [] };
  const stops = set.slots.map(({ rotationEastDeg, errorDeg }, index) => {
    const beyondDeg = Math.max(0, rotationEastDeg - east, -rotationEastDeg - west);
    return {
      slot: slots[index]?.name ?? '',
      rotationEastDeg,
      errorDeg: Math.hypot(errorDeg, stepDeg / 2),
      reached: beyondDeg === 0,
      beyondDeg,
    };
  });
  const losses = reflector
    ? stops.flatMap(({ slot, errorDeg }) =>
        (job.slots.find(({ name }) => name === slot)?.carriers ?? []).map(
          ({ name, frequencyGHz }): SharingLoss => {
            const widthDeg = halfPowerBeamwidth({ diameterM: reflector.diameterM, frequencyGHz });
            const lossDb = gaussianLobeLossDb(errorDeg, widthDeg);
            return { slot, carrier: name, lossDb, beyondModel: lossDb > 3 };
          },
        ),
      )
    : [];
  return {
    kind: 'polar',
    axisElevationDeg: set.axisElevationDeg,
    forwardTiltDeg: set.forwardTiltDeg,
    declinationDeg: set.mountDeclinationDeg,
    apexElevationDeg: set.apexElevationDeg,
    apexBeamElevationDeg: set.apexBeamElevationDeg,
    stops,
    losses,
  };
}
