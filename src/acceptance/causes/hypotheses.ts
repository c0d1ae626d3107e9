/** All hypotheses of an installation. */

import { badConnector, overloaded, partFailed, supplyLow, wrongCable } from './chainFaults.js';
import type { CauseContext } from './context.js';
import type { Hypothesis } from './hypothesis.js';
import { interference, obstructed, rain, sunOutage, unitOutOfTolerance } from './pathFaults.js';
import {
  mastLeaning,
  mispointed,
  polarizationRotated,
  sideLobe,
  wrongSlot,
} from './pointingFaults.js';

const NOTHING: Hypothesis = {
  cause: 'nothing',
  location: null,
  weight: 1,
  scatter: 'plan',
  parameters: {},
  change: () => undefined,
};

/** All hypotheses, the one that nothing is wrong first. */
export function allHypotheses(context: CauseContext): readonly Hypothesis[] {
  return [
    NOTHING,
    ...rain(context),
    ...sunOutage(context),
    ...interference(context),
    ...obstructed(context),
    ...wrongSlot(context),
    ...sideLobe(),
    ...mispointed(context),
    ...mastLeaning(context),
    ...polarizationRotated(context),
    ...unitOutOfTolerance(context),
    ...supplyLow(context),
    ...badConnector(context),
    ...wrongCable(context),
    ...partFailed(context),
    ...overloaded(context),
  ];
}
