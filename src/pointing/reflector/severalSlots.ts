/** Several slots with one reflector: boresight, tilt and feed places, and what each slot loses. */

import { DomainError } from '../../errors.js';
import {
  asinDeg,
  atan2Deg,
  DEGREES_PER_RADIAN,
  wrapAzimuthDeg,
  wrapLongitudeDeg,
} from '../../numeric/angle.js';
import {
  azimuthOfDeg,
  elevationOfDeg,
  pictureAxes,
  separationDeg,
  sightLineKm,
  unit,
} from '../look/sightLine.js';
import { type FeedTurn, feedTurn } from './feedTurn.js';
import { scanVariance } from './scanVariance.js';
import {
  type CheckedSlot,
  checkedSeveralSlots,
  type SeveralSlotsInput,
} from './severalSlotsInput.js';
import { leastWorstSetting } from './severalSlotsSearch.js';
import { type SlotTrial, slotsProblem } from './slotTrials.js';

/** Where a feed stands, counted from the focus. */
export interface FeedPlaceM {
  /** Metres to the right as seen from behind the antenna. */
  readonly rightM: number;
  /** Metres upwards, across the line from the focus to the middle of the reflector. */
  readonly upM: number;
  /** Metres from the focus towards the middle of the reflector. */
  readonly alongM: number;
}

/** Loss of a slot at one frequency. */
export interface SlotBandLoss {
  /** Frequency in GHz. */
  readonly frequencyGHz: number;
  /** Loss of the beam pointing beside the slot in dB, 0 or more. */
  readonly errorLossDb: number;
  /** Loss of a feed beside the focus in dB, 0 or more. */
  readonly scanLossDb: number;
  /** Both together in dB, 0 or more. */
  readonly lossDb: number;
  /**
   * Whether the loss is above 3 dB, where the lobe has lost its shape: spillover, the feed's turn to the side and a lobe
   * of coma beside the beam, which are left out here, then count too, and the loss is good to about 1 dB only. Above 15 dB
   * of error loss the slot stands beside the main lobe: the number then tells only how far it misses its beam.
   */
  readonly beyondModel: boolean;
}

/** One slot of the solution. */
export interface SlotReceived {
  /** Longitude of the slot in degrees, [-180, 180). */
  readonly orbitalLongitudeDeg: number;
  /** Its azimuth in degrees, [0, 360). */
  readonly azimuthDeg: number;
  /** Its geometric elevation in degrees. */
  readonly elevationDeg: number;
  /** Angle to the right of the boresight in degrees, as seen from behind. */
  readonly rightDeg: number;
  /** Angle above the boresight in degrees. */
  readonly aboveDeg: number;
  /** Angle between boresight and slot in degrees, 0 or more. */
  readonly offBoresightDeg: number;
  /** Place of its feed, counted along the reflector's own level and upright; it already follows the tilt of the row. */
  readonly feed: FeedPlaceM;
  /** Turn of its feed from the reflector's own vertical and against the row; not the slot's own skew. */
  readonly feedTurn: FeedTurn;
  /** Angle between the feed's beam and the slot in degrees, 0 or more; 0 for free feeds. */
  readonly errorDeg: number;
  /** Loss by frequency, in the order given. */
  readonly bands: readonly SlotBandLoss[];
}

/** Two feeds that would need the same place. */
export interface FeedCollision {
  /** Orbital longitudes of the two slots in degrees, in the order given. */
  readonly orbitalLongitudesDeg: readonly [number, number];
  /** Distance between the feeds' middles in metres. */
  readonly distanceM: number;
  /** By how much they overlap in metres, above 0. */
  readonly overlapM: number;
}

/** One reflector for several slots; read `kind` first. */
export type SeveralSlots =
  | {
      /** `placed`: all slots stand above the horizon and have their place. */
      readonly kind: 'placed';
      /** Direction of the reflector's boresight: the beam of a feed in the focus. */
      readonly boresight: { readonly azimuthDeg: number; readonly elevationDeg: number };
      /**
       * Turn of the bar, or of the row of free feeds, in degrees, (-180, 180], clockwise positive from level as seen
       * from behind. Places of free feeds already contain it: who sets the feeds by their places tilts nothing.
       */
      readonly tiltDeg: number;
      /** Beam angle over feed angle for a small displacement to the side (ratio), below 1. */
      readonly beamDeviationFactorRatio: number;
      /** Distance from the focus to the middle of the reflector in metres. */
      readonly focusToMiddleM: number;
      /** The slots in the order given. */
      readonly slots: readonly SlotReceived[];
      /** Largest loss times weight over slots and frequencies in dB. */
      readonly worstWeightedLossDb: number;
      /** Feeds that collide; empty if none do. */
      readonly collisions: readonly FeedCollision[];
    }
  | {
      /** `below-horizon`: not all slots can be seen. */
      readonly kind: 'below-horizon';
      /** Longitudes of the hidden slots in degrees, [-180, 180). */
      readonly hiddenLongitudesDeg: readonly number[];
    };

/** Slots further apart than this on the sky are no case for one reflector. */
const WIDEST_DEG = 40;

/**
 * One reflector for several slots: the boresight (and for a rigid assembly the bar's turn) that makes the
 * worst weighted loss over slots and frequencies least, and each feed's place and turn.
 *
 * A beam `a` degrees to one side needs its feed to the other side by about
 * (distance focus to middle) tan(a) / (beam deviation factor); the exact place and the scan loss follow from
 * ray lengths over the aperture. A rigid bar adds 12 (error / half-power beamwidth)^2 for each beam beside its
 * slot. The feeds' turns are counted from the reflector's own vertical (see {@link feedTurn}), because they hang on a
 * reflector that does not look at their slots. Spillover and the feeds' own shadow are left out.
 *
 * @throws {@link DomainError} naming the bad field; `inconsistent` for slots more than 40 degrees apart.
 *
 * Source: Lo 1960, Ruze 1965 and 1966 (see `reflectorOptics`), minimax by log-sum-exp.
 * Accuracy: worst loss within 0.001 dB of a brute-force search; scan loss within 3 % below 3 dB of the exact
 * aperture sum; above 3 dB (`beyondModel`) the search goes on with that sum itself and the feed places that make
 * it greatest, up to 6 dB within 0.05 dB of them. A rigid bar with a loss above 3 dB has many settings of like loss: of
 * 140 drawn at random one was 1.1 dB above the best, the others 0.05 dB at most. The Gaussian lobe and the aperture model
 * hold to about 0.2 dB, above 3 dB to about 1 dB. Turns within 0.3 degree of the turn that couples most.
 * @example
 * ```ts
 * import { severalSlots } from 'slantpath/pointing';
 * const both = severalSlots({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   slots: [
 *     { orbitalLongitudeDeg: 16.4, frequenciesGHz: [11.7] },
 *     { orbitalLongitudeDeg: 21.8, frequenciesGHz: [11.7] },
 *   ],
 *   reflector: { diameterM: 0.9, focalLengthM: 0.54, offsetAngleDeg: 24 },
 * });
 * both.kind === 'placed' && both.worstWeightedLossDb < 0.6; // => true
 * ```
 */
export function severalSlots(input: SeveralSlotsInput): SeveralSlots {
  const checked = checkedSeveralSlots(input);
  const lines = checked.slots.map((slot) =>
    unit(sightLineKm(checked.station, slot.orbitalLongitudeDeg)),
  );
  const hidden = checked.slots.filter((_, index) => !((lines[index]?.[2] as number) > 0));
  if (hidden.length > 0)
    return {
      kind: 'below-horizon',
      hiddenLongitudesDeg: hidden.map((slot) => wrapLongitudeDeg(slot.orbitalLongitudeDeg)),
    };
  for (const a of lines)
    for (const b of lines)
      if (separationDeg(a, b) > WIDEST_DEG)
        throw new DomainError({
          code: 'inconsistent',
          parameter: 'slots',
          received: input.slots,
          allowed: `within ${WIDEST_DEG} degrees of each other on the sky`,
        });
  const { problem, setting, trials } = leastWorstSetting(slotsProblem(checked, lines));
  const { right } = pictureAxes(setting.boresight);
  const boresight = {
    azimuthDeg: wrapAzimuthDeg(atan2Deg(-right[1], right[0])),
    elevationDeg: elevationOfDeg(setting.boresight),
  };
  const tiltDeg = checked.placesM ? turnOf(setting.tiltDeg) : barTurnDeg(trials);
  const slots = trials.map((trial, index): SlotReceived => {
    const { orbitalLongitudeDeg, polarization } = checked.slots[index] as CheckedSlot;
    const line = lines[index] as (typeof lines)[number];
    const [rightM, upM, alongM] = trial.place;
    return {
      orbitalLongitudeDeg: wrapLongitudeDeg(orbitalLongitudeDeg),
      azimuthDeg: azimuthOfDeg(line),
      elevationDeg: elevationOfDeg(line),
      rightDeg: asinDeg(trial.rightCosine) + 0,
      aboveDeg: asinDeg(trial.upCosine) + 0,
      offBoresightDeg: separationDeg(setting.boresight, line),
      feed: { rightM: rightM + 0, upM: upM + 0, alongM: alongM + 0 },
      feedTurn: feedTurn({
        station: checked.station,
        orbitalLongitudeDeg,
        polarization,
        boresight,
        rowTiltDeg: tiltDeg,
      }),
      errorDeg: trial.errorDeg,
      bands: trial.bands,
    };
  });
  const small = 1e-4;
  const { focusToMiddleM } = problem.aperture;
  const smallPlace = scanVariance(problem.aperture, small, 0).place;
  return {
    kind: 'placed',
    boresight,
    tiltDeg,
    beamDeviationFactorRatio: (small * focusToMiddleM) / -smallPlace[0],
    focusToMiddleM,
    slots,
    worstWeightedLossDb: Math.max(
      ...slots.flatMap(({ bands }, index) =>
        bands.map(({ lossDb }) => lossDb * (checked.slots[index]?.weightRatio as number)),
      ),
    ),
    collisions: collisionsOf(slots, checked.feedDiameterM),
  };
}

/** An angle brought to (-180, 180]. */
function turnOf(angleDeg: number): number {
  return -wrapLongitudeDeg(-angleDeg) + 0;
}

/** Turn of the straight bar that passes the feeds most closely, (-90, 90]. */
function barTurnDeg(trials: readonly SlotTrial[]): number {
  const n = trials.length;
  const right = trials.reduce((sum, { place }) => sum + place[0], 0) / n;
  const up = trials.reduce((sum, { place }) => sum + place[1], 0) / n;
  let [rr, ru, uu] = [0, 0, 0];
  for (const { place } of trials) {
    rr += (place[0] - right) ** 2;
    ru += (place[0] - right) * (place[1] - up);
    uu += (place[1] - up) ** 2;
  }
  return -0.5 * Math.atan2(2 * ru, rr - uu) * DEGREES_PER_RADIAN + 0;
}

function collisionsOf(slots: readonly SlotReceived[], feedDiameterM: number): FeedCollision[] {
  return slots.flatMap((a, index) =>
    slots.slice(index + 1).flatMap((b): FeedCollision[] => {
      const distanceM = Math.hypot(
        a.feed.rightM - b.feed.rightM,
        a.feed.upM - b.feed.upM,
        a.feed.alongM - b.feed.alongM,
      );
      return distanceM < feedDiameterM
        ? [
            {
              orbitalLongitudesDeg: [a.orbitalLongitudeDeg, b.orbitalLongitudeDeg],
              distanceM,
              overlapM: feedDiameterM - distanceM,
            },
          ]
        : [];
    }),
  );
}
