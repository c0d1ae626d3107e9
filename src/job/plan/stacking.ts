/** Section of the plan: several receivers on one cable, each in a user band of its own. */

import {
  type DistributionPart,
  dbmToDbuv,
  longestRun,
  outletLevels,
} from '../../distribution/index.js';
import { DomainError } from '../../errors.js';
import {
  type UserBandConflict,
  userBandCommand,
  userBandConflicts,
  wideUserBandCommand,
} from '../../tuning/index.js';
import type { JobFile } from '../file/jobFile.js';
import { partNames } from '../file/partNames.js';
import { type Branch, branchesOf } from './branches.js';
import { limitsAt } from './limits.js';
import type { SignalPlan } from './signals.js';
import {
  occupiedMHz,
  servedBy,
  switchedPolarization,
  type TuningPlan,
  tunerRange,
} from './tuning.js';

/** A user band and who has it. */
export interface UserBandPlan {
  /** Number on the label of the unit. */
  readonly userBand: number;
  /** Centre in MHz. */
  readonly centreMHz: number;
  /** Width in MHz. */
  readonly bandwidthMHz: number;
  /** Outlet or receiver that has it; `null` where nobody does. */
  readonly receiver: string | null;
  /** Loss from the unit to there at the centre in dB; `null` without a receiver or a way to it. */
  readonly lossDb: number | null;
  /** Loss at the lower edge of the band less that at the upper one in dB, below 0. */
  readonly slopeDb: number | null;
  /** Level there in dBuV; `null` where neither the unit's level nor that of a carrier is known. */
  readonly levelDbuv: number | null;
  /** Window of the receiver or limits of the outlet in dBuV. */
  readonly minimumDbuv: number | null;
  readonly maximumDbuv: number | null;
  /** Level against that window; `null` where one of them is not known. */
  readonly kind: 'inside' | 'too-low' | 'too-high' | null;
  /** Longest cable on the way in metres, as planned. */
  readonly cableM: number | null;
  /** How long that cable may be, by level and supply, in metres; `null` where that is not known. */
  readonly longestM: number | null;
}

/** What a receiver asks the unit for. */
export interface UserBandRequestPlan {
  readonly slot: string;
  readonly carrier: string;
  /** Number of the user band. */
  readonly userBand: number;
  /** Tuning word. */
  readonly tuningWord: number;
  /** The message in hexadecimal. */
  readonly message: string;
}

/** Channel stacking. */
export interface StackingPlan {
  readonly kind: 'user-bands' | 'fixed-bands';
  readonly bands: readonly UserBandPlan[];
  /** User bands that overlap, were given away twice, or lie outside what receivers take. */
  readonly conflicts: readonly UserBandConflict[];
  /** Receivers that have no user band. */
  readonly withoutBand: readonly string[];
  /** Tuning words, carrier by carrier, for the bands that are given away. */
  readonly requests: readonly UserBandRequestPlan[];
  /** With fixed bands: carriers that need the same place on the cable. */
  readonly collisions: readonly {
    readonly carriers: readonly [string, string];
    readonly overlapMHz: number;
  }[];
}

/** Width of a user band where neither the unit nor a carrier tells it (practice of the trade). */
const USUAL_WIDTH_MHZ = 36;

type Band = Pick<UserBandPlan, 'userBand' | 'centreMHz' | 'bandwidthMHz' | 'receiver'>;

/** User bands of a job, whichever way they are given. */
function userBandsOf(job: JobFile): readonly Band[] {
  const stacking = job.distribution?.stacking;
  if (stacking?.kind !== 'user-bands') return [];
  const first = stacking.generation === 'second' ? 1 : 0;
  const widths = job.slots.flatMap(({ carriers = [] }) =>
    carriers.flatMap((carrier) => occupiedMHz(carrier) ?? []),
  );
  const usualMHz = widths.length > 0 ? Math.min(200, Math.max(...widths)) : USUAL_WIDTH_MHZ;
  const given: NonNullable<typeof stacking.userBands> =
    stacking.userBands ?? (stacking.userBandsMHz ?? []).map((centreMHz) => ({ centreMHz }));
  return given.map(({ centreMHz, bandwidthMHz, userBand, receiver }, index) => ({
    userBand: userBand ?? first + index,
    centreMHz,
    bandwidthMHz: bandwidthMHz ?? usualMHz,
    receiver: receiver ?? null,
  }));
}

/** Centre of the user band by outlet and receiver: an outlet has that of the receiver behind it. */
export function userBandCentres(job: JobFile): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const bands = userBandsOf(job);
  for (const { receiver, centreMHz } of bands)
    if (receiver !== null && !found.has(receiver)) found.set(receiver, centreMHz);
  for (const tree of job.distribution?.trees ?? [])
    for (const { kind, name, part } of partNames(tree, ''))
      if (kind === 'outlet' && name !== undefined && !found.has(name)) {
        const behind = partNames(part, '').find((each) => found.has(each.name ?? ''));
        const centreMHz = behind && found.get(behind.name ?? '');
        if (centreMHz !== undefined) found.set(name, centreMHz);
      }
  return found;
}

/** The stacking of a job; `null` where it has none. */
export function stackingPlan(
  job: JobFile,
  signals: readonly SignalPlan[],
  tuning: readonly TuningPlan[],
): StackingPlan | null {
  const stacking = job.distribution?.stacking;
  if (!stacking) return null;
  const bands = userBandsOf(job);
  const branches = ways(job);
  const used = bands.some(({ receiver }) => receiver !== null)
    ? bands.filter(({ receiver }) => receiver !== null)
    : bands;
  const centres = userBandCentres(job);
  const receivers = (job.distribution?.trees ?? []).flatMap((tree) =>
    partNames(tree, '').flatMap(({ kind, name }) =>
      kind === 'receiver' && name !== undefined ? [name] : [],
    ),
  );
  return {
    kind: stacking.kind,
    bands: bands.map((band) => bandPlan(job, band, branches, signals)),
    conflicts: userBandConflicts({
      bands: used.map(({ userBand, centreMHz, bandwidthMHz }) => ({
        name: String(userBand),
        centreMHz,
        bandwidthMHz,
      })),
      ...tunerRange(job),
      // The steps of the tuning word leave the carrier beside the centre: half a step.
      marginMHz: stacking.generation === 'second' ? 0.5 : 2,
    }),
    withoutBand:
      stacking.kind === 'user-bands' && centres.size > 0
        ? receivers.filter((name) => !centres.has(name))
        : [],
    requests: used.flatMap((band) => requestsOf(job, band, tuning)),
    collisions: stacking.kind === 'fixed-bands' ? collisionsOf(tuning) : [],
  };
}

/** The ways from the units to the outlets, each tree once. */
function ways(job: JobFile): readonly Branch[] {
  const all = job.slots.flatMap((slot) =>
    (slot.carriers ?? []).flatMap((carrier) =>
      branchesOf(job, carrier, servedBy(job, slot, carrier)),
    ),
  );
  if (all.length > 0) return all;
  return (job.distribution?.trees ?? []).map((tree) => ({ tree, pathOf: (path) => path }));
}

/** Parts from the first one to a part of this name. */
function wayTo(tree: DistributionPart, name: string): readonly DistributionPart[] {
  const parts = partNames(tree, 'tree');
  const end = parts.find((each) => each.name === name);
  if (!end) return [];
  return parts
    .filter(({ path }) => end.path === path || end.path.startsWith(`${path}.`))
    .map(({ part }) => part);
}

function bandPlan(
  job: JobFile,
  band: Band,
  branches: readonly Branch[],
  signals: readonly SignalPlan[],
): UserBandPlan {
  const nothing = { lossDb: null, slopeDb: null, levelDbuv: null, kind: null, cableM: null };
  const none = { ...band, ...nothing, minimumDbuv: null, maximumDbuv: null, longestM: null };
  const { receiver, centreMHz, bandwidthMHz } = band;
  if (receiver === null) return none;
  const temperatureC = job.distribution?.temperatureC ?? 20;
  const edges = [centreMHz - bandwidthMHz / 2, centreMHz, centreMHz + bandwidthMHz / 2];
  for (const { tree } of branches) {
    const levels = outletLevels({ source: { levelDbuv: 75 }, tree, temperatureC }, edges).find(
      ({ name }) => name === receiver,
    );
    if (!levels) continue;
    const lossAt = (at: number) => 75 - (levels.points[at]?.levelDbuv ?? 75);
    const way = wayTo(tree, receiver);
    const end = way.at(-1);
    const limits = limitsAt(job, receiver, job.slots[0]?.name ?? '');
    const window =
      end?.kind === 'receiver'
        ? [end.minimumLevelDbuv ?? dbmToDbuv(-65), end.maximumLevelDbuv ?? dbmToDbuv(-25)]
        : [limits.minimumDbuv, limits.maximumDbuv];
    const [minimumDbuv = null, maximumDbuv = null] = window;
    const sourceDbuv = sourceLevel(job, signals);
    const levelDbuv = sourceDbuv === null ? null : sourceDbuv - lossAt(1);
    const cable = way.reduce<Extract<DistributionPart, { kind: 'cable' }> | null>(
      (longest, part) =>
        part.kind === 'cable' && part.lengthM > (longest?.lengthM ?? 0) ? part : longest,
      null,
    );
    return {
      ...band,
      lossDb: lossAt(1),
      slopeDb: lossAt(0) - lossAt(2),
      levelDbuv,
      minimumDbuv,
      maximumDbuv,
      kind:
        levelDbuv === null || (minimumDbuv === null && maximumDbuv === null)
          ? null
          : minimumDbuv !== null && levelDbuv < minimumDbuv
            ? 'too-low'
            : maximumDbuv !== null && levelDbuv > maximumDbuv
              ? 'too-high'
              : 'inside',
      cableM: cable?.lengthM ?? null,
      longestM:
        cable && levelDbuv !== null && minimumDbuv !== null
          ? longestOf(job, cable, { levelDbuv, minimumDbuv, centreMHz, temperatureC })
          : null,
    };
  }
  return none;
}

/** Level of a user band at the unit: as it keeps it, or that of the weakest carrier. */
function sourceLevel(job: JobFile, signals: readonly SignalPlan[]): number | null {
  const kept = job.distribution?.stacking?.outputLevelDbuv;
  if (kept !== undefined) return kept;
  return signals.length === 0 ? null : Math.min(...signals.map(({ levelDbuv }) => levelDbuv));
}

/** How long a cable may be, all else as planned. */
function longestOf(
  job: JobFile,
  { cable, lengthM }: Extract<DistributionPart, { kind: 'cable' }>,
  at: { levelDbuv: number; minimumDbuv: number; centreMHz: number; temperatureC: number },
): number | null {
  const supply = job.units?.find((unit) => unit.supply !== undefined)?.supply;
  const without = outletLevels(
    {
      source: { levelDbuv: 0 },
      tree: { kind: 'cable', cable, lengthM, to: { kind: 'outlet', name: 'end' } },
      temperatureC: at.temperatureC,
    },
    [at.centreMHz],
  )[0]?.lowestDbuv;
  return longestRun({
    cable,
    levelDbuv: Math.min(150, at.levelDbuv - (without ?? 0)),
    lowestLevelDbuv: at.minimumDbuv,
    highestFrequencyMHz: at.centreMHz,
    lowestFrequencyMHz: at.centreMHz,
    temperatureC: at.temperatureC,
    // The lower of the two voltages has to be enough.
    ...(supply === undefined ? {} : { supply: { voltageV: 13, ...supply } }),
  }).lengthM;
}

/** Tuning words of every carrier in a user band. */
function requestsOf(
  job: JobFile,
  { userBand, centreMHz }: Band,
  tuning: readonly TuningPlan[],
): readonly UserBandRequestPlan[] {
  const second = job.distribution?.stacking?.generation === 'second';
  return tuning.flatMap((tuned): UserBandRequestPlan[] => {
    const { slot, carrier, intermediateFrequencyMHz } = tuned;
    const position = job.slots.findIndex(({ name }) => name === slot);
    if (intermediateFrequencyMHz === null || position > 1) return [];
    const wanted = {
      intermediateFrequencyMHz,
      userBand,
      polarization: switchedPolarization(tuned),
      band: tuned.tone === true ? ('high' as const) : ('low' as const),
    };
    try {
      const { tuningWord, message } = second
        ? wideUserBandCommand({ ...wanted, secondPosition: position === 1 })
        : userBandCommand({
            ...wanted,
            userBandMHz: centreMHz,
            position: position === 1 ? 'B' : 'A',
          });
      return [{ slot, carrier, userBand, tuningWord, message }];
    } catch (error) {
      // A carrier or band that no tuning word reaches has none; that it lies outside is a finding of its own.
      if (error instanceof DomainError) return [];
      throw error;
    }
  });
}

/** Carriers that stand side by side on one cable at all times and need the same place. */
function collisionsOf(tuning: readonly TuningPlan[]): StackingPlan['collisions'] {
  return tuning.flatMap((a, index) =>
    tuning.slice(index + 1).flatMap((b) => {
      if (a.intermediateFrequencyMHz === null || b.intermediateFrequencyMHz === null) return [];
      const overlapMHz =
        ((a.occupiedMHz ?? 0) + (b.occupiedMHz ?? 0)) / 2 -
        Math.abs(a.intermediateFrequencyMHz - b.intermediateFrequencyMHz);
      return overlapMHz > 0 ? [{ carriers: [a.carrier, b.carrier] as const, overlapMHz }] : [];
    }),
  );
}
