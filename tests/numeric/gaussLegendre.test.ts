import { expect, test } from 'vitest';
import { gaussLegendre } from '../../src/numeric/gaussLegendre.js';

test('exact for polynomials up to degree 19, not beyond', () => {
  for (let degree = 0; degree <= 19; degree++)
    expect(gaussLegendre((x) => x ** degree, 0, 2)).toBeCloseTo(
      2 ** (degree + 1) / (degree + 1),
      7,
    );
  // The error of degree 20 on [-1, 1] is 2^21 (10!)^4 / (21 (20!)^2) = 2.92559033e-6.
  expect(2 / 21 - gaussLegendre((x) => x ** 20, -1, 1)).toBeCloseTo(2.92559033e-6, 13);
});

test('the sine over half a turn is 2', () => {
  expect(gaussLegendre(Math.sin, 0, Math.PI)).toBeCloseTo(2, 12);
  expect(gaussLegendre(Math.sin, Math.PI, 0)).toBeCloseTo(-2, 12);
});
