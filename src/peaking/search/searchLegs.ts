/** The legs that lead to a place, on a thread that loses turns where the sense changes. */

import type { PeakSearch } from './peakSearch.js';

/** Legs that lead straight to a place, the lost turns added where the sense changes; none to stay. */
export function legsTo(search: PeakSearch, toTurns: number): readonly number[] {
  const way = toTurns - search.placeTurns;
  if (way === 0) return [];
  const sense = way > 0 ? 'up' : 'down';
  const reversed = search.sense !== 'none' && search.sense !== sense;
  const lost = reversed ? (search.settings.backlashTurns ?? 0) : 0;
  return [way + Math.sign(way) * lost];
}

/** Legs to the peak whose last is in the sense of the approach: by way of a place before it where need be. */
export function legsToPeak(search: PeakSearch, peakTurns: number): readonly number[] {
  const { settings, placeTurns } = search;
  const lost = settings.backlashTurns ?? 0;
  const up = (settings.approach ?? 'up') === 'up';
  const way = peakTurns - placeTurns;
  if (lost === 0 || (way !== 0 && way > 0 === up)) return legsTo(search, peakTurns);
  // A tenth of the beamwidth beyond, so that the thread bears before the peak is reached.
  const margin = settings.beamwidthTurns / 10;
  const before = peakTurns + (up ? -margin : margin);
  const back = (up ? 1 : -1) * (margin + lost);
  return [...legsTo(search, before), back];
}

/**
 * Legs that make the thread bear before the first reading: the lost turns, in the sense of the approach. How far the antenna
 * follows nobody knows; places count from where it then stands.
 */
export function legsToBear({ settings, sense }: PeakSearch): readonly number[] {
  const lost = settings.backlashTurns ?? 0;
  if (lost === 0 || sense !== 'none') return [];
  return [(settings.approach ?? 'up') === 'up' ? lost : -lost];
}
