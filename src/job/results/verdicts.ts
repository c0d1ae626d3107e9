/** Section of the record: each reading against its limit and against what was expected. */

import {
  type ConformityDecision,
  decideConformity,
  judgeReadings,
} from '../../acceptance/index.js';
import { within } from '../../errors.js';
import type { JobFile, JobReading, JobVisit } from '../file/jobFile.js';
import { limitEnds, limitFor } from '../plan/limits.js';
import type { JobPlan } from '../plan/planJob.js';
import { EXPECTATION } from '../plan/signals.js';
import { decisionOnBound, trueReading } from './instrumentReading.js';

/** What can be read. */
export type ReadingQuantity = JobReading['quantity'];

/** One reading against one limit. */
export interface ReadingVerdict {
  /** Visit at which it was read, from 0. */
  readonly visit: number;
  /** `antenna`, or the name of the outlet or receiver. */
  readonly testPoint: string;
  /** Name of the slot; `null` for a voltage read without one. */
  readonly slot: string | null;
  /** Name of the carrier; `null` for a voltage read without one. */
  readonly carrier: string | null;
  /** What was read. */
  readonly quantity: ReadingQuantity;
  /** Unit of all values here: dBuV for levels, V for a voltage, dB otherwise; a bit error ratio as ten times its logarithm. */
  readonly unit: 'dBuV' | 'dB' | 'V';
  /** The reading, corrected by what the job knows of the instrument. */
  readonly reading: number;
  /** What that correction added to what was shown, in dB; 0 where nothing is known of the instrument. */
  readonly correctionDb: number;
  /** Whether only an end is known: the true value is at most, or at least, the reading. */
  readonly bound: 'at-most' | 'at-least' | null;
  /** The instrument showed more than the ceiling that the job gives for it. */
  readonly aboveCeiling: boolean;
  /** Its standard uncertainty. */
  readonly standardUncertainty: number;
  /** What the plan expects there in clear sky; `null` where it has nothing to say. */
  readonly expected: number | null;
  /** Reading less expectation. */
  readonly difference: number | null;
  /** Whether that is more than its uncertainty and the plan's explain; `null` where nothing is expected, or rain or snow lay on the path. */
  readonly finding: 'as-expected' | 'below' | 'above' | null;
  /** The reading conforms, yet stands below what the plan expects: something is wrong and the margin hides it. */
  readonly hiddenFault: boolean;
  /** Whether rain or snow lay on the path. */
  readonly wet: boolean;
  /** The decision; `null` where no limit applies. */
  readonly decision: ConformityDecision | null;
}

/** Verdicts on the readings of one visit. */
export function visitVerdicts(
  job: JobFile,
  plan: JobPlan,
  visitIndex: number,
): readonly ReadingVerdict[] {
  const visit = job.visits[visitIndex];
  return (visit?.readings ?? []).map((reading, index) =>
    within(`visits[${visitIndex}].readings[${index}]`, () => {
      const weather = reading.weather ?? visit?.weather;
      return verdictOn(job, plan, {
        reading,
        of: visit,
        visit: visitIndex,
        wet: weather === 'rain' || weather === 'snow',
      });
    }),
  );
}

/** The key of a reading's place: readings with the same key can be compared. */
export const placeOf = ({
  testPoint,
  slot,
  carrier,
  quantity,
}: Pick<ReadingVerdict, 'testPoint' | 'slot' | 'carrier' | 'quantity'>): string =>
  JSON.stringify([testPoint, slot, carrier, quantity]);

/** The latest verdict of each place over all visits. */
export function latestVerdicts(
  visits: readonly (readonly ReadingVerdict[])[],
): readonly ReadingVerdict[] {
  const latest = new Map<string, ReadingVerdict>();
  for (const verdicts of visits)
    for (const verdict of verdicts) latest.set(placeOf(verdict), verdict);
  return [...latest.values()];
}

/** Value, unit and standard uncertainty of a reading. */
function readValue(reading: JobReading): {
  readonly value: number;
  readonly unit: ReadingVerdict['unit'];
  readonly standardUncertainty: number;
} {
  const inDb = (value: number, unit: 'dB' | 'dBuV', expandedUncertaintyDb: number) => ({
    value,
    unit,
    standardUncertainty: expandedUncertaintyDb / 2,
  });
  switch (reading.quantity) {
    case 'level':
      return inDb(reading.levelDbuv, 'dBuV', reading.expandedUncertaintyDb);
    case 'noise-level':
      return inDb(reading.noiseLevelDbuv, 'dBuV', reading.expandedUncertaintyDb);
    case 'carrier-to-noise':
      return inDb(reading.carrierToNoiseDb, 'dB', reading.expandedUncertaintyDb);
    case 'modulation-error-ratio':
      return inDb(reading.modulationErrorRatioDb, 'dB', reading.expandedUncertaintyDb);
    case 'cross-polar-isolation':
      return inDb(reading.isolationDb, 'dB', reading.expandedUncertaintyDb);
    case 'bit-error-ratio':
      return inDb(10 * Math.log10(reading.bitErrorRatio), 'dB', reading.expandedUncertaintyDb);
    case 'supply-voltage':
      return {
        value: reading.voltageV,
        unit: 'V',
        standardUncertainty: reading.expandedUncertaintyV / 2,
      };
  }
}

interface Asked {
  readonly reading: JobReading;
  readonly visit: number;
  readonly wet: boolean;
  /** The visit itself. */
  readonly of: JobVisit | undefined;
}

function verdictOn(
  job: JobFile,
  plan: JobPlan,
  { reading, visit, wet, of }: Asked,
): ReadingVerdict {
  const { unit, ...shown } = readValue(reading);
  const corrected = trueReading(job, { reading, visit: of }, shown);
  const { value, standardUncertainty, bound } = corrected;
  const expectation = expectationOf(reading, plan);
  const limit = limitFor(job, reading.quantity, reading.testPoint, reading.slot);
  const { lower, upper } = limit ? limitEnds(limit) : {};
  const judged = judge(reading.quantity, {
    value,
    standardUncertainty,
    lower,
    upper,
    expectation: wet || bound !== null ? null : expectation,
  });
  const ends = {
    ...(lower === undefined ? {} : { lowerLimit: lower }),
    ...(upper === undefined ? {} : { upperLimit: upper }),
  };
  return {
    visit,
    testPoint: reading.testPoint,
    slot: reading.slot ?? null,
    carrier: reading.carrier ?? null,
    quantity: reading.quantity,
    unit,
    reading: value,
    correctionDb: corrected.correctionDb,
    bound,
    aboveCeiling: corrected.aboveCeiling,
    standardUncertainty,
    expected: expectation?.expected ?? null,
    difference: expectation && bound === null ? value - expectation.expected : null,
    finding: judged.finding,
    hiddenFault: judged.hiddenFault,
    wet,
    decision:
      bound !== null && judged.decision ? decisionOnBound(corrected, ends) : judged.decision,
  };
}

interface Judged {
  readonly decision: ConformityDecision | null;
  readonly finding: ReadingVerdict['finding'];
  readonly hiddenFault: boolean;
}

function judge(
  quantity: ReadingQuantity,
  asked: {
    readonly value: number;
    readonly standardUncertainty: number;
    readonly lower: number | undefined;
    readonly upper: number | undefined;
    readonly expectation: Expectation | null;
  },
): Judged {
  const { value, standardUncertainty, lower, upper, expectation } = asked;
  const ends = {
    ...(lower === undefined ? {} : { lowerLimit: lower }),
    ...(upper === undefined ? {} : { upperLimit: upper }),
  };
  const limited = lower !== undefined || upper !== undefined;
  if (quantity === 'bit-error-ratio' || quantity === 'supply-voltage' || quantity === 'noise-level')
    return {
      decision: limited ? decideConformity({ reading: value, standardUncertainty, ...ends }) : null,
      finding: null,
      hiddenFault: false,
    };
  const [judged] = judgeReadings({
    readings: [{ quantity, reading: value, standardUncertainty }],
    limits: limited ? [{ quantity, ...ends }] : [],
    expected: expectation ? [{ quantity, ...expectation }] : [],
  });
  return {
    decision: judged?.decision ?? null,
    finding: judged?.expectation?.finding ?? null,
    hiddenFault: judged?.hiddenFault ?? false,
  };
}

interface Expectation {
  readonly expected: number;
  readonly standardUncertainty: number;
}

/** Standard uncertainty of a modulation error ratio taken as the carrier-to-noise ratio, in dB (practice of the trade). */
const MER_UNCERTAINTY_DB = 1.5;

/** What the plan expects at the reading's test point. */
function expectationOf(reading: JobReading, plan: JobPlan): Expectation | null {
  const same = (each: { readonly slot: string; readonly carrier: string }) =>
    each.slot === reading.slot && each.carrier === reading.carrier;
  const place =
    reading.testPoint === 'antenna'
      ? plan.signals.find(same)
      : plan.outlets.find((outlet) => outlet.outlet === reading.testPoint && same(outlet));
  if (!place) return null;
  switch (reading.quantity) {
    case 'level':
      return { expected: place.levelDbuv, standardUncertainty: EXPECTATION.levelDb };
    case 'carrier-to-noise':
      return { expected: place.carrierToNoiseDb, standardUncertainty: EXPECTATION.ratioDb };
    case 'modulation-error-ratio':
      return { expected: place.carrierToNoiseDb, standardUncertainty: MER_UNCERTAINTY_DB };
    case 'noise-level':
      return {
        expected: place.levelDbuv - place.carrierToNoiseDb,
        standardUncertainty: EXPECTATION.levelDb,
      };
    default:
      return null;
  }
}
