/** Climate of a place: the first call, which decodes the grid, later ones, and a batch of stations. */

import {
  attenuationAt,
  attenuationAtBatch,
  climateAt,
  climateFromGrid,
  SHIPPED_CLIMATE_GRID,
} from '../../src/climate/index.js';
import { measure } from './measure.js';

const COUNT = 2000;
const latitudeDeg = Float64Array.from({ length: COUNT }, (_, i) => -60 + ((i * 7.31) % 120));
const longitudeDeg = Float64Array.from({ length: COUNT }, (_, i) => (i * 13.7) % 360);
const path = {
  frequencyGHz: 20,
  elevationDeg: 35,
  tiltDeg: 45,
  diameterM: 0.9,
  exceededPercent: 0.1,
};

function stationOf(row: number) {
  return {
    latitudeDeg: latitudeDeg[row] as number,
    longitudeDeg: longitudeDeg[row] as number,
    heightM: 100,
  };
}

export default () => [
  ...measure(
    'climateAt',
    COUNT,
    [
      {
        name: 'warm: one station',
        run: () => {
          let sum = 0;
          for (let row = 0; row < COUNT; row++) sum += climateAt(stationOf(row)).rainRate001MmPerH;
          return sum;
        },
      },
    ],
    15,
  ),
  ...measure(
    'climateAt',
    1,
    [
      {
        name: 'cold: the grid decoded, then one station',
        run: () => climateFromGrid(SHIPPED_CLIMATE_GRID)(stationOf(0)).rainRate001MmPerH,
      },
    ],
    7,
  ),
  ...measure(
    'attenuationAt',
    COUNT,
    [
      {
        name: 'climateAt and attenuationAt, station by station',
        run: () => {
          let sum = 0;
          for (let row = 0; row < COUNT; row++)
            sum += attenuationAt(climateAt(stationOf(row)), path).attenuationDb;
          return sum;
        },
      },
      {
        name: 'attenuationAtBatch',
        run: () =>
          attenuationAtBatch({ latitudeDeg, longitudeDeg, heightM: 100, ...path })
            .attenuationDb[0] as number,
        budgetRatio: 1,
      },
    ],
    15,
  ),
];
