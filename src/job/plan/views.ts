/** Section of the plan: does the whole reflector see each slot over the horizon as sighted. */

import { within } from '../../errors.js';
import { tanDeg } from '../../numeric/angle.js';
import {
  beamClearance,
  type HorizonProfile,
  horizonAt,
  horizonProfile,
  type Obstacle,
  obstacleCorner,
} from '../../survey/index.js';
import type { JobFile, JobHorizon } from '../file/jobFile.js';
import type { DirectionPlan, NorthPlan } from './directions.js';
import type { Ledger } from './ledger.js';
import type { MountPlan } from './mounts.js';

/** View to one slot. */
export interface ViewPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the mount. */
  readonly mount: string;
  /**
   * `clear`: the whole reflector is free, in the worst case of compass and clinometer too. `doubtful`: free or not within that
   * doubt. `distance-needed`: free only if what is sighted stands further than `freeBeyondM`. `blocked`: not free in any
   * case. `not-sighted`: nothing is known in that direction. `below-horizon`: hidden by the Earth.
   */
  readonly kind:
    | 'clear'
    | 'doubtful'
    | 'distance-needed'
    | 'blocked'
    | 'not-sighted'
    | 'below-horizon';
  /** Elevation of the skyline under the slot in degrees; `null` where it is not known. */
  readonly skylineElevationDeg: number | null;
  /** Elevation of the beam less that of the skyline in degrees; `null` where it is not known. */
  readonly clearanceDeg: number | null;
  /** Free distance between the reflector's edge and the nearest obstacle, across the beam, in metres; `null` where nothing reaches up to it. */
  readonly edgeClearanceM: number | null;
  /** The same in the worst case of compass and clinometer. */
  readonly worstEdgeClearanceM: number | null;
  /** The whole reflector is free if what was sighted without a distance stands further off than this in metres; `null` where it does not matter. */
  readonly freeBeyondM: number | null;
  /** Standard uncertainty of the bearings in degrees. */
  readonly azimuthStandardUncertaintyDeg: number;
  /** Standard uncertainty of the elevations in degrees. */
  readonly elevationStandardUncertaintyDeg: number;
}

/** Views to the job's slots. */
export function viewPlans(
  job: JobFile,
  { directions, mounts, north }: ViewNeighbours,
  notes: Ledger,
): readonly ViewPlan[] {
  const { horizon } = job;
  const sighted = horizon && horizon.samples.length > 0 ? horizon : undefined;
  if (!sighted) notes.miss('view', 'horizon.samples');
  const magnetic = sighted?.north === 'magnetic';
  if (magnetic && north === null) notes.miss('view', 'date');
  const usable = sighted && !(magnetic && north === null) ? sighted : undefined;
  const doubt = {
    azimuthDeg: sighted
      ? Math.hypot(
          notes.number(sighted.bearingUncertaintyDeg, 'horizon.bearingUncertaintyDeg', 1, 'deg'),
          magnetic ? (north?.declinationStandardUncertaintyDeg ?? 0) : 0,
        )
      : 0,
    elevationDeg: sighted
      ? notes.number(sighted.elevationUncertaintyDeg, 'horizon.elevationUncertaintyDeg', 0.5, 'deg')
      : 0,
  };
  const nearestM =
    sighted?.samples.some(({ distanceM }) => distanceM === undefined) === true
      ? notes.number(sighted.nearestDistanceM, 'horizon.nearestDistanceM', 5, 'm')
      : 0;
  const declinationDeg = magnetic ? (north?.declinationDeg ?? 0) : 0;
  const skyline = usable ? skylineOf(usable, declinationDeg, nearestM) : undefined;
  return job.mounts.flatMap((mount, mountIndex) => {
    const reflector = mounts[mountIndex]?.reflector;
    return mount.slots.flatMap((name): ViewPlan[] => {
      const direction = directions.find(({ slot }) => slot === name);
      if (!direction) return [];
      const diameterM = reflector?.diameterM ?? 0;
      return [
        {
          slot: name,
          mount: mount.name,
          ...viewOf(direction, skyline, { diameterM, doubt }),
          azimuthStandardUncertaintyDeg: doubt.azimuthDeg,
          elevationStandardUncertaintyDeg: doubt.elevationDeg,
        },
      ];
    });
  });
}

interface ViewNeighbours {
  readonly directions: readonly DirectionPlan[];
  readonly mounts: readonly MountPlan[];
  readonly north: NorthPlan | null;
}

interface Doubt {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
}

/** A sighting with a true azimuth. */
interface Sighted {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
  readonly distanceM: number | undefined;
}

interface Skyline {
  readonly profile: HorizonProfile;
  /** Neighbouring sightings close enough to be joined, each pair an edge; a lonely one alone. */
  readonly edges: readonly (readonly Sighted[])[];
  readonly nearestM: number;
}

/** Widest gap between sightings over which the skyline is drawn, in degrees. */
const WIDEST_GAP_DEG = 45;

function skylineOf(horizon: JobHorizon, declinationDeg: number, nearestM: number): Skyline {
  const sightings = horizon.samples.map(({ azimuthDeg, elevationDeg, distanceM }): Sighted => {
    const turned = (((azimuthDeg + declinationDeg) % 360) + 360) % 360;
    return { azimuthDeg: turned === 360 ? 0 : turned, elevationDeg, distanceM };
  });
  const profile = within('horizon', () =>
    horizonProfile({
      sightings: sightings.map(({ azimuthDeg, elevationDeg }) => ({ azimuthDeg, elevationDeg })),
      widestGapDeg: WIDEST_GAP_DEG,
    }),
  );
  const sorted = [...sightings].sort((a, b) => a.azimuthDeg - b.azimuthDeg);
  const edges = sorted.map((from, index) => {
    const to = sorted[(index + 1) % sorted.length] as Sighted;
    const gap = (((to.azimuthDeg - from.azimuthDeg) % 360) + 360) % 360;
    return sorted.length > 1 && gap <= WIDEST_GAP_DEG ? [from, to] : [from];
  });
  return { profile, edges, nearestM };
}

/** Standard uncertainties by which sightings are moved for the worst case. */
const COVERAGE = 2;

/** Distance in metres that stands for far away, and the tallest thing that is taken to stand there. */
const FAR_M = 20_000;
const TALLEST_M = 8900;

type Judged = Omit<
  ViewPlan,
  'slot' | 'mount' | 'azimuthStandardUncertaintyDeg' | 'elevationStandardUncertaintyDeg'
>;

function viewOf(
  { kind, azimuthDeg, apparentElevationDeg }: DirectionPlan,
  skyline: Skyline | undefined,
  { diameterM, doubt }: { readonly diameterM: number; readonly doubt: Doubt },
): Judged {
  const unknown = {
    skylineElevationDeg: null,
    clearanceDeg: null,
    edgeClearanceM: null,
    worstEdgeClearanceM: null,
    freeBeyondM: null,
  };
  if (kind === 'below-horizon') return { kind, ...unknown };
  if (!skyline) return { kind: 'not-sighted', ...unknown };
  const under = azimuthDeg === null ? undefined : horizonAt(skyline.profile, azimuthDeg);
  if (under?.kind === 'not-sighted') return { kind: 'not-sighted', ...unknown };
  const skylineElevationDeg = under?.elevationDeg ?? null;
  const clearanceAt = (sign: number, turn: number, distanceM: number | undefined) => {
    const beam = beamClearance({
      obstacles: obstaclesOf(skyline, {
        raisedDeg: sign * COVERAGE * doubt.elevationDeg,
        turnedDeg: turn * COVERAGE * doubt.azimuthDeg,
        distanceM,
      }),
      azimuthDeg: azimuthDeg ?? 0,
      elevationDeg: Math.min(90, Math.max(0, apparentElevationDeg)),
      diameterM,
    });
    return beam.kind === 'open' ? Number.POSITIVE_INFINITY : beam.edgeClearanceM;
  };
  /** The least (or best) clearance over both senses of the compass' doubt. */
  const worst = (distanceM: number) =>
    Math.min(...[-1, 0, 1].map((turn) => clearanceAt(1, turn, distanceM)));
  const best = (distanceM: number) =>
    Math.max(...[-1, 0, 1].map((turn) => clearanceAt(-1, turn, distanceM)));
  const finite = (value: number) => (value === Number.POSITIVE_INFINITY ? null : value);
  const near = skyline.nearestM;
  const asked = near > 0;
  const told = {
    skylineElevationDeg,
    clearanceDeg: skylineElevationDeg === null ? null : apparentElevationDeg - skylineElevationDeg,
    edgeClearanceM: finite(clearanceAt(0, 0, asked ? near : undefined)),
    worstEdgeClearanceM: finite(worst(near)),
    freeBeyondM: null,
  };
  if (worst(near) >= 0) return { kind: 'clear', ...told };
  if (asked && worst(FAR_M) >= 0)
    return { kind: 'distance-needed', ...told, freeBeyondM: freeBeyond(worst, near) };
  if (best(asked ? FAR_M : 0) < 0) return { kind: 'blocked', ...told };
  return { kind: 'doubtful', ...told };
}

/** Shortest distance from which on the worst case is free, to a centimetre, by halving. */
function freeBeyond(worst: (distanceM: number) => number, nearestM: number): number {
  let [blocked, free] = [nearestM, FAR_M];
  for (let step = 0; step < 60 && free - blocked > 0.005; step++) {
    const middle = (blocked + free) / 2;
    if (worst(middle) >= 0) free = middle;
    else blocked = middle;
  }
  return Math.ceil(free * 100) / 100;
}

/** Sightings as edges in space, moved by the doubt; those without a distance stand at the one given. */
function obstaclesOf(
  { edges }: Skyline,
  moved: {
    readonly raisedDeg: number;
    readonly turnedDeg: number;
    readonly distanceM: number | undefined;
  },
): readonly Obstacle[] {
  return edges.map((sightings) => ({
    corners: sightings.map(({ azimuthDeg, elevationDeg, distanceM }) => {
      const raised = Math.min(89, Math.max(-89, elevationDeg + moved.raisedDeg));
      const slope = tanDeg(raised);
      // Nothing is taken to be higher than the survey's own limit; it stands nearer then.
      const away = Math.min(
        distanceM ?? Math.max(0.1, moved.distanceM ?? 0.1),
        TALLEST_M / Math.max(1e-9, Math.abs(slope)),
      );
      return obstacleCorner({
        azimuthDeg: azimuthDeg + moved.turnedDeg,
        distanceM: away,
        heightAboveEyeM: away * slope,
      });
    }),
  }));
}
