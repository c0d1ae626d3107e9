/** Station School: one antenna, a long run, three classrooms. Level, slope and carrier-to-noise ratio at each. */

import {
  type DistributionPart,
  genericCable,
  outletIsolation,
  outletLevels,
  supplyAlong,
  windowChecks,
} from 'slantpath/distribution';

const drop = (name: string, lengthM: number): DistributionPart => ({
  kind: 'cable',
  name: `drop to ${name}`,
  cable: genericCable('series-6'),
  lengthM,
  to: { kind: 'outlet', name, lossDb: 1 },
});

const system = {
  source: {
    levelDbuv: 75,
    carrierToNoiseDb: 14,
    supply: { currentA: 0.15, minimumVoltageV: 16 },
  },
  tree: {
    kind: 'cable',
    name: 'run',
    cable: genericCable('series-11'),
    lengthM: 60,
    to: {
      kind: 'splitter',
      name: 'splitter',
      lossDb: 6.5,
      outputs: [drop('class 1', 15), drop('class 2', 30), drop('class 3', 45)],
    },
  },
} as const;

const frequenciesMHz = [950, 2150];
for (const { name, points, slopeDb } of outletLevels(system, frequenciesMHz)) {
  const [low, high] = points.map(({ levelDbuv }) => levelDbuv.toFixed(1));
  const ratio = points.at(-1)?.carrierToNoiseDb.toFixed(2);
  console.log(`${name}: ${low} to ${high} dBuV, slope ${slopeDb.toFixed(1)} dB, C/N ${ratio} dB`);
}
for (const { name, kind, marginLowDb } of windowChecks(system, { frequenciesMHz }))
  console.log(`${name}: ${kind}, margin ${marginLowDb.toFixed(1)} dB to the lower limit`);
for (const { between, lowestDb } of outletIsolation(system, frequenciesMHz))
  console.log(`${between.join(' and ')}: isolation ${lowestDb.toFixed(1)} dB`);
const supply = supplyAlong(system, { from: 'class 3', voltageV: 18 });
console.log(`supply from class 3: ${supply.kind}, ${supply.points.at(-1)?.voltageV.toFixed(2)} V`);
