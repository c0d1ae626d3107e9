import { describe, expect, test } from 'vitest';
import { columnsPlan } from '../../../src/command/columns/plan.js';
import { FILE, WORDS } from './sites.js';

describe('plan', () => {
  test('takes fields from words, from earlier functions and from columns of their name', () => {
    const plan = columnsPlan(
      ['lookAngles', 'rainAttenuation'],
      {
        latitudeDeg: 'lat',
        longitudeDeg: 'lon',
        orbitalLongitudeDeg: '16.4',
        frequencyGHz: '12',
        tiltDeg: '0',
        exceededPercent: '1e-1',
        rainHeightKm: '3',
        'rainAttenuation.rainRate001MmPerH': 'rain',
      },
      ['lat', 'lon', 'heightM', 'rain'],
    );
    expect(plan.reads).toEqual(['lat', 'lon', 'heightM', 'rain']);
    expect(plan.steps[1]?.fields).toMatchObject({
      elevationDeg: { kind: 'result', name: 'elevationDeg' },
      heightM: { kind: 'column', column: 'heightM' },
      rainRate001MmPerH: { kind: 'column', column: 'rain' },
      exceededPercent: { kind: 'number', value: 0.1 },
    });
    expect(plan.adds.map(({ name }) => name)).toEqual([
      'azimuthDeg',
      'elevationDeg',
      'slantRangeKm',
      'rainDb',
      'rainAttenuationOutsideStatedRange',
      'rowOutcome',
    ]);
  });

  test.each([
    [['lookAngle'], WORDS, '--add must be one of lookAngles'],
    [['toString'], WORDS, '--add must be one of lookAngles'],
    [[], WORDS, '--add must be one of lookAngles'],
    [
      ['lookAngles'],
      { ...WORDS, heightM: 'height' },
      'heightM must be a number or a column of the file (id, lat, lon, alt)',
    ],
    [
      ['lookAngles'],
      { latitudeDeg: 'lat' },
      'longitudeDeg must be given for lookAngles: longitudeDeg=COLUMN',
    ],
    [
      ['lookAngles'],
      { ...WORDS, tiltDeg: '3' },
      'arguments must be a field that one of lookAngles takes, got "tiltDeg"',
    ],
    [
      ['lookAngles', 'lookAngles'],
      WORDS,
      '--add must be columns that the file or an earlier function does not have',
    ],
    [['availability'], WORDS, '--link must be a file with the link for availability'],
  ])('refuses %j', (names, words, message) => {
    expect(() => columnsPlan(names as string[], words as never, FILE)).toThrow(message);
  });

  test('refuses to write over a column of the file', () => {
    expect(() => columnsPlan(['lookAngles'], WORDS, [...FILE, 'AzimuthDeg'])).toThrow(
      '"azimuthDeg"',
    );
  });
});
