/** Predictions of hypotheses for measurements, each worked out once, when it is first asked for. */

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
  /** Logarithms of the chances of yes and no, or of wanted, other and nothing, of a whole column; empty for numbers. */
  readonly logs: () => readonly Float64Array[];
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

/** Columns that are filled hypothesis by hypothesis, as they are asked for. */
interface Growing {
  /** Works out the entries of one hypothesis. */
  readonly fill: (h: number) => void;
  /** 1 for the hypotheses whose entries are there. */
  readonly filled: Uint8Array;
  /** Whether all of them are. */
  whole: boolean;
}

/** Fills what is wanted, everything where nothing is said. */
function grow(growing: Growing, wanted: readonly number[] | undefined): void {
  if (growing.whole) return;
  const { fill, filled } = growing;
  const take = (h: number): void => {
    if (filled[h] === 1) return;
    fill(h);
    filled[h] = 1;
  };
  if (wanted) for (const h of wanted) take(h);
  else {
    for (let h = 0; h < filled.length; h++) take(h);
    growing.whole = true;
  }
}

/** What a carrier shows at a point, by hypothesis. */
interface ChannelColumns extends Growing {
  readonly levelDbuv: Float64Array;
  readonly carrierToNoiseDb: Float64Array;
  readonly isolationDb: Float64Array;
  readonly wanted: Float64Array;
  readonly other: Float64Array;
}

function channelColumns(
  context: CauseContext,
  hypotheses: readonly Hypothesis[],
  carrier: CarrierContext,
  point: TestPointContext,
): ChannelColumns {
  const column = () => new Float64Array(hypotheses.length);
  const columns = {
    levelDbuv: column(),
    carrierToNoiseDb: column(),
    isolationDb: column(),
    wanted: column(),
    other: column(),
  };
  const undisturbed = channel(context, carrier, point);
  // Hypotheses that differ in their scatter alone stand together and share one change.
  let lastChange: Hypothesis['change'] | undefined;
  let last: Channel = undisturbed;
  const fill = (h: number): void => {
    const { change } = hypotheses[h] as Hypothesis;
    if (change !== lastChange) {
      lastChange = change;
      const changed = change(carrier, point);
      last = changed === undefined ? undisturbed : channel(context, carrier, point, changed);
    }
    columns.levelDbuv[h] = last.levelDbuv;
    columns.carrierToNoiseDb[h] = last.carrierToNoiseDb;
    columns.isolationDb[h] = last.isolationDb;
    columns.wanted[h] = last.reception.wanted;
    columns.other[h] = last.reception.other;
  };
  return { ...columns, fill, filled: new Uint8Array(hypotheses.length), whole: false };
}

/** Which numeric column shows which kind of reading. */
const NUMBER_FIELD = {
  level: 'levelDbuv',
  'carrier-to-noise': 'carrierToNoiseDb',
  isolation: 'isolationDb',
} as const;

/** A column with what fills it. */
interface GrowingColumn {
  readonly column: PredictedColumn;
  readonly growing: Growing;
}

function withLogs({ kind, mean, second }: Omit<PredictedColumn, 'logs'>): PredictedColumn {
  let made: readonly Float64Array[] | undefined;
  return {
    kind,
    mean,
    second,
    logs: () => {
      made ??= outcomeLogs(kind, mean, second);
      return made;
    },
  };
}

/** What a look or check shows, by hypothesis. */
function checkColumn(
  context: CauseContext,
  hypotheses: readonly Hypothesis[],
  measurement: CauseMeasurement,
): GrowingColumn {
  const usual = usualCheck(context, measurement);
  const mean = new Float64Array(hypotheses.length);
  const second = new Float64Array(hypotheses.length);
  const fill = (h: number): void => {
    const predicted = hypotheses[h]?.check?.(measurement) ?? usual;
    mean[h] = 'yes' in predicted ? predicted.yes : predicted.mean;
    second[h] = 'yes' in predicted ? 0 : predicted.deviation;
  };
  return {
    column: withLogs({ mean, second, kind: 'yes' in usual ? 'yes-no' : 'number' }),
    growing: { fill, filled: new Uint8Array(hypotheses.length), whole: false },
  };
}

/**
 * Looks up or works out the column of a measurement: for all hypotheses, or for those that are wanted; then the other
 * entries mean nothing.
 */
export type Predictions = (
  measurement: CauseMeasurement,
  wanted?: readonly number[],
) => PredictedColumn;

/** Predictions of the hypotheses, remembered by measurement. */
export function predictionsOf(
  context: CauseContext,
  hypotheses: readonly Hypothesis[],
): Predictions {
  const channels = new Map<string, ChannelColumns>();
  const columns = new Map<string, GrowingColumn>();
  const none = new Float64Array(hypotheses.length);
  const channelsAt = (carrierName: string, pointName: string): ChannelColumns => {
    const key = `${carrierName}\n${pointName}`;
    const known = channels.get(key);
    if (known) return known;
    // The names were checked with the observation, or come from the context itself.
    const carrier = context.carriers.find(({ name }) => name === carrierName) as CarrierContext;
    const point = context.testPoints.find(({ name }) => name === pointName) as TestPointContext;
    const made = channelColumns(context, hypotheses, carrier, point);
    channels.set(key, made);
    return made;
  };
  const columnOf = (measurement: CauseMeasurement): GrowingColumn => {
    switch (measurement.kind) {
      case 'level':
      case 'carrier-to-noise':
      case 'isolation':
      case 'reception': {
        const growing = channelsAt(measurement.carrier, measurement.testPoint);
        return {
          growing,
          column:
            measurement.kind === 'reception'
              ? withLogs({ mean: growing.wanted, second: growing.other, kind: 'reception' })
              : withLogs({
                  mean: growing[NUMBER_FIELD[measurement.kind]],
                  second: none,
                  kind: 'number',
                }),
        };
      }
      default:
        return checkColumn(context, hypotheses, measurement);
    }
  };
  return (measurement, wanted) => {
    const key = measurementKey(measurement);
    const known = columns.get(key) ?? columnOf(measurement);
    columns.set(key, known);
    grow(known.growing, wanted);
    return known.column;
  };
}
