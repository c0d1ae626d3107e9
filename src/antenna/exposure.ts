/** Power density in front of a transmitting reflector, and the distance at which it has fallen to a limit. */

import { SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { DomainError, inRange } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { dbToRatio } from '../numeric/decibel.js';
import { type ExposureLimit, type ExposureLimitInput, exposureLimit } from './exposureLimit.js';
import { checkedDiameterM, checkedFrequencyGHz } from './guards.js';

/** A transmitting reflector. */
export interface Transmitter {
  /** Diameter in metres, 0.05 to 100. */
  readonly diameterM: number;
  /** Frequency in GHz, 0.1 to 400. */
  readonly frequencyGHz: number;
  /** Mean power at the antenna's flange in watts, 1e-9 to 1e5. */
  readonly powerW: number;
  /** Gain in dBi, -10 to 100; default that of an efficiency of 0.65. */
  readonly antennaGainDbi?: number;
}

const TRANSMITTER_KEYS = {
  diameterM: true,
  frequencyGHz: true,
  powerW: true,
  antennaGainDbi: true,
} satisfies Keys<Transmitter>;

/** The regions in front of the reflector. */
export interface FieldRegions {
  /** Gain over that of a lossless evenly lit aperture. */
  readonly efficiencyRatio: number;
  /** Highest density at the reflector's surface, 4 P / A, in W/m2. */
  readonly surfaceWPerM2: number;
  /** Highest density on the axis in the near field, 16 e P / (pi D^2), in W/m2. */
  readonly nearFieldWPerM2: number;
  /** End of the near field, D^2 / (4 wavelength), in metres. */
  readonly nearFieldEndM: number;
  /** Beginning of the far field for this purpose, 0.6 D^2 / wavelength, in metres. */
  readonly farFieldFromM: number;
}

/** Power density on the axis at a distance. */
export interface PowerDensity extends FieldRegions {
  /** Region that the distance falls into. */
  readonly region: 'near-field' | 'transition' | 'far-field';
  /** Highest power density on the axis there, in W/m2. */
  readonly powerDensityWPerM2: number;
  /** What to heed. */
  readonly cautions: readonly string[];
}

/** Outcome of {@link safeDistance}. */
export type SafeDistance = FieldRegions & {
  /** The limit that was used. */
  readonly limit: ExposureLimit;
  /** What to heed. */
  readonly cautions: readonly string[];
} & (
    | {
        /** `distance`: in front of the reflector the limit is exceeded up to `distanceM`. */
        readonly kind: 'distance';
        /** Distance on the axis in metres beyond which the limit is kept. */
        readonly distanceM: number;
        /** Region in which that distance lies. */
        readonly region: 'transition' | 'far-field';
      }
    | {
        /**
         * `at-the-surface`: in the beam the limit is kept, at the surface of reflector and feed it may not be.
         * `not-reached`: not even at the surface is the limit exceeded.
         */
        readonly kind: 'at-the-surface' | 'not-reached';
      }
  );

const CAUTIONS: readonly string[] = [
  'Estimate on the axis of the beam; the density at the feed is higher. Never enter the beam or the space between feed and reflector while the transmitter can be on.',
  'Switch off and lock the transmitter before work in front of the reflector.',
  'The limits and procedures of local law and of the site bind; have the assessment made by a licensed practitioner.',
];

function regions(transmitter: Transmitter): FieldRegions & { readonly farFieldWPerSr: number } {
  const input = knownOnly('transmitter', transmitter, TRANSMITTER_KEYS);
  const diameterM = checkedDiameterM(input.diameterM);
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (checkedFrequencyGHz(input.frequencyGHz) * 1e9);
  const powerW = inRange('powerW', input.powerW, 1e-9, 1e5, 'is the power in watts?');
  const idealRatio = ((Math.PI * diameterM) / wavelengthM) ** 2;
  const gainRatio =
    input.antennaGainDbi === undefined
      ? 0.65 * idealRatio
      : dbToRatio(inRange('antennaGainDbi', input.antennaGainDbi, -10, 100));
  const efficiencyRatio = gainRatio / idealRatio;
  if (efficiencyRatio > 1)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'antennaGainDbi',
      received: input.antennaGainDbi,
      allowed: 'at most that of a lossless reflector of the size',
      slip: 'do gain, diameter and frequency belong together?',
    });
  return {
    efficiencyRatio,
    surfaceWPerM2: (16 * powerW) / (Math.PI * diameterM ** 2),
    nearFieldWPerM2: (16 * efficiencyRatio * powerW) / (Math.PI * diameterM ** 2),
    nearFieldEndM: diameterM ** 2 / (4 * wavelengthM),
    farFieldFromM: (0.6 * diameterM ** 2) / wavelengthM,
    farFieldWPerSr: (powerW * gainRatio) / (4 * Math.PI),
  };
}

/**
 * Highest power density on the axis of a transmitting reflector at a distance in front of it.
 *
 * Near field: 16 e P / (pi D^2) up to D^2 / (4 wavelength); then falling with the distance; from
 * 0.6 D^2 / wavelength on, P G / (4 pi R^2). The last two meet within 3 %.
 *
 * @param distanceM  Distance from the aperture in metres, 0 to 1e9.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: FCC OET Bulletin 65, edition 97-01, section 2 (aperture antennas), as read in public radiation-hazard analyses of earth stations
 * that follow it; the bulletin itself was not at hand.
 * Accuracy: an estimate that errs towards more; off the axis the density is lower, at the feed higher.
 * @example
 * ```ts
 * import { powerDensity } from 'slantpath/antenna';
 * powerDensity({ diameterM: 1.2, frequencyGHz: 14.25, powerW: 4 }, 10).powerDensityWPerM2.toFixed(2); // => '9.20'
 * ```
 */
export function powerDensity(transmitter: Transmitter, distanceM: number): PowerDensity {
  const { farFieldWPerSr, ...field } = regions(transmitter);
  const distance = inRange('distanceM', distanceM, 0, 1e9, 'is the distance in metres?');
  const region =
    distance <= field.nearFieldEndM
      ? 'near-field'
      : distance < field.farFieldFromM
        ? 'transition'
        : 'far-field';
  const powerDensityWPerM2 =
    region === 'near-field'
      ? field.nearFieldWPerM2
      : region === 'transition'
        ? (field.nearFieldWPerM2 * field.nearFieldEndM) / distance
        : farFieldWPerSr / distance ** 2;
  return { ...field, region, powerDensityWPerM2, cautions: CAUTIONS };
}

const SAFE_DISTANCE_LIMIT_KEYS = { standard: true, group: true } satisfies Keys<
  Parameters<typeof safeDistance>[1]
>;

/**
 * Distance in front of a transmitting reflector beyond which a published limit of exposure is kept on the axis.
 *
 * @param limit  `standard` and `group` as for {@link exposureLimit}, at the transmitter's frequency.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: as {@link powerDensity} and {@link exposureLimit}.
 * Accuracy: an estimate that errs towards more; local law and licensed practice decide.
 * @example
 * ```ts
 * import { safeDistance } from 'slantpath/antenna';
 * const safe = safeDistance(
 *   { diameterM: 2.4, frequencyGHz: 14.25, powerW: 40 },
 *   { standard: 'FCC 1.1310', group: 'public' },
 * );
 * safe.kind === 'distance' && safe.distanceM.toFixed(1); // => '157.4'
 * ```
 */
export function safeDistance(
  transmitter: Transmitter,
  limit: Pick<ExposureLimitInput, 'standard' | 'group'>,
): SafeDistance {
  const { farFieldWPerSr, ...field } = regions(transmitter);
  const used = exposureLimit({
    ...known('limit', limit, SAFE_DISTANCE_LIMIT_KEYS),
    frequencyGHz: transmitter.frequencyGHz,
  });
  const limitWPerM2 = used.powerDensityWPerM2;
  const head = { ...field, limit: used, cautions: CAUTIONS };
  if (field.surfaceWPerM2 <= limitWPerM2) return { kind: 'not-reached', ...head };
  if (field.nearFieldWPerM2 <= limitWPerM2) return { kind: 'at-the-surface', ...head };
  const farM = Math.sqrt(farFieldWPerSr / limitWPerM2);
  const transitionM = (field.nearFieldWPerM2 * field.nearFieldEndM) / limitWPerM2;
  // The far-field form is 3 % higher where the two meet, so it is asked first.
  return farM >= field.farFieldFromM
    ? { kind: 'distance', distanceM: farM, region: 'far-field', ...head }
    : { kind: 'distance', distanceM: transitionM, region: 'transition', ...head };
}
