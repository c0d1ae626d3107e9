/** Schema of the job file, version 1: the one place where its fields and intervals are fixed. */

import * as v from 'valibot';
import { distributionSchema } from './distributionSchema.js';
import { anyNumber, name, numberFrom } from './fields.js';
import type { JobFile } from './jobFile.js';

const quantityFields = {
  testPoint: name,
} as const;

const carrier = v.strictObject({
  name,
  frequencyGHz: numberFrom(1, 60, 'Frequency in GHz'),
  polarization: v.picklist(['horizontal', 'vertical', 'right', 'left']),
  eirpDbw: numberFrom(0, 90, 'EIRP towards the station in dBW'),
  symbolRateMBd: numberFrom(0.01, 500, 'Symbol rate in megabaud'),
  mode: v.pipe(name, v.description('Mode of DVB-S2, such as QPSK 3/4.')),
  implementationLossDb: v.exactOptional(numberFrom(0, 10, 'Loss of the demodulator in dB')),
  intermediateFrequencyMHz: numberFrom(5, 3000, 'Frequency on the cable in MHz'),
});

const reading = {
  ...quantityFields,
  slot: name,
  carrier: name,
  expandedUncertaintyDb: numberFrom(0.01, 20, 'Expanded uncertainty (k = 2) in dB'),
};

const twelve = (minimum: number, maximum: number, meaning: string) =>
  v.pipe(v.array(numberFrom(minimum, maximum, meaning)), v.length(12));

const isothermHeightKm = v.exactOptional(
  numberFrom(0, 7, 'Mean height of the 0 degree isotherm in kilometres'),
);

/** The schema; what it lets through is a {@link JobFile}. */
export const jobSchema: v.GenericSchema<unknown, JobFile> = v.strictObject({
  format: v.literal('slantpath-job'),
  version: v.literal(1),
  title: v.pipe(v.string(), v.minLength(1), v.maxLength(120)),
  date: v.pipe(v.string(), v.isoDate()),
  station: v.strictObject({
    name,
    latitudeDeg: numberFrom(-90, 90, 'Geodetic latitude in degrees, north positive'),
    longitudeDeg: anyNumber('Longitude in degrees, east positive, any turn.'),
    heightM: numberFrom(-1000, 9000, 'Height above sea level in metres'),
  }),
  antenna: v.strictObject({
    diameterM: numberFrom(0.2, 15, 'Diameter in metres'),
    apertureEfficiencyRatio: numberFrom(0.3, 0.9, 'Aperture efficiency'),
    offsetAngleDeg: numberFrom(0, 40, 'Offset angle in degrees'),
    focalLengthM: v.exactOptional(numberFrom(0.05, 15, 'Focal length in metres')),
    surfaceErrorMm: v.exactOptional(numberFrom(0, 10, 'Surface error, r.m.s., in millimetres')),
  }),
  receiver: v.strictObject({
    noiseFigureDb: numberFrom(0.1, 10, 'Noise figure in dB'),
    gainDb: numberFrom(20, 90, 'Gain in dB'),
    feedLossDb: v.exactOptional(numberFrom(0, 10, 'Loss before the unit in dB')),
  }),
  slots: v.pipe(
    v.array(
      v.strictObject({
        name,
        orbitalLongitudeDeg: anyNumber('Longitude of the slot in degrees, east positive.'),
        polarizationTiltDeg: v.exactOptional(
          numberFrom(-90, 90, 'Tilt of the satellite polarization in degrees'),
        ),
        carriers: v.pipe(v.array(carrier), v.minLength(1), v.maxLength(200)),
      }),
    ),
    v.minLength(1),
    v.maxLength(40),
  ),
  horizon: v.strictObject({
    north: v.picklist(['true', 'magnetic']),
    samples: v.array(
      v.strictObject({
        azimuthDeg: numberFrom(-360, 720, 'Bearing in degrees'),
        elevationDeg: numberFrom(-10, 90, 'Elevation of the skyline in degrees'),
      }),
    ),
  }),
  rain: v.variant('source', [
    v.strictObject({ source: v.literal('climate-grid'), isothermHeightKm }),
    v.strictObject({
      source: v.literal('measured'),
      rainRate001MmPerH: numberFrom(0, 250, 'Rain rate exceeded for 0.01 % in mm/h'),
      years: numberFrom(0.5, 200, 'Years of measurement'),
      isothermHeightKm,
    }),
    v.strictObject({
      source: v.literal('monthly-normals'),
      rainfallMm: twelve(0, 3000, 'Mean monthly rainfall in mm'),
      temperatureC: twelve(-60, 50, 'Mean monthly temperature in degrees Celsius'),
      isothermHeightKm,
    }),
  ]),
  target: v.strictObject({
    exceededPercent: numberFrom(0.001, 5, 'Share of the year in per cent'),
    pointingLossDb: numberFrom(0.01, 3, 'Largest pointing loss after peaking in dB'),
  }),
  distribution: distributionSchema,
  peaking: v.array(
    v.strictObject({
      axis: v.picklist(['azimuth', 'elevation']),
      slot: name,
      carrier: name,
      restDeg: anyNumber('Where the axis was left, in degrees.'),
      degPerTurn: numberFrom(0.001, 45, 'Degrees per turn of the adjuster'),
      bracketing: v.exactOptional(
        v.strictObject({
          turnsOut: numberFrom(0.01, 100, 'Turns off the peak'),
          turnsBack: numberFrom(0.01, 200, 'Turns back through the peak'),
          dropDb: numberFrom(0.1, 30, 'Drop below the highest level in dB'),
          resolutionDb: numberFrom(0, 3, 'Step of the display in dB'),
        }),
      ),
      samples: v.strictObject({
        positionDeg: v.pipe(v.array(anyNumber('Position in degrees.')), v.maxLength(1000)),
        levelDbm: v.pipe(v.array(numberFrom(-150, 50, 'Level in dBm')), v.maxLength(1000)),
      }),
    }),
  ),
  readings: v.array(
    v.variant('quantity', [
      v.strictObject({
        ...reading,
        quantity: v.literal('level'),
        levelDbuv: numberFrom(-20, 140, 'Level in dBuV at 75 ohm'),
      }),
      v.strictObject({
        ...reading,
        quantity: v.literal('carrier-to-noise'),
        carrierToNoiseDb: numberFrom(-20, 60, 'Carrier-to-noise ratio in dB'),
      }),
    ]),
  ),
  limits: v.pipe(
    v.array(
      v.variant('quantity', [
        v.strictObject({
          ...quantityFields,
          quantity: v.literal('level'),
          minimumDbuv: numberFrom(-20, 140, 'Lowest level in dBuV'),
          maximumDbuv: numberFrom(-20, 140, 'Highest level in dBuV'),
        }),
        v.strictObject({
          ...quantityFields,
          quantity: v.literal('carrier-to-noise'),
          minimumDb: numberFrom(-20, 60, 'Lowest ratio in dB'),
        }),
      ]),
    ),
    v.minLength(1),
  ),
});
