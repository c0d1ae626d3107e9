/** Findings on channel stacking, on terrestrial signals, and on what comes by the inputs of switches. */

import type { JobFile } from '../file/jobFile.js';
import type { JobPlan } from '../plan/planJob.js';
import { tunerRange } from '../plan/tuning.js';
import { amount, type Finding, finding } from './finding.js';

/** Everything on the cable beside the planned levels themselves. */
export function cableFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  return [
    ...stackingFindings(job, plan),
    ...terrestrialFindings(plan),
    ...leakFindings(plan),
    ...inputSupplyFindings(plan),
  ];
}

/** Findings on user bands and on bands side by side. */
function stackingFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const { stacking } = plan;
  if (!stacking) return [];
  const found: Finding[] = [];
  const { lowestMHz, highestMHz } = tunerRange(job);
  for (const conflict of stacking.conflicts) {
    if (conflict.kind === 'outside-range') {
      const band = stacking.bands.find(({ userBand }) => String(userBand) === conflict.name);
      const low = (band?.centreMHz ?? 0) < (lowestMHz + highestMHz) / 2;
      const said = job.tuner?.[low ? 'lowestMHz' : 'highestMHz'] !== undefined;
      found.push(
        finding(
          'user-band-outside-receiver',
          said ? 'does-not-conform' : 'undecided',
          { names: [conflict.name] },
          amount(conflict.beyondMHz, 'MHz'),
          said ? 'give-another-user-band' : 'give-the-receivers-range',
        ),
      );
    } else
      found.push(
        finding(
          'user-bands-collide',
          'does-not-conform',
          {
            names:
              conflict.kind === 'overlap' ? [conflict.first, conflict.second] : [conflict.name],
          },
          conflict.kind === 'overlap' ? amount(conflict.overlapMHz, 'MHz') : null,
          'give-another-user-band',
        ),
      );
  }
  for (const testPoint of stacking.withoutBand)
    found.push(
      finding(
        'receiver-without-user-band',
        'does-not-conform',
        { testPoint },
        null,
        'give-another-user-band',
      ),
    );
  for (const { carriers, overlapMHz } of stacking.collisions)
    found.push(
      finding(
        'carriers-collide-on-cable',
        'does-not-conform',
        { names: carriers },
        amount(overlapMHz, 'MHz'),
        'change-the-distribution',
      ),
    );
  // Where carriers are planned at the receiver, its window has been held against them.
  for (const { receiver, kind, ...band } of stacking.bands)
    if (
      receiver !== null &&
      band.levelDbuv !== null &&
      (kind === 'too-low' || kind === 'too-high') &&
      !plan.receivers.some((each) => each.receiver === receiver)
    )
      found.push(
        finding(
          kind === 'too-low' ? 'receiver-level-too-low' : 'receiver-level-too-high',
          'does-not-conform',
          { testPoint: receiver },
          amount(band.levelDbuv, 'dBuV', kind === 'too-low' ? band.minimumDbuv : band.maximumDbuv),
          'change-the-distribution',
        ),
      );
  return found;
}

function terrestrialFindings(plan: JobPlan): readonly Finding[] {
  return plan.inputs.terrestrial.flatMap((at): Finding[] => {
    if (at.kind !== 'too-low' && at.kind !== 'too-high') return [];
    const low = at.kind === 'too-low';
    const level = (low ? Math.min : Math.max)(at.lowEndDbuv, at.highEndDbuv);
    return [
      finding(
        'terrestrial-level-outside-limit',
        'does-not-conform',
        { testPoint: at.outlet },
        amount(level, 'dBuV', low ? at.minimumDbuv : at.maximumDbuv),
        'change-the-distribution',
      ),
    ];
  });
}

/** Interference 10 dB under the noise that the mode bears costs 0.4 dB of margin; less than that is left alone. */
const HARMLESS_DB = 10;

function leakFindings(plan: JobPlan): readonly Finding[] {
  return plan.inputs.leaks.flatMap((leak): Finding[] => {
    const { requiredDb, wantedAboveUnwantedDb: aboveDb } = leak;
    if (requiredDb === null || aboveDb >= requiredDb + HARMLESS_DB) return [];
    return [
      finding(
        'input-leaks',
        aboveDb < requiredDb ? 'does-not-conform' : 'undecided',
        {
          testPoint: leak.outlet,
          slot: leak.slot,
          carrier: leak.carrier,
          names: [leak.unwanted],
        },
        amount(aboveDb, 'dB', requiredDb),
        'change-the-distribution',
      ),
    ];
  });
}

const SUPPLY_CODES = {
  'too-low': 'supply-too-low',
  'too-much-current': 'supply-too-much-current',
  blocked: 'supply-blocked',
} as const;

function inputSupplyFindings(plan: JobPlan): readonly Finding[] {
  return plan.inputs.supplies.flatMap((fed): Finding[] => {
    if (fed.kind === 'enough' || fed.kind === 'not-fed') return [];
    return [
      finding(
        SUPPLY_CODES[fed.kind],
        'does-not-conform',
        { ...(fed.switch === null ? {} : { part: fed.switch }), names: [fed.source] },
        fed.kind === 'too-much-current'
          ? amount(fed.currentA, 'A')
          : fed.voltageV === null
            ? null
            : amount(fed.voltageV, 'V'),
        fed.kind === 'too-low' ? 'raise-the-supply' : 'change-the-distribution',
      ),
    ];
  });
}
