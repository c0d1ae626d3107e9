/** A tree of thirty outlets over frequency beside the bare sum of its decibels, and a search over its tap values. */

import {
  type DistributionPart,
  designDistribution,
  genericCable,
  outletLevels,
} from 'slantpath/distribution';
import { type BenchRow, measure } from './measure.js';

const cable = genericCable('series-6');

/** A riser with `floors` taps of three rooms each. */
function riser(floors: number): DistributionPart {
  const room = (floor: number, side: string): DistributionPart => ({
    kind: 'cable',
    cable,
    lengthM: 12,
    to: { kind: 'outlet', name: `${floor} ${side}`, lossDb: 1 },
  });
  const floor = (number: number): DistributionPart => ({
    kind: 'cable',
    cable,
    lengthM: 4,
    to: {
      kind: 'tap',
      name: `tap ${number}`,
      tapLossDb: 18,
      throughLossDb: 1.5,
      taps: ['a', 'b', 'c'].map((side) => room(number, side)),
      to: number < floors ? floor(number + 1) : null,
    },
  });
  return { kind: 'amplifier', gainDb: 30, noiseFigureDb: 7, to: floor(1) };
}

export default function bench(): BenchRow[] {
  const tree = riser(10);
  const frequencies = [950, 1250, 1550, 1850, 2150];
  const system = { source: { levelDbuv: 75, carrierToNoiseDb: 14 }, tree };
  const each = 40;
  const bare = () => {
    let sum = 0;
    for (let i = 0; i < each; i++)
      for (const f of frequencies) {
        const loss = (lengthM: number) =>
          ((19.965 * Math.sqrt(f / 1000) + (1.334 * f) / 1000) * lengthM) / 100;
        let level = 105 + i * 0.01;
        let noise = 10 ** (9 + i * 0.01);
        for (let floor = 0; floor < 10; floor++) {
          level -= loss(4) + 1.5;
          noise = noise * 10 ** (-(loss(4) + 1.5) / 10) + 8;
          for (let room = 0; room < 3; room++)
            sum += level - 18 - loss(12) - 1 + 10 * Math.log10(noise * 10 ** (-loss(12) / 10) + 8);
        }
      }
    return sum;
  };
  return [
    ...measure('distribution, 30 outlets at 5 frequencies', each, [
      { name: 'bare arithmetic', run: bare },
      {
        name: 'outletLevels',
        run: () => {
          let sum = 0;
          for (let i = 0; i < each; i++)
            for (const outlet of outletLevels(system, frequencies)) sum += outlet.lowestDbuv;
          return sum;
        },
      },
    ]),
    ...measure(
      'distribution, 81 designs of 30 outlets (budget 50 ms)',
      1,
      [
        {
          name: 'designDistribution',
          run: () =>
            designDistribution({
              system,
              frequenciesMHz: [950, 2150],
              choices: [1, 4, 7, 10].map((floor) => ({
                part: `tap ${floor}`,
                options: [
                  { tapLossDb: 22, throughLossDb: 1 },
                  { tapLossDb: 18, throughLossDb: 1.5 },
                  { tapLossDb: 14, throughLossDb: 2 },
                ],
              })),
            }).smallestMarginDb,
        },
      ],
      9,
    ),
  ];
}
