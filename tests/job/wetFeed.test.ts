/** Water on the cover of the feed in the plan of a job. */

import { describe, expect, test } from 'vitest';
import { planJobWith } from '../../src/job/index.js';
import { filmThicknessMm, layerLoss } from '../../src/propagation/index.js';

const climateOf = (rainRate001MmPerH: number) => () => ({
  ...CLIMATE,
  rainRate001MmPerH,
});
/** A climate of round figures; only its rain rate is read here. */
const CLIMATE = {
  rainSource: 'measured',
  rainRate001MmPerH: 60,
  rainUncertainty: { standardUncertaintyRatio: 0.2 },
  rainHeightKm: 5,
} as never as ReturnType<NonNullable<Parameters<typeof planJobWith>[1]['climate']>>;

const job = (frequenciesGHz: readonly number[], feeds?: object) => ({
  format: 'slantpath-job',
  version: 2,
  station: { latitudeDeg: 1, longitudeDeg: 33 },
  slots: [
    {
      name: 'one',
      orbitalLongitudeDeg: 30,
      carriers: frequenciesGHz.map((frequencyGHz, index) => ({
        name: `c${index}`,
        frequencyGHz,
        polarization: 'horizontal',
      })),
    },
    { name: 'two', orbitalLongitudeDeg: 33 },
  ],
  mounts: [{ name: 'dish', kind: 'fixed', slots: ['one', 'two'], ...(feeds ? { feeds } : {}) }],
});
const wet = (rate: number, ...given: Parameters<typeof job>) =>
  planJobWith(JSON.stringify(job(...given)), { climate: climateOf(rate) }).rain?.wetFeed;

describe('water on the cover of the feed', () => {
  test('by the film and the layer of the highest frequency, on a feed of 60 mm where none is given', () => {
    const filmMm = filmThicknessMm({ rainRateMmPerH: 60, radiusM: 0.03 });
    const loss = layerLoss({
      frequencyGHz: 12.5,
      on: 'cover',
      layer: 'water',
      thicknessMm: filmMm,
    });
    expect(wet(60, [10.9, 12.5, 11.7])).toEqual({
      filmMm,
      frequencyGHz: 12.5,
      lossDb: loss.kind === 'loss' && loss.lossDb,
      mostDb: loss.kind === 'loss' && loss.mostDb,
    });
  });

  test('a wider feed carries a thicker film, by the cube root of its width', () => {
    const narrow = wet(60, [12.5], { kind: 'free', feedDiameterM: 0.04 });
    const wide = wet(60, [12.5], { kind: 'free', feedDiameterM: 0.32 });
    expect((wide?.filmMm ?? 0) / (narrow?.filmMm ?? 1)).toBeCloseTo(2, 10);
  });

  test('is not said without a carrier, nor beyond the heaviest rain that films are stated for', () => {
    expect(wet(60, [])).toBeNull();
    expect(wet(301, [12.5])).toBeNull();
    expect(wet(300, [12.5])).not.toBeNull();
  });
});
