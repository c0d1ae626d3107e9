/** Section of the plan: is the view to each slot clear of the horizon as sighted. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { horizonProfile, slotViews } from '../../survey/index.js';
import type { JobFile } from '../jobFile.js';
import type { NorthPlan } from './directions.js';

/** View to one slot. */
export interface ViewPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** `clear`, `tight` (above the skyline by less than wanted), `blocked`, `not-sighted`, `below-horizon` or `overhead`. */
  readonly kind: 'clear' | 'tight' | 'blocked' | 'not-sighted' | 'below-horizon' | 'overhead';
  /** Elevation of the skyline under the slot in degrees; `null` where it is not known. */
  readonly horizonElevationDeg: number | null;
  /** Elevation of the slot less that of the skyline in degrees; `null` where it is not known. */
  readonly clearanceDeg: number | null;
  /** Clearance wanted in degrees: the half-power beamwidth at the slot's lowest frequency. */
  readonly requiredClearanceDeg: number;
}

/** Views to the job's slots. */
export function viewPlans(job: JobFile, north: NorthPlan): readonly ViewPlan[] {
  const { samples, north: reference } = job.horizon;
  const profile = within(
    'horizon',
    () =>
      samples.length === 0
        ? undefined
        : horizonProfile({
            sightings: samples.map(({ azimuthDeg, elevationDeg }) =>
              reference === 'true'
                ? { azimuthDeg, elevationDeg }
                : { magneticBearingDeg: azimuthDeg, elevationDeg },
            ),
            declinationDeg: north.declinationDeg,
          }),
    { sightings: 'samples' },
  );
  return job.slots.map((slot, index) =>
    within(`slots[${index}]`, () => {
      const frequencyGHz = Math.min(...slot.carriers.map((carrier) => carrier.frequencyGHz));
      const requiredClearanceDeg = halfPowerBeamwidth({
        diameterM: job.antenna.diameterM,
        frequencyGHz,
      });
      const [view] = profile
        ? slotViews({
            station: job.station,
            profile,
            orbitalLongitudesDeg: [slot.orbitalLongitudeDeg],
            requiredClearanceDeg,
          })
        : [{ kind: 'not-sighted' as const }];
      const known = view && 'clearanceDeg' in view ? view : undefined;
      return {
        slot: slot.name,
        kind: view?.kind ?? 'not-sighted',
        horizonElevationDeg: known?.horizonElevationDeg ?? null,
        clearanceDeg: known?.clearanceDeg ?? null,
        requiredClearanceDeg,
      };
    }),
  );
}
