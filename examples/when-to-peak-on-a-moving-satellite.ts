/** A satellite whose orbit is inclined by 0.7 degree: its day over Tarnfell, and when to peak a fixed antenna. */

import { dailyFigure, fixedAntennaLoss, stationKeepingBox } from 'slantpath/pointing';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const box = stationKeepingBox({ station, orbitalLongitudeDeg: 16.4 });
console.log(
  `a satellite kept within 0.1 degree strays by ${box.largestOffsetDeg.toFixed(2)} degree at most`,
);

const day = dailyFigure({ station, orbitalLongitudeDeg: 16.4, inclinationDeg: 0.7 });
const fixed = fixedAntennaLoss({ track: day, beamwidthDeg: 1.94 });
const hour = (index: number) => `${day[index]?.sinceNodeH.toFixed(1)} h after the node`;

console.log(
  `elevation ${fixed.elevationDeg.lowest.toFixed(2)} to ${fixed.elevationDeg.highest.toFixed(2)} degrees`,
);
console.log(
  `best aim: at most ${fixed.worstLossDb.toFixed(1)} dB, ${fixed.meanLossDb.toFixed(1)} dB in the mean`,
);
for (const [name, index] of [
  ['best', fixed.bestIndex],
  ['worst', fixed.worstIndex],
] as const)
  console.log(
    `peaked at the ${name} moment, ${hour(index)}: ${fixed.worstLossIfPeakedThereDb[index]?.toFixed(1)} dB at most`,
  );
