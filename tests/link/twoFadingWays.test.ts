import { combinedAvailability, rainFade } from 'slantpath/link';
import { describe, expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';
import { exponential, PATH, TRANSPARENT } from './links.js';

describe('two fading ways', () => {
  // With an uplink that adds no noise of its own both fades come off the margin one for one.
  const marginDb = combinedMargin();
  function combinedMargin(): number {
    let low = 0;
    let high = 60;
    for (let i = 0; i < 60; i++) {
      const attenuationDb = (low + high) / 2;
      const out = combinedAvailability({
        link: TRANSPARENT,
        uplinkFade: () => ({ attenuationDb: 0 }),
        downlinkFade: () => ({ attenuationDb, rainDb: 0 }),
        relation: 'together',
      });
      if (out.kind === 'worse-than') high = attenuationDb;
      else low = attenuationDb;
    }
    return low;
  }

  publishedTable({
    part: 'link',
    quantity: 'availability with independent exponential fades on both ways',
    unit: '%',
    source:
      'sum of two exponential variables: exp(-M/a) (1 + M/a), and (a e^(-M/a) - b e^(-M/b)) / (a - b)',
    status: 'recomputed',
    limit: 2e-5,
    reason: 'quadrature over the uplink, whose own noise is small but not nothing',
    relative: true,
    count: 4,
    cases: () =>
      [
        [1.2, 1.2],
        [2, 2],
        [1, 2.5],
        [2.5, 1],
      ].map(([a = 1, b = 1]) => {
        const tail = (scale: number) => Math.exp(-marginDb / scale);
        const expected =
          a === b ? tail(a) * (1 + marginDb / a) : (a * tail(a) - b * tail(b)) / (a - b);
        const out = combinedAvailability({
          link: TRANSPARENT,
          uplinkFade: exponential(a),
          downlinkFade: exponential(b),
          relation: 'independent',
          fromPercent: 1e-4,
          toPercent: 100,
        });
        return {
          name: `up ${a} dB, down ${b} dB`,
          expected: 100 * expected,
          got: out.kind === 'available' ? out.exceededPercent : Number.NaN,
        };
      }),
  });

  test('together: the decibels of one percentage add', () => {
    const out = combinedAvailability({
      link: TRANSPARENT,
      uplinkFade: exponential(1),
      downlinkFade: exponential(2),
      relation: 'together',
      toPercent: 100,
    });
    expect(out.exceededPercent).toBeCloseTo(100 * Math.exp(-marginDb / 3), 3);
  });

  test('a way up that never fades leaves the way down alone', () => {
    const fade = rainFade({ ...PATH, rainRate001MmPerH: 90, rainHeightKm: 5 });
    const link = {
      ...TRANSPARENT,
      receiver: { diameterM: 0.6, noiseFigureDb: 1 },
      transponder: { ...TRANSPARENT.transponder, saturatedEirpDbw: 54 },
    };
    const still = { link, uplinkFade: () => ({ attenuationDb: 0 }), downlinkFade: fade } as const;
    const alone = combinedAvailability({ ...still, relation: 'together' });
    const both = combinedAvailability({ ...still, relation: 'independent' });
    expect(alone.kind).toBe('available');
    expect(both.exceededPercent).toBeCloseTo(alone.exceededPercent, 6);
  });
});
