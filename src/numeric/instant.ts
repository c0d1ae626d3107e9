/**
 * Instants: ISO-8601 text in UTC or milliseconds since 1970-01-01T00:00:00Z, passed in by the caller.
 * The library never reads a clock.
 */

import { DomainError } from '../errors.js';

/**
 * An instant in UTC: text such as `2026-03-02T10:08:07Z` (a date alone means its midnight, UTC; an
 * offset such as `+01:00` is taken; a time without `Z` or offset is refused), or milliseconds since
 * 1970-01-01T00:00:00Z, leap seconds not counted. Years 1900 to 2100.
 */
export type Instant = string | number;

const EARLIEST_MS = Date.UTC(1900, 0, 1);
const LATEST_MS = Date.UTC(2101, 0, 1);
const ISO =
  /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?(Z|[+-]\d{2}:?\d{2})?)?$/;

/** Milliseconds since 1970-01-01T00:00:00Z of an instant; throws DomainError for anything else. */
export function instantToEpochMs(parameter: string, instant: Instant, index?: number): number {
  const epochMs = typeof instant === 'string' ? isoToEpochMs(parameter, instant, index) : instant;
  const isNumber = typeof epochMs === 'number';
  if (isNumber && epochMs >= EARLIEST_MS && epochMs <= LATEST_MS) return epochMs;
  throw new DomainError({
    code:
      epochMs === undefined || epochMs === null
        ? 'missing'
        : !isNumber
          ? 'not-a-number'
          : Number.isFinite(epochMs)
            ? 'out-of-range'
            : 'not-finite',
    parameter,
    received: instant,
    allowed: 'an instant of the years 1900 to 2100 as ISO-8601 text or epoch milliseconds',
    slip: isNumber && epochMs > LATEST_MS ? 'is the number in microseconds?' : undefined,
    index,
  });
}

/** ISO-8601 text in UTC, to the millisecond, of epoch milliseconds. */
export function epochMsToIso(epochMs: number): string {
  return new Date(Math.round(epochMs)).toISOString();
}

function isoToEpochMs(parameter: string, text: string, index: number | undefined): number {
  const match = ISO.exec(text.trim());
  if (match) {
    const [year, month, day, hour, minute, second] = match
      .slice(1, 7)
      .map((field) => Number(field ?? 0)) as [number, number, number, number, number, number];
    const zone = match[8];
    const date = Date.UTC(year, month - 1, day);
    const real = new Date(date).getUTCMonth() === month - 1 && day >= 1;
    if (match[4] !== undefined && zone === undefined)
      throw malformed(parameter, text, 'is the time in UTC? then end it with Z', index);
    if (real && hour < 24 && minute < 60 && second < 60) {
      const fractionMs = Number(`0.${match[7] ?? 0}`) * 1000;
      return date + ((hour * 60 + minute) * 60 + second) * 1000 + fractionMs - offsetMs(zone);
    }
  }
  throw malformed(parameter, text, undefined, index);
}

function offsetMs(zone: string | undefined): number {
  if (zone === undefined || zone === 'Z') return 0;
  const digits = zone.slice(1).replace(':', '');
  const minutes = Number(digits.slice(0, 2)) * 60 + Number(digits.slice(2));
  return (zone.startsWith('-') ? -minutes : minutes) * 60000;
}

function malformed(
  parameter: string,
  received: string,
  slip: string | undefined,
  index: number | undefined,
): DomainError {
  return new DomainError({
    code: 'malformed',
    parameter,
    received,
    allowed: 'ISO-8601 text such as 2026-03-02T10:08:07Z',
    slip,
    index,
  });
}
