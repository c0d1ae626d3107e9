/** Orbital elements as they are handed round: CCSDS Orbit Mean-Elements Messages and two-line element sets. */

import { DomainError, inRange } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { epochMsToIso, instantToEpochMs } from '../numeric/instant.js';
import { ommFields } from './ommText.js';
import { twoLineFigures } from './twoLineText.js';

/** Mean orbital elements for the SGP4 model, referred to the true equator and mean equinox of the epoch. */
export interface OrbitalElements {
  /** Instant to which they belong: ISO-8601 text in UTC. */
  readonly epoch: string;
  /** Mean motion in revolutions per day, 0.05 to 18; 1.0027 for a geosynchronous satellite. */
  readonly meanMotionRevPerDay: number;
  /** Eccentricity (ratio), 0 to below 1. */
  readonly eccentricityRatio: number;
  /** Inclination in degrees, 0 to 180. */
  readonly inclinationDeg: number;
  /** Right ascension of the ascending node in degrees, -360 to 360. */
  readonly ascendingNodeDeg: number;
  /** Argument of perigee in degrees, -360 to 360. */
  readonly argumentOfPerigeeDeg: number;
  /** Mean anomaly in degrees, -360 to 360. */
  readonly meanAnomalyDeg: number;
  /** Drag term B* in inverse Earth radii, -1 to 1; 0 for a geosynchronous satellite. */
  readonly dragTermPerEarthRadius: number;
}

const ORBITAL_ELEMENTS_KEYS = {
  epoch: true,
  meanMotionRevPerDay: true,
  eccentricityRatio: true,
  inclinationDeg: true,
  ascendingNodeDeg: true,
  argumentOfPerigeeDeg: true,
  meanAnomalyDeg: true,
  dragTermPerEarthRadius: true,
} satisfies Keys<OrbitalElements>;

/** Checks elements; the path goes before each field's name. */
export function checkedElements(elements: OrbitalElements, path = 'elements.'): OrbitalElements {
  const given = known('elements', elements, ORBITAL_ELEMENTS_KEYS);
  const angle = (field: 'ascendingNodeDeg' | 'argumentOfPerigeeDeg' | 'meanAnomalyDeg'): number =>
    inRange(`${path}${field}`, given[field], -360, 360);
  return {
    epoch: epochMsToIso(instantToEpochMs(`${path}epoch`, given.epoch)),
    meanMotionRevPerDay: inRange(
      `${path}meanMotionRevPerDay`,
      given.meanMotionRevPerDay,
      0.05,
      18,
      'is it in revolutions per day?',
    ),
    eccentricityRatio: inRange(
      `${path}eccentricityRatio`,
      given.eccentricityRatio,
      0,
      0.999999,
      'was the decimal point left out?',
    ),
    inclinationDeg: inRange(`${path}inclinationDeg`, given.inclinationDeg, 0, 180),
    ascendingNodeDeg: angle('ascendingNodeDeg'),
    argumentOfPerigeeDeg: angle('argumentOfPerigeeDeg'),
    meanAnomalyDeg: angle('meanAnomalyDeg'),
    dragTermPerEarthRadius: inRange(
      `${path}dragTermPerEarthRadius`,
      given.dragTermPerEarthRadius,
      -1,
      1,
    ),
  };
}

/**
 * Orbital elements from a two-line element set; a line with a name may stand before.
 *
 * @param tle  Both lines, parted by a line break; each 69 characters long with its checksum.
 * @throws {@link DomainError} `malformed` for a line that is missing, has anything but the format's figures in a column, or a wrong
 *   checksum.
 *
 * Source: the two-line format, column by column; the columns are from memory (its first description is Spacetrack Report No. 3, 1980,
 * which was not read).
 * Accuracy: the format's digits; the epoch to the millisecond.
 * @example
 * ```ts
 * import { tleToElements } from 'slantpath/orbit';
 * const elements = tleToElements(`1 99901U 26001A   26300.50000000  .00000000  00000-0  00000-0 0  9993
 * 2 99901   3.0000  80.0000 0002000  90.0000 270.0000  1.00271000  1003`);
 * [elements.epoch, elements.inclinationDeg]; // => ['2026-10-27T12:00:00.000Z', 3]
 * ```
 */
export function tleToElements(tle: string): OrbitalElements {
  const { epochMs, ...figures } = twoLineFigures(tle);
  return checkedElements({ epoch: epochMsToIso(epochMs), ...figures }, 'tle.');
}

/**
 * Orbital elements from a CCSDS Orbit Mean-Elements Message: an object with its keywords, or its text in JSON, key-value or XML
 * notation. Of several messages the first counts.
 *
 * @param omm  The message; keywords EPOCH, MEAN_MOTION, ECCENTRICITY, INCLINATION, RA_OF_ASC_NODE, ARG_OF_PERICENTER, MEAN_ANOMALY
 *   are needed, BSTAR is taken as 0 where missing. Values may be numbers or text.
 * @throws {@link DomainError} naming the keyword; `malformed` for text that is none of the three notations.
 *
 * Source: CCSDS 502.0-B-3, Orbit Data Messages, section 4.
 * Accuracy: the message's digits; the epoch to the millisecond.
 * @example
 * ```ts
 * import { ommToElements } from 'slantpath/orbit';
 * const elements = ommToElements(`EPOCH = 2026-10-27T12:00:00
 * MEAN_MOTION = 1.00271
 * ECCENTRICITY = 0.0002
 * INCLINATION = 3.0
 * RA_OF_ASC_NODE = 80.0
 * ARG_OF_PERICENTER = 90.0
 * MEAN_ANOMALY = 270.0`);
 * elements.meanMotionRevPerDay; // => 1.00271
 * ```
 */
export function ommToElements(omm: string | Readonly<Record<string, unknown>>): OrbitalElements {
  const fields = ommFields(omm);
  const value = (keyword: string, missing?: number): number => {
    const given = fields(keyword);
    if (given === undefined && missing !== undefined) return missing;
    if (typeof given === 'string' && given.trim() !== '') return Number(given);
    return given as number;
  };
  for (const [keyword, wanted] of [
    ['MEAN_ELEMENT_THEORY', /^SGP4?$|^SGP4-XP$|^SDP4$/i],
    ['TIME_SYSTEM', /^UTC$/i],
    ['CENTER_NAME', /^EARTH$/i],
  ] as const) {
    const given = fields(keyword);
    if (given !== undefined && !wanted.test(String(given)))
      throw new DomainError({
        code: 'not-an-option',
        parameter: `omm.${keyword}`,
        received: given,
        allowed: keyword === 'CENTER_NAME' ? 'EARTH' : keyword === 'TIME_SYSTEM' ? 'UTC' : 'SGP4',
      });
  }
  const epoch = fields('EPOCH');
  return checkedElements(
    {
      epoch:
        typeof epoch === 'string' && !/(?:Z|[+-]\d{2}:?\d{2})$/.test(epoch.trim())
          ? `${epoch.trim()}Z`
          : (epoch as string),
      meanMotionRevPerDay: value('MEAN_MOTION'),
      eccentricityRatio: value('ECCENTRICITY'),
      inclinationDeg: value('INCLINATION'),
      ascendingNodeDeg: value('RA_OF_ASC_NODE'),
      argumentOfPerigeeDeg: value('ARG_OF_PERICENTER'),
      meanAnomalyDeg: value('MEAN_ANOMALY'),
      dragTermPerEarthRadius: value('BSTAR', 0),
    },
    'omm.',
  );
}
