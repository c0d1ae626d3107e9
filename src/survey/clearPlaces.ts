/** Where on the roof, and how high, a reflector sees every slot. */

import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { DomainError, inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { bracketedRoot } from '../numeric/root.js';
import { lookAngles } from '../pointing/look/lookAngles.js';
import { clearanceAmong } from './beamClearance.js';
import { checkedObstacles, checkedPoint, type LocalPointM, type Obstacle } from './obstacle.js';

/** Input of {@link clearPlaces}. */
export interface ClearPlacesInput {
  /** The survey's own place; the look angles are those of this station. */
  readonly station: Station;
  /** What stands around, in metres from the survey's own place. */
  readonly obstacles: readonly Obstacle[];
  /** Slots that must be seen, degrees east, any turn; at least one. */
  readonly orbitalLongitudesDeg: readonly number[];
  /** Diameter of the reflector in metres, 0 to 100. */
  readonly diameterM: number;
  /** Places to try for the centre of the reflector, in metres from the survey's own place; at least one. */
  readonly places: readonly LocalPointM[];
  /** Clearance wanted between the beam's edge and every obstacle in metres, 0 to 100; default 0. */
  readonly requiredClearanceM?: number;
}

const CLEAR_PLACES_INPUT_KEYS = {
  station: true,
  obstacles: true,
  orbitalLongitudesDeg: true,
  diameterM: true,
  places: true,
  requiredClearanceM: true,
} satisfies Keys<ClearPlacesInput>;

/** How a place fares; read `kind` first. */
export type PlaceView =
  | {
      /** `clear`: every slot is seen with the clearance wanted; `blocked`: at least one is not. */
      readonly kind: 'clear' | 'blocked';
      /** Least distance of any slot's beam edge from any obstacle in metres; negative inside one. */
      readonly edgeClearanceM: number;
      /** Which slot has it, from 0. */
      readonly governingSlot: number;
      /** By how many metres the reflector must be raised at this place to see every slot, 0 when clear. */
      readonly raiseM: number;
    }
  | {
      /** `open`: nothing stands in front of the reflector for any slot. */
      readonly kind: 'open';
    };

/** Nothing is raised by more than this; obstacles are lower than that. */
const HIGHEST_RAISE_M = 200000;

/**
 * Views from several places among obstacles: which see every slot, by how much, and how high the others must go.
 *
 * The obstacles are surveyed once, from one place, with distances; each place is then tried by geometry. Slots are so far
 * that their directions are the same all over a roof.
 *
 * @returns One view per place in the given order.
 * @throws {@link DomainError} naming the bad field; `out-of-range` for a slot below the horizon.
 *
 * Source: own derivation, beams as in `beamClearance`. Accuracy: 1 mm of the raise for the given corners.
 * @example
 * ```ts
 * import { clearPlaces } from 'slantpath/survey';
 * const ridge = {
 *   corners: [
 *     { eastM: -6, northM: -8, upM: 7 },
 *     { eastM: 6, northM: -8, upM: 7 },
 *   ],
 * };
 * const views = clearPlaces({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   obstacles: [ridge],
 *   orbitalLongitudesDeg: [7.2, 16.4, 21.8],
 *   diameterM: 0.9,
 *   places: [
 *     { eastM: 0, northM: 0, upM: 0 },
 *     { eastM: 0, northM: 4, upM: 0 },
 *   ],
 * });
 * views.map((view) => view.kind); // => ['blocked', 'clear']
 * const [here] = views;
 * here?.kind === 'blocked' && here.raiseM.toFixed(2); // => '1.64'
 * ```
 */
export function clearPlaces(input: ClearPlacesInput): readonly PlaceView[] {
  const { station, obstacles, orbitalLongitudesDeg, diameterM, places, ...rest } = knownOnly(
    'input',
    input,
    CLEAR_PLACES_INPUT_KEYS,
  );
  const where = checkedStation(station);
  const around = checkedObstacles(obstacles);
  const diameter = inRange('diameterM', diameterM, 0, 100, 'is the diameter in metres?');
  const required = inRange('requiredClearanceM', rest.requiredClearanceM ?? 0, 0, 100);
  const beams = nonEmpty('orbitalLongitudesDeg', orbitalLongitudesDeg).map((slotDeg, index) => {
    const look = lookAngles(where, slotDeg);
    if (look.kind === 'below-horizon') {
      throw new DomainError({
        code: 'out-of-range',
        parameter: `orbitalLongitudesDeg[${index}]`,
        received: slotDeg,
        allowed: 'a slot above the horizon of the station',
      });
    }
    return {
      azimuth: look.kind === 'overhead' ? 0 : look.azimuthDeg,
      elevation: look.elevationDeg,
    };
  });
  return nonEmpty('places', places).map((place, index): PlaceView => {
    const centre = checkedPoint(`places[${index}]`, place);
    const worstAt = (raiseM: number) => {
      let worst: { readonly edgeM: number; readonly slot: number } | undefined;
      beams.forEach((beam, slot) => {
        const raised = { ...centre, upM: centre.upM + raiseM };
        const clearance = clearanceAmong(around, { ...beam, diameter, centre: raised });
        if (clearance.kind === 'open') return;
        const edgeM = clearance.edgeClearanceM;
        if (worst === undefined || edgeM < worst.edgeM) worst = { edgeM, slot };
      });
      return worst as { readonly edgeM: number; readonly slot: number } | undefined;
    };
    const worst = worstAt(0);
    if (worst === undefined) return { kind: 'open' };
    const spare = (raiseM: number) => (worstAt(raiseM)?.edgeM ?? HIGHEST_RAISE_M) - required;
    const clear = worst.edgeM >= required;
    const bracket = { from: 0, to: HIGHEST_RAISE_M, tolerance: 1e-4 };
    return {
      kind: clear ? 'clear' : 'blocked',
      edgeClearanceM: worst.edgeM,
      governingSlot: worst.slot,
      raiseM: clear ? 0 : (bracketedRoot(spare, bracket) ?? HIGHEST_RAISE_M),
    };
  });
}

function nonEmpty<T>(parameter: string, list: readonly T[]): readonly T[] {
  if (Array.isArray(list) && list.length > 0) return list as readonly T[];
  throw new DomainError({
    code: list === undefined || list === null ? 'missing' : 'empty',
    parameter,
    received: list,
    allowed: 'a list of at least one',
  });
}
