/** Section of the plan: which unit receives a carrier, and at which frequency it runs down the cable. */

import { supplyCommand } from '../../distribution/index.js';
import type { JobCarrier, JobFile, JobSlot, JobUnit } from '../file/jobFile.js';
import { isLinear } from './directions.js';
import type { Ledger } from './ledger.js';

/** One carrier on the cable. */
export interface TuningPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Frequency in GHz. */
  readonly frequencyGHz: number;
  /** Polarization at the satellite. */
  readonly polarization: JobCarrier['polarization'];
  /** Receiving unit; `null` where the job names none that serves it. */
  readonly unit: string | null;
  /** Band of the unit; `null` where the unit names none. */
  readonly band: string | null;
  /** Frequency of the local oscillator in GHz; `null` where it is not given. */
  readonly localOscillatorGHz: number | null;
  /** Frequency on the cable in MHz, as worked out or, without a local oscillator, as given; `null` where neither is. */
  readonly intermediateFrequencyMHz: number | null;
  /** What the file gives; `null` where it gives none. */
  readonly givenFrequencyMHz: number | null;
  /** Whether the spectrum is turned round: the local oscillator stands above the carrier. */
  readonly inverted: boolean;
  /** Voltage that chooses the polarization; `null` for a unit that is not switched by voltage. */
  readonly voltageV: 13 | 18 | null;
  /** Whether the 22 kHz tone is on; `null` where the file does not say. */
  readonly tone: boolean | null;
  /** Switch that the carrier's line enters, and its input; `null` where the file names none. */
  readonly into: string | null;
  readonly input: string | null;
}

/** What serves a carrier. */
export interface Served {
  readonly unit: JobUnit | undefined;
  readonly band: NonNullable<JobUnit['bands']>[number] | undefined;
}

/** Polarization as a unit is switched: right with vertical, left with horizontal (practice of the trade). */
export function switchedPolarization({
  polarization,
}: Pick<JobCarrier, 'polarization'>): 'vertical' | 'horizontal' {
  return polarization === 'vertical' || polarization === 'right' ? 'vertical' : 'horizontal';
}

/** The unit and band of a carrier: as named, or the first that serves it. */
export function servedBy(job: JobFile, slot: JobSlot, carrier: JobCarrier): Served {
  const bandOf = (unit: JobUnit) =>
    unit.bands?.find(
      ({ fromGHz, toGHz }) => carrier.frequencyGHz >= fromGHz && carrier.frequencyGHz <= toGHz,
    );
  const serves = (unit: JobUnit) =>
    (unit.slots === undefined || unit.slots.includes(slot.name)) &&
    (unit.polarizations === undefined || unit.polarizations.includes(carrier.polarization)) &&
    (unit.bands === undefined || bandOf(unit) !== undefined);
  const unit = (job.units ?? []).find(
    (each) => (carrier.unit === undefined || each.name === carrier.unit) && serves(each),
  );
  return { unit, band: unit && bandOf(unit) };
}

/** Lines that carry a carrier of a unit. */
export function linesOf(job: JobFile, carrier: JobCarrier, { unit, band }: Served) {
  return (job.distribution?.lines ?? []).filter(
    (line) =>
      line.unit === unit?.name &&
      (line.band === undefined || line.band === band?.name) &&
      (line.polarizations === undefined || line.polarizations.includes(carrier.polarization)),
  );
}

/** Tuning of every carrier. */
export function tuningPlans(job: JobFile, notes: Ledger): readonly TuningPlan[] {
  return job.slots.flatMap((slot, slotIndex) =>
    (slot.carriers ?? []).map((carrier, index): TuningPlan => {
      const path = `slots[${slotIndex}].carriers[${index}]`;
      const served = servedBy(job, slot, carrier);
      const { unit, band } = served;
      const at = { slot: slot.name, carrier: carrier.name };
      const given = carrier.intermediateFrequencyMHz ?? null;
      if (!job.units) notes.miss('tuning', 'units', at);
      else if (unit && !band && given === null)
        notes.miss('tuning', `${path}.intermediateFrequencyMHz`, at);
      const localOscillatorGHz = band?.localOscillatorGHz ?? null;
      const worked =
        localOscillatorGHz === null
          ? null
          : Math.round(Math.abs(carrier.frequencyGHz - localOscillatorGHz) * 1e9) / 1e6;
      const [line] = linesOf(job, carrier, served);
      const voltageV =
        unit?.switchedByVoltage === true
          ? supplyCommand({ polarization: switchedPolarization(carrier), band: 'low' }).nominalV
          : null;
      return {
        ...at,
        frequencyGHz: carrier.frequencyGHz,
        polarization: carrier.polarization,
        unit: unit?.name ?? null,
        band: band?.name ?? null,
        localOscillatorGHz,
        intermediateFrequencyMHz: worked ?? given,
        givenFrequencyMHz: given,
        inverted: localOscillatorGHz !== null && localOscillatorGHz > carrier.frequencyGHz,
        voltageV,
        tone: band?.tone ?? null,
        into: line?.into ?? null,
        input: line?.input ?? null,
      };
    }),
  );
}

/** Whether a slot has a carrier of linear polarization, received or sent; one without carriers counts as `unknown`. */
export function hasLinear(job: JobFile, slot: string, unknown = false): boolean {
  const received = job.slots.find(({ name }) => name === slot)?.carriers ?? [];
  const sent = (job.transmit ?? []).filter((each) => each.slot === slot);
  const all = [...received, ...sent];
  return all.length === 0 ? unknown : all.some(({ polarization }) => isLinear(polarization));
}
