/** One reflector for several slots. */

import { DomainError, within } from '../../errors.js';
import { valueAt } from '../../numeric/columns.js';
import {
  type SeveralSlots,
  type SeveralSlotsInput,
  type SlotBandLoss,
  severalSlots,
} from '../../pointing/index.js';
import type { JobMount } from '../file/jobFile.js';
import { apparentDeg } from './directions.js';
import {
  type FeedPlan,
  type MountQuestion,
  type OneSlotPlan,
  presetOf,
  type ReflectorPlan,
  type SharingLoss,
  USUAL_FEED_DIAMETER_M,
} from './mountParts.js';
import { hasLinear } from './tuning.js';

/** Several slots with one reflector. */
export interface SharedPlan extends Omit<OneSlotPlan, 'kind'> {
  readonly kind: 'several-slots';
  /** Feeds that would need the same place, by slot. */
  readonly collisions: readonly {
    readonly slots: readonly [string, string];
    /** Distance between their middles in millimetres. */
    readonly distanceMm: number;
    /** By how much they overlap in millimetres. */
    readonly overlapMm: number;
  }[];
}

/** Fall of the illumination where the file names none (practice of the trade). */
const USUAL_EDGE_TAPER_DB = 10;

/** A mount that takes several slots with one reflector. */
type SharedMount = JobMount & { readonly kind: 'fixed' };

/** Boresight, tilt, feed places and losses. */
export function sharedPlan(
  question: MountQuestion,
  mount: SharedMount,
  reflector: ReflectorPlan,
):
  | (SharedPlan & { readonly losses: readonly SharingLoss[] })
  | { readonly kind: 'too-far-apart'; readonly losses: readonly SharingLoss[] } {
  const input = sharedInput(question, mount, reflector);
  try {
    const several = within(question.path, () => severalSlots(input));
    return several.kind === 'below-horizon'
      ? { kind: 'too-far-apart', losses: [] }
      : { ...placedPlan(question, several), losses: sharingLosses(question, several) };
  } catch (error) {
    if (
      error instanceof DomainError &&
      error.code === 'inconsistent' &&
      /slots$/.test(error.parameter)
    )
      return { kind: 'too-far-apart', losses: [] };
    throw error;
  }
}

/** What the search of the boresight is asked: the file's values, the usual ones noted where it has none. */
function sharedInput(
  question: MountQuestion,
  mount: SharedMount,
  reflector: ReflectorPlan,
): SeveralSlotsInput {
  const { slots, station, path, notes } = question;
  const { feeds } = mount;
  const feedDiameterM = notes.number(
    feeds?.feedDiameterM,
    `${path}.feeds.feedDiameterM`,
    USUAL_FEED_DIAMETER_M,
    'm',
  );
  notes.number(
    mount.reflector?.focalLengthM,
    `${path}.reflector.focalLengthM`,
    reflector.focalLengthM,
    'm',
  );
  const edgeTaperDb = notes.number(
    mount.reflector?.edgeTaperDb,
    `${path}.reflector.edgeTaperDb`,
    USUAL_EDGE_TAPER_DB,
    'dB',
  );
  notes.word(feeds?.kind, `${path}.feeds.kind`, 'free');
  return {
    station,
    slots: slots.map((slot) => sharedSlot(question, slot)),
    reflector: {
      diameterM: reflector.diameterM,
      focalLengthM: reflector.focalLengthM,
      offsetAngleDeg: reflector.offsetAngleDeg ?? 0,
      edgeTaperDb,
    },
    feeds:
      feeds?.kind === 'rigid'
        ? {
            kind: 'rigid',
            placesM: slots.map(({ name }) => feeds.placesM[mount.slots.indexOf(name)] ?? 0),
            feedDiameterM,
          }
        : { kind: 'free', feedDiameterM },
  };
}

/** A slot with all frequencies that its feed carries, both ways. */
function sharedSlot(
  { job }: MountQuestion,
  slot: MountQuestion['slots'][number],
): SeveralSlotsInput['slots'][number] {
  const carriers = [
    ...(slot.carriers ?? []),
    ...(job.transmit ?? []).filter((sent) => sent.slot === slot.name),
  ];
  const frequenciesGHz = carriers.map(({ frequencyGHz }) => frequencyGHz);
  return {
    orbitalLongitudeDeg: slot.orbitalLongitudeDeg,
    polarization: hasLinear(job, slot.name, true)
      ? { kind: 'linear', tiltDeg: slot.polarizationTiltDeg ?? 0 }
      : { kind: 'circular' },
    // At most sixteen count in the search; a slot without carriers is placed as for the Ku band.
    frequenciesGHz: frequenciesGHz.length === 0 ? [12] : spread(frequenciesGHz, MOST_FREQUENCIES),
  };
}

type Placed = SeveralSlots & { readonly kind: 'placed' };

/** What the mount and the feeds are set to. */
function placedPlan(question: MountQuestion, several: Placed): SharedPlan {
  const { slots, station } = question;
  const elevationDeg = apparentDeg(several.boresight.elevationDeg, station);
  return {
    kind: 'several-slots',
    boresightAzimuthDeg: several.boresight.azimuthDeg,
    magneticBearingDeg: question.magnetic(several.boresight.azimuthDeg),
    boresightElevationDeg: elevationDeg,
    preset: presetOf(question, elevationDeg),
    tiltDeg: several.tiltDeg,
    feeds: several.slots.map(
      ({ feed, feedTurn }, index): FeedPlan => ({
        slot: slots[index]?.name ?? '',
        acrossMm: feed.rightM * 1000,
        upMm: feed.upM * 1000,
        alongMm: feed.alongM * 1000,
        turnDeg: feedTurn.kind === 'linear' ? feedTurn.turnDeg : null,
        turnAgainstRowDeg: feedTurn.kind === 'linear' ? feedTurn.turnAgainstRowDeg : null,
      }),
    ),
    collisions: several.collisions.map(({ orbitalLongitudesDeg: [a, b], distanceM, overlapM }) => ({
      slots: [nameAt(several.slots, slots, a), nameAt(several.slots, slots, b)],
      distanceMm: distanceM * 1000,
      overlapMm: overlapM * 1000,
    })),
  };
}

/** What sharing the reflector costs each carrier. */
function sharingLosses({ slots }: MountQuestion, several: Placed): readonly SharingLoss[] {
  return several.slots.flatMap(({ bands }, index) =>
    (slots[index]?.carriers ?? []).map(({ name, frequencyGHz }): SharingLoss => {
      const { lossDb, beyondModel } = lossAt(bands, frequencyGHz);
      return { slot: slots[index]?.name ?? '', carrier: name, lossDb, beyondModel };
    }),
  );
}

const MOST_FREQUENCIES = 16;

/** The frequencies themselves, or of too many the lowest, the highest and some between. */
function spread(frequenciesGHz: readonly number[], most: number): readonly number[] {
  const sorted = [...new Set(frequenciesGHz)].sort((a, b) => a - b);
  if (sorted.length <= most) return sorted;
  return Array.from({ length: most }, (_, index) =>
    valueAt(sorted, Math.round((index * (sorted.length - 1)) / (most - 1))),
  );
}

/** Loss at a frequency: that of the nearest one computed, carried over by the square of the frequency. */
function lossAt(
  bands: readonly SlotBandLoss[],
  frequencyGHz: number,
): Pick<SlotBandLoss, 'lossDb' | 'beyondModel'> {
  const nearest = bands.reduce<SlotBandLoss | undefined>(
    (best, band) =>
      best === undefined ||
      Math.abs(band.frequencyGHz - frequencyGHz) < Math.abs(best.frequencyGHz - frequencyGHz)
        ? band
        : best,
    undefined,
  );
  if (!nearest) return { lossDb: 0, beyondModel: false };
  const lossDb = nearest.lossDb * (frequencyGHz / nearest.frequencyGHz) ** 2;
  return { lossDb, beyondModel: nearest.beyondModel };
}

function nameAt(
  placed: readonly { readonly orbitalLongitudeDeg: number }[],
  slots: readonly { readonly name: string }[],
  longitudeDeg: number,
): string {
  const at = placed.findIndex(({ orbitalLongitudeDeg }) => orbitalLongitudeDeg === longitudeDeg);
  return slots[at]?.name ?? String(longitudeDeg);
}
