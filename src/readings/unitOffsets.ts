/** Offsets of units or instruments from common points over many sites, by least squares. */

import { entryAt, valueAt } from '../numeric/columns.js';
import { solveLinear } from '../numeric/linearSystem.js';
import { crossedTable, type SiteReading } from './crossedTable.js';

/** One unit's offset. */
export interface UnitOffset {
  /** Name of the unit. */
  readonly unit: string;
  /** How far it reads above the mean of all units in dB. */
  readonly offsetDb: number;
  /** Standard uncertainty of the offset in dB. */
  readonly standardUncertaintyDb: number;
  /** How many readings it rests on. */
  readonly readings: number;
}

/** Offsets of all units; read `kind` first. */
export type UnitOffsets =
  | {
      readonly kind: 'offsets';
      /** Mean over sites and units in dB. */
      readonly meanDb: number;
      /** Each unit in the order of its first reading; their offsets sum to 0. */
      readonly units: readonly UnitOffset[];
      /** Each site's departure from the mean in dB, in the order of its first reading. */
      readonly sites: readonly { readonly site: string; readonly departureDb: number }[];
      /** Standard deviation of one reading in dB. */
      readonly standardDeviationDb: number;
      /** Degrees of freedom of that deviation. */
      readonly degreesOfFreedom: number;
    }
  /** Some units share no site with the others, by any chain: their offsets cannot be compared. */
  | { readonly kind: 'not-connected' }
  /** As many unknowns as readings: offsets would fit anything, and nothing tells their uncertainty. */
  | { readonly kind: 'too-few-readings' };

/**
 * Offsets of units against each other from readings at common sites: reading = site + unit + chance, by least squares.
 *
 * Not each unit need be read at each site, as long as chains of common sites join them all.
 *
 * @param readings  At least three, by at least two units at at least two sites.
 * @throws {@link DomainError} `too-few`, or naming the field of the reading.
 * Source: two-way layout without interaction (NIST/SEMATECH e-Handbook, 7.4.3.7). Accuracy: rounding; the uncertainty takes chance
 * to be alike for all units.
 * @example
 * ```ts
 * import { unitOffsets } from 'slantpath/readings';
 * const table = [
 *   [62.1, 61.3, 62.9],
 *   [58.4, 57.4, 59.3],
 *   [65.0, 64.3, 65.6],
 * ];
 * const result = unitOffsets(
 *   table.flatMap((row, site) =>
 *     row.map((valueDb, unit) => ({ site: `site ${site}`, unit: `unit ${unit}`, valueDb })),
 *   ),
 * );
 * const offsets = result.kind === 'offsets' ? result.units.map((unit) => unit.offsetDb) : [];
 * offsets.map((offset) => offset.toFixed(2)).join(' '); // => '0.02 -0.81 0.79'
 * ```
 */
export function unitOffsets(readings: readonly SiteReading[]): UnitOffsets {
  const table = crossedTable(readings);
  const units = table.units.length;
  // With the sites eliminated, the equations of the units have the counts less what the site means take.
  const matrix = Array.from({ length: units }, () => new Array<number>(units).fill(0));
  const right = [...table.unitSums];
  table.unitCounts.forEach((count, unit) => {
    entryAt(matrix, unit)[unit] = count;
  });
  for (const { counts, count, sum } of table.bySite)
    for (const [i, ni] of counts) {
      right[i] = valueAt(right, i) - (ni * sum) / count;
      const row = entryAt(matrix, i);
      for (const [j, nj] of counts) row[j] = valueAt(row, j) - (ni * nj) / count;
    }
  // The sum of the equations is empty: a constant may go from the units to the sites. A one in each place fixes their sum at 0.
  const full = matrix.map((row) => row.map((value) => value + 1));
  const offsets = solveLinear(full, right);
  if (offsets === undefined || !joined(table.bySite, units)) return { kind: 'not-connected' };
  const degreesOfFreedom = table.total - table.sites.length - units + 1;
  if (degreesOfFreedom < 1) return { kind: 'too-few-readings' };
  const levels = table.bySite.map(
    ({ counts, count, sum }) =>
      (sum - counts.reduce((total, [unit, n]) => total + n * valueAt(offsets, unit), 0)) / count,
  );
  const explained =
    levels.reduce((total, level, site) => total + level * (table.bySite[site]?.sum ?? 0), 0) +
    offsets.reduce((total, offset, unit) => total + offset * (table.unitSums[unit] ?? 0), 0);
  const deviation = Math.sqrt(Math.max(0, table.squareSum - explained) / degreesOfFreedom);
  const mean = levels.reduce((total, level) => total + level, 0) / levels.length;
  return {
    kind: 'offsets',
    meanDb: mean + table.centre,
    units: table.units.map((unit, index) => {
      const unitVector = offsets.map((_, other) => (other === index ? 1 : 0));
      const variance = (solveLinear(full, unitVector)?.[index] ?? 0) - 1 / units ** 2;
      return {
        unit,
        offsetDb: valueAt(offsets, index) + 0,
        standardUncertaintyDb: deviation * Math.sqrt(Math.max(0, variance)),
        readings: valueAt(table.unitCounts, index),
      };
    }),
    sites: table.sites.map((site, index) => ({
      site,
      departureDb: valueAt(levels, index) - mean,
    })),
    standardDeviationDb: deviation,
    degreesOfFreedom,
  };
}

/** Whether chains of common sites join all units. */
function joined(
  bySite: readonly { readonly counts: readonly (readonly [number, number])[] }[],
  units: number,
): boolean {
  const group = Array.from({ length: units }, (_, unit) => unit);
  const root = (unit: number): number => {
    let at = unit;
    while (group[at] !== at) at = valueAt(group, at);
    return at;
  };
  for (const { counts } of bySite) {
    const first = counts[0]?.[0];
    if (first === undefined) continue;
    for (const [unit] of counts) group[root(unit)] = root(first);
  }
  return group.every((_, unit) => root(unit) === root(0));
}
