/** Schema of a reading: where, what, how sure, with what, by whom, in which weather. */

import * as v from 'valibot';
import { clock, nameOf, numberFrom, words } from './fields.js';

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
export const readingSchema = v.variant('quantity', [
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
