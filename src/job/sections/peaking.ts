/** Section of the record: what the samples taken while peaking say. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { type Bracket, bracketPeak, fitPeak, type PeakFit } from '../../peaking/index.js';
import type { JobCarrier, JobFile } from '../jobFile.js';

/** One axis after peaking. */
export interface PeakingResult {
  /** Axis that was turned. */
  readonly axis: 'azimuth' | 'elevation';
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Half-power beamwidth of the reflector at the carrier's frequency in degrees. */
  readonly beamwidthDeg: number;
  /** The bracketing, where one was done. */
  readonly bracket: Bracket | null;
  /** The fit of the samples. */
  readonly fit: PeakFit;
  /** Move still to make in turns of the adjuster, positive towards higher positions; `null` without a peak. */
  readonly moveTurns: number | null;
  /** Whether the pointing loss left is within the target: with 95 % confidence, not, or not known. */
  readonly verdict: 'within-target' | 'over-target' | 'not-known';
}

/** The carrier of a name pair; the job was checked to hold it. */
export function carrierOf(
  job: JobFile,
  wanted: { readonly slot: string; readonly carrier: string },
): JobCarrier | undefined {
  return job.slots
    .find((slot) => slot.name === wanted.slot)
    ?.carriers.find((carrier) => carrier.name === wanted.carrier);
}

/** Results of every axis in the job. */
export function peakingResults(job: JobFile): readonly PeakingResult[] {
  return job.peaking.map((entry, index) =>
    within(`peaking[${index}]`, () => {
      const frequencyGHz = carrierOf(job, entry)?.frequencyGHz ?? Number.NaN;
      const beamwidthDeg = halfPowerBeamwidth({
        diameterM: job.antenna.diameterM,
        frequencyGHz,
      });
      const resolutionDb = entry.bracketing?.resolutionDb ?? 0;
      const fit = within(
        '',
        () =>
          fitPeak({
            ...entry.samples,
            currentPositionDeg: entry.restDeg,
            levelStepDb: resolutionDb,
            // The width is what tells the main lobe from a side lobe: without it the fit takes any peak.
            beamwidthDeg,
          }),
        {
          samples: 'samples',
          positionDeg: 'samples.positionDeg',
          levelDbm: 'samples.levelDbm',
          currentPositionDeg: 'restDeg',
          levelStepDb: 'bracketing.resolutionDb',
        },
      );
      const bracket = entry.bracketing
        ? bracketPeak({
            peakLevelDbm: 0,
            referenceLevelDbm: -entry.bracketing.dropDb,
            turnsOut: entry.bracketing.turnsOut,
            turnsBack: entry.bracketing.turnsBack,
            levelStepDb: resolutionDb,
            degPerTurn: entry.degPerTurn,
          })
        : null;
      return {
        axis: entry.axis,
        slot: entry.slot,
        carrier: entry.carrier,
        beamwidthDeg,
        bracket,
        fit,
        moveTurns:
          fit.kind === 'peak' ? (fit.positionDeg - entry.restDeg) / entry.degPerTurn : null,
        verdict: verdict(fit, job.target.pointingLossDb),
      };
    }),
  );
}

function verdict(fit: PeakFit, targetDb: number): PeakingResult['verdict'] {
  if (fit.kind !== 'peak') return 'not-known';
  if (fit.lossNowUpper95Db <= targetDb) return 'within-target';
  return fit.lossNowDb > targetDb ? 'over-target' : 'not-known';
}
