/** Findings on frequencies, promise, planned levels, amplifiers, supply, receivers and what is sent. */

import type { JobFile } from '../file/jobFile.js';
import { branchesOf } from '../plan/branches.js';
import type { JobPlan } from '../plan/planJob.js';
import { REQUIRED_PROBABILITY } from '../plan/signals.js';
import { servedBy } from '../plan/tuning.js';
import type { ReadingVerdict } from '../results/verdicts.js';
import { amount, type Finding, finding } from './finding.js';

/** How far a given frequency on the cable may be off the one worked out, in MHz: half a step of common receivers (practice of the trade). */
const SAME_FREQUENCY_MHZ = 1;

/** Findings on the way of each carrier from the sky to the cable. */
export function tuningFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const found: Finding[] = [];
  for (const tuned of plan.tuning) {
    const where = { slot: tuned.slot, carrier: tuned.carrier };
    if (job.units && tuned.unit === null) {
      found.push(
        finding('no-unit-for-carrier', 'does-not-conform', where, null, 'use-another-unit'),
      );
      continue;
    }
    const { intermediateFrequencyMHz, givenFrequencyMHz, localOscillatorGHz } = tuned;
    if (intermediateFrequencyMHz === null) continue;
    if (
      localOscillatorGHz !== null &&
      givenFrequencyMHz !== null &&
      Math.abs(givenFrequencyMHz - intermediateFrequencyMHz) > SAME_FREQUENCY_MHZ
    )
      found.push(
        finding(
          'intermediate-frequency-wrong',
          'does-not-conform',
          { ...where, unit: tuned.unit ?? '' },
          amount(givenFrequencyMHz, 'MHz', intermediateFrequencyMHz),
          'correct-the-frequency',
        ),
      );
    if (intermediateFrequencyMHz < 5 || intermediateFrequencyMHz > 3000)
      found.push(
        finding(
          'intermediate-frequency-outside',
          'does-not-conform',
          { ...where, unit: tuned.unit ?? '' },
          amount(intermediateFrequencyMHz, 'MHz', intermediateFrequencyMHz < 5 ? 5 : 3000),
          'use-another-unit',
        ),
      );
    const slot = job.slots.find(({ name }) => name === tuned.slot);
    const carrier = slot?.carriers?.find(({ name }) => name === tuned.carrier);
    if (
      slot &&
      carrier &&
      job.distribution &&
      branchesOf(job, carrier, servedBy(job, slot, carrier)).length === 0
    )
      found.push(
        finding('no-line-for-carrier', 'does-not-conform', where, null, 'change-the-distribution'),
      );
  }
  return found;
}

/** Findings on the promise. */
export function promiseFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const wanted = job.target?.requiredProbabilityRatio ?? REQUIRED_PROBABILITY;
  return plan.signals.flatMap(({ slot, carrier, promise, outsideStatedRange }): Finding[] => {
    const where = { slot, carrier };
    const found: Finding[] = [];
    if (promise && promise.fadedMarginDb < 0)
      found.push(
        finding(
          'promise-missed',
          'does-not-conform',
          where,
          amount(promise.exceededPercent, '%', promise.promisedPercent),
          'larger-reflector',
        ),
      );
    else if (promise && promise.keptProbabilityRatio < wanted)
      found.push(
        finding(
          'promise-doubtful',
          'undecided',
          where,
          amount(promise.keptProbabilityRatio, '', wanted),
          'larger-reflector',
        ),
      );
    if (outsideStatedRange.length > 0)
      found.push(
        finding(
          'outside-stated-range',
          'note',
          { ...where, names: [...new Set(outsideStatedRange)] },
          null,
          'none',
        ),
      );
    return found;
  });
}

/** Findings on planned levels against the job's limits; where a reading conforms at the place it speaks instead. */
export function levelFindings(
  plan: JobPlan,
  verdicts: readonly ReadingVerdict[],
): readonly Finding[] {
  const readWell = (
    place: { readonly outlet: string; readonly slot: string; readonly carrier: string },
    quantity: ReadingVerdict['quantity'],
  ) =>
    verdicts.some(
      (verdict) =>
        verdict.testPoint === place.outlet &&
        verdict.slot === place.slot &&
        verdict.carrier === place.carrier &&
        verdict.quantity === quantity &&
        verdict.decision?.verdict === 'conforms',
    );
  return plan.outlets.flatMap((outlet): Finding[] => {
    const where = { testPoint: outlet.outlet, slot: outlet.slot, carrier: outlet.carrier };
    const { minimumDbuv, maximumDbuv, minimumRatioDb } = outlet.limits;
    const { levelDbuv, carrierToNoiseDb } = outlet;
    const limit =
      minimumDbuv !== null && levelDbuv < minimumDbuv
        ? minimumDbuv
        : maximumDbuv !== null && levelDbuv > maximumDbuv
          ? maximumDbuv
          : null;
    const found: Finding[] = [];
    if (limit !== null)
      found.push(
        finding(
          'planned-level-outside-limit',
          readWell(outlet, 'level') ? 'note' : 'does-not-conform',
          where,
          amount(levelDbuv, 'dBuV', limit),
          'change-the-distribution',
        ),
      );
    if (minimumRatioDb !== null && carrierToNoiseDb < minimumRatioDb)
      found.push(
        finding(
          'planned-ratio-below-limit',
          readWell(outlet, 'carrier-to-noise') ? 'note' : 'does-not-conform',
          where,
          amount(carrierToNoiseDb, 'dB', minimumRatioDb),
          'change-the-distribution',
        ),
      );
    return found;
  });
}

/** Findings on amplifiers, supply and receivers. */
export function distributionFindings(plan: JobPlan): readonly Finding[] {
  const found: Finding[] = [];
  for (const { name, headroomDb } of plan.amplifiers)
    if (headroomDb !== null && headroomDb < 0)
      found.push(
        finding(
          'amplifier-overdriven',
          'does-not-conform',
          { part: name },
          amount(-headroomDb, 'dB', 0),
          'lower-the-gain',
        ),
      );
  for (const supply of plan.supplies) {
    const where = {
      testPoint: supply.testPoint,
      unit: supply.unit,
      ...(supply.at === null ? {} : { part: supply.at }),
    };
    const volts = supply.unitVoltageV === null ? null : amount(supply.unitVoltageV, 'V');
    if (supply.kind === 'too-low')
      found.push(finding('supply-too-low', 'does-not-conform', where, volts, 'raise-the-supply'));
    if (supply.kind === 'misread')
      found.push(finding('supply-misread', 'does-not-conform', where, volts, 'raise-the-supply'));
    if (supply.kind === 'blocked')
      found.push(
        finding('supply-blocked', 'does-not-conform', where, null, 'change-the-distribution'),
      );
    if (supply.kind === 'too-much-current')
      found.push(
        finding(
          'supply-too-much-current',
          'does-not-conform',
          where,
          amount(supply.currentA, 'A'),
          'change-the-distribution',
        ),
      );
  }
  for (const { receiver, slot, carrier, kind, ...level } of plan.receivers)
    if (kind !== 'inside')
      found.push(
        finding(
          kind === 'too-low' ? 'receiver-level-too-low' : 'receiver-level-too-high',
          'does-not-conform',
          { testPoint: receiver, slot, carrier },
          amount(
            level.levelDbuv,
            'dBuV',
            kind === 'too-low' ? level.minimumDbuv : level.maximumDbuv,
          ),
          'change-the-distribution',
        ),
      );
  return found;
}

/** Findings on what a two-way terminal sends. */
export function transmitFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  const found: Finding[] = [];
  for (const sent of plan.transmit) {
    const given = job.transmit?.find(
      (each) => each.slot === sent.slot && each.name === sent.carrier,
    );
    const where = { slot: sent.slot, carrier: sent.carrier };
    const { minimumEirpDbw, maximumEirpDbw, minimumBackOffDb } = given ?? {};
    if (minimumEirpDbw !== undefined && sent.eirpDbw < minimumEirpDbw)
      found.push(
        finding(
          'transmit-eirp-too-low',
          'does-not-conform',
          where,
          amount(sent.eirpDbw, 'dBW', minimumEirpDbw),
          'raise-the-power',
        ),
      );
    if (maximumEirpDbw !== undefined && sent.eirpDbw > maximumEirpDbw)
      found.push(
        finding(
          'transmit-eirp-too-high',
          'does-not-conform',
          where,
          amount(sent.eirpDbw, 'dBW', maximumEirpDbw),
          'reduce-the-power',
        ),
      );
    if (minimumBackOffDb !== undefined && sent.outputBackOffDb < minimumBackOffDb)
      found.push(
        finding(
          'transmit-back-off-too-small',
          'does-not-conform',
          where,
          amount(sent.outputBackOffDb, 'dB', minimumBackOffDb),
          'reduce-the-power',
        ),
      );
    if (sent.mask && sent.mask.headroomDb < 0)
      found.push(
        finding(
          'transmit-mask-exceeded',
          'does-not-conform',
          { ...where, names: [`${sent.mask.offAxisDeg} deg`] },
          amount(-sent.mask.headroomDb, 'dB', 0),
          'reduce-the-power',
        ),
      );
    else if (!sent.mask)
      found.push(
        finding(
          'field-not-given',
          'incomplete',
          {
            ...where,
            field: `transmit[${job.transmit?.indexOf(given as never)}].${
              given?.offAxisMask ? 'symbolRateMBd' : 'offAxisMask'
            }`,
          },
          null,
          'give-the-field',
        ),
      );
  }
  return found;
}

/** What could not be said for want of a field, and what nobody promised. */
export function missingFindings(plan: JobPlan): readonly Finding[] {
  const fields = new Map<string, Finding>();
  for (const { section, field, slot, carrier } of plan.notSaid) {
    // A supply that nobody described, and the lean of a face, are said to be unknown, not asked for.
    const asked =
      section !== 'supply' &&
      section !== 'view' &&
      section !== 'mount' &&
      section !== 'transmit' &&
      section !== 'north';
    if (!asked || fields.has(field)) continue;
    fields.set(
      field,
      finding(
        'field-not-given',
        'incomplete',
        {
          field,
          ...(slot === null ? {} : { slot }),
          ...(carrier === null ? {} : { carrier }),
        },
        null,
        field === 'limits' ? 'set-a-limit' : 'give-the-field',
      ),
    );
  }
  return [...fields.values()];
}
