import { describe, expect, it } from 'vitest';
import { stackedLabels } from '../../site/src/lib/drawing/stackedLabels.js';

const room = { left: 40, right: 420, top: 0 };

/** Where each label was put, read from the drawing. */
const placesIn = (svg: string) =>
  [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*>([^<]*)</g)].map(([, x, y, text]) => ({
    x: Number(x),
    y: Number(y),
    text: text ?? '',
  }));

describe('stackedLabels', () => {
  it('puts a lone label straight above its point, without a line', () => {
    const svg = stackedLabels([{ x: 200, y: 100, text: '16.4° E' }], room);
    expect(placesIn(svg)).toEqual([{ x: 200, y: 91, text: '16.4° E' }]);
    expect(svg).not.toContain('<path');
  });

  it('keeps the labels of neighbours apart, and ties the higher ones to their points', () => {
    const points = Array.from({ length: 7 }, (_, i) => ({
      x: 200 + 4 * i,
      y: 120,
      text: `${7 + i}.0° E`,
    }));
    const svg = stackedLabels(points, room);
    const places = placesIn(svg);
    expect(places).toHaveLength(7);
    for (const [i, a] of places.entries())
      for (const b of places.slice(i + 1)) {
        // A character is at most 8 units wide, a line 15 high.
        const wide = 4 * (a.text.length + b.text.length);
        expect(Math.abs(a.x - b.x) >= wide || Math.abs(a.y - b.y) >= 15).toBe(true);
      }
    expect(svg).toContain('<path');
  });

  it('stays within the room at every edge', () => {
    const corners = [
      { x: 41, y: 8, text: '102.0° E' },
      { x: 419, y: 8, text: '103.0° E' },
    ];
    for (const { x, y, text } of placesIn(stackedLabels(corners, room))) {
      expect(x - 4 * text.length).toBeGreaterThanOrEqual(room.left);
      expect(x + 4 * text.length).toBeLessThanOrEqual(room.right);
      expect(y).toBeGreaterThan(14);
    }
  });
});
