/** Which planned carriers a terrestrial band can disturb, in the cable or in the receiving unit itself. */

import { DomainError, inRange, objects, positive, text } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { type TerrestrialBand, terrestrialBands } from './terrestrialBands.js';

/** A carrier with the unit that brings it down. */
export interface ExposedCarrierInput {
  /** Name, as on the job. */
  readonly name: string;
  /** Radio frequency of its centre in GHz. */
  readonly frequencyGHz: number;
  /** Bandwidth that it occupies in MHz, above 0. */
  readonly bandwidthMHz: number;
  /** Local oscillator of its unit in GHz. */
  readonly localOscillatorGHz: number;
}

const EXPOSED_CARRIER_INPUT_KEYS = {
  name: true,
  frequencyGHz: true,
  bandwidthMHz: true,
  localOscillatorGHz: true,
} satisfies Keys<ExposedCarrierInput>;

/** One carrier under one band. */
export interface Exposure {
  /** Name of the carrier. */
  readonly carrier: string;
  /** Name of the band. */
  readonly band: string;
  /** Who sends there: a handset or cordless phone, or a mast. */
  readonly sender: 'handset' | 'mast';
  /** Where it gets in: through the cable's screen at the intermediate frequency, or into the unit at the radio frequency. */
  readonly way: 'cable' | 'unit';
  /** How much of the carrier lies under the band in MHz. */
  readonly overlapMHz: number;
}

const EXPOSED_CARRIERS_JOB_KEYS = { carriers: true, bands: true } satisfies Keys<
  Parameters<typeof exposedCarriers>[0]
>;

/**
 * Terrestrial bands that fall on a carrier, the widest overlap first.
 *
 * A band that lies on the intermediate frequency gets in through poor screens and connectors; one that lies on the radio frequency itself (C
 * band) gets in through the antenna. Bands beside the carrier can still drive a unit or an amplifier too far.
 *
 * @param job  Up to 1000 carriers; bands, all of `terrestrialBands` by default.
 * @throws {@link DomainError} naming the field of the carrier.
 * Source: intervals of `terrestrialBands`. Accuracy: exact; whether the band is on the air there is for you to see.
 * @example
 * ```ts
 * import { exposedCarriers } from 'slantpath/ingress';
 * const [worst] = exposedCarriers({
 *   carriers: [{ name: 'A', frequencyGHz: 11.64, bandwidthMHz: 33, localOscillatorGHz: 9.75 }],
 * });
 * `${worst?.band} ${worst?.way} ${worst?.overlapMHz}`; // => 'B39 cable 26.5'
 * ```
 */
export function exposedCarriers(job: {
  readonly carriers: readonly ExposedCarrierInput[];
  readonly bands?: readonly TerrestrialBand[];
}): readonly Exposure[] {
  const given = known('job', job, EXPOSED_CARRIERS_JOB_KEYS);
  if (!Array.isArray(given.carriers) || given.carriers.length > 1000)
    throw new DomainError({
      code: given.carriers === undefined ? 'missing' : 'malformed',
      parameter: 'carriers',
      received: given.carriers,
      allowed: 'an array of at most 1000 carriers',
    });
  const found: Exposure[] = [];
  objects<ExposedCarrierInput>('carriers', given.carriers).forEach((carrier, index) => {
    const path = `carriers[${index}]`;
    const at = known(path, carrier, EXPOSED_CARRIER_INPUT_KEYS);
    const name = text(`${path}.name`, at.name);
    const centreMHz = 1000 * inRange(`${path}.frequencyGHz`, at.frequencyGHz, 0.1, 100);
    const halfMHz = positive(`${path}.bandwidthMHz`, at.bandwidthMHz) / 2;
    const oscillatorMHz =
      1000 * inRange(`${path}.localOscillatorGHz`, at.localOscillatorGHz, 0.1, 100);
    const betweenMHz = Math.abs(centreMHz - oscillatorMHz);
    for (const band of given.bands ?? terrestrialBands)
      for (const sender of ['handset', 'mast'] as const)
        for (const [way, middleMHz] of [
          ['cable', betweenMHz],
          ['unit', centreMHz],
        ] as const) {
          const [fromMHz, toMHz] = band[sender];
          // A band that handset and mast share counts once, as the nearer of the two: the handset.
          if (sender === 'mast' && fromMHz === band.handset[0]) continue;
          const overlapMHz =
            Math.min(toMHz, middleMHz + halfMHz) - Math.max(fromMHz, middleMHz - halfMHz);
          if (overlapMHz > 1e-9)
            found.push({
              carrier: name,
              band: band.name,
              sender,
              way,
              overlapMHz: Math.round(overlapMHz * 1e6) / 1e6,
            });
        }
  });
  return found.sort((a, b) => b.overlapMHz - a.overlapMHz);
}

const FREQUENCIES_UNDER_BAND_BAND_KEYS = {
  fromMHz: true,
  toMHz: true,
  localOscillatorGHz: true,
  injection: true,
} satisfies Keys<Parameters<typeof frequenciesUnderBand>[0]>;

/**
 * Radio frequencies in GHz whose intermediate frequency falls on a band, from the lower to the upper.
 *
 * @param band  Edges of the band in MHz, rising; local oscillator in GHz; side of the oscillator, `low-side` by default.
 * @throws {@link DomainError} naming the field.
 * Source: difference frequency. Accuracy: rounding only.
 * @example
 * ```ts
 * import { frequenciesUnderBand } from 'slantpath/ingress';
 * const under = frequenciesUnderBand({ fromMHz: 1880, toMHz: 1900, localOscillatorGHz: 9.75 });
 * `${under.fromGHz} ${under.toGHz}`; // => '11.63 11.65'
 * ```
 */
export function frequenciesUnderBand(band: {
  readonly fromMHz: number;
  readonly toMHz: number;
  readonly localOscillatorGHz: number;
  readonly injection?: 'low-side' | 'high-side';
}): { readonly fromGHz: number; readonly toGHz: number } {
  const given = knownOnly('band', band, FREQUENCIES_UNDER_BAND_BAND_KEYS);
  const from = positive('fromMHz', given.fromMHz);
  const to = inRange('toMHz', given.toMHz, from, 100_000);
  const oscillator = 1000 * inRange('localOscillatorGHz', given.localOscillatorGHz, 0.1, 100);
  const inGHz = (megahertz: number): number => Math.round(megahertz * 1e6) / 1e9;
  return given.injection === 'high-side'
    ? { fromGHz: inGHz(oscillator - to), toGHz: inGHz(oscillator - from) }
    : { fromGHz: inGHz(oscillator + from), toGHz: inGHz(oscillator + to) };
}
