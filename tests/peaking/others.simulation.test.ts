/** Bracketing by hand, two axes and the null on lobes of real apertures: how often the stated 95 % hold. */

import { describe, expect, test } from 'vitest';
import { bracketPeak, fitCoupledPeak, fitNull } from '../../src/peaking/index.js';
import { runs } from '../support/runs.js';
import { generator, normals } from './simulator/aperture.js';
import { type AnyLobe, anyLobe } from './simulator/lobes.js';
import { planeOf, WAVEFRONTS, type WavefrontName } from './simulator/wavefront.js';

const RUNS = runs(500);
/** Least share that holds in so many runs where 95 % is true, three standard deviations below. */
const least = (count: number) => 0.95 - 3 * Math.sqrt((0.95 * 0.05) / Math.max(1, count));

/** From one reading to the next on the way, in beamwidths. */
const STRIDE = 0.007;

const rounded = (level: number, stepDb: number) =>
  stepDb > 0 ? stepDb * Math.round(level / stepDb) : level;

/** Turns out to a drop, back through the peak to the same level, and half of it back; shares that keep error and loss. */
function bracketings(name: AnyLobe, dropDb: number, scatterDb: number, stepDb: number) {
  const lobe = anyLobe(name);
  const next = generator(dropDb * 9 + scatterDb * 100 + 1);
  const normal = normals(next);
  let found = 0;
  let error = 0;
  let loss = 0;
  for (let run = 0; run < RUNS; run++) {
    const topDbm = -40 + next();
    // 0.2 dB of drift over the whole.
    const read = (place: number, time: number) =>
      rounded(topDbm + lobe(place) + scatterDb * normal() + 0.2 * time, stepDb);
    const peakLevelDbm = Math.max(...[0, 1, 2].map(() => read(0.06 * (next() - 0.5), 0)));
    const start = 0.06 * (next() - 0.5);
    let out = start;
    let referenceLevelDbm = peakLevelDbm;
    while (referenceLevelDbm > peakLevelDbm - dropDb && out < 2) {
      out += STRIDE;
      referenceLevelDbm = read(out, 0.3);
    }
    let far = -0.2;
    let farLevelDbm = peakLevelDbm;
    while (farLevelDbm > referenceLevelDbm && far > -2) {
      far -= STRIDE;
      farLevelDbm = read(far, 0.8);
    }
    if (referenceLevelDbm >= peakLevelDbm || farLevelDbm > peakLevelDbm) continue;
    const bracket = bracketPeak({
      peakLevelDbm,
      referenceLevelDbm,
      farLevelDbm,
      turnsOut: out - start,
      turnsBack: out - far,
      levelStepDb: stepDb,
      standardDeviationDb: scatterDb,
    });
    if (bracket.error95Turns === null || bracket.lossUpper95Db === null) continue;
    found++;
    const off = far + bracket.moveBackTurns;
    if (Math.abs(off) <= bracket.error95Turns) error++;
    if (-lobe(off) <= bracket.lossUpper95Db) loss++;
  }
  return { found, error: error / found, loss: loss / found };
}

describe('bracketing by hand on a real lobe', () => {
  test.each([
    ['rim 10 dB down', 3, 0.1, 0],
    ['coma', 3, 0.3, 0.5],
    ['coma', 6, 0.1, 0],
    ['coma', 10, 0.3, 0.5],
    ['uneven surface', 6, 0.3, 1],
    ['everything a little', 3, 0.1, 0],
  ] as const)('%s, drop %s dB, scatter %s dB, step %s dB', (name, drop, scatter, step) => {
    const { found, error, loss } = bracketings(name, drop, scatter, step);
    console.log(
      `bracketing, ${name}, drop ${drop} dB, scatter ${scatter} dB, step ${step} dB: error holds ${(100 * error).toFixed(1)} %, loss ${(100 * loss).toFixed(1)} %`,
    );
    expect(found).toBeGreaterThan(0.9 * RUNS);
    expect(error).toBeGreaterThanOrEqual(least(found));
    expect(loss).toBeGreaterThanOrEqual(least(found));
  });
});

describe('two axes on a real lobe', () => {
  test.each([
    ['clean, cos feed', 5, 0.1, 0, 0],
    ['coma', 4, 0.3, 0, 0],
    ['elliptical, bent', 5, 0.3, 0.5, 0],
    ['everything a little', 5, 0.3, 0, 0.2],
  ] as const)('%s, %s by %s places, scatter %s dB', (name, side, scatterDb, stepDb, driftDb) => {
    const lobe = planeOf(WAVEFRONTS[name as WavefrontName]);
    const next = generator(side * 77 + scatterDb * 100);
    const normal = normals(next);
    const grid = Array.from({ length: side * side }, (_, i) => ({
      x: -0.55 + (1.1 * (i % side)) / (side - 1),
      y: -0.55 + (1.1 * Math.floor(i / side)) / (side - 1),
    }));
    const count = Math.round(RUNS / 2);
    let assured = 0;
    let held = 0;
    for (let run = 0; run < count; run++) {
      const peak = [0.5 * (next() - 0.5), 0.5 * (next() - 0.5)] as const;
      const fit = fitCoupledPeak({
        firstDeg: grid.map(({ x }) => x),
        secondDeg: grid.map(({ y }) => y),
        levelDbm: grid.map(({ x, y }, i) =>
          rounded(
            lobe(x - peak[0], y - peak[1]) +
              scatterDb * normal() +
              (driftDb * i) / (grid.length - 1),
            stepDb,
          ),
        ),
        levelStepDb: stepDb,
      });
      if (fit.kind !== 'peak' || fit.coverage === 'not-assured') continue;
      assured++;
      fit.interval95Deg.forEach(([from, to], k) => {
        const at = peak[k as 0 | 1];
        if (from <= at && at <= to) held += 0.5;
      });
    }
    console.log(
      `two axes, ${name}, ${side} by ${side}, scatter ${scatterDb} dB: intervals hold ${((100 * held) / assured).toFixed(1)} %, assured in ${((100 * assured) / count).toFixed(0)} %`,
    );
    expect(assured / count).toBeGreaterThan(0.5);
    expect(held / assured).toBeGreaterThanOrEqual(least(assured));
  });
});

describe('the null with a leak of any phase', () => {
  test.each([
    [7, 40, 0.3, 0, 0],
    [9, 60, 0.3, 0.5, 0],
    [9, 60, 0.3, 0, 0.1],
    [9, 80, 0.3, 0, 0],
  ] as const)(
    '%s readings over %s degrees, scatter %s dB, step %s dB, outliers %s',
    (n, spanDeg, scatterDb, stepDb, outliers) => {
      const next = generator(n * 7 + spanDeg);
      const normal = normals(next);
      let assured = 0;
      let held = 0;
      for (let run = 0; run < RUNS; run++) {
        const leak = 0.03 * (0.5 + next());
        const phase = 2 * Math.PI * next();
        const zeroDeg = 10 * (next() - 0.5);
        // Field across and field along, with a leak of the second into the first.
        const level = (deg: number) => {
          const angle = ((deg - zeroDeg) * Math.PI) / 180;
          const across = Math.sin(angle) + leak * Math.cos(phase) * Math.cos(angle);
          const beside = leak * Math.sin(phase) * Math.cos(angle);
          return 10 * Math.log10(across ** 2 + beside ** 2 + 1e-7) - 40;
        };
        let nullDeg = zeroDeg;
        for (let step = 5; step > 1e-4; step /= 2)
          while (Math.min(level(nullDeg + step), level(nullDeg - step)) < level(nullDeg))
            nullDeg += level(nullDeg + step) < level(nullDeg) ? step : -step;
        const rotationDeg = Array.from({ length: n }, (_, i) => spanDeg * (i / (n - 1) - 0.5));
        const fit = fitNull({
          rotationDeg,
          levelDbm: rotationDeg.map((deg) => {
            let read = level(deg) + scatterDb * normal();
            if (next() < outliers) read += (next() < 0.2 ? 1 : -1) * (1 + 5 * next());
            return rounded(read, stepDb);
          }),
          levelStepDb: stepDb,
        });
        if (fit.kind !== 'null' || fit.coverage === 'not-assured') continue;
        assured++;
        if (fit.interval95Deg[0] <= nullDeg && nullDeg <= fit.interval95Deg[1]) held++;
      }
      console.log(
        `null, ${n} readings over ${spanDeg} degrees: intervals hold ${((100 * held) / assured).toFixed(1)} %, assured in ${((100 * assured) / RUNS).toFixed(0)} %`,
      );
      expect(held / assured).toBeGreaterThanOrEqual(least(assured));
      if (outliers === 0) expect(assured / RUNS).toBeGreaterThan(0.6);
    },
  );
});
