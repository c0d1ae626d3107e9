/** Names of a job that point at each other, and values that must agree: every fault, by its path. */

import { DomainError } from '../../errors.js';
import { cableReferences } from './cableReferences.js';
import { distribution } from './distributionReferences.js';
import type { JobFile } from './jobFile.js';
import { outdoorReferences } from './outdoorReferences.js';
import { mounts, slots, transmits, units } from './planReferences.js';
import type { Fault } from './referenceChecks.js';
import { limits, visits } from './visitReferences.js';

/**
 * All faults of the references.
 *
 * @param sound  Whether the schema found nothing wrong; otherwise what cannot be checked is left out.
 */
export function referenceFaults(job: JobFile, sound: boolean): readonly DomainError[] {
  const faults: DomainError[] = [];
  const fault: Fault = (parameter, received, allowed, slip) => {
    faults.push(new DomainError({ code: 'inconsistent', parameter, received, allowed, slip }));
  };
  const checks = [
    slots,
    mounts,
    units,
    distribution,
    cableReferences,
    outdoorReferences,
    transmits,
    limits,
    visits,
  ];
  for (const check of checks)
    try {
      check(job, fault, faults);
    } catch (error) {
      if (error instanceof DomainError) faults.push(error);
      else if (sound) throw error;
    }
  return faults;
}
