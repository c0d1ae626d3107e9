import { expect, test } from 'vitest';
import { solveLinear } from '../../src/numeric/linearSystem.js';

// Solved by hand: x = 2, y = 3, z = -1 (the usual textbook system of three).
test('a system of three that needs pivoting', () => {
  const matrix = [
    [2, 1, -1],
    [-3, -1, 2],
    [-2, 1, 2],
  ];
  const found = solveLinear(matrix, [8, -11, -3]) ?? [];
  [2, 3, -1].forEach((value, index) => {
    expect(found[index]).toBeCloseTo(value, 12);
  });
  expect(matrix[0]).toEqual([2, 1, -1]);
});

test('a zero on the diagonal is no obstacle, a singular matrix is said', () => {
  expect(
    solveLinear(
      [
        [0, 1],
        [1, 0],
      ],
      [5, 7],
    ),
  ).toEqual([7, 5]);
  expect(
    solveLinear(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 1],
    ),
  ).toBeUndefined();
});
