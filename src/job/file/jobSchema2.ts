/** Schema of the job file, version 2: the one place where its fields, intervals, defaults and fixed words stand. */

import * as v from 'valibot';
import { behindUnitsSchema } from './distributionSchema.js';
import { anyNumber, day, listOf, nameOf, numberFrom, text, words, yesNo } from './fields.js';
import { mountSchema } from './mountSchema.js';
import { instrumentSchema, limitSchema, visitSchema } from './readingSchema.js';
import {
  horizonNorth,
  isothermHeightKm,
  polarization,
  rainSource,
  twelve,
} from './sharedFields.js';
import { transmitSchema } from './transmitSchema.js';

const carrier = v.strictObject({
  name: nameOf('Name of the carrier, its own within the slot'),
  frequencyGHz: numberFrom(1, 60, 'Frequency in GHz'),
  polarization,
  eirpDbw: v.exactOptional(
    numberFrom(0, 90, 'EIRP towards the station in dBW; without it no level is expected'),
  ),
  symbolRateMBd: v.exactOptional(
    numberFrom(0.01, 500, 'Symbol rate in megabaud; without it no ratio is expected'),
  ),
  rollOffRatio: v.exactOptional(
    numberFrom(
      0,
      1,
      'Roll-off as a ratio: the carrier occupies the symbol rate times one and this, by default 0.35',
    ),
  ),
  standard: v.exactOptional(
    words('Standard of the mode, by default DVB-S2', {
      'DVB-S': 'EN 300 421',
      'DVB-S2': 'EN 302 307-1',
      'DVB-S2X': 'EN 302 307-2',
    }),
  ),
  mode: v.exactOptional(
    nameOf(
      'Mode as the standard writes it, such as QPSK 3/4; without it no margin and no promise is computed',
    ),
  ),
  implementationLossDb: v.exactOptional(
    numberFrom(0, 10, 'Loss of the demodulator against the ideal threshold in dB, by default 0.8'),
  ),
  intermediateFrequencyMHz: v.exactOptional(
    numberFrom(
      5,
      3000,
      'Frequency on the cable in MHz; by default worked out from the local oscillator, and checked against it where both are given',
    ),
  ),
  unit: v.exactOptional(
    nameOf(
      'Name of the receiving unit; by default the first that serves slot, band and polarization',
    ),
  ),
});

const slot = v.strictObject({
  orbitalLongitudeDeg: anyNumber('Longitude of the slot in degrees, east positive'),
  name: v.exactOptional(nameOf('Name of the slot, its own; by default its longitude')),
  polarizationTiltDeg: v.exactOptional(
    numberFrom(
      -90,
      90,
      'Tilt of the satellite polarization in degrees, clockwise seen from behind the antenna, by default 0',
    ),
  ),
  inclinationDeg: v.exactOptional(
    numberFrom(0, 20, 'Inclination of the orbit in degrees, by default 0'),
  ),
  carriers: v.exactOptional(
    listOf(carrier, [0, 200], 'Its carriers; without any only directions are computed.'),
  ),
});

const unit = v.strictObject({
  name: nameOf('Name of the receiving unit, its own'),
  slots: v.exactOptional(
    listOf(nameOf('Name of a slot'), [1, 40], 'Slots that it serves; all by default.'),
  ),
  polarizations: v.exactOptional(
    listOf(polarization, [1, 4], 'Polarizations that it passes; all by default.'),
  ),
  noiseFigureDb: v.exactOptional(
    numberFrom(0.1, 10, 'Noise figure in dB; without it no ratio is expected'),
  ),
  gainDb: v.exactOptional(numberFrom(20, 90, 'Gain in dB; without it no level is expected')),
  feedLossDb: v.exactOptional(
    numberFrom(0, 10, 'Loss between aperture and unit in dB, by default 0'),
  ),
  bands: v.exactOptional(
    listOf(
      v.strictObject({
        name: nameOf('Name of the band, its own within the unit'),
        fromGHz: numberFrom(1, 60, 'Lowest frequency in GHz'),
        toGHz: numberFrom(1, 60, 'Highest frequency in GHz'),
        localOscillatorGHz: numberFrom(0.5, 60, 'Frequency of the local oscillator in GHz'),
        tone: v.exactOptional(
          yesNo('Whether the 22 kHz tone selects this band; not said by default.'),
        ),
      }),
      [1, 20],
      'Bands with their local oscillators; without them each carrier gives its frequency on the cable.',
    ),
  ),
  switchedByVoltage: v.exactOptional(
    yesNo(
      'Whether 13 V and 18 V choose the polarization; false by default (each polarization has its output).',
    ),
  ),
  supply: v.exactOptional(
    v.pipe(
      v.strictObject({
        currentA: numberFrom(0, 10, 'Current in amperes'),
        minimumVoltageV: numberFrom(0, 60, 'Least voltage in volts'),
      }),
      v.description('What the unit takes from the cable; without it the supply is not computed.'),
    ),
  ),
  localOscillatorStabilityMHz: v.exactOptional(
    numberFrom(
      0,
      20,
      'How far the local oscillator may be off in MHz, either way; not said by default',
    ),
  ),
});

const tuner = v.strictObject({
  lowestMHz: v.exactOptional(
    numberFrom(5, 3000, 'Lowest frequency on the cable that they take in MHz, by default 950'),
  ),
  highestMHz: v.exactOptional(
    numberFrom(5, 3000, 'Highest frequency on the cable that they take in MHz, by default 2150'),
  ),
  lockRangeMHz: v.exactOptional(
    numberFrom(
      0.001,
      50,
      'How far off its frequency they still find a carrier in MHz; without it the local oscillator is not judged',
    ),
  ),
});

const horizon = v.strictObject({
  north: horizonNorth,
  samples: listOf(
    v.strictObject({
      azimuthDeg: numberFrom(-360, 720, 'Bearing in degrees, clockwise from the stated north'),
      elevationDeg: numberFrom(
        -10,
        89,
        'Elevation of the skyline in degrees, as a clinometer shows it',
      ),
      distanceM: v.exactOptional(
        numberFrom(
          0.1,
          100000,
          'Horizontal distance of what is seen there in metres; by default anything from nearestDistanceM on',
        ),
      ),
    }),
    [0, 2000],
    'Sightings; between neighbours at most 45 degrees apart the skyline runs straight, elsewhere it is not known.',
  ),
  bearingUncertaintyDeg: v.exactOptional(
    numberFrom(0, 20, 'Standard uncertainty of a bearing in degrees, by default 1'),
  ),
  elevationUncertaintyDeg: v.exactOptional(
    numberFrom(0, 10, 'Standard uncertainty of an elevation in degrees, by default 0.5'),
  ),
  nearestDistanceM: v.exactOptional(
    numberFrom(
      0.1,
      1000,
      'Nothing sighted without a distance stands nearer than this in metres, by default 5',
    ),
  ),
});

const rain = v.variant('source', [
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
]);

const target = v.strictObject({
  exceededPercent: v.exactOptional(
    numberFrom(
      0.001,
      5,
      'Share of the average year in per cent for which reception may fail; without it nothing is promised',
    ),
  ),
  pointingLossDb: v.exactOptional(
    numberFrom(
      0.01,
      3,
      'Largest pointing loss left after peaking in dB, both axes together; without it pointing is not judged',
    ),
  ),
  requiredProbabilityRatio: v.exactOptional(
    numberFrom(
      0.5,
      0.999,
      'Probability with which the promise must be kept, for the stated spread of the fade, by default 0.8',
    ),
  ),
});

const wind = v.strictObject({
  basicSpeedMPerS: numberFrom(
    1,
    100,
    'Basic wind speed of the place in metres a second (EN 1991-1-4: mean over ten minutes at 10 m, once in 50 years)',
  ),
  terrain: words('Terrain of EN 1991-1-4', {
    '0': 'sea or coast',
    I: 'lakes, flat land without obstacles',
    II: 'low vegetation, single obstacles',
    III: 'villages, suburbs, forest',
    IV: 'towns',
  }),
  heightM: numberFrom(0, 1000, 'Height of the reflector above the ground in metres'),
  meanSpeedMPerS: v.exactOptional(
    numberFrom(
      0.1,
      30,
      'Mean speed of the wind over the year at that height in metres a second; without it no share of the year is told',
    ),
  ),
  workingSpeedMPerS: v.exactOptional(
    numberFrom(
      1,
      60,
      'Speed of the wind at which pointing is judged in metres a second, by default 15',
    ),
  ),
  forceCoefficientRatio: v.exactOptional(
    numberFrom(
      0.1,
      3,
      'Force coefficient of the reflector as a ratio, by default 1.3 for a solid one; from 1 to 2 a load is told',
    ),
  ),
});

/** The schema; what it lets through is a {@link JobFile}. */
export const jobSchema2 = v.strictObject({
  format: v.pipe(v.literal('slantpath-job'), v.description('What the document is.')),
  version: v.pipe(v.literal(2), v.description('Version of the format.')),
  title: v.exactOptional(text(120, 'Title of the sheet, by default the name of the station')),
  date: v.exactOptional(
    day(
      'Day for which the job is planned; the declination is that of this day. By default that of the first visit, and without one no magnetic bearing is computed',
    ),
  ),
  timeZone: v.exactOptional(
    nameOf('Time zone of the place by its IANA name, such as Europe/Zurich; UTC by default'),
  ),
  station: v.pipe(
    v.strictObject({
      latitudeDeg: numberFrom(-90, 90, 'Geodetic latitude in degrees, north positive'),
      longitudeDeg: anyNumber('Longitude in degrees, east positive, any turn'),
      name: v.exactOptional(nameOf('Name of the place on the sheet, by default its coordinates')),
      heightM: v.exactOptional(
        numberFrom(-1000, 9000, 'Height above sea level in metres, by default 0'),
      ),
      sharedBuilding: v.exactOptional(
        yesNo('Whether others have cables in the building, false by default: foreign voltage.'),
      ),
    }),
    v.description('Where the antenna stands.'),
  ),
  slots: listOf(slot, [1, 40], 'The orbital slots.'),
  mounts: v.exactOptional(
    listOf(
      mountSchema,
      [1, 20],
      'Mounts with their reflectors; by default one fixed mount for all slots.',
    ),
  ),
  units: v.exactOptional(
    listOf(unit, [1, 40], 'Receiving units (LNBs); without any no level and no ratio is expected.'),
  ),
  tuner: v.exactOptional(
    v.pipe(
      tuner,
      v.description('What the receivers tune over; 950 to 2150 MHz by default, and then in doubt.'),
    ),
  ),
  horizon: v.exactOptional(
    v.pipe(horizon, v.description('The horizon as sighted; without it the view is not judged.')),
  ),
  wind: v.exactOptional(
    v.pipe(wind, v.description('The wind of the place; without it no load is computed.')),
  ),
  rain: v.exactOptional(
    v.pipe(rain, v.description('Where the rain statistics come from, by default climate-grid.')),
  ),
  target: v.exactOptional(v.pipe(target, v.description('What was promised; nothing by default.'))),
  distribution: v.exactOptional(
    v.pipe(
      behindUnitsSchema,
      v.description('What lies behind the receiving units; without it no outlet is expected.'),
    ),
  ),
  transmit: v.exactOptional(
    listOf(transmitSchema, [1, 20], 'Transmitted carriers of a two-way terminal; none by default.'),
  ),
  instruments: v.exactOptional(
    listOf(
      instrumentSchema,
      [0, 50],
      'What is known of the instruments; without it readings are taken as they are shown.',
    ),
  ),
  limits: v.exactOptional(
    listOf(limitSchema, [0, 500], 'Limits at test points; without any no reading is judged.'),
  ),
  visits: v.exactOptional(
    listOf(visitSchema, [0, 50], 'Visits in the order of their days; none before the first.'),
  ),
  notes: v.exactOptional(
    listOf(text(500, 'A note'), [0, 50], 'Notes on the job, one a line; none by default.'),
  ),
});
