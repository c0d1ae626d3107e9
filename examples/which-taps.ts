/** Which taps, amplifier gain and equaliser bring every room into its window? Every combination is tried. */

import { type DistributionPart, designDistribution, genericCable } from 'slantpath/distribution';

const cable = genericCable('series-6');
const room = (name: string, lengthM: number): DistributionPart => ({
  kind: 'cable',
  cable,
  lengthM,
  to: { kind: 'outlet', name, lossDb: 1 },
});

const tree: DistributionPart = {
  kind: 'amplifier',
  name: 'amplifier',
  gainDb: 0,
  noiseFigureDb: 7,
  to: {
    kind: 'equaliser',
    name: 'equaliser',
    lossDb: 0,
    to: {
      kind: 'cable',
      cable,
      lengthM: 40,
      to: {
        kind: 'tap',
        name: 'first tap',
        tapLossDb: 15,
        throughLossDb: 1,
        taps: [room('class 1', 15)],
        to: {
          kind: 'cable',
          cable,
          lengthM: 35,
          to: {
            kind: 'tap',
            name: 'second tap',
            tapLossDb: 15,
            throughLossDb: 1,
            taps: [room('class 2', 10)],
            to: room('class 3', 25),
          },
        },
      },
    },
  },
};
const taps = [
  { tapLossDb: 10, throughLossDb: 2.5 },
  { tapLossDb: 15, throughLossDb: 1.5 },
  { tapLossDb: 20, throughLossDb: 1 },
];
const question = {
  system: { source: { levelDbuv: 72 }, tree },
  choices: [
    { part: 'amplifier', options: [0, 10, 20, 30].map((gainDb) => ({ gainDb })) },
    {
      part: 'equaliser',
      options: [0, 6, 12].map((atLow) => ({
        lossDb: [
          { frequencyMHz: 950, valueDb: atLow },
          { frequencyMHz: 2150, valueDb: 0.5 },
        ],
      })),
    },
    { part: 'first tap', options: taps },
    { part: 'second tap', options: taps },
  ],
  frequenciesMHz: [950, 1550, 2150],
};

const design = designDistribution(question);
console.log(`${design.kind}: ${design.fitting} of ${design.tried} combinations`);
for (const { part, values } of design.chosen) console.log(`${part}: ${JSON.stringify(values)}`);
for (const { name, marginLowDb, marginHighDb } of design.outlets)
  console.log(`${name}: ${marginLowDb.toFixed(1)} dB up, ${marginHighDb.toFixed(1)} dB to spare`);

const flat = designDistribution({ ...question, largestSlopeDb: 3 });
for (const change of flat.changes) console.log(`for a slope of 3 dB: ${JSON.stringify(change)}`);
