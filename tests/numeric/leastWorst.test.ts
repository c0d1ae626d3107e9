import { expect, test } from 'vitest';
import { leastWorst } from '../../src/numeric/leastWorst.js';

// The circle through the farthest points: a triangle of sides 3, 4, 5 has its least circle on the longest side.
test('the smallest circle round a right triangle', () => {
  const corners = [
    [0, 0],
    [3, 0],
    [0, 4],
  ] as const;
  const found = leastWorst(
    ([x = 0, y = 0]) => corners.map(([cx, cy]) => (x - cx) ** 2 + (y - cy) ** 2),
    [7, -2],
    0.01,
  );
  expect(found.value).toBeCloseTo(6.25, 4);
  expect(found.at[0]).toBeCloseTo(1.5, 3);
  expect(found.at[1]).toBeCloseTo(2, 3);
});

// By hand: max(x^2, 4 (x - 3)^2) is least where x = 2 (3 - x), at x = 2 with value 4.
test('two unequal bowls meet', () => {
  const found = leastWorst(([x = 0]) => [x * x, 4 * (x - 3) ** 2], [0], 0.01);
  expect(found.at[0]).toBeCloseTo(2, 4);
  expect(found.value).toBeCloseTo(4, 4);
});

test('one function alone: its own minimum', () => {
  const found = leastWorst(
    ([x = 0, y = 0, z = 0]) => [(x - 1) ** 2 + 10 * (y + 2) ** 2 + 0.1 * (z - 5) ** 2 + 3],
    [0, 0, 0],
    0.01,
  );
  expect(found.value).toBeCloseTo(3, 8);
});
