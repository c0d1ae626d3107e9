import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  adjacentChannel,
  adjacentSatellites,
  crossPolarInterference,
  groundShare,
} from 'slantpath/link';
import { slotSeparation } from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'link',
  quantity: 'separation of slots on the sky',
  unit: 'deg',
  source: 'WGS 84 vectors recomputed with a numerical library',
  status: 'recomputed',
  limit: 2e-9,
  reason: 'ten printed decimals',
  count: 8,
  cases: () =>
    referenceTable('link/slot-separation.csv').map((row) => ({
      name: Object.values(row).slice(0, 5).join(' '),
      expected: cell(row, 'separation_deg'),
      got: slotSeparation({
        station: {
          latitudeDeg: cell(row, 'lat_deg'),
          longitudeDeg: cell(row, 'lon_deg'),
          heightM: cell(row, 'height_m'),
        },
        fromLongitudeDeg: cell(row, 'from_deg'),
        toLongitudeDeg: cell(row, 'to_deg'),
      }).topocentricDeg,
    })),
});

publishedTable({
  part: 'link',
  quantity: 'interference from the next channel',
  unit: 'dB',
  source: 'overlap of raised cosines recomputed with a numerical library',
  status: 'recomputed',
  limit: 1e-7,
  reason: 'eight printed decimals; ten-point rule on smooth pieces',
  count: 9,
  cases: () =>
    referenceTable('link/adjacent-channel.csv').map((row) => {
      const result = adjacentChannel({
        wanted: {
          symbolRateMBd: cell(row, 'wanted_rate_mbd'),
          rollOffRatio: cell(row, 'wanted_roll_off'),
        },
        other: {
          symbolRateMBd: cell(row, 'other_rate_mbd'),
          rollOffRatio: cell(row, 'other_roll_off'),
        },
        spacingMHz: cell(row, 'spacing_mhz'),
      });
      return {
        name: Object.values(row).slice(0, 5).join(' '),
        expected: cell(row, 'carrier_ratio_db'),
        got: result.kind === 'interference' ? result.carrierToInterferenceDb : Number.NaN,
      };
    }),
});

describe('neighbours', () => {
  const base = {
    pattern: { kind: 'S.465-6', diameterM: 1.2, frequencyGHz: 12 },
    wantedGainDbi: 41.7,
    eirpDensityDbwPerMHz: 36,
  } as const;

  test('two equal ones on both sides interfere 3 dB more than one', () => {
    const one = { separationDeg: 3, eirpDensityDbwPerMHz: 36 };
    const single = adjacentSatellites({ ...base, neighbours: [one] });
    const double = adjacentSatellites({ ...base, neighbours: [one, one] });
    if (single.kind !== 'interference' || double.kind !== 'interference')
      throw new Error('no interference');
    expect(single.carrierToInterferenceDb).toBeCloseTo(41.7 - (32 - 25 * Math.log10(3)), 10);
    expect(single.carrierToInterferenceDb - double.carrierToInterferenceDb).toBeCloseTo(3.0103, 4);
  });

  test('falls with the neighbour power and with pointing towards it, rises with isolation', () => {
    fc.assert(
      fc.property(fc.double({ min: 2.6, max: 20, noNaN: true }), (separationDeg) => {
        const ratio = (change: object, offset = 0) => {
          const result = adjacentSatellites({
            ...base,
            pointingOffsetDeg: offset,
            neighbours: [{ separationDeg, eirpDensityDbwPerMHz: 36, ...change }],
          });
          return result.kind === 'interference' ? result.carrierToInterferenceDb : Number.NaN;
        };
        expect(ratio({ eirpDensityDbwPerMHz: 39 })).toBeCloseTo(ratio({}) - 3, 10);
        expect(ratio({ polarizationIsolationDb: 20 })).toBeCloseTo(ratio({}) + 20, 10);
        expect(ratio({}, 0.2)).toBeLessThan(ratio({}));
      }),
    );
  });

  test('says when the pattern does not reach that close', () => {
    const result = adjacentSatellites({
      ...base,
      neighbours: [
        { separationDeg: 6, eirpDensityDbwPerMHz: 30 },
        { separationDeg: 1, eirpDensityDbwPerMHz: 30 },
      ],
    });
    expect(result).toMatchObject({ kind: 'not-specified', neighbour: 1 });
  });

  test('slots apart in longitude are further apart on the sky, but for the horizon', () => {
    const station = { latitudeDeg: 10, longitudeDeg: 20, heightM: 0 };
    expect(
      slotSeparation({ station, fromLongitudeDeg: 19, toLongitudeDeg: 21 }).topocentricDeg,
    ).toBeGreaterThan(2);
    expect(
      slotSeparation({ station, fromLongitudeDeg: 19, toLongitudeDeg: 19 }).topocentricDeg,
    ).toBe(0);
    const there = slotSeparation({
      station,
      fromLongitudeDeg: 19,
      toLongitudeDeg: 21,
    }).topocentricDeg;
    expect(
      slotSeparation({ station, fromLongitudeDeg: 21 + 360, toLongitudeDeg: 19 }).topocentricDeg,
    ).toBeCloseTo(there, 12);
  });
});

describe('next channel', () => {
  test('symmetric in the side, less with level, apart beyond the skirts', () => {
    const shape = { symbolRateMBd: 30, rollOffRatio: 0.2 };
    const at = (spacingMHz: number, otherLessWantedDb = 0) =>
      adjacentChannel({ wanted: shape, other: shape, spacingMHz, otherLessWantedDb });
    expect(at(-33)).toEqual(at(33));
    expect(at(36)).toEqual({ kind: 'apart', gapMHz: 0 });
    expect(at(40)).toEqual({ kind: 'apart', gapMHz: 4 });
    const plain = at(33);
    const strong = at(33, 6);
    if (plain.kind !== 'interference' || strong.kind !== 'interference') throw new Error('apart');
    expect(plain.carrierToInterferenceDb - strong.carrierToInterferenceDb).toBeCloseTo(6, 10);
  });
});

describe('other polarization', () => {
  test('isolations combine as powers', () => {
    expect(crossPolarInterference({ isolationsDb: [30, 30] })).toBeCloseTo(26.9897, 4);
    expect(crossPolarInterference({ isolationsDb: [25], wantedLessOtherDb: -2 })).toBe(23);
  });
});

describe('ground share', () => {
  // Equal gain everywhere: half the sphere lies below the horizon, wherever the axis points.
  const even = { kind: 'table', offAxisDeg: [0, 180], gainDbi: [0, 0] } as const;
  test.each([0, 1, 20, 45, 70, 90])('an even pattern at %d degrees: half', (elevationDeg) => {
    expect(groundShare({ pattern: even, elevationDeg, lobesBelowPatternDb: 0 })).toBeCloseTo(
      0.5,
      4,
    );
  });

  test('straight up only what lies behind counts', () => {
    const pattern = { kind: 'S.465-6', diameterM: 2, frequencyGHz: 12 } as const;
    // -10 dBi over the lower half of the sphere, 3 dB below the envelope.
    expect(groundShare({ pattern, elevationDeg: 90 })).toBeCloseTo(0.5 * 10 ** -1.3, 6);
  });

  test('lower elevation, more ground', () => {
    const pattern = {
      kind: 'RR-AP8',
      diameterM: 0.9,
      frequencyGHz: 12,
    } as const;
    let before = 1;
    for (let elevationDeg = 1; elevationDeg < 60; elevationDeg += 2) {
      const share = groundShare({ pattern, elevationDeg });
      expect(share).toBeLessThanOrEqual(before + 1e-6);
      before = share;
    }
  });
});

const neighbour = { separationDeg: 3, eirpDensityDbwPerMHz: 30 };
const pattern = { kind: 'S.465-6', diameterM: 1, frequencyGHz: 12 } as const;
test.each([
  [
    () =>
      adjacentSatellites({ pattern, wantedGainDbi: 40, eirpDensityDbwPerMHz: 30, neighbours: [] }),
    'neighbours',
  ],
  [
    () =>
      adjacentSatellites({
        pattern,
        wantedGainDbi: 40,
        eirpDensityDbwPerMHz: 30,
        neighbours: [{ ...neighbour, separationDeg: -3 }],
      }),
    'neighbours[0].separationDeg',
  ],
  [
    () =>
      adjacentSatellites({
        pattern,
        wantedGainDbi: Number.NaN,
        eirpDensityDbwPerMHz: 30,
        neighbours: [neighbour],
      }),
    'wantedGainDbi',
  ],
  [
    () =>
      adjacentChannel({
        wanted: { symbolRateMBd: 0, rollOffRatio: 0.2 },
        other: { symbolRateMBd: 1, rollOffRatio: 0.2 },
        spacingMHz: 1,
      }),
    'wanted.symbolRateMBd',
  ],
  [() => crossPolarInterference({ isolationsDb: [] }), 'isolationsDb'],
  [() => crossPolarInterference({ isolationsDb: [-1] }), 'isolationsDb'],
  [() => groundShare({ pattern, elevationDeg: 91 }), 'elevationDeg'],
])('refuses bad input %#', (call, parameter) => {
  expect(call).toThrow(DomainError);
  expect(call).toThrow(expect.objectContaining({ parameter }));
});
