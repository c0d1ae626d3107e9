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
  /** Bandwidth that the carrier occupies in MHz; `null` without a symbol rate. */
  readonly occupiedMHz: number | null;
  /** How far the local oscillator may be off in kHz, either way; `null` where the unit does not say. */
  readonly oscillatorErrorKHz: number | null;
  /** What else would come out at the same place, on the other side of the oscillator, in GHz; `null` without an oscillator or where nothing would. */
  readonly imageFrequencyGHz: number | null;
  /** Whether the carrier lies whole within what the receivers tune over, partly, or not at all; `null` where its place on the cable is not known. */
  readonly inRange: 'inside' | 'cut-off' | 'outside' | null;
  /** Voltage that chooses the polarization; `null` for a unit that is not switched by voltage, or is told by messages. */
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

/** What receivers tune over where the job does not say, in MHz (practice of the trade). */
const USUAL_RANGE = { lowestMHz: 950, highestMHz: 2150 };

/** Widening of a carrier by its roll-off where the job does not say: EN 300 421 fixes 0.35; the later standards have 0.35 and less. */
const ROLL_OFF_RATIO = 0.35;

/** Bandwidth that a carrier occupies in MHz: symbol rate times one and the roll-off; `null` without a symbol rate. */
export function occupiedMHz({
  symbolRateMBd,
  rollOffRatio,
}: Pick<JobCarrier, 'symbolRateMBd' | 'rollOffRatio'>): number | null {
  return symbolRateMBd === undefined
    ? null
    : symbolRateMBd * (1 + (rollOffRatio ?? ROLL_OFF_RATIO));
}

/** Where a carrier stands against a range of frequencies. */
function placeInRange(
  centreMHz: number,
  widthMHz: number,
  { lowestMHz, highestMHz }: { readonly lowestMHz: number; readonly highestMHz: number },
): 'inside' | 'cut-off' | 'outside' {
  const [low, high] = [centreMHz - widthMHz / 2, centreMHz + widthMHz / 2];
  if (low >= lowestMHz && high <= highestMHz) return 'inside';
  return high <= lowestMHz || low >= highestMHz ? 'outside' : 'cut-off';
}

/** What the receivers tune over, as given or as usual. */
export function tunerRange(
  job: Pick<JobFile, 'tuner'>,
  notes?: Ledger,
): { readonly lowestMHz: number; readonly highestMHz: number } {
  const { tuner } = job;
  const take = (name: keyof typeof USUAL_RANGE) =>
    notes?.number(tuner?.[name], `tuner.${name}`, USUAL_RANGE[name], 'MHz') ??
    tuner?.[name] ??
    USUAL_RANGE[name];
  return { lowestMHz: take('lowestMHz'), highestMHz: take('highestMHz') };
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
  const asked = job.slots.some(({ carriers = [] }) => carriers.length > 0);
  const byCommand = job.distribution?.stacking?.kind === 'user-bands';
  const range = tunerRange(job, asked ? notes : undefined);
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
      const placeMHz = worked ?? given;
      const widthMHz = occupiedMHz(carrier);
      const image =
        localOscillatorGHz === null
          ? null
          : Math.round((2 * localOscillatorGHz - carrier.frequencyGHz) * 1e9) / 1e9;
      const [line] = linesOf(job, carrier, served);
      const voltageV =
        unit?.switchedByVoltage === true && !byCommand
          ? supplyCommand({ polarization: switchedPolarization(carrier), band: 'low' }).nominalV
          : null;
      return {
        ...at,
        frequencyGHz: carrier.frequencyGHz,
        polarization: carrier.polarization,
        unit: unit?.name ?? null,
        band: band?.name ?? null,
        localOscillatorGHz,
        intermediateFrequencyMHz: placeMHz,
        givenFrequencyMHz: given,
        inverted: localOscillatorGHz !== null && localOscillatorGHz > carrier.frequencyGHz,
        occupiedMHz: widthMHz,
        oscillatorErrorKHz:
          unit?.localOscillatorStabilityMHz === undefined
            ? null
            : 1000 * unit.localOscillatorStabilityMHz,
        imageFrequencyGHz: image !== null && image > 0 ? image : null,
        inRange: placeMHz === null ? null : placeInRange(placeMHz, widthMHz ?? 0, range),
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
