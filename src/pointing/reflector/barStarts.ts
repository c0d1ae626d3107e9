/** Where the search for a rigid bar starts: the turns at which small-angle beams lie best on their slots. */

import { cosDeg, DEGREES_PER_RADIAN, sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { dot, type EastNorthUp, pictureAxes } from '../look/sightLine.js';
import { type Aperture, beamOfFeedPlace } from './reflectorOptics.js';
import type { CheckedSeveralSlots } from './severalSlotsInput.js';
import { beamwidthDeg, beside } from './slotLosses.js';

/** Step of the bar's trial turns in degrees. */
const TURN_STEP_DEG = 5;

/** Most turns that the search starts from, and how far above the best one they are still tried: a ratio of losses, and dB. */
const MOST_STARTS = 4;
const WORTH_TRYING = 4;
const WORTH_TRYING_DB = 1;

/** Turns that are tried even between better ones: where all beams are near their slots, the scan loss decides. */
const QUARTER_DEG = 90;

/** Where a search starts. */
interface BarStart {
  readonly boresight: EastNorthUp;
  readonly tiltDeg: number;
  /** Largest weighted loss of the small-angle beams there in dB, without scan loss. */
  readonly missDb: number;
}

/** Steps of the boresight towards the worst slot. */
const PULLS = 30;

/**
 * Starts beside a boresight. With a beam aside in proportion to its feed's place, the loss of a slot goes by the square of the
 * miss: for each turn the boresight of the least largest one is pulled towards the worst slot by ever smaller steps,
 * and the turns with the least of it, each better than its neighbours, are starts.
 */
export function barStarts(
  {
    checked,
    aperture,
    directions,
  }: {
    readonly checked: CheckedSeveralSlots;
    readonly aperture: Aperture;
    readonly directions: readonly EastNorthUp[];
  },
  boresight: EastNorthUp,
): readonly BarStart[] {
  const places = checked.placesM ?? [];
  const { right, up } = pictureAxes(boresight);
  const weights = checked.slots.map(
    ({ weightRatio, frequenciesGHz }) =>
      weightRatio *
      gaussianLobeLossDb(DEGREES_PER_RADIAN, beamwidthDeg(checked, Math.max(...frequenciesGHz))),
  );
  const seen = directions.map((d) => [dot(d, right), dot(d, up)] as const);
  // A little aside of the focus the beam is proportional to the place.
  const small = 1e-3 * aperture.focusToMiddleM;
  const perM = beamOfFeedPlace(aperture, [small, 0, 0]).rightCosine / small;
  const tried = Array.from({ length: 360 / TURN_STEP_DEG }, (_, k) => {
    const tiltDeg = k * TURN_STEP_DEG;
    // Clockwise as seen from behind: the right end of the bar goes down.
    const misses = seen.map(([x, y], index) => {
      const beam = perM * valueAt(places, index);
      return [x - beam * cosDeg(tiltDeg), y + beam * sinDeg(tiltDeg)] as const;
    });
    return { tiltDeg, ...leastLargest(misses, weights) };
  });
  const at = (index: number) => tried[(index + tried.length) % tried.length] as (typeof tried)[0];
  const starts = tried
    .filter(
      ({ tiltDeg, largest }, k) =>
        tiltDeg % QUARTER_DEG === 0 ||
        (largest <= at(k - 1).largest && largest < at(k + 1).largest),
    )
    .sort((a, b) => a.largest - b.largest);
  const most = WORTH_TRYING * (starts[0]?.largest ?? 0) + WORTH_TRYING_DB;
  return starts
    .filter(({ largest }, k) => largest <= most && k < MOST_STARTS)
    .map(({ tiltDeg, largest, middle: [x, y] }) => ({
      missDb: largest,
      boresight: beside(boresight, x * DEGREES_PER_RADIAN, y * DEGREES_PER_RADIAN),
      tiltDeg,
    }));
}

/** The point whose largest weighted square of distance from others is least, nearly. */
function leastLargest(
  points: readonly (readonly [number, number])[],
  weights: readonly number[],
): { readonly middle: readonly [number, number]; readonly largest: number } {
  const total = weights.reduce((a, b) => a + b, 0);
  let [x, y] = [0, 0];
  points.forEach(([px, py], index) => {
    x += (valueAt(weights, index) / total) * px;
    y += (valueAt(weights, index) / total) * py;
  });
  for (let pull = 1; ; pull++) {
    let largest = -1;
    let worst: readonly [number, number] = [x, y];
    points.forEach((point, index) => {
      const miss = valueAt(weights, index) * ((point[0] - x) ** 2 + (point[1] - y) ** 2);
      if (miss > largest) [largest, worst] = [miss, point];
    });
    if (pull > PULLS) return { middle: [x, y], largest };
    x += (worst[0] - x) / (pull + 1);
    y += (worst[1] - y) / (pull + 1);
  }
}
