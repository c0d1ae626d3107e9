import { attenuationAt, climateAt } from 'slantpath/climate';
import { availabilityForMargin, dvbMode, type LinkBudgetInput, rainFade } from 'slantpath/link';
import { magneticField, trueToMagneticBearing } from 'slantpath/magnetic';
import { lookAngles, polarizationSkew } from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { computePart } from '../../../src/command/columns/computePart.js';
import { columnsPlan, ROW_OUTCOMES } from '../../../src/command/columns/plan.js';
import { runs } from '../../support/runs.js';
import { FILE, read, WORDS } from './sites.js';

const LINK: LinkBudgetInput = {
  carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 2/3') },
  downlink: { eirpDbw: 52, frequencyGHz: 12, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
  receiver: { diameterM: 0.6, noiseFigureDb: 0.8 },
};

/** The lowest path that attenuationAt takes, ITU-R P.618; lower ones are refused. */
const LOWEST_RAIN_PATH_DEG = 0.1;

describe('part', () => {
  test('each row is what the single functions give; bad and hidden rows stay empty', () => {
    const rows = runs(400);
    const latitudes = Array.from({ length: rows }, (_, i) =>
      i % 50 === 7
        ? 95
        : i % 50 === 9
          ? null
          : i % 50 === 11
            ? Number.NaN
            : -60 + ((i * 7.31) % 120),
    );
    const longitudes = Array.from({ length: rows }, (_, i) => -80 + ((i * 13.7) % 180));
    const plan = columnsPlan(
      ['lookAngles', 'polarizationSkew', 'declination', 'trueToMagneticBearing', 'attenuationAt'],
      {
        ...WORDS,
        'polarizationSkew.tiltDeg': '3',
        heightM: '0',
        decimalYear: '2026.5',
        frequencyGHz: '12',
        tiltDeg: '45',
        diameterM: '0.9',
        exceededPercent: '0.1',
      },
      FILE,
    );
    const { columns, badRows } = computePart(plan, rows, [read(latitudes), read(longitudes)]);
    const at = (name: string, row: number) =>
      columns[plan.adds.findIndex((added) => added.name === name)]?.[row];
    let refused = 0;
    for (let row = 0; row < rows; row++) {
      const latitudeDeg = latitudes[row] ?? Number.NaN;
      const outcome = ROW_OUTCOMES[at('rowOutcome', row) ?? 0];
      if (!(Math.abs(latitudeDeg) <= 90)) {
        refused++;
        expect(outcome).toBe('refused');
        expect(at('elevationDeg', row)).toBeNaN();
        expect(badRows.find((bad) => bad.row === row)).toMatchObject({
          field: 'latitudeDeg',
          code:
            latitudes[row] === null
              ? 'missing'
              : latitudeDeg === 95
                ? 'out-of-range'
                : 'not-a-number',
        });
        continue;
      }
      const station = { latitudeDeg, longitudeDeg: longitudes[row] ?? 0, heightM: 0 };
      const look = lookAngles(station, 16.4);
      const declinationDeg = magneticField(station, 2026.5).declinationDeg;
      expect(at('declinationDeg', row)).toBe(declinationDeg);
      expect(at('elevationDeg', row)).toBe(look.elevationDeg);
      if (look.kind === 'below-horizon') {
        expect(outcome).toBe('below-horizon');
        expect(at('attenuationDb', row)).toBeNaN();
        continue;
      }
      if (look.elevationDeg < LOWEST_RAIN_PATH_DEG) {
        refused++;
        // The satellite is up, but too low for the rain methods: the single function refuses too.
        expect(outcome).toBe('refused');
        expect(badRows.find((bad) => bad.row === row)).toMatchObject({
          field: 'elevationDeg',
          code: 'out-of-range',
        });
        continue;
      }
      expect(outcome).toBe('computed');
      if (look.kind !== 'visible') continue;
      expect(at('magneticBearingDeg', row)).toBe(
        trueToMagneticBearing({ azimuthDeg: look.azimuthDeg, declinationDeg }),
      );
      const skew = polarizationSkew({
        station,
        orbitalLongitudeDeg: 16.4,
        polarization: { kind: 'linear', tiltDeg: 3 },
      });
      if (skew.kind === 'visible') expect(at('skewDeg', row)).toBe(skew.skewDeg);
      const path = {
        frequencyGHz: 12,
        elevationDeg: look.elevationDeg,
        tiltDeg: 45,
        diameterM: 0.9,
        exceededPercent: 0.1,
      };
      expect(at('attenuationDb', row)).toBe(attenuationAt(climateAt(station), path).attenuationDb);
    }
    expect(badRows.length).toBe(refused);
  });

  test('a row refused by a later function keeps what earlier ones gave', () => {
    const plan = columnsPlan(
      ['lookAngles', 'rainAttenuation'],
      {
        ...WORDS,
        frequencyGHz: '12',
        tiltDeg: '0',
        exceededPercent: '0.1',
        rainHeightKm: '3',
        rainRate001MmPerH: 'id',
      },
      FILE,
    );
    const { columns, badRows } = computePart(
      plan,
      2,
      [
        [46, 46],
        [9, 9],
        [0, 0],
        [35, -1],
      ].map(read),
    );
    expect(columns[1]?.[1]).toBe(columns[1]?.[0]);
    expect([...(columns[3] ?? [])].map(Number.isNaN)).toEqual([false, true]);
    expect([...(columns[4] ?? [])]).toEqual([0, Number.NaN]);
    expect([...(columns[5] ?? [])]).toEqual([0, 1]);
    expect(badRows).toMatchObject([
      { row: 1, field: 'rainRate001MmPerH', received: '-1', code: 'out-of-range' },
    ]);
  });

  test('availability takes what stands in the file and says better or worse in a word', () => {
    const file = [
      'latitudeDeg',
      'heightM',
      'rainHeightKm',
      'rainRate001MmPerH',
      'elevationDeg',
      'diameterM',
    ];
    const plan = columnsPlan(
      ['availability'],
      { tiltDeg: '0', 'availability.diameterM': 'diameterM' },
      file,
      { link: LINK },
    );
    const columns = [
      [46.4, 1.2, 1.2],
      [1900, 20, 20],
      [2.9, 4.9, 4.9],
      [35, 95, 95],
      [36, 60, 60],
      [0.6, 0.6, 0.1],
    ];
    const computed = computePart(plan, 3, columns.map(read));
    expect(plan.adds.map(({ name }) => name)).toEqual([
      'marginDb',
      'availabilityExceededPercent',
      'availabilityOutcome',
      'rowOutcome',
    ]);
    for (const row of [0, 1, 2]) {
      const [
        latitudeDeg = 0,
        heightM = 0,
        rainHeightKm = 0,
        rainRate001MmPerH = 0,
        elevationDeg = 0,
        diameterM = 0,
      ] = columns.map((column) => column[row] ?? 0);
      const path = {
        latitudeDeg,
        heightM,
        rainHeightKm,
        rainRate001MmPerH,
        elevationDeg,
        tiltDeg: 0,
        frequencyGHz: 12,
      };
      const one = availabilityForMargin({
        link: { ...LINK, receiver: { ...LINK.receiver, diameterM } },
        fade: rainFade(path),
      });
      expect(computed.columns[1]?.[row]).toBe(one.exceededPercent);
      expect(plan.adds[2]?.words?.[computed.columns[2]?.[row] ?? -1]).toBe(one.kind);
    }
  });

  test('a number for all rows that is out of range ends the run, and no rows are no error', () => {
    const plan = (slot: string) => columnsPlan(['lookAngles'], { ...WORDS, heightM: slot }, FILE);
    expect(() =>
      computePart(
        plan('200000'),
        2,
        [
          [46, 46],
          [9, 9],
        ].map(read),
      ),
    ).toThrow('heightM');
    expect(
      computePart(plan('0'), 0, [[], []].map(read)).columns.map(({ length }) => length),
    ).toEqual([0, 0, 0, 0]);
  });

  test('numbers alone give every row the same', () => {
    const plan = columnsPlan(
      ['lookAngles'],
      { latitudeDeg: '46', longitudeDeg: '9', heightM: '0', orbitalLongitudeDeg: '16.4' },
      FILE,
    );
    expect(new Set(computePart(plan, 3, []).columns[1]).size).toBe(1);
  });
});
