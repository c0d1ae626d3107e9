import { DomainError } from 'slantpath';
import { ommToElements, satelliteLookAngles, satelliteTrack, tleToElements } from 'slantpath/orbit';
import { fixedAntennaLoss } from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

const rows = referenceTable('orbit/sgp4-tracks.csv');

function look(row: CsvRow) {
  const found = satelliteTrack({
    elements: tleToElements(`${row['line1']}\n${row['line2']}`),
    station: {
      latitudeDeg: cell(row, 'lat_deg'),
      longitudeDeg: cell(row, 'lon_deg'),
      heightM: cell(row, 'height_m'),
    },
    from: row['instant'] ?? '',
    lengthH: 0,
  });
  const point = found.kind === 'track' ? found.points[0] : undefined;
  if (!point) throw new Error('no point');
  return point;
}

for (const [quantity, unit, column, got, limit] of [
  [
    'azimuth on the sky',
    'deg',
    'azimuth_deg',
    (row: CsvRow) => {
      const turn = look(row).azimuthDeg - cell(row, 'azimuth_deg');
      return (
        cell(row, 'azimuth_deg') + turn * Math.cos((cell(row, 'elevation_deg') * Math.PI) / 180)
      );
    },
    5e-7,
  ],
  ['elevation', 'deg', 'elevation_deg', (row: CsvRow) => look(row).elevationDeg, 5e-7],
  ['slant range', 'km', 'range_km', (row: CsvRow) => look(row).slantRangeKm, 5e-5],
  [
    'longitude below',
    'deg',
    'under_longitude_deg',
    (row: CsvRow) => look(row).underLongitudeDeg,
    5e-7,
  ],
  [
    'latitude below',
    'deg',
    'under_latitude_deg',
    (row: CsvRow) => look(row).underLatitudeDeg,
    5e-7,
  ],
] as const) {
  publishedTable({
    part: 'orbit',
    quantity,
    unit,
    source: 'another implementation of SGP4, sidereal time of 1982, vectors by hand',
    status: 'recomputed',
    limit,
    reason: 'the epoch is kept to the millisecond',
    count: 24,
    cases: () =>
      rows.map((row) => ({
        name: `${row['line2']?.slice(2, 7)} ${row['instant']}`,
        expected: cell(row, column),
        got: got(row),
      })),
  });
}

const tle = `DEMO 1
${rows[0]?.['line1']}
${rows[0]?.['line2']}`;
const message = {
  EPOCH: '2026-10-27T12:00:00',
  MEAN_MOTION: 1.00271,
  ECCENTRICITY: '0.0002',
  INCLINATION: 3,
  RA_OF_ASC_NODE: 80,
  ARG_OF_PERICENTER: 90,
  MEAN_ANOMALY: 62.5,
};
const elements = ommToElements(message);
const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

describe('elements', () => {
  test('a two-line set and the message with the same numbers agree', () => {
    const fromTle = tleToElements(tle);
    expect(fromTle).toMatchObject({
      epoch: '2026-10-27T12:00:00.000Z',
      inclinationDeg: 3,
      ascendingNodeDeg: 80,
    });
    const again = ommToElements({
      EPOCH: fromTle.epoch,
      MEAN_MOTION: fromTle.meanMotionRevPerDay,
      ECCENTRICITY: fromTle.eccentricityRatio,
      INCLINATION: fromTle.inclinationDeg,
      RA_OF_ASC_NODE: fromTle.ascendingNodeDeg,
      ARG_OF_PERICENTER: fromTle.argumentOfPerigeeDeg,
      MEAN_ANOMALY: fromTle.meanAnomalyDeg,
      BSTAR: 0,
    });
    expect(again).toEqual(fromTle);
  });

  test('one message in four notations', () => {
    const kvn = Object.entries(message)
      .map(([key, value]) => `${key.padEnd(20)} = ${value}${key === 'INCLINATION' ? ' [deg]' : ''}`)
      .join('\n');
    const xml = `<omm><body><segment><data>${Object.entries(message)
      .map(
        ([key, value]) => `<${key}${key === 'INCLINATION' ? ' units="deg"' : ''}>${value}</${key}>`,
      )
      .join('')}</data></segment></body></omm>`;
    for (const text of [JSON.stringify(message), JSON.stringify([message, {}]), kvn, xml])
      expect(ommToElements(text)).toEqual(elements);
    expect(ommToElements([message] as never)).toEqual(elements);
  });

  const line1 = rows[0]?.['line1'] ?? '';
  const line2 = rows[0]?.['line2'] ?? '';
  test.each([
    ['tle', () => tleToElements(line1), 'malformed'],
    ['tle', () => tleToElements(`${line1}\n${line2.replace('3.0000', '3.1000')}`), 'malformed'],
    ['tle', () => tleToElements(`${line1.trim().slice(0, 60)}\n${line2}`), 'malformed'],
    ['tle', () => tleToElements(undefined as never), 'missing'],
    ['omm', () => ommToElements('nothing of the kind'), 'malformed'],
    ['omm', () => ommToElements('{"EPOCH": '), 'malformed'],
    ['omm', () => ommToElements(null as never), 'missing'],
    [
      'omm.MEAN_ELEMENT_THEORY',
      () => ommToElements({ ...message, MEAN_ELEMENT_THEORY: 'DSST' }),
      'not-an-option',
    ],
    ['omm.TIME_SYSTEM', () => ommToElements({ ...message, TIME_SYSTEM: 'TAI' }), 'not-an-option'],
    [
      'omm.eccentricityRatio',
      () => ommToElements({ ...message, ECCENTRICITY: 2000 }),
      'out-of-range',
    ],
    ['omm.inclinationDeg', () => ommToElements({ ...message, INCLINATION: 'three' }), 'not-finite'],
    [
      'omm.meanMotionRevPerDay',
      () => ommToElements({ ...message, MEAN_MOTION: undefined }),
      'missing',
    ],
    ['omm.epoch', () => ommToElements({ ...message, EPOCH: 'yesterday' }), 'malformed'],
    [
      'elements.inclinationDeg',
      () =>
        satelliteLookAngles({
          elements: { ...elements, inclinationDeg: 200 },
          station,
          instant: '2026-10-28',
        }),
      'out-of-range',
    ],
    [
      'stepMin',
      () => satelliteTrack({ elements, station, from: '2026-10-28', lengthH: 700, stepMin: 1 }),
      'out-of-range',
    ],
    ['from', () => satelliteTrack({ elements, station, from: '28.10.2026' }), 'malformed'],
  ])('refuses a bad %s', (parameter, call, code) => {
    expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter, code }));
  });
});

describe('track', () => {
  test('over a sidereal day it closes, within the drift of the elements', () => {
    const track = satelliteTrack({
      elements,
      station,
      from: '2026-10-28',
      lengthH: 24,
      stepMin: 1436,
    });
    if (track.kind !== 'track') throw new Error('no track');
    const [first, last] = track.points;
    expect(track.points.length).toBe(2);
    expect(Math.abs((first?.elevationDeg ?? 0) - (last?.elevationDeg ?? 0))).toBeLessThan(0.05);
    expect(track.daysFromEpoch.first).toBeCloseTo(0.5, 9);
  });

  test('one instant is the same as the first point of a track', () => {
    const track = satelliteTrack({ elements, station, from: '2026-10-28T06:00:00Z', lengthH: 0 });
    const one = satelliteLookAngles({ elements, station, instant: Date.UTC(2026, 9, 28, 6) });
    if (track.kind !== 'track' || one.kind !== 'visible') throw new Error('no track');
    expect(track.points[0]?.azimuthDeg).toBe(one.azimuthDeg);
    expect(track.points[0]?.elevationDeg).toBe(one.elevationDeg);
  });

  test('a fixed antenna on it: the best moment to peak is better than the worst', () => {
    const track = satelliteTrack({ elements, station, from: '2026-10-28', stepMin: 10 });
    if (track.kind !== 'track') throw new Error('no track');
    const day = fixedAntennaLoss({ track: track.points, beamwidthDeg: 1.9 });
    const at = (index: number) => day.worstLossIfPeakedThereDb[index] ?? 0;
    expect(at(day.bestIndex)).toBeLessThan(at(day.worstIndex) / 2);
    expect(day.worstLossDb).toBeLessThanOrEqual(at(day.bestIndex) + 1e-9);
  });

  test('a decayed orbit has no position', () => {
    const low = {
      ...elements,
      meanMotionRevPerDay: 16.6,
      eccentricityRatio: 0.001,
      dragTermPerEarthRadius: 0.01,
    };
    expect(
      satelliteTrack({ elements: low, station, from: '2026-12-20', lengthH: 240, stepMin: 60 })
        .kind,
    ).toBe('no-position');
    expect(satelliteLookAngles({ elements: low, station, instant: '2027-12-20' }).kind).toBe(
      'no-position',
    );
  });
});

describe('a damaged two-line set', () => {
  const lines = `1 99901U 26001A   26300.50000000  .00000000  00000-0  00000-0 0  9993
2 99901   3.0000  80.0000 0002000  90.0000 270.0000  1.00271000  1003`;
  const whole = tleToElements(lines);
  // What a copyist, a scanner or a keyboard puts in the place of another character.
  const signs = [...'0123456789OolIBSZ -+.,A\t'];

  test('no character can be another one and give other elements', () => {
    let refused = 0;
    for (let at = 0; at < lines.length; at++)
      for (const sign of signs) {
        if (sign === lines[at]) continue;
        const damaged = lines.slice(0, at) + sign + lines.slice(at + 1);
        try {
          expect(tleToElements(damaged)).toEqual(whole);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          expect(error.message.length).toBeLessThan(300);
          refused++;
        }
      }
    expect(refused).toBeGreaterThan(3000);
  });

  test('no character can be left out or doubled', () => {
    for (let at = 0; at < lines.length; at++) {
      if (lines[at] === '\n') continue;
      const without = lines.slice(0, at) + lines.slice(at + 1);
      const twice = lines.slice(0, at) + lines[at] + lines.slice(at);
      for (const damaged of [without, twice])
        expect(() => tleToElements(damaged)).toThrow(DomainError);
    }
  });

  test('the field with its columns is named', () => {
    expect(() => tleToElements(lines.replace('26300.5', '26O00.5'))).toThrow(
      'epoch in columns 19 to 32',
    );
  });
});
