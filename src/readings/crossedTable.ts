/** Readings by site and unit as counts and sums, with the sites taken out of the equations. */

import { DomainError, inRange, objects, text } from '../errors.js';
import { known } from '../keys.js';
import { denseAt, valueAt } from '../numeric/columns.js';

/** One reading of a unit (receiving unit, instrument) at a site. */
export interface SiteReading {
  /** Name of the site, or of the common point that several units read. */
  readonly site: string;
  /** Name of the unit or instrument. */
  readonly unit: string;
  /** What was read in dB (or any one unit). */
  readonly valueDb: number;
}

/** The table in numbers. */
export interface CrossedTable {
  readonly sites: readonly string[];
  readonly units: readonly string[];
  readonly total: number;
  /** Sum of squares about `centre`. */
  readonly squareSum: number;
  /** Taken off each value, so that sums of squares keep their digits. */
  readonly centre: number;
  /** For each site: how often each unit read it (unit index, count), and the sum of its values. */
  readonly bySite: readonly {
    readonly counts: readonly (readonly [unit: number, count: number])[];
    readonly count: number;
    readonly sum: number;
  }[];
  readonly unitCounts: readonly number[];
  readonly unitSums: readonly number[];
}

/** Reads and checks the readings: at least three, two units and two sites among them. */
export function crossedTable(readings: readonly SiteReading[]): CrossedTable {
  if (!Array.isArray(readings) || readings.length < 3)
    throw new DomainError({
      code: Array.isArray(readings) ? 'too-few' : 'malformed',
      parameter: 'readings',
      received: readings,
      allowed: 'an array of at least 3 readings',
    });
  const siteIndex = new Map<string, number>();
  const unitIndex = new Map<string, number>();
  const place = (index: Map<string, number>, name: string): number => {
    const known = index.get(name);
    if (known !== undefined) return known;
    index.set(name, index.size);
    return index.size - 1;
  };
  const cells = objects<SiteReading>('readings', readings).map((reading, row) => {
    const at = known(`readings[${row}]`, reading, { site: true, unit: true, valueDb: true });
    return {
      site: place(siteIndex, text(`readings[${row}].site`, at.site)),
      unit: place(unitIndex, text(`readings[${row}].unit`, at.unit)),
      value: inRange(`readings[${row}].valueDb`, at.valueDb, -1e9, 1e9),
    };
  });
  for (const [parameter, index] of [
    ['site', siteIndex],
    ['unit', unitIndex],
  ] as const)
    if (index.size < 2)
      throw new DomainError({
        code: 'too-few',
        parameter: `readings.${parameter}`,
        received: index.size,
        allowed: `at least 2 different names`,
      });
  const centre = cells.reduce((sum, { value }) => sum + value, 0) / cells.length;
  const sums = new Float64Array(siteIndex.size);
  const counts = Array.from({ length: siteIndex.size }, () => new Map<number, number>());
  const unitCounts = new Array<number>(unitIndex.size).fill(0);
  const unitSums = new Array<number>(unitIndex.size).fill(0);
  let squareSum = 0;
  for (const { site, unit, value } of cells) {
    const about = value - centre;
    squareSum += about * about;
    sums[site] = denseAt(sums, site) + about;
    const here = counts[site] as Map<number, number>;
    here.set(unit, (here.get(unit) ?? 0) + 1);
    unitCounts[unit] = valueAt(unitCounts, unit) + 1;
    unitSums[unit] = valueAt(unitSums, unit) + about;
  }
  return {
    sites: [...siteIndex.keys()],
    units: [...unitIndex.keys()],
    total: cells.length,
    squareSum,
    centre,
    bySite: counts.map((map, site) => ({
      counts: [...map.entries()],
      count: [...map.values()].reduce((sum, count) => sum + count, 0),
      sum: denseAt(sums, site),
    })),
    unitCounts,
    unitSums,
  };
}
