/** Peaking, one instruction at a time: the readings of an axis as a search, and what the library says to do next. */

import { halfPowerBeamwidth } from 'slantpath/antenna';
import type { JobRecord } from 'slantpath/job';
import {
  afterMove,
  afterReading,
  beginPeakSearch,
  type NextMove,
  nextMove,
  type PeakSearch,
} from 'slantpath/peaking';
import type { Display } from './beside.js';
import type { LoosePeaking } from './draft.js';
import { listAt, valueAt } from './paths.js';

/** One axis on the bench. */
export interface Bench {
  /** Degrees of the scale for one unit of the search: one turn of the adjuster, or one degree where its turn is not known. */
  readonly degPerUnit: number;
  /** Whether the unit is a turn. */
  readonly inTurns: boolean;
  /** Width of the beam in degrees on the sky. */
  readonly beamwidthDeg: number;
  readonly search: PeakSearch;
  readonly move: NextMove;
  /**
   * Where one more reading is needed although the search is done, in degrees of the scale: the record does not yet hold the
   * main lobe or the loss for proven. `null` where it does, or has not seen the newest readings yet.
   */
  readonly proveAtDeg: number | null;
}

/** Degrees on the sky for one of the scale: the cosine of the elevation round a mast. */
function skyRatio(entry: LoosePeaking, record: JobRecord): number {
  const mount = record.job.mounts.find(({ slots }) => slots.includes(String(entry.slot)));
  const onScale = (entry.azimuthReference ?? 'on-scale') === 'on-scale';
  if (entry.axis !== 'azimuth' || !onScale || mount?.kind === 'polar') return 1;
  const { apparentElevationDeg = 0 } =
    record.plan.directions.find(({ slot }) => slot === entry.slot) ?? {};
  return Math.max(0.01, Math.cos((apparentElevationDeg * Math.PI) / 180));
}

/** Width of the main beam for the carrier that is watched; `undefined` without a reflector. */
function beamwidthOf(entry: LoosePeaking, { job, plan }: JobRecord): number | undefined {
  const { diameterM } =
    plan.mounts.find(({ slots }) => slots.includes(String(entry.slot)))?.reflector ?? {};
  const { frequencyGHz } =
    job.slots
      .find(({ name }) => name === entry.slot)
      ?.carriers?.find(({ name }) => name === entry.carrier) ??
    job.transmit?.find(({ name }) => name === entry.carrier) ??
    {};
  return diameterM === undefined || frequencyGHz === undefined
    ? undefined
    : halfPowerBeamwidth({ diameterM, frequencyGHz });
}

const numberAt = (from: unknown, path: string): number | undefined => {
  const value = valueAt(from, path);
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
};

/** The readings of an axis that are whole, in their order, in degrees of the scale. */
export function samplesOf(entry: LoosePeaking) {
  const levels = listAt(entry, 'samples.levelDbm');
  return listAt(entry, 'samples.positionDeg').flatMap((positionDeg, index) => {
    const levelDbm = levels[index];
    return typeof positionDeg === 'number' && typeof levelDbm === 'number'
      ? [{ positionDeg, levelDbm }]
      : [];
  });
}

/** The bench of an axis; `undefined` as long as the reflector or the carrier is not known. */
export function benchOf(
  entry: LoosePeaking,
  record: JobRecord | null,
  display: Display,
): Bench | undefined {
  const beamwidthDeg = record ? beamwidthOf(entry, record) : undefined;
  if (!record || beamwidthDeg === undefined) return undefined;
  const degPerTurn = numberAt(entry, 'degPerTurn');
  const degPerUnit = degPerTurn ?? 1;
  const restDeg = numberAt(entry, 'restDeg') ?? 0;
  const samples = samplesOf(entry);
  const start = samples[0]?.positionDeg ?? restDeg;
  // Half of what the job allows for both axes together.
  const targetLossDb = (numberAt(record.job, 'target.pointingLossDb') ?? 0.2) / 2;
  const begun = beginPeakSearch(
    {
      beamwidthTurns: beamwidthDeg / skyRatio(entry, record) / degPerUnit,
      targetLossDb,
      standardDeviationDb: display.standardDeviationDb,
      levelStepDb: display.levelStepDb,
    },
    start / degPerUnit,
  );
  const to = (search: PeakSearch, positionDeg: number, toPeak: boolean) =>
    afterMove(search, { legsTurns: [], toTurns: positionDeg / degPerUnit, toPeak });
  const read = samples.reduce(
    (search, { positionDeg, levelDbm }) => afterReading(to(search, positionDeg, false), levelDbm),
    begun,
  );
  // Left elsewhere than where it was read last: that was the way to the peak.
  const last = samples.at(-1)?.positionDeg ?? restDeg;
  const search = to(read, restDeg, Math.abs(restDeg - last) > 1e-6);
  const move = nextMove(search);
  return {
    degPerUnit,
    inTurns: degPerTurn !== undefined,
    beamwidthDeg,
    search,
    move,
    proveAtDeg:
      move.kind === 'done' && !isProven(entry, record)
        ? farthestPlace(
            samples.map(({ positionDeg }) => positionDeg),
            restDeg,
            beamwidthDeg / skyRatio(entry, record),
          )
        : null,
  };
}

/** Readings after which no more are asked for to assure an interval. */
const MOST_TO_PROVE = 12;

/** Whether the record holds main lobe and loss of this axis for proven; so too as long as it has not seen the newest readings. */
function isProven(entry: LoosePeaking, { job, peaking }: JobRecord): boolean {
  const same = (each: { readonly axis: string; readonly slot: string; readonly carrier: string }) =>
    each.axis === entry.axis && each.slot === entry.slot && each.carrier === entry.carrier;
  const result = peaking.find(same);
  if (!result) return true;
  const seen = job.visits[result.visit]?.peaking?.find(same);
  const current =
    seen?.restDeg === entry.restDeg &&
    seen?.samples?.positionDeg.length === samplesOf(entry).length;
  const targetDb = job.target?.pointingLossDb ?? Number.POSITIVE_INFINITY;
  // The parts of two axes that are not known add in squares: each may have its share of what is allowed.
  const sure = (result.lossUpper95Db ?? Number.POSITIVE_INFINITY) <= targetDb * Math.SQRT1_2;
  const { fit } = result;
  // Few readings do not assure their interval; where a dozen do not, more will not either.
  const assured = fit?.kind !== 'peak' || fit.coverage !== 'not-assured';
  const enough = samplesOf(entry).length >= MOST_TO_PROVE;
  return !current || (result.mainLobe === 'proven' && sure && (assured || enough));
}

/** Places on the lobe, in widths off its peak, where a reading tells most of peak and width. */
const TELLING = [-0.5, 0.5, -0.75, 0.75, -0.25, 0.25, -0.62, 0.62];

/** The one of them that lies farthest from all that was read. */
function farthestPlace(read: readonly number[], peakDeg: number, widthDeg: number): number {
  const away = (place: number) => Math.min(...read.map((each) => Math.abs(each - place)));
  const places = TELLING.map((share) => Number((peakDeg + share * widthDeg).toFixed(2)));
  return places.reduce((best, place) => (away(place) > away(best) + 1e-9 ? place : best));
}

/** Where the next level is to be read, in degrees of the scale. */
export function nextPositionDeg({ move, degPerUnit, search, proveAtDeg }: Bench): number {
  if (proveAtDeg !== null) return proveAtDeg;
  const turns = 'toTurns' in move ? move.toTurns : search.placeTurns;
  return Number((turns * degPerUnit).toFixed(3));
}

/** The axis with a level noted at a position, and left there. */
export function withSample(
  entry: LoosePeaking,
  positionDeg: number,
  levelDbm: number,
): LoosePeaking {
  const { samples } = entry;
  return {
    ...entry,
    restDeg: positionDeg,
    samples: {
      positionDeg: [...(samples?.positionDeg ?? []), positionDeg],
      levelDbm: [...(samples?.levelDbm ?? []), levelDbm],
    },
  };
}
