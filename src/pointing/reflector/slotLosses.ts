/** The weighted loss of each slot by ray lengths, with its slopes and bends by the boresight and the turn of a bar. */

import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { cosDeg, DEGREES_PER_RADIAN, RADIANS_PER_DEGREE, sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import type { AtPoint } from '../../numeric/leastWorst.js';
import { dot, type EastNorthUp, pictureAxes, unit } from '../look/sightLine.js';
import { type Aperture, beamOfFeedPlace, type FeedPlace, scanLossDb } from './reflectorOptics.js';
import { scanVariance } from './scanVariance.js';
import type { CheckedSeveralSlots } from './severalSlotsInput.js';

/** Half-power beamwidth in degrees. */
export function beamwidthDeg(checked: CheckedSeveralSlots, frequencyGHz: number): number {
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (frequencyGHz * 1e9);
  return (checked.beamwidthFactorDeg * wavelengthM) / checked.shape.diameterM;
}

/** The direction `rightDeg` and `upDeg` beside another, both small. */
export function beside(direction: EastNorthUp, rightDeg: number, upDeg: number): EastNorthUp {
  const { right, up } = pictureAxes(direction);
  const a = rightDeg * RADIANS_PER_DEGREE;
  const b = upDeg * RADIANS_PER_DEGREE;
  return unit([
    direction[0] + a * right[0] + b * up[0],
    direction[1] + a * right[1] + b * up[1],
    direction[2] + a * right[2] + b * up[2],
  ]);
}

/** A quantity with its first and second derivatives by two coordinates. */
interface Bent {
  readonly value: number;
  readonly slope: readonly [number, number];
  readonly bend: readonly [number, number, number];
}

/** Step of differences in degrees. */
const STEP_DEG = 0.01;

/** Move of a beam as cosines below which the last feed place is a good start. */
const NEAR = 0.03;

/** Slots stay at least this near to the boresight (sine): further aside no reflector works. */
const WIDEST_SINE = 0.85;

/** Where each slot stands in the picture of a boresight beside the start, as cosines to the right and up. */
function picturePlaces(
  start: EastNorthUp,
  directions: readonly EastNorthUp[],
  [x = 0, y = 0]: readonly number[],
): readonly { readonly right: Bent; readonly up: Bent }[] {
  const axes = (i: number, j: number) =>
    pictureAxes(beside(start, x + i * STEP_DEG, y + j * STEP_DEG));
  const [middle, east, west, above, below, both] = [
    axes(0, 0),
    axes(1, 0),
    axes(-1, 0),
    axes(0, 1),
    axes(0, -1),
    axes(1, 1),
  ] as const;
  const bent = (direction: EastNorthUp, axis: 'right' | 'up'): Bent => {
    const value = dot(direction, middle[axis]);
    const [e, w] = [dot(direction, east[axis]), dot(direction, west[axis])];
    const [a, b] = [dot(direction, above[axis]), dot(direction, below[axis])];
    const corner = dot(direction, both[axis]);
    const square = STEP_DEG * STEP_DEG;
    return {
      value,
      slope: [(e - w) / (2 * STEP_DEG), (a - b) / (2 * STEP_DEG)],
      bend: [
        (e - 2 * value + w) / square,
        (corner - e - a + value) / square,
        (a - 2 * value + b) / square,
      ],
    };
  };
  return directions.map((direction) => ({
    right: bent(direction, 'right'),
    up: bent(direction, 'up'),
  }));
}

/** What the losses of a search are computed from. */
interface LossProblem {
  readonly checked: CheckedSeveralSlots;
  readonly aperture: Aperture;
  readonly directions: readonly EastNorthUp[];
}

/**
 * The weighted loss of each slot at points beside a start (degrees to the right, upwards, and of the bar's turn).
 *
 * Both losses grow with the square of the frequency, so that each slot's highest one stands for all of them.
 */
export function slotLosses(
  { checked, aperture, directions }: LossProblem,
  start: { readonly boresight: EastNorthUp; readonly tiltDeg: number },
): (point: readonly number[]) => AtPoint {
  const lasts: { right: number; up: number; place: FeedPlace }[] = [];
  const highest = checked.slots.map(({ frequenciesGHz }) => Math.max(...frequenciesGHz));
  const free = (right: number, up: number, index: number) => {
    // The search moves little by little, so that the last place is mostly near the next one.
    const last = lasts[index];
    const near = last && Math.abs(right - last.right) + Math.abs(up - last.up) < NEAR;
    const found = scanVariance(aperture, right, up, near ? last.place : undefined);
    lasts[index] = { right, up, place: found.place };
    return found;
  };
  return (point) => {
    const pictured = picturePlaces(start.boresight, directions, point);
    const turned = start.tiltDeg + (point[2] ?? 0);
    // A search may stray to where the small-angle theory promises little loss for a beam behind the reflector.
    const reach = pictured.every(
      ({ right, up }) => right.value ** 2 + up.value ** 2 < WIDEST_SINE ** 2,
    );
    if (!reach)
      return { values: [Number.POSITIVE_INFINITY], derivatives: () => ({ slopes: [], bends: [] }) };
    const values: number[] = [];
    const slopes: number[][] = [];
    const bends: number[][][] = [];
    pictured.forEach(({ right, up }, index) => {
      const along = checked.placesM?.[index];
      const weight = checked.slots[index]?.weightRatio ?? 1;
      const frequencyGHz = valueAt(highest, index);
      const perM2 = weight * scanLossDb(1, frequencyGHz);
      let loss: OfCosines;
      let byTurn: OfTurn | undefined;
      if (along === undefined) {
        const v = free(right.value, up.value, index);
        loss = {
          value: perM2 * v.varianceM2,
          slope: [perM2 * v.slope[0], perM2 * v.slope[1]],
          bend: [perM2 * v.bend[0], perM2 * v.bend[1], perM2 * v.bend[2]],
        };
      } else {
        const perSquare =
          weight * gaussianLobeLossDb(DEGREES_PER_RADIAN, beamwidthDeg(checked, frequencyGHz));
        const bar = barLoss(aperture, along, turned);
        const offRight = right.value - bar.right.value;
        const offUp = up.value - bar.up.value;
        const twice = 2 * perSquare;
        loss = {
          value: perSquare * (offRight * offRight + offUp * offUp) + perM2 * bar.varianceM2.value,
          slope: [twice * offRight, twice * offUp],
          bend: [twice, 0, twice],
        };
        byTurn = {
          slope:
            perM2 * bar.varianceM2.slope -
            twice * (offRight * bar.right.slope + offUp * bar.up.slope),
          bend:
            perM2 * bar.varianceM2.bend +
            twice * (bar.right.slope ** 2 + bar.up.slope ** 2) -
            twice * (offRight * bar.right.bend + offUp * bar.up.bend),
          withRight: -twice * bar.right.slope,
          withUp: -twice * bar.up.slope,
        };
      }
      values.push(loss.value);
      const chained = chain(loss, right, up, byTurn);
      slopes.push(chained.slope);
      bends.push(chained.bend);
    });
    return { values, derivatives: () => ({ slopes, bends }) };
  };
}

/** A loss by the two cosines, and what the turn of the bar adds. */
type OfCosines = Bent;
interface OfTurn {
  readonly slope: number;
  readonly bend: number;
  readonly withRight: number;
  readonly withUp: number;
}

/** Derivatives by the point's own coordinates. */
function chain(
  loss: OfCosines,
  right: Bent,
  up: Bent,
  turn: OfTurn | undefined,
): { readonly slope: number[]; readonly bend: number[][] } {
  const [byRight, byUp] = loss.slope;
  const [rr, ru, uu] = loss.bend;
  const slope = [0, 1].map((i) => byRight * valueAt(right.slope, i) + byUp * valueAt(up.slope, i));
  const bend = [0, 1].map((i) =>
    [0, 1].map((j) => {
      const [ri, rj] = [valueAt(right.slope, i), valueAt(right.slope, j)];
      const [ui, uj] = [valueAt(up.slope, i), valueAt(up.slope, j)];
      return (
        rr * ri * rj +
        ru * (ri * uj + ui * rj) +
        uu * ui * uj +
        byRight * valueAt(right.bend, i + j) +
        byUp * valueAt(up.bend, i + j)
      );
    }),
  );
  if (!turn) return { slope, bend };
  const mixed = [0, 1].map(
    (i) => turn.withRight * valueAt(right.slope, i) + turn.withUp * valueAt(up.slope, i),
  );
  return {
    slope: [...slope, turn.slope],
    bend: [...bend.map((row, i) => [...row, valueAt(mixed, i)]), [...mixed, turn.bend]],
  };
}

/** Beam and variance of a feed on a bar, with their changes as the bar turns. */
function barLoss(aperture: Aperture, along: number, tiltDeg: number) {
  const [at, more, less] = [0, STEP_DEG, -STEP_DEG].map((by) =>
    // Clockwise as seen from behind: the right end of the bar goes down.
    beamOfFeedPlace(aperture, [along * cosDeg(tiltDeg + by), -along * sinDeg(tiltDeg + by), 0]),
  ) as [Beam, Beam, Beam];
  const changes = (of: (beam: Beam) => number) => ({
    value: of(at),
    slope: (of(more) - of(less)) / (2 * STEP_DEG),
    bend: (of(more) - 2 * of(at) + of(less)) / (STEP_DEG * STEP_DEG),
  });
  return {
    right: changes(({ rightCosine }) => rightCosine),
    up: changes(({ upCosine }) => upCosine),
    varianceM2: changes(({ varianceM2 }) => varianceM2),
  };
}
type Beam = ReturnType<typeof beamOfFeedPlace>;
