/** The place on the flanks of the lobe where one more reading says most about the peak. */

import { peakBound } from './peakBound.js';
import type { PeakSearch } from './peakSearch.js';

/** Offsets from the peak worth a reading, in beamwidths: from 1.9 to 5.9 dB down. */
const FLANK_OFFSETS = [-0.7, -0.55, -0.4, 0.4, 0.55, 0.7] as const;

/** How much better the bound must get to be worth a beamwidth of turning, as a share. */
const TURNING_COST = 0.03;

/** Shift of repeated places with a coarse display, in beamwidths, so that rounding differs each time. */
const SHIFT = 0.05;

/** Place in turns with the least bound of the peak after a reading there, turning counted. */
export function bestFlank(
  { settings, readings, placeTurns }: PeakSearch,
  peakTurns: number,
): number {
  const width = settings.beamwidthTurns;
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
      width: settings.beamwidth === 'rough' && readings.length > 2 ? 'unknown' : 'known',
      ...(aboveDb === undefined ? {} : { peakAboveNoiseDb: aboveDb }),
    });
    const place = peakTurns + candidate * width;
    const turning = 1 + (TURNING_COST * Math.abs(place - placeTurns)) / width;
    const cost =
      (bound.kind === 'bound' ? bound.standardUncertaintyDeg : Number.MAX_VALUE) * turning;
    if (cost < least) {
      least = cost;
      best = place;
    }
  }
  return best;
}
