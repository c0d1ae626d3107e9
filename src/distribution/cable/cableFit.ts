/** The two coefficients of a cable from its published points, with the error of the fit. */

import { DomainError, finite, inRange, objects, positive } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { linearLeastSquares } from '../../numeric/leastSquares.js';
import { type CableType, checkedFrequencyMHz } from './cable.js';

/** A published point of a cable at 20 degrees Celsius. */
export interface CablePoint {
  /** Frequency in MHz. */
  readonly frequencyMHz: number;
  /** Loss in dB per 100 m. */
  readonly lossDbPer100m: number;
}

const CABLE_POINT_KEYS = { frequencyMHz: true, lossDbPer100m: true } satisfies Keys<CablePoint>;

/** A fitted cable. */
export interface CableFit {
  /** The cable, ready for {@link cableLossDb} and for a tree; without resistance. */
  readonly cable: CableType;
  /** Every point with the fitted value. */
  readonly points: readonly {
    /** Frequency in MHz. */
    readonly frequencyMHz: number;
    /** Published loss in dB per 100 m. */
    readonly publishedDbPer100m: number;
    /** Fitted loss in dB per 100 m. */
    readonly fittedDbPer100m: number;
    /** Fitted less published in percent of the published. */
    readonly errorPercent: number;
  }[];
  /** Largest error of a point in percent, 0 or more. */
  readonly largestErrorPercent: number;
  /** Root mean square error in percent. */
  readonly rootMeanSquareErrorPercent: number;
  /** The free fit would bend the wrong way (a negative dielectric loss), so that share is held at 0. */
  readonly dielectricHeldAtZero: boolean;
  /** Range of frequencies of the points in MHz; beyond it the fit is an extrapolation. */
  readonly statedRange: { readonly fromMHz: number; readonly toMHz: number };
}

/**
 * Skin and dielectric loss of a cable from two or more published points, by least squares of the relative errors.
 *
 * @param points  Frequency and loss per 100 m, at least two unlike frequencies.
 * @throws {@link DomainError} `too-few`, `inconsistent` for equal frequencies only, or naming `points[i]`.
 *
 * Source: loss s sqrt(f) + d f of a coaxial line; weighted linear least squares.
 * Accuracy: exact to rounding for points that lie on such a curve; otherwise the errors returned.
 * @example
 * ```ts
 * import { cableFit } from 'slantpath/distribution';
 * const fit = cableFit([
 *   { frequencyMHz: 270, lossDbPer100m: 10.63 },
 *   { frequencyMHz: 950, lossDbPer100m: 21 },
 *   { frequencyMHz: 1000, lossDbPer100m: 21.46 },
 *   { frequencyMHz: 2150, lossDbPer100m: 31.82 },
 * ]);
 * fit.largestErrorPercent.toFixed(1); // => '1.3'
 * ```
 */
export function cableFit(points: readonly CablePoint[]): CableFit {
  if (!Array.isArray(points) || points.length < 2)
    throw new DomainError({
      code: points === undefined ? 'missing' : Array.isArray(points) ? 'too-few' : 'malformed',
      parameter: 'points',
      received: points,
      allowed: 'a list of at least two points',
    });
  const frequencies: number[] = [];
  const losses: number[] = [];
  objects<CablePoint>('points', points).forEach((point, index) => {
    known(`points[${index}]`, point, CABLE_POINT_KEYS);
    frequencies.push(
      checkedFrequencyMHz(`points[${index}].frequencyMHz`, point.frequencyMHz) / 1000,
    );
    positive(
      `points[${index}].lossDbPer100m`,
      finite(`points[${index}].lossDbPer100m`, point.lossDbPer100m),
    );
    losses.push(
      inRange(
        `points[${index}].lossDbPer100m`,
        point.lossDbPer100m,
        0.01,
        1000,
        'is it per 100 ft or per km?',
      ),
    );
  });
  const relative = (column: (f: number) => number): number[] =>
    frequencies.map((f, i) => column(f) / valueAt(losses, i));
  const skin = relative(Math.sqrt);
  const dielectric = relative((f) => f);
  const ones = losses.map(() => 1);
  const free = linearLeastSquares([skin, dielectric], ones);
  if (free === undefined)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'points',
      received: points,
      allowed: 'points at two or more different frequencies',
    });
  const [freeSkin, freeDielectric] = free.coefficients as [number, number];
  // Losses that grow in proportion to the frequency alone would need a negative skin effect.
  const held = freeDielectric < -1e-12;
  const alone = (column: readonly number[]): number =>
    linearLeastSquares([column], ones)?.coefficients[0] ?? 0;
  const skinLoss = freeSkin < 0 ? 0 : held ? alone(skin) : freeSkin;
  const dielectricLoss = freeSkin < 0 ? alone(dielectric) : held ? 0 : Math.max(0, freeDielectric);
  const fitted = frequencies.map((f, i) => {
    const fittedDbPer100m = skinLoss * Math.sqrt(f) + dielectricLoss * f;
    const publishedDbPer100m = valueAt(losses, i);
    return {
      frequencyMHz: (points[i] as CablePoint).frequencyMHz,
      publishedDbPer100m,
      fittedDbPer100m,
      errorPercent: 100 * (fittedDbPer100m / publishedDbPer100m - 1),
    };
  });
  const squares = fitted.reduce((sum, point) => sum + point.errorPercent ** 2, 0);
  const inMHz = points.map((point) => point.frequencyMHz);
  return {
    cable: { skinLossDbPer100m: skinLoss, dielectricLossDbPer100m: dielectricLoss },
    points: fitted,
    largestErrorPercent: Math.max(...fitted.map((point) => Math.abs(point.errorPercent))),
    rootMeanSquareErrorPercent: Math.sqrt(squares / fitted.length),
    dielectricHeldAtZero: held,
    statedRange: { fromMHz: Math.min(...inMHz), toMHz: Math.max(...inMHz) },
  };
}
