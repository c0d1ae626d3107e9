/** Drift of a site over its visits: how fast the level falls, and when it wants peaking again. */

import { DomainError, inRange, objects } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { type Instant, instantToEpochMs } from '../numeric/instant.js';
import { studentCoverageFactor } from '../numeric/student.js';

/** One visit's reading of the same carrier in clear sky. */
export interface VisitReading {
  /** When it was read: ISO 8601 text with a zone, or milliseconds since 1970. */
  readonly at: Instant;
  /** Level, or C/N, in dB or dBm: one quantity throughout. */
  readonly levelDb: number;
}

const VISIT_READING_KEYS = { at: true, levelDb: true } satisfies Keys<VisitReading>;

/** Drift of a site; read `kind` first. */
export type SiteDrift =
  | {
      /** The level falls or rises beyond chance (95 %). */
      readonly kind: 'drift';
      /** Change in dB a year, negative where it falls. */
      readonly perYearDb: number;
      /** Half width of its 95 % interval in dB a year. */
      readonly halfWidth95Db: number;
      /** Standard deviation of a reading about the line in dB. */
      readonly standardDeviationDb: number;
      /** Years from the last visit until the allowed loss since the first is used up, 0 or more; absent where the level rises. */
      readonly yearsLeft?: number;
    }
  | {
      /** What changes can be chance. */
      readonly kind: 'no-drift-seen';
      readonly perYearDb: number;
      readonly halfWidth95Db: number;
      readonly standardDeviationDb: number;
    };

const MS_PER_YEAR = 31_557_600_000;

const SITE_DRIFT_SITE_KEYS = { visits: true, allowedLossDb: true } satisfies Keys<
  Parameters<typeof siteDrift>[0]
>;

/**
 * Drift of a site from readings at three visits or more, by a straight line.
 *
 * @param site  Visits in any order, 3 to 10,000; loss since the first visit in dB that is allowed before the antenna is peaked again, above 0,
 *   default 1.
 * @throws {@link DomainError} `too-few`; naming the field of the visit; `inconsistent` where all visits are at one time.
 * Source: straight line by least squares with Student's interval (NIST/SEMATECH e-Handbook, 4.1.4.1). Accuracy: of the line: a jump (a storm) is
 * not a drift, look at the readings too.
 * @example
 * ```ts
 * import { siteDrift } from 'slantpath/experience';
 * const drift = siteDrift({
 *   visits: [
 *     { at: '2023-05-01T00:00Z', levelDb: 14.9 },
 *     { at: '2024-05-01T00:00Z', levelDb: 14.5 },
 *     { at: '2025-05-01T00:00Z', levelDb: 14.15 },
 *     { at: '2026-05-01T00:00Z', levelDb: 13.75 },
 *   ],
 * });
 * drift.kind; // => 'drift'
 * drift.perYearDb.toFixed(2); // => '-0.38'
 * ```
 */
export function siteDrift(site: {
  readonly visits: readonly VisitReading[];
  readonly allowedLossDb?: number;
}): SiteDrift {
  const given = knownOnly('site', site, SITE_DRIFT_SITE_KEYS);
  const allowed = inRange('allowedLossDb', given.allowedLossDb ?? 1, 0.01, 100);
  if (!Array.isArray(given.visits) || given.visits.length < 3 || given.visits.length > 10_000)
    throw new DomainError({
      code: Array.isArray(given.visits) && given.visits.length < 3 ? 'too-few' : 'malformed',
      parameter: 'visits',
      received: given.visits,
      allowed: 'an array of 3 to 10000 visits',
    });
  const points = objects<VisitReading>('visits', given.visits)
    .map((visit, index) => ({
      years:
        instantToEpochMs(
          `visits[${index}].at`,
          known(`visits[${index}]`, visit, VISIT_READING_KEYS).at,
        ) / MS_PER_YEAR,
      levelDb: inRange(`visits[${index}].levelDb`, visit.levelDb, -1000, 1000),
    }))
    .sort((a, b) => a.years - b.years);
  const n = points.length;
  const middle = points.reduce((sum, point) => sum + point.years, 0) / n;
  const mean = points.reduce((sum, point) => sum + point.levelDb, 0) / n;
  let spread = 0;
  let together = 0;
  for (const { years, levelDb } of points) {
    spread += (years - middle) ** 2;
    together += (years - middle) * (levelDb - mean);
  }
  if (!(spread > 1e-12))
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'visits',
      received: given.visits,
      allowed: 'visits at different times',
    });
  const perYearDb = together / spread + 0;
  const squares = points.reduce(
    (sum, { years, levelDb }) => sum + (levelDb - mean - perYearDb * (years - middle)) ** 2,
    0,
  );
  const standardDeviationDb = Math.sqrt(squares / (n - 2));
  const halfWidth95Db =
    studentCoverageFactor(0.95, n - 2) * (standardDeviationDb / Math.sqrt(spread));
  const line = { perYearDb, halfWidth95Db, standardDeviationDb };
  if (Math.abs(perYearDb) <= halfWidth95Db) return { kind: 'no-drift-seen', ...line };
  if (perYearDb > 0) return { kind: 'drift', ...line };
  const lasted = (points[n - 1]?.years ?? 0) - (points[0]?.years ?? 0);
  return { kind: 'drift', ...line, yearsLeft: Math.max(0, allowed / -perYearDb - lasted) };
}
