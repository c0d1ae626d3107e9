/** A hypothesis: one cause with one set of parameters, and what it does. */

import type { Change } from './channel.js';
import type { CarrierContext, TestPointContext } from './context.js';
import type { FaultCause } from './installation.js';
import type { CauseMeasurement } from './observation.js';

/** How readings scatter beyond the plan's own tolerance under a cause. */
export type Scatter = 'plan' | 'uneven' | 'by-carrier' | 'ripple' | 'unknown-carriers';

/** Prediction of a look or measurement that is not of a carrier: a number or a chance of yes. */
export type CheckPrediction =
  | { readonly mean: number; readonly deviation: number }
  | { readonly yes: number };

/** One cause with one set of parameters. */
export interface Hypothesis {
  readonly cause: FaultCause;
  /** Slot, segment or carrier concerned; `null` for the whole. */
  readonly location: string | null;
  /** Prior weight; those of one location add up to 1. */
  readonly weight: number;
  readonly scatter: Scatter;
  /** Tells hypotheses of one cause and location apart that bear on unlike readings. */
  readonly group?: string;
  /** Parameters with units in their names, for the report. */
  readonly parameters: Readonly<Record<string, number>>;
  /** Effect on a carrier at a test point; `undefined` for none. */
  readonly change: (carrier: CarrierContext, point: TestPointContext) => Change | undefined;
  /** Predictions of checks that differ from the usual ones. */
  readonly check?: (measurement: CauseMeasurement) => CheckPrediction | undefined;
}

/** Evenly spaced values from `from` to `to`, both included. */
export function steps(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * i) / Math.max(1, count - 1));
}

/** Values in geometric progression from `from` to `to`, both included. */
export function ratios(from: number, to: number, count: number): readonly number[] {
  return steps(Math.log(from), Math.log(to), count).map(Math.exp);
}
