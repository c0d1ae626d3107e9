/** A later visit against the first record: what changed, and what it means. */

import { type Difference, differences } from './differences.js';
import type { JobRecord } from './recordJob.js';
import type { ReadingVerdict } from './sections/verdicts.js';

/** One reading at both visits. */
export interface ReadingChange {
  /** Test point, slot, carrier and quantity of the reading. */
  readonly testPoint: string;
  readonly slot: string;
  readonly carrier: string;
  readonly quantity: 'level' | 'carrier-to-noise';
  /** Reading at the first visit, dBuV or dB. */
  readonly beforeDb: number;
  /** Reading at the later visit. */
  readonly afterDb: number;
  /** Later less earlier in dB. */
  readonly changeDb: number;
  /** Standard uncertainty of the change in dB, from both readings. */
  readonly standardUncertaintyDb: number;
  /** Whether the change is more than twice its uncertainty. */
  readonly significant: boolean;
  /** Verdicts at both visits; `null` where no limit applied. */
  readonly verdictBefore: string | null;
  readonly verdictAfter: string | null;
}

/** What changed between two records. */
export interface RecordComparison {
  /** Inputs that differ, readings and peaking samples aside. */
  readonly inputs: readonly Difference[];
  /** Readings taken at both visits. */
  readonly readings: readonly ReadingChange[];
  /** Readings of the first visit that were not taken again, as `test point, slot, carrier, quantity`. */
  readonly notRepeated: readonly string[];
  /** What the changes mean; the sheet has a sentence for each. */
  readonly meaning:
    | 'no-common-readings'
    | 'unchanged'
    | 'all-lower-alike'
    | 'all-higher-alike'
    | 'one-slot-lower'
    | 'one-test-point-lower'
    | 'mixed';
}

const key = (v: ReadingVerdict) => [v.testPoint, v.slot, v.carrier, v.quantity].join(', ');

/**
 * Compares a later record of the same installation with the first one.
 *
 * @param first  The record of the first visit, from {@link recordJob}.
 * @param later  The record of the later visit.
 * @returns Inputs that differ, each repeated reading with its change and whether that exceeds the uncertainty,
 *   and what the pattern means.
 *
 * Source: GUM (JCGM 100:2008) 5.1.2, uncertainty of a difference; the meanings are common practice of the trade.
 * @example
 * ```ts
 * import { compareRecords, parseJob, recordJob } from 'slantpath/job';
 * const job = parseJob({
 *   format: 'slantpath-job', version: 1, title: 'One slot', date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   antenna: { diameterM: 0.9, apertureEfficiencyRatio: 0.65, offsetAngleDeg: 24.6 },
 *   receiver: { noiseFigureDb: 0.7, gainDb: 56 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4, carriers: [{
 *     name: 'Ku', frequencyGHz: 12.5, polarization: 'horizontal', eirpDbw: 51,
 *     symbolRateMBd: 27.5, mode: 'QPSK 3/4', intermediateFrequencyMHz: 1900,
 *   }] }],
 *   horizon: { north: 'true', samples: [] },
 *   rain: { source: 'climate-grid' },
 *   target: { exceededPercent: 0.1, pointingLossDb: 0.3 },
 *   distribution: { kind: 'outlet', name: 'desk' },
 *   peaking: [],
 *   readings: [{
 *     quantity: 'level', testPoint: 'desk', slot: 'middle', carrier: 'Ku', levelDbuv: 46.9, expandedUncertaintyDb: 2,
 *   }],
 *   limits: [{ testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 }],
 * });
 * const [reading] = job.readings;
 * const later = reading?.quantity === 'level' ? [{ ...reading, levelDbuv: 41 }] : [];
 * const comparison = compareRecords(recordJob(job), recordJob({ ...job, readings: later }));
 * comparison.readings[0]?.changeDb.toFixed(1); // => '-5.9'
 * comparison.readings[0]?.significant; // => true
 * ```
 */
export function compareRecords(first: JobRecord, later: JobRecord): RecordComparison {
  const strip = ({ readings: _readings, peaking: _peaking, ...rest }: JobRecord['job']) => rest;
  const uncertainties = (record: JobRecord) =>
    new Map(
      record.verdicts.map((v, index) => [
        key(v),
        { verdict: v, u: (record.job.readings[index]?.expandedUncertaintyDb ?? 0) / 2 },
      ]),
    );
  const before = uncertainties(first);
  const after = uncertainties(later);
  const readings = [...before].flatMap(([name, { verdict, u }]): ReadingChange[] => {
    const again = after.get(name);
    if (!again) return [];
    const changeDb = again.verdict.readingDb - verdict.readingDb;
    const standardUncertaintyDb = Math.hypot(u, again.u);
    return [
      {
        testPoint: verdict.testPoint,
        slot: verdict.slot,
        carrier: verdict.carrier,
        quantity: verdict.quantity,
        beforeDb: verdict.readingDb,
        afterDb: again.verdict.readingDb,
        changeDb,
        standardUncertaintyDb,
        significant: Math.abs(changeDb) > 2 * standardUncertaintyDb,
        verdictBefore: verdict.decision?.verdict ?? null,
        verdictAfter: again.verdict.decision?.verdict ?? null,
      },
    ];
  });
  return {
    inputs: differences(strip(first.job), strip(later.job)),
    readings,
    notRepeated: [...before.keys()].filter((name) => !after.has(name)),
    meaning: meaningOf(readings),
  };
}

function meaningOf(readings: readonly ReadingChange[]): RecordComparison['meaning'] {
  if (readings.length === 0) return 'no-common-readings';
  const changed = readings.filter(({ significant }) => significant);
  if (changed.length === 0) return 'unchanged';
  const lower = changed.filter(({ changeDb }) => changeDb < 0);
  if (changed.length === readings.length) {
    const mean = readings.reduce((sum, { changeDb }) => sum + changeDb, 0) / readings.length;
    const alike = readings.every(
      ({ changeDb, standardUncertaintyDb }) =>
        Math.abs(changeDb - mean) <= 2 * standardUncertaintyDb,
    );
    if (alike && readings.length > 1) return mean < 0 ? 'all-lower-alike' : 'all-higher-alike';
  }
  if (lower.length !== changed.length) return 'mixed';
  const only = (field: 'slot' | 'testPoint') => {
    const names = new Set(lower.map((reading) => reading[field]));
    const [name] = names;
    return (
      names.size === 1 &&
      readings.every((reading) => reading[field] !== name || reading.significant) &&
      readings.some((reading) => reading[field] !== name)
    );
  };
  if (only('testPoint')) return 'one-test-point-lower';
  return only('slot') ? 'one-slot-lower' : 'mixed';
}
