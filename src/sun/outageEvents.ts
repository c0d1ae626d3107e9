/** The days of a span on which the Sun stands behind a satellite. */

import { DomainError, inRange } from '../errors.js';
import { cosDeg } from '../numeric/angle.js';
import { type Instant, instantToEpochMs } from '../numeric/instant.js';
import { bracketedRoot } from '../numeric/root.js';
import type { SunNoise } from './discNoise.js';
import { passageOfDay, roughDeclinationDeg } from './outageGeometry.js';
import type { OutageReception } from './outageReception.js';

const DAY_MS = 86400000;

/** A span of time in epoch milliseconds. */
interface OutageSpan {
  readonly firstMs: number;
  readonly lastMs: number;
}

/** The checked span of a search. */
export function outageSpan(from: Instant, to: Instant): OutageSpan {
  const firstMs = instantToEpochMs('from', from);
  const lastMs = instantToEpochMs('to', to);
  if (lastMs > firstMs && lastMs - firstMs <= 1100 * DAY_MS) return { firstMs, lastMs };
  throw new DomainError({
    code: 'inconsistent',
    parameter: 'to',
    received: to,
    allowed: 'after from, by at most 1100 days',
  });
}

/** The checked loss from which an event counts. */
export const checkedThresholdDb = (thresholdLossDb = 1, index?: number): number =>
  inRange('thresholdLossDb', thresholdLossDb, 0.1, 40, undefined, index);

/** One day's event, instants in epoch milliseconds. */
interface OutageEvent {
  readonly startMs: number;
  readonly peakMs: number;
  readonly endMs: number;
  readonly separationDeg: number;
  readonly peak: SunNoise;
}

/** The events of a span, in order of time, for a satellite above the horizon. */
export function outageEvents(
  reception: OutageReception,
  thresholdDb: number,
  { firstMs, lastMs }: OutageSpan,
): readonly OutageEvent[] {
  const { beamwidthDeg, direction } = reception;
  const satelliteDeclinationDeg = direction.celestialDeclinationDeg;
  const events: OutageEvent[] = [];
  // The loss is gone where the Sun is three beamwidths and its radius away.
  const reachDeg = 3 * beamwidthDeg + 0.3;
  const firstDayMs = Math.floor(firstMs / DAY_MS) * DAY_MS - DAY_MS;
  for (let dayMs = firstDayMs; dayMs <= lastMs + DAY_MS; dayMs += DAY_MS) {
    const roughDeg = roughDeclinationDeg(dayMs + DAY_MS / 2) - satelliteDeclinationDeg;
    if (Math.abs(roughDeg) > reachDeg + 0.3) continue;
    const passage = passageOfDay(reception.station, direction, dayMs);
    if (passage.peakMs < firstMs || passage.peakMs > lastMs) continue;
    const loss = (epochMs: number) =>
      reception.noise(passage.separationAt(epochMs), passage.angularRadiusDeg).lossDb - thresholdDb;
    const peak = reception.noise(passage.separationDeg, passage.angularRadiusDeg);
    if (peak.lossDb < thresholdDb) continue;
    const widestMs = Math.min(
      3 * 3600000,
      ((reachDeg + 1) * 240000) / cosDeg(satelliteDeclinationDeg),
    );
    const tolerance = 50;
    const { peakMs, separationDeg } = passage;
    const startMs =
      bracketedRoot(loss, { from: peakMs - widestMs, to: peakMs, tolerance }) ?? peakMs - widestMs;
    const endMs =
      bracketedRoot(loss, { from: peakMs, to: peakMs + widestMs, tolerance }) ?? peakMs + widestMs;
    events.push({ startMs, peakMs, endMs, separationDeg, peak });
  }
  return events;
}
