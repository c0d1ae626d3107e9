/** The parts of the geostationary arc that stand clear of a measured horizon. */

import { checkedStation } from '../../earth/internal.js';
import type { Station } from '../../earth/station.js';
import { DomainError, finite, inRange, objects } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { wrapAzimuthDeg, wrapLongitudeDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { bracketedRoot } from '../../numeric/root.js';
import { azimuthOfDeg, elevationOfDeg, sightLineKm } from '../look/sightLine.js';
import { crossingDeg } from './slotAtAzimuth.js';
import { arcHalfWidthDeg } from './visibleArc.js';

/** Elevation of the skyline at an azimuth. */
export interface HorizonSample {
  /** Azimuth in degrees, clockwise from true north, [0, 360). */
  readonly azimuthDeg: number;
  /** Elevation of the skyline in degrees, -89 to 89. */
  readonly elevationDeg: number;
}

const HORIZON_SAMPLE_KEYS = { azimuthDeg: true, elevationDeg: true } satisfies Keys<HorizonSample>;

/**
 * A horizon: its elevation in degrees as a function of the azimuth in degrees, or samples in the order of azimuth, between
 * which it runs straight (in angle over azimuth, round through north).
 */
export type Horizon = ((azimuthDeg: number) => number) | readonly HorizonSample[];

/** What {@link arcOverHorizon} is asked. */
export interface ArcOverHorizonInput {
  /** Where the antenna stands. */
  readonly station: Station;
  /** The horizon. */
  readonly horizon: Horizon;
  /** By how much the arc must stand above the horizon in degrees, -10 to 45; 0 when left out. */
  readonly clearanceDeg?: number;
  /** Lowest geometric elevation that counts in degrees, -5 to 90; 0 when left out. */
  readonly minimumElevationDeg?: number;
}

const ARC_OVER_HORIZON_INPUT_KEYS = {
  station: true,
  horizon: true,
  clearanceDeg: true,
  minimumElevationDeg: true,
} satisfies Keys<ArcOverHorizonInput>;

/** A clear part of the arc. */
export interface ClearArc {
  /** Its western end as an orbital longitude in degrees, [-180, 180). */
  readonly westLongitudeDeg: number;
  /** Its eastern end in degrees, [-180, 180). */
  readonly eastLongitudeDeg: number;
  /** Its width in degrees of orbital longitude, above 0. */
  readonly longitudeSpanDeg: number;
}

/** The clear parts of the arc. */
export interface ArcOverHorizon {
  /** `clear`: all of the arc above the lowest elevation. `parts`: some of it. `blocked`: nothing of it. `none`: there is no such arc. */
  readonly kind: 'clear' | 'parts' | 'blocked' | 'none';
  /** The clear parts from west to east. */
  readonly parts: readonly ClearArc[];
  /** Clear width over the width of the arc above the lowest elevation (ratio), 0 to 1. */
  readonly clearRatio: number;
}

/** Step of the walk along the arc in degrees; narrower gaps between sampled edges may be passed over. */
const STEP_DEG = 0.25;

/**
 * The parts of the geostationary arc that stand clear of a horizon.
 *
 * The arc is walked from west to east in steps of 0.25 degree and at every sample's own azimuth; where the clearance
 * changes its sign the edge is found as a bracketed root.
 *
 * @throws {@link DomainError} naming the bad field; `malformed` for samples out of order.
 *
 * Source: own geometry; WGS 84 ellipsoid, no refraction.
 * Accuracy: 1e-6 degree at each edge found; a function with gaps or posts narrower than 0.25 degree of longitude may hide them.
 * @example
 * ```ts
 * import { arcOverHorizon } from 'slantpath/pointing';
 * const found = arcOverHorizon({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   horizon: [
 *     { azimuthDeg: 100, elevationDeg: 25 },
 *     { azimuthDeg: 150, elevationDeg: 25 },
 *     { azimuthDeg: 160, elevationDeg: 5 },
 *     { azimuthDeg: 260, elevationDeg: 5 },
 *   ],
 * });
 * [found.kind, found.parts.length]; // => ['parts', 1]
 * ```
 */
export function arcOverHorizon(input: ArcOverHorizonInput): ArcOverHorizon {
  const given = knownOnly('input', input, ARC_OVER_HORIZON_INPUT_KEYS);
  const station = checkedStation(given.station);
  const lowestDeg = inRange('minimumElevationDeg', given.minimumElevationDeg ?? 0, -5, 90);
  const marginDeg = inRange('clearanceDeg', given.clearanceDeg ?? 0, -10, 45);
  const { at, edges } = skyline(given.horizon);
  const half = arcHalfWidthDeg(station, lowestDeg);
  if (half === undefined || half === 0) return { kind: 'none', parts: [], clearRatio: 0 };
  const local = { ...station, longitudeDeg: 0 };
  const clearance = (difference: number): number => {
    const line = sightLineKm(local, difference);
    return elevationOfDeg(line) - at(azimuthOfDeg(line)) - marginDeg;
  };
  const steps = Math.ceil((2 * half) / STEP_DEG);
  const nodes = Array.from({ length: steps + 1 }, (_, i) => -half + (2 * half * i) / steps);
  for (const azimuthDeg of edges) {
    const crossing = crossingDeg(station, azimuthDeg);
    // Just before and just behind the edge, in case it is upright.
    if (crossing !== undefined && Math.abs(crossing) < half)
      nodes.push(crossing - 1e-7, crossing + 1e-7);
  }
  nodes.sort((a, b) => a - b);
  const cuts = cutsOf(clearance, nodes);
  const parts = cuts.map(
    ([west, east]): ClearArc => ({
      westLongitudeDeg: wrapLongitudeDeg((station.longitudeDeg % 360) + west),
      eastLongitudeDeg: wrapLongitudeDeg((station.longitudeDeg % 360) + east),
      longitudeSpanDeg: east - west,
    }),
  );
  const clearDeg = parts.reduce((sum, part) => sum + part.longitudeSpanDeg, 0);
  const whole = parts.length === 1 && clearDeg >= 2 * half - 1e-9;
  return {
    kind: parts.length === 0 ? 'blocked' : whole ? 'clear' : 'parts',
    parts,
    clearRatio: Math.min(1, clearDeg / (2 * half)),
  };
}

/** Intervals between nodes in which a function is not negative, their ends refined. */
function cutsOf(
  f: (x: number) => number,
  nodes: readonly number[],
): readonly (readonly [number, number])[] {
  const cuts: [number, number][] = [];
  let from: number | undefined;
  let before = valueAt(nodes, 0);
  for (const node of nodes) {
    const clear = f(node) >= 0;
    if (clear && from === undefined) from = node === before ? node : edge(f, before, node);
    if (!clear && from !== undefined) {
      const to = edge(f, before, node);
      if (to > from) cuts.push([from, to]);
      from = undefined;
    }
    before = node;
  }
  if (from !== undefined && before > from) cuts.push([from, before]);
  return cuts;
}

function edge(f: (x: number) => number, from: number, to: number): number {
  return bracketedRoot(f, { from, to, tolerance: 1e-9 }) ?? to;
}

/** The horizon as a function, and the azimuths at which it has corners. */
function skyline(horizon: Horizon): {
  readonly at: (azimuthDeg: number) => number;
  readonly edges: readonly number[];
} {
  if (typeof horizon === 'function')
    return {
      at: (azimuthDeg) => inRange('horizon', horizon(azimuthDeg), -90, 90),
      edges: [],
    };
  if (!Array.isArray(horizon) || horizon.length === 0)
    throw new DomainError({
      code: horizon === undefined ? 'missing' : Array.isArray(horizon) ? 'empty' : 'malformed',
      parameter: 'horizon',
      received: horizon,
      allowed: 'a function or a list of at least one sample',
    });
  const samples = objects<HorizonSample>('horizon', horizon).map((sample, index) => {
    const name = `horizon[${index}]`;
    const { azimuthDeg, elevationDeg } = known(name, sample, HORIZON_SAMPLE_KEYS);
    finite(`${name}.azimuthDeg`, azimuthDeg);
    return {
      azimuthDeg: inRange(`${name}.azimuthDeg`, azimuthDeg, 0, 360),
      elevationDeg: inRange(`${name}.elevationDeg`, elevationDeg, -89, 89),
    };
  });
  samples.forEach((sample, index) => {
    if (index > 0 && sample.azimuthDeg < (samples[index - 1] as HorizonSample).azimuthDeg)
      throw new DomainError({
        code: 'malformed',
        parameter: `horizon[${index}].azimuthDeg`,
        received: sample.azimuthDeg,
        allowed: 'not less than the one before',
        slip: 'are the samples in the order of azimuth?',
      });
  });
  return {
    at: (azimuthDeg) => between(samples, azimuthDeg),
    edges: samples.map((sample) => sample.azimuthDeg),
  };
}

function between(samples: readonly HorizonSample[], azimuthDeg: number): number {
  const after = samples.findIndex((sample) => sample.azimuthDeg > azimuthDeg);
  const to = samples[after === -1 ? 0 : after] as HorizonSample;
  const from = samples[(after <= 0 ? samples.length : after) - 1] as HorizonSample;
  const span = wrapAzimuthDeg(to.azimuthDeg - from.azimuthDeg);
  if (span === 0) return Math.max(from.elevationDeg, to.elevationDeg);
  const share = wrapAzimuthDeg(azimuthDeg - from.azimuthDeg) / span;
  return from.elevationDeg + Math.min(1, share) * (to.elevationDeg - from.elevationDeg);
}
