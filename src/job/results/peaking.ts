/** Section of the record: what the samples taken while peaking say. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { cosDeg } from '../../numeric/angle.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { type Bracket, bracketPeak, fitPeak, type PeakFit } from '../../peaking/index.js';
import type { JobFile, JobMount, JobPeaking } from '../file/jobFile.js';
import type { JobPlan } from '../plan/planJob.js';

/** One axis after peaking. */
export interface PeakingResult {
  /** Visit at which it was done, from 0. */
  readonly visit: number;
  /** Name of the mount. */
  readonly mount: string;
  /** Axis that was turned. */
  readonly axis: 'azimuth' | 'elevation';
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** What degrees of the samples mean. */
  readonly azimuthReference: 'on-scale' | 'on-sky';
  /** Degrees on the sky for one degree of the samples: the cosine of the elevation for an azimuth scale. */
  readonly skyRatio: number;
  /** Half-power beamwidth of the reflector at the carrier's frequency in degrees on the sky; `null` without a reflector. */
  readonly theoreticalBeamwidthDeg: number | null;
  /**
   * Whether the lobe has the width of the main lobe: `proven`; `refuted`: a side lobe, or something wider; `not-proven`: the
   * readings do not tell its width well enough.
   */
  readonly mainLobe: 'proven' | 'refuted' | 'not-proven';
  /** Half-power beamwidth that the readings have in degrees on the sky; `null` where they do not tell. */
  readonly measuredBeamwidthDeg: number | null;
  /** The bracketing, where one was done. */
  readonly bracket: Bracket | null;
  /** The fit of the samples, in degrees on the sky; `null` without samples. */
  readonly fit: PeakFit | null;
  /** Pointing loss of this axis as it was left in dB; `null` where it is not known. */
  readonly lossDb: number | null;
  /** Upper bound of that loss with 95 % confidence in dB; `null` where it is not known. */
  readonly lossUpper95Db: number | null;
  /** Move still to make in degrees of the samples, positive towards higher positions; `null` where it is not known. */
  readonly moveDeg: number | null;
  /** The same in turns of the adjuster; `null` where its turns are not known. */
  readonly moveTurns: number | null;
  /** Whether the pointing loss left is within the target: with 95 % confidence that is assured, not, or not known. */
  readonly verdict: 'within-target' | 'over-target' | 'not-known';
}

/** Widths over theory: a main lobe, whose taper is not known, and the first side lobe; mean and standard deviation. */
const MAIN_LOBE = { mean: 1, deviation: 0.1 } as const;
const SIDE_LOBE = { mean: 0.48, deviation: 0.06 } as const;

/** Width over theory above which no main lobe is, as in the fit. */
const MOST_WIDE = 1.5;

/** Odds from which one of them counts as proven. */
const PROVEN_ODDS = 20;

/** Results of every axis, the latest reading of each counting. */
export function peakingResults(job: JobFile, plan: JobPlan): readonly PeakingResult[] {
  const latest = new Map<string, PeakingResult>();
  job.visits.forEach((visit, visitIndex) => {
    visit.peaking?.forEach((entry, index) => {
      const result = within(`visits[${visitIndex}].peaking[${index}]`, () =>
        peakingResult(job, plan, entry, visitIndex),
      );
      const key = JSON.stringify([result.mount, result.axis, result.slot]);
      latest.delete(key);
      latest.set(key, result);
    });
  });
  return [...latest.values()];
}

function frequencyOf(job: JobFile, { slot, carrier }: JobPeaking): number | undefined {
  return (
    job.slots.find(({ name }) => name === slot)?.carriers?.find(({ name }) => name === carrier)
      ?.frequencyGHz ??
    job.transmit?.find((sent) => sent.slot === slot && sent.name === carrier)?.frequencyGHz
  );
}

function peakingResult(
  job: JobFile,
  plan: JobPlan,
  entry: JobPeaking,
  visit: number,
): PeakingResult {
  const mountIndex = job.mounts.findIndex(({ slots }) => slots.includes(entry.slot));
  const mount = job.mounts[mountIndex] as JobMount;
  const reflector = plan.mounts[mountIndex]?.reflector;
  const frequencyGHz = frequencyOf(job, entry);
  const widthDeg =
    reflector && frequencyGHz !== undefined
      ? halfPowerBeamwidth({ diameterM: reflector.diameterM, frequencyGHz })
      : null;
  const azimuthReference = entry.azimuthReference ?? 'on-scale';
  const elevationDeg =
    plan.directions.find(({ slot }) => slot === entry.slot)?.apparentElevationDeg ?? 0;
  const skyRatio =
    entry.axis === 'azimuth' && azimuthReference === 'on-scale' && mount.kind !== 'polar'
      ? // Straight up the azimuth axis turns the beam on the spot.
        Math.max(0.01, Math.abs(cosDeg(elevationDeg)))
      : 1;
  const fitted = entry.samples ? fittedLobe(entry, skyRatio, widthDeg) : null;
  const bracketed = entry.bracketing ? bracketedLobe(entry, skyRatio, widthDeg) : null;
  const { fit, ...lobe } = fitted ??
    bracketed ?? { fit: null, mainLobe: 'not-proven' as const, measuredBeamwidthDeg: null };
  const found = fit?.kind === 'peak' ? fit : null;
  const moveDeg = found ? found.positionDeg / skyRatio - entry.restDeg : null;
  const turns = (degrees: number | null) =>
    degrees === null || entry.degPerTurn === undefined ? null : degrees / entry.degPerTurn;
  const lossDb = found ? found.lossNowDb : null;
  const lossUpper95Db = found ? found.lossNowUpper95Db : (bracketed?.lossUpperDb ?? null);
  const targetDb = job.target?.pointingLossDb;
  return {
    visit,
    mount: mount.name,
    axis: entry.axis,
    slot: entry.slot,
    carrier: entry.carrier,
    azimuthReference,
    skyRatio,
    theoreticalBeamwidthDeg: widthDeg,
    mainLobe: lobe.mainLobe,
    measuredBeamwidthDeg: lobe.measuredBeamwidthDeg,
    bracket: bracketed?.bracket ?? null,
    fit,
    lossDb,
    lossUpper95Db,
    moveDeg,
    moveTurns: turns(moveDeg),
    verdict:
      lobe.mainLobe === 'refuted' || targetDb === undefined || lossUpper95Db === null
        ? 'not-known'
        : lossUpper95Db <= targetDb && found?.coverage !== 'not-assured'
          ? 'within-target'
          : (lossDb ?? 0) > targetDb
            ? 'over-target'
            : 'not-known',
  };
}

interface Lobe {
  readonly fit: PeakFit | null;
  readonly mainLobe: PeakingResult['mainLobe'];
  readonly measuredBeamwidthDeg: number | null;
}

/** Odds that a width over theory, as well known as it is, is that of the main lobe and not of the first side lobe. */
function mainLobeOdds(ratio: number, doubtRatio: number): number {
  const logDensity = ({
    mean,
    deviation,
  }: {
    readonly mean: number;
    readonly deviation: number;
  }) => {
    const variance = deviation ** 2 + doubtRatio ** 2;
    return -((ratio - mean) ** 2 / variance + Math.log(variance)) / 2;
  };
  return Math.exp(Math.min(300, logDensity(MAIN_LOBE) - logDensity(SIDE_LOBE)));
}

/**
 * The lobe of the samples, with the width of theory as what is known beforehand; a second fit of free width tells what the samples alone
 * say of it.
 */
function fittedLobe(entry: JobPeaking, skyRatio: number, widthDeg: number | null): Lobe {
  const samples = entry.samples as NonNullable<JobPeaking['samples']>;
  const onSky = {
    positionDeg: samples.positionDeg.map((position) => position * skyRatio),
    levelDbm: samples.levelDbm,
    currentPositionDeg: entry.restDeg * skyRatio,
    levelStepDb: entry.bracketing?.resolutionDb ?? 0,
  };
  return within('samples', () => {
    const free = fitPeak(onSky);
    if (widthDeg === null)
      return {
        fit: free,
        mainLobe: 'not-proven',
        measuredBeamwidthDeg: free.kind === 'peak' ? free.beamwidthDeg : null,
      };
    const held = () => fitPeak({ ...onSky, beamwidthDeg: widthDeg });
    if (free.kind !== 'peak') {
      const fit = held();
      return {
        fit: fit.kind === 'peak' ? fit : free,
        mainLobe: 'not-proven',
        measuredBeamwidthDeg: null,
      };
    }
    const ratio = free.beamwidthDeg / widthDeg;
    const measuredBeamwidthDeg = free.beamwidthDeg;
    const fit = held();
    const odds = mainLobeOdds(ratio, free.beamwidthStandardUncertaintyDeg / widthDeg);
    if (fit.kind === 'not-main-lobe' || odds < 1 / PROVEN_ODDS)
      return {
        fit: {
          kind: 'not-main-lobe',
          reason: ratio < 1 ? 'too-narrow' : 'too-wide',
          positionDeg: free.positionDeg,
          beamwidthDeg: free.beamwidthDeg,
        },
        mainLobe: 'refuted',
        measuredBeamwidthDeg,
      };
    return {
      fit: fit.kind === 'peak' ? fit : free,
      mainLobe: odds > PROVEN_ODDS ? 'proven' : 'not-proven',
      measuredBeamwidthDeg,
    };
  });
}

/** The lobe of a bracketing: its width from the way between equal levels, its loss from the error that is left. */
function bracketedLobe(
  entry: JobPeaking,
  skyRatio: number,
  widthDeg: number | null,
): Lobe & { readonly bracket: Bracket; readonly lossUpperDb: number | null } {
  const {
    turnsOut,
    turnsBack,
    dropDb,
    resolutionDb = 0,
  } = entry.bracketing as NonNullable<JobPeaking['bracketing']>;
  const bracket = within('bracketing', () =>
    bracketPeak({
      peakLevelDbm: 0,
      referenceLevelDbm: -dropDb,
      turnsOut,
      turnsBack,
      levelStepDb: resolutionDb,
      ...(entry.degPerTurn === undefined ? {} : { degPerTurn: entry.degPerTurn }),
    }),
  );
  const { degPerTurn } = entry;
  if (degPerTurn === undefined || widthDeg === null)
    return {
      bracket,
      fit: null,
      mainLobe: 'not-proven',
      measuredBeamwidthDeg: null,
      lossUpperDb: null,
    };
  // Equal levels `drop` below the peak lie width sqrt(drop / 3) apart.
  const measuredBeamwidthDeg = (turnsBack * degPerTurn * skyRatio) / Math.sqrt(dropDb / 3);
  const odds = mainLobeOdds(measuredBeamwidthDeg / widthDeg, 0);
  const wide = measuredBeamwidthDeg > MOST_WIDE * widthDeg;
  const { error95Turns } = bracket;
  return {
    bracket,
    fit: null,
    mainLobe:
      wide || odds < 1 / PROVEN_ODDS ? 'refuted' : odds > PROVEN_ODDS ? 'proven' : 'not-proven',
    measuredBeamwidthDeg,
    lossUpperDb:
      error95Turns === null
        ? null
        : gaussianLobeLossDb(error95Turns * degPerTurn * skyRatio, widthDeg),
  };
}
