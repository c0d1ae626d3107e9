/** Noise density and the power of a carrier from what a spectrum display shows at its marker. */

import { inRange, oneOf, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';
import { exponentialIntegral } from './exponentialIntegral.js';

/** How the display averages: the logarithm of the power, the voltage, or the power itself. */
export type DisplayAverage = 'logarithm' | 'voltage' | 'power';

const DB_PER_NEPER_OF_POWER = 10 / Math.LN10;
const EULER = 0.5772156649015329;

/**
 * How far a display reads pure noise too low, in dB: 2.507 for the average of the logarithm, 1.049 for the average of the
 * voltage, 0 for the average of the power.
 *
 * @throws {@link DomainError} `not-an-option`.
 * Source: mean of the logarithm (10 log10 e x Euler's constant) and of the amplitude (10 log10 4/pi) of complex Gaussian noise;
 * general measuring practice gives 2.5 and 1.05. Accuracy: exact for noise without a carrier.
 * @example
 * ```ts
 * import { displayedNoiseTooLowDb } from 'slantpath/readings';
 * displayedNoiseTooLowDb('logarithm').toFixed(3); // => '2.507'
 * ```
 */
export function displayedNoiseTooLowDb(average: DisplayAverage): number {
  const kind = oneOf('average', average, ['logarithm', 'voltage', 'power']);
  if (kind === 'logarithm') return DB_PER_NEPER_OF_POWER * EULER;
  return kind === 'voltage' ? ratioToDb(4 / Math.PI) : 0;
}

/** Shape of the resolution filter. */
export type ResolutionFilter =
  | { readonly kind: 'gaussian' }
  /** Single-tuned stages one behind the other, all alike. */
  | {
      readonly kind: 'tuned-stages';
      /** Number of stages, 1 to 10. */
      readonly stages: number;
    };

const RESOLUTION_FILTER_KEYS = { kind: true, stages: true } satisfies Keys<ResolutionFilter>;

/**
 * Noise bandwidth of a resolution filter over its 3 dB bandwidth, 1 to 1.58: 1.0645 for a Gaussian filter.
 *
 * @throws {@link DomainError} naming `kind` or `stages`.
 * Source: integral of the filter's power response; application notes give 1.05 to 1.13. Accuracy: rounding only.
 * @example
 * ```ts
 * import { noiseBandwidthRatio } from 'slantpath/readings';
 * noiseBandwidthRatio({ kind: 'gaussian' }).toFixed(4); // => '1.0645'
 * noiseBandwidthRatio({ kind: 'tuned-stages', stages: 5 }).toFixed(4); // => '1.1138'
 * ```
 */
export function noiseBandwidthRatio(filter: ResolutionFilter): number {
  const given = knownOnly('filter', filter, RESOLUTION_FILTER_KEYS);
  oneOf('kind', given.kind, ['gaussian', 'tuned-stages']);
  if (given.kind === 'gaussian') return Math.sqrt(Math.PI / (4 * Math.LN2));
  const n = Math.round(inRange('stages', given.stages, 1, 10));
  // The power response of n stages is (1 + x^2)^-n with x in half bandwidths of one stage. Its integral is
  // pi times the product of (2 k - 3) / (2 k - 2), k from 2 to n; its 3 dB point is at sqrt(2^(1/n) - 1).
  let integral = Math.PI;
  for (let k = 2; k <= n; k += 1) integral *= (2 * k - 3) / (2 * k - 2);
  return integral / (2 * Math.sqrt(2 ** (1 / n) - 1));
}

/** A marker on noise, or on the flat top of a carrier. */
export interface MarkerReading {
  /** Level at the marker in dBm, -200 to 60. */
  readonly markerDbm: number;
  /** Resolution bandwidth of the display in MHz (3 dB), above 0. */
  readonly resolutionBandwidthMHz: number;
  /** Noise bandwidth over resolution bandwidth, 0.5 to 2; default 1.0645 (Gaussian filter). */
  readonly noiseBandwidthRatio?: number;
  /** How the display averages; default `power`, where nothing is to be added. */
  readonly average?: DisplayAverage;
}

const MARKER_READING_KEYS = {
  markerDbm: true,
  resolutionBandwidthMHz: true,
  noiseBandwidthRatio: true,
  average: true,
} satisfies Keys<MarkerReading>;

/**
 * Power density in dBm per hertz of noise, or of the flat top of a digital carrier (which is noise to a display).
 *
 * @throws {@link DomainError} naming the field.
 * Source: marker - 10 log10(noise bandwidth) + what the average reads too low. Accuracy: rounding; the display's own
 * uncertainty comes on top.
 * @example
 * ```ts
 * import { spectralDensity } from 'slantpath/readings';
 * const marker = { markerDbm: -80, resolutionBandwidthMHz: 0.1, average: 'logarithm' } as const;
 * spectralDensity(marker).toFixed(2); // => '-127.76'
 * ```
 */
export function spectralDensity(reading: MarkerReading): number {
  const given = known('reading', reading, MARKER_READING_KEYS);
  const bandwidthHz = 1e6 * positive('resolutionBandwidthMHz', given.resolutionBandwidthMHz);
  const ratio = inRange(
    'noiseBandwidthRatio',
    given.noiseBandwidthRatio ?? Math.sqrt(Math.PI / (4 * Math.LN2)),
    0.5,
    2,
  );
  return (
    inRange('markerDbm', given.markerDbm, -200, 60) -
    ratioToDb(bandwidthHz * ratio) +
    displayedNoiseTooLowDb(given.average ?? 'power')
  );
}

const CARRIER_POWER_READING_KEYS = {
  markerDbm: true,
  resolutionBandwidthMHz: true,
  noiseBandwidthRatio: true,
  average: true,
  symbolRateMBd: true,
} satisfies Keys<Parameters<typeof carrierPower>[0]>;

/**
 * Power in dBm of a digital carrier from the density of its flat top: density + 10 log10(symbol rate).
 *
 * Exact for any roll-off: the power of a root-raised-cosine carrier over its flat density is the symbol rate.
 *
 * @param reading  Marker on the flat top; symbol rate in millions of symbols a second, above 0.
 * @throws {@link DomainError} naming the field.
 * Source: definition of the root-raised-cosine spectrum (EN 302 307-1, 5.6). Accuracy: rounding; a tilted carrier is read at its mean.
 * @example
 * ```ts
 * import { carrierPower } from 'slantpath/readings';
 * carrierPower({ markerDbm: -62, resolutionBandwidthMHz: 1, symbolRateMBd: 27.5 }).toFixed(2); // => '-47.88'
 * ```
 */
export function carrierPower(reading: MarkerReading & { readonly symbolRateMBd: number }): number {
  const given = known('reading', reading, CARRIER_POWER_READING_KEYS);
  return spectralDensity(given) + ratioToDb(1e6 * positive('symbolRateMBd', given.symbolRateMBd));
}

const NARROW_METER_DB_METER_KEYS = { bandwidthMHz: true, symbolRateMBd: true } satisfies Keys<
  Parameters<typeof narrowMeterDb>[0]
>;

/**
 * How much to add in dB to a meter that reads the flat top of a carrier in a bandwidth narrower than the carrier.
 *
 * @param meter  Noise bandwidth of the meter and symbol rate of the carrier; the meter may not be wider.
 * @throws {@link DomainError} naming the field.
 * Source: ratio of symbol rate and bandwidth. Accuracy: rounding, on the flat part of the carrier.
 * @example
 * ```ts
 * import { narrowMeterDb } from 'slantpath/readings';
 * narrowMeterDb({ bandwidthMHz: 8, symbolRateMBd: 27.5 }).toFixed(2); // => '5.36'
 * ```
 */
export function narrowMeterDb(meter: {
  readonly bandwidthMHz: number;
  readonly symbolRateMBd: number;
}): number {
  const given = knownOnly('meter', meter, NARROW_METER_DB_METER_KEYS);
  const symbolRate = positive('symbolRateMBd', given.symbolRateMBd);
  const bandwidth = inRange(
    'bandwidthMHz',
    positive('bandwidthMHz', given.bandwidthMHz),
    0,
    symbolRate,
    'a meter wider than the carrier reads all of it: nothing is to be added',
  );
  return ratioToDb(symbolRate / bandwidth);
}

/**
 * How far a display that averages the logarithm reads an unmodulated carrier with noise above the carrier alone, in dB.
 *
 * Do not add 2.5 dB where a carrier stands in the bandwidth: the average of the logarithm is then nearly right by itself.
 *
 * @param carrierToNoiseDb  Carrier to noise in the resolution bandwidth in dB, -30 to 60.
 * @throws {@link DomainError} naming `carrierToNoiseDb`.
 * Source: mean of the logarithm of a Rician power, 10 log10 e x E1(S/N). Accuracy: 1e-12 dB.
 * @example
 * ```ts
 * import { logarithmAboveCarrierDb } from 'slantpath/readings';
 * logarithmAboveCarrierDb(0).toFixed(2); // => '0.95'
 * ```
 */
export function logarithmAboveCarrierDb(carrierToNoiseDb: number): number {
  const ratio = 10 ** (inRange('carrierToNoiseDb', carrierToNoiseDb, -30, 60) / 10);
  return DB_PER_NEPER_OF_POWER * exponentialIntegral(ratio);
}
