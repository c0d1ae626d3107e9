/** The chain of a Tarnfell hut, and cases prepared for a class: invented readings of one fault each. */

import { DomainError } from 'slantpath';
import type { CauseInstallation, CauseObservation } from 'slantpath/acceptance';

type Carrier = CauseInstallation['carriers'][number];

const carrier = (
  name: string,
  band: Carrier['band'],
  frequencyGHz: number,
  frequencyMHz: number,
  levelDbuv: number,
  carrierToNoiseDb: number,
): Carrier => ({
  name,
  slot: `${name.split(' ')[0]} E`,
  polarization: name.endsWith('V') ? 'vertical' : 'horizontal',
  band,
  frequencyGHz,
  frequencyMHz,
  levelDbuv,
  carrierToNoiseDb,
});
const FREQUENCIES = [950, 1150, 1400, 1700, 2000, 2200];
const points = (...losses: readonly number[]) =>
  losses.map((valueDb, index) => ({ frequencyMHz: FREQUENCIES[index] ?? 0, valueDb }));

/** Three slots on one reflector, a switch at the head, outlets in the hall and the attic. */
export const tarnfell: CauseInstallation = {
  diameterM: 0.9,
  slots: [
    { name: '7.2 E', azimuthDeg: 183.3, elevationDeg: 36.6 },
    { name: '16.4 E', azimuthDeg: 170.6, elevationDeg: 36.2 },
    { name: '21.8 E', azimuthDeg: 163.4, elevationDeg: 35.3 },
  ],
  carriers: [
    carrier('7.2 V', 'low', 11.2, 1450, 76, 14),
    carrier('7.2 H', 'high', 12.3, 1700, 75, 13.5),
    carrier('16.4 V', 'low', 10.9, 1150, 77, 14.5),
    carrier('16.4 H', 'high', 12.6, 2000, 75.5, 13.5),
    carrier('21.8 V', 'low', 11.6, 1850, 75, 13),
    carrier('21.8 H', 'high', 11.9, 1300, 76, 13.5),
  ],
  testPoints: [
    { name: 'head', lossDb: points(5.7, 5.8, 6, 6.3, 6.5, 6.6) },
    { name: 'hall', behind: 'head', lossDb: points(16.9, 17.7, 18.7, 19.7, 20.7, 21.4) },
    { name: 'attic', behind: 'head', lossDb: points(13.1, 13.6, 14.1, 14.7, 15.2, 15.5) },
  ],
};

/** A case: readings as typed, and what was seen on arrival. */
export interface FaultCase {
  readonly label: string;
  readonly readings: string;
  readonly rain: 'yes' | 'no';
}

const NAMES = tarnfell.carriers.map(({ name }) => name);

/** Lines of readings from levels and ratios, hall first, then attic. */
const lines = (hall: string, attic: string): string =>
  [
    ['hall', hall],
    ['attic', attic],
  ]
    .flatMap(([point, list]) =>
      (list ?? '').split(', ').map((reading, index) => `${NAMES[index]} ${point} ${reading}`),
    )
    .join('\n');

/** Prepared cases; which fault each has, the class finds out. */
export const faultCases: readonly FaultCase[] = [
  {
    label: 'Case A',
    rain: 'no',
    readings: lines(
      '49.8 nothing, 47.1 nothing, 54.3 6.5, 46.5 nothing, 50.8 nothing, 53.3 nothing',
      '53.7 nothing, 52.9 nothing, 58.8 7.1, 52.2 nothing, 56.0 nothing, 57.8 nothing',
    ),
  },
  {
    label: 'Case B',
    rain: 'no',
    readings: lines(
      '54.9 13.3, 53.6 13.0, 55.9 12.8, 51.6 11.9, 46.6 12.6, 53.1 13.1',
      '58.8 13.7, 58.1 13.3, 60.2 14.0, 57.3 11.7, 50.3 13.1, 57.6 13.3',
    ),
  },
  {
    label: 'Case C',
    rain: 'no',
    readings: lines(
      '48.3 nothing, 46.5 other, 56.8 nothing, 50.5 nothing, 55.3 11.0, 57.3 11.1',
      '53.9 nothing, 52.4 nothing, 60.5 nothing, 56.6 nothing, 60.3 11.2, 63.3 12.0',
    ),
  },
  {
    label: 'Case D',
    rain: 'no',
    readings: lines(
      '52.5 13.8, 50.4 nothing, 58.6 15.0, 49.1 other, 52.1 12.3, 41.7 other',
      '59.7 14.1, 58.0 other, 64.3 15.1, 56.2 nothing, 58.1 11.2, 49.7 other',
    ),
  },
  {
    label: 'Case E',
    rain: 'no',
    readings: lines(
      '67.0 11.4, 64.9 9.0, 68.7 9.6, 66.1 10.6, 68.2 7.8, 70.3 10.4',
      '69.2 12.1, 68.3 9.2, 70.6 10.0, 68.7 11.4, 68.3 9.1, 73.0 11.0',
    ),
  },
  {
    label: 'Case F',
    rain: 'no',
    readings: lines(
      '34.4 11.9, 32.7 9.8, 41.3 13.7, 31.1 8.0, 30.9 8.5, 37.2 10.2',
      '41.9 12.9, 38.6 11.3, 45.3 14.3, 36.6 12.1, 36.8 10.6, 42.0 11.6',
    ),
  },
  {
    label: 'Case G',
    rain: 'no',
    readings: lines(
      '56.8 nothing, 57.2 nothing, 60.4 14.7, 54.3 12.6, 53.5 11.6, 56.0 13.2',
      '62.5 nothing, 63.0 nothing, 64.9 14.0, 60.7 12.1, 58.6 11.1, 60.4 12.7',
    ),
  },
  {
    label: 'Case H',
    rain: 'no',
    readings: lines(
      '55.7 12.3, 53.7 12.2, 58.8 14.8, 55.4 14.0, 56.9 nothing, 55.5 11.8',
      '60.5 12.5, 59.2 12.8, 65.3 14.0, 62.4 12.4, 64.9 nothing, 62.0 12.2',
    ),
  },
];

/** One row of readings. */
export interface ReadingRow {
  readonly carrier: string;
  readonly testPoint: string;
  readonly levelDbuv: number;
  /** Ratio in dB as typed; empty where none was read. */
  readonly ratio: string;
  readonly received: string;
}

/** The rows of lines like `16.4 H hall 52.1 11.4`. */
export function rowsOfLines(lines: string): readonly ReadingRow[] {
  return lines.split('\n').map((line) => {
    const [, carrier = '', testPoint = '', level = '', last = ''] =
      /^(.+?)\s+(head|hall|attic)\s+(\S+)(?:\s+(\S+))?$/.exec(line.trim()) ?? [];
    const received = last === 'nothing' || last === 'other' ? last : 'wanted';
    return {
      carrier,
      testPoint,
      levelDbuv: Number(level),
      ratio: received === 'wanted' ? last : '',
      received,
    };
  });
}

/** What rows of readings say. */
export function observationsOf(rows: readonly ReadingRow[]): readonly CauseObservation[] {
  return rows.flatMap(
    ({ carrier: name, testPoint, levelDbuv, ratio, received }, index): CauseObservation[] => {
      const place = { carrier: name, testPoint };
      const read: CauseObservation[] = [{ kind: 'level', ...place, levelDbuv }];
      if (received !== 'wanted')
        return [
          ...read,
          { kind: 'reception', ...place, received: received as 'nothing' | 'other' },
        ];
      if (ratio.trim() === '') return read;
      const carrierToNoiseDb = Number(ratio.replace(',', '.').replace('−', '-'));
      if (!Number.isFinite(carrierToNoiseDb))
        throw new DomainError({
          code: 'malformed',
          parameter: `readings[${index}].ratio`,
          received: ratio,
          allowed: 'a ratio in dB, or empty',
        });
      return [
        ...read,
        { kind: 'carrier-to-noise', ...place, carrierToNoiseDb },
        { kind: 'reception', ...place, received: 'wanted' },
      ];
    },
  );
}
