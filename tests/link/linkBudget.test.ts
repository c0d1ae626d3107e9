import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  antennaNoise,
  carrierRatios,
  cascadeNoise,
  combineCarrierRatios,
  compareBudgets,
  dvbMode,
  figureOfMerit,
  freeSpaceLoss,
  type LinkBudgetInput,
  linkBudget,
  marginSensitivity,
  noiseFigureToTemperature,
  smallestReflector,
  systemNoise,
  temperatureToNoiseFigure,
} from 'slantpath/link';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { anyLink, LINK } from './links.js';

const linkOf = (row: CsvRow): LinkBudgetInput => ({
  carrier: {
    symbolRateMBd: cell(row, 'rate_mbd'),
    mode: { esN0Db: cell(row, 'threshold_db'), bitsPerSymbol: cell(row, 'bits') },
    implementationLossDb: cell(row, 'implementation_db'),
  },
  downlink: {
    eirpDbw: cell(row, 'eirp_dbw'),
    frequencyGHz: cell(row, 'frequency_ghz'),
    slantRangeKm: cell(row, 'range_km'),
    clearAttenuationDb: cell(row, 'clear_db'),
    rainDb: cell(row, 'rain_db'),
    otherLossDb: cell(row, 'other_db'),
  },
  receiver: {
    diameterM: cell(row, 'diameter_m'),
    efficiencyRatio: cell(row, 'efficiency'),
    surfaceErrorMm: cell(row, 'surface_mm'),
    pointingOffsetDeg: cell(row, 'offset_deg'),
    polarizationLossDb: cell(row, 'polarization_db'),
    feedLossDb: cell(row, 'feed_db'),
    noiseFigureDb: cell(row, 'noise_figure_db'),
    backEndNoiseK: cell(row, 'back_end_k'),
  },
  impairments: [{ name: 'interference', carrierToImpairmentDb: cell(row, 'impairment_db') }],
});

const budgets = referenceTable('link/budgets.csv');
for (const [column, unit, got] of [
  ['figure_of_merit_db_per_k', 'dB/K', (b) => b.figureOfMeritDbPerK],
  ['cn0_dbhz', 'dBHz', (b) => b.downlinkCarrierToNoiseDensityDbHz],
  ['esn0_db', 'dB', (b) => b.esN0Db],
  ['ebn0_db', 'dB', (b) => b.ebN0Db],
  ['margin_db', 'dB', (b) => b.marginDb],
  ['system_noise_k', 'K', (b) => b.systemNoise.systemNoiseK],
] as const satisfies readonly (readonly [
  string,
  string,
  (budget: ReturnType<typeof linkBudget>) => number,
])[])
  publishedTable({
    part: 'link',
    quantity: `budgets of random links: ${column.replaceAll('_', ' ')}`,
    unit,
    source: 'the definitions recomputed with a numerical library',
    status: 'recomputed',
    limit: 1e-8,
    reason: 'nine printed decimals',
    count: 40,
    cases: () =>
      budgets.map((row, index) => ({
        name: `link ${index + 1}`,
        expected: cell(row, column),
        got: got(linkBudget(linkOf(row))),
      })),
  });

publishedTable({
  part: 'link',
  quantity: 'sky noise in rain',
  unit: 'K',
  source: 'ITU-R P.618-14, equations 69 and 70, medium at 275 K',
  status: 'published',
  limit: 5e-6,
  reason: 'printed decimals',
  count: 7,
  cases: () =>
    [
      [0, 2.7],
      [0.1, 8.898305],
      [0.5, 32.31237],
      [1, 58.704422],
      [3, 138.526716],
      [5, 188.891179],
      [10, 247.77],
    ].map(([absorptionDb = 0, expected = 0]) => ({
      name: `${absorptionDb} dB`,
      expected,
      got: antennaNoise({ absorptionDb, groundShareRatio: 0 }).skyNoiseK,
    })),
});

describe('budget', () => {
  test('the lines sum to the margin, and each running sum is the sum so far', () => {
    fc.assert(
      fc.property(anyLink, (link) => {
        const budget = linkBudget(link);
        let sum = 0;
        for (const term of budget.terms) {
          sum += term.contributionDb;
          expect(term.runningDb).toBeCloseTo(sum, 9);
        }
        expect(sum).toBeCloseTo(budget.marginDb, 9);
        const again = JSON.parse(JSON.stringify(budget));
        expect(again).toEqual(budget);
      }),
      { numRuns: 200 },
    );
  });

  test('more power is more margin, decibel for decibel without impairments', () => {
    fc.assert(
      fc.property(anyLink, fc.double({ min: 0.01, max: 10, noNaN: true }), (link, more) => {
        const louder = {
          ...link,
          downlink: { ...link.downlink, eirpDbw: link.downlink.eirpDbw + more },
        };
        const gained = linkBudget(louder).marginDb - linkBudget(link).marginDb;
        if (link.impairments?.length) {
          expect(gained).toBeGreaterThan(0);
          expect(gained).toBeLessThanOrEqual(more + 1e-9);
        } else expect(gained).toBeCloseTo(more, 9);
      }),
    );
  });

  test('a larger reflector pointed well is never worse; rain takes more than its own decibels', () => {
    fc.assert(
      fc.property(anyLink, fc.double({ min: 0.1, max: 20, noNaN: true }), (link, more) => {
        const before = linkBudget(link);
        const { receiver } = link;
        const larger = {
          ...link,
          receiver: { ...receiver, diameterM: receiver.diameterM + more / 10 },
        };
        expect(linkBudget(larger).marginDb).toBeGreaterThan(before.marginDb);
        const { rainDb = 0 } = link.downlink;
        const wetter = {
          ...link,
          downlink: { ...link.downlink, rainDb: rainDb + more },
        };
        const lost = before.downlinkEsN0Db - linkBudget(wetter).downlinkEsN0Db;
        expect(lost).toBeGreaterThan(more);
      }),
    );
  });

  test('each extra cause of noise lowers the ratio; two equal ones lower it by 3.01 dB', () => {
    expect(combineCarrierRatios([20, 20])).toBeCloseTo(16.9897, 4);
    expect(combineCarrierRatios([17.5])).toBe(17.5);
    expect(combineCarrierRatios([-390, 390])).toBe(-390);
  });

  test('the data-sheet gain replaces size, efficiency and surface', () => {
    const sheet = {
      ...LINK,
      receiver: { ...LINK.receiver, antennaGainDbi: 40, efficiencyRatio: 0.5 },
    };
    const term = linkBudget(sheet).terms.find(({ name }) => name === 'antenna-gain');
    expect(term?.contributionDb).toBe(40);
  });

  test('two budgets differ line by line by the difference of their margins', () => {
    fc.assert(
      fc.property(anyLink, anyLink, (one, other) => {
        const a = linkBudget(one);
        const b = linkBudget(other);
        const { differenceDb, causes } = compareBudgets(a, b);
        expect(differenceDb).toBeCloseTo(b.marginDb - a.marginDb, 8);
        for (let index = 1; index < causes.length; index++)
          expect(Math.abs(causes[index]?.differenceDb ?? 0)).toBeLessThanOrEqual(
            Math.abs(causes[index - 1]?.differenceDb ?? 0),
          );
      }),
      { numRuns: 100 },
    );
    expect(compareBudgets(linkBudget(LINK), linkBudget(LINK)).causes).toEqual([]);
  });

  test('sensitivity: a decibel of EIRP is one of margin, and each effect is what the budget does', () => {
    const effects = marginSensitivity(LINK);
    const eirp = effects.find(({ parameter }) => parameter === 'downlink.eirpDbw');
    expect(eirp?.marginChangeDb).toBeCloseTo(1, 10);
    const size = effects.find(({ parameter }) => parameter === 'receiver.diameterM');
    expect(size).toMatchObject({ value: 0.9, step: 0.05 });
    expect(size?.marginChangeDb).toBeCloseTo(20 * Math.log10(0.95 / 0.9), 9);
    const full = marginSensitivity({ ...LINK, receiver: { ...LINK.receiver, efficiencyRatio: 1 } });
    const efficiency = full.find(({ parameter }) => parameter === 'receiver.efficiencyRatio');
    expect(efficiency?.marginChangeDb).toBeCloseTo(-10 * Math.log10(0.95), 9);
  });
});

describe('noise', () => {
  test('noise figure and temperature are inverse of each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (noiseFigureDb) => {
        expect(temperatureToNoiseFigure(noiseFigureToTemperature(noiseFigureDb))).toBeCloseTo(
          noiseFigureDb,
          10,
        );
      }),
    );
  });

  test('a loss as the first stage is the loss before the amplifier', () => {
    // A stage of loss L at 290 K adds 290 (L - 1) at its input; referred to the amplifier, 290 (1 - 1/L).
    const lossDb = 0.7;
    const ratio = 10 ** (lossDb / 10);
    const atFlange = cascadeNoise([
      { noiseTemperatureK: 290 * (ratio - 1), gainDb: -lossDb },
      { noiseTemperatureK: 60, gainDb: 0 },
    ]);
    const system = systemNoise({ antennaNoiseK: 40, feedLossDb: lossDb, receiverNoiseK: 60 });
    expect((40 + atFlange) / ratio).toBeCloseTo(system.systemNoiseK, 10);
  });

  test('the four ratios convert back and forth', () => {
    const carrier = { symbolRateMBd: 27.5, bitsPerSymbol: 1.98, noiseBandwidthMHz: 33 };
    const all = carrierRatios({ esN0Db: 9.1 }, carrier);
    for (const name of [
      'carrierToNoiseDensityDbHz',
      'carrierToNoiseDb',
      'esN0Db',
      'ebN0Db',
    ] as const) {
      const back = carrierRatios({ [name]: all[name] } as never, carrier);
      for (const field of [
        'carrierToNoiseDensityDbHz',
        'carrierToNoiseDb',
        'esN0Db',
        'ebN0Db',
      ] as const)
        expect(back[field]).toBeCloseTo(all[field], 10);
    }
    expect(all.carrierToNoiseDb).toBeCloseTo(9.1 - 10 * Math.log10(33 / 27.5), 10);
  });
});

describe('smallest reflector', () => {
  test('the first of the list that keeps the target, and the ones before do not', () => {
    for (const targetMarginDb of [0, 5, 10, 15, 20]) {
      const choice = smallestReflector(LINK, { targetMarginDb });
      const smaller = choice.tried.filter(
        ({ diameterM }) => choice.kind === 'none' || diameterM < choice.diameterM,
      );
      expect(smaller.every(({ meets }) => !meets)).toBe(true);
      if (choice.kind === 'found')
        expect(choice.budget.marginDb).toBeGreaterThanOrEqual(targetMarginDb);
      else expect(choice.shortfallDb).toBeGreaterThan(0);
    }
  });

  test('none, with what is lacking', () => {
    const choice = smallestReflector(LINK, { targetMarginDb: 20, diametersM: [0.9, 0.6] });
    expect(choice.kind).toBe('none');
    expect(choice.kind === 'none' && choice.shortfallDb).toBeCloseTo(
      20 - linkBudget(LINK).marginDb,
      10,
    );
    expect(choice.tried.map(({ diameterM }) => diameterM)).toEqual([0.6, 0.9]);
  });

  test('in a fade more is needed than in clear weather, and neighbours can decide', () => {
    const fade = () => ({ attenuationDb: 6 });
    const clear = smallestReflector(LINK, { targetMarginDb: 3 });
    const wet = smallestReflector(LINK, { targetMarginDb: 3, fade, exceededPercent: 0.05 });
    expect(wet.kind === 'found' && clear.kind === 'found' && wet.diameterM > clear.diameterM).toBe(
      true,
    );
    const crowded = smallestReflector(LINK, {
      targetMarginDb: 3,
      impairmentsAt: (diameterM) => [
        { name: 'adjacent-satellites', carrierToImpairmentDb: diameterM < 1.1 ? 8 : 25 },
      ],
    });
    expect(crowded).toMatchObject({ kind: 'found', diameterM: 1.2 });
  });
});

test('free-space loss: 6.0206 dB per doubling, and the constant of the trade', () => {
  const one = freeSpaceLoss({ frequencyGHz: 1, slantRangeKm: 1 });
  expect(one.lossDb).toBeCloseTo(92.44778, 5);
  expect(freeSpaceLoss({ frequencyGHz: 2, slantRangeKm: 2 }).lossDb - one.lossDb).toBeCloseTo(
    12.0412,
    4,
  );
});

test.each([
  [() => linkBudget(undefined as never), 'link', 'missing'],
  [() => linkBudget({ ...LINK, carrier: undefined as never }), 'carrier', 'missing'],
  [
    () => linkBudget({ ...LINK, downlink: { ...LINK.downlink, frequencyGHz: 11700 } }),
    'frequencyGHz',
    'out-of-range',
  ],
  [
    () => linkBudget({ ...LINK, downlink: { ...LINK.downlink, slantRangeKm: 38e6 } }),
    'slantRangeKm',
    'out-of-range',
  ],
  [
    () => linkBudget({ ...LINK, downlink: { ...LINK.downlink, rainDb: -3 } }),
    'rainDb',
    'out-of-range',
  ],
  [
    () => linkBudget({ ...LINK, receiver: { diameterM: 0.9 } as never }),
    'noiseFigureDb',
    'missing',
  ],
  [
    () => linkBudget({ ...LINK, receiver: { diameterM: Number.NaN, noiseFigureDb: 1 } }),
    'diameterM',
    'not-finite',
  ],
  [
    () =>
      linkBudget({
        ...LINK,
        carrier: { symbolRateMBd: 27500000, mode: dvbMode('DVB-S', 'QPSK 3/4') },
      }),
    'symbolRateMBd',
    'out-of-range',
  ],
  [
    () => linkBudget({ ...LINK, carrier: { symbolRateMBd: 1, mode: {} as never } }),
    'mode.esN0Db',
    'missing',
  ],
  [
    () => linkBudget({ ...LINK, impairments: [{ name: 'x', carrierToImpairmentDb: Number.NaN }] }),
    'impairments[0].carrierToImpairmentDb',
    'not-finite',
  ],
  [() => smallestReflector(LINK, { diametersM: [] }), 'diametersM', 'empty'],
  [
    () => smallestReflector(LINK, { diametersM: [90], targetMarginDb: 500 }),
    'targetMarginDb',
    'out-of-range',
  ],
  [() => combineCarrierRatios([]), 'ratiosDb', 'empty'],
  [() => cascadeNoise([]), 'stages', 'empty'],
  [
    () => cascadeNoise([{ noiseTemperatureK: -1, gainDb: 0 }]),
    'stages[0].noiseTemperatureK',
    'out-of-range',
  ],
  [
    () => carrierRatios({} as never, { symbolRateMBd: 1, bitsPerSymbol: 1 }),
    'carrierToNoiseDensityDbHz',
    'missing',
  ],
  [() => figureOfMerit({ antennaGainDbi: 40, systemNoiseK: 0 }), 'systemNoiseK', 'out-of-range'],
  [() => compareBudgets(undefined as never, linkBudget(LINK)), 'first', 'missing'],
])('refuses bad input %#', (call, parameter, code) => {
  expect(call).toThrow(DomainError);
  expect(call).toThrow(expect.objectContaining({ parameter, code }));
});
