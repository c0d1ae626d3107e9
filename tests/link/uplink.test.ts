import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  combineCarrierRatios,
  drivenUplink,
  eirpForFlux,
  stationEirp,
  type TransparentLinkInput,
  transparentLink,
  transponderState,
  uplinkBudget,
} from 'slantpath/link';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';

const LINK: TransparentLinkInput = {
  carrier: { symbolRateMBd: 30, mode: { esN0Db: 6, bitsPerSymbol: 2 } },
  uplink: { eirpDbw: 74, frequencyGHz: 14.25, slantRangeKm: 38500, figureOfMeritDbPerK: 2 },
  transponder: {
    saturationFluxDensityDbwPerM2: -86,
    saturatedEirpDbw: 51,
    outputBackOff: { kind: 'linear', compressionDb: 2 },
  },
  downlink: { frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
  receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
};

publishedTable({
  part: 'link',
  quantity: 'a transparent link end to end',
  unit: 'dBHz',
  source: 'Roddy, Satellite Communications, 3rd ed. (2001), Example 12.19',
  status: 'published',
  limit: 0.051,
  reason: 'half the last printed digit',
  count: 3,
  cases: () => {
    // SFD -67.5, A0 -37, input back-off 11, G/T -11.6; EIRP 26.6, output back-off 6, loss 196.7, G/T 40.7.
    const up = drivenUplink({
      saturationFluxDensityDbwPerM2: -67.5,
      inputBackOffDb: 11,
      frequencyGHz: 5.9846,
      figureOfMeritDbPerK: -11.6,
    });
    const state = transponderState(
      {
        saturationFluxDensityDbwPerM2: -67.5,
        saturatedEirpDbw: 26.6,
        outputBackOff: { kind: 'linear', compressionDb: 5 },
      },
      up.fluxDensityDbwPerM2,
    );
    const down = uplinkBudget({
      eirpDbw: state.eirpDbw,
      frequencyGHz: 4,
      slantRangeKm: 10 ** ((196.7 - 92.44778 - 20 * Math.log10(4)) / 20),
      figureOfMeritDbPerK: 40.7,
    });
    return [
      { name: 'up', expected: 101.5, got: up.carrierToNoiseDensityDbHz },
      { name: 'down', expected: 93.2, got: down.carrierToNoiseDensityDbHz },
      {
        name: 'both',
        expected: 92.6,
        got: combineCarrierRatios([up.carrierToNoiseDensityDbHz, down.carrierToNoiseDensityDbHz]),
      },
    ];
  },
});

describe('uplink', () => {
  test('flux density and the EIRP for it are inverse of each other', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 90, noNaN: true }),
        fc.double({ min: 35786, max: 41700, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (eirpDbw, slantRangeKm, otherLossDb) => {
          const up = uplinkBudget({
            eirpDbw,
            frequencyGHz: 14,
            slantRangeKm,
            otherLossDb,
            figureOfMeritDbPerK: 0,
          });
          const back = eirpForFlux({
            fluxDensityDbwPerM2: up.fluxDensityDbwPerM2,
            slantRangeKm,
            lossDb: otherLossDb,
          });
          expect(back).toBeCloseTo(eirpDbw, 9);
          // The transponder's side of the same budget.
          const driven = drivenUplink({
            saturationFluxDensityDbwPerM2: up.fluxDensityDbwPerM2 + 7,
            inputBackOffDb: 7,
            frequencyGHz: 14,
            figureOfMeritDbPerK: 0,
          });
          expect(driven.carrierToNoiseDensityDbHz).toBeCloseTo(up.carrierToNoiseDensityDbHz, 9);
        },
      ),
    );
  });

  test('power control makes good what it can of the rain', () => {
    const rain = (rainDb: number, powerControlDb: number) =>
      uplinkBudget({ ...LINK.uplink, rainDb, powerControlDb }).carrierToNoiseDensityDbHz;
    expect(rain(4, 6)).toBeCloseTo(rain(0, 0), 12);
    expect(rain(10, 6)).toBeCloseTo(rain(4, 0), 12);
  });

  test('amplifier to EIRP', () => {
    const eirp = stationEirp({
      saturatedPowerW: 100,
      outputBackOffDb: 3,
      feedLossDb: 0.5,
      antennaGainDbi: 50,
      pointingLossDb: 0.5,
    });
    expect(eirp.eirpDbw).toBeCloseTo(66, 12);
    expect(eirp.terms.at(-1)?.runningDb).toBe(eirp.eirpDbw);
  });
});

describe('transponder', () => {
  const base = { saturationFluxDensityDbwPerM2: -90, saturatedEirpDbw: 50 };

  test('a table is read along straight lines, flat before and linear behind it', () => {
    const outputBackOff = {
      kind: 'table',
      inputBackOffDb: [0, 5, 10],
      outputBackOffDb: [0, 1, 5],
    } as const;
    for (const [flux, eirp] of [
      [-85, 50],
      [-90, 50],
      [-92.5, 49.5],
      [-97.5, 47],
      [-104, 41],
    ] as const)
      expect(transponderState({ ...base, outputBackOff }, flux).eirpDbw).toBeCloseTo(eirp, 12);
  });

  test('among others a carrier keeps its share', () => {
    const state = transponderState(
      { ...base, totalInputBackOffDb: 6, outputBackOff: { kind: 'linear', compressionDb: 4 } },
      -106,
    );
    expect(state).toEqual({
      fluxDensityDbwPerM2: -106,
      carrierInputBackOffDb: 16,
      totalInputBackOffDb: 6,
      totalOutputBackOffDb: 2,
      carrierOutputBackOffDb: 12,
      eirpDbw: 38,
    });
  });
});

describe('transparent link', () => {
  test('combines up, intermodulation, interference and down as reciprocals', () => {
    const result = transparentLink({
      ...LINK,
      transponder: { ...LINK.transponder, carrierToIntermodulationDb: 22 },
      impairments: [{ name: 'adjacent-satellites', carrierToImpairmentDb: 20 }],
    });
    const up = result.uplink.carrierToNoiseDensityDbHz - 10 * Math.log10(30e6);
    const whole = combineCarrierRatios([result.budget.downlinkEsN0Db, up, 22, 20]);
    expect(result.budget.esN0Db).toBeCloseTo(whole, 10);
    expect(result.budget.terms.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['uplink-noise', 'intermodulation', 'adjacent-satellites']),
    );
    expect(result.budget.terms[0]?.contributionDb).toBe(result.transponder.eirpDbw);
  });

  test('a fade on the way up costs at most twice: up and down', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 15, noNaN: true }), (rainDb) => {
        const clear = transparentLink(LINK).budget.esN0Db;
        const faded = transparentLink({ ...LINK, uplink: { ...LINK.uplink, rainDb } });
        expect(clear - faded.budget.esN0Db).toBeLessThanOrEqual(rainDb + 1e-9);
        expect(faded.budget.esN0Db).toBeLessThan(clear);
      }),
    );
  });
});

test.each([
  [() => uplinkBudget({ ...LINK.uplink, frequencyGHz: 14250 }), 'frequencyGHz'],
  [
    () => uplinkBudget({ ...LINK.uplink, figureOfMeritDbPerK: undefined as never }),
    'figureOfMeritDbPerK',
  ],
  [() => stationEirp({ saturatedPowerW: 0, antennaGainDbi: 40 }), 'saturatedPowerW'],
  [() => transponderState(LINK.transponder, Number.NaN), 'fluxDensityDbwPerM2'],
  [
    () => transponderState({ ...LINK.transponder, totalInputBackOffDb: 10 }, -90),
    'totalInputBackOffDb',
  ],
  [
    () =>
      transponderState(
        {
          ...LINK.transponder,
          outputBackOff: { kind: 'table', inputBackOffDb: [0], outputBackOffDb: [0] },
        },
        -90,
      ),
    'outputBackOff.outputBackOffDb',
  ],
  [
    () =>
      transponderState(
        {
          ...LINK.transponder,
          outputBackOff: { kind: 'table', inputBackOffDb: [5, 1], outputBackOffDb: [0, 1] },
        },
        -90,
      ),
    'outputBackOff.inputBackOffDb[1]',
  ],
  [
    () => transponderState({ ...LINK.transponder, outputBackOff: { kind: 'cubic' } as never }, -90),
    'outputBackOff.kind',
  ],
  [() => transparentLink({ ...LINK, downlink: undefined as never }), 'downlink'],
  [() => eirpForFlux({ fluxDensityDbwPerM2: -90, slantRangeKm: 0 }), 'slantRangeKm'],
])('refuses bad input %#', (call, parameter) => {
  expect(call).toThrow(DomainError);
  expect(call).toThrow(expect.objectContaining({ parameter }));
});
