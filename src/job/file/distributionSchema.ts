/** Schema of what lies behind the receiving units: the distribution tree, as `slantpath/distribution` takes it, its sources, stacking. */

import * as v from 'valibot';
import type { DistributionPart } from '../../distribution/index.js';
import { decibels, listOf, nameOf, numberFrom, supplyNeed, words, yesNo } from './fields.js';
import { polarization } from './sharedFields.js';

/** A part of the tree; parts hold the parts behind them. */
export const distributionSchema: v.GenericSchema<unknown, DistributionPart> = v.lazy(() => part);

const port = v.nullable(distributionSchema);
const to = distributionSchema;
const label = v.exactOptional(nameOf('Name of the part; by default its kind and number'));
const kind = <const T extends string>(word: T, meaning: string) =>
  v.pipe(v.literal(word), v.description(`\`${word}\`: ${meaning}.`));

const cableFields = {
  name: v.exactOptional(nameOf('Name of the type of cable; none by default')),
  skinLossDbPer100m: numberFrom(0, 1000, 'Loss by skin effect in dB per 100 m at 1000 MHz'),
  dielectricLossDbPer100m: v.exactOptional(
    numberFrom(-10, 1000, 'Loss in the dielectric in dB per 100 m at 1000 MHz, by default 0'),
  ),
  loopResistanceOhmPer100m: v.exactOptional(
    numberFrom(
      0,
      10000,
      'Resistance to direct current there and back in ohms per 100 m, by default 0',
    ),
  ),
  temperaturePercentPerK: v.exactOptional(
    numberFrom(0, 2, 'Growth of the loss in percent per kelvin, by default 0.2'),
  ),
};

const cable = v.pipe(v.strictObject(cableFields), v.description('Type of cable.'));

const cablePart = {
  kind: kind('cable', 'a length of cable'),
  name: label,
  cable,
  lengthM: numberFrom(0, 10000, 'Length in metres'),
};

const lossPart = {
  kind: v.pipe(
    v.picklist(['connector', 'attenuator', 'equaliser']),
    v.description(
      '`connector`: a plug or joint; `attenuator`: a fixed loss; `equaliser`: a loss that falls with frequency.',
    ),
  ),
  name: label,
  lossDb: decibels('Loss'),
  passesSupply: v.exactOptional(yesNo('Whether direct current passes; true by default.')),
};

const amplifierPart = {
  kind: kind('amplifier', 'an amplifier'),
  name: label,
  gainDb: decibels('Gain'),
  noiseFigureDb: numberFrom(0, 30, 'Noise figure in dB'),
  maximumOutputDbuv: v.exactOptional(
    numberFrom(
      60,
      140,
      'Output level in dBuV at which two equal carriers give third-order products 35 dB below; without it overload is not judged',
    ),
  ),
  automaticGain: v.exactOptional(
    v.pipe(
      v.strictObject({
        outputLevelDbuv: numberFrom(30, 130, 'Mean output level aimed at in dBuV'),
        rangeDb: numberFrom(0, 60, 'How far the gain can fall in dB'),
      }),
      v.description('Automatic gain; none by default.'),
    ),
  ),
  supply: v.exactOptional(supplyNeed),
  passesSupply: v.exactOptional(
    yesNo('Whether direct current passes towards the source; true by default.'),
  ),
};

/** Parts of a line from a receiving unit to an input: one way in, one way out. */
const linePart = v.variant('kind', [
  v.strictObject(cablePart),
  v.strictObject(lossPart),
  v.strictObject(amplifierPart),
]);

const ports = (meaning: string) =>
  v.pipe(
    v.array(port),
    v.minLength(1),
    v.maxLength(200),
    v.description(`${meaning}; null for one closed with 75 ohm.`),
  );

const switchInput = v.strictObject({
  name: nameOf('Name of the input, its own within the switch'),
  lossDb: v.exactOptional(
    decibels(
      'Loss from this input to an output that has chosen it, by default that of the switch,',
    ),
  ),
  isolationDb: v.exactOptional(
    decibels(
      'How much weaker than when chosen it comes out of an output that has chosen another, by default 25,',
    ),
  ),
  alwaysThere: v.exactOptional(
    yesNo(
      'Whether it comes to every output whatever is chosen, as terrestrial signals do; false by default.',
    ),
  ),
  feed: v.exactOptional(
    v.pipe(
      v.strictObject({
        voltageV: numberFrom(0, 60, 'Voltage in volts'),
        limitA: numberFrom(0, 20, 'Highest current in amperes'),
      }),
      v.description('What a mains-fed switch gives the unit on this input; nothing by default.'),
    ),
  ),
});

const part = v.variant('kind', [
  v.strictObject({ ...cablePart, to }),
  v.strictObject({ ...lossPart, to }),
  v.strictObject({
    kind: kind('splitter', 'equal outputs'),
    name: label,
    lossDb: decibels('Loss from the input to each output'),
    isolationDb: v.exactOptional(decibels('Decoupling between two outputs, by default 20,')),
    passesSupply: v.exactOptional(
      v.pipe(
        v.array(v.boolean()),
        v.maxLength(200),
        v.description('Which outputs pass direct current towards the input; all by default.'),
      ),
    ),
    diodeDropV: v.exactOptional(
      numberFrom(0, 5, 'Voltage lost in the steering diode in volts, by default 0.7'),
    ),
    outputs: ports('Parts on the outputs'),
  }),
  v.strictObject({
    kind: kind('tap', 'most goes through, a little goes to each tap port'),
    name: label,
    throughLossDb: decibels('Loss from input to the through port'),
    tapLossDb: decibels('Loss from input to a tap port'),
    isolationDb: v.exactOptional(
      decibels('Loss from a tap port to the through port, by default the tap loss and 10,'),
    ),
    tapIsolationDb: v.exactOptional(decibels('Decoupling between two tap ports, by default 20,')),
    passesSupply: v.exactOptional(
      yesNo('Whether the through port passes direct current; true by default.'),
    ),
    tapsPassSupply: v.exactOptional(
      yesNo('Whether the tap ports pass direct current; false by default.'),
    ),
    taps: ports('Parts on the tap ports'),
    to: v.pipe(port, v.description('What follows on the through port; null for a closed one.')),
  }),
  v.strictObject({
    kind: kind('switch', 'each output chooses one of the inputs'),
    name: label,
    lossDb: decibels('Loss from a chosen input to an output; negative where the switch amplifies,'),
    isolationDb: v.exactOptional(decibels('Decoupling between two outputs, by default 25,')),
    noiseFigureDb: v.exactOptional(
      numberFrom(0, 30, 'Noise figure in dB where the switch amplifies, by default 8'),
    ),
    supply: v.exactOptional(supplyNeed),
    feedsSource: v.exactOptional(
      yesNo(
        'Whether a mains-fed switch feeds the receiving units, so that nothing is asked of the receivers; false by default.',
      ),
    ),
    inputs: v.exactOptional(
      v.pipe(
        v.array(switchInput),
        v.minLength(1),
        v.maxLength(64),
        v.description(
          'Its inputs, where it has several or theirs differ; one input with the figures of the switch by default.',
        ),
      ),
    ),
    throughLossDb: v.exactOptional(
      decibels('Loss from each input to the line that passes it on, by default 0,'),
    ),
    through: v.exactOptional(
      v.pipe(
        port,
        v.description(
          'What follows where all inputs are passed on side by side: the cable to the next switch of a cascade, whose inputs have the same names; none by default.',
        ),
      ),
    ),
    outputs: ports('Parts on the outputs'),
  }),
  v.strictObject({ ...amplifierPart, to }),
  v.strictObject({
    kind: kind('outlet', 'an outlet in the wall, where levels are promised'),
    name: nameOf('Name of the outlet, its own in the whole job'),
    lossDb: v.exactOptional(decibels('Loss of the outlet itself, by default 0,')),
    to: v.exactOptional(distributionSchema),
  }),
  v.strictObject({
    kind: kind('receiver', 'a receiver'),
    name: nameOf('Name of the receiver, its own in the whole job'),
    minimumLevelDbuv: v.exactOptional(
      numberFrom(0, 120, 'Lowest level per carrier in dBuV, by default 43.75 (-65 dBm)'),
    ),
    maximumLevelDbuv: v.exactOptional(
      numberFrom(0, 130, 'Highest level per carrier in dBuV, by default 83.75 (-25 dBm)'),
    ),
    noiseFigureDb: v.exactOptional(numberFrom(0, 30, 'Noise figure in dB, by default 10')),
  }),
]);

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

export const behindUnitsSchema = v.strictObject({
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
