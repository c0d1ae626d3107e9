/** One reflector for several slots: what is shared, what collides, losses above 3 dB, and what is refused. */

import { type SeveralSlotsInput, severalSlots } from 'slantpath/pointing';
import { describe, expect, test } from 'vitest';
import { RADIANS_PER_DEGREE } from '../../src/numeric/angle.js';
import {
  dot,
  type EastNorthUp,
  pictureAxes,
  sightLineKm,
  skyVector,
  unit,
} from '../../src/pointing/look/sightLine.js';
import { beside } from '../../src/pointing/reflector/slotLosses.js';
import { hut, ku, lossesOf, reflector, worst } from './hutReflector.js';

describe('above 3 dB of loss', () => {
  /** Sum of fields over an aperture of its own, for a feed place and a beam, as a loss in dB. */
  function summedLossDb(place: readonly number[], right: number, up: number): number {
    const { diameterM, focalLengthM, offsetAngleDeg } = reflector;
    const bend = 2 * offsetAngleDeg * RADIANS_PER_DEGREE;
    const middle = 2 * focalLengthM * Math.tan(bend / 2);
    const forward = Math.sqrt(1 - right * right - up * up);
    const perM = (2 * Math.PI * 11.7) / 0.299792458;
    let [re, im, all] = [0, 0, 0];
    for (let ring = 0; ring < 12; ring++)
      for (let spoke = 0; spoke < 32; spoke++) {
        const node = (ring + 0.5) / 12;
        const radius = (diameterM / 2) * Math.sqrt(node);
        const angle = ((spoke + 0.5) * 2 * Math.PI) / 32;
        const x = radius * Math.cos(angle);
        const y = middle + radius * Math.sin(angle);
        const z = (x * x + y * y) / (4 * focalLengthM);
        const [u, v, w] = [
          x,
          y * Math.cos(bend) + (z - focalLengthM) * Math.sin(bend),
          y * Math.sin(bend) - (z - focalLengthM) * Math.cos(bend),
        ];
        const ray = Math.sqrt(
          (u - (place[0] ?? 0)) ** 2 + (v - (place[1] ?? 0)) ** 2 + (w - (place[2] ?? 0)) ** 2,
        );
        const phase = perM * (ray - right * x - up * y - forward * z);
        const share = 10 ** ((-10 * node) / 20);
        all += share;
        re += share * Math.cos(phase);
        im += share * Math.sin(phase);
      }
    return -20 * Math.log10(Math.hypot(re, im) / all);
  }
  /** The least of it over feed places, by trial steps along the axes from a start. */
  function leastLossDb(start: readonly number[], right: number, up: number): number {
    let place = [...start];
    let least = summedLossDb(place, right, up);
    for (let step = 0.004; step > 1e-4; step /= 2)
      for (let moved = true, turns = 0; moved && turns < 40; turns++) {
        moved = false;
        for (const axis of [0, 1, 2])
          for (const by of [step, -step]) {
            const tried = place.map((x, i) => (i === axis ? x + by : x));
            const loss = summedLossDb(tried, right, up);
            if (loss < least - 1e-9) [least, place, moved] = [loss, tried, true];
          }
      }
    return least;
  }

  const slots = [ku(5), ku(16), ku(24)];
  const found = severalSlots({ station: hut, reflector, slots });
  if (found.kind !== 'placed') throw new Error('hidden');

  test('the losses are those of the sum of fields with the best feed places, and flagged', () => {
    for (const { rightDeg, aboveDeg, feed, bands } of found.slots) {
      const loss = leastLossDb(
        [feed.rightM, feed.upM, feed.alongM],
        Math.sin(rightDeg * RADIANS_PER_DEGREE),
        Math.sin(aboveDeg * RADIANS_PER_DEGREE),
      );
      const [band] = bands;
      expect(Math.abs(loss - (band?.lossDb ?? Number.NaN))).toBeLessThan(0.05);
      expect(band?.beyondModel).toBe(loss > 3);
    }
    expect(found.worstWeightedLossDb).toBeGreaterThan(4);
  });

  test('no boresight around it is better', () => {
    const lines = slots.map((slot) => unit(sightLineKm(hut, slot.orbitalLongitudeDeg)));
    const at = skyVector(found.boresight.azimuthDeg, found.boresight.elevationDeg);
    const worstAt = (boresight: EastNorthUp) => {
      const { right, up } = pictureAxes(boresight);
      return Math.max(
        ...lines.map((line, index) => {
          const { feed } = found.slots[index] as (typeof found.slots)[number];
          return leastLossDb([feed.rightM, feed.upM, feed.alongM], dot(line, right), dot(line, up));
        }),
      );
    };
    const here = worstAt(at);
    for (const [right, up] of [
      [0.3, 0],
      [-0.3, 0],
      [0, 0.5],
      [0, -0.5],
      [2, 0],
      [0, 2],
    ] as const)
      expect(worstAt(beside(at, right, up))).toBeGreaterThan(here - 0.02);
  });

  test('below it nothing is flagged', () => {
    const near = severalSlots({ station: hut, reflector, slots: [ku(7.2), ku(16.4), ku(21.8)] });
    expect(lossesOf(near)).toBe('rays');
    expect(worst(near)).toBeLessThan(3);
  });
});

describe('several slots', () => {
  test('one slot: boresight on it, no loss', () => {
    const one = severalSlots({ station: hut, reflector, slots: [ku(16.4)] });
    if (one.kind !== 'placed') throw new Error('hidden');
    expect(one.boresight.azimuthDeg).toBeCloseTo(170.643055, 3);
    expect(one.worstWeightedLossDb).toBeLessThan(1e-4);
    expect(one.tiltDeg).toBe(0);
  });

  test('two equal slots share the loss, and their feeds stand on the other side', () => {
    const both = severalSlots({ station: hut, reflector, slots: [ku(16.4), ku(21.8)] });
    if (both.kind !== 'placed') throw new Error('hidden');
    const [west, east] = both.slots;
    expect(west?.bands[0]?.lossDb).toBeCloseTo(east?.bands[0]?.lossDb ?? Number.NaN, 3);
    // The eastern slot stands to the left (azimuth 163 against 171), so its feed stands to the right.
    expect(east?.rightDeg).toBeLessThan(0);
    expect(east?.feed.rightM).toBeGreaterThan(0);
    expect(both.collisions).toEqual([]);
    // The arc falls towards the east, seen to the left: the row of feeds falls to the other side.
    expect(west?.errorDeg).toBe(0);
  });

  test('a rigid bar at the places of the free feeds loses nothing more than the straight bar costs', () => {
    const free = severalSlots({ station: hut, reflector, slots: [ku(16.4), ku(21.8)] });
    if (free.kind !== 'placed') throw new Error('hidden');
    const [a, b] = free.slots;
    const distance = Math.hypot(
      (a?.feed.rightM ?? 0) - (b?.feed.rightM ?? 0),
      (a?.feed.upM ?? 0) - (b?.feed.upM ?? 0),
    );
    const rigid = severalSlots({
      station: hut,
      reflector,
      slots: [ku(16.4), ku(21.8)],
      feeds: { kind: 'rigid', placesM: [-distance / 2, distance / 2] },
    });
    if (rigid.kind !== 'placed') throw new Error('hidden');
    expect(rigid.worstWeightedLossDb).toBeLessThan(free.worstWeightedLossDb + 0.02);
    expect(Math.max(...rigid.slots.map((slot) => slot.errorDeg))).toBeLessThan(0.07);
  });

  test('feeds for neighbouring slots collide', () => {
    const near = severalSlots({
      station: hut,
      reflector,
      slots: [ku(16.4), ku(19.2)],
      feeds: { kind: 'free', feedDiameterM: 0.06 },
    });
    if (near.kind !== 'placed') throw new Error('hidden');
    expect(near.collisions[0]).toMatchObject({ orbitalLongitudesDeg: [16.4, 19.2] });
    const { distanceM = 0, overlapM = 0 } = near.collisions[0] ?? {};
    expect(distanceM + overlapM).toBeCloseTo(0.06, 12);
  });

  test('a hidden slot is said', () => {
    expect(severalSlots({ station: hut, reflector, slots: [ku(16.4), ku(170)] })).toEqual({
      kind: 'below-horizon',
      hiddenLongitudesDeg: [170],
    });
  });

  const good: SeveralSlotsInput = { station: hut, reflector, slots: [ku(16.4), ku(21.8)] };
  test.each([
    ['slots', { ...good, slots: [] }, 'empty'],
    ['slots', { ...good, slots: [ku(-50), ku(60)] }, 'inconsistent'],
    [
      'slots[1].frequenciesGHz',
      { ...good, slots: [ku(1), { orbitalLongitudeDeg: 2, frequenciesGHz: [11700] }] },
      'out-of-range',
    ],
    [
      'slots[0].frequenciesGHz',
      { ...good, slots: [{ orbitalLongitudeDeg: 2, frequenciesGHz: [] }] },
      'empty',
    ],
    ['slots[0].orbitalLongitudeDeg', { ...good, slots: [{ frequenciesGHz: [12] }] }, 'missing'],
    [
      'reflector.focalLengthM',
      { ...good, reflector: { ...reflector, focalLengthM: 540 } },
      'out-of-range',
    ],
    ['reflector', { ...good, reflector: undefined }, 'missing'],
    ['feeds.kind', { ...good, feeds: { kind: 'loose' } }, 'not-an-option'],
    ['feeds.placesM', { ...good, feeds: { kind: 'rigid', placesM: [0] } }, 'length-mismatch'],
    ['feeds.placesM', { ...good, feeds: { kind: 'rigid', placesM: [0, 70] } }, 'out-of-range'],
  ])('refuses bad %s', (parameter, input, code) => {
    expect(() => severalSlots(input as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    );
  });
});
