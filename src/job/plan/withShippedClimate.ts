/** Plans with the climate grid that is shipped. */

import { climateAt } from '../../climate/index.js';
import type { JobInput } from '../file/jobOf.js';
import { type JobPlan, planJobWith } from './planJob.js';

/** Where the climate comes from when the caller says nothing. */
export const SHIPPED = { climate: climateAt } as const;

/**
 * Plan of a job: directions, presets, view, rain margin, expected readings.
 *
 * @param input  A job file of either version: JSON text, a parsed value or what `parseJob` gave.
 * @throws {@link DomainError} naming the field by its path in the job file.
 *
 * Source: the parts of the library; each result names its own.
 * @example
 * ```ts
 * import { planJob } from 'slantpath/job';
 * const plan = planJob({
 *   format: 'slantpath-job', version: 2, date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 2240 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4 }],
 * });
 * plan.directions[0]?.elevationDeg.toFixed(2); // => '36.10'
 * plan.notSaid.find(({ section }) => section === 'view')?.field; // => 'horizon.samples'
 * ```
 */
export function planJob(input: JobInput): JobPlan {
  return planJobWith(input, SHIPPED);
}
