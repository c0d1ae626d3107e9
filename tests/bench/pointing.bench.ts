/** Look angles beside a loop with nothing but their trigonometry, and beside a general-purpose orbit library. */

import * as satellite from 'satellite.js';
import { randomStream } from '../../src/numeric/random.js';
import { lookAngles } from '../../src/pointing/look/lookAngles.js';
import { lookAnglesAndSkewBatch } from '../../src/pointing/look/lookAnglesAndSkewBatch.js';
import { lookAnglesBatch } from '../../src/pointing/look/lookAnglesBatch.js';
import { polarizationSkewBatch } from '../../src/pointing/look/polarizationSkewBatch.js';
import { severalSlots } from '../../src/pointing/reflector/severalSlots.js';
import { type BenchRow, measure } from './measure.js';

const ROWS = 20000;

/** The trigonometry and square roots of a look angle with the fewest operations around them. */
function bareTrigonometry(
  latitudeDeg: number,
  longitudeDeg: number,
  heightM: number,
  slotDeg: number,
) {
  const degree = Math.PI / 180;
  const sinLatitude = Math.sin(latitudeDeg * degree);
  const cosLatitude = Math.cos(latitudeDeg * degree);
  const normalKm = 6378.137 / Math.sqrt(1 - 0.0066943799901413165 * sinLatitude * sinLatitude);
  const heightKm = heightM / 1000;
  const difference = (slotDeg - longitudeDeg) * degree;
  const outKm = 42164.169 * Math.cos(difference) - (normalKm + heightKm) * cosLatitude;
  const eastKm = 42164.169 * Math.sin(difference);
  const axisKm = -(normalKm * 0.9933056200098587 + heightKm) * sinLatitude;
  const northKm = cosLatitude * axisKm - sinLatitude * outKm;
  const upKm = cosLatitude * outKm + sinLatitude * axisKm;
  const horizontalKm = Math.sqrt(eastKm * eastKm + northKm * northKm);
  return {
    azimuth: Math.atan2(eastKm, northKm) / degree,
    elevation: Math.atan2(upKm, horizontalKm) / degree,
    range: Math.sqrt(horizontalKm * horizontalKm + upKm * upKm),
  };
}

export default function pointingBench(): BenchRow[] {
  const random = randomStream(3);
  const column = (from: number, to: number) =>
    Float64Array.from({ length: ROWS }, () => from + (to - from) * random.uniform());
  const latitudeDeg = column(-75, 75);
  const longitudeDeg = column(-180, 180);
  const heightM = column(0, 3000);
  const orbitalLongitudeDeg = longitudeDeg.map((value) => value + 50 * (random.uniform() - 0.5));
  const at = (values: Float64Array, row: number): number => values[row] as number;
  const degree = Math.PI / 180;

  const scalar = measure('pointing, one call', ROWS, [
    {
      name: 'bare trigonometry',
      run: () => {
        let sum = 0;
        for (let row = 0; row < ROWS; row++) {
          const look = bareTrigonometry(
            at(latitudeDeg, row),
            at(longitudeDeg, row),
            at(heightM, row),
            at(orbitalLongitudeDeg, row),
          );
          sum += look.azimuth + look.elevation + look.range;
        }
        return sum;
      },
    },
    {
      name: 'lookAngles',
      budgetRatio: 1.5,
      run: () => {
        let sum = 0;
        for (let row = 0; row < ROWS; row++) {
          const look = lookAngles(
            {
              latitudeDeg: at(latitudeDeg, row),
              longitudeDeg: at(longitudeDeg, row),
              heightM: at(heightM, row),
            },
            at(orbitalLongitudeDeg, row),
          );
          sum += look.kind === 'overhead' ? 0 : look.azimuthDeg;
          sum += look.elevationDeg + look.slantRangeKm;
        }
        return sum;
      },
    },
    {
      name: 'satellite.js ecfToLookAngles',
      run: () => {
        let sum = 0;
        for (let row = 0; row < ROWS; row++) {
          const slot = at(orbitalLongitudeDeg, row) * degree;
          const look = satellite.ecfToLookAngles(
            {
              latitude: at(latitudeDeg, row) * degree,
              longitude: at(longitudeDeg, row) * degree,
              height: at(heightM, row) / 1000,
            },
            { x: 42164.169 * Math.cos(slot), y: 42164.169 * Math.sin(slot), z: 0 },
          );
          sum += look.azimuth + look.elevation + look.rangeSat;
        }
        return sum;
      },
    },
  ]);

  const out = {
    azimuthDeg: new Float64Array(ROWS),
    elevationDeg: new Float64Array(ROWS),
    slantRangeKm: new Float64Array(ROWS),
  };
  const batch = measure('pointing, columns', ROWS, [
    {
      name: 'bare trigonometry',
      run: () => {
        for (let row = 0; row < ROWS; row++) {
          const look = bareTrigonometry(
            at(latitudeDeg, row),
            at(longitudeDeg, row),
            at(heightM, row),
            at(orbitalLongitudeDeg, row),
          );
          out.azimuthDeg[row] = look.azimuth;
          out.elevationDeg[row] = look.elevation;
          out.slantRangeKm[row] = look.range;
        }
        return at(out.azimuthDeg, ROWS >> 1);
      },
    },
    {
      name: 'lookAnglesBatch',
      budgetRatio: 1.15,
      run: () =>
        at(
          lookAnglesBatch({ latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg }, out)
            .azimuthDeg,
          ROWS >> 1,
        ),
    },
  ]);

  const where = { latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg };
  const both = measure('pointing, angles and skew in columns', ROWS, [
    {
      name: 'lookAnglesBatch, then polarizationSkewBatch',
      run: () => {
        lookAnglesBatch(where, out);
        return at(polarizationSkewBatch(where).skewDeg, ROWS >> 1);
      },
    },
    {
      name: 'lookAnglesAndSkewBatch',
      budgetRatio: 1,
      run: () => at(lookAnglesAndSkewBatch(where, out).skewDeg, ROWS >> 1),
    },
  ]);

  const search = {
    station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
    slots: [7.2, 16.4, 21.8].map((slot) => ({ orbitalLongitudeDeg: slot, frequenciesGHz: [11.7] })),
    reflector: { diameterM: 0.9, focalLengthM: 0.54, offsetAngleDeg: 24 },
  };
  const several = measure('pointing, several slots', 1, [
    {
      name: 'severalSlots, three slots',
      run: () => {
        const found = severalSlots(search);
        return found.kind === 'placed' ? found.worstWeightedLossDb : 0;
      },
    },
  ]);
  return [...scalar, ...batch, ...both, ...several];
}
