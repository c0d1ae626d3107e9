/** The place on the flanks of the lobe where one more reading says most about the peak. */

import { peakBound } from './peakBound.js';
import type { PeakSearch } from './peakSearch.js';

/** Offsets from the peak worth a reading, in beamwidths: from 0.8 to 6.4 dB down. */
const FLANK_OFFSETS = [-0.7, -0.55, -0.4, -0.25, 0.25, 0.4, 0.55, 0.7] as const;

/** What each reading already taken nearby costs as a share: another place also shows a wrong width or a foreign reading. */
const REPEAT_COST = 0.4;
const NEARBY = 0.12;

/** How much better the bound must get to be worth a beamwidth of turning, as a share. */
const TURNING_COST = 0.03;

/** Uncertainty of the beamwidth from which the readings themselves have to find it. */
const VAGUE = 0.15;

/** Shift of repeated places with a coarse display, in beamwidths, so that rounding differs each time. */
const SHIFT = 0.05;

/** Place in turns with the least bound of the peak after a reading there, turning counted, for a beamwidth in turns. */
export function bestFlank(
  { settings, readings, placeTurns }: PeakSearch,
  peakTurns: number,
  width: number,
): number {
  const places = readings.map((reading) => (reading.placeTurns - peakTurns) / width);
  const shift = (settings.levelStepDb ?? 0) > 0 ? SHIFT * ((readings.length % 3) - 1) : 0;
  const top = readings.reduce((most, { levelDbm }) => Math.max(most, levelDbm), -400);
  const aboveDb =
    settings.noiseFloorDbm === undefined ? undefined : Math.max(0, top - settings.noiseFloorDbm);
  let best = peakTurns;
  let least = Number.POSITIVE_INFINITY;
  for (const offset of FLANK_OFFSETS) {
    const candidate = offset + Math.sign(offset) * shift;
    const bound = peakBound({
      positionDeg: [...places, candidate],
      peakDeg: 0,
      beamwidthDeg: 1,
      standardDeviationDb: 1,
      width:
        (settings.beamwidthStandardUncertaintyRatio ?? 0.1) > VAGUE && readings.length > 2
          ? 'unknown'
          : 'known',
      ...(aboveDb === undefined ? {} : { peakAboveNoiseDb: aboveDb }),
    });
    const place = peakTurns + candidate * width;
    const turning = 1 + (TURNING_COST * Math.abs(place - placeTurns)) / width;
    const repeats = places.filter((other) => Math.abs(other - candidate) < NEARBY).length;
    const cost =
      (1 + REPEAT_COST * repeats) *
      (bound.kind === 'bound' ? bound.standardUncertaintyDeg : Number.MAX_VALUE) *
      turning;
    if (cost < least) {
      least = cost;
      best = place;
    }
  }
  return best;
}
