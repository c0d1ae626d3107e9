/** Section of the record: each reading against its limits and against what was expected. */

import { type ConformityDecision, decideConformity } from '../../acceptance/index.js';
import { within } from '../../errors.js';
import type { JobFile, JobLimit, JobReading } from '../jobFile.js';
import type { OutletPlan } from './outlets.js';
import type { SignalPlan } from './signals.js';

/** One reading against one limit. */
export interface ReadingVerdict {
  /** `antenna` or the name of the outlet. */
  readonly testPoint: string;
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** What was read. */
  readonly quantity: 'level' | 'carrier-to-noise';
  /** The reading, dBuV for a level, dB for a ratio. */
  readonly readingDb: number;
  /** What the plan expects there; `null` where it has nothing to say. */
  readonly expectedDb: number | null;
  /** Reading less expectation in dB. */
  readonly differenceDb: number | null;
  /** Whether the reading is further below the expectation than its uncertainty and the plan's explain. */
  readonly underExpectation: boolean;
  /** The decision; `null` where no limit applies. */
  readonly decision: ConformityDecision | null;
}

/** Standard uncertainty of an expectation in dB: EIRP, gain and cable as planned (practice of the trade). */
const EXPECTATION_UNCERTAINTY_DB = 1;

interface Expectations {
  readonly signals: readonly SignalPlan[];
  readonly outlets: readonly OutletPlan[];
}

/** Verdicts on all readings of the job. */
export function readingVerdicts(job: JobFile, plan: Expectations): readonly ReadingVerdict[] {
  return job.readings.map((reading, index) =>
    within(`readings[${index}]`, () => {
      const readingDb = reading.quantity === 'level' ? reading.levelDbuv : reading.carrierToNoiseDb;
      const standardUncertainty = reading.expandedUncertaintyDb / 2;
      const expectedDb = expectation(reading, plan);
      const differenceDb = expectedDb === null ? null : readingDb - expectedDb;
      const limit = limitFor(job.limits, reading);
      return {
        testPoint: reading.testPoint,
        slot: reading.slot,
        carrier: reading.carrier,
        quantity: reading.quantity,
        readingDb,
        expectedDb,
        differenceDb,
        underExpectation:
          differenceDb !== null &&
          differenceDb < -2 * Math.hypot(standardUncertainty, EXPECTATION_UNCERTAINTY_DB),
        decision: limit
          ? within(
              '',
              () => decideConformity({ reading: readingDb, standardUncertainty, ...limit }),
              {
                reading: reading.quantity === 'level' ? 'levelDbuv' : 'carrierToNoiseDb',
                standardUncertainty: 'expandedUncertaintyDb',
              },
            )
          : null,
      };
    }),
  );
}

/** What the plan expects at the reading's test point. */
function expectation(reading: JobReading, { signals, outlets }: Expectations): number | null {
  const same = (plan: { readonly slot: string; readonly carrier: string }) =>
    plan.slot === reading.slot && plan.carrier === reading.carrier;
  const plan =
    reading.testPoint === 'antenna'
      ? signals.find(same)
      : outlets.find((outlet) => outlet.outlet === reading.testPoint && same(outlet));
  if (!plan) return null;
  return reading.quantity === 'level' ? plan.levelDbuv : plan.carrierToNoiseDb;
}

/** Limits of a reading: the test point's own before those of all outlets. */
function limitFor(
  limits: readonly JobLimit[],
  reading: JobReading,
): { readonly lowerLimit: number; readonly upperLimit?: number } | undefined {
  const candidates = limits.filter(({ quantity }) => quantity === reading.quantity);
  const limit =
    candidates.find(({ testPoint }) => testPoint === reading.testPoint) ??
    candidates.find(({ testPoint }) => testPoint === 'outlets' && reading.testPoint !== 'antenna');
  if (!limit) return undefined;
  return limit.quantity === 'level'
    ? { lowerLimit: limit.minimumDbuv, upperLimit: limit.maximumDbuv }
    : { lowerLimit: limit.minimumDb };
}
