/** Predictions of every hypothesis for every measurement, computed once each. */

import { denseAt } from '../../numeric/columns.js';
import { type Channel, channel } from './channel.js';
import { measurementKey } from './checkedObservation.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';
import type { CheckPrediction, Hypothesis } from './hypothesis.js';
import type { CauseMeasurement } from './observation.js';

/** Predictions of one kind of reading by all hypotheses, in their order. */
export interface PredictedColumn {
  /** Means, or chances of yes or of the wanted service. */
  readonly mean: Float64Array;
  /** Deviations of checks beyond the uncertainty of the reading; chances of a foreign service. */
  readonly second: Float64Array;
  /** What the columns hold. */
  readonly kind: 'number' | 'yes-no' | 'reception';
  /** Logarithms of the chances of yes and no, or of wanted, other and nothing; empty for numbers. */
  readonly logs: readonly Float64Array[];
}

/** Logarithms of the chances of each outcome. */
function outcomeLogs(
  kind: PredictedColumn['kind'],
  mean: Float64Array,
  second: Float64Array,
): readonly Float64Array[] {
  if (kind === 'number') return [];
  const least = 1e-4;
  if (kind === 'yes-no')
    return [
      mean.map((yes) => Math.log(Math.max(least, yes))),
      mean.map((yes) => Math.log(Math.max(least, 1 - yes))),
    ];
  return [
    mean.map((wanted) => Math.log(Math.max(least, wanted))),
    second.map((other) => Math.log(Math.max(least, other))),
    mean.map((wanted, h) => Math.log(Math.max(least, 1 - wanted - denseAt(second, h)))),
  ];
}

/** What checks show where a cause does not bear on them: practice of the trade, kept wide. */
function usualCheck(context: CauseContext, measurement: CauseMeasurement): CheckPrediction {
  switch (measurement.kind) {
    case 'supply-voltage':
      return { mean: context.supplyVoltageV, deviation: 0.6 };
    case 'mast-lean':
      return { mean: 0.2, deviation: 0.2 };
    case 'polarization-null':
      return { mean: 0, deviation: 1 };
    case 'search':
      return { mean: 0.2, deviation: 0.4 };
    case 'repeat-later':
      return { mean: 0, deviation: 0.5 };
    case 'rain-seen':
      return { yes: 0.08 };
    case 'spectrum':
      return { yes: 0.04 };
    case 'sun-near':
      return { yes: 0.01 };
    case 'obstacle-seen':
      return { yes: 0.06 };
    case 'connector-check':
      return { yes: 0.08 };
    default:
      return { yes: 0.05 };
  }
}

/** Channel of a carrier at a point under every hypothesis; those that leave it alone share one. */
function channelsOf(
  context: CauseContext,
  hypotheses: readonly Hypothesis[],
  carrier: CarrierContext,
  point: TestPointContext,
): readonly Channel[] {
  const undisturbed = channel(context, carrier, point);
  let lastChange: Hypothesis['change'] | undefined;
  let last = undisturbed;
  return hypotheses.map((hypothesis) => {
    if (hypothesis.change === lastChange) return last;
    lastChange = hypothesis.change;
    const change = hypothesis.change(carrier, point);
    last = change === undefined ? undisturbed : channel(context, carrier, point, change);
    return last;
  });
}

/** Looks up or computes the column of a measurement. */
export type Predictions = (measurement: CauseMeasurement) => PredictedColumn;

/** Predictions of all hypotheses, remembered by measurement. */
export function predictionsOf(
  context: CauseContext,
  hypotheses: readonly Hypothesis[],
): Predictions {
  const channels = new Map<string, readonly Channel[]>();
  const columns = new Map<string, PredictedColumn>();
  const channelsAt = (carrierName: string, pointName: string): readonly Channel[] => {
    const key = `${carrierName}\n${pointName}`;
    const known = channels.get(key);
    if (known) return known;
    const carrier = context.carriers.find((candidate) => candidate.name === carrierName);
    const point = context.testPoints.find((candidate) => candidate.name === pointName);
    const made = carrier && point ? channelsOf(context, hypotheses, carrier, point) : [];
    channels.set(key, made);
    return made;
  };
  const compute = (measurement: CauseMeasurement): Omit<PredictedColumn, 'logs'> => {
    const mean = new Float64Array(hypotheses.length);
    const second = new Float64Array(hypotheses.length);
    switch (measurement.kind) {
      case 'level':
      case 'carrier-to-noise':
      case 'isolation': {
        const field = (
          {
            level: 'levelDbuv',
            'carrier-to-noise': 'carrierToNoiseDb',
            isolation: 'isolationDb',
          } as const
        )[measurement.kind];
        channelsAt(measurement.carrier, measurement.testPoint).forEach((shown, h) => {
          mean[h] = shown[field];
        });
        return { mean, second, kind: 'number' };
      }
      case 'reception':
        channelsAt(measurement.carrier, measurement.testPoint).forEach(({ reception }, h) => {
          mean[h] = reception.wanted;
          second[h] = reception.other;
        });
        return { mean, second, kind: 'reception' };
      default: {
        const usual = usualCheck(context, measurement);
        hypotheses.forEach((hypothesis, h) => {
          const predicted = hypothesis.check?.(measurement) ?? usual;
          mean[h] = 'yes' in predicted ? predicted.yes : predicted.mean;
          second[h] = 'yes' in predicted ? 0 : predicted.deviation;
        });
        return { mean, second, kind: 'yes' in usual ? 'yes-no' : 'number' };
      }
    }
  };
  return (measurement) => {
    const key = measurementKey(measurement);
    const known = columns.get(key);
    if (known) return known;
    const plain = compute(measurement);
    const made = { ...plain, logs: outcomeLogs(plain.kind, plain.mean, plain.second) };
    columns.set(key, made);
    return made;
  };
}
