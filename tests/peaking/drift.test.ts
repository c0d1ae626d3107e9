/** A level that drifts while it is read, by 0.2 dB in all: the interval still holds the truth. Lobes by their own formulas, without scatter. */

import { expect, test } from 'vitest';
import { fitCoupledPeak, fitNull } from '../../src/peaking/index.js';

const TOLD_DB = 0.02;
/** Drift in the order of the readings, from -0.1 to 0.1 dB. */
const drift = (index: number, count: number) => 0.1 * ((2 * index) / (count - 1) - 1);
const holds = ([from, to]: readonly [number, number], truth: number) =>
  from <= truth && truth <= to;

test('the null, read from left to right', () => {
  const rotationDeg = [-24, -18, -12, -6, 0, 6, 12, 18, 24];
  const nullDeg = 1.3;
  const levelDbm = rotationDeg.map((at, i) => {
    const sine = Math.sin(((at - nullDeg) * Math.PI) / 180);
    return -40 + 10 * Math.log10(sine * sine + 1e-3) + drift(i, rotationDeg.length);
  });
  const fit = fitNull({ rotationDeg, levelDbm, standardDeviationDb: TOLD_DB });
  if (fit.kind !== 'null') throw new Error(fit.kind);
  expect(Math.abs(fit.nullDeg - nullDeg)).toBeGreaterThan(0.01);
  expect(holds(fit.interval95Deg, nullDeg)).toBe(true);
});

test('both axes, read row by row', () => {
  const grid = [-1, -0.33, 0.33, 1].flatMap((y) => [-1, 0, 1].map((x) => [x, y] as const));
  const levelDbm = grid.map(
    ([x, y], i) => -40 - 4 * (x - 0.1) ** 2 - 3 * (y + 0.05) ** 2 + drift(i, grid.length),
  );
  const fit = fitCoupledPeak({
    firstDeg: grid.map(([x]) => x),
    secondDeg: grid.map(([, y]) => y),
    levelDbm,
    standardDeviationDb: TOLD_DB,
  });
  if (fit.kind !== 'peak') throw new Error(fit.kind);
  expect(holds(fit.interval95Deg[0], 0.1)).toBe(true);
  expect(holds(fit.interval95Deg[1], -0.05)).toBe(true);
});
