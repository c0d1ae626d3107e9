/** Schema of the distribution tree in a job file; the same shape as `slantpath/distribution` takes. */

import * as v from 'valibot';
import type { DistributionPart } from '../distribution/index.js';
import { decibels, name, numberFrom, supplyNeed } from './fields.js';

/** A part of the tree; parts hold the parts behind them. */
export const distributionSchema: v.GenericSchema<unknown, DistributionPart> = v.lazy(() => part);

const portSchema = v.nullable(distributionSchema);
const label = v.exactOptional(name);

const cable = v.strictObject({
  name: v.exactOptional(name),
  skinLossDbPer100m: numberFrom(0, 1000, 'Loss by skin effect in dB per 100 m at 1000 MHz'),
  dielectricLossDbPer100m: v.exactOptional(
    numberFrom(-10, 1000, 'Loss in the dielectric in dB per 100 m at 1000 MHz'),
  ),
  loopResistanceOhmPer100m: v.exactOptional(
    numberFrom(0, 10000, 'Direct current resistance there and back in ohms per 100 m'),
  ),
  temperaturePercentPerK: v.exactOptional(
    numberFrom(0, 2, 'Growth of the loss in percent per kelvin'),
  ),
});

const part = v.variant('kind', [
  v.strictObject({
    kind: v.literal('cable'),
    name: label,
    cable,
    lengthM: numberFrom(0, 10000, 'Length in metres'),
    to: distributionSchema,
  }),
  v.strictObject({
    kind: v.picklist(['connector', 'attenuator', 'equaliser']),
    name: label,
    lossDb: decibels,
    passesSupply: v.exactOptional(v.boolean()),
    to: distributionSchema,
  }),
  v.strictObject({
    kind: v.literal('splitter'),
    name: label,
    lossDb: decibels,
    isolationDb: v.exactOptional(decibels),
    passesSupply: v.exactOptional(v.array(v.boolean())),
    diodeDropV: v.exactOptional(numberFrom(0, 5, 'Voltage lost in the steering diode')),
    outputs: v.pipe(v.array(portSchema), v.minLength(1)),
  }),
  v.strictObject({
    kind: v.literal('tap'),
    name: label,
    throughLossDb: decibels,
    tapLossDb: decibels,
    isolationDb: v.exactOptional(decibels),
    tapIsolationDb: v.exactOptional(decibels),
    passesSupply: v.exactOptional(v.boolean()),
    tapsPassSupply: v.exactOptional(v.boolean()),
    taps: v.pipe(v.array(portSchema), v.minLength(1)),
    to: portSchema,
  }),
  v.strictObject({
    kind: v.literal('switch'),
    name: label,
    lossDb: decibels,
    isolationDb: v.exactOptional(decibels),
    noiseFigureDb: v.exactOptional(numberFrom(0, 30, 'Noise figure in dB')),
    supply: v.exactOptional(supplyNeed),
    feedsSource: v.exactOptional(v.boolean()),
    outputs: v.pipe(v.array(portSchema), v.minLength(1)),
  }),
  v.strictObject({
    kind: v.literal('amplifier'),
    name: label,
    gainDb: decibels,
    noiseFigureDb: numberFrom(0, 30, 'Noise figure in dB'),
    maximumOutputDbuv: v.exactOptional(numberFrom(60, 140, 'Highest output level in dBuV')),
    automaticGain: v.exactOptional(
      v.strictObject({
        outputLevelDbuv: numberFrom(30, 130, 'Mean output level aimed at in dBuV'),
        rangeDb: numberFrom(0, 60, 'How far the gain can fall in dB'),
      }),
    ),
    supply: v.exactOptional(supplyNeed),
    passesSupply: v.exactOptional(v.boolean()),
    to: distributionSchema,
  }),
  v.strictObject({
    kind: v.literal('outlet'),
    name,
    lossDb: v.exactOptional(decibels),
    to: v.exactOptional(distributionSchema),
  }),
  v.strictObject({
    kind: v.literal('receiver'),
    name,
    minimumLevelDbuv: v.exactOptional(numberFrom(0, 120, 'Lowest level in dBuV')),
    maximumLevelDbuv: v.exactOptional(numberFrom(0, 130, 'Highest level in dBuV')),
    noiseFigureDb: v.exactOptional(numberFrom(0, 30, 'Noise figure in dB')),
  }),
]);
