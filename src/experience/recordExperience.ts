/** From the records of many jobs to what they teach: EIRP, offsets of units and instruments, drift of sites. */

import { DomainError } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { type UnitOffsets, unitOffsets } from '../readings/index.js';
import { type ExperienceRecord, recordForExperience } from './experienceRecord.js';
import { footprintCorrection, type LearntCorrection } from './footprintCorrection.js';
import { type SiteDrift, siteDrift } from './siteDrift.js';

/** What one carrier's readings say of its footprint. */
export interface CarrierExperience {
  readonly slot: string;
  readonly carrier: string;
  /** Stations at which it was read in dry weather. */
  readonly stations: number;
  /** What to add to the planned EIRP, place by place. */
  readonly correction: LearntCorrection;
}

/** What many records teach. */
export interface RecordExperience {
  /** Records that were read. */
  readonly records: number;
  /** Carriers that at least three stations read, the most often read first. */
  readonly carriers: readonly CarrierExperience[];
  /**
   * How far receiving units (`units`) and instruments (`sites`) stand off in level, beyond what the carrier-to-noise ratio explains: gain
   * and calibration, with EIRP and reflector dropped out.
   */
  readonly offsets: UnitOffsets;
  /** Sites with readings of three visits or more, by name, the fastest fall first. */
  readonly drifts: readonly { readonly station: string; readonly drift: SiteDrift }[];
  /** Verdicts that were left out: read in rain or snow, or only an end known. */
  readonly leftOut: { readonly wet: number; readonly bounded: number };
}

const EXPERIENCE_OPTIONS_KEYS = { allowedLossDb: true, mostCarriers: true } satisfies Keys<
  NonNullable<Parameters<typeof recordExperience>[1]>
>;

interface Heard {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly excessDb: number;
  readonly standardUncertaintyDb: number;
}

interface Gathered {
  readonly byCarrier: Map<string, Heard[]>;
  readonly crossed: { site: string; unit: string; valueDb: number }[];
  readonly bySite: Map<string, Map<string, Map<string, number>>>;
  records: number;
  wet: number;
  bounded: number;
}

/**
 * What the records of many jobs teach about the next one.
 *
 * The EIRP is learnt from carrier-to-noise ratios at the antenna, which the gain of unit and instrument do not touch; what the level departs further
 * is offset of unit and instrument, parted by a two-way model. A site's drift is that of the mean over the carriers read at each visit. Readings in
 * rain or snow, and those of which only an end is known, are left out.
 *
 * @param records  Records, any iterable, so that a folder can be read one by one; at most 1,000,000.
 * @param options  `allowedLossDb`: loss of a site before it is peaked again, above 0, default 1; `mostCarriers`: how many carriers are learnt, the
 *   most often read first, 1 to 1000, default 50.
 * @throws {@link DomainError} `empty` without a record; `malformed` for what is no record, with its place.
 *
 * Source: `footprintCorrection`, `siteDrift` of this entry, `unitOffsets` of `slantpath/readings`. Accuracy: as there; a carrier that everyone reads with one kind
 * of reflector learns that reflector's efficiency too.
 * @example
 * ```ts
 * import { recordExperience } from 'slantpath/experience';
 * const record = (name: string, latitudeDeg: number, difference: number) => ({
 *   job: { station: { name, latitudeDeg, longitudeDeg: 10 }, visits: [{ date: '2026-05-01' }] },
 *   plan: { signals: [{ slot: 'middle', carrier: 'news', unit: 'LNB' }] },
 *   verdicts: [
 *     {
 *       visit: 0, testPoint: 'antenna', slot: 'middle', carrier: 'news', quantity: 'carrier-to-noise', difference,
 *       standardUncertainty: 0.3, wet: false, bound: null,
 *     },
 *   ],
 * });
 * const [news] = recordExperience([
 *   record('valley', 46.1, 0.9), record('ridge', 46.6, 1.1), record('lake', 47.2, 1),
 * ]).carriers;
 * news?.correction.at({ latitudeDeg: 46.5, longitudeDeg: 10 }).correctionDb.toFixed(1); // => '1.0'
 * ```
 */
export function recordExperience(
  records: Iterable<ExperienceRecord>,
  options: { readonly allowedLossDb?: number; readonly mostCarriers?: number } = {},
): RecordExperience {
  const { allowedLossDb = 1, mostCarriers = 50 } = knownOnly(
    'options',
    options,
    EXPERIENCE_OPTIONS_KEYS,
  );
  const gathered: Gathered = {
    byCarrier: new Map(),
    crossed: [],
    bySite: new Map(),
    records: 0,
    wet: 0,
    bounded: 0,
  };
  if (typeof (records as Partial<Iterable<unknown>> | null)?.[Symbol.iterator] !== 'function')
    throw new DomainError({
      code: records === undefined ? 'missing' : 'malformed',
      parameter: 'records',
      received: records,
      allowed: 'an iterable of records',
    });
  for (const record of records) take(gathered, recordForExperience(record, gathered.records));
  if (gathered.records === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'records',
      received: records,
      allowed: 'at least one record',
    });
  const carriers = [...gathered.byCarrier]
    .filter(([, heard]) => heard.length >= 3)
    .sort(([, a], [, b]) => b.length - a.length)
    .slice(0, Math.max(1, Math.min(1000, mostCarriers)))
    .map(([key, heard]): CarrierExperience => {
      const [slot = '', carrier = ''] = JSON.parse(key) as string[];
      return { slot, carrier, stations: heard.length, correction: footprintCorrection(heard) };
    });
  return {
    records: gathered.records,
    carriers,
    offsets: offsetsOf(gathered),
    drifts: driftsOf(gathered, allowedLossDb),
    leftOut: { wet: gathered.wet, bounded: gathered.bounded },
  };
}

/** Least standard uncertainty of a reading in dB: what no instrument reads better. */
const LEAST_DB = 0.05;

function take(gathered: Gathered, record: ExperienceRecord): void {
  gathered.records += 1;
  const { station, visits } = record.job;
  const unitOf = new Map(
    record.plan.signals.map((signal) => [`${signal.slot}\n${signal.carrier}`, signal.unit]),
  );
  const levels = new Map<string, { differenceDb: number; instrument: string }>();
  const ratios = new Map<string, number>();
  for (const verdict of record.verdicts) {
    const { testPoint, slot, carrier, difference, quantity } = verdict;
    if (verdict.wet) gathered.wet += 1;
    if (verdict.bound !== null && verdict.bound !== undefined) gathered.bounded += 1;
    if (testPoint !== 'antenna' || slot === null || carrier === null || verdict.wet) continue;
    if (typeof difference !== 'number' || !Number.isFinite(difference)) continue;
    const key = `${slot}\n${carrier}`;
    if (quantity === 'level')
      levels.set(key, {
        differenceDb: difference,
        instrument: visits[verdict.visit]?.instrument ?? 'not said',
      });
    if (quantity !== 'carrier-to-noise') continue;
    ratios.set(key, difference);
    const name = JSON.stringify([slot, carrier]);
    const heard = gathered.byCarrier.get(name) ?? [];
    heard.push({
      latitudeDeg: station.latitudeDeg,
      longitudeDeg: station.longitudeDeg,
      excessDb: difference,
      standardUncertaintyDb: Math.max(LEAST_DB, verdict.standardUncertainty),
    });
    gathered.byCarrier.set(name, heard);
  }
  for (const [key, { differenceDb, instrument }] of levels) {
    const ratio = ratios.get(key);
    const unit = unitOf.get(key);
    if (ratio === undefined || unit === undefined) continue;
    gathered.crossed.push({ site: instrument, unit, valueDb: differenceDb - ratio });
  }
  takeVisits(gathered, record);
}

/** Ratios at the antenna, visit by visit, of one site; several records of a site are one. */
function takeVisits(gathered: Gathered, { job }: ExperienceRecord): void {
  const bySite = gathered.bySite.get(job.station.name) ?? new Map<string, Map<string, number>>();
  for (const visit of job.visits)
    for (const each of visit.readings ?? []) {
      const reading = each as Readonly<Record<string, unknown>>;
      const weather = reading['weather'] ?? visit.weather;
      const value = reading['carrierToNoiseDb'];
      if (
        reading['testPoint'] !== 'antenna' ||
        reading['bound'] !== undefined ||
        typeof value !== 'number' ||
        weather === 'rain' ||
        weather === 'snow'
      )
        continue;
      const carrier = `${String(reading['slot'])}\n${String(reading['carrier'])}`;
      const days = bySite.get(carrier) ?? new Map<string, number>();
      days.set(visit.date, value);
      bySite.set(carrier, days);
    }
  if (bySite.size > 0) gathered.bySite.set(job.station.name, bySite);
}

function offsetsOf({ crossed }: Gathered): UnitOffsets {
  const units = new Set(crossed.map(({ unit }) => unit));
  const instruments = new Set(crossed.map(({ site }) => site));
  if (crossed.length < 3 || units.size < 2 || instruments.size < 2)
    return { kind: 'too-few-readings' };
  return unitOffsets(crossed);
}

/** Drift of each site: the mean over the carriers that were read at every one of its days. */
function driftsOf({ bySite }: Gathered, allowedLossDb: number): RecordExperience['drifts'] {
  const found: { readonly station: string; readonly drift: SiteDrift }[] = [];
  for (const [station, carriers] of bySite) {
    const days = [...new Set([...carriers.values()].flatMap((each) => [...each.keys()]))];
    if (days.length < 3) continue;
    const always = [...carriers.values()].filter((each) => each.size === days.length);
    if (always.length === 0) continue;
    const visits = days.map((day) => ({
      at: `${day}T12:00Z`,
      levelDb: always.reduce((sum, each) => sum + (each.get(day) ?? 0), 0) / always.length,
    }));
    found.push({ station, drift: siteDrift({ visits, allowedLossDb }) });
  }
  return found.sort((a, b) => a.drift.perYearDb - b.drift.perYearDb);
}
