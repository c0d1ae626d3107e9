import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  antennaGain,
  farFieldDistance,
  halfPowerBeamwidth,
  illuminatedAperture,
  pointingLoss,
  pointingOffset,
  surfaceLoss,
} from 'slantpath/antenna';
import { describe, expect, test } from 'vitest';
import { besselJ, lambdaFunction } from '../../src/numeric/bessel.js';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const LIGHT = 299792458;

publishedTable({
  part: 'antenna',
  quantity: 'gain, beamwidth and surface loss',
  unit: 'dB or deg',
  source: 'Maini and Agrawal (2010), Example 4.12; Ruze (1966) and the gain formula recomputed',
  status: 'published',
  limit: 0.005,
  reason: 'printed digits of the textbook; recomputed rows to their own',
  count: 6,
  cases: () => [
    {
      name: 'Maini 4.12: 1 m, wavelength rounded to 0.025 m, lossless',
      expected: 41.98,
      got: antennaGain({ diameterM: 1, frequencyGHz: LIGHT / 0.025 / 1e9, efficiencyRatio: 1 })
        .gainDbi,
    },
    {
      name: 'Maini 4.12: 70 wavelength / D',
      expected: 1.75,
      got: halfPowerBeamwidth({ diameterM: 1, frequencyGHz: LIGHT / 0.025 / 1e9 }),
      limit: 1e-12,
    },
    {
      name: '1 m at 1 GHz, efficiency 0.55',
      expected: 17.8102,
      got: antennaGain({ diameterM: 1, frequencyGHz: 1, efficiencyRatio: 0.55 }).gainDbi,
      limit: 5e-5,
    },
    {
      name: '1 m at 1 GHz, efficiency 0.65',
      expected: 18.5357,
      got: antennaGain({ diameterM: 1, frequencyGHz: 1 }).gainDbi,
      limit: 5e-5,
    },
    {
      name: 'Ruze: 0.5 mm at 12 GHz',
      expected: 0.2747,
      got: surfaceLoss({ surfaceErrorMm: 0.5, frequencyGHz: 12 }),
      limit: 5e-6,
    },
    {
      name: 'Ruze: error of one wavelength',
      expected: 685.81,
      got: surfaceLoss({ surfaceErrorMm: 100, frequencyGHz: LIGHT / 0.1 / 1e9 }),
      limit: 5e-4,
    },
  ],
});

const illumination = referenceTable('antenna/illumination.csv');
for (const [column, field, unit] of [
  ['beamwidth_factor_deg', 'beamwidthFactorDeg', 'deg'],
  ['first_null_factor_deg', 'firstNullFactorDeg', 'deg'],
  ['efficiency_ratio', 'taperEfficiencyRatio', ''],
  ['first_side_lobe_db', 'firstSideLobeDb', 'dB'],
] as const)
  publishedTable({
    part: 'antenna',
    quantity: `tapered aperture: ${column.replaceAll('_', ' ')}`,
    unit,
    source: 'aperture integral recomputed with an arbitrary-precision library',
    status: 'recomputed',
    limit: 1e-9,
    reason: 'rounding of root and minimum searches',
    count: 16,
    cases: () =>
      illumination.map((row) => ({
        name: `taper ${row['edge_taper_db']} dB, exponent ${row['exponent']}`,
        expected: cell(row, column),
        got: illuminatedAperture({
          edgeTaperDb: cell(row, 'edge_taper_db'),
          exponent: cell(row, 'exponent') as 1 | 2,
        })[field],
      })),
  });

publishedTable({
  part: 'antenna',
  quantity: 'Bessel functions',
  unit: '',
  source: 'recomputed with an arbitrary-precision library',
  status: 'recomputed',
  limit: 3e-15,
  reason: 'rounding',
  count: 84,
  cases: () =>
    referenceTable('numeric/bessel.csv').map((row) => ({
      name: `J${row['order']}(${row['x']})`,
      expected: cell(row, 'j'),
      got: besselJ(cell(row, 'order'), cell(row, 'x')),
      ...(cell(row, 'x') === 3000 ? { limit: 1e-14 } : {}),
    })),
});

describe('gain and main lobe', () => {
  test('the lambda function is one on the axis and joins its two forms', () => {
    for (const order of [1, 2, 3, 4]) {
      expect(lambdaFunction(order, 0)).toBe(1);
      expect(
        Math.abs(lambdaFunction(order, 2.9999999) - lambdaFunction(order, 3.0000001)),
      ).toBeLessThan(1e-7);
    }
  });

  test('losses sum to the difference from the ideal aperture', () => {
    const gain = antennaGain({
      diameterM: 1.8,
      frequencyGHz: 30,
      efficiencyRatio: 0.7,
      surfaceErrorMm: 0.4,
      spilloverLossDb: 0.3,
      ohmicLossDb: 0.2,
    });
    const sum =
      gain.efficiencyLossDb + gain.spilloverLossDb + gain.surfaceLossDb + gain.ohmicLossDb;
    expect(gain.idealGainDbi - sum).toBeCloseTo(gain.gainDbi, 12);
    expect(10 * Math.log10(gain.totalEfficiencyRatio)).toBeCloseTo(-sum, 12);
  });

  test('grows with size and frequency; doubling the size adds 6.0206 dB and halves the beam', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 90, noNaN: true }),
        (diameterM, frequencyGHz) => {
          const one = antennaGain({ diameterM, frequencyGHz });
          const two = antennaGain({ diameterM: 2 * diameterM, frequencyGHz });
          expect(two.gainDbi - one.gainDbi).toBeCloseTo(6.020599913, 8);
          const beam = halfPowerBeamwidth({ diameterM, frequencyGHz });
          if (beam < 180)
            expect(halfPowerBeamwidth({ diameterM: 2 * diameterM, frequencyGHz })).toBeCloseTo(
              beam / 2,
              9,
            );
        },
      ),
    );
  });

  test('pointing loss is 3 dB at half the beamwidth, and its inverse returns', () => {
    expect(pointingLoss({ offsetDeg: -0.5, beamwidthDeg: 1 })).toBe(3);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        (pointingLossDb, beamwidthDeg) => {
          const offsetDeg = pointingOffset({ pointingLossDb, beamwidthDeg });
          expect(pointingLoss({ offsetDeg, beamwidthDeg })).toBeCloseTo(pointingLossDb, 10);
        },
      ),
    );
  });

  test('far field: a phase of 22.5 degrees over the aperture', () => {
    const distance = farFieldDistance({ diameterM: 1.2, frequencyGHz: 14 });
    const wavelength = LIGHT / 14e9;
    const pathDifference = Math.hypot(distance, 0.6) - distance;
    expect((360 * pathDifference) / wavelength).toBeCloseTo(22.5, 2);
  });

  test.each([
    [() => antennaGain({ diameterM: 90, frequencyGHz: 11700 }), 'frequencyGHz', 'out-of-range'],
    [() => antennaGain({ diameterM: 120, frequencyGHz: 11.7 }), 'diameterM', 'out-of-range'],
    [
      () => antennaGain({ diameterM: 1, frequencyGHz: 12, efficiencyRatio: 65 }),
      'efficiencyRatio',
      'out-of-range',
    ],
    [() => antennaGain({} as never), 'diameterM', 'missing'],
    [() => antennaGain(undefined as never), 'antenna', 'missing'],
    [() => antennaGain({ diameterM: '1' as never, frequencyGHz: 12 }), 'diameterM', 'not-a-number'],
    [() => antennaGain({ diameterM: null as never, frequencyGHz: 12 }), 'diameterM', 'missing'],
    [
      () => antennaGain({ diameterM: 1, frequencyGHz: 12, ohmicLossDb: -1 }),
      'ohmicLossDb',
      'out-of-range',
    ],
    [
      () => halfPowerBeamwidth({ diameterM: 1, frequencyGHz: 12, beamwidthFactorDeg: 1.2 }),
      'beamwidthFactorDeg',
      'out-of-range',
    ],
    [() => pointingLoss({ offsetDeg: Number.NaN, beamwidthDeg: 1 }), 'offsetDeg', 'not-finite'],
    [() => pointingLoss({ offsetDeg: 1, beamwidthDeg: 0 }), 'beamwidthDeg', 'out-of-range'],
    [
      () => pointingOffset({ pointingLossDb: -1, beamwidthDeg: 1 }),
      'pointingLossDb',
      'out-of-range',
    ],
    [() => surfaceLoss({ surfaceErrorMm: -1, frequencyGHz: 12 }), 'surfaceErrorMm', 'out-of-range'],
    [() => illuminatedAperture({ edgeTaperDb: -10 }), 'edgeTaperDb', 'out-of-range'],
    [() => farFieldDistance({ diameterM: 1, frequencyGHz: 0 }), 'frequencyGHz', 'out-of-range'],
  ])('refuses bad input %#', (call, parameter, code) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });
});
