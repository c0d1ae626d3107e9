/** A footprint learnt from readings: by how much the published EIRP is off over a region, honest where nobody has read. */

import { DomainError, finite, inRange, positive } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { cosDeg, sinDeg } from '../numeric/angle.js';
import { type Cholesky, cholesky } from '../numeric/cholesky.js';
import { denseAt, valueAt } from '../numeric/columns.js';
import { minimumBetween } from '../numeric/minimum.js';

/** One reading of a carrier against its plan. */
export interface ExcessReading {
  /** Latitude in degrees, north positive. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive. */
  readonly longitudeDeg: number;
  /** Read less expected in dB: positive where more arrives than planned. */
  readonly excessDb: number;
  /** Standard uncertainty of the reading in dB, above 0. */
  readonly standardUncertaintyDb: number;
}

const EXCESS_READING_KEYS = {
  latitudeDeg: true,
  longitudeDeg: true,
  excessDb: true,
  standardUncertaintyDb: true,
} satisfies Keys<ExcessReading>;

/** What the readings say at a place. */
export interface EirpCorrection {
  /** To be added to the planned EIRP in dB. */
  readonly correctionDb: number;
  /** Standard uncertainty of the correction in dB: far from any reading, as large as the correction scatters over the region. */
  readonly standardUncertaintyDb: number;
  /** Distance to the nearest cell with readings in km. */
  readonly nearestKm: number;
  /** True where the place lies more than two correlation lengths from any reading: the value is then the region's mean only. */
  readonly beyondReadings: boolean;
}

/** A correction learnt. */
export interface LearntCorrection {
  /** Readings that it rests on. */
  readonly readings: number;
  /** Cells that the readings were gathered in. */
  readonly cells: number;
  /** Mean over the region in dB. */
  readonly meanDb: number;
  /** Standard deviation over the region in dB, noise of the readings taken off. */
  readonly standardDeviationDb: number;
  /** Distance over which the correction stays alike in km. */
  readonly correlationKm: number;
  /** Correction at a place. */
  readonly at: (place: {
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
  }) => EirpCorrection;
}

type Vector = readonly [number, number, number];

const EARTH_RADIUS_KM = 6371;

const direction = (latitudeDeg: number, longitudeDeg: number): Vector => [
  cosDeg(latitudeDeg) * cosDeg(longitudeDeg),
  cosDeg(latitudeDeg) * sinDeg(longitudeDeg),
  sinDeg(latitudeDeg),
];

/** Distance on the sphere in km, exact for near and far points. */
const distanceKm = (a: Vector, b: Vector): number => {
  const chord = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, chord / 2));
};

interface Cell {
  readonly at: Vector;
  readonly mean: number;
  readonly variance: number;
}

/** At most this many cells, so that the equations stay small; a finer picture than that no set of readings of one region supports. */
const MOST_CELLS = 400;

/** Cells enough to find how strong and how wide the correction is; more would only take longer. */
const CELLS_TO_LEARN = 120;

/** Readings gathered in cells: a hundred thousand readings become a few hundred means with their own uncertainty. */
function gathered(readings: readonly ExcessReading[]): Cell[] {
  for (let spanDeg = 0.05; ; spanDeg *= 1.5) {
    const sums = new Map<string, [weight: number, value: number, lat: number, lon: number]>();
    for (const { latitudeDeg, longitudeDeg, excessDb, standardUncertaintyDb } of readings) {
      const key = `${Math.floor(latitudeDeg / spanDeg)} ${Math.floor(longitudeDeg / spanDeg)}`;
      const weight = 1 / standardUncertaintyDb ** 2;
      const sum = sums.get(key) ?? [0, 0, 0, 0];
      sums.set(key, [
        sum[0] + weight,
        sum[1] + weight * excessDb,
        sum[2] + weight * latitudeDeg,
        sum[3] + weight * longitudeDeg,
      ]);
      // Too many cells already: the rest of the readings would change nothing.
      if (sums.size > MOST_CELLS && spanDeg <= 90) break;
    }
    if (sums.size <= MOST_CELLS || spanDeg > 90)
      return [...sums.values()].map(([weight, value, lat, lon]) => ({
        at: direction(lat / weight, lon / weight),
        mean: value / weight,
        variance: 1 / weight,
      }));
  }
}

/** Equations of a field that is alike over `lengthKm` and scatters by `scatter` (variance). */
function field(
  cells: readonly Cell[],
  distances: readonly Float64Array[],
  scatter: number,
  lengthKm: number,
) {
  const matrix = cells.map((cell, i) =>
    cells.map(
      (_, j) =>
        scatter * Math.exp(-denseAt(distances[i] as Float64Array, j) / lengthKm) +
        (i === j ? cell.variance : 0),
    ),
  );
  const factor = cholesky(matrix);
  const ones = factor.solve(cells.map(() => 1));
  const weight = ones.reduce((sum, value) => sum + value, 0);
  const mean = cells.reduce((sum, cell, i) => sum + cell.mean * valueAt(ones, i), 0) / weight;
  const solved = factor.solve(cells.map((cell) => cell.mean - mean));
  const misfit = cells.reduce((sum, cell, i) => sum + (cell.mean - mean) * valueAt(solved, i), 0);
  return {
    factor,
    ones,
    weight,
    mean,
    solved,
    criterion: factor.logDeterminant + Math.log(weight) + misfit,
  };
}

/**
 * Correction of a published footprint from readings at many sites, with its uncertainty everywhere.
 *
 * The correction is taken as a smooth field about a mean (ordinary kriging, exponential correlation); how much it scatters and over what
 * distance it stays alike are found from the readings by restricted likelihood. Where nobody has read, the uncertainty says so.
 *
 * Take offsets of the receiving units off first (`unitOffsets` of `slantpath/readings`): a region served by one kind of unit otherwise learns
 * the unit.
 *
 * @param readings  3 to 1,000,000 readings.
 * @throws {@link DomainError} `too-few`, or naming the field of the reading.
 * Source: N. A. C. Cressie, Statistics for Spatial Data (1993), section 3.2; H. D. Patterson and R. Thompson (1971) for the likelihood. Accuracy: as
 * stated with each value, for a field without edges; at the edge of a shaped beam the correction changes faster than readings show.
 * @example
 * ```ts
 * import { footprintCorrection } from 'slantpath/experience';
 * const learnt = footprintCorrection(
 *   [46.1, 46.4, 46.9, 47.3, 47.6].map((latitudeDeg, i) => ({
 *     latitudeDeg,
 *     longitudeDeg: 9 + i / 2,
 *     excessDb: [0.9, 1.1, 1.0, 1.2, 0.8][i] ?? 0,
 *     standardUncertaintyDb: 0.4,
 *   })),
 * );
 * const there = learnt.at({ latitudeDeg: 46.7, longitudeDeg: 10 });
 * there.correctionDb.toFixed(1); // => '1.0'
 * ```
 */
export function footprintCorrection(readings: readonly ExcessReading[]): LearntCorrection {
  const given = checked(readings);
  const cells = gathered(given);
  const distancesOf = (some: readonly Cell[]) =>
    some.map((a) => Float64Array.from(some, (b) => distanceKm(a.at, b.at)));
  const distances = distancesOf(cells);
  const every = Math.ceil(cells.length / CELLS_TO_LEARN);
  const learning = cells.filter((_, index) => index % every === 0);
  const apart = distancesOf(learning);
  const widest = Math.max(1, ...distances.map((row) => row.reduce((a, b) => Math.max(a, b), 0)));
  const spread = Math.max(
    1e-4,
    cells.reduce((sum, { mean }) => sum + mean * mean, 0) / cells.length -
      (cells.reduce((sum, { mean }) => sum + mean, 0) / cells.length) ** 2,
  );
  // Scatter inside, distance outside: both on a logarithmic scale between what the readings can tell apart.
  let best = { logLength: 0, logScatter: 0, criterion: Number.POSITIVE_INFINITY };
  for (let step = 0; step <= 6; step += 1) {
    const logLength = Math.log(widest / 64) + (step / 6) * Math.log(64);
    const found = minimumBetween(
      (logScatter) => field(learning, apart, Math.exp(logScatter), Math.exp(logLength)).criterion,
      { from: Math.log(spread / 1000), to: Math.log(spread * 10), tolerance: 0.02 },
    );
    if (found.value < best.criterion)
      best = { logLength, logScatter: found.at, criterion: found.value };
  }
  const scatter = Math.exp(best.logScatter);
  const correlationKm = Math.exp(best.logLength);
  const { factor, ones, weight, mean, solved } = field(cells, distances, scatter, correlationKm);
  return {
    readings: given.length,
    cells: cells.length,
    meanDb: mean,
    standardDeviationDb: Math.sqrt(scatter),
    correlationKm,
    at: (place) => {
      const here = direction(
        inRange(
          'latitudeDeg',
          known('place', place, { latitudeDeg: true, longitudeDeg: true }).latitudeDeg,
          -90,
          90,
        ),
        finite('longitudeDeg', place.longitudeDeg),
      );
      return predicted({ cells, here, scatter, correlationKm, factor, ones, weight, mean, solved });
    },
  };
}

/** Kriging at one place. */
function predicted(learnt: {
  readonly cells: readonly Cell[];
  readonly here: Vector;
  readonly scatter: number;
  readonly correlationKm: number;
  readonly factor: Cholesky;
  readonly ones: readonly number[];
  readonly weight: number;
  readonly mean: number;
  readonly solved: readonly number[];
}): EirpCorrection {
  const { cells, here, scatter, correlationKm, factor, ones, weight, mean, solved } = learnt;
  const distances = cells.map((cell) => distanceKm(cell.at, here));
  const alike = distances.map((km) => scatter * Math.exp(-km / correlationKm));
  const explained = factor.solve(alike);
  let correctionDb = mean;
  let variance = scatter;
  let taken = 0;
  alike.forEach((value, i) => {
    correctionDb += value * valueAt(solved, i);
    variance -= value * valueAt(explained, i);
    taken += value * valueAt(ones, i);
  });
  // What is not known of the mean counts as far as the readings near by do not replace it.
  variance += (1 - taken) ** 2 / weight;
  const nearestKm = Math.min(...distances);
  return {
    correctionDb,
    standardUncertaintyDb: Math.sqrt(Math.max(variance, 1e-12)),
    nearestKm,
    beyondReadings: nearestKm > 2 * correlationKm,
  };
}

function checked(readings: readonly ExcessReading[]): readonly ExcessReading[] {
  if (!Array.isArray(readings) || readings.length < 3 || readings.length > 1_000_000)
    throw new DomainError({
      code: Array.isArray(readings) && readings.length < 3 ? 'too-few' : 'malformed',
      parameter: 'readings',
      received: readings,
      allowed: 'an array of 3 to 1000000 readings',
    });
  readings.forEach((reading, index) => {
    const path = `readings[${index}]`;
    const at = known(path, reading, EXCESS_READING_KEYS);
    inRange(`${path}.latitudeDeg`, at.latitudeDeg, -90, 90);
    inRange(`${path}.longitudeDeg`, at.longitudeDeg, -540, 540);
    inRange(`${path}.excessDb`, at.excessDb, -200, 200);
    positive(`${path}.standardUncertaintyDb`, at.standardUncertaintyDb);
  });
  return readings;
}
