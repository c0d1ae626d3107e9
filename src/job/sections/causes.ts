/** Section of the record: what to look at first where a reading fails or stands under its expectation. */

import {
  type CauseInstallation,
  type CauseMeasurement,
  type CauseObservation,
  type CauseRanking,
  causeTestPoints,
  type FaultCause,
  rankCauses,
} from '../../acceptance/index.js';
import { within } from '../../errors.js';
import type { JobCarrier, JobFile, JobReading } from '../jobFile.js';
import type { DirectionPlan } from './directions.js';
import { carrierOf } from './peaking.js';
import type { SignalPlan } from './signals.js';
import type { ReadingVerdict } from './verdicts.js';

/** What to look at first. */
export interface FirstLook {
  /** `cause`: the first is named; `cannot-tell`: more readings are needed; `nothing-wrong`: the pattern is as planned. */
  readonly kind: CauseRanking['kind'];
  /** Causes by probability, the likeliest first, those under 2 % left out. */
  readonly causes: readonly {
    readonly cause: FaultCause;
    readonly probabilityRatio: number;
    /** Slot, segment, port or carrier; `null` for the whole antenna. */
    readonly location: string | null;
  }[];
  /** The one next measurement that separates the first two best; `null` where none does. */
  readonly next: CauseMeasurement | null;
}

/** Band of a carrier's outdoor unit: high from 11.7 GHz in the Ku band (common practice). */
function bandOf({ frequencyGHz }: JobCarrier): 'low' | 'high' {
  return frequencyGHz >= 11.7 && frequencyGHz < 13 ? 'high' : 'low';
}

/** Polarization as the unit is switched: right with vertical, left with horizontal (EN 61319-1). */
function switchedPolarization({ polarization }: JobCarrier): 'horizontal' | 'vertical' {
  return polarization === 'vertical' || polarization === 'right' ? 'vertical' : 'horizontal';
}

const carrierName = (at: { readonly slot: string; readonly carrier: string }) =>
  `${at.slot}, ${at.carrier}`;

function installation(
  job: JobFile,
  directions: readonly DirectionPlan[],
  signals: readonly SignalPlan[],
): CauseInstallation {
  const carriers = signals.flatMap((signal) => {
    const carrier = carrierOf(job, signal);
    if (!carrier) return [];
    return [
      {
        name: carrierName(signal),
        slot: signal.slot,
        polarization: switchedPolarization(carrier),
        band: bandOf(carrier),
        frequencyGHz: carrier.frequencyGHz,
        frequencyMHz: carrier.intermediateFrequencyMHz,
        levelDbuv: signal.levelDbuv,
        carrierToNoiseDb: signal.carrierToNoiseDb,
        thresholdDb: signal.requiredDb,
      },
    ];
  });
  const points = within(
    'distribution',
    () =>
      causeTestPoints(job.distribution, {
        frequenciesMHz: carriers.map(({ frequencyMHz }) => frequencyMHz),
      }),
    { tree: '' },
  );
  return {
    diameterM: job.antenna.diameterM,
    slots: directions
      .filter(({ kind }) => kind !== 'below-horizon')
      .map(({ slot, azimuthDeg, elevationDeg }) => ({
        name: slot,
        azimuthDeg: azimuthDeg ?? 0,
        elevationDeg,
      })),
    carriers,
    testPoints: [
      { name: 'antenna', lossDb: 0 },
      ...points.map((point) => ({ ...point, behind: point.behind ?? 'antenna' })),
    ],
  };
}

function observation(reading: JobReading): CauseObservation {
  const at = {
    carrier: carrierName(reading),
    testPoint: reading.testPoint,
    standardUncertaintyDb: Math.max(0.05, reading.expandedUncertaintyDb / 2),
  };
  return reading.quantity === 'level'
    ? { kind: 'level', levelDbuv: reading.levelDbuv, ...at }
    : { kind: 'carrier-to-noise', carrierToNoiseDb: reading.carrierToNoiseDb, ...at };
}

/** The first look; `null` where every reading conforms and stands where it was expected. */
export function firstLook(
  job: JobFile,
  plan: { readonly directions: readonly DirectionPlan[]; readonly signals: readonly SignalPlan[] },
  verdicts: readonly ReadingVerdict[],
): FirstLook | null {
  const bad = verdicts.some(
    ({ decision, underExpectation }) =>
      underExpectation || (decision !== null && decision.verdict !== 'conforms'),
  );
  if (!bad || plan.signals.length === 0) return null;
  const names: Record<string, string> = {};
  return within(
    '',
    () => {
      const seen = new Set(plan.signals.map(carrierName));
      const observations = job.readings.flatMap((reading, index) => {
        if (!seen.has(carrierName(reading))) return [];
        names[`observations[${Object.keys(names).length}]`] = `readings[${index}]`;
        return [observation(reading)];
      });
      if (observations.length === 0) return null;
      const found = rankCauses({
        installation: installation(job, plan.directions, plan.signals),
        observations,
      });
      return {
        kind: found.kind,
        causes: found.ranking
          .filter(({ probabilityRatio }) => probabilityRatio >= 0.02)
          .map(({ cause, probabilityRatio, location }) => ({ cause, probabilityRatio, location })),
        next: found.next?.measurement ?? null,
      };
    },
    names,
  );
}
