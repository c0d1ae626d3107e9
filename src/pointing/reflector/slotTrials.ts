/** Places, errors and losses of several slots for one trial of the boresight and of a bar's turn. */

import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../../numeric/angle.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { dot, type EastNorthUp, pictureAxes } from '../look/sightLine.js';
import { bestFieldPlace, followedFieldPlace } from './fieldPlace.js';
import { type BeamCosines, fieldLossDb } from './reflectorField.js';
import {
  type Aperture,
  apertureOf,
  beamOfFeedPlace,
  type FeedPlace,
  scanLossDb,
} from './reflectorOptics.js';
import { scanVariance } from './scanVariance.js';
import type { CheckedSeveralSlots } from './severalSlotsInput.js';
import { beamwidthDeg } from './slotLosses.js';

/** One slot under a trial boresight. */
export interface SlotTrial {
  readonly rightCosine: number;
  readonly upCosine: number;
  readonly place: FeedPlace;
  readonly errorDeg: number;
  readonly bands: readonly {
    readonly frequencyGHz: number;
    readonly errorLossDb: number;
    readonly scanLossDb: number;
    readonly lossDb: number;
    readonly beyondModel: boolean;
  }[];
}

/** A boresight on the sky, and the turn of a rigid bar. */
export interface Setting {
  readonly boresight: EastNorthUp;
  readonly tiltDeg: number;
}

/** Everything that a trial needs, made once. */
export interface SlotsProblem {
  readonly checked: CheckedSeveralSlots;
  readonly aperture: Aperture;
  readonly directions: readonly EastNorthUp[];
  /** `rays`: losses by the variance of ray lengths; `fields`: by the sum of fields, which is slower. */
  readonly losses: 'rays' | 'fields';
}

/** Above this loss in dB the variance of ray lengths no longer stands for the sum of fields. */
export const RAYS_HOLD_DB = 3;

export function slotsProblem(
  checked: CheckedSeveralSlots,
  directions: readonly EastNorthUp[],
  losses: 'rays' | 'fields' = 'rays',
): SlotsProblem {
  return { checked, aperture: apertureOf(checked.shape), directions, losses };
}

/** Where each slot's beam pointed last in a search by fields, and the best feed place there. */
export type LastPlaces = (BeamCosines & { readonly place: FeedPlace })[];

/** Share of a beamwidth within which the last feed place is a good start: the main lobe holds both. */
const NEAR_BEAMWIDTHS = 0.3;

/** Feed place with the greatest sum of fields, from the last one where the beam has hardly moved since. */
function fieldPlace(
  { checked, aperture }: SlotsProblem,
  index: number,
  beam: BeamCosines,
  lasts: LastPlaces,
): FeedPlace {
  // The highest frequency has the narrowest beam, so its best place is the one that must be met.
  const frequencyGHz = Math.max(...(checked.slots[index]?.frequenciesGHz ?? []));
  const last = lasts[index];
  const movedDeg =
    last === undefined
      ? Number.POSITIVE_INFINITY
      : DEGREES_PER_RADIAN *
        Math.hypot(beam.rightCosine - last.rightCosine, beam.upCosine - last.upCosine);
  const place =
    last && movedDeg < NEAR_BEAMWIDTHS * beamwidthDeg(checked, frequencyGHz)
      ? followedFieldPlace(aperture, frequencyGHz, last.place, beam)
      : bestFieldPlace(
          aperture,
          frequencyGHz,
          scanVariance(aperture, beam.rightCosine, beam.upCosine).place,
          beam,
        );
  lasts[index] = { ...beam, place };
  return place;
}

/**
 * Places, errors and losses of all slots for a setting.
 *
 * @param lasts  What earlier trials of the same search found, kept up to date; a trial by itself has none.
 */
export function slotTrials(
  problem: SlotsProblem,
  setting: Setting,
  lasts: LastPlaces = [],
): readonly SlotTrial[] {
  const { checked, aperture, directions } = problem;
  const axes = pictureAxes(setting.boresight);
  return checked.slots.map((slot, index): SlotTrial => {
    const direction = directions[index] as EastNorthUp;
    const rightCosine = dot(direction, axes.right);
    const upCosine = dot(direction, axes.up);
    const along = checked.placesM?.[index];
    let place: FeedPlace;
    let varianceM2: number;
    let errorDeg = 0;
    let beam: BeamCosines = { rightCosine, upCosine };
    // Without a bar each feed may stand where its slot wants it; then no pointing error is left, only scan loss.
    if (along === undefined) {
      if (problem.losses === 'fields') {
        place = fieldPlace(problem, index, beam, lasts);
        varianceM2 = 0;
      } else ({ place, varianceM2 } = scanVariance(aperture, rightCosine, upCosine));
    } else {
      // Clockwise as seen from behind: the right end of the bar goes down.
      place = [along * cosDeg(setting.tiltDeg), -along * sinDeg(setting.tiltDeg), 0];
      const found = beamOfFeedPlace(aperture, place);
      beam = found;
      varianceM2 = found.varianceM2;
      errorDeg =
        Math.hypot(rightCosine - beam.rightCosine, upCosine - beam.upCosine) * DEGREES_PER_RADIAN;
    }
    const loss = (frequencyGHz: number): readonly [error: number, scan: number] => {
      if (problem.losses === 'rays')
        return [
          gaussianLobeLossDb(errorDeg, beamwidthDeg(checked, frequencyGHz)),
          scanLossDb(varianceM2, frequencyGHz),
        ];
      const field = (towards: BeamCosines) => fieldLossDb(aperture, frequencyGHz, place, towards);
      // The sum of fields gives both losses at once; that of the feed's own beam is the scan loss, the rest is error.
      const all = field({ rightCosine, upCosine });
      const scan = Math.min(all, field(beam));
      return [all - scan, scan];
    };
    const bands = slot.frequenciesGHz.map((frequencyGHz) => {
      const [errorLossDb, scanDb] = loss(frequencyGHz);
      const lossDb = errorLossDb + scanDb;
      // Kept beside the number, so that the caller can say it or go over to fields.
      const beyondModel = lossDb > RAYS_HOLD_DB;
      return { frequencyGHz, errorLossDb, scanLossDb: scanDb, lossDb, beyondModel };
    });
    return { rightCosine, upCosine, place, errorDeg, bands };
  });
}
