/** Findings on peaking and polarization. */

import { rotationIsolationDb } from '../../peaking/index.js';
import type { JobFile } from '../file/jobFile.js';
import { limitFor } from '../plan/limits.js';
import type { JobPlan } from '../plan/planJob.js';
import { hasLinear } from '../plan/tuning.js';
import type { PeakingResult } from '../results/peaking.js';
import type { ReadingVerdict } from '../results/verdicts.js';
import { amount, type Finding, finding } from './finding.js';

/** Findings on each axis, both together, and axes that were not peaked. */
export function pointingFindings(
  job: JobFile,
  plan: JobPlan,
  peaking: readonly PeakingResult[],
): readonly Finding[] {
  const targetDb = job.target?.pointingLossDb;
  const found = peaking.flatMap((result) => axisFindings(result, targetDb));
  for (const mount of plan.mounts) {
    if (mount.kind === 'no-slot') continue;
    const of = peaking.filter((result) => result.mount === mount.mount);
    for (const axis of ['azimuth', 'elevation'] as const)
      if (!of.some((result) => result.axis === axis))
        found.push(
          finding(
            'axis-not-peaked',
            'incomplete',
            { mount: mount.mount, axis },
            null,
            'peak-the-axis',
          ),
        );
    if (targetDb !== undefined)
      for (const slot of new Set(of.map((result) => result.slot)))
        found.push(
          ...together(
            of.filter((result) => result.slot === slot),
            targetDb,
          ),
        );
  }
  return found;
}

function axisFindings(result: PeakingResult, targetDb: number | undefined): Finding[] {
  const where = {
    mount: result.mount,
    axis: result.axis,
    slot: result.slot,
    carrier: result.carrier,
    visit: result.visit,
  };
  const { lossDb, lossUpper95Db, theoreticalBeamwidthDeg: theory } = result;
  if (result.mainLobe === 'refuted')
    return [
      finding(
        'not-main-lobe',
        'does-not-conform',
        where,
        result.measuredBeamwidthDeg === null
          ? null
          : amount(result.measuredBeamwidthDeg, 'deg', theory),
        'find-the-main-lobe',
      ),
    ];
  if (lossUpper95Db === null)
    return [finding('peak-not-found', 'undecided', where, null, 'peak-again')];
  const found: Finding[] = [];
  if (result.mainLobe === 'not-proven' && theory !== null)
    found.push(
      finding(
        'main-lobe-not-proven',
        'undecided',
        where,
        result.measuredBeamwidthDeg === null
          ? null
          : amount(result.measuredBeamwidthDeg, 'deg', theory),
        'peak-again',
      ),
    );
  if (targetDb === undefined) return found;
  if (lossDb !== null && lossDb > targetDb)
    found.push(
      finding(
        'pointing-loss',
        'does-not-conform',
        where,
        amount(lossDb, 'dB', targetDb),
        'peak-again',
      ),
    );
  else if (lossUpper95Db > targetDb)
    found.push(
      finding(
        'pointing-loss',
        'undecided',
        where,
        amount(lossUpper95Db, 'dB', targetDb),
        'peak-again',
      ),
    );
  else if (result.fit?.kind === 'peak' && result.fit.coverage === 'not-assured')
    found.push(
      finding(
        'peak-not-assured',
        'undecided',
        where,
        amount(lossUpper95Db, 'dB', targetDb),
        'peak-again',
      ),
    );
  return found;
}

/** Both axes of one slot together, where each alone is inside the target. */
function together(results: readonly PeakingResult[], targetDb: number): readonly Finding[] {
  if (results.length < 2 || results.some(({ verdict }) => verdict !== 'within-target')) return [];
  const sum = (values: readonly (number | null)[]) =>
    values.reduce<number>((total, value) => total + (value ?? 0), 0);
  const lossDb = sum(results.map((result) => result.lossDb));
  // Bounds of 95 % of two axes are seldom reached at once: their parts above the losses add in squares.
  const spreadDb = Math.hypot(
    ...results.map((result) => (result.lossUpper95Db ?? 0) - (result.lossDb ?? 0)),
  );
  const [first] = results as [PeakingResult];
  const where = { mount: first.mount, slot: first.slot };
  if (lossDb > targetDb)
    return [
      finding(
        'pointing-loss-together',
        'does-not-conform',
        where,
        amount(lossDb, 'dB', targetDb),
        'peak-again',
      ),
    ];
  return lossDb + spreadDb > targetDb
    ? [
        finding(
          'pointing-loss-together',
          'undecided',
          where,
          amount(lossDb + spreadDb, 'dB', targetDb),
          'peak-again',
        ),
      ]
    : [];
}

/** Isolation against the crossed polarization that a feed must keep where the job sets no limit, in dB (practice of the trade). */
const USUAL_ISOLATION_DB = 25;

/** Findings on polarization: feeds left turned off, isolation not proven. */
export function polarizationFindings(
  job: JobFile,
  plan: JobPlan,
  verdicts: readonly ReadingVerdict[],
): readonly Finding[] {
  const found: Finding[] = [];
  const turns = new Map<
    string,
    { readonly turnDeg: number; readonly standardUncertaintyDeg: number }
  >();
  for (const visit of job.visits)
    for (const { slot, turnDeg, standardUncertaintyDeg } of visit.feedTurns ?? [])
      turns.set(slot, { turnDeg, standardUncertaintyDeg: standardUncertaintyDeg ?? 1.5 });
  const feeds = plan.mounts.flatMap((mount) => ('feeds' in mount ? mount.feeds : []));
  for (const [slot, { turnDeg, standardUncertaintyDeg }] of turns) {
    const planned = feeds.find((feed) => feed.slot === slot)?.turnDeg ?? null;
    if (planned === null) continue;
    // A feed looks the same after half a turn; a quarter of a turn exchanges the two polarizations.
    const off = Math.abs(((((turnDeg - planned + 90) % 180) + 180) % 180) - 90);
    const limit = limitFor(job, 'cross-polar-isolation', 'antenna', slot);
    const wantedDb =
      limit?.quantity === 'cross-polar-isolation' ? limit.minimumDb : USUAL_ISOLATION_DB;
    const isolation = (degrees: number) =>
      degrees < 1e-6 ? Number.POSITIVE_INFINITY : rotationIsolationDb(Math.min(45, degrees));
    const read = verdicts.some(
      (verdict) =>
        verdict.slot === slot &&
        verdict.quantity === 'cross-polar-isolation' &&
        verdict.decision?.verdict === 'conforms',
    );
    const allowedDeg = (Math.atan(10 ** (-wantedDb / 20)) * 180) / Math.PI;
    const where = { slot };
    const size = amount(off, 'deg', allowedDeg, standardUncertaintyDeg);
    if (isolation(Math.max(0, off - 2 * standardUncertaintyDeg)) < wantedDb)
      found.push(
        finding(
          'feed-turned-off',
          read ? 'note' : 'does-not-conform',
          where,
          size,
          'turn-the-feed',
        ),
      );
    else if (isolation(off) < wantedDb)
      found.push(
        finding('feed-turned-off', read ? 'note' : 'undecided', where, size, 'turn-the-feed'),
      );
  }
  for (const { name } of job.slots) {
    if (!hasLinear(job, name)) continue;
    if (plan.directions.find(({ slot }) => slot === name)?.kind === 'below-horizon') continue;
    const read = verdicts.some(
      ({ slot, quantity }) => slot === name && quantity === 'cross-polar-isolation',
    );
    const limit = job.limits?.some(
      (each) =>
        each.quantity === 'cross-polar-isolation' &&
        (each.slot === undefined || each.slot === name),
    );
    // With a limit the coverage asks for the reading; without one it is worth knowing that nothing proves it.
    if (!read && !limit)
      found.push(
        finding(
          'polarization-not-proven',
          'note',
          { slot: name, field: 'limits' },
          null,
          'read-it',
        ),
      );
  }
  return found;
}
