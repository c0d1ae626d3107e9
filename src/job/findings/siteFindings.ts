/** Findings on directions, view, north and mounts. */

import type { JobFile } from '../file/jobFile.js';
import type { JobPlan } from '../plan/planJob.js';
import { amount, type Finding, finding } from './finding.js';

/** Findings on where the slots stand and whether they are seen. */
export function viewFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const found: Finding[] = [];
  for (const { slot, kind, elevationDeg } of plan.directions)
    if (kind === 'below-horizon')
      found.push(
        finding(
          'slot-below-horizon',
          'does-not-conform',
          { slot },
          amount(elevationDeg, 'deg', 0),
          'choose-another-slot',
        ),
      );
  for (const view of plan.views) {
    const where = { slot: view.slot, mount: view.mount };
    const edge = view.edgeClearanceM;
    const worst = view.worstEdgeClearanceM;
    if (view.kind === 'blocked')
      found.push(
        finding(
          'view-blocked',
          'does-not-conform',
          where,
          edge === null ? null : amount(edge, 'm', 0),
          'choose-another-place',
        ),
      );
    if (view.kind === 'doubtful')
      found.push(
        finding(
          'view-doubtful',
          'undecided',
          where,
          worst === null ? null : amount(worst, 'm', 0),
          'sight-again',
        ),
      );
    if (view.kind === 'distance-needed')
      found.push(
        finding(
          'view-distance-needed',
          'undecided',
          where,
          view.freeBeyondM === null ? null : amount(view.freeBeyondM, 'm'),
          'measure-the-distance',
        ),
      );
    if (view.kind === 'not-sighted')
      found.push(
        finding(
          'view-not-sighted',
          'incomplete',
          {
            ...where,
            field: job.horizon?.north === 'magnetic' && !plan.north ? 'date' : 'horizon.samples',
          },
          null,
          'sight-the-horizon',
        ),
      );
  }
  const compass = job.horizon?.north === 'magnetic' && job.horizon.samples.length > 0;
  if (plan.north && plan.north.compassZone !== 'usable')
    found.push(
      finding(
        'compass-not-usable',
        compass ? 'undecided' : 'note',
        {},
        amount(plan.north.declinationStandardUncertaintyDeg, 'deg'),
        'use-the-sun',
      ),
    );
  if (plan.north && plan.north.validity !== 'valid')
    found.push(
      finding(
        'declination-outside-dates',
        compass ? 'undecided' : 'note',
        { field: 'date' },
        null,
        'use-the-sun',
      ),
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
