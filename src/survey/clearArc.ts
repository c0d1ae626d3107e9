/** Which part of the geostationary arc is clear over a measured horizon. */

import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { wrapLongitudeDeg } from '../numeric/angle.js';
import { lookAngles } from '../pointing/look/lookAngles.js';
import { visibleArc } from '../pointing/slots/visibleArc.js';
import type { HorizonProfile } from './horizonProfile.js';
import { type ViewClearance, viewClearance } from './viewClearance.js';

/** A stretch of the arc seen in one way. */
export interface ArcStretch {
  /** `clear`, `tight`, `blocked` or `not-sighted`, as for `viewClearance`. */
  readonly kind: ViewClearance['kind'];
  /** Its western end in degrees of orbital longitude, [-180, 180). */
  readonly westLongitudeDeg: number;
  /** Its eastern end in degrees of orbital longitude, [-180, 180). */
  readonly eastLongitudeDeg: number;
  /** From end to end in degrees of orbital longitude, above 0. */
  readonly longitudeSpanDeg: number;
}

/** Half a step finds stretches wider than this many degrees of orbital longitude. */
const STEP_DEG = 0.25;

const CLEAR_ARC_INPUT_KEYS = {
  station: true,
  profile: true,
  requiredClearanceDeg: true,
  minimumElevationDeg: true,
} satisfies Keys<Parameters<typeof clearArc>[0]>;

/**
 * The visible arc parted into stretches that are clear, tight, blocked or not sighted.
 *
 * @param input  `station`; `profile` from `horizonProfile`; `requiredClearanceDeg` 0 to 30, default 0;
 *   `minimumElevationDeg` 0 to 89, default 0: lower slots are left out.
 * @returns The stretches from west to east, without gaps; empty where nothing of the arc stands high enough.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: `lookAngles` and `viewClearance`. Accuracy: ends to 1e-6 degree of longitude for the given profile;
 * stretches narrower than 0.25 degree may be missed.
 * @example
 * ```ts
 * import { clearArc, horizonProfile } from 'slantpath/survey';
 * const stretches = clearArc({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   profile: horizonProfile({
 *     sightings: [
 *       { azimuthDeg: 150, elevationDeg: 42 },
 *       { azimuthDeg: 165, elevationDeg: 38 },
 *       { azimuthDeg: 170, elevationDeg: 12 },
 *       { azimuthDeg: 190, elevationDeg: 12 },
 *     ],
 *   }),
 * });
 * stretches.map((stretch) => stretch.kind); // => ['not-sighted', 'clear', 'blocked', 'not-sighted']
 * ```
 */
export function clearArc(input: {
  readonly station: Station;
  readonly profile: HorizonProfile;
  readonly requiredClearanceDeg?: number;
  readonly minimumElevationDeg?: number;
}): readonly ArcStretch[] {
  const { station, profile, requiredClearanceDeg, minimumElevationDeg } = knownOnly(
    'input',
    input,
    CLEAR_ARC_INPUT_KEYS,
  );
  const place = checkedStation(station);
  const lowestDeg = inRange('minimumElevationDeg', minimumElevationDeg ?? 0, 0, 89);
  const required = inRange('requiredClearanceDeg', requiredClearanceDeg ?? 0, 0, 30);
  const arc = visibleArc({ station: place, minimumElevationDeg: lowestDeg });
  if (arc.kind === 'none') return [];
  const kindAt = (offsetDeg: number): ArcStretch['kind'] => {
    const look = lookAngles(place, place.longitudeDeg + offsetDeg);
    if (look.kind === 'overhead') return 'clear';
    const { azimuthDeg, elevationDeg } = look;
    return viewClearance(profile, { azimuthDeg, elevationDeg, requiredClearanceDeg: required })
      .kind;
  };
  const edges: { readonly atDeg: number; readonly kind: ArcStretch['kind'] }[] = [];
  let fromDeg = -arc.halfWidthDeg;
  let kind = kindAt(fromDeg);
  edges.push({ atDeg: fromDeg, kind });
  const steps = Math.max(1, Math.ceil((2 * arc.halfWidthDeg) / STEP_DEG));
  for (let step = 1; step <= steps; step++) {
    const toDeg = arc.halfWidthDeg * ((2 * step) / steps - 1);
    const next = kindAt(toDeg);
    if (next !== kind) edges.push(changeBetween(fromDeg, toDeg, kindAt));
    kind = next;
    fromDeg = toDeg;
  }
  return edges.flatMap((edge, index) => {
    const endDeg = edges[index + 1]?.atDeg ?? arc.halfWidthDeg;
    return endDeg > edge.atDeg ? [stretch(place.longitudeDeg, edge.kind, edge.atDeg, endDeg)] : [];
  });
}

/** Where a kind changes, by halving; of several changes in the interval, the last. */
function changeBetween(
  lowDeg: number,
  highDeg: number,
  kindAt: (offsetDeg: number) => ArcStretch['kind'],
): { readonly atDeg: number; readonly kind: ArcStretch['kind'] } {
  const kind = kindAt(highDeg);
  let low = lowDeg;
  let high = highDeg;
  while (high - low > 1e-7) {
    const middle = 0.5 * (low + high);
    if (kindAt(middle) === kind) high = middle;
    else low = middle;
  }
  return { atDeg: high, kind };
}

function stretch(
  longitudeDeg: number,
  kind: ArcStretch['kind'],
  fromDeg: number,
  toDeg: number,
): ArcStretch {
  return {
    kind,
    westLongitudeDeg: wrapLongitudeDeg(longitudeDeg + fromDeg),
    eastLongitudeDeg: wrapLongitudeDeg(longitudeDeg + toDeg),
    longitudeSpanDeg: toDeg - fromDeg,
  };
}
