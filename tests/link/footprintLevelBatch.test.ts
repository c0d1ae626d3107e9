import fc from 'fast-check';
import { markBadRows } from 'slantpath';
import {
  type Footprint,
  footprintLevel,
  footprintLevelBatch,
  footprintOutcomes,
  type Position,
} from 'slantpath/link';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

/** A wavy ring about a point, `radius` degrees of latitude and longitude, crossing the date line uncut. */
const ring = (radius: number) =>
  Array.from({ length: 73 }, (_, step): Position => {
    const turn = ((step % 72) / 72) * 2 * Math.PI;
    const wavy = radius * (1 + 0.2 * Math.sin(5 * turn));
    return [172 + wavy * Math.cos(turn), -20 + wavy * Math.sin(turn)];
  });
const contour = (radius: number, eirpDbw: number) => ({
  type: 'Feature' as const,
  properties: { eirpDbw },
  geometry: { type: 'Polygon' as const, coordinates: [ring(radius)] },
});
const footprint: Footprint = {
  type: 'FeatureCollection',
  features: [contour(8, 50), contour(20, 46), contour(14, 48)],
};
const place = fc.tuple(
  fc.oneof(
    fc.double({ min: -90, max: 90, noNaN: true }),
    fc.double({ min: -45, max: 5, noNaN: true }),
  ),
  fc.double({ min: 130, max: 230, noNaN: true }),
);

test('each row is what the single function gives', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 6 }), (places) => {
      const batch = footprintLevelBatch({
        footprint,
        places: {
          latitudeDeg: places.map(([latitudeDeg]) => latitudeDeg),
          longitudeDeg: places.map(([, longitudeDeg]) => longitudeDeg),
        },
      });
      places.forEach(([latitudeDeg, longitudeDeg], row) => {
        const single = footprintLevel(footprint, { latitudeDeg, longitudeDeg });
        seen.add(single.kind);
        expect(footprintOutcomes[batch.outcome[row] ?? -1]).toBe(single.kind);
        expect(batch.levelDb[row]).toBe(
          'levelDb' in single ? single.levelDb : single.lowestLevelDb,
        );
        expect(batch.toNearestDeg[row]).toBe('toNearestDeg' in single ? single.toNearestDeg : 0);
      });
    }),
    {
      numRuns: runs(200),
      examples: [
        [
          [
            [-20, 172],
            [-5, 180],
            [60, 0],
          ],
        ],
      ],
    },
  );
  expect(seen.size).toBe(3);
});

test('the distance is that to the nearest of many points along the contour', () => {
  const outer = ring(20);
  const radians = Math.PI / 180;
  for (const [latitudeDeg, longitudeDeg] of [
    [30, 150],
    [-70, 200],
    [-20, -90],
    [20, 172],
    [-30, 140],
  ] as const) {
    let least = 180;
    outer.slice(1).forEach(([east = 0, north = 0], index) => {
      const [west = 0, south = 0] = outer[index] ?? [];
      for (let share = 0; share <= 1; share += 1 / 256) {
        const lat = (south + share * (north - south)) * radians;
        const turn = (west + share * (east - west) - longitudeDeg) * radians;
        const up = Math.sin(latitudeDeg * radians);
        const across = Math.cos(latitudeDeg * radians);
        const cosine = up * Math.sin(lat) + across * Math.cos(lat) * Math.cos(turn);
        least = Math.min(least, Math.acos(cosine) / radians);
      }
    });
    const { toNearestDeg } = footprintLevelBatch({
      footprint,
      places: { latitudeDeg, longitudeDeg },
    });
    expect(toNearestDeg[0]).toBeCloseTo(least, 3);
  }
});

test('marks a bad row; a bad footprint is nobody’s row', () => {
  const places = { latitudeDeg: [-20, 95, -20], longitudeDeg: [172, 172, Number.NaN] };
  const marked = markBadRows(
    (given: typeof places) => footprintLevelBatch({ footprint, places: given }),
    places,
  );
  expect(marked.badRows.map(({ parameter, index }) => [parameter, index])).toEqual([
    ['latitudeDeg', 1],
    ['longitudeDeg', 2],
  ]);
  expect([...marked.columns.outcome]).toEqual([1, 255, 255]);
  const out = { levelDb: new Float64Array(1) };
  const one = { latitudeDeg: -20, longitudeDeg: 172 };
  expect(footprintLevelBatch({ footprint, places: one }, out).levelDb).toBe(out.levelDb);
  expect(() => footprintLevelBatch({ footprint: { ...footprint, features: [] }, places })).toThrow(
    expect.objectContaining({ code: 'empty', index: undefined }),
  );
});
