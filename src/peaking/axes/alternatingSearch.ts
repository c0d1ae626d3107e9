/** Azimuth and elevation in turn: how often, until the rest does not matter. */

import { inRange, object, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { cosDeg, sinDeg } from '../../numeric/angle.js';

/** A lobe over two axes of the mount, and where the search begins. */
export interface AlternatingInput {
  /** Half-power beamwidths along the lobe's own axes in degrees: narrow, wide (equal for a round reflector). */
  readonly beamwidthDeg: readonly [number, number];
  /** Direction of the narrow axis from the mount's first axis towards its second, in degrees; default 0. */
  readonly narrowAxisDeg?: number;
  /** Angle between the two directions in which the mount's axes move the beam, in degrees, 10 to 170; default 90. */
  readonly betweenAxesDeg?: number;
  /** Offset from the peak at the start, along the first and second axis, in degrees. */
  readonly startDeg: readonly [number, number];
  /** Pointing loss in dB to be reached; default 0.1. */
  readonly targetLossDb?: number;
}

const ALTERNATING_INPUT_KEYS = {
  beamwidthDeg: true,
  narrowAxisDeg: true,
  betweenAxesDeg: true,
  startDeg: true,
  targetLossDb: true,
} satisfies Keys<AlternatingInput>;

/** One axis peaked. */
export interface AlternatingStep {
  readonly axis: 'first' | 'second';
  /** Offsets left along the first and second axis, in degrees. */
  readonly offsetDeg: readonly [number, number];
  /** Pointing loss left in dB. */
  readonly lossDb: number;
}

/** The course of an alternating search. */
export interface AlternatingSearch {
  /** Coupling of the axes, -1 to 1: 0 for independent ones. */
  readonly couplingRatio: number;
  /** Factor by which each further peaking lowers the loss: the coupling squared. */
  readonly lossRatioPerStep: number;
  /** Pointing loss at the start in dB. */
  readonly startLossDb: number;
  /** Each peaking of one axis, up to the target; at most 200. */
  readonly steps: readonly AlternatingStep[];
}

/**
 * Course of peaking one axis exactly, then the other, and so on.
 *
 * Each peaking is the minimum of the loss along a line. With a loss x.H.x the loss after the first step
 * falls by exactly c^2 with every further one, c = H12 / sqrt(H11 H22): below 1 for any lobe, so the
 * search always ends (Gauss-Seidel on a positive definite H). Independent axes need one step each.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: D. G. Luenberger, Linear and Nonlinear Programming, coordinate descent; own derivation of the ratio.
 * @example
 * ```ts
 * import { alternatingSearch } from 'slantpath/peaking';
 * const search = alternatingSearch({
 *   beamwidthDeg: [1, 2],
 *   narrowAxisDeg: 45,
 *   startDeg: [0.5, 0.5],
 * });
 * search.couplingRatio.toFixed(1); // => '0.6'
 * search.steps.length; // => 4
 * ```
 */
export function alternatingSearch(input: AlternatingInput): AlternatingSearch {
  knownOnly('input', input, ALTERNATING_INPUT_KEYS);
  const widths = object('beamwidthDeg', input.beamwidthDeg);
  const [narrow, wide] = [0, 1].map((i) =>
    inRange(
      'beamwidthDeg',
      positive('beamwidthDeg', widths[i as 0 | 1], undefined, i),
      1e-4,
      180,
      undefined,
      i,
    ),
  ) as [number, number];
  const turned = inRange('narrowAxisDeg', input.narrowAxisDeg ?? 0, -360, 360);
  const between = inRange('betweenAxesDeg', input.betweenAxesDeg ?? 90, 10, 170);
  const targetDb = inRange(
    'targetLossDb',
    positive('targetLossDb', input.targetLossDb ?? 0.1),
    1e-9,
    60,
  );
  const start = object('startDeg', input.startDeg);
  const offset: [number, number] = [
    inRange('startDeg', start[0], -180, 180, undefined, 0),
    inRange('startDeg', start[1], -180, 180, undefined, 1),
  ];
  // Loss per square degree along the lobe's own axes, seen in the directions of the mount's axes.
  const along = (a: number, b: number) =>
    (12 / narrow ** 2) * cosDeg(a - turned) * cosDeg(b - turned) +
    (12 / wide ** 2) * sinDeg(a - turned) * sinDeg(b - turned);
  const h11 = along(0, 0);
  const h12 = along(0, between);
  const h22 = along(between, between);
  const loss = () => h11 * offset[0] ** 2 + 2 * h12 * offset[0] * offset[1] + h22 * offset[1] ** 2;
  const couplingRatio = h12 / Math.sqrt(h11 * h22);
  const startLossDb = loss();
  const steps: AlternatingStep[] = [];
  for (let k = 0; k < 200 && (k === 0 ? startLossDb : loss()) > targetDb; k++) {
    const axis = k % 2 === 0 ? 'first' : 'second';
    if (axis === 'first') offset[0] = (-h12 * offset[1]) / h11 + 0;
    else offset[1] = (-h12 * offset[0]) / h22 + 0;
    steps.push({ axis, offsetDeg: [offset[0], offset[1]], lossDb: Math.max(0, loss()) });
  }
  return { couplingRatio, lossRatioPerStep: couplingRatio ** 2, startLossDb, steps };
}
