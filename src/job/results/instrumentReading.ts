/** What a reading says once the instrument is taken into account: its offsets, its ceiling, the bandwidth of its noise. */

import { type ConformityDecision, decideConformity } from '../../acceptance/index.js';
import { DomainError } from '../../errors.js';
import { ratioToDb } from '../../numeric/decibel.js';
import { symbolEnergyFromMer } from '../../readings/index.js';
import type { JobFile, JobReading, JobVisit } from '../file/jobFile.js';

/** A reading in the unit of its quantity. */
interface TrueReading {
  /** The value, corrected. */
  readonly value: number;
  readonly standardUncertainty: number;
  /** What the correction added to what the instrument showed, in dB; 0 where nothing is known of the instrument. */
  readonly correctionDb: number;
  /** Whether the value is only an end: the true one is at most, or at least, this. */
  readonly bound: 'at-most' | 'at-least' | null;
  /** The instrument showed more than its own ceiling lets it, so that the reading was left as it was. */
  readonly aboveCeiling: boolean;
}

type Instrument = NonNullable<JobFile['instruments']>[number];

/** The instrument of a reading, where the job describes it. */
function instrumentOf(
  job: JobFile,
  reading: JobReading,
  visit: JobVisit | undefined,
): Instrument | undefined {
  const name = reading.instrument ?? visit?.instrument;
  return name === undefined ? undefined : job.instruments?.find((each) => each.name === name);
}

/** A reading as shown, made true. */
export function trueReading(
  job: JobFile,
  { reading, visit }: { readonly reading: JobReading; readonly visit: JobVisit | undefined },
  shown: { readonly value: number; readonly standardUncertainty: number },
): TrueReading {
  const instrument = instrumentOf(job, reading, visit);
  const bound = reading.bound ?? null;
  const plain = { ...shown, correctionDb: 0, bound, aboveCeiling: false };
  switch (reading.quantity) {
    case 'level':
    case 'noise-level': {
      const offsetDb = instrument?.levelOffsetDb ?? 0;
      return {
        ...plain,
        value: shown.value - offsetDb,
        standardUncertainty: withOffset(shown, instrument?.levelOffsetStandardUncertaintyDb),
        correctionDb: 0 - offsetDb,
      };
    }
    case 'carrier-to-noise': {
      const offsetDb = instrument?.ratioOffsetDb ?? 0;
      const correctionDb = bandwidthDb(job, reading) - offsetDb;
      return {
        ...plain,
        value: shown.value + correctionDb,
        standardUncertainty: withOffset(shown, instrument?.ratioOffsetStandardUncertaintyDb),
        correctionDb,
      };
    }
    case 'modulation-error-ratio':
      return instrument?.ceilingDb === undefined
        ? plain
        : belowCeiling(plain, instrument.ceilingDb);
    default:
      return plain;
  }
}

const withOffset = (
  { standardUncertainty }: { readonly standardUncertainty: number },
  offsetUncertaintyDb = 0,
): number => Math.hypot(standardUncertainty, offsetUncertaintyDb);

/** From the bandwidth in which noise was read to that of the symbol rate, in dB. */
function bandwidthDb(
  job: JobFile,
  reading: Extract<JobReading, { quantity: 'carrier-to-noise' }>,
): number {
  const { noiseBandwidthMHz, slot, carrier } = reading;
  const symbolRateMBd = job.slots
    .find(({ name }) => name === slot)
    ?.carriers?.find(({ name }) => name === carrier)?.symbolRateMBd;
  return noiseBandwidthMHz === undefined || symbolRateMBd === undefined
    ? 0
    : ratioToDb(noiseBandwidthMHz / symbolRateMBd);
}

/** Es/N0 behind an MER that an instrument with a ceiling shows. */
function belowCeiling(plain: TrueReading, ceilingDb: number): TrueReading {
  try {
    const energy = symbolEnergyFromMer({
      valueDb: plain.value,
      ceilingDb,
      standardUncertaintyDb: Math.min(10, plain.standardUncertainty),
    });
    const value = energy.symbolEnergyToNoiseDb;
    return energy.kind === 'value'
      ? {
          ...plain,
          value,
          standardUncertainty: energy.standardUncertaintyDb,
          correctionDb: value - plain.value,
        }
      : // So near the ceiling that only a least value is known.
        { ...plain, value, correctionDb: value - plain.value, bound: 'at-least' };
  } catch (error) {
    if (error instanceof DomainError) return { ...plain, aboveCeiling: true };
    throw error;
  }
}

/** Ends of a limit. */
interface Ends {
  readonly lowerLimit?: number;
  readonly upperLimit?: number;
}

/**
 * A decision on a value that is only an end: what already fails the limit behind which the true value must lie fails; what keeps its own limit
 * conforms where there is no other; all else is undecided.
 */
export function decisionOnBound(
  { value, standardUncertainty, bound }: TrueReading,
  ends: Ends,
): ConformityDecision {
  const { lowerLimit, upperLimit } = ends;
  const decide = (some: Ends) => decideConformity({ reading: value, standardUncertainty, ...some });
  const low = lowerLimit === undefined ? null : decide({ lowerLimit }).verdict;
  const high = upperLimit === undefined ? null : decide({ upperLimit }).verdict;
  // At most this: it may lie anywhere below, so the lower limit can only be failed and the upper one only be kept.
  const [far, near] = bound === 'at-most' ? [low, high] : [high, low];
  const verdict =
    far === 'does-not-conform' ? far : far === null && near === 'conforms' ? near : 'undecided';
  return { ...decide(ends), verdict };
}
