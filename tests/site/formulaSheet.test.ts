/** The skew of the formula sheet: evaluated as printed, it has the value and the sign of the library. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { polarizationSkew } from 'slantpath/pointing';
import { compileFormula } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { sightLineKm } from '../../src/pointing/look/sightLine.js';

const page = readFileSync(
  fileURLToPath(new URL('../../docs/reference/formula-sheet.mdx', import.meta.url)),
  'utf8',
);
const section = /## Skew[^\n]*\n([\s\S]*?)\n## /.exec(page)?.[1] ?? '';

/** A printed fraction as the two typed formulas of numerator and denominator. */
function fractions(): readonly (readonly [string, string])[] {
  const typed = (tex: string) =>
    tex
      .replace(/\\(sin|cos|tan)\\(varphi|Delta)/g, (_, name, angle) => ` ${name}(${angle}) `)
      .replace(/\b([denu]) *(?=\(|(?:sin|cos)\b)/g, '$1 * ')
      .replaceAll('varphi', 'lat')
      .replaceAll('Delta', 'dlon');
  return [...section.matchAll(/\\frac\{([^{}]*)\}\{([^{}]*)\}/g)].map(
    ([, over = '', under = '']) => [typed(over), typed(under)] as const,
  );
}

/** Latitudes and offsets in longitude over the whole visible sky; longitudes and heights change on the way. */
const GRID = [-75, -44, -29.6, -5, 3, 12.5, 30, 46.4, 60, 75].flatMap((latitudeDeg, row) =>
  [-74.5, -50, -25, -12.2, 4, 12.2, 25, 50, 74.5].map((offDeg) => ({
    station: { latitudeDeg, longitudeDeg: 17 * row - 70, heightM: 300 * row },
    offDeg,
  })),
);

describe('the skew of the formula sheet', () => {
  test('is there twice: in full and short', () => expect(fractions().length).toBe(2));

  test.each([
    [0, 1e-9],
    [1, 0.34],
  ])('formula %i is that of the library within %f degree, sign and all', (which, limitDeg) => {
    const [over, under] = fractions()[which] ?? ['', ''];
    let compared = 0;
    for (const { station, offDeg } of GRID) {
      const orbitalLongitudeDeg = station.longitudeDeg + offDeg;
      const skew = polarizationSkew({ station, orbitalLongitudeDeg });
      if (skew.kind !== 'visible') continue;
      const [e, n, u] = sightLineKm(station, orbitalLongitudeDeg);
      const symbols = { lat: station.latitudeDeg, dlon: offDeg, e, n, u, d: Math.hypot(e, n, u) };
      const [y, x] = [over, under].map((typed) =>
        compileFormula(typed, Object.keys(symbols))(symbols),
      );
      const printedDeg = (Math.atan((y ?? Number.NaN) / (x ?? Number.NaN)) * 180) / Math.PI;
      // A line has no head: +89.9 and -89.9 are 0.2 degree apart.
      const apart = Math.abs(printedDeg - skew.skewDeg) % 180;
      expect(Math.min(apart, 180 - apart), `${station.latitudeDeg}, ${offDeg}`).toBeLessThan(
        limitDeg,
      );
      compared++;
    }
    expect(compared).toBeGreaterThan(60);
  });

  test('says what it is and which way it turns', () => {
    const words = section.replace(/\s+/g, ' ');
    expect(words).toContain("from the local vertical to the normal of the orbit's plane");
    expect(words).toContain(
      'positive clockwise as seen from behind the antenna, facing the satellite',
    );
  });
});
