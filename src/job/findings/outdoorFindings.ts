/** Findings on the commissioning of what is sent, and on the wind. */

import { decideConformity } from '../../acceptance/index.js';
import type { JobFile } from '../file/jobFile.js';
import { limitEnds, limitFor } from '../plan/limits.js';
import type { JobPlan } from '../plan/planJob.js';
import type { CommissioningPlan } from '../sent/commissioningPlan.js';
import { amount, type Finding, finding } from './finding.js';

/** How far the amplifier's output by its drive may be off the planned one in dB: reading of a power meter (practice of the trade). */
const DRIVE_WITHIN_DB = 1;

/** Findings on drive, compression, masks, power control and the cross-polar test. */
export function commissioningFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  return (plan.commissioning?.carriers ?? []).flatMap((sent) => [
    ...driveFindings(sent),
    ...maskFindings(sent),
    ...crossPolarFindings(job, sent),
  ]);
}

function driveFindings(sent: CommissioningPlan): readonly Finding[] {
  const where = { slot: sent.slot, carrier: sent.carrier };
  const found: Finding[] = [];
  const { plannedOutputDbm, driveOutputDbm, compression, powerControl } = sent;
  const placeMHz = sent.intermediateFrequencyMHz;
  if (placeMHz !== null && (placeMHz < 5 || placeMHz > 3000))
    found.push(
      finding(
        'intermediate-frequency-outside',
        'does-not-conform',
        where,
        amount(placeMHz, 'MHz', placeMHz < 5 ? 5 : 3000),
        'correct-the-frequency',
      ),
    );
  const offDb = driveOutputDbm === null ? 0 : driveOutputDbm - plannedOutputDbm;
  if (driveOutputDbm !== null && Math.abs(offDb) > DRIVE_WITHIN_DB)
    found.push(
      finding(
        'transmit-drive-wrong',
        offDb > 0 ? 'does-not-conform' : 'undecided',
        where,
        amount(driveOutputDbm, 'dBm', plannedOutputDbm),
        offDb > 0 ? 'reduce-the-power' : 'raise-the-power',
      ),
    );
  const compressedDbm = compression?.outputDbm ?? null;
  if (compressedDbm !== null && plannedOutputDbm > compressedDbm)
    found.push(
      finding(
        'transmit-compressed',
        'does-not-conform',
        where,
        amount(plannedOutputDbm, 'dBm', compressedDbm),
        'reduce-the-power',
      ),
    );
  if (powerControl && powerControl.leftDb > 0)
    found.push(
      finding(
        'uplink-fade-left',
        'undecided',
        where,
        amount(powerControl.leftDb, 'dB'),
        'larger-reflector',
      ),
    );
  return found;
}

function maskFindings(sent: CommissioningPlan): readonly Finding[] {
  const where = { slot: sent.slot, carrier: sent.carrier };
  return sent.masks.flatMap(({ name, marginDb, offAxisDeg, status }): Finding[] => {
    if (marginDb === null)
      return [
        finding(
          'transmit-mask-not-judged',
          'incomplete',
          { ...where, names: [name] },
          null,
          'none',
        ),
      ];
    if (marginDb >= 0) return [];
    return [
      finding(
        'transmit-mask-exceeded',
        // A mask from memory is to be read before anyone acts on it.
        status === 'read' ? 'does-not-conform' : 'undecided',
        { ...where, names: [name, `${Number((offAxisDeg ?? 0).toFixed(1))} deg`] },
        amount(-marginDb, 'dB', 0),
        'reduce-the-power',
      ),
    ];
  });
}

function crossPolarFindings(job: JobFile, sent: CommissioningPlan): readonly Finding[] {
  const read = sent.crossPolar;
  const limit = limitFor(job, 'cross-polar-isolation', 'antenna', sent.slot);
  const lowerLimit = limit && limitEnds(limit).lower;
  if (!read || lowerLimit === undefined) return [];
  const where = {
    slot: sent.slot,
    carrier: sent.carrier,
    testPoint: 'antenna',
    quantity: 'cross-polar-isolation' as const,
  };
  if (read.kind === 'at-least')
    return read.isolationDb >= lowerLimit
      ? []
      : [
          finding(
            'cross-polar-near-noise',
            'undecided',
            where,
            amount(read.isolationDb, 'dB', lowerLimit),
            'raise-the-test-carrier',
          ),
        ];
  const { verdict, conformityProbabilityRatio } = decideConformity({
    reading: read.isolationDb,
    // No test is without doubt; the decision asks for one above 0.
    standardUncertainty: Math.max(0.01, read.standardUncertaintyDb ?? 0),
    lowerLimit,
  });
  if (verdict === 'conforms') return [];
  return [
    verdict === 'does-not-conform'
      ? finding(
          'reading-outside-limit',
          'does-not-conform',
          where,
          amount(read.isolationDb, 'dB', lowerLimit, read.standardUncertaintyDb),
          'find-the-cause',
        )
      : finding(
          'reading-undecided',
          'undecided',
          where,
          amount(conformityProbabilityRatio, '', 0.95),
          'read-again',
        ),
  ];
}

/** Findings on the wind: what it costs in pointing, and where nothing is told. Never that something bears it. */
export function windFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const targetDb = job.target?.pointingLossDb;
  return plan.wind.flatMap((wind): Finding[] => {
    const where = { mount: wind.mount };
    if (wind.kind === 'outside-stated-range')
      return [
        finding(
          'wind-outside-stated-range',
          'note',
          { ...where, names: [wind.field] },
          null,
          'ask-an-engineer',
        ),
      ];
    const { pointing, footStressMPa } = wind;
    const loss = pointing?.lossDb ?? 0;
    const found: Finding[] = [
      finding('wind-load-for-engineer', 'note', where, null, 'ask-an-engineer'),
    ];
    if (pointing && targetDb !== undefined && loss > targetDb)
      found.push(
        finding(
          'wind-costs-pointing',
          'undecided',
          where,
          amount(loss, 'dB', targetDb),
          'use-a-stiffer-mast',
        ),
      );
    const tube = job.mounts.find(({ name }) => name === wind.mount)?.mast?.wallM;
    if (tube !== undefined && (footStressMPa === null || pointing === null))
      found.push(
        finding(
          'wind-outside-stated-range',
          'note',
          { ...where, names: ['mast'] },
          null,
          'ask-an-engineer',
        ),
      );
    return found;
  });
}
