/** Schema of the job file, version 1: the one place where its fields and intervals are fixed. */

import * as v from 'valibot';
import { distributionSchema } from './distributionSchema.js';
import { anyNumber, day, listOf, nameOf, numberFrom, text, words } from './fields.js';
import {
  horizonNorth,
  isothermHeightKm,
  polarization,
  rainSource,
  samples,
  twelve,
} from './sharedFields.js';

const carrier = v.strictObject({
  name: nameOf('Name of the carrier, its own within the slot'),
  frequencyGHz: numberFrom(1, 60, 'Frequency in GHz'),
  polarization,
  eirpDbw: numberFrom(0, 90, 'EIRP towards the station in dBW'),
  symbolRateMBd: numberFrom(0.01, 500, 'Symbol rate in megabaud'),
  mode: nameOf('Mode of DVB-S2 as the standard writes it, such as QPSK 3/4'),
  implementationLossDb: v.exactOptional(
    numberFrom(0, 10, 'Loss of the demodulator against the ideal threshold in dB, by default 0.8'),
  ),
  intermediateFrequencyMHz: numberFrom(5, 3000, 'Frequency on the cable in MHz'),
});

const testPoint = nameOf('`antenna`, or the name of an outlet or receiver');
const limitPoint = nameOf('`antenna`, the name of an outlet or receiver, or `outlets` for all');

const reading = {
  testPoint,
  slot: nameOf('Name of the slot'),
  carrier: nameOf('Name of the carrier'),
  expandedUncertaintyDb: numberFrom(
    0.01,
    20,
    'Expanded uncertainty (k = 2) of the instrument in dB',
  ),
};

const quantity = <const T extends string>(word: T, meaning: string) =>
  v.pipe(v.literal(word), v.description(`\`${word}\`: ${meaning}.`));

/** The schema; what it lets through is a {@link JobFile1}. */
export const jobSchema1 = v.strictObject({
  format: v.pipe(v.literal('slantpath-job'), v.description('What the document is.')),
  version: v.pipe(v.literal(1), v.description('Version of the format.')),
  title: text(120, 'Title of the sheet'),
  date: day('Day of the work; the declination is that of this day'),
  station: v.pipe(
    v.strictObject({
      name: nameOf('Name of the place on the sheet'),
      latitudeDeg: numberFrom(-90, 90, 'Geodetic latitude in degrees, north positive'),
      longitudeDeg: anyNumber('Longitude in degrees, east positive, any turn'),
      heightM: numberFrom(-1000, 9000, 'Height above sea level in metres'),
    }),
    v.description('Where the antenna stands.'),
  ),
  antenna: v.pipe(
    v.strictObject({
      diameterM: numberFrom(0.2, 15, 'Diameter of the aperture in metres'),
      apertureEfficiencyRatio: numberFrom(0.3, 0.9, 'Aperture efficiency as a ratio'),
      offsetAngleDeg: numberFrom(0, 40, 'Offset angle in degrees, 0 for a centre-fed reflector'),
      focalLengthM: v.exactOptional(
        numberFrom(0.05, 15, 'Focal length in metres, by default 0.6 of the diameter'),
      ),
      surfaceErrorMm: v.exactOptional(
        numberFrom(0, 10, 'Surface error, r.m.s., in millimetres, by default 0'),
      ),
    }),
    v.description('The reflector.'),
  ),
  receiver: v.pipe(
    v.strictObject({
      noiseFigureDb: numberFrom(0.1, 10, 'Noise figure in dB'),
      gainDb: numberFrom(20, 90, 'Gain in dB'),
      feedLossDb: v.exactOptional(
        numberFrom(0, 10, 'Loss between aperture and unit in dB, by default 0'),
      ),
    }),
    v.description('The outdoor receiving unit.'),
  ),
  slots: listOf(
    v.strictObject({
      name: nameOf('Name of the slot, its own'),
      orbitalLongitudeDeg: anyNumber('Longitude of the slot in degrees, east positive'),
      polarizationTiltDeg: v.exactOptional(
        numberFrom(
          -90,
          90,
          'Tilt of the satellite polarization in degrees, clockwise seen from behind the antenna, by default 0',
        ),
      ),
      carriers: listOf(carrier, [1, 200], 'Its carriers.'),
    }),
    [1, 16],
    'The orbital slots.',
  ),
  horizon: v.pipe(
    v.strictObject({
      north: horizonNorth,
      samples: listOf(
        v.strictObject({
          azimuthDeg: numberFrom(-360, 720, 'Bearing in degrees, clockwise from the stated north'),
          elevationDeg: numberFrom(-10, 89, 'Elevation of the skyline in degrees'),
        }),
        [0, 2000],
        'Sightings; between neighbours at most 45 degrees apart the skyline runs straight, elsewhere it is not known.',
      ),
    }),
    v.description('The horizon as sighted.'),
  ),
  rain: v.pipe(
    v.variant('source', [
      v.strictObject({ source: rainSource('climate-grid'), isothermHeightKm }),
      v.strictObject({
        source: rainSource('measured'),
        rainRate001MmPerH: numberFrom(
          0,
          250,
          'Rain rate exceeded for 0.01 % of the average year in mm/h',
        ),
        years: numberFrom(0.5, 200, 'Years of measurement behind it'),
        isothermHeightKm,
      }),
      v.strictObject({
        source: rainSource('monthly-normals'),
        rainfallMm: twelve(0, 3000, 'Mean monthly rainfall in mm, January first'),
        temperatureC: twelve(-60, 50, 'Mean monthly temperature in degrees Celsius, January first'),
        isothermHeightKm,
      }),
    ]),
    v.description('Where the rain statistics come from.'),
  ),
  target: v.pipe(
    v.strictObject({
      exceededPercent: numberFrom(
        0.001,
        5,
        'Share of the average year in per cent for which reception may fail',
      ),
      pointingLossDb: numberFrom(0.01, 3, 'Largest pointing loss left after peaking in dB'),
    }),
    v.description('What was promised.'),
  ),
  distribution: distributionSchema,
  peaking: listOf(
    v.strictObject({
      axis: words('Axis that was turned', {
        azimuth: 'round the mast, on its scale',
        elevation: 'up and down',
      }),
      slot: nameOf('Name of the slot'),
      carrier: nameOf('Name of the carrier that was watched'),
      restDeg: numberFrom(-720, 720, 'Where the axis was left, in degrees of the samples'),
      degPerTurn: numberFrom(0.001, 45, 'Degrees of the axis per turn of its adjuster'),
      bracketing: v.exactOptional(
        v.pipe(
          v.strictObject({
            turnsOut: numberFrom(0.01, 100, 'Turns off the peak until the reference level'),
            turnsBack: numberFrom(
              0.01,
              200,
              'Turns back, through the peak, until the same level returned',
            ),
            dropDb: numberFrom(0.1, 30, 'Drop below the highest level seen in dB'),
            resolutionDb: numberFrom(0, 3, 'Step of the level display in dB'),
          }),
          v.description('Equal-level bracketing; none by default.'),
        ),
      ),
      samples,
    }),
    [0, 100],
    'What was read while peaking; may be empty before the visit.',
  ),
  readings: listOf(
    v.variant('quantity', [
      v.strictObject({
        ...reading,
        quantity: quantity('level', 'level per carrier'),
        levelDbuv: numberFrom(-20, 140, 'Level in dBuV at 75 ohm'),
      }),
      v.strictObject({
        ...reading,
        quantity: quantity('carrier-to-noise', 'ratio in the bandwidth of the symbol rate'),
        carrierToNoiseDb: numberFrom(-20, 60, 'Carrier-to-noise ratio in dB'),
      }),
    ]),
    [0, 5000],
    'Readings; may be empty before the visit.',
  ),
  limits: listOf(
    v.variant('quantity', [
      v.strictObject({
        testPoint: limitPoint,
        quantity: quantity('level', 'level per carrier'),
        minimumDbuv: numberFrom(-20, 140, 'Lowest level that conforms in dBuV'),
        maximumDbuv: numberFrom(-20, 140, 'Highest level that conforms in dBuV'),
      }),
      v.strictObject({
        testPoint: limitPoint,
        quantity: quantity('carrier-to-noise', 'ratio in the bandwidth of the symbol rate'),
        minimumDb: numberFrom(-20, 60, 'Lowest ratio that conforms in dB'),
      }),
    ]),
    [1, 500],
    'Limits at test points.',
  ),
});
