import {
  exposedCarriers,
  fieldStrength,
  frequenciesUnderBand,
  ingressLevel,
  levelInField,
  type ScreeningClass,
  screeningAttenuation,
  terrestrialBands,
} from 'slantpath/ingress';
import { expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';
import { input, type WorkedRow, workedCases, workedRows } from '../support/worked.js';

const level = (row: WorkedRow) =>
  levelInField({
    fieldDbuvPerM: input(row, 'fieldDbuvPerM'),
    frequencyMHz: input(row, 'frequencyMHz'),
    gainDbi: input(row, 'gainDbi'),
  });

const under = (row: WorkedRow, injection: 'low-side' | 'high-side') => {
  const [fromMHz, toMHz] = row.inputs['bandMHz'] as [number, number];
  const localOscillatorGHz = Number(row.inputs['loMHz'] ?? 5150) / 1000;
  return frequenciesUnderBand({ fromMHz, toMHz, localOscillatorGHz, injection });
};

const answers: readonly (readonly [string, (row: WorkedRow) => readonly unknown[]])[] = [
  ['constant in field strength', () => [fieldStrength({ eirpDbm: 0, distanceM: 1 })]],
  [
    'field strength dBuV/m, free space',
    (row) => [
      fieldStrength({ eirpDbm: input(row, 'eirpDbm'), distanceM: input(row, 'distanceM') }),
    ],
  ],
  [
    'constant in dBuV (matched) = dBuV/m + gain dBi - 20 log MHz + constant, 75',
    () => [levelInField({ fieldDbuvPerM: 0, frequencyMHz: 1, gainDbi: 0 })],
  ],
  [
    'constant in dBuV (matched) = dBuV/m + gain dBi - 20 log MHz + constant, 50',
    () => [levelInField({ fieldDbuvPerM: 0, frequencyMHz: 1, gainDbi: 0, impedanceOhm: 50 })],
  ],
  ['level dBuV at 75', (row) => [level(row)]],
  [
    'field dBuV/m; ingress',
    (row) => {
      const leak = ingressLevel({
        eirpDbm: input(row, 'eirpDbm'),
        distanceM: input(row, 'distanceM'),
        frequencyMHz: input(row, 'frequencyMHz'),
        screeningClass: row.inputs['class'] as ScreeningClass,
        wantedDbuv: input(row, 'wantedDbuv'),
      });
      return [leak.fieldDbuvPerM, leak.ingressDbuv, leak.wantedAboveIngressDb];
    },
  ],
  [
    'RF MHz whose IF',
    (row) => {
      const { fromGHz, toGHz } = under(row, 'low-side');
      return [fromGHz * 1000, toGHz * 1000];
    },
  ],
  [
    'IF MHz of a terrestrial band',
    (row) => {
      // A C-band unit turns the band over: its lower edge is the upper one behind it.
      const { fromGHz, toGHz } = under(row, 'high-side');
      return [fromGHz * 1000, toGHz * 1000];
    },
  ],
];

publishedTable({
  part: 'ingress',
  quantity: 'field strength and ingress',
  unit: 'dB or MHz',
  source: 'worked ingress, recomputed (classes and bands as marked in the table)',
  status: 'recomputed',
  limit: 1e-4,
  reason: 'printed digits',
  count: 40,
  cases: () =>
    workedRows('ingress/worked.csv').flatMap((row) => {
      const found = answers.find(([quantity]) => row.quantity.startsWith(quantity));
      if (found === undefined) throw new Error(`no answer for ${row.quantity}`);
      return workedCases(row, found[1](row));
    }),
});

test('the bands are those of the table', () => {
  const rows = referenceTable('ingress/terrestrial-bands.csv');
  expect(rows).toHaveLength(terrestrialBands.length);
  for (const row of rows) {
    const name = row['band']?.split(' ')[0];
    const band = terrestrialBands.find((known) => known.name === name);
    expect(band?.handset).toEqual([cell(row, 'up_low_MHz'), cell(row, 'up_high_MHz')]);
    expect(band?.mast).toEqual([cell(row, 'down_low_MHz'), cell(row, 'down_high_MHz')]);
    expect(band?.status).toBe(row['status']?.startsWith('read') ? 'read' : 'from-memory');
  }
});

test('the classes are those of the table; A++ above 1000 MHz is from memory', () => {
  for (const row of referenceTable('ingress/screening-classes.csv')) {
    const screeningClass = row['class'] as ScreeningClass;
    const at = (frequencyMHz: number) => screeningAttenuation({ screeningClass, frequencyMHz });
    expect(at(1000)).toBe(cell(row, 'screening_30_1000MHz_min_dB'));
    if (screeningClass === 'A++') continue;
    expect(at(2000)).toBe(cell(row, 'screening_1000_2000MHz_min_dB'));
    expect(at(2001)).toBe(cell(row, 'screening_2000_3000MHz_min_dB'));
  }
});

test('a cordless phone falls on 11.64 GHz in the cable, a 5G mast on a C-band carrier in the unit', () => {
  const found = exposedCarriers({
    carriers: [
      { name: 'K', frequencyGHz: 11.64, bandwidthMHz: 20, localOscillatorGHz: 9.75 },
      { name: 'C', frequencyGHz: 3.7, bandwidthMHz: 36, localOscillatorGHz: 5.15 },
      { name: 'free', frequencyGHz: 10.8, bandwidthMHz: 30, localOscillatorGHz: 9.75 },
    ],
  });
  expect(found).toContainEqual({
    carrier: 'K',
    band: 'DECT',
    sender: 'handset',
    way: 'cable',
    overlapMHz: 20,
  });
  expect(found).toContainEqual({
    carrier: 'C',
    band: 'n77',
    sender: 'handset',
    way: 'unit',
    overlapMHz: 36,
  });
  expect(found.some(({ carrier }) => carrier === 'free')).toBe(false);
});

test.each([
  [() => fieldStrength({ eirpDbm: 23, distanceM: 0 }), 'distanceM'],
  [() => screeningAttenuation({ screeningClass: 'A', frequencyMHz: 5000 }), 'frequencyMHz'],
  [
    () =>
      exposedCarriers({
        carriers: [{ name: 'x', frequencyGHz: 11.6, bandwidthMHz: 0, localOscillatorGHz: 9.75 }],
      }),
    'carriers[0].bandwidthMHz',
  ],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});
