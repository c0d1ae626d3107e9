import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../src/errors.js';
import { type Bracketing, bracketPeak, usefulDrop } from '../../src/peaking/index.js';

// Two turns out, four back, two back, in whole decibels: common practice of the trade, no source.
const byHand: Bracketing = {
  peakLevelDbm: -38,
  referenceLevelDbm: -42,
  turnsOut: 2,
  turnsBack: 4,
  levelStepDb: 1,
};

/**
 * Every lobe P - k (x - p)^2 on a fine grid whose levels round to those displayed at the peak, two turns out and
 * two turns beyond: the farthest peak from the middle.
 */
function enumerated(
  { peakLevelDbm, referenceLevelDbm, turnsBack, levelStepDb = 0 }: Bracketing,
  steps: number,
): number {
  const rounds = (level: number, shown: number) => Math.abs(level - shown) <= levelStepDb / 2;
  const half = turnsBack / 2;
  let farthest = 0;
  for (let i = 0; i <= steps; i++) {
    const top = peakLevelDbm - levelStepDb / 2 + (levelStepDb * i) / steps;
    for (let j = 0; j <= 4 * steps; j++) {
      const bend =
        ((0.2 + (1.8 * j) / (4 * steps)) * (peakLevelDbm - referenceLevelDbm)) / half ** 2;
      for (let k = 0; k <= steps; k++) {
        const peak = (half * k) / steps;
        if (peak <= farthest) continue;
        if (
          rounds(top, peakLevelDbm) &&
          rounds(top - bend * (half - peak) ** 2, referenceLevelDbm) &&
          rounds(top - bend * (-half - peak) ** 2, referenceLevelDbm)
        )
          farthest = peak;
      }
    }
  }
  return farthest;
}

describe('bracketing', () => {
  test('two turns out, four back, so two back', () => {
    const bracket = bracketPeak(byHand);
    expect(bracket.kind).toBe('bracketed');
    expect(bracket.moveBackTurns).toBe(2);
    expect(bracket.peakFromStartTurns).toBe(0);
    expect(bracket.dropDb).toBe(4);
  });

  test.each([
    ['4 dB in 1 dB steps', byHand],
    ['2 dB in 1 dB steps', { ...byHand, referenceLevelDbm: -40 }],
    [
      '3 dB in 0.5 dB steps, three turns',
      { ...byHand, referenceLevelDbm: -41, levelStepDb: 0.5, turnsBack: 3 },
    ],
  ])(
    'the stated error agrees with an enumeration of all lobes that round so: %s',
    (name, input) => {
      const stated = bracketPeak(input).worstErrorTurns ?? 0;
      const found = enumerated(input, 200);
      console.log(
        `peaking bracketing, ${name}: stated ${stated.toFixed(4)} turns, enumerated ${found.toFixed(4)}`,
      );
      expect(found).toBeLessThanOrEqual(stated + 1e-12);
      // The grid is half / 200 apart and the extreme lobe is met within a few cells.
      expect(found).toBeGreaterThan(stated - (4 * input.turnsBack) / 400);
    },
  );

  test('the error given at 95 % holds for all lobes, rounding and flicker counted', () => {
    // Half-width 1.96 standard uncertainties, or less where rounding bounds it.
    const flicker = bracketPeak({
      ...byHand,
      lobe: 'parabola',
      levelStepDb: 0,
      standardDeviationDb: 0.4,
    });
    // Two levels, slope 2 d / h each: s sqrt(2) h / (4 d) = 0.4 sqrt(2) 2 / 16.
    expect(flicker.standardUncertaintyTurns).toBeCloseTo((0.4 * Math.SQRT2 * 2) / 16, 12);
    expect(flicker.worstErrorTurns).toBe(0);
    expect(flicker.error95Turns).toBeCloseTo(1.96 * flicker.standardUncertaintyTurns, 12);
    expect(flicker.lossUpper95Db).toBeCloseTo(4 * ((flicker.error95Turns ?? 0) / 2) ** 2, 12);
  });

  test('lost turns: the middle is half of what the antenna made, the move back makes them up', () => {
    const bracket = bracketPeak({ ...byHand, backlashTurns: 0.5 });
    expect(bracket.moveBackTurns).toBeCloseTo(1.75 + 0.5, 12);
    expect(bracket.peakFromStartTurns).toBeCloseTo(2 - 1.75, 12);
  });

  test('unequal levels share the way by the square roots of their drops', () => {
    // Drops of 4 and 9 dB: the peak lies 2 : 3 along the way; five turns from out to far.
    const bracket = bracketPeak({
      peakLevelDbm: -30,
      referenceLevelDbm: -34,
      farLevelDbm: -39,
      turnsOut: 2,
      turnsBack: 5,
    });
    expect(bracket.moveBackTurns).toBeCloseTo(3, 12);
    expect(bracket.peakFromStartTurns).toBeCloseTo(0, 12);
  });

  test('stopping both times at the change of the display leaves no rounding error but that of the top', () => {
    const bracket = bracketPeak({ ...byHand, outStop: 'at-change', farStop: 'at-change' });
    expect(bracket.worstErrorTurns).toBe(0);
    const once = bracketPeak({ ...byHand, farStop: 'at-change' });
    expect(once.moveBackTurns).not.toBe(2);
    expect(once.worstErrorTurns ?? 9).toBeLessThan(bracketPeak(byHand).worstErrorTurns ?? 0);
  });

  test('quarter turns and degrees', () => {
    const bracket = bracketPeak({
      lobe: 'parabola',
      ...byHand,
      levelStepDb: 0,
      countStepTurns: 0.25,
      degPerTurn: 0.8,
    });
    expect(bracket.standardUncertaintyTurns).toBeCloseTo(0.25 / Math.sqrt(24), 12);
    expect(bracket.standardUncertaintyDeg).toBeCloseTo((0.8 * 0.25) / Math.sqrt(24), 12);
    expect(bracket.moveBackDeg).toBeCloseTo(1.6, 12);
    // 4 dB at 2 turns: 12 (2 / width)^2 = 4.
    expect(bracket.beamwidthTurns).toBeCloseTo(2 * Math.sqrt(3), 12);
  });

  test('blind within one step of the display, not far enough a little beyond', () => {
    expect(bracketPeak({ ...byHand, referenceLevelDbm: -39 })).toMatchObject({
      kind: 'blind',
      worstErrorTurns: null,
      moveBackRangeTurns: null,
    });
    expect(bracketPeak({ ...byHand, referenceLevelDbm: -38 }).kind).toBe('blind');
    expect(bracketPeak({ ...byHand, referenceLevelDbm: -39.4 }).kind).toBe('not-far-enough');
    expect(bracketPeak({ ...byHand, lobe: 'parabola', wantedTurns: 0.1 }).kind).toBe(
      'not-far-enough',
    );
    // On a reflector it is the lopsided lobe that forbids so much accuracy.
    expect(bracketPeak({ ...byHand, wantedTurns: 0.1 }).kind).toBe('too-far');
  });

  test('the least useful drop is where the loss left meets the one wanted', () => {
    // scipy.optimize.brentq on sqrt(d) ((r - 1)/(r + 1) + 1.96 s sqrt(2)/(4 d)) = sqrt(0.1).
    expect(usefulDrop({ levelStepDb: 1 })).toBeCloseTo(1.5468002, 6);
    expect(usefulDrop({ levelStepDb: 1, standardDeviationDb: 0.5 })).toBeCloseTo(4.0134795, 6);
    expect(usefulDrop({})).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        fc.double({ min: 0.02, max: 0.9, noNaN: true }),
        (levelStepDb, share) => {
          // A wanted loss of a whole step is met by any drop above the step.
          const wantedLossDb = share * levelStepDb;
          const dropDb = usefulDrop({ levelStepDb, wantedLossDb });
          const bracket = bracketPeak({
            peakLevelDbm: 0,
            referenceLevelDbm: -dropDb,
            turnsOut: 1,
            turnsBack: 2,
            levelStepDb,
          });
          const lossDb = dropDb * (bracket.worstErrorTurns ?? Number.NaN) ** 2;
          expect(lossDb / wantedLossDb).toBeCloseTo(1, 4);
        },
      ),
    );
  });

  test('every lobe that rounds so lies within the range, whatever the numbers', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: 0.3, max: 6, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.constantFrom(0.1, 0.5, 1),
        (peak, bend, top, step) => {
          const show = (level: number) => step * Math.round(level / step);
          const level = (x: number) => top - bend * (x - peak) ** 2;
          const bracket = bracketPeak({
            peakLevelDbm: Math.max(show(level(peak)), show(level(3)), show(level(-3))),
            referenceLevelDbm: show(level(3)),
            farLevelDbm: show(level(-3)),
            turnsOut: 3,
            turnsBack: 6,
            levelStepDb: step,
          });
          const range = bracket.moveBackRangeTurns;
          if (range === null) return;
          expect(3 + peak).toBeGreaterThan(range[0] - 1e-9);
          expect(3 + peak).toBeLessThan(range[1] + 1e-9);
        },
      ),
    );
  });

  test.each([
    [
      'referenceLevelDbm',
      { ...byHand, referenceLevelDbm: -30 },
      'were peak and reference swapped?',
    ],
    ['turnsBack', { ...byHand, turnsBack: 0 }, undefined],
    ['turnsOut', { ...byHand, turnsOut: Number.NaN }, undefined],
    ['backlashTurns', { ...byHand, backlashTurns: 4 }, 'were more turns lost than turned?'],
    ['levelStepDb', { ...byHand, levelStepDb: -1 }, undefined],
    ['wantedLossDb', { ...byHand, wantedLossDb: 0 }, undefined],
    ['farStop', { ...byHand, farStop: 'late' as 'anywhere' }, undefined],
  ])('refuses a bad %s', (parameter, input, slip) => {
    expect(() => bracketPeak(input)).toThrow(DomainError);
    expect(() => bracketPeak(input)).toThrow(
      expect.objectContaining({ parameter, ...(slip ? { slip } : {}) }),
    );
  });

  test('refuses no object at all', () => {
    expect(() => bracketPeak(undefined as unknown as Bracketing)).toThrow(DomainError);
    expect(() => usefulDrop(null as unknown as Bracketing)).toThrow(DomainError);
  });
});
