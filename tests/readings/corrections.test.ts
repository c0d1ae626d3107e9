import fc from 'fast-check';
import {
  bitEnergyForErrors,
  bitErrorRatio,
  carrierPower,
  carrierToNoiseInBandwidth,
  displayedNoiseTooLowDb,
  energyRatios,
  implementationLoss,
  logarithmAboveCarrierDb,
  modulationError,
  narrowMeterDb,
  noiseBandwidthRatio,
  occupiedBandwidthDb,
  outerRingAboveMeanDb,
  powerWithinSymbolRateDb,
  shownMer,
  signalWithoutNoise,
  spectralDensity,
  symbolEnergyFromMer,
  symbolErrorRatio8psk,
} from 'slantpath/readings';
import { describe, expect, test } from 'vitest';
import { dbToRatio } from '../../src/numeric/decibel.js';
import { normalExceedance } from '../../src/numeric/normal.js';
import { publishedTable } from '../support/published.js';
import { input, type WorkedRow, workedCases, workedRows } from '../support/worked.js';

/** What the library gives for a row, by the beginning of its quantity. */
type Answers = readonly (readonly [
  quantity: string,
  answer: (row: WorkedRow) => readonly unknown[],
])[];

function answered(path: string, answers: Answers) {
  return workedRows(path).flatMap((row) => {
    const found = answers.find(([quantity]) => row.quantity.startsWith(quantity));
    if (found === undefined) throw new Error(`no answer for ${row.quantity}`);
    return workedCases(row, found[1](row));
  });
}

const signal = (signalPlusNoiseDbm: number, noiseDbm: number) => {
  const alone = signalWithoutNoise({ signalPlusNoiseDbm, noiseDbm });
  if (alone.kind !== 'signal') throw new Error(alone.kind);
  return alone;
};

const marker = (row: WorkedRow) => ({
  markerDbm: input(row, 'markerDbm'),
  resolutionBandwidthMHz: input(row, 'rbwHz') / 1e6,
  noiseBandwidthRatio: input(row, 'noiseBandwidthFactor'),
  average: row.inputs['logAverage'] === true ? ('logarithm' as const) : ('power' as const),
});

publishedTable({
  part: 'readings',
  quantity: 'corrections of readings',
  unit: 'dB',
  source: 'worked corrections, recomputed (rules as marked in the table)',
  status: 'recomputed',
  limit: 1e-6,
  reason: 'printed digits',
  count: 36,
  cases: () =>
    answered('readings/corrections.csv', [
      [
        'correction dB from signal plus noise',
        (row) => [signal(-60 + input(row, 'readingAboveNoiseDb'), -60).correctionDb],
      ],
      [
        'signal dBm',
        (row) => [signal(input(row, 'signalPlusNoiseDbm'), input(row, 'noiseDbm')).levelDbm],
      ],
      ['C/N dB from', (row) => [signal(-60 + input(row, 'ratioDb'), -60).carrierToNoiseDb]],
      ['log-average correction', () => [displayedNoiseTooLowDb('logarithm')]],
      ['voltage-average correction', () => [displayedNoiseTooLowDb('voltage')]],
      [
        'log average below voltage',
        () => [displayedNoiseTooLowDb('logarithm') - displayedNoiseTooLowDb('voltage')],
      ],
      [
        'noise bandwidth over 3 dB bandwidth, Gaussian',
        () => [noiseBandwidthRatio({ kind: 'gaussian' })],
      ],
      [
        'noise bandwidth over 3 dB bandwidth, sync',
        (row) => [noiseBandwidthRatio({ kind: 'tuned-stages', stages: input(row, 'poles') })],
      ],
      ['noise density', (row) => [spectralDensity(marker(row))]],
      [
        'power dBm of a flat digital carrier',
        (row) => [carrierPower({ ...marker(row), symbolRateMBd: input(row, 'symbolRate') / 1e6 })],
      ],
      ['C/N dB in the occupied', (row) => [occupiedBandwidthDb(input(row, 'rollOff'))]],
      ['part of the carrier power', (row) => [powerWithinSymbolRateDb(input(row, 'rollOff'))]],
      [
        'carrier power dB above',
        (row) => [
          narrowMeterDb({
            bandwidthMHz: input(row, 'meterHz') / 1e6,
            symbolRateMBd: input(row, 'symbolRate') / 1e6,
          }),
        ],
      ],
      [
        'log average of carrier plus noise',
        (row) => [logarithmAboveCarrierDb(input(row, 'carrierToNoiseDb'))],
      ],
    ]),
});

const points = (row: WorkedRow) =>
  (row.inputs['idealTimesRoot2'] as number[][]).map((ideal, index) => {
    const error = (row.inputs['error'] as number[][])[index] as number[];
    const [idealI, idealQ] = ideal.map((part) => part / Math.SQRT2) as [number, number];
    return {
      idealI,
      idealQ,
      receivedI: idealI + (error[0] as number),
      receivedQ: idealQ + (error[1] as number),
    };
  });

publishedTable({
  part: 'readings',
  quantity: 'quality ratios',
  unit: 'dB or as named',
  source: 'worked quality ratios, recomputed (rules as marked in the table)',
  status: 'recomputed',
  limit: 1e-5,
  reason: 'printed digits',
  count: 38,
  cases: () =>
    answered('readings/quality.csv', [
      [
        'Es/N0 dB; Eb/N0 dB',
        (row) => {
          const energy = energyRatios({
            carrierToDensityDbHz: input(row, 'cOverN0DbHz'),
            symbolRateMBd: input(row, 'symbolRate') / 1e6,
            informationBitsPerSymbol: input(row, 'infoBitsPerSymbol'),
          });
          return [energy.symbolEnergyToNoiseDb, energy.bitEnergyToNoiseDb];
        },
      ],
      [
        'MER dB shown',
        (row) => [shownMer({ valueDb: input(row, 'esN0Db'), ceilingDb: input(row, 'ceilingDb') })],
      ],
      [
        'Es/N0 dB from MER',
        (row) => [
          symbolEnergyFromMer({
            valueDb: input(row, 'merDb'),
            ceilingDb: input(row, 'ceilingDb'),
          }).symbolEnergyToNoiseDb,
        ],
      ],
      [
        'MER dB; EVM',
        (row) => {
          const error = modulationError(points(row));
          return [error.merDb, error.errorVectorPercent];
        },
      ],
      [
        'bit error ratio, QPSK',
        (row) => [bitErrorRatio({ modulation: 'qpsk', bitEnergyToNoiseDb: input(row, 'ebN0Db') })],
      ],
      [
        'symbol error ratio, 8PSK',
        (row) => {
          const energy = dbToRatio(input(row, 'esN0Db'));
          const close = 2 * normalExceedance(Math.sqrt(2 * energy) * Math.sin(Math.PI / 8));
          return [symbolErrorRatio8psk(input(row, 'esN0Db')), close];
        },
      ],
      [
        'Eb/N0 dB for a bit error ratio, QPSK',
        (row) => [bitEnergyForErrors({ modulation: 'qpsk', bitErrorRatio: input(row, 'ber') })],
      ],
      [
        'Eb/N0 dB for a bit error ratio, 8PSK',
        (row) => [bitEnergyForErrors({ modulation: '8psk', bitErrorRatio: input(row, 'ber') })],
      ],
      [
        'implementation loss',
        (row) => {
          const loss = implementationLoss({
            idealSymbolEnergyToNoiseDb: input(row, 'idealEsN0Db'),
            neededSymbolEnergyToNoiseDb: input(row, 'neededEsN0Db'),
          });
          return [loss.lossDb, loss.errorBelowCarrierDb];
        },
      ],
      ['16APSK', (row) => [outerRingAboveMeanDb(input(row, 'ringRatio'))]],
    ]),
});

describe('a reading near the noise', () => {
  test('says only at most where the two readings differ by less than their doubt', () => {
    const alone = signalWithoutNoise({ signalPlusNoiseDbm: -64.8, noiseDbm: -65 });
    expect(alone.kind).toBe('at-most');
    // 0.2 dB + 1.645 x 0.2 dB above the noise.
    expect(alone.carrierToNoiseDb).toBeCloseTo(10 * Math.log10(10 ** 0.0529 - 1), 3);
  });

  test('is as unsure as two readings drawn at random make it', () => {
    const random = { seed: 5 };
    const draw = () => {
      // Park and Miller's generator and the sum of twelve uniform draws: independent of the library's own.
      let sum = -6;
      for (let i = 0; i < 12; i += 1) {
        random.seed = (random.seed * 16807) % 2147483647;
        sum += random.seed / 2147483647;
      }
      return sum;
    };
    for (const aboveDb of [2, 4, 8]) {
      const levels = Array.from({ length: 4000 }, () =>
        signal(-60 + aboveDb + 0.1 * draw() * Math.SQRT1_2, -60 + 0.1 * draw() * Math.SQRT1_2),
      ).map((alone) => alone.levelDbm);
      const mean = levels.reduce((a, b) => a + b, 0) / levels.length;
      const spread = Math.sqrt(
        levels.reduce((a, b) => a + (b - mean) ** 2, 0) / (levels.length - 1),
      );
      // Independent readings of 0.0707 dB each: the level moves by 1/(1-r) with the sum and r/(1-r) with the noise.
      const r = 10 ** (-aboveDb / 10);
      expect(spread).toBeCloseTo((0.1 * Math.SQRT1_2 * Math.hypot(1, r)) / (1 - r), 1);
      const stated = signalWithoutNoise({
        signalPlusNoiseDbm: -60 + aboveDb,
        noiseDbm: -60,
        standardUncertaintyDb: 0.1,
      });
      if (stated.kind === 'signal')
        expect(stated.standardUncertaintyDb).toBeGreaterThanOrEqual(spread * 0.95);
    }
  });

  test('MER at its ceiling says at least', () => {
    const at = symbolEnergyFromMer({ valueDb: 19.8, ceilingDb: 20, standardUncertaintyDb: 0.5 });
    expect(at.kind).toBe('at-least');
    expect(at.symbolEnergyToNoiseDb).toBeGreaterThan(18.9);
    expect(() => symbolEnergyFromMer({ valueDb: 21, ceilingDb: 20 })).toThrow(
      expect.objectContaining({ code: 'inconsistent', parameter: 'valueDb' }),
    );
  });
});

test('there and back: MER of Es/N0 of MER; ratio in another bandwidth and back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -5, max: 24, noNaN: true }),
      fc.double({ min: 25, max: 40, noNaN: true }),
      (valueDb, ceilingDb) => {
        const back = symbolEnergyFromMer({ valueDb: shownMer({ valueDb, ceilingDb }), ceilingDb });
        expect(back.symbolEnergyToNoiseDb).toBeCloseTo(valueDb, 9);
      },
    ),
  );
  const wide = carrierToNoiseInBandwidth({
    carrierToNoiseDb: 12,
    bandwidthMHz: 27.5,
    wantedBandwidthMHz: 36,
  });
  expect(
    carrierToNoiseInBandwidth({
      carrierToNoiseDb: wide,
      bandwidthMHz: 36,
      wantedBandwidthMHz: 27.5,
    }),
  ).toBeCloseTo(12, 12);
});

test.each([
  [() => narrowMeterDb({ bandwidthMHz: 36, symbolRateMBd: 27.5 }), 'bandwidthMHz'],
  [() => occupiedBandwidthDb(20), 'rollOffRatio'],
  [() => modulationError([]), 'points'],
  [() => bitEnergyForErrors({ modulation: 'qpsk', bitErrorRatio: 0 }), 'bitErrorRatio'],
  [
    () => implementationLoss({ idealSymbolEnergyToNoiseDb: 8, neededSymbolEnergyToNoiseDb: 6 }),
    'neededSymbolEnergyToNoiseDb',
  ],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});
