/** Fields that both versions of the job file have. */

import * as v from 'valibot';
import { listOf, numberFrom, words } from './fields.js';

export const polarization = words('Polarization at the satellite', {
  horizontal: 'linear, horizontal',
  vertical: 'linear, vertical',
  right: 'right-hand circular',
  left: 'left-hand circular',
});

export const horizonNorth = words('North from which bearings were taken', {
  true: 'true north',
  magnetic: 'magnetic north, by a compass',
});

export const isothermHeightKm = v.exactOptional(
  numberFrom(
    0,
    7,
    'Mean height of the 0 degree isotherm in kilometres above sea level, by default from the climate grid',
  ),
);

const RAIN_SOURCES = {
  'climate-grid': 'from the embedded grid of the ITU-R maps',
  measured: 'a rain rate measured near the place',
  'monthly-normals': 'twelve monthly normals, from which the rain rate follows (P.837-7)',
} as const;

/** One of the sources of rain statistics. */
export const rainSource = <const T extends keyof typeof RAIN_SOURCES>(word: T) =>
  v.pipe(v.literal(word), v.description(`\`${word}\`: ${RAIN_SOURCES[word]}.`));

/** Twelve values, January first. */
export const twelve = (minimum: number, maximum: number, meaning: string) =>
  v.pipe(
    v.array(numberFrom(minimum, maximum, meaning)),
    v.length(12),
    v.description(`${meaning}; twelve values, ${minimum} to ${maximum}.`),
  );

/** Positions and levels read while peaking. */
export const samples = v.pipe(
  v.strictObject({
    positionDeg: listOf(
      numberFrom(-720, 720, 'Position of the axis in degrees'),
      [1, 1000],
      'Positions of the axis in degrees, in the order of reading.',
    ),
    levelDbm: listOf(
      numberFrom(-150, 50, 'Level in dBm'),
      [1, 1000],
      'Levels in dBm, one per position.',
    ),
  }),
  v.description('Positions and the levels read there.'),
);
