import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  type ContourFeature,
  type Footprint,
  footprintLevel,
  footprintLevelsAt,
} from 'slantpath/link';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';
import { runs } from '../support/runs.js';

const RAD = Math.PI / 180;

/** Place at an angle and bearing from another on a sphere: the textbook's direct problem. */
function beyond(lat: number, lon: number, angle: number, bearing: number): [number, number] {
  const sinLat =
    Math.sin(lat * RAD) * Math.cos(angle * RAD) +
    Math.cos(lat * RAD) * Math.sin(angle * RAD) * Math.cos(bearing * RAD);
  const dLon = Math.atan2(
    Math.sin(bearing * RAD) * Math.sin(angle * RAD) * Math.cos(lat * RAD),
    Math.cos(angle * RAD) - Math.sin(lat * RAD) * sinLat,
  );
  return [((lon + dLon / RAD + 540) % 360) - 180, Math.asin(sinLat) / RAD];
}

const feature = (eirpDbw: number, geometry: ContourFeature['geometry']): ContourFeature => ({
  type: 'Feature',
  properties: { eirpDbw },
  geometry,
});

/** Contour round a place at a radius, of 720 points, not cut at the date line. */
const circle = (lat: number, lon: number, radius: number, eirpDbw: number): ContourFeature => {
  const ring = Array.from({ length: 720 }, (_, i) => beyond(lat, lon, radius, -i / 2));
  return feature(eirpDbw, {
    type: 'Polygon',
    coordinates: [[...ring, ring[0] as [number, number]]],
  });
};

/** 46 dBW within 16 degrees of the middle, 48 within 12, 50 within 6. */
const beam = (lat: number, lon: number): Footprint => ({
  type: 'FeatureCollection',
  features: [circle(lat, lon, 6, 50), circle(lat, lon, 16, 46), circle(lat, lon, 12, 48)],
});

publishedTable({
  part: 'link',
  quantity: 'level between round contours',
  unit: 'dB',
  source: 'proportional to the angle from the middle, in closed form, on a sphere',
  status: 'recomputed',
  limit: 2e-5,
  reason: 'contours of 720 chords',
  count: 280,
  cases: () =>
    // Mid-latitude, equator, across the date line, round each pole, and near one.
    [
      [46, 9],
      [0, 102],
      [-18, 179],
      [20, -176],
      [89.9, 0],
      [-89.9, 50],
      [84, 120],
    ].flatMap(([lat = 0, lon = 0]) => {
      const footprint = beam(lat, lon);
      return [7, 9, 11.5, 13, 15.5].flatMap((angle) =>
        [0, 45, 100, 170, 190, 260, 315, 359].map((bearing) => {
          const [longitudeDeg, latitudeDeg] = beyond(lat, lon, angle, bearing);
          const result = footprintLevel(footprint, { latitudeDeg, longitudeDeg });
          return {
            name: `${angle} degrees from ${lat} ${lon} at ${bearing}`,
            expected: angle < 12 ? 50 - (2 * (angle - 6)) / 6 : 48 - (2 * (angle - 12)) / 4,
            got: result.kind === 'between' ? result.levelDb : Number.NaN,
          };
        }),
      );
    }),
});

const box = (west: number, south: number, east: number, north: number): [number, number][] => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
  [west, south],
];

describe('footprint', () => {
  test('inside the highest and outside the lowest contour', () => {
    const footprint = beam(46, 9);
    expect(footprintLevel(footprint, { latitudeDeg: 46, longitudeDeg: 10 })).toEqual({
      kind: 'highest',
      levelDb: 50,
    });
    const outside = footprintLevel(footprint, { latitudeDeg: 46 - 20, longitudeDeg: 9 });
    expect(outside).toMatchObject({ kind: 'outside', lowestLevelDb: 46 });
    expect(outside.kind === 'outside' && outside.toNearestDeg).toBeCloseTo(4, 4);
    expect(footprintLevel(footprint, { latitudeDeg: -46, longitudeDeg: 189 }).kind).toBe('outside');
  });

  test('a peak lets it be interpolated to the middle', () => {
    const peak = feature(52, { type: 'Point', coordinates: [9, 46] });
    const footprint = { ...beam(46, 9), features: [...beam(46, 9).features, peak] };
    const [longitudeDeg, latitudeDeg] = beyond(46, 9, 3, 77);
    const result = footprintLevel(footprint, { latitudeDeg, longitudeDeg });
    expect(result.kind === 'between' && result.levelDb).toBeCloseTo(51, 4);
    expect(footprintLevel(footprint, { latitudeDeg: 46, longitudeDeg: 9 })).toMatchObject({
      levelDb: 52,
    });
  });

  test('a hole is outside, an island in it is inside again', () => {
    const holed = feature(45, {
      type: 'Polygon',
      coordinates: [box(0, 0, 30, 30), box(10, 10, 20, 20).reverse()],
    });
    const island = feature(45, { type: 'MultiPolygon', coordinates: [[box(14, 14, 16, 16)]] });
    const footprint: Footprint = { type: 'FeatureCollection', features: [holed, island] };
    const at = (latitudeDeg: number, longitudeDeg: number) =>
      footprintLevel(footprint, { latitudeDeg, longitudeDeg }).kind;
    expect([at(5, 5), at(12, 12), at(15, 15), at(40, 5)]).toEqual([
      'highest',
      'outside',
      'highest',
      'outside',
    ]);
  });

  test('cut at the date line and not cut say the same', () => {
    const cut: Footprint = {
      type: 'FeatureCollection',
      features: [
        feature(45, {
          type: 'MultiPolygon',
          coordinates: [[box(170, -10, 180, 10)], [box(-180, -10, -170, 10)]],
        }),
        feature(47, {
          type: 'MultiPolygon',
          coordinates: [[box(176, -4, 180, 4)], [box(-180, -4, -176, 4)]],
        }),
      ],
    };
    const crossing = (half: number, tall: number): [number, number][] => [
      [180 - half, -tall],
      [half - 180, -tall],
      [half - 180, tall],
      [180 - half, tall],
      [180 - half, -tall],
    ];
    const uncut: Footprint = {
      type: 'FeatureCollection',
      features: [
        feature(45, { type: 'Polygon', coordinates: [crossing(10, 10)] }),
        feature(47, { type: 'LineString', coordinates: crossing(4, 4) }),
      ],
    };
    fc.assert(
      fc.property(
        fc.double({ min: -12, max: 12, noNaN: true }),
        fc.double({ min: -12, max: 12, noNaN: true }),
        (latitudeDeg, offset) => {
          const where = { latitudeDeg, longitudeDeg: 180 + offset };
          const a = footprintLevel(cut, where);
          const b = footprintLevel(uncut, where);
          expect(a.kind).toBe(b.kind);
          if (a.kind === 'between' && b.kind === 'between')
            expect(a.levelDb).toBeCloseTo(b.levelDb, 9);
        },
      ),
      { numRuns: runs(300) },
    );
    // The seam itself is no contour: in the middle between 4 and 10 degrees, on the date line.
    const onSeam = footprintLevel(cut, { latitudeDeg: 7, longitudeDeg: -180 });
    expect(onSeam).toMatchObject({ kind: 'between' });
    expect(onSeam.kind === 'between' && onSeam.levelDb).toBeCloseTo(46, 2);
  });

  test('a cap about a pole, as a ring round it and with the map edge written out', () => {
    const bearings = Array.from({ length: 73 }, (_, i) => -180 + 5 * i);
    const round = feature(40, { type: 'Polygon', coordinates: [bearings.map((lon) => [lon, 60])] });
    // Closed along the edge of the map: up to the pole and back.
    const written = feature(40, {
      type: 'Polygon',
      coordinates: [[...bearings.map((lon) => [lon, 60]), [180, 90], [-180, 90], [-180, 60]]],
    });
    const turned = Array.from({ length: 73 }, (_, i) => [((i * 5 + 360 + 180) % 360) - 180, -60]);
    const south = feature(40, { type: 'Polygon', coordinates: [turned] });
    for (const [shape, sign] of [
      [written, 1],
      [south, -1],
    ] as const) {
      const footprint: Footprint = { type: 'FeatureCollection', features: [shape] };
      const at = (latitudeDeg: number, longitudeDeg: number) =>
        footprintLevel(footprint, { latitudeDeg: sign * latitudeDeg, longitudeDeg }).kind;
      for (const lon of [-180, -90.3, 0, 17, 179.9, 180, 365]) {
        expect(at(75, lon)).toBe('highest');
        expect(at(90, lon)).toBe('highest');
        expect(at(55, lon)).toBe('outside');
        expect(at(-90, lon)).toBe('outside');
      }
      const outside = footprintLevel(footprint, { latitudeDeg: sign * 50, longitudeDeg: 12 });
      expect(outside.kind === 'outside' && outside.toNearestDeg).toBeCloseTo(10, 1);
    }
    expect(() =>
      footprintLevel(
        { type: 'FeatureCollection', features: [round] },
        { latitudeDeg: 70, longitudeDeg: 0 },
      ),
    ).toThrow(expect.objectContaining({ code: 'malformed' }));
  });

  test('levels lie between their contours, whole turns change nothing, columns equal single calls', () => {
    const footprint = beam(-18, 179);
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.integer({ min: -180, max: 180 }),
        (latitudeDeg, longitudeDeg) => {
          const here = footprintLevel(footprint, { latitudeDeg, longitudeDeg });
          if (here.kind === 'between') {
            expect(here.levelDb).toBeGreaterThanOrEqual(here.innerLevelDb);
            expect(here.levelDb).toBeLessThanOrEqual(here.nextLevelDb);
          }
          expect(
            footprintLevel(footprint, { latitudeDeg, longitudeDeg: longitudeDeg + 720 }),
          ).toEqual(here);
          expect(
            footprintLevelsAt(footprint, {
              latitudeDeg: [latitudeDeg],
              longitudeDeg: [longitudeDeg],
            }),
          ).toEqual([here]);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('another property, such as the figure of merit', () => {
    const merit = { ...circle(0, 0, 10, 0), properties: { figureOfMeritDbPerK: 4 } };
    const footprint: Footprint = { type: 'FeatureCollection', features: [merit] };
    expect(
      footprintLevel(footprint, {
        latitudeDeg: 0,
        longitudeDeg: 0,
        property: 'figureOfMeritDbPerK',
      }),
    ).toEqual({ kind: 'highest', levelDb: 4 });
  });

  const good = circle(46, 9, 5, 50);
  const one = (change: object) => ({
    type: 'FeatureCollection',
    features: [{ ...good, ...change }],
  });
  test.each([
    [undefined, 'footprint', 'missing'],
    [{ type: 'Feature' }, 'footprint', 'malformed'],
    [{ type: 'FeatureCollection', features: [] }, 'footprint.features', 'empty'],
    [one({ properties: null }), 'footprint.features[0].properties', 'missing'],
    [one({ properties: { other: 1 } }), 'footprint.features[0].properties.eirpDbw', 'missing'],
    [
      one({ properties: { eirpDbw: Number.NaN } }),
      'footprint.features[0].properties.eirpDbw',
      'not-finite',
    ],
    [
      one({ geometry: { type: 'Circle', coordinates: [] } }),
      'footprint.features[0].geometry',
      'malformed',
    ],
    [
      one({ geometry: { type: 'Polygon', coordinates: [] } }),
      'footprint.features[0].geometry.coordinates',
      'malformed',
    ],
    [
      one({
        geometry: {
          type: 'Polygon',
          coordinates: [
            [
              [0, 0],
              [1, 1],
              [0, 0],
            ],
          ],
        },
      }),
      'footprint.features[0].geometry.coordinates[0]',
      'malformed',
    ],
    [
      one({
        geometry: {
          type: 'Polygon',
          coordinates: [
            [
              [0, 0],
              [1, 0],
              [1, 1],
              [0, 1],
            ],
          ],
        },
      }),
      'footprint.features[0].geometry.coordinates[0]',
      'malformed',
    ],
    [
      one({
        geometry: {
          type: 'Polygon',
          coordinates: [
            [
              [46, 109],
              [47, 9],
              [46, 10],
              [46, 109],
            ],
          ],
        },
      }),
      'footprint.features[0].geometry.coordinates[0][0][1]',
      'out-of-range',
    ],
  ])('refuses a bad footprint %#', (bad, parameter, code) => {
    const call = () =>
      footprintLevel(bad as unknown as Footprint, { latitudeDeg: 0, longitudeDeg: 0 });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ parameter, code }));
  });

  test('refuses a bad place, with its row in columns', () => {
    const footprint = beam(46, 9);
    expect(() => footprintLevel(footprint, { latitudeDeg: 99, longitudeDeg: 0 })).toThrow(
      expect.objectContaining({ parameter: 'latitudeDeg' }),
    );
    expect(() =>
      footprintLevelsAt(footprint, { latitudeDeg: [0, Number.NaN], longitudeDeg: [0, 0] }),
    ).toThrow(expect.objectContaining({ parameter: 'latitudeDeg', index: 1 }));
    expect(() => footprintLevelsAt(footprint, { latitudeDeg: [0, 1], longitudeDeg: [0] })).toThrow(
      expect.objectContaining({ parameter: 'longitudeDeg', code: 'length-mismatch' }),
    );
  });
});
