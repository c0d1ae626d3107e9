/** The feed place with the greatest sum of fields, against every place of a grid about it. */

import { describe, expect, test } from 'vitest';
import { bestFieldPlace, followedFieldPlace } from '../../src/pointing/reflector/fieldPlace.js';
import { type BeamCosines, fieldLossDb } from '../../src/pointing/reflector/reflectorField.js';
import { apertureOf, type FeedPlace } from '../../src/pointing/reflector/reflectorOptics.js';
import { scanVariance } from '../../src/pointing/reflector/scanVariance.js';
import { checkedSeveralSlots } from '../../src/pointing/reflector/severalSlotsInput.js';
import { runs } from '../support/runs.js';
import { hut, ku } from './hutReflector.js';

const { shape } = checkedSeveralSlots({
  station: hut,
  slots: [ku(16.4), ku(21.8)],
  reflector: { diameterM: 1.6, focalLengthM: 0.95, offsetAngleDeg: 20 },
});
const aperture = apertureOf(shape);

/** The least loss of a grid of feed places, the grid drawn together about the best three times. */
function leastOnGrid(frequencyGHz: number, middle: FeedPlace, beam: BeamCosines): number {
  let [best, least] = [middle, Number.POSITIVE_INFINITY];
  for (const stepM of [0.005, 0.002, 0.0007]) {
    const [right, up, along] = best;
    for (let i = -7; i <= 7; i++)
      for (let j = -7; j <= 7; j++)
        for (let k = -12; k <= 12; k++) {
          const place: FeedPlace = [right + i * stepM, up + j * stepM, along + k * stepM];
          const lossDb = fieldLossDb(aperture, frequencyGHz, place, beam);
          if (lossDb < least) [best, least] = [place, lossDb];
        }
  }
  return least;
}

describe('best feed place', () => {
  // Two beamwidths aside there is one focus; some nine beamwidths aside there are two, 4 cm apart.
  test.each(
    [
      [19.7, 0.0937, -0.023],
      [19.7, 0.0937, -0.0228],
      [11.7, 0.0937, -0.023],
      [11.7, 0.03, 0.01],
    ].slice(0, runs(4, 1)) as [number, number, number][],
  )(
    'at %d GHz, beam %d to the right and %d up: no place of a grid loses less',
    (frequencyGHz, rightCosine, upCosine) => {
      const beam = { rightCosine, upCosine };
      const start = scanVariance(aperture, rightCosine, upCosine).place;
      const found = bestFieldPlace(aperture, frequencyGHz, start, beam);
      const foundDb = fieldLossDb(aperture, frequencyGHz, found, beam);
      expect(foundDb).toBeLessThan(leastOnGrid(frequencyGHz, start, beam) + 1e-3);
      const near = { rightCosine: rightCosine + 5e-4, upCosine: upCosine + 5e-4 };
      const followed = followedFieldPlace(aperture, frequencyGHz, found, near);
      expect(fieldLossDb(aperture, frequencyGHz, followed, near)).toBeLessThan(
        leastOnGrid(frequencyGHz, start, near) + 1e-3,
      );
    },
  );
});
