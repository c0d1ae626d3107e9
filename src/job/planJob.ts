/** The plan: everything about a job that can be known before anything is read. */

import { type Caution, cautions } from './cautions.js';
import type { JobFile } from './jobFile.js';
import {
  type DirectionPlan,
  directionPlans,
  type NorthPlan,
  northPlan,
} from './sections/directions.js';
import { type MountPlan, mountPlan } from './sections/mount.js';
import { type OutletPlan, outletPlans } from './sections/outlets.js';
import { jobClimate, type RainPlan, rainPlan } from './sections/rain.js';
import { type SignalPlan, signalPlans } from './sections/signals.js';
import { type ViewPlan, viewPlans } from './sections/view.js';

/** The plan of a job, in the order of the work. */
export interface JobPlan {
  /** What to mind. */
  readonly cautions: readonly Caution[];
  /** Magnetic north on the day. */
  readonly north: NorthPlan;
  /** Where each slot stands. */
  readonly directions: readonly DirectionPlan[];
  /** How the mount is preset. */
  readonly mount: MountPlan;
  /** Whether the view is clear. */
  readonly views: readonly ViewPlan[];
  /** The rain of the place. */
  readonly rain: RainPlan;
  /** What to expect of each carrier at the antenna. */
  readonly signals: readonly SignalPlan[];
  /** What to expect at each outlet. */
  readonly outlets: readonly OutletPlan[];
}

/**
 * Plan of a job: directions, presets, view, rain margin, expected readings.
 *
 * @param job  A checked job, from {@link parseJob}.
 * @throws {@link DomainError} naming the field by its path in the job file.
 *
 * Source: the parts of the library; each result names its own.
 * @example
 * ```ts
 * import { type JobFile, planJob } from 'slantpath/job';
 * const job: JobFile = {
 *   format: 'slantpath-job',
 *   version: 1,
 *   title: 'One slot',
 *   date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 2240 },
 *   antenna: { diameterM: 0.9, apertureEfficiencyRatio: 0.65, offsetAngleDeg: 24.6 },
 *   receiver: { noiseFigureDb: 0.7, gainDb: 56 },
 *   slots: [{
 *     name: 'middle',
 *     orbitalLongitudeDeg: 16.4,
 *     carriers: [{
 *       name: 'Ku', frequencyGHz: 12.5, polarization: 'horizontal', eirpDbw: 51,
 *       symbolRateMBd: 27.5, mode: 'QPSK 3/4', intermediateFrequencyMHz: 1900,
 *     }],
 *   }],
 *   horizon: { north: 'true', samples: [] },
 *   rain: { source: 'climate-grid' },
 *   target: { exceededPercent: 0.1, pointingLossDb: 0.3 },
 *   distribution: { kind: 'outlet', name: 'desk' },
 *   peaking: [],
 *   readings: [],
 *   limits: [{ testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 }],
 * };
 * planJob(job).directions[0]?.elevationDeg.toFixed(2); // => '36.10'
 * ```
 */
export function planJob(job: JobFile): JobPlan {
  const north = northPlan(job);
  const directions = directionPlans(job, north);
  const mount = mountPlan(job, directions, north);
  const climate = jobClimate(job);
  const signals = signalPlans(job, { directions, mount, climate });
  return {
    cautions: cautions(job),
    north,
    directions,
    mount,
    views: viewPlans(job, north),
    rain: rainPlan(climate),
    signals,
    outlets: outletPlans(job, signals),
  };
}
