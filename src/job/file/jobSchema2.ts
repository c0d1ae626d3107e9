/** Schema of the job file, version 2: the one place where its fields, intervals, defaults and fixed words stand. */

import * as v from 'valibot';
import { distributionSchema, linePart } from './distributionSchema.js';
import { anyNumber, clock, day, listOf, nameOf, numberFrom, text, words, yesNo } from './fields.js';
import { mountSchema } from './mountSchema.js';
import { readingSchema } from './readingSchema.js';
import {
  horizonNorth,
  isothermHeightKm,
  polarization,
  rainSource,
  samples,
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

const stacking = v.strictObject({
  kind: words('How channels are stacked on one cable', {
    'user-bands': 'each receiver has a band of its own (EN 50494, EN 50607)',
    'fixed-bands': 'whole bands are moved side by side',
  }),
  userBandsMHz: v.exactOptional(
    listOf(
      numberFrom(500, 3000, 'Centre in MHz'),
      [1, 64],
      'Centres of the user bands in MHz, in their order; none by default, and not beside userBands.',
    ),
  ),
  userBands: v.exactOptional(
    listOf(
      v.strictObject({
        centreMHz: numberFrom(500, 3000, 'Centre in MHz'),
        bandwidthMHz: v.exactOptional(
          numberFrom(1, 200, 'Width in MHz, by default that of the widest planned carrier'),
        ),
        userBand: v.exactOptional(
          numberFrom(0, 32, 'Number on the label of the unit, by default its place in the list'),
        ),
        receiver: v.exactOptional(
          nameOf('Outlet or receiver that has this band; not given away by default'),
        ),
      }),
      [1, 64],
      'The user bands of the unit and who has them; none by default.',
    ),
  ),
  generation: v.exactOptional(
    words('How receivers ask for a carrier, by default first', {
      first: 'EN 50494, up to 8 bands in steps of 4 MHz',
      second: 'EN 50607, up to 32 bands in steps of 1 MHz',
    }),
  ),
  outputLevelDbuv: v.exactOptional(
    numberFrom(
      30,
      130,
      'Level of each user band at the output of the unit in dBuV, where it keeps it; that of the carrier by default',
    ),
  ),
});

const terrestrial = v.strictObject({
  into: nameOf('Name of the switch that the aerial feeds'),
  input: v.exactOptional(
    nameOf('Name of the input on that switch; the one that is always there by default'),
  ),
  levelDbuv: numberFrom(0, 140, 'Level of the aerial in dBuV'),
  lowestMHz: v.exactOptional(
    numberFrom(5, 3000, 'Lowest frequency that the aerial brings in MHz, by default 470'),
  ),
  highestMHz: v.exactOptional(
    numberFrom(5, 3000, 'Highest frequency that the aerial brings in MHz, by default 694'),
  ),
  minimumDbuv: v.exactOptional(
    numberFrom(
      0,
      140,
      'Lowest terrestrial level that conforms at an outlet in dBuV, none by default',
    ),
  ),
  maximumDbuv: v.exactOptional(
    numberFrom(
      0,
      140,
      'Highest terrestrial level that conforms at an outlet in dBuV, none by default',
    ),
  ),
});

const distribution = v.strictObject({
  trees: listOf(
    distributionSchema,
    [1, 50],
    'What is fed: each a tree of parts that ends in outlets or receivers.',
  ),
  lines: v.exactOptional(
    listOf(
      v.strictObject({
        unit: nameOf('Name of the receiving unit'),
        band: v.exactOptional(nameOf('Band that the line carries; all by default')),
        polarizations: v.exactOptional(
          listOf(polarization, [1, 4], 'Polarizations that the line carries; all by default.'),
        ),
        parts: v.exactOptional(
          listOf(linePart, [0, 100], 'Parts of the line from the unit on; none by default.'),
        ),
        into: v.exactOptional(
          nameOf(
            'Name of the switch that the line enters; the first part of the first tree by default',
          ),
        ),
        input: v.exactOptional(nameOf('Name of the input on that switch; not said by default')),
      }),
      [1, 200],
      'Lines from receiving units to switches; without any every unit feeds the first part of each tree.',
    ),
  ),
  carrierCount: v.exactOptional(
    numberFrom(
      2,
      1000,
      'Carriers on a cable at one time, for the load of amplifiers; by default those of the job, at least 2',
    ),
  ),
  temperatureC: v.exactOptional(
    numberFrom(-60, 90, 'Temperature of the cables in degrees Celsius, by default 20'),
  ),
  stacking: v.exactOptional(v.pipe(stacking, v.description('Channel stacking; none by default.'))),
  terrestrial: v.exactOptional(
    v.pipe(terrestrial, v.description('Terrestrial signals beside satellite; none by default.')),
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

const instrument = v.strictObject({
  name: nameOf('Name of the instrument, as visits and readings give it'),
  ceilingDb: v.exactOptional(
    numberFrom(
      5,
      80,
      'Highest MER that it can show in dB; without it an MER is taken as it is shown',
    ),
  ),
  levelOffsetDb: v.exactOptional(
    numberFrom(-30, 30, 'How far it shows levels too high in dB, by default 0'),
  ),
  levelOffsetStandardUncertaintyDb: v.exactOptional(
    numberFrom(0, 10, 'Standard uncertainty of that offset in dB, by default 0'),
  ),
  ratioOffsetDb: v.exactOptional(
    numberFrom(-30, 30, 'How far it shows carrier-to-noise ratios too high in dB, by default 0'),
  ),
  ratioOffsetStandardUncertaintyDb: v.exactOptional(
    numberFrom(0, 10, 'Standard uncertainty of that offset in dB, by default 0'),
  ),
});

const limitPoint = nameOf('`antenna`, the name of an outlet or receiver, or `outlets` for all');
const slotName = v.exactOptional(nameOf('Slot for which the limit holds; all by default'));
const quantityWord = <const T extends string>(word: T, meaning: string) =>
  v.pipe(v.literal(word), v.description(`\`${word}\`: ${meaning}.`));
const atPoint = { testPoint: limitPoint, slot: slotName };

const limit = v.variant('quantity', [
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('level', 'level per carrier'),
    minimumDbuv: v.exactOptional(
      numberFrom(-20, 140, 'Lowest level that conforms in dBuV, none by default'),
    ),
    maximumDbuv: v.exactOptional(
      numberFrom(-20, 140, 'Highest level that conforms in dBuV, none by default'),
    ),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('noise-level', 'level beside the carriers'),
    maximumDbuv: numberFrom(-20, 140, 'Highest level that conforms in dBuV'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('carrier-to-noise', 'ratio in the bandwidth of the symbol rate'),
    minimumDb: numberFrom(-20, 60, 'Lowest ratio that conforms in dB'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('modulation-error-ratio', 'MER of the demodulated carrier'),
    minimumDb: numberFrom(-20, 60, 'Lowest ratio that conforms in dB'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('cross-polar-isolation', 'wanted over crossed polarization'),
    minimumDb: numberFrom(0, 60, 'Lowest isolation that conforms in dB'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('bit-error-ratio', 'BER before or after correction, as the limit says'),
    maximumRatio: numberFrom(1e-15, 0.5, 'Highest ratio of bit errors that conforms'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantityWord('supply-voltage', 'direct voltage under load'),
    minimumV: v.exactOptional(
      numberFrom(0, 60, 'Lowest voltage that conforms in volts, none by default'),
    ),
    maximumV: v.exactOptional(
      numberFrom(0, 60, 'Highest voltage that conforms in volts, none by default'),
    ),
  }),
]);

const peaking = v.strictObject({
  axis: words('Axis that was turned', {
    azimuth: 'round the mast, or round the axis of a polar mount',
    elevation: 'up and down',
  }),
  slot: nameOf('Name of the slot'),
  carrier: nameOf('Name of the carrier that was watched'),
  azimuthReference: v.exactOptional(
    words('What degrees of azimuth mean, by default on-scale; elevation is the same on both', {
      'on-scale': 'read on the scale round the mast, so that the beam moves by less on the sky',
      'on-sky': 'angle by which the beam moves on the sky',
    }),
  ),
  restDeg: numberFrom(-720, 720, 'Where the axis was left, in degrees of the samples'),
  degPerTurn: v.exactOptional(
    numberFrom(
      0.001,
      45,
      'Degrees of the axis per turn of its adjuster; without it the move is told in degrees only',
    ),
  ),
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
        resolutionDb: v.exactOptional(
          numberFrom(0, 3, 'Step of the level display in dB, by default 0'),
        ),
      }),
      v.description('Equal-level bracketing; none by default.'),
    ),
  ),
  samples: v.exactOptional(
    v.pipe(samples, v.description('Positions and the levels read there; none by default.')),
  ),
});

const visit = v.strictObject({
  kind: words('What the visit was', {
    installation: 'the antenna was put up',
    service: 'a later call: compared with the visit before',
  }),
  date: day('Day of the visit'),
  time: v.exactOptional(clock('Time of day at which the readings began; not said by default')),
  person: v.exactOptional(nameOf('Who did the work; not said by default')),
  weather: v.exactOptional(
    words('Weather along the path, by default not said', {
      clear: 'clear or thin cloud',
      cloudy: 'thick cloud',
      rain: 'rain',
      snow: 'snow, or snow on the reflector',
    }),
  ),
  instrument: v.exactOptional(
    nameOf('Instrument of all readings that name none; not said by default'),
  ),
  peaking: v.exactOptional(
    listOf(peaking, [0, 100], 'What was read while peaking; none by default.'),
  ),
  feedTurns: v.exactOptional(
    listOf(
      v.strictObject({
        slot: nameOf('Name of the slot'),
        turnDeg: numberFrom(
          -180,
          180,
          'Turn at which the feed was left, in degrees against the vertical of the reflector, clockwise seen from behind',
        ),
        standardUncertaintyDeg: v.exactOptional(
          numberFrom(0.05, 20, 'Standard uncertainty of that turn in degrees, by default 1.5'),
        ),
      }),
      [0, 100],
      'How the feeds were left; none by default.',
    ),
  ),
  readings: v.exactOptional(listOf(readingSchema, [0, 5000], 'Readings; none by default.')),
  notes: v.exactOptional(
    listOf(text(500, 'A note'), [0, 50], 'Notes, one a line; none by default.'),
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
      distribution,
      v.description('What lies behind the receiving units; without it no outlet is expected.'),
    ),
  ),
  transmit: v.exactOptional(
    listOf(transmitSchema, [1, 20], 'Transmitted carriers of a two-way terminal; none by default.'),
  ),
  instruments: v.exactOptional(
    listOf(
      instrument,
      [0, 50],
      'What is known of the instruments; without it readings are taken as they are shown.',
    ),
  ),
  limits: v.exactOptional(
    listOf(limit, [0, 500], 'Limits at test points; without any no reading is judged.'),
  ),
  visits: v.exactOptional(
    listOf(visit, [0, 50], 'Visits in the order of their days; none before the first.'),
  ),
  notes: v.exactOptional(
    listOf(text(500, 'A note'), [0, 50], 'Notes on the job, one a line; none by default.'),
  ),
});
