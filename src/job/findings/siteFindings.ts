/** Findings on directions, view, north and mounts. */

import type { JobFile } from '../file/jobFile.js';
import type { JobPlan } from '../plan/planJob.js';
import type { ViewPlan } from '../plan/views.js';
import { amount, type Finding, finding } from './finding.js';

/** Findings on where the slots stand and whether they are seen. */
export function viewFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const below = plan.directions
    .filter(({ kind }) => kind === 'below-horizon')
    .map(({ slot, elevationDeg }) =>
      finding(
        'slot-below-horizon',
        'does-not-conform',
        { slot },
        amount(elevationDeg, 'deg', 0),
        'choose-another-slot',
      ),
    );
  const views = plan.views.flatMap((view) => viewFinding(job, plan, view) ?? []);
  return [...below, ...views, ...northFindings(job, plan)];
}

/** What stands against one view, if anything does. */
function viewFinding(job: JobFile, plan: JobPlan, view: ViewPlan): Finding | undefined {
  const where = { slot: view.slot, mount: view.mount };
  const metres = (value: number | null, limit?: number) =>
    value === null ? null : amount(value, 'm', limit);
  switch (view.kind) {
    case 'blocked':
      return finding(
        'view-blocked',
        'does-not-conform',
        where,
        metres(view.edgeClearanceM, 0),
        'choose-another-place',
      );
    case 'doubtful':
      return finding(
        'view-doubtful',
        'undecided',
        where,
        metres(view.worstEdgeClearanceM, 0),
        'sight-again',
      );
    case 'distance-needed':
      return finding(
        'view-distance-needed',
        'undecided',
        where,
        metres(view.freeBeyondM),
        'measure-the-distance',
      );
    case 'not-sighted': {
      const field = job.horizon?.north === 'magnetic' && !plan.north ? 'date' : 'horizon.samples';
      return finding(
        'view-not-sighted',
        'incomplete',
        { ...where, field },
        null,
        'sight-the-horizon',
      );
    }
    default:
      return undefined;
  }
}

/** Findings on north: they weigh where the horizon was sighted by compass. */
function northFindings(job: JobFile, { north }: JobPlan): readonly Finding[] {
  if (!north) return [];
  const compass = job.horizon?.north === 'magnetic' && job.horizon.samples.length > 0;
  const severity = compass ? 'undecided' : 'note';
  const found: Finding[] = [];
  if (north.compassZone !== 'usable')
    found.push(
      finding(
        'compass-not-usable',
        severity,
        {},
        amount(north.declinationStandardUncertaintyDeg, 'deg'),
        'use-the-sun',
      ),
    );
  if (north.validity !== 'valid')
    found.push(
      finding('declination-outside-dates', severity, { field: 'date' }, null, 'use-the-sun'),
    );
  return found;
}

/** Findings on the mounts. */
export function mountFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const found: Finding[] = [];
  const targetDb = job.target?.pointingLossDb;
  plan.mounts.forEach((mount, index) => {
    const at = { mount: mount.mount };
    if (mount.reflector === null && mount.kind !== 'no-slot')
      found.push(
        finding(
          'mount-not-given',
          'incomplete',
          { ...at, field: `mounts[${index}].reflector.diameterM` },
          null,
          'give-the-field',
        ),
      );
    if (mount.kind === 'too-far-apart')
      found.push(
        finding(
          'slots-too-far-apart',
          'does-not-conform',
          { ...at, names: mount.slots },
          null,
          'use-another-mount',
        ),
      );
    if (mount.kind === 'several-slots')
      for (const { slots, overlapMm } of mount.collisions)
        found.push(
          finding(
            'feeds-collide',
            'does-not-conform',
            { ...at, names: slots },
            amount(overlapMm, 'mm', 0),
            'move-the-feeds',
          ),
        );
    if (mount.kind === 'polar')
      for (const stop of mount.stops)
        if (!stop.reached)
          found.push(
            finding(
              'motor-does-not-reach',
              'does-not-conform',
              { ...at, slot: stop.slot },
              amount(stop.beyondDeg, 'deg', 0),
              'use-another-mount',
            ),
          );
    const own = mount.kind === 'polar' || mount.kind === 'tracking';
    for (const { slot, carrier, lossDb, beyondModel } of mount.losses) {
      const where = { ...at, slot, carrier };
      if (beyondModel)
        found.push(
          finding(
            'loss-beyond-model',
            'undecided',
            where,
            amount(lossDb, 'dB', 3),
            'use-another-mount',
          ),
        );
      if (own && targetDb !== undefined && lossDb > targetDb)
        found.push(
          finding(
            'mount-error-too-large',
            'does-not-conform',
            where,
            amount(lossDb, 'dB', targetDb),
            'use-another-mount',
          ),
        );
    }
  });
  return found;
}
