/** Which slots a station sees over its measured horizon. */

import type { Station } from '../earth/station.js';
import { DomainError, object } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import { lookAngles } from '../pointing/look/lookAngles.js';
import type { HorizonProfile } from './horizonProfile.js';
import { type ViewClearance, viewClearance } from './viewClearance.js';

/** A slot over the horizon; read `kind` first. */
export type SlotView = { readonly orbitalLongitudeDeg: number } & (
  | (ViewClearance & {
      /** Azimuth of the slot in degrees, clockwise from true north, [0, 360). */
      readonly azimuthDeg: number;
      /** Geometric elevation of the slot in degrees. */
      readonly elevationDeg: number;
    })
  | {
      /** `below-horizon`: hidden by the Earth itself. */
      readonly kind: 'below-horizon';
      /** Geometric elevation of the slot in degrees, negative. */
      readonly elevationDeg: number;
    }
  | {
      /** `overhead`: in the zenith, over every skyline. */
      readonly kind: 'overhead';
      /** Geometric elevation of the slot in degrees. */
      readonly elevationDeg: number;
    }
);

const SLOT_VIEWS_INPUT_KEYS = {
  station: true,
  profile: true,
  orbitalLongitudesDeg: true,
  requiredClearanceDeg: true,
} satisfies Keys<Parameters<typeof slotViews>[0]>;

/**
 * Views of several slots over a measured horizon.
 *
 * @param input  `station`; `profile` from `horizonProfile`; `orbitalLongitudesDeg`, at least one, east positive,
 *   any turn; `requiredClearanceDeg` 0 to 30, default 0.
 * @returns One view per slot in the given order: `clear`, `tight`, `blocked` with the clearance in degrees,
 *   `not-sighted`, `below-horizon` or `overhead`; the slot's longitude in [-180, 180).
 * @throws {@link DomainError} naming the bad field; `empty` for no slot.
 *
 * Source: `lookAngles` and `viewClearance`. Accuracy: that of the sightings.
 * @example
 * ```ts
 * import { horizonProfile, slotViews } from 'slantpath/survey';
 * const profile = horizonProfile({
 *   sightings: [
 *     { azimuthDeg: 150, elevationDeg: 42 },
 *     { azimuthDeg: 165, elevationDeg: 38 },
 *     { azimuthDeg: 170, elevationDeg: 12 },
 *     { azimuthDeg: 190, elevationDeg: 12 },
 *   ],
 * });
 * const views = slotViews({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   profile,
 *   orbitalLongitudesDeg: [7.2, 16.4, 21.8],
 * });
 * views.map((view) => view.kind); // => ['clear', 'clear', 'blocked']
 * ```
 */
export function slotViews(input: {
  readonly station: Station;
  readonly profile: HorizonProfile;
  readonly orbitalLongitudesDeg: ArrayLike<number>;
  readonly requiredClearanceDeg?: number;
}): readonly SlotView[] {
  const { station, profile, orbitalLongitudesDeg, requiredClearanceDeg } = knownOnly(
    'input',
    input,
    SLOT_VIEWS_INPUT_KEYS,
  );
  const { length } = object('orbitalLongitudesDeg', orbitalLongitudesDeg);
  if (!(length > 0)) {
    throw new DomainError({
      code: 'empty',
      parameter: 'orbitalLongitudesDeg',
      received: orbitalLongitudesDeg,
      allowed: 'a list of at least one slot',
    });
  }
  return Array.from(orbitalLongitudesDeg, (slotDeg) => {
    const look = lookAngles(station, slotDeg);
    const orbitalLongitudeDeg = wrapLongitudeDeg(slotDeg);
    const { elevationDeg } = look;
    if (look.kind !== 'visible') return { orbitalLongitudeDeg, kind: look.kind, elevationDeg };
    const { azimuthDeg } = look;
    const direction = { azimuthDeg, elevationDeg, requiredClearanceDeg: requiredClearanceDeg ?? 0 };
    return { orbitalLongitudeDeg, azimuthDeg, elevationDeg, ...viewClearance(profile, direction) };
  });
}
