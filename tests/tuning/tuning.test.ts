import fc from 'fast-check';
import {
  carrierTakenInstead,
  converterPlans,
  intermediateFrequency,
  radioFrequency,
  tuningTable,
  userBandCommand,
  userBandConflicts,
  wideUserBandCommand,
} from 'slantpath/tuning';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { input, type WorkedRow, workedCases, workedRows } from '../support/worked.js';

const frequencies = (quantity: string) => workedRows('tuning/frequencies.csv', quantity);

function behind(row: WorkedRow, rf = 'rfMHz') {
  return intermediateFrequency({
    frequencyGHz: input(row, rf) / 1000,
    localOscillatorGHz: input(row, 'loMHz') / 1000,
    localOscillatorErrorMHz: Number(row.inputs['loErrorMHz'] ?? 0),
    bandwidthMHz: Number(row.inputs['occupiedMHz'] ?? 0),
  });
}

publishedTable({
  part: 'tuning',
  quantity: 'intermediate and radio frequency',
  unit: 'MHz',
  source: 'worked frequencies, recomputed (oscillators as marked in the table)',
  status: 'recomputed',
  limit: 1e-9,
  reason: 'differences of whole hertz',
  count: 12 * 2 + 2 + 2 * 2 + 1 + 1,
  cases: () => [
    ...frequencies('intermediate frequency MHz').flatMap((row) => {
      const { intermediateFrequencyMHz, spectrumInverted } = behind(row);
      return workedCases(row, [intermediateFrequencyMHz, spectrumInverted ? 1 : 0]);
    }),
    ...frequencies('radio frequency MHz').flatMap((row) => {
      const injection = row.inputs['side'] === 'high' ? 'high-side' : 'low-side';
      const found = {
        intermediateFrequencyMHz: input(row, 'ifMHz'),
        localOscillatorGHz: input(row, 'loMHz') / 1000,
        injection,
      } as const;
      return workedCases(row, [radioFrequency(found) * 1000]);
    }),
    ...frequencies('IF edges MHz').flatMap((row) => {
      const { lowerRadioEdgeMHz, upperRadioEdgeMHz } = behind(row);
      return workedCases(row, [lowerRadioEdgeMHz, upperRadioEdgeMHz]);
    }),
    ...frequencies('carrier taken in').flatMap((row) =>
      workedCases(row, [
        carrierTakenInstead({
          frequencyGHz: input(row, 'wantedRfMHz') / 1000,
          localOscillatorGHz: input(row, 'loMHz') / 1000,
          actualLocalOscillatorGHz: input(row, 'actualLoMHz') / 1000,
        }) * 1000,
      ]),
    ),
    ...frequencies('IF MHz with LO off').flatMap((row) =>
      workedCases(row, [behind(row).intermediateFrequencyMHz]),
    ),
  ],
});

test('every worked row of frequencies is used', () => {
  expect(workedRows('tuning/frequencies.csv')).toHaveLength(18);
});

publishedTable({
  part: 'tuning',
  quantity: 'intermediate range of the converter plans',
  unit: 'MHz',
  source: 'local-oscillator plans, as marked in the table',
  status: 'recomputed',
  limit: 1e-9,
  reason: 'whole megahertz',
  count: 17 * 2,
  cases: () =>
    referenceTable('tuning/lo-plans.csv')
      .filter((row) => row['direction'] === 'down')
      .flatMap((row) => {
        const name = row['plan'] ?? '';
        const band = converterPlans
          .flatMap((plan) => plan.bands)
          .find(
            (one) =>
              one.localOscillatorGHz * 1000 === cell(row, 'lo_MHz') &&
              one.fromGHz * 1000 === cell(row, 'rf_low_MHz') &&
              one.toGHz * 1000 === cell(row, 'rf_high_MHz'),
          );
        if (band === undefined) throw new Error(`no band for ${name}`);
        const edges = [band.fromGHz, band.toGHz].map(
          (frequencyGHz) =>
            intermediateFrequency({ frequencyGHz, localOscillatorGHz: band.localOscillatorGHz })
              .intermediateFrequencyMHz,
        );
        return [
          { name: `${name} low`, expected: cell(row, 'if_low_MHz'), got: Math.min(...edges) },
          { name: `${name} high`, expected: cell(row, 'if_high_MHz'), got: Math.max(...edges) },
        ];
      }),
});

describe('tuning words', () => {
  test('first generation: word, message and tuned frequency as worked', () => {
    const rows = workedRows('tuning/user-bands.csv', 'EN 50494');
    expect(rows).toHaveLength(9);
    for (const row of rows) {
      const bank = input(row, 'bank');
      const asked = userBandCommand({
        intermediateFrequencyMHz: Math.abs(input(row, 'rfMHz') - input(row, 'loMHz')),
        userBandMHz: input(row, 'userBandMHz'),
        userBand: input(row, 'userBandNumber0to7'),
        polarization: bank & 2 ? 'horizontal' : 'vertical',
        band: bank & 1 ? 'high' : 'low',
        position: bank & 4 ? 'B' : 'A',
      });
      expect([asked.tuningWord, asked.message, asked.tunedMHz]).toEqual(row.expected);
      expect(asked.bank).toBe(bank);
    }
  });

  test('second generation: word and message as worked', () => {
    const rows = workedRows('tuning/user-bands.csv', 'EN 50607');
    expect(rows).toHaveLength(6);
    for (const row of rows) {
      const committed = input(row, 'committed');
      const asked = wideUserBandCommand({
        intermediateFrequencyMHz: input(row, 'ifMHz'),
        userBand: input(row, 'userBand1to32'),
        polarization: committed & 2 ? 'horizontal' : 'vertical',
        band: committed & 1 ? 'high' : 'low',
        secondPosition: (committed & 4) !== 0,
        secondOption: (committed & 8) !== 0,
        uncommitted: input(row, 'uncommitted'),
      });
      expect([asked.tuningWord, asked.message]).toEqual(row.expected);
    }
  });

  test('the carrier lies within 2 MHz of the user band', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 950, max: 2150, noNaN: true }),
        fc.double({ min: 950, max: 2150, noNaN: true }),
        (intermediateFrequencyMHz, userBandMHz) => {
          const { tunedMHz } = userBandCommand({
            intermediateFrequencyMHz,
            userBandMHz,
            userBand: 3,
            polarization: 'vertical',
            band: 'low',
          });
          expect(Math.abs(tunedMHz - userBandMHz)).toBeLessThanOrEqual(2.000001);
        },
      ),
    );
  });

  test('two bands too close, one beyond the range and one taken twice are named, the worst first', () => {
    const conflicts = userBandConflicts({
      bands: [
        { name: '1', centreMHz: 1210, bandwidthMHz: 46 },
        { name: '2', centreMHz: 1250, bandwidthMHz: 46 },
        { name: '3', centreMHz: 2140, bandwidthMHz: 46 },
        { name: '4', centreMHz: 1680, bandwidthMHz: 46 },
        { name: '4', centreMHz: 1680, bandwidthMHz: 46 },
      ],
    });
    expect(conflicts).toEqual([
      { kind: 'taken-twice', name: '4' },
      { kind: 'outside-range', name: '3', beyondMHz: 13 },
      { kind: 'overlap', first: '1', second: '2', overlapMHz: 6 },
    ]);
    const fitting = [1210, 1420, 1680, 2040].map((centreMHz, index) => ({
      name: String(index),
      centreMHz,
      bandwidthMHz: 46,
    }));
    expect(userBandConflicts({ bands: fitting, marginMHz: 2 })).toEqual([]);
  });
});

describe('tuning table', () => {
  const carrier = (frequencyGHz: number, polarization: 'vertical' | 'horizontal') => ({
    name: `${frequencyGHz} ${polarization}`,
    frequencyGHz,
    bandwidthMHz: 36,
    polarization,
  });

  test('a carrier at the end of the range is cut off, one beyond it is out of range', () => {
    const kinds = tuningTable({
      plan: 'ku-wideband-10400',
      carriers: [carrier(10.72, 'vertical'), carrier(12.54, 'vertical'), carrier(12.7, 'vertical')],
      receiver: { lowestMHz: 950, highestMHz: 2150 },
    }).map((row) => row.kind);
    expect(kinds).toEqual(['out-of-range', 'cut-off', 'out-of-range']);
  });

  test('the two polarizations of a stacked C-band unit come by different oscillators', () => {
    const rows = tuningTable({
      plan: 'c-stacked',
      carriers: [carrier(3.84, 'vertical'), carrier(3.84, 'horizontal')],
    });
    expect(rows).toMatchObject([
      { intermediateFrequencyMHz: 1310, supplyV: 13, tone: 'ignored', spectrumInverted: true },
      { intermediateFrequencyMHz: 1910, supplyV: 18, tone: 'ignored', spectrumInverted: true },
    ]);
  });

  test('at exactly 11.7 GHz the universal unit is taken in its low band', () => {
    const [row] = tuningTable({ plan: 'ku-universal', carriers: [carrier(11.7, 'vertical')] });
    expect(row).toMatchObject({ intermediateFrequencyMHz: 1950, tone: 'off' });
  });

  test('a carrier that the unit has no band for is said to lie outside it', () => {
    const [row] = tuningTable({ plan: 'ku-universal', carriers: [carrier(3.84, 'vertical')] });
    expect(row?.kind).toBe('outside-the-unit');
  });
});

test('there and back is the same carrier, and the image comes out at the same place', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 3, max: 31, noNaN: true }),
      fc.double({ min: 3, max: 31, noNaN: true }),
      (frequencyGHz, localOscillatorGHz) => {
        fc.pre(Math.abs(frequencyGHz - localOscillatorGHz) > 0.01);
        const there = intermediateFrequency({ frequencyGHz, localOscillatorGHz });
        expect(radioFrequency({ ...there, localOscillatorGHz })).toBeCloseTo(frequencyGHz, 8);
        if (there.imageFrequencyGHz < 0.1) return;
        const image = intermediateFrequency({
          frequencyGHz: there.imageFrequencyGHz,
          localOscillatorGHz,
        });
        expect(image.intermediateFrequencyMHz).toBeCloseTo(there.intermediateFrequencyMHz, 5);
      },
    ),
  );
});

test.each([
  [() => intermediateFrequency({ frequencyGHz: 11597, localOscillatorGHz: 9.75 }), 'frequencyGHz'],
  [
    () => intermediateFrequency({ frequencyGHz: 9.76, localOscillatorGHz: 9.75, bandwidthMHz: 36 }),
    'localOscillatorGHz',
  ],
  [
    () =>
      radioFrequency({
        intermediateFrequencyMHz: 6000,
        localOscillatorGHz: 5.15,
        injection: 'high-side',
      }),
    'intermediateFrequencyMHz',
  ],
  [
    () =>
      userBandCommand({
        intermediateFrequencyMHz: 11938,
        userBandMHz: 1210,
        userBand: 0,
        polarization: 'vertical',
        band: 'low',
      }),
    'intermediateFrequencyMHz',
  ],
  [
    () =>
      wideUserBandCommand({
        intermediateFrequencyMHz: 1338,
        userBand: 33,
        polarization: 'vertical',
        band: 'low',
      }),
    'userBand',
  ],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});

test('the image lies as far on the other side of the oscillator (definition in every radio textbook)', () => {
  const imageGHz = (frequencyGHz: number, localOscillatorGHz: number) =>
    intermediateFrequency({ frequencyGHz, localOscillatorGHz }).imageFrequencyGHz;
  // Ku band under its oscillator's 9.75 GHz: 11.7 is 1.95 above, the image 1.95 below.
  expect(imageGHz(11.7, 9.75)).toBeCloseTo(7.8, 9);
  // C band: 4.0 is 1.15 below 5.15, the image 1.15 above.
  expect(imageGHz(4, 5.15)).toBeCloseTo(6.3, 9);
});
