/** Schema of what is read: readings, the instruments, the limits they are held to, peaking, and the visit that holds them. */

import * as v from 'valibot';
import { clock, day, listOf, nameOf, numberFrom, text, words } from './fields.js';
import { samples } from './sharedFields.js';

const quantity = <const T extends string>(word: T, meaning: string) =>
  v.pipe(v.literal(word), v.description(`\`${word}\`: ${meaning}.`));

const said = {
  bound: v.exactOptional(
    words('Whether the display shows only an end; a value by default', {
      'at-most': 'the true value is at most what is shown (it sank into the noise)',
      'at-least': 'the true value is at least what is shown (the display ends there)',
    }),
  ),
  instrument: v.exactOptional(nameOf('Instrument; by default that of the visit')),
  person: v.exactOptional(nameOf('Who read it; by default who did the visit')),
  time: v.exactOptional(clock('Time of day; not said by default')),
  weather: v.exactOptional(
    words('Weather along the path, by default that of the visit', {
      clear: 'clear or thin cloud',
      cloudy: 'thick cloud',
      rain: 'rain',
      snow: 'snow, or snow on the reflector',
    }),
  ),
};

const atCarrier = {
  testPoint: nameOf('`antenna`, or the name of an outlet or receiver'),
  slot: nameOf('Name of the slot'),
  carrier: nameOf('Name of the carrier, received or transmitted'),
  expandedUncertaintyDb: numberFrom(
    0.01,
    20,
    'Expanded uncertainty (k = 2) of the instrument in dB',
  ),
  ...said,
};

/** A reading; read `quantity` first. */
const readingSchema = v.variant('quantity', [
  v.strictObject({
    ...atCarrier,
    quantity: quantity('level', 'level per carrier'),
    levelDbuv: numberFrom(-20, 140, 'Level in dBuV at 75 ohm'),
  }),
  v.strictObject({
    ...atCarrier,
    quantity: quantity('noise-level', 'level beside the carriers, in the same bandwidth'),
    noiseLevelDbuv: numberFrom(-60, 140, 'Level in dBuV at 75 ohm'),
  }),
  v.strictObject({
    ...atCarrier,
    quantity: quantity('carrier-to-noise', 'ratio in the bandwidth of the symbol rate'),
    carrierToNoiseDb: numberFrom(-20, 60, 'Carrier-to-noise ratio in dB'),
    noiseBandwidthMHz: v.exactOptional(
      numberFrom(
        0.001,
        1000,
        'Bandwidth in which the instrument took the noise in MHz, by default the symbol rate',
      ),
    ),
  }),
  v.strictObject({
    ...atCarrier,
    quantity: quantity('modulation-error-ratio', 'MER of the demodulated carrier'),
    modulationErrorRatioDb: numberFrom(-20, 60, 'Modulation error ratio in dB'),
  }),
  v.strictObject({
    ...atCarrier,
    quantity: quantity('cross-polar-isolation', 'wanted over crossed polarization'),
    isolationDb: numberFrom(0, 70, 'Isolation in dB'),
  }),
  v.strictObject({
    ...atCarrier,
    quantity: quantity(
      'bit-error-ratio',
      'BER; its uncertainty is that of ten times its logarithm',
    ),
    bitErrorRatio: numberFrom(1e-15, 0.5, 'Ratio of bit errors'),
  }),
  v.strictObject({
    testPoint: atCarrier.testPoint,
    ...said,
    quantity: quantity('supply-voltage', 'direct voltage under load'),
    voltageV: numberFrom(0, 60, 'Voltage in volts'),
    expandedUncertaintyV: numberFrom(0.001, 10, 'Expanded uncertainty (k = 2) in volts'),
    slot: v.exactOptional(nameOf('Slot that was chosen while reading; not said by default')),
    carrier: v.exactOptional(nameOf('Carrier that was chosen while reading; not said by default')),
  }),
]);

export const instrumentSchema = v.strictObject({
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

const atPoint = { testPoint: limitPoint, slot: slotName };

export const limitSchema = v.variant('quantity', [
  v.strictObject({
    ...atPoint,
    quantity: quantity('level', 'level per carrier'),
    minimumDbuv: v.exactOptional(
      numberFrom(-20, 140, 'Lowest level that conforms in dBuV, none by default'),
    ),
    maximumDbuv: v.exactOptional(
      numberFrom(-20, 140, 'Highest level that conforms in dBuV, none by default'),
    ),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantity('noise-level', 'level beside the carriers'),
    maximumDbuv: numberFrom(-20, 140, 'Highest level that conforms in dBuV'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantity('carrier-to-noise', 'ratio in the bandwidth of the symbol rate'),
    minimumDb: numberFrom(-20, 60, 'Lowest ratio that conforms in dB'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantity('modulation-error-ratio', 'MER of the demodulated carrier'),
    minimumDb: numberFrom(-20, 60, 'Lowest ratio that conforms in dB'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantity('cross-polar-isolation', 'wanted over crossed polarization'),
    minimumDb: numberFrom(0, 60, 'Lowest isolation that conforms in dB'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantity('bit-error-ratio', 'BER before or after correction, as the limit says'),
    maximumRatio: numberFrom(1e-15, 0.5, 'Highest ratio of bit errors that conforms'),
  }),
  v.strictObject({
    ...atPoint,
    quantity: quantity('supply-voltage', 'direct voltage under load'),
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

export const visitSchema = v.strictObject({
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
