/** All plans of worked solutions, in the order of the job. */

import { DomainError } from '../../errors.js';
import { ANTENNA_PLANS } from './antenna.js';
import { AROUND_PLANS } from './around.js';
import { AXES_PLANS } from './axes.js';
import { BEHIND_PLANS } from './behind.js';
import { LINK_PLANS } from './link.js';
import { MOUNT_PLANS } from './mount.js';
import { NULL_PLANS } from './null.js';
import { PEAK_PLANS } from './peak.js';
import type { SolutionPlan } from './plan.js';
import { POINTING_PLANS } from './pointing.js';
import { RAIN_PLANS } from './rain.js';
import { RECEPTION_PLANS } from './reception.js';
import { SKY_PLANS } from './sky.js';
import { SUSPECT_PLANS } from './suspects.js';
import { VERDICT_PLANS } from './verdict.js';

/** The plans. */
export const SOLUTION_PLANS: readonly SolutionPlan[] = [
  ...POINTING_PLANS,
  ...SKY_PLANS,
  ...MOUNT_PLANS,
  ...ANTENNA_PLANS,
  ...RAIN_PLANS,
  ...LINK_PLANS,
  ...PEAK_PLANS,
  ...NULL_PLANS,
  ...AXES_PLANS,
  ...BEHIND_PLANS,
  ...RECEPTION_PLANS,
  ...AROUND_PLANS,
  ...VERDICT_PLANS,
  ...SUSPECT_PLANS,
];

/** Plan of a name; throws with the names there are. */
export function solutionPlan(name: string): SolutionPlan {
  const found = SOLUTION_PLANS.find((plan) => plan.name === name);
  if (found) return found;
  throw new DomainError({
    code: name === undefined || name === null ? 'missing' : 'not-an-option',
    parameter: 'name',
    received: name,
    allowed: `one of ${SOLUTION_PLANS.map((plan) => plan.name).join(', ')}`,
  });
}
