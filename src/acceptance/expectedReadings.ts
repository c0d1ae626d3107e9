/** What the plan expects at every outlet, by slot, polarization and band. */

import { type DistributionPart, type OutletLevels, outletLevels } from '../distribution/index.js';
import { DomainError, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import type { ExpectedReading } from './judgeReadings.js';

/** A carrier as it leaves the outdoor unit. */
export interface PlannedCarrier {
  /** Slot, by the caller's name. */
  readonly slot: string;
  /** Polarization. */
  readonly polarization: string;
  /** Band of the outdoor unit. */
  readonly band: string;
  /** Intermediate frequency in MHz. */
  readonly frequencyMHz: number;
  /** Level at the output of the outdoor unit in dBuV at 75 ohm. */
  readonly levelDbuv: number;
  /** Clear-sky carrier-to-noise ratio there in dB. */
  readonly carrierToNoiseDb: number;
}

const PLANNED_CARRIER_KEYS = {
  slot: true,
  polarization: true,
  band: true,
  frequencyMHz: true,
  levelDbuv: true,
  carrierToNoiseDb: true,
} satisfies Keys<PlannedCarrier>;

/** A plan: the carriers and the tree behind the outdoor unit. */
export interface ReadingPlan {
  /** Carriers, at least one; those of a slot, polarization and band share the cable at one time. */
  readonly carriers: readonly PlannedCarrier[];
  /** Tree from the outdoor unit to the outlets. */
  readonly tree: DistributionPart;
  /** Temperature of cables in degrees Celsius; 20 by default. */
  readonly temperatureC?: number;
  /** Noise bandwidth of a carrier in MHz; 27.5 by default. */
  readonly bandwidthMHz?: number;
  /** Standard uncertainty of an expected level in dB; 1.5 by default (EIRP, unit and parts; practice of the trade). */
  readonly levelStandardUncertaintyDb?: number;
  /** Standard uncertainty of an expected ratio in dB; 0.7 by default (practice of the trade). */
  readonly ratioStandardUncertaintyDb?: number;
}

const READING_PLAN_KEYS = {
  carriers: true,
  tree: true,
  temperatureC: true,
  bandwidthMHz: true,
  levelStandardUncertaintyDb: true,
  ratioStandardUncertaintyDb: true,
} satisfies Keys<ReadingPlan>;

/** An expectation with the frequency it stands for. */
export interface PlannedReading extends ExpectedReading {
  /** Slot. */
  readonly slot: string;
  /** Polarization. */
  readonly polarization: string;
  /** Band. */
  readonly band: string;
  /** Outlet or receiver. */
  readonly testPoint: string;
  /** Intermediate frequency in MHz. */
  readonly frequencyMHz: number;
}

/**
 * Expected level and carrier-to-noise ratio of every carrier at every outlet and receiver.
 *
 * @throws {@link DomainError} naming the entry and field.
 *
 * Source: {@link outletLevels}, once for each slot, polarization and band.
 * Accuracy: the uncertainties given.
 * @example
 * ```ts
 * import { expectedReadings } from 'slantpath/acceptance';
 * import { genericCable } from 'slantpath/distribution';
 * const [level] = expectedReadings({
 *   carriers: [
 *     { slot: '16.4 E', polarization: 'vertical', band: 'low', frequencyMHz: 1210, levelDbuv: 75, carrierToNoiseDb: 14 },
 *   ],
 *   tree: { kind: 'cable', cable: genericCable('series-6'), lengthM: 40, to: { kind: 'outlet', name: 'hut' } },
 * });
 * level?.expected.toFixed(1); // => '65.6'
 * ```
 */
export function expectedReadings(plan: ReadingPlan): readonly PlannedReading[] {
  known('plan', plan, READING_PLAN_KEYS);
  const groups = grouped(plan.carriers);
  const levelUncertainty = inRange(
    'levelStandardUncertaintyDb',
    plan.levelStandardUncertaintyDb ?? 1.5,
    0,
    20,
  );
  const ratioUncertainty = inRange(
    'ratioStandardUncertaintyDb',
    plan.ratioStandardUncertaintyDb ?? 0.7,
    0,
    20,
  );
  const results: PlannedReading[] = [];
  for (const group of groups) {
    const frequencies = group.map((carrier) => carrier.frequencyMHz);
    const outlets = outletLevels(
      {
        source: {
          levelDbuv: group.map((c) => ({ frequencyMHz: c.frequencyMHz, valueDb: c.levelDbuv })),
          carrierToNoiseDb: group.map((c) => ({
            frequencyMHz: c.frequencyMHz,
            valueDb: c.carrierToNoiseDb,
          })),
          ...(plan.bandwidthMHz === undefined ? {} : { bandwidthMHz: plan.bandwidthMHz }),
        },
        tree: plan.tree,
        ...(plan.temperatureC === undefined ? {} : { temperatureC: plan.temperatureC }),
      },
      frequencies,
    );
    for (const outlet of outlets)
      group.forEach((carrier, index) => {
        results.push(...pair(carrier, outlet, index, levelUncertainty, ratioUncertainty));
      });
  }
  return results;
}

function pair(
  carrier: PlannedCarrier,
  outlet: OutletLevels,
  index: number,
  levelUncertainty: number,
  ratioUncertainty: number,
): PlannedReading[] {
  const point = outlet.points[index];
  if (point === undefined) return [];
  const { slot, polarization, band, frequencyMHz } = carrier;
  const place = { slot, polarization, band, testPoint: outlet.name, frequencyMHz };
  return [
    {
      quantity: 'level',
      ...place,
      expected: point.levelDbuv,
      standardUncertainty: levelUncertainty,
    },
    {
      quantity: 'carrier-to-noise',
      ...place,
      expected: point.carrierToNoiseDb,
      standardUncertainty: ratioUncertainty,
    },
  ];
}

/** Carriers by slot, polarization and band, each group by rising frequency. */
function grouped(carriers: readonly PlannedCarrier[]): readonly (readonly PlannedCarrier[])[] {
  if (!Array.isArray(carriers) || carriers.length === 0)
    throw new DomainError({
      code: carriers === undefined ? 'missing' : 'empty',
      parameter: 'carriers',
      received: carriers,
      allowed: 'a list of at least one carrier',
    });
  const groups = new Map<string, PlannedCarrier[]>();
  carriers.forEach((carrier: PlannedCarrier, index) => {
    known(`carriers[${index}]`, carrier, PLANNED_CARRIER_KEYS);
    for (const field of ['slot', 'polarization', 'band'] as const)
      if (typeof carrier[field] !== 'string' || carrier[field] === '')
        throw new DomainError({
          code: carrier[field] === undefined ? 'missing' : 'malformed',
          parameter: `carriers[${index}].${field}`,
          received: carrier[field],
          allowed: 'a name',
        });
    inRange(`carriers[${index}].frequencyMHz`, carrier.frequencyMHz, 5, 10000, 'is it in GHz?');
    inRange(`carriers[${index}].levelDbuv`, carrier.levelDbuv, -50, 150);
    inRange(`carriers[${index}].carrierToNoiseDb`, carrier.carrierToNoiseDb, -20, 100);
    const key = JSON.stringify([carrier.slot, carrier.polarization, carrier.band]);
    groups.set(key, [...(groups.get(key) ?? []), carrier]);
  });
  return [...groups.values()].map((group) => {
    const sorted = group.sort((a, b) => a.frequencyMHz - b.frequencyMHz);
    sorted.forEach((carrier, index) => {
      const before = sorted[index - 1];
      if (before && before.frequencyMHz === carrier.frequencyMHz)
        throw new DomainError({
          code: 'inconsistent',
          parameter: 'carriers',
          received: carrier.frequencyMHz,
          allowed: 'at different frequencies, but of one slot, polarization and band',
        });
    });
    return sorted;
  });
}
