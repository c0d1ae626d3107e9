/** Dates as the magnetic model takes them. */

import { type Instant, instantToEpochMs } from '../numeric/instant.js';

/**
 * Decimal year of an instant: the year plus the elapsed share of its 365 or 366 days.
 *
 * @param instant  ISO-8601 text in UTC (`2026-07-02`, `2026-07-02T12:00:00Z`) or epoch milliseconds.
 * @throws {@link DomainError} `malformed` or `out-of-range` for anything else.
 *
 * Source: WMM2025 report, section 1.2 (decimal years). Accuracy: rounding only.
 * @example
 * ```ts
 * import { instantToDecimalYear } from 'slantpath/magnetic';
 * instantToDecimalYear('2026-07-02T12:00:00Z'); // => 2026.5
 * ```
 */
export function instantToDecimalYear(instant: Instant): number {
  const epochMs = instantToEpochMs('instant', instant);
  const year = new Date(epochMs).getUTCFullYear();
  const start = Date.UTC(year, 0, 1);
  return year + (epochMs - start) / (Date.UTC(year + 1, 0, 1) - start);
}
