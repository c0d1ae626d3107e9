/** The tuning table of a job: what to dial in for each carrier, and what a receiver cannot reach. */

import { DomainError, inRange, objects, oneOf, text } from '../errors.js';
import { type Keys, known } from '../keys.js';
import {
  type ConverterBand,
  type ConverterPlan,
  type ConverterPlanName,
  converterPlans,
} from './converterPlan.js';
import { type IntermediateFrequency, intermediateFrequency } from './intermediateFrequency.js';

/** Polarization of a carrier. */
export type CarrierPolarization = 'vertical' | 'horizontal' | 'right-hand' | 'left-hand';

/** A carrier to be tuned. */
export interface CarrierToTune {
  /** Name, as on the job. */
  readonly name: string;
  /** Radio frequency of the centre in GHz. */
  readonly frequencyGHz: number;
  /** Bandwidth that it occupies in MHz, 0 to 1000; default 0. */
  readonly bandwidthMHz?: number;
  /** Polarization of the wave. */
  readonly polarization: CarrierPolarization;
}

const CARRIER_TO_TUNE_KEYS = {
  name: true,
  frequencyGHz: true,
  bandwidthMHz: true,
  polarization: true,
} satisfies Keys<CarrierToTune>;

/** Range that a receiver tunes over. */
export interface ReceiverRange {
  /** Lowest frequency in MHz; default 950. */
  readonly lowestMHz?: number;
  /** Highest frequency in MHz; default 2150. */
  readonly highestMHz?: number;
}

/** One line of the table; read `kind` first. */
export type TuningRow =
  | ({
      /** The receiver tunes the whole carrier (`in-range`), part of it (`cut-off`), or none of it (`out-of-range`). */
      readonly kind: 'in-range' | 'cut-off' | 'out-of-range';
      /** Name of the carrier. */
      readonly name: string;
      /** Radio frequency in GHz. */
      readonly frequencyGHz: number;
      /** Oscillator that serves it in GHz. */
      readonly localOscillatorGHz: number;
      /** Supply that asks for its polarization, nominal volts; 13 vertical and right-hand, 18 horizontal and left-hand. */
      readonly supplyV: 13 | 18;
      /** 22 kHz tone: `on`, `off`, or `ignored` by a unit with one band. */
      readonly tone: 'on' | 'off' | 'ignored';
    } & Omit<IntermediateFrequency, 'injection'>)
  /** No band of the unit holds the carrier. */
  | { readonly kind: 'outside-the-unit'; readonly name: string; readonly frequencyGHz: number };

/** Plan by name, or the plan itself. */
function converterPlan(plan: ConverterPlanName | ConverterPlan): ConverterPlan {
  if (typeof plan === 'object' && plan !== null) {
    objects<ConverterBand>('plan.bands', plan.bands);
    return plan;
  }
  const names = converterPlans.map((known) => known.name);
  const name = oneOf('plan', plan, names);
  return converterPlans[names.indexOf(name)] as ConverterPlan;
}

/** The band of a unit that takes a carrier: the lower one where two meet, the one with its polarization where it matters. */
function bandOf(plan: ConverterPlan, carrier: CarrierToTune): ConverterBand | undefined {
  const linear =
    carrier.polarization === 'vertical' || carrier.polarization === 'right-hand'
      ? 'vertical'
      : 'horizontal';
  return plan.bands.find(
    (band) =>
      carrier.frequencyGHz >= band.fromGHz &&
      carrier.frequencyGHz <= band.toGHz &&
      (band.polarization === undefined || band.polarization === linear),
  );
}

const TUNING_TABLE_JOB_KEYS = { plan: true, carriers: true, receiver: true } satisfies Keys<
  Parameters<typeof tuningTable>[0]
>;

/**
 * What to dial in for each carrier: intermediate frequency, voltage, tone, and whether the receiver reaches it.
 *
 * @param job  Unit by name of its plan (`converterPlans`) or a plan of your own; carriers; range of the receiver.
 * @throws {@link DomainError} naming the field, with the index of the carrier (`carriers[1].frequencyGHz`).
 * Source: difference frequency; voltage and tone by practice of the trade (EN 61319-1 is not open and was not read).
 * Accuracy: to the hertz, for an oscillator that is where its plan says.
 * @example
 * ```ts
 * import { tuningTable } from 'slantpath/tuning';
 * const [row] = tuningTable({
 *   plan: 'ku-universal',
 *   carriers: [{ name: 'A', frequencyGHz: 11.938, bandwidthMHz: 33, polarization: 'horizontal' }],
 * });
 * row?.kind; // => 'in-range'
 * row?.kind === 'in-range' ? `${row.intermediateFrequencyMHz} ${row.supplyV} ${row.tone}` : ''; // => '1338 18 on'
 * ```
 */
export function tuningTable(job: {
  readonly plan: ConverterPlanName | ConverterPlan;
  readonly carriers: readonly CarrierToTune[];
  readonly receiver?: ReceiverRange;
}): readonly TuningRow[] {
  const given = known('job', job, TUNING_TABLE_JOB_KEYS);
  const plan = converterPlan(given.plan);
  const lowestMHz = inRange('receiver.lowestMHz', given.receiver?.lowestMHz ?? 950, 0, 10_000);
  const highestMHz = inRange('receiver.highestMHz', given.receiver?.highestMHz ?? 2150, 0, 10_000);
  if (highestMHz <= lowestMHz)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'receiver.highestMHz',
      received: highestMHz,
      allowed: `above receiver.lowestMHz (${lowestMHz})`,
    });
  if (!Array.isArray(given.carriers))
    throw new DomainError({
      code: given.carriers === undefined ? 'missing' : 'malformed',
      parameter: 'carriers',
      received: given.carriers,
      allowed: 'an array of carriers',
    });
  return objects<CarrierToTune>('carriers', given.carriers).map((carrier, index) =>
    tuningRow(plan, carrier, `carriers[${index}]`, { lowestMHz, highestMHz }),
  );
}

/** One line of the table. */
function tuningRow(
  plan: ConverterPlan,
  carrier: CarrierToTune,
  path: string,
  receiver: Required<ReceiverRange>,
): TuningRow {
  const name = text(`${path}.name`, known(path, carrier, CARRIER_TO_TUNE_KEYS).name);
  const frequencyGHz = inRange(`${path}.frequencyGHz`, carrier.frequencyGHz, 0.1, 100);
  const bandwidthMHz = inRange(`${path}.bandwidthMHz`, carrier.bandwidthMHz ?? 0, 0, 1000);
  oneOf(`${path}.polarization`, carrier.polarization, [
    'vertical',
    'horizontal',
    'right-hand',
    'left-hand',
  ]);
  const band = bandOf(plan, carrier);
  if (band === undefined) return { kind: 'outside-the-unit', name, frequencyGHz };
  const { localOscillatorGHz } = band;
  const { injection: _, ...behind } = intermediateFrequency({
    frequencyGHz,
    localOscillatorGHz,
    bandwidthMHz,
  });
  const low = Math.min(behind.lowerRadioEdgeMHz, behind.upperRadioEdgeMHz);
  const high = Math.max(behind.lowerRadioEdgeMHz, behind.upperRadioEdgeMHz);
  const whole = low >= receiver.lowestMHz && high <= receiver.highestMHz;
  const none = high < receiver.lowestMHz || low > receiver.highestMHz;
  const vertical = carrier.polarization === 'vertical' || carrier.polarization === 'right-hand';
  return {
    kind: whole ? 'in-range' : none ? 'out-of-range' : 'cut-off',
    name,
    frequencyGHz,
    localOscillatorGHz,
    supplyV: vertical ? 13 : 18,
    tone: band.tone === undefined ? 'ignored' : band.tone ? 'on' : 'off',
    ...behind,
  };
}
