/** Radio frequency to intermediate frequency and back, through one local oscillator. */

import { DomainError, finite, inRange, oneOf, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';

/** A carrier and the oscillator that brings it down (or, in an uplink, up). */
export interface IntermediateFrequencyInput {
  /** Radio frequency of the carrier's centre in GHz, above 0 to 100. */
  readonly frequencyGHz: number;
  /** Frequency that the local oscillator should have in GHz, above 0 to 100. */
  readonly localOscillatorGHz: number;
  /** How far the oscillator is off in MHz, positive where it is too high; -50 to 50, default 0. */
  readonly localOscillatorErrorMHz?: number;
  /** Bandwidth that the carrier occupies in MHz, 0 to 1000; default 0. */
  readonly bandwidthMHz?: number;
}

const INTERMEDIATE_FREQUENCY_INPUT_KEYS = {
  frequencyGHz: true,
  localOscillatorGHz: true,
  localOscillatorErrorMHz: true,
  bandwidthMHz: true,
} satisfies Keys<IntermediateFrequencyInput>;

/** Where the carrier lies behind the unit. */
export interface IntermediateFrequency {
  /** Centre in MHz, above 0: |frequency - local oscillator|. */
  readonly intermediateFrequencyMHz: number;
  /** Side of the oscillator: `low-side` where it lies below the carrier, `high-side` above. */
  readonly injection: 'low-side' | 'high-side';
  /** True where the oscillator lies above the carrier: the lower radio edge becomes the upper edge here. */
  readonly spectrumInverted: boolean;
  /** Where the lower edge of the radio carrier lies in MHz; above the other one where the spectrum is inverted. */
  readonly lowerRadioEdgeMHz: number;
  /** Where the upper edge of the radio carrier lies in MHz. */
  readonly upperRadioEdgeMHz: number;
  /** Radio frequency in GHz that would come out at the same place, on the other side of the oscillator; 0 or more. */
  readonly imageFrequencyGHz: number;
}

/** To the hertz: the last digits of a sum of gigahertz and megahertz are rounding, not frequency. */
const toHertz = (frequencyMHz: number): number => Math.round(frequencyMHz * 1e6) / 1e6;

/**
 * Intermediate frequency (IF) of a carrier behind a unit (LNB, converter) with one local oscillator (LO).
 *
 * IF = |f - LO|. With the LO below the carrier the spectrum keeps its sense; with the LO above it is inverted.
 * An LO that is too high lowers the IF where it lies below the carrier and raises it where it lies above.
 *
 * @throws {@link DomainError} naming the field; `inconsistent` where the oscillator lies within the carrier.
 * Source: definition of a mixer's difference frequency. Accuracy: to the hertz.
 * @example
 * ```ts
 * import { intermediateFrequency } from 'slantpath/tuning';
 * const behind = intermediateFrequency({ frequencyGHz: 12.69225, localOscillatorGHz: 10.6 });
 * behind.intermediateFrequencyMHz; // => 2092.25
 * behind.spectrumInverted; // => false
 * ```
 */
export function intermediateFrequency(input: IntermediateFrequencyInput): IntermediateFrequency {
  const given = knownOnly('input', input, INTERMEDIATE_FREQUENCY_INPUT_KEYS);
  const carrierMHz =
    1000 *
    inRange('frequencyGHz', positive('frequencyGHz', given.frequencyGHz), 0, 100, IN_MEGAHERTZ);
  const nominalMHz =
    1000 *
    inRange(
      'localOscillatorGHz',
      positive('localOscillatorGHz', given.localOscillatorGHz),
      0,
      100,
      IN_MEGAHERTZ,
    );
  const errorMHz = inRange('localOscillatorErrorMHz', given.localOscillatorErrorMHz ?? 0, -50, 50);
  const halfMHz = inRange('bandwidthMHz', given.bandwidthMHz ?? 0, 0, 1000) / 2;
  const oscillatorMHz = nominalMHz + errorMHz;
  const differenceMHz = carrierMHz - oscillatorMHz;
  if (Math.abs(toHertz(differenceMHz)) <= halfMHz)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'localOscillatorGHz',
      received: given.localOscillatorGHz,
      allowed: 'outside the band that the carrier occupies',
    });
  const inverted = differenceMHz < 0;
  const edge = (offsetMHz: number): number => toHertz(Math.abs(differenceMHz + offsetMHz));
  return {
    intermediateFrequencyMHz: edge(0),
    injection: inverted ? 'high-side' : 'low-side',
    spectrumInverted: inverted,
    lowerRadioEdgeMHz: edge(-halfMHz),
    upperRadioEdgeMHz: edge(halfMHz),
    imageFrequencyGHz: toHertz(Math.max(0, oscillatorMHz - differenceMHz)) / 1000,
  };
}

const IN_MEGAHERTZ = 'is it in MHz?';

const RADIO_FREQUENCY_FOUND_KEYS = {
  intermediateFrequencyMHz: true,
  localOscillatorGHz: true,
  injection: true,
} satisfies Keys<Parameters<typeof radioFrequency>[0]>;

/**
 * Radio frequency in GHz of what is found at an intermediate frequency.
 *
 * @param found  Intermediate frequency in MHz, above 0; local oscillator in GHz; the side on which the oscillator lies,
 *   `low-side` by default (Ku and Ka units; C-band units are `high-side`).
 * @throws {@link DomainError} naming the field; `inconsistent` where the answer would be 0 or less.
 * Source: definition of a mixer's difference frequency. Accuracy: to the hertz.
 * @example
 * ```ts
 * import { radioFrequency } from 'slantpath/tuning';
 * radioFrequency({ intermediateFrequencyMHz: 1310, localOscillatorGHz: 5.15, injection: 'high-side' }); // => 3.84
 * ```
 */
export function radioFrequency(found: {
  readonly intermediateFrequencyMHz: number;
  readonly localOscillatorGHz: number;
  readonly injection?: 'low-side' | 'high-side';
}): number {
  const given = known('found', found, RADIO_FREQUENCY_FOUND_KEYS);
  const between = positive('intermediateFrequencyMHz', given.intermediateFrequencyMHz);
  const oscillatorGHz = inRange(
    'localOscillatorGHz',
    positive('localOscillatorGHz', given.localOscillatorGHz),
    0,
    100,
    IN_MEGAHERTZ,
  );
  const side = oneOf('injection', given.injection ?? 'low-side', ['low-side', 'high-side']);
  const radioMHz = oscillatorGHz * 1000 + (side === 'low-side' ? between : -between);
  if (radioMHz <= 0)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'intermediateFrequencyMHz',
      received: between,
      allowed: 'below the local oscillator where the oscillator lies above the carrier',
    });
  return toHertz(radioMHz) / 1000;
}

const CARRIER_TAKEN_INSTEAD_WANTED_KEYS = {
  frequencyGHz: true,
  localOscillatorGHz: true,
  actualLocalOscillatorGHz: true,
} satisfies Keys<Parameters<typeof carrierTakenInstead>[0]>;

/**
 * Radio frequency in GHz of the carrier that a receiver takes in at the same place when the unit runs on another
 * oscillator than the receiver believes: the 22 kHz tone is missing or stays on.
 *
 * @param wanted  Carrier in GHz, the oscillator that the receiver counts with and the one that runs, in GHz.
 * @throws {@link DomainError} naming the field.
 * Source: definition of a mixer's difference frequency. Accuracy: to the hertz.
 * @example
 * ```ts
 * import { carrierTakenInstead } from 'slantpath/tuning';
 * carrierTakenInstead({ frequencyGHz: 12.322, localOscillatorGHz: 10.6, actualLocalOscillatorGHz: 9.75 }); // => 11.472
 * ```
 */
export function carrierTakenInstead(wanted: {
  readonly frequencyGHz: number;
  readonly localOscillatorGHz: number;
  readonly actualLocalOscillatorGHz: number;
}): number {
  const given = knownOnly('wanted', wanted, CARRIER_TAKEN_INSTEAD_WANTED_KEYS);
  const { intermediateFrequencyMHz, injection } = intermediateFrequency({
    frequencyGHz: given.frequencyGHz,
    localOscillatorGHz: given.localOscillatorGHz,
  });
  return radioFrequency({
    intermediateFrequencyMHz,
    localOscillatorGHz: positive('actualLocalOscillatorGHz', given.actualLocalOscillatorGHz),
    injection,
  });
}

const OSCILLATOR_ERROR_KHZ_OSCILLATOR_KEYS = {
  localOscillatorGHz: true,
  stabilityPpm: true,
} satisfies Keys<Parameters<typeof oscillatorErrorKHz>[0]>;

/**
 * How far a unit's oscillator may be off in kHz, either way, for a stability in parts per million: LO x ppm.
 *
 * @param oscillator  Local oscillator in GHz, above 0 to 100; stability in parts per million, 0 to 1000.
 * @throws {@link DomainError} naming the field.
 * Source: definition of parts per million. Accuracy: rounding only.
 * @example
 * ```ts
 * import { oscillatorErrorKHz } from 'slantpath/tuning';
 * oscillatorErrorKHz({ localOscillatorGHz: 10.6, stabilityPpm: 25 }).toFixed(0); // => '265'
 * ```
 */
export function oscillatorErrorKHz(oscillator: {
  readonly localOscillatorGHz: number;
  readonly stabilityPpm: number;
}): number {
  const given = knownOnly('oscillator', oscillator, OSCILLATOR_ERROR_KHZ_OSCILLATOR_KEYS);
  const frequencyGHz = inRange(
    'localOscillatorGHz',
    finite('localOscillatorGHz', given.localOscillatorGHz),
    0,
    100,
    IN_MEGAHERTZ,
  );
  return frequencyGHz * inRange('stabilityPpm', given.stabilityPpm, 0, 1000);
}
