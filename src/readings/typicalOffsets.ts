/** Offsets of units as draws from a population: shrunk towards the mean by how little is known of each. */

import { cholesky } from '../numeric/cholesky.js';
import { entryAt, valueAt } from '../numeric/columns.js';
import { minimumBetween } from '../numeric/minimum.js';
import { type CrossedTable, crossedTable, type SiteReading } from './crossedTable.js';

/** Offsets with the spread of the population that they come from. */
export interface TypicalOffsets {
  /** Mean over the populations of sites and units in dB. */
  readonly meanDb: number;
  /** Standard uncertainty of that mean in dB. */
  readonly standardUncertaintyDb: number;
  /** Standard deviation among sites in dB. */
  readonly sitesDb: number;
  /** Standard deviation among units in dB: how far the next unit of this kind may be off. */
  readonly unitsDb: number;
  /** Standard deviation of one reading in dB. */
  readonly standardDeviationDb: number;
  /** Best guess of each unit's offset in dB, nearer to 0 the fewer readings it rests on; order of the first reading. */
  readonly units: readonly { readonly unit: string; readonly offsetDb: number }[];
}

/** Equations for given ratios of variances, sites eliminated: solution, determinant, squares left over. */
function equations(table: CrossedTable, siteRatio: number, unitRatio: number) {
  const size = table.units.length + 1;
  const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  const add = (i: number, j: number, value: number): void => {
    const row = entryAt(matrix, i);
    row[j] = valueAt(row, j) + value;
  };
  const load = (i: number, value: number): void => {
    right[i] = valueAt(right, i) + value;
  };
  add(0, 0, table.total);
  table.unitCounts.forEach((count, unit) => {
    add(0, unit + 1, count);
    add(unit + 1, 0, count);
    add(unit + 1, unit + 1, count + unitRatio);
    load(unit + 1, valueAt(table.unitSums, unit));
    load(0, valueAt(table.unitSums, unit));
  });
  let determinant = 0;
  let left = table.squareSum;
  for (const { counts, count, sum } of table.bySite) {
    const weight = 1 / (count + siteRatio);
    determinant += Math.log(count + siteRatio);
    left -= sum * sum * weight;
    const entries: (readonly [number, number])[] = [
      [0, count],
      ...counts.map(([unit, n]) => [unit + 1, n] as const),
    ];
    for (const [i, ni] of entries) {
      load(i, -ni * sum * weight);
      for (const [j, nj] of entries) add(i, j, -ni * nj * weight);
    }
  }
  const factor = cholesky(matrix);
  const solution = factor.solve(right);
  determinant += factor.logDeterminant;
  for (let i = 0; i < size; i += 1) left -= valueAt(solution, i) * valueAt(right, i);
  return { solution, determinant, left: Math.max(left, 1e-300), factor };
}

/**
 * Offsets of units taken as draws from a population, over many sites: restricted maximum likelihood, best linear unbiased offsets.
 *
 * Answers what least squares cannot: how far the next unit may be off, and a guess for a unit that was read once.
 *
 * @param readings  At least three, by at least two units at at least two sites; gaps are allowed.
 * @throws {@link DomainError} `too-few`, or naming the field of the reading.
 * Source: H. D. Patterson and R. Thompson, Biometrika 58 (1971), 545-554; C. R. Henderson, Biometrics 31 (1975), 423-447. Accuracy: 1e-5 of
 * each deviation; with fewer than about five units their spread is known to a factor of two at best.
 * @example
 * ```ts
 * import { typicalOffsets } from 'slantpath/readings';
 * const table = [
 *   [62.1, 61.3, 62.9],
 *   [58.4, 57.4, 59.3],
 *   [65.0, 64.3, 65.6],
 * ];
 * const result = typicalOffsets(
 *   table.flatMap((row, site) =>
 *     row.map((valueDb, unit) => ({ site: `site ${site}`, unit: `unit ${unit}`, valueDb })),
 *   ),
 * );
 * result.unitsDb.toFixed(2); // => '0.80'
 * ```
 */
export function typicalOffsets(readings: readonly SiteReading[]): TypicalOffsets {
  const table = crossedTable(readings);
  const degrees = table.total - 1;
  const { sites, units } = table;
  const criterion = (logSite: number, logUnit: number): number => {
    const { determinant, left } = equations(table, Math.exp(logSite), Math.exp(logUnit));
    return degrees * Math.log(left) + determinant - sites.length * logSite - units.length * logUnit;
  };
  // One ratio after the other: they hardly depend on each other, so that a few rounds settle both.
  let logSite = 0;
  let logUnit = 0;
  for (let round = 0; round < 40; round += 1) {
    const before = [logSite, logUnit] as const;
    logSite = lowest((x) => criterion(x, logUnit));
    logUnit = lowest((x) => criterion(logSite, x));
    if (Math.abs(logSite - before[0]) + Math.abs(logUnit - before[1]) < 1e-9) break;
  }
  const end = equations(table, Math.exp(logSite), Math.exp(logUnit));
  const variance = end.left / degrees;
  const first = new Array<number>(units.length + 1).fill(0);
  first[0] = 1;
  return {
    meanDb: valueAt(end.solution, 0) + table.centre,
    standardUncertaintyDb: Math.sqrt(variance * valueAt(end.factor.solve(first), 0)),
    sitesDb: Math.sqrt(variance / Math.exp(logSite)),
    unitsDb: Math.sqrt(variance / Math.exp(logUnit)),
    standardDeviationDb: Math.sqrt(variance),
    units: units.map((unit, index) => ({
      unit,
      offsetDb: valueAt(end.solution, index + 1) + 0,
    })),
  };
}

/** Place of the least value over ratios of variances from e^-18 to e^18: a coarse look first, so that no ripple catches it. */
function lowest(f: (x: number) => number): number {
  let best = -18;
  let least = Number.POSITIVE_INFINITY;
  for (let x = -18; x <= 18; x += 2) {
    const value = f(x);
    if (value < least) {
      least = value;
      best = x;
    }
  }
  return minimumBetween(f, { from: best - 2, to: best + 2, tolerance: 1e-10 }).at;
}
