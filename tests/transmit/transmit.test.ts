import { antennaGain } from 'slantpath/antenna';
import {
  carrierShare,
  commissioningSteps,
  compressionBelowSaturation,
  compressionPoint,
  crossPolarIsolationRead,
  flangeDensity,
  INTERCEPT_ABOVE_COMPRESSION_DB,
  leaksInLine,
  lineUp,
  type OffAxisMaskName,
  offAxisLimit,
  offAxisMargin,
  offAxisMasks,
  sideLobeRise,
  thirdOrderRatio,
  uplinkPowerControl,
} from 'slantpath/transmit';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { input, type WorkedRow, workedCases, workedRows } from '../support/worked.js';

/** The library's name for a mask of the tables. */
const NAMES: Readonly<Record<string, OffAxisMaskName>> = {
  'FCC-25.218c1': '47-CFR-25.218(c)(1)',
  'FCC-25.218c2': '47-CFR-25.218(c)(2)',
  'FCC-25.218f1': '47-CFR-25.218(f)(1)',
  'FCC-25.218f2': '47-CFR-25.218(f)(2)',
  'FCC-25.218f3-cross': '47-CFR-25.218(f)(3)',
  'FCC-25.138-2017-co': '47-CFR-25.138-2017-along',
  'FCC-25.138-2017-perp': '47-CFR-25.138-2017-across',
  'FCC-25.138-2017-cross': '47-CFR-25.138-2017-cross',
  'FCC-25.138-2003': '47-CFR-25.138-2003',
};
const named = (mask: unknown): OffAxisMaskName =>
  NAMES[String(mask)] ?? (String(mask) as OffAxisMaskName);

function limit(mask: unknown, offAxisDeg: number): number {
  const at = offAxisLimit({ mask: named(mask), offAxisDeg });
  if (at.kind !== 'limit') throw new Error(`no limit of ${String(mask)} at ${offAxisDeg}`);
  return at.limitDbw;
}

function station(row: WorkedRow) {
  const { gainDbi } = antennaGain({
    diameterM: input(row, 'diameterM'),
    frequencyGHz: input(row, 'frequencyHz') / 1e9,
    efficiencyRatio: input(row, 'efficiency'),
  });
  return lineUp({
    powerW: input(row, 'powerW'),
    feedLossDb: input(row, 'feedLossDb'),
    antennaGainDbi: gainDbi,
    symbolRateMBd: input(row, 'symbolRate') / 1e6,
  });
}

/** Density with a side-lobe line of 29 - 25 log, and the margin to the mask. */
function offAxis(row: WorkedRow): readonly [number, number] {
  const mask = named(row.inputs['mask']);
  const found = offAxisLimit({ mask, offAxisDeg: input(row, 'offAxisDeg') });
  if (found.kind !== 'limit') throw new Error('no limit');
  const line = 29 - 25 * Math.log10(input(row, 'offAxisDeg'));
  const densityDbw =
    line +
    flangeDensity({
      powerW: input(row, 'powerW') * 10 ** (-input(row, 'feedLossDb') / 10),
      symbolRateMBd: input(row, 'symbolRate') / 1e6,
      referenceBandwidthMHz: found.referenceBandwidthMHz,
    });
  return [densityDbw, found.limitDbw - densityDbw];
}

const answers: readonly (readonly [string, (row: WorkedRow) => readonly unknown[]])[] = [
  ['limit dBW', (row) => [limit(row.inputs['mask'], input(row, 'offAxisDeg'))]],
  ['EIRP dBW', (row) => [station(row).eirpDbw, station(row).densityDbw]],
  ['off-axis density', offAxis],
  [
    'rise dB of a 25 log line',
    (row) => [
      sideLobeRise({
        offAxisDeg: input(row, 'offAxisDeg'),
        mispointingDeg: input(row, 'mispointDeg'),
      }),
    ],
  ],
  ['cubic amplifier', () => [INTERCEPT_ABOVE_COMPRESSION_DB]],
  [
    'third-order ratio',
    (row) => [
      thirdOrderRatio({
        outputCompressionDbm: input(row, 'outputP1dBm'),
        carrierDbm: input(row, 'powerPerToneDbm'),
      }),
    ],
  ],
  ['output P1dB below saturation', (row) => [compressionBelowSaturation(input(row, 'p'))]],
  [
    'power dBm of each of n',
    (row) => [
      carrierShare({
        saturatedDbm: input(row, 'saturationDbm'),
        outputBackOffDb: input(row, 'totalOutputBackoffDb'),
        carriers: input(row, 'carriers'),
      }),
    ],
  ],
  [
    '1 dB compression',
    (row) => {
      const outputs = row.inputs['outputDbm'] as number[];
      const point = compressionPoint(
        (row.inputs['inputDbm'] as number[]).map((inputDbm, index) => ({
          inputDbm,
          outputDbm: outputs[index] as number,
        })),
      );
      return point.kind === 'compressed' ? [point.inputDbm, point.outputDbm] : [];
    },
  ],
  [
    'two cross-polar leaks',
    (row) => {
      const line = leaksInLine({
        firstDb: input(row, 'firstDb'),
        secondDb: input(row, 'secondDb'),
      });
      // Two equal leaks that oppose each other cancel: the table has no value, the library its ceiling.
      return [line.worstDb, line.powersDb, line.bestDb === 200 ? null : line.bestDb];
    },
  ],
];

publishedTable({
  part: 'transmit',
  quantity: 'transmitting stations',
  unit: 'dB',
  source: 'worked stations, recomputed (masks and rules as marked in the table)',
  status: 'recomputed',
  limit: 1e-6,
  reason: 'printed digits',
  count: 63,
  cases: () =>
    workedRows('transmit/worked.csv').flatMap((row) => {
      const found = answers.find(([quantity]) => row.quantity.startsWith(quantity));
      if (found === undefined) throw new Error(`no answer for ${row.quantity}`);
      return workedCases(row, found[1](row));
    }),
});

test('each mask has the segments, the reference bandwidth and the confidence of the table', () => {
  const rows = referenceTable('transmit/off-axis-masks.csv');
  expect(rows).toHaveLength(52);
  expect(offAxisMasks.flatMap((mask) => mask.segments)).toHaveLength(52);
  for (const row of rows) {
    const mask = offAxisMasks.find(({ name }) => name === named(row['mask']));
    const bandwidth = Number.parseFloat(row['reference_bandwidth'] ?? '');
    expect(mask?.referenceBandwidthMHz).toBe(
      /kHz/.test(row['reference_bandwidth'] ?? '') ? bandwidth / 1000 : bandwidth,
    );
    expect(mask?.segments).toContainEqual({
      fromDeg: cell(row, 'from_deg'),
      toDeg: cell(row, 'to_deg'),
      levelDbw: cell(row, 'level_dBW_A'),
      slopeDb: cell(row, 'slope_B (A - B log10 angle)'),
    });
    expect(mask?.status).toBe(row['status']?.startsWith('read') ? 'read' : 'from-memory');
  }
});

test('a mask has no limit before it begins and falls by 10 log N where N stations share it', () => {
  expect(offAxisLimit({ mask: 'S.524-9-14GHz', offAxisDeg: 1 }).kind).toBe('no-limit');
  const four = { mask: '47-CFR-25.138-2003', offAxisDeg: 8, simultaneousStations: 4 } as const;
  expect(offAxisLimit(four)).toMatchObject({ kind: 'limit', limitDbw: -2.63 - 10 * Math.log10(4) });
});

test('mispointing eats the margin where the side lobes fall by 25 log', () => {
  const base = {
    powerW: 20,
    symbolRateMBd: 1,
    pattern: { kind: 'S.580-6', diameterM: 2.4, frequencyGHz: 14.25 },
    mask: 'S.524-9-14GHz',
  } as const;
  const straight = offAxisMargin(base);
  const off = offAxisMargin({ ...base, mispointingDeg: 0.4 });
  if (straight.kind !== 'margin' || off.kind !== 'margin') throw new Error('no margin');
  expect(off.marginDb).toBeLessThan(straight.marginDb - 0.5);
  expect(off.status).toBe('from-memory');
  // Twice the power takes 3 dB, at the same angle.
  const louder = offAxisMargin({ ...base, powerW: 40 });
  if (louder.kind !== 'margin') throw new Error('no margin');
  expect(louder.marginDb).toBeCloseTo(straight.marginDb - 10 * Math.log10(2), 9);
  expect(louder.offAxisDeg).toBe(straight.offAxisDeg);
});

test('an amplifier that is not driven far enough is not said to be compressed', () => {
  const point = compressionPoint([
    { inputDbm: -30, outputDbm: 30 },
    { inputDbm: -20, outputDbm: 39.4 },
  ]);
  expect(point).toMatchObject({ kind: 'not-compressed', linearGainDb: 60 });
  expect(point.kind === 'not-compressed' && point.compressionDb).toBeCloseTo(0.6, 9);
});

test('a leak in the noise gives a least isolation only', () => {
  const read = crossPolarIsolationRead({ coPolarDbm: -48.5, crossPolarDbm: -82, noiseDbm: -82 });
  expect(read.kind).toBe('at-least');
  // The leak is at most 0.329 dB above the noise: -82 + 10 log10(10^0.0329 - 1) = -93.0 dBm.
  expect(read.isolationDb).toBeCloseTo(44.5, 1);
});

test('power control makes up for no more than amplifier and operator leave, less its own error', () => {
  expect(uplinkPowerControl({ fadeDb: 3, amplifierReserveDb: 6, allowedRiseDb: 10 })).toEqual({
    madeUpDb: 3,
    leftDb: 0,
    keptFreeDb: 1,
  });
  expect(uplinkPowerControl({ fadeDb: 12, amplifierReserveDb: 20, allowedRiseDb: 6 }).leftDb).toBe(
    7,
  );
  expect(uplinkPowerControl({ fadeDb: 2, amplifierReserveDb: 0, allowedRiseDb: 6 }).madeUpDb).toBe(
    0,
  );
});

test('nothing radiates before the control centre has been asked, and the carrier goes off before the release', () => {
  const names = commissioningSteps.map(({ step }) => step);
  const first = commissioningSteps.findIndex(({ radiates }) => radiates);
  expect(names.indexOf('ask-for-access')).toBeLessThan(first);
  expect(names.indexOf('beam-area-closed')).toBeLessThan(first);
  expect(
    commissioningSteps.every(({ radiates, leaveOf }) => !radiates || leaveOf === 'control-centre'),
  ).toBe(true);
});

test.each([
  [() => lineUp({ powerW: 0, antennaGainDbi: 40, symbolRateMBd: 2 }), 'powerW'],
  [() => offAxisLimit({ mask: 'S.999' as OffAxisMaskName, offAxisDeg: 3 }), 'mask'],
  [() => sideLobeRise({ offAxisDeg: 2, mispointingDeg: 2 }), 'mispointingDeg'],
  [
    () =>
      compressionPoint([
        { inputDbm: -20, outputDbm: 30 },
        { inputDbm: -25, outputDbm: 31 },
      ]),
    'pairs[1].inputDbm',
  ],
  [
    () => crossPolarIsolationRead({ coPolarDbm: -80, crossPolarDbm: -81, noiseDbm: -82 }),
    'coPolarDbm',
  ],
  [() => thirdOrderRatio({ outputCompressionDbm: 30, carrierDbm: 31 }), 'carrierDbm'],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});
