/** Section of the plan: whether receivers get a level inside their own window. */

import { dbmToDbuv } from '../../distribution/index.js';
import type { JobFile } from '../file/jobFile.js';
import { terminals } from './limits.js';
import type { OutletPlan } from './outlets.js';

/** One carrier at one receiver. */
export interface ReceiverPlan {
  readonly receiver: string;
  readonly slot: string;
  readonly carrier: string;
  /** Level expected at its input in dBuV. */
  readonly levelDbuv: number;
  /** Its window in dBuV; -65 to -25 dBm where its part gives none (a professional handbook). */
  readonly minimumDbuv: number;
  readonly maximumDbuv: number;
  readonly kind: 'inside' | 'too-low' | 'too-high';
}

/** Every carrier at every receiver. */
export function receiverPlans(
  job: JobFile,
  outlets: readonly OutletPlan[],
): readonly ReceiverPlan[] {
  const parts = new Map(terminals(job).map(({ name, part }) => [name, part]));
  return outlets.flatMap((plan): ReceiverPlan[] => {
    const part = parts.get(plan.outlet);
    if (part?.kind !== 'receiver') return [];
    const minimumDbuv = part.minimumLevelDbuv ?? dbmToDbuv(-65);
    const maximumDbuv = part.maximumLevelDbuv ?? dbmToDbuv(-25);
    const { levelDbuv } = plan;
    return [
      {
        receiver: plan.outlet,
        slot: plan.slot,
        carrier: plan.carrier,
        levelDbuv,
        minimumDbuv,
        maximumDbuv,
        kind: levelDbuv < minimumDbuv ? 'too-low' : levelDbuv > maximumDbuv ? 'too-high' : 'inside',
      },
    ];
  });
}
