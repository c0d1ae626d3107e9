/** An antenna that follows a satellite on an inclined orbit by a schedule. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { asinDeg, cosDeg, sinDeg } from '../../numeric/angle.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { dailyFigure } from '../../pointing/index.js';
import type { JobMount } from '../file/jobFile.js';
import { apparentDeg } from './directions.js';
import type { MountQuestion, SharingLoss } from './mountParts.js';

/** The schedule of one sidereal day. */
export interface TrackingPlan {
  readonly kind: 'tracking';
  /** Where the antenna is set, move by move. */
  readonly schedule: readonly {
    /** Hours since the satellite passed the equator northbound; the setting holds half a step to either side. */
    readonly sinceNodeH: number;
    /** True azimuth in degrees. */
    readonly azimuthDeg: number;
    /** Elevation at which the beam must point in degrees. */
    readonly elevationDeg: number;
  }[];
  /** Largest angle between satellite and beam from one move to the next in degrees. */
  readonly worstErrorDeg: number;
  /** Lowest and highest elevation of the day in degrees. */
  readonly lowestElevationDeg: number;
  readonly highestElevationDeg: number;
}

/** Points computed per move, an even number, so that one lies in the middle. */
const POINTS_PER_MOVE = 8;

interface SkyPoint {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
}

/** Angle between two directions in degrees by half angles, which keeps its digits for neighbours. */
function separationDeg(a: SkyPoint, b: SkyPoint): number {
  const up = sinDeg((a.elevationDeg - b.elevationDeg) / 2);
  const across = sinDeg((a.azimuthDeg - b.azimuthDeg) / 2);
  const square = up * up + cosDeg(a.elevationDeg) * cosDeg(b.elevationDeg) * across * across;
  return 2 * asinDeg(Math.sqrt(Math.min(1, square)));
}

/** Schedule and losses. */
export function trackingPlan(
  { job, station, slots, path, reflector, notes }: MountQuestion,
  mount: JobMount & { readonly kind: 'tracking' },
): TrackingPlan & { readonly losses: readonly SharingLoss[] } {
  const slot = slots[0] as (typeof slots)[number];
  const slotIndex = job.slots.indexOf(slot);
  const inclinationDeg = notes.number(
    slot.inclinationDeg,
    `slots[${slotIndex}].inclinationDeg`,
    0,
    'deg',
  );
  const given = Math.round(notes.number(mount.movesPerDay, `${path}.movesPerDay`, 24, ''));
  // Beyond 180 moves a day the points of the figure are used as they come.
  const perMove = given * POINTS_PER_MOVE <= 1440 ? POINTS_PER_MOVE : 1;
  const count = Math.max(8, given * perMove);
  const track = within(`slots[${slotIndex}]`, () =>
    dailyFigure({
      station,
      orbitalLongitudeDeg: slot.orbitalLongitudeDeg,
      inclinationDeg,
      count,
    }),
  ).map((point) => ({ ...point, elevationDeg: apparentDeg(point.elevationDeg, station) }));
  const step = count / given;
  const schedule = [];
  let worstErrorDeg = 0;
  for (let move = 0; move < given; move++) {
    const middle = Math.min(count - 1, Math.round((move + 0.5) * step));
    const at = track[middle] as (typeof track)[number];
    for (let index = Math.floor(move * step); index <= Math.ceil((move + 1) * step); index++) {
      const point = track[index % count] as (typeof track)[number];
      worstErrorDeg = Math.max(worstErrorDeg, separationDeg(at, point));
    }
    schedule.push({
      sinceNodeH: at.sinceNodeH,
      azimuthDeg: at.azimuthDeg,
      elevationDeg: at.elevationDeg,
    });
  }
  const elevations = track.map(({ elevationDeg }) => elevationDeg);
  const losses = reflector
    ? (slot.carriers ?? []).map(({ name, frequencyGHz }): SharingLoss => {
        const widthDeg = halfPowerBeamwidth({ diameterM: reflector.diameterM, frequencyGHz });
        const lossDb = gaussianLobeLossDb(worstErrorDeg, widthDeg);
        return { slot: slot.name, carrier: name, lossDb, beyondModel: lossDb > 3 };
      })
    : [];
  return {
    kind: 'tracking',
    schedule,
    worstErrorDeg,
    lowestElevationDeg: elevations.reduce((a, b) => Math.min(a, b)),
    highestElevationDeg: elevations.reduce((a, b) => Math.max(a, b)),
    losses,
  };
}
