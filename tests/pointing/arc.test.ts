import fc from 'fast-check';
import {
  arcOverHorizon,
  lookAngles,
  slotAtAzimuth,
  slotFromBearing,
  visibleArc,
} from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

publishedTable({
  part: 'pointing',
  quantity: 'half width of the visible arc',
  unit: 'deg',
  source: 'bisection in 50-digit arithmetic (WGS 84 vectors)',
  status: 'recomputed',
  limit: 4e-10,
  reason: 'printed to 1e-10',
  count: 36,
  cases: () =>
    referenceTable('pointing/visible-arc.csv').map((row) => {
      const arc = visibleArc({
        station: {
          latitudeDeg: cell(row, 'lat_deg'),
          longitudeDeg: 100,
          heightM: cell(row, 'height_m'),
        },
        minimumElevationDeg: cell(row, 'minimum_elevation_deg'),
      });
      return {
        name: `${row['lat_deg']} at ${row['height_m']} m above ${row['minimum_elevation_deg']}`,
        expected: cell(row, 'half_width_deg'),
        got: arc.kind === 'arc' ? arc.halfWidthDeg : Number.NaN,
      };
    }),
});

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const far = { latitudeDeg: -17, longitudeDeg: 178, heightM: 0 };

describe('visible arc', () => {
  test('no arc beyond 81.4 degrees of latitude, and a reversed order across the date line', () => {
    expect(visibleArc({ station: { ...hut, latitudeDeg: 82 } }).kind).toBe('none');
    const arc = visibleArc({ station: far });
    expect(arc.kind === 'arc' && arc.eastLongitudeDeg < arc.westLongitudeDeg).toBe(true);
  });

  test('both ends stand at the lowest elevation', () => {
    const arc = visibleArc({ station: far, minimumElevationDeg: 12.5 });
    if (arc.kind !== 'arc') throw new Error('no arc');
    for (const end of [arc.westLongitudeDeg, arc.eastLongitudeDeg])
      expect(lookAngles(far, end).elevationDeg).toBeCloseTo(12.5, 9);
  });
});

describe('slot at an azimuth', () => {
  test('is the inverse of the azimuth of look angles', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 75, noNaN: true }),
        fc.boolean(),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (latitude, south, offset) => {
          const station = {
            latitudeDeg: south ? -latitude : latitude,
            longitudeDeg: 150,
            heightM: 700,
          };
          const look = lookAngles(station, 150 + offset);
          if (look.kind !== 'visible') return;
          const found = slotAtAzimuth({ station, azimuthDeg: look.azimuthDeg });
          if (found.kind !== 'crossing') throw new Error('no crossing');
          expect(found.elevationDeg).toBeCloseTo(look.elevationDeg, 8);
          expect(
            Math.abs(((found.orbitalLongitudeDeg - 150 - offset + 540) % 360) - 180),
          ).toBeLessThan(1e-8);
        },
      ),
    );
  });

  test('looking away from the equator there is none', () => {
    expect(slotAtAzimuth({ station: hut, azimuthDeg: 0 }).kind).toBe('none');
    expect(slotAtAzimuth({ station: far, azimuthDeg: 180 }).kind).toBe('none');
  });
});

describe('arc over a horizon', () => {
  test('a flat horizon leaves what visibleArc gives', () => {
    const found = arcOverHorizon({ station: hut, horizon: () => 10 });
    const arc = visibleArc({ station: hut, minimumElevationDeg: 10 });
    expect(found.kind).toBe('parts');
    if (arc.kind !== 'arc') throw new Error('no arc');
    expect(found.parts[0]?.westLongitudeDeg).toBeCloseTo(arc.westLongitudeDeg, 7);
    expect(found.parts[0]?.longitudeSpanDeg).toBeCloseTo(2 * arc.halfWidthDeg, 7);
    expect(arcOverHorizon({ station: hut, horizon: () => 10, minimumElevationDeg: 10 }).kind).toBe(
      'clear',
    );
    expect(arcOverHorizon({ station: hut, horizon: () => 45 })).toEqual({
      kind: 'blocked',
      parts: [],
      clearRatio: 0,
    });
    expect(arcOverHorizon({ station: { ...hut, latitudeDeg: 85 }, horizon: () => 0 }).kind).toBe(
      'none',
    );
  });

  test('a wall with upright sides cuts the arc at its own azimuths', () => {
    const horizon = [
      { azimuthDeg: 0, elevationDeg: 0 },
      { azimuthDeg: 170, elevationDeg: 0 },
      { azimuthDeg: 170, elevationDeg: 60 },
      { azimuthDeg: 170.05, elevationDeg: 60 },
      { azimuthDeg: 170.05, elevationDeg: 0 },
    ];
    const found = arcOverHorizon({ station: hut, horizon });
    expect(found.parts.length).toBe(2);
    for (const [azimuthDeg, end] of [
      [170.05, found.parts[0]?.eastLongitudeDeg],
      [170, found.parts[1]?.westLongitudeDeg],
    ] as const) {
      const edge = slotAtAzimuth({ station: hut, azimuthDeg });
      expect(edge.kind === 'crossing' && edge.orbitalLongitudeDeg).toBeCloseTo(
        end ?? Number.NaN,
        5,
      );
    }
    // The same wall as a function, broad enough not to be passed over.
    const wide = (azimuthDeg: number) => (azimuthDeg > 160 && azimuthDeg < 170 ? 60 : 0);
    expect(arcOverHorizon({ station: hut, horizon: wide }).parts.length).toBe(2);
  });

  test('samples run straight between each other, round through north', () => {
    const south = { latitudeDeg: -33, longitudeDeg: 20, heightM: 0 };
    const ends = [
      { azimuthDeg: 10, elevationDeg: 60 },
      { azimuthDeg: 350, elevationDeg: 40 },
    ];
    const found = arcOverHorizon({ station: south, horizon: ends });
    const line = (azimuthDeg: number) => {
      const past = (azimuthDeg - 350 + 360) % 360;
      return past <= 20 ? 40 + past : 60 - (20 * (azimuthDeg - 10)) / 340;
    };
    expect(arcOverHorizon({ station: south, horizon: line }).clearRatio).toBeCloseTo(
      found.clearRatio,
      9,
    );
  });

  test('refuses samples out of order, none, and a function without a number', () => {
    const bad = (horizon: unknown, details: object) =>
      expect(() => arcOverHorizon({ station: hut, horizon: horizon as never })).toThrow(
        expect.objectContaining(details),
      );
    bad([], { code: 'empty', parameter: 'horizon' });
    bad(undefined, { code: 'missing', parameter: 'horizon' });
    bad(
      [
        { azimuthDeg: 20, elevationDeg: 1 },
        { azimuthDeg: 10, elevationDeg: 1 },
      ],
      { code: 'malformed', parameter: 'horizon[1].azimuthDeg' },
    );
    bad([{ azimuthDeg: 20, elevationDeg: Number.NaN }], { parameter: 'horizon[0].elevationDeg' });
    bad(() => Number.NaN, { parameter: 'horizon' });
  });
});

describe('slot from a bearing', () => {
  const slots = [7.2, 16.4, 21.8];

  test('finds every slot from its own look angles', () => {
    for (const slot of slots) {
      const look = lookAngles(hut, slot);
      if (look.kind !== 'visible') throw new Error('hidden');
      const found = slotFromBearing({ station: hut, ...look, orbitalLongitudesDeg: slots });
      expect(found.kind).toBe('one');
      expect(found.slots[0]).toMatchObject({ orbitalLongitudeDeg: slot, withinUncertainty: true });
      expect(found.slots[0]?.separationDeg).toBeLessThan(1e-9);
      expect(found.nearestLongitudeDeg).toBeCloseTo(slot, 6);
      expect(found.offArcDeg).toBeLessThan(1e-6);
    }
  });

  test('a beam a slot too far west is told, with the turn that mends it', () => {
    const wrong = lookAngles(hut, 7.2);
    if (wrong.kind !== 'visible') throw new Error('hidden');
    const found = slotFromBearing({ station: hut, ...wrong, orbitalLongitudesDeg: slots });
    const wanted = found.slots.find((slot) => slot.orbitalLongitudeDeg === 16.4);
    // The look angles of the two slots, computed independently: azimuth 183.3147 and 170.6431.
    expect(wanted?.azimuthOffsetDeg).toBeCloseTo(170.643055 - 183.314691, 5);
  });

  test('several within a coarse uncertainty, none far off the arc', () => {
    const input = { station: hut, azimuthDeg: 167, elevationDeg: 36, orbitalLongitudesDeg: slots };
    expect(slotFromBearing({ ...input, azimuthWithinDeg: 6 }).kind).toBe('several');
    const high = slotFromBearing({ ...input, elevationDeg: 45 });
    expect([high.kind, high.side]).toEqual(['none', 'above']);
    expect(high.offArcDeg).toBeGreaterThan(8);
    expect(slotFromBearing({ ...input, elevationDeg: 30 }).side).toBe('below');
  });

  test('slots below the horizon are not listed', () => {
    const found = slotFromBearing({
      station: hut,
      azimuthDeg: 180,
      elevationDeg: 36,
      orbitalLongitudesDeg: [9, 170],
    });
    expect(found.slots.map((slot) => slot.orbitalLongitudeDeg)).toEqual([9]);
  });

  test.each([
    ['orbitalLongitudesDeg', { orbitalLongitudesDeg: [] }, 'empty'],
    ['orbitalLongitudesDeg', { orbitalLongitudesDeg: [Number.NaN] }, 'not-finite'],
    ['elevationDeg', { elevationDeg: 91 }, 'out-of-range'],
    ['azimuthWithinDeg', { azimuthWithinDeg: 0 }, 'out-of-range'],
  ])('refuses a bad %s', (parameter, bad, code) => {
    const good = { station: hut, azimuthDeg: 180, elevationDeg: 36, orbitalLongitudesDeg: slots };
    expect(() => slotFromBearing({ ...good, ...bad })).toThrow(
      expect.objectContaining({ parameter, code }),
    );
  });
});
