import { DomainError } from 'slantpath';
import { dvbMode, dvbModes, modeWithPilots, occupiedBandwidth } from 'slantpath/link';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const s2 = referenceTable('link/dvb-s2.csv');
const s2x = referenceTable('link/dvb-s2x.csv');
const s = referenceTable('link/dvb-s.csv');

const inS2 = (row: CsvRow) => dvbMode('DVB-S2', `${row['modulation']} ${row['code_rate']}`);
const inS2x = (row: CsvRow) => dvbMode('DVB-S2X', row['modcod'] ?? '');
const inS = (row: CsvRow) => dvbMode('DVB-S', `QPSK ${row['inner_code_rate']}`);

for (const [quantity, source, rows, column, got, limit, reason] of [
  [
    'Es/N0 of DVB-S2',
    'EN 302 307-1 V1.4.1, Table 13',
    s2,
    'ideal_EsN0_dB_published',
    (row: CsvRow) => inS2(row).esN0Db,
    0,
    'printed values',
  ],
  [
    'bits per symbol of DVB-S2',
    'EN 302 307-1 V1.4.1, Table 13',
    s2,
    'eff_published_bit_per_symbol',
    (row: CsvRow) => inS2(row).bitsPerSymbol,
    5e-7,
    'six printed decimals',
  ],
  [
    'bits per symbol of DVB-S2 with pilots',
    'frame structure of EN 302 307-1, recomputed',
    s2,
    'eff_recomputed_with_pilots',
    (row: CsvRow) => modeWithPilots(inS2(row)).bitsPerSymbol,
    5e-10,
    'nine printed decimals',
  ],
  [
    'Es/N0 of DVB-S2X',
    'EN 302 307-2, Table 20a, linear channel',
    s2x,
    'ideal_EsN0_dB_linear_channel_AWGN',
    (row: CsvRow) => inS2x(row).esN0Db,
    0,
    'printed values',
  ],
  [
    'Csat/(N0 Rs) of DVB-S2X',
    'EN 302 307-2, Table 20a, hard-limited channel',
    s2x,
    'Csat_over_N0Rs_dB_nonlinear_channel',
    (row: CsvRow) => inS2x(row).saturatedCarrierToNoiseDb ?? Number.NaN,
    0,
    'printed values',
  ],
  [
    'bits per symbol of DVB-S2X',
    'EN 302 307-2, Table 20a',
    s2x,
    'eff_published_bit_per_symbol',
    (row: CsvRow) => inS2x(row).bitsPerSymbol,
    5.1e-7,
    'six printed decimals',
  ],
  [
    'Es/N0 of DVB-S',
    'EN 300 421, from its Eb/N0',
    s,
    'EsN0_dB_recomputed',
    (row: CsvRow) => inS(row).esN0Db,
    5.1e-5,
    'four printed decimals',
  ],
  [
    'bits per symbol of DVB-S',
    'EN 300 421',
    s,
    'bit_per_symbol_net',
    (row: CsvRow) => inS(row).bitsPerSymbol,
    5.1e-10,
    'nine printed decimals',
  ],
] as const)
  publishedTable({
    part: 'link',
    quantity,
    unit: quantity.startsWith('bits') ? '' : 'dB',
    source,
    status:
      source.includes('recomputed') || source.includes('from its') ? 'recomputed' : 'published',
    limit,
    reason,
    count: rows === s2 ? 28 : rows === s2x ? 39 : 5,
    cases: () =>
      rows.map((row) => ({
        name: Object.values(row).slice(0, 2).join(' '),
        expected: cell(row, column),
        got: got(row),
      })),
  });

describe('modes', () => {
  test('each standard lists all its modes once', () => {
    for (const [standard, count] of [
      ['DVB-S', 5],
      ['DVB-S2', 28],
      ['DVB-S2X', 39],
      ['DVB-S2X VL-SNR', 9],
    ] as const) {
      const modes = dvbModes(standard);
      expect(modes.length).toBe(count);
      expect(new Set(modes.map(({ name }) => name)).size).toBe(count);
      for (const mode of modes) expect(dvbMode(standard, mode.name)).toBe(mode);
    }
  });

  test('thresholds from memory say so', () => {
    const statuses = dvbModes('DVB-S2X VL-SNR').map(({ status }) => status);
    expect(statuses[0]).toBe('published');
    expect(statuses.slice(1)).toEqual(Array.from({ length: 8 }, () => 'from-memory'));
    for (const standard of ['DVB-S', 'DVB-S2', 'DVB-S2X'] as const)
      expect(dvbModes(standard).every(({ status }) => status === 'published')).toBe(true);
  });

  test('no mode beats Shannon, and within a modulation more capacity needs more signal', () => {
    for (const standard of ['DVB-S', 'DVB-S2', 'DVB-S2X', 'DVB-S2X VL-SNR'] as const) {
      const modes = dvbModes(standard);
      for (const mode of modes) {
        // Two symbols of a spread mode carry the energy of one: Shannon holds per symbol all the same.
        expect(mode.bitsPerSymbol).toBeLessThan(Math.log2(1 + 10 ** (mode.esN0Db / 10)));
      }
    }
    for (const modulation of ['QPSK', '8PSK', '16APSK', '32APSK']) {
      const modes = dvbModes('DVB-S2').filter((mode) => mode.modulation === modulation);
      for (let index = 1; index < modes.length; index++) {
        expect(modes[index]?.esN0Db).toBeGreaterThan(modes[index - 1]?.esN0Db ?? 0);
        expect(modes[index]?.bitsPerSymbol).toBeGreaterThan(modes[index - 1]?.bitsPerSymbol ?? 0);
      }
    }
  });

  test.each([
    [() => dvbModes('DVB-S3' as never), 'standard', 'not-an-option'],
    [() => dvbMode('DVB-S2', 'QPSK 7/8'), 'name', 'not-an-option'],
    [() => dvbMode('DVB-S2', undefined as never), 'name', 'missing'],
    [() => modeWithPilots(dvbMode('DVB-S', 'QPSK 1/2')), 'standard', 'not-an-option'],
    [
      () => occupiedBandwidth({ symbolRateMBd: 27.5, rollOffRatio: 20 }),
      'carrier.rollOffRatio',
      'out-of-range',
    ],
    [
      () => occupiedBandwidth({ symbolRateMBd: 27500000, rollOffRatio: 0.2 }),
      'carrier.symbolRateMBd',
      'out-of-range',
    ],
  ])('refuses bad input %#', (call, parameter, code) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });
});
