/** What {@link severalSlots} is asked, and its guards. */

import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { DomainError, finite, inRange, oneOf } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { checkedTiltDeg, type SatellitePolarization } from '../look/polarizationSkew.js';
import type { ReflectorShape } from './reflectorOptics.js';

/** A slot that the reflector is to receive. */
export interface SlotToReceive {
  /** Longitude of the slot in degrees, east positive, any turn. */
  readonly orbitalLongitudeDeg: number;
  /** Frequencies at which its loss counts in GHz, 0.5 to 100; at least one. */
  readonly frequenciesGHz: readonly number[];
  /** Weight of its loss in the search (ratio), above 0, at most 1000; 1 when left out. */
  readonly weightRatio?: number;
  /** The satellite's polarization, for the turn of the feed; linear without tilt when left out. */
  readonly polarization?: SatellitePolarization;
}

const SLOT_TO_RECEIVE_KEYS = {
  orbitalLongitudeDeg: true,
  frequenciesGHz: true,
  weightRatio: true,
  polarization: true,
} satisfies Keys<SlotToReceive>;

/** A paraboloid reflector. */
export interface ReflectorInput {
  /** Diameter as seen along the beam in metres, 0.1 to 30; the width of an offset reflector. */
  readonly diameterM: number;
  /** Focal length of the paraboloid in metres, 0.25 to 3 diameters. */
  readonly focalLengthM: number;
  /** Angle between the beam and the perpendicular of the rim's plane in degrees, 0 to 45; 0 (feed on the axis) when left out. */
  readonly offsetAngleDeg?: number;
  /** Fall of the feed's illumination from the middle to the edge in dB, 0 to 30; 10 when left out. */
  readonly edgeTaperDb?: number;
  /** Half-power beamwidth times diameter over wavelength in degrees, 50 to 90; 70 when left out. */
  readonly beamwidthFactorDeg?: number;
}

const REFLECTOR_INPUT_KEYS = {
  diameterM: true,
  focalLengthM: true,
  offsetAngleDeg: true,
  edgeTaperDb: true,
  beamwidthFactorDeg: true,
} satisfies Keys<ReflectorInput>;

/** How the feeds are held. */
export type FeedsInput =
  | {
      /** `free`: each feed is put where its slot needs it. */
      readonly kind: 'free';
      /** Outer diameter of a feed in metres, 0 to 1; 0.06 when left out. */
      readonly feedDiameterM?: number;
    }
  | {
      /** `rigid`: the feeds sit on a straight bar at given places; only bar and reflector turn. */
      readonly kind: 'rigid';
      /**
       * Place of each slot's feed along the bar from the focus in metres, in the order of the slots; positive to
       * the right as seen from behind, the bar level. A feed to the right looks at a slot to the left.
       */
      readonly placesM: readonly number[];
      /** Outer diameter of a feed in metres, 0 to 1; 0.06 when left out. */
      readonly feedDiameterM?: number;
    };

const FEEDS_INPUT_KEYS = {
  kind: true,
  feedDiameterM: true,
  placesM: true,
} satisfies Keys<FeedsInput>;

/** What {@link severalSlots} is asked. */
export interface SeveralSlotsInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** The slots, 1 to 16. */
  readonly slots: readonly SlotToReceive[];
  /** The reflector. */
  readonly reflector: ReflectorInput;
  /** The feeds; free when left out. */
  readonly feeds?: FeedsInput;
}

const SEVERAL_SLOTS_INPUT_KEYS = {
  station: true,
  slots: true,
  reflector: true,
  feeds: true,
} satisfies Keys<SeveralSlotsInput>;

/** A checked slot. */
export interface CheckedSlot extends Required<SlotToReceive> {}

/** The checked input of the search. */
export interface CheckedSeveralSlots {
  readonly station: Station;
  readonly slots: readonly CheckedSlot[];
  readonly shape: ReflectorShape;
  readonly beamwidthFactorDeg: number;
  readonly placesM: readonly number[] | undefined;
  readonly feedDiameterM: number;
}

function list<T>(parameter: string, value: readonly T[], most: number): readonly T[] {
  // A copy without holes: what is missing is refused by its entry's guard.
  if (Array.isArray(value) && value.length > 0 && value.length <= most) return Array.from(value);
  throw new DomainError({
    code:
      value === undefined || value === null
        ? 'missing'
        : !Array.isArray(value)
          ? 'malformed'
          : value.length === 0
            ? 'empty'
            : 'out-of-range',
    parameter,
    received: value,
    allowed: `a list of 1 to ${most}`,
  });
}

/** Checks everything once. */
export function checkedSeveralSlots(input: SeveralSlotsInput): CheckedSeveralSlots {
  const given = knownOnly('input', input, SEVERAL_SLOTS_INPUT_KEYS);
  const station = checkedStation(given.station);
  const slots = list('slots', given.slots, 16).map((slot, index) => {
    const name = `slots[${index}]`;
    const { orbitalLongitudeDeg, frequenciesGHz, weightRatio, polarization } = known(
      name,
      slot,
      SLOT_TO_RECEIVE_KEYS,
    );
    const tiltDeg = checkedTiltDeg(polarization, `${name}.polarization`);
    return {
      orbitalLongitudeDeg: finite(`${name}.orbitalLongitudeDeg`, orbitalLongitudeDeg),
      frequenciesGHz: list(`${name}.frequenciesGHz`, frequenciesGHz, 16).map((frequency, at) =>
        inRange(`${name}.frequenciesGHz`, frequency, 0.5, 100, 'is the frequency in GHz?', at),
      ),
      weightRatio: inRange(`${name}.weightRatio`, weightRatio ?? 1, 1e-3, 1000),
      polarization:
        tiltDeg === undefined
          ? ({ kind: 'circular' } as const)
          : ({ kind: 'linear', tiltDeg } as const),
    };
  });
  const reflector = known('reflector', given.reflector, REFLECTOR_INPUT_KEYS);
  const diameterM = inRange(
    'reflector.diameterM',
    reflector.diameterM,
    0.1,
    30,
    'is the diameter in metres?',
  );
  const shape = {
    diameterM,
    focalLengthM: inRange(
      'reflector.focalLengthM',
      reflector.focalLengthM,
      0.25 * diameterM,
      3 * diameterM,
      'is the focal length in metres?',
    ),
    offsetAngleDeg: inRange('reflector.offsetAngleDeg', reflector.offsetAngleDeg ?? 0, 0, 45),
    edgeTaperDb: inRange('reflector.edgeTaperDb', reflector.edgeTaperDb ?? 10, 0, 30),
  };
  const feeds: FeedsInput = known('feeds', given.feeds ?? { kind: 'free' }, FEEDS_INPUT_KEYS);
  oneOf('feeds.kind', feeds.kind, ['free', 'rigid']);
  return {
    station,
    slots,
    shape,
    beamwidthFactorDeg: inRange(
      'reflector.beamwidthFactorDeg',
      reflector.beamwidthFactorDeg ?? 70,
      50,
      90,
    ),
    placesM: feeds.kind === 'rigid' ? checkedPlaces(feeds.placesM, slots.length, shape) : undefined,
    feedDiameterM: inRange('feeds.feedDiameterM', feeds.feedDiameterM ?? 0.06, 0, 1),
  };
}

function checkedPlaces(
  placesM: readonly number[],
  count: number,
  { focalLengthM }: ReflectorShape,
): readonly number[] {
  const places = list('feeds.placesM', placesM, 16);
  if (places.length !== count)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'feeds.placesM',
      received: places,
      allowed: `one place for each of the ${count} slots`,
    });
  const far = 0.5 * focalLengthM;
  return places.map((place, index) =>
    inRange('feeds.placesM', place, -far, far, 'are the places in metres?', index),
  );
}
