/** Findings on what a receiver tunes over, on images, on mobile radio on the cable, and on local oscillators. */

import { exposedCarriers } from '../../ingress/index.js';
import type { JobFile } from '../file/jobFile.js';
import type { JobPlan } from '../plan/planJob.js';
import { occupiedMHz, tunerRange } from '../plan/tuning.js';
import { amount, type Finding, finding } from './finding.js';

/** Findings on frequencies on the cable that a receiver cannot take or mistakes for others. */
export function rangeFindings(job: JobFile, plan: JobPlan): readonly Finding[] {
  return [
    ...outOfRange(job, plan),
    ...images(job, plan),
    ...mobileBands(plan),
    ...oscillators(job, plan),
  ];
}

/** Carriers that lie outside what the receivers tune over; in doubt where nobody said what that is. */
function outOfRange(job: JobFile, plan: JobPlan): readonly Finding[] {
  const { lowestMHz, highestMHz } = tunerRange(job);
  return plan.tuning.flatMap((tuned): Finding[] => {
    const { inRange, intermediateFrequencyMHz: placeMHz, slot, carrier, unit } = tuned;
    if (inRange === null || inRange === 'inside' || placeMHz === null) return [];
    // Beyond 5 to 3000 MHz it is a finding of its own.
    if (placeMHz < 5 || placeMHz > 3000) return [];
    const low = Math.abs(placeMHz - lowestMHz) < Math.abs(placeMHz - highestMHz);
    const said = job.tuner?.[low ? 'lowestMHz' : 'highestMHz'] !== undefined;
    return [
      finding(
        inRange === 'outside' ? 'carrier-outside-receiver' : 'carrier-cut-off-by-receiver',
        said ? 'does-not-conform' : 'undecided',
        { slot, carrier, ...(unit === null ? {} : { unit }) },
        amount(placeMHz, 'MHz', low ? lowestMHz : highestMHz),
        said ? 'use-another-unit' : 'give-the-receivers-range',
      ),
    ];
  });
}

interface InTheSky {
  readonly slot: string;
  readonly carrier: string;
  readonly frequencyGHz: number;
  readonly widthMHz: number;
}

/** What the antenna of a slot takes in or sends: every carrier of the same mount. */
function besides(job: JobFile, slot: string): readonly InTheSky[] {
  const slots = job.mounts.find((mount) => mount.slots.includes(slot))?.slots ?? [];
  const received = job.slots
    .filter(({ name }) => slots.includes(name))
    .flatMap(({ name, carriers = [] }) =>
      carriers.map((each) => ({ ...each, slot: name, carrier: each.name })),
    );
  const sent = (job.transmit ?? [])
    .filter((each) => slots.includes(each.slot))
    .map((each) => ({ ...each, carrier: each.name }));
  return [...received, ...sent].map((each) => ({
    slot: each.slot,
    carrier: each.carrier,
    frequencyGHz: each.frequencyGHz,
    widthMHz: occupiedMHz(each) ?? 0,
  }));
}

/** Carriers on whose place on the cable another one of the antenna comes out too, from the other side of the oscillator. */
function images(job: JobFile, plan: JobPlan): readonly Finding[] {
  return plan.tuning.flatMap(({ slot, carrier, unit, imageFrequencyGHz, occupiedMHz: width }) => {
    if (imageFrequencyGHz === null) return [];
    return besides(job, slot).flatMap((other): Finding[] => {
      const overlapMHz =
        ((width ?? 0) + other.widthMHz) / 2 -
        1000 * Math.abs(other.frequencyGHz - imageFrequencyGHz);
      if (overlapMHz <= 0) return [];
      return [
        finding(
          'image-conflict',
          'undecided',
          { slot, carrier, ...(unit === null ? {} : { unit }), names: [other.carrier] },
          amount(overlapMHz, 'MHz'),
          'put-a-filter',
        ),
      ];
    });
  });
}

/** Carriers that phones and masts can disturb, where somebody sends there: by the cable, or by the antenna itself. */
function mobileBands(plan: JobPlan): readonly Finding[] {
  return plan.tuning.flatMap((tuned): Finding[] => {
    const { slot, carrier, unit, frequencyGHz, localOscillatorGHz, occupiedMHz: width } = tuned;
    if (localOscillatorGHz === null) return [];
    const exposures = exposedCarriers({
      // A carrier without a symbol rate still has a place: the narrowest that a band can cover.
      carriers: [{ name: carrier, frequencyGHz, bandwidthMHz: width ?? 1, localOscillatorGHz }],
    });
    return (['cable', 'unit'] as const).flatMap((way): Finding[] => {
      const [widest, ...others] = exposures.filter((each) => each.way === way);
      if (widest === undefined) return [];
      const names = [...new Set([widest, ...others].map(({ band }) => band))];
      return [
        finding(
          way === 'cable' ? 'mobile-band-on-cable' : 'mobile-band-in-beam',
          'note',
          { slot, carrier, ...(unit === null ? {} : { unit }), names },
          amount(widest.overlapMHz, 'MHz'),
          way === 'cable' ? 'screen-the-cable' : 'look-at-the-spectrum',
        ),
      ];
    });
  });
}

/** Local oscillators that may be further off than a receiver looks for a carrier. */
function oscillators(job: JobFile, plan: JobPlan): readonly Finding[] {
  const lockRangeMHz = job.tuner?.lockRangeMHz;
  const used = new Map(
    plan.tuning.flatMap(({ unit, oscillatorErrorKHz }) =>
      unit === null || oscillatorErrorKHz === null ? [] : [[unit, oscillatorErrorKHz] as const],
    ),
  );
  return [...used].flatMap(([unit, errorKHz]): Finding[] => {
    if (lockRangeMHz === undefined)
      return [
        finding(
          'field-not-given',
          'note',
          { unit, field: 'tuner.lockRangeMHz' },
          null,
          'give-the-field',
        ),
      ];
    if (errorKHz <= 1000 * lockRangeMHz) return [];
    return [
      finding(
        'oscillator-beyond-lock-range',
        'does-not-conform',
        { unit },
        amount(errorKHz, 'kHz', 1000 * lockRangeMHz),
        'use-another-unit',
      ),
    ];
  });
}
