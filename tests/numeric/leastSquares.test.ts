import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linearLeastSquares } from '../../src/numeric/leastSquares.js';

/**
 * Values from numpy.linalg.lstsq on sqrt(w)-scaled rows and inv(X' W X), for
 * x = 0, 1, 2, 3, 5; y = 1.1, 1.9, 3.2, 3.8, 6.4; w = 1, 2, 1, 0.5, 1.
 */
const x = [0, 1, 2, 3, 5];
const y = [1.1, 1.9, 3.2, 3.8, 6.4];
const w = [1, 2, 1, 0.5, 1];

describe('linear least squares', () => {
  test('agrees with numpy', () => {
    const fit = linearLeastSquares([[1, 1, 1, 1, 1], x], y, w);
    expect(fit?.coefficients[0]).toBeCloseTo(0.9323529411764706, 13);
    expect(fit?.coefficients[1]).toBeCloseTo(1.073529411764706, 13);
    expect(fit?.covariance[0]?.[1]).toBeCloseTo(-0.12352941176470594, 14);
    expect(fit?.covariance[1]?.[1]).toBeCloseTo(0.0647058823529412, 14);
    expect(fit?.sumOfSquares).toBeCloseTo(0.13735294117647048, 13);
    expect(fit?.degreesOfFreedom).toBe(3);
  });

  test('variances of fitted values add up to the number of coefficients, residuals are orthogonal', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 6, maxLength: 20 }),
        (values) => {
          const place = values.map((_, i) => i / values.length - 0.5);
          const columns = [place.map(() => 1), place, place.map((v) => v * v)];
          const fit = linearLeastSquares(columns, values);
          expect(fit?.fittedVariances.reduce((a, b) => a + b)).toBeCloseTo(3, 10);
          for (const column of columns)
            expect(fit?.residuals.reduce((s, r, i) => s + r * (column[i] ?? 0), 0)).toBeCloseTo(
              0,
              10,
            );
        },
      ),
    );
  });

  test('rows of weight zero do not count, and a weight of two is a row twice', () => {
    const fit = linearLeastSquares(
      [
        [1, 1, 1, 1],
        [0, 1, 2, 9],
      ],
      [1, 2, 2.9, 55],
      [1, 2, 1, 0],
    );
    const twice = linearLeastSquares(
      [
        [1, 1, 1, 1],
        [0, 1, 1, 2],
      ],
      [1, 2, 2, 2.9],
    );
    expect(fit?.coefficients[1]).toBeCloseTo(twice?.coefficients[1] ?? Number.NaN, 13);
    expect(fit?.degreesOfFreedom).toBe(1);
  });

  test('no answer where the columns depend on each other or rows are too few', () => {
    expect(
      linearLeastSquares(
        [
          [1, 1, 1],
          [2, 2, 2],
        ],
        [1, 2, 3],
      ),
    ).toBeUndefined();
    expect(linearLeastSquares([[1], [2]], [1])).toBeUndefined();
  });
});
