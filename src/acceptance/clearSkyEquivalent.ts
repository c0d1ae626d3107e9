/** A reading taken in rain, turned into what it would be under a clear sky. */

import { DomainError, inRange, oneOf, positive } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { sinDeg } from '../numeric/angle.js';
import { frequencyScaledRain, specificRainAttenuation } from '../propagation/index.js';

/** How the fade is known. */
export type FadeEvidence =
  | {
      /** From the fade of a beacon or a steady carrier of another slot, at the same time. */
      readonly kind: 'beacon';
      /** Frequency of the beacon in GHz. */
      readonly frequencyGHz: number;
      /** Elevation of the beacon's slot in degrees. */
      readonly elevationDeg: number;
      /** How far the beacon stands below its clear-sky level in dB, 0 or more. */
      readonly fadeDb: number;
      /** Standard uncertainty of that fade in dB, above 0. */
      readonly fadeStandardUncertaintyDb: number;
    }
  | {
      /** From the rain rate at the station. */
      readonly kind: 'rain-rate';
      /** Rain rate in mm/h. */
      readonly rainRateMmPerH: number;
      /** Height of the rain above the station in kilometres, 0 to 10. */
      readonly rainHeightAboveStationKm: number;
      /** Polarization tilt against the horizontal in degrees; 45 by default. */
      readonly tiltDeg?: number;
    };

const FADE_EVIDENCE_KEYS = {
  kind: true,
  frequencyGHz: true,
  elevationDeg: true,
  fadeDb: true,
  fadeStandardUncertaintyDb: true,
  rainRateMmPerH: true,
  rainHeightAboveStationKm: true,
  tiltDeg: true,
} satisfies Keys<FadeEvidence>;

/** A reading in rain. */
export interface RainyReading {
  /** `level` in dBuV, or a ratio in dB, which also suffers from the noise of the rain. */
  readonly quantity: 'level' | 'carrier-to-noise' | 'modulation-error-ratio';
  /** The reading, dBuV for a level, dB otherwise. */
  readonly reading: number;
  /** Its standard uncertainty in dB, above 0. */
  readonly standardUncertainty: number;
  /** Frequency of the carrier in GHz. */
  readonly frequencyGHz: number;
  /** Elevation of its slot in degrees, 5 to 90. */
  readonly elevationDeg: number;
  /** Clear-sky system noise temperature in kelvin; needed for the ratios only, 120 by default. */
  readonly systemNoiseK?: number;
  /** How the fade is known. */
  readonly evidence: FadeEvidence;
}

const RAINY_READING_KEYS = {
  quantity: true,
  reading: true,
  standardUncertainty: true,
  frequencyGHz: true,
  elevationDeg: true,
  systemNoiseK: true,
  evidence: true,
} satisfies Keys<RainyReading>;

/** The clear-sky equivalent with its terms. */
export interface ClearSkyEquivalent {
  /** Fade of the carrier in dB. */
  readonly fadeDb: number;
  /** Standard uncertainty of that fade in dB. */
  readonly fadeStandardUncertaintyDb: number;
  /** Rise of the system noise in dB; 0 for a level. */
  readonly noiseRiseDb: number;
  /** The clear-sky equivalent, in the unit of the reading. */
  readonly clearSkyReading: number;
  /** Its standard uncertainty in dB. */
  readonly standardUncertainty: number;
}

/** Mean temperature of rain as a noise source, kelvin (ITU-R P.618). */
const RAIN_TEMPERATURE_K = 275;
/** Scatter of instantaneous fade ratios between frequencies and paths, as a share of the fade (practice). */
const SCALING_SCATTER = 0.15;
/** Scatter of the fade for a given rate at one gauge, as a share of the fade (practice). */
const RATE_SCATTER = 0.35;

/** Fade at one frequency over that at another on the same path (P.618-14); at no fade its limit for small ones. */
function fadeRatio(fadeDb: number, fromGHz: number, toGHz: number): number {
  const attenuationDb = Math.max(fadeDb, 1e-9);
  return frequencyScaledRain({ attenuationDb, fromGHz, toGHz }).attenuationDb / attenuationDb;
}

function fadeOf(reading: RainyReading): {
  readonly fadeDb: number;
  readonly standardUncertaintyDb: number;
} {
  const { evidence } = reading;
  const pathRatio = (elevationDeg: number): number =>
    sinDeg(elevationDeg) / sinDeg(reading.elevationDeg);
  if (evidence.kind === 'beacon') {
    const fadeDb = inRange('evidence.fadeDb', evidence.fadeDb, 0, 60);
    const elevationDeg = inRange('evidence.elevationDeg', evidence.elevationDeg, 5, 90);
    const own = inRange(
      'evidence.fadeStandardUncertaintyDb',
      positive('evidence.fadeStandardUncertaintyDb', evidence.fadeStandardUncertaintyDb),
      0,
      60,
    );
    const fromGHz = inRange('evidence.frequencyGHz', evidence.frequencyGHz, 7, 55, 'is it in MHz?');
    const path = pathRatio(elevationDeg);
    const slope = fadeRatio(fadeDb, fromGHz, reading.frequencyGHz) * path;
    const scaled = slope * fadeDb;
    const same = fromGHz === reading.frequencyGHz && elevationDeg === reading.elevationDeg;
    return {
      fadeDb: scaled,
      standardUncertaintyDb: Math.hypot(slope * own, same ? 0 : SCALING_SCATTER * scaled),
    };
  }
  const rainRateMmPerH = inRange('evidence.rainRateMmPerH', evidence.rainRateMmPerH, 0, 300);
  const heightKm = inRange(
    'evidence.rainHeightAboveStationKm',
    evidence.rainHeightAboveStationKm,
    0,
    10,
    'is it given in metres?',
  );
  const specific = specificRainAttenuation({
    frequencyGHz: reading.frequencyGHz,
    elevationDeg: reading.elevationDeg,
    tiltDeg: evidence.tiltDeg ?? 45,
    rainRateMmPerH,
  });
  const slantKm = heightKm / sinDeg(reading.elevationDeg);
  const groundKm = Math.sqrt(Math.max(0, slantKm * slantKm - heightKm * heightKm));
  // Rain cells are smaller the harder it rains.
  const cellKm = 35 * Math.exp(-0.015 * Math.min(100, rainRateMmPerH));
  const fadeDb = (specific.specificAttenuationDbPerKm * slantKm) / (1 + groundKm / cellKm);
  return { fadeDb, standardUncertaintyDb: RATE_SCATTER * fadeDb };
}

/**
 * Clear-sky equivalent of a reading taken in rain, with its uncertainty.
 *
 * The fade comes from a second slot's beacon (scaled in frequency and path length) or from the rain rate. A level
 * gets the fade back; a carrier-to-noise ratio also the rise of noise 10 log((T + 275 (1 - 10^(-A/10)))/T).
 *
 * @throws {@link DomainError} naming the field.
 *
 * Source: Recommendation ITU-R P.618-14 section 2.2.1.3.2 (frequency scaling of rain attenuation, 7 to 55 GHz),
 * P.838-3; path in a rain cell L / (1 + L_ground / (35 exp(-0.015 R))) of the older P.618-5. The scatter of 15 percent of the
 * fade (beacon) and 35 percent (rain rate) is practice, not a published figure.
 * Accuracy: carried in `standardUncertainty`.
 * @example
 * ```ts
 * import { clearSkyEquivalent } from 'slantpath/acceptance';
 * const equivalent = clearSkyEquivalent({
 *   quantity: 'level', reading: 55, standardUncertainty: 0.5, frequencyGHz: 20, elevationDeg: 36,
 *   evidence: { kind: 'beacon', frequencyGHz: 12.5, elevationDeg: 34, fadeDb: 2, fadeStandardUncertaintyDb: 0.3 },
 * });
 * equivalent.fadeDb.toFixed(1); // => '4.6'
 * ```
 */
export function clearSkyEquivalent(reading: RainyReading): ClearSkyEquivalent {
  known('reading', reading, RAINY_READING_KEYS);
  oneOf('quantity', reading.quantity, ['level', 'carrier-to-noise', 'modulation-error-ratio']);
  const value = inRange('reading', reading.reading, -200, 200);
  const own = inRange(
    'standardUncertainty',
    positive('standardUncertainty', reading.standardUncertainty),
    0,
    100,
  );
  inRange('frequencyGHz', reading.frequencyGHz, 7, 55, 'was the frequency given in MHz?');
  inRange('elevationDeg', reading.elevationDeg, 5, 90);
  const temperatureK = inRange('systemNoiseK', reading.systemNoiseK ?? 120, 10, 10000);
  known('evidence', reading.evidence, FADE_EVIDENCE_KEYS);
  oneOf('evidence.kind', reading.evidence.kind, ['beacon', 'rain-rate']);
  const { fadeDb, standardUncertaintyDb } = fadeOf(reading);
  if (fadeDb > 60)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'evidence',
      received: fadeDb,
      allowed: 'evidence of a fade of at most 60 dB; nothing can be measured through more',
    });
  const passing = 10 ** (-fadeDb / 10);
  const isRatio = reading.quantity !== 'level';
  const rise = RAIN_TEMPERATURE_K * (1 - passing);
  const noiseRiseDb = isRatio ? 10 * Math.log10((temperatureK + rise) / temperatureK) : 0;
  // How fast the equivalent grows with the fade: 1 for a level, more where the noise grows too.
  const slope = isRatio ? 1 + (RAIN_TEMPERATURE_K * passing) / (temperatureK + rise) : 1;
  return {
    fadeDb,
    fadeStandardUncertaintyDb: standardUncertaintyDb,
    noiseRiseDb,
    clearSkyReading: value + fadeDb + noiseRiseDb,
    standardUncertainty: Math.hypot(own, slope * standardUncertaintyDb),
  };
}
