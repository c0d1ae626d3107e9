/** Four receivers on one cable: messages of both generations, conflicts of user bands, level at each band. */

import { genericCable, longestRun, outletLevels } from 'slantpath/distribution';
import { userBandCommand, userBandConflicts, wideUserBandCommand } from 'slantpath/tuning';

const centresMHz = [1210, 1420, 1680, 2040];
const bands = centresMHz.map((centreMHz, index) => ({
  name: String(index + 1),
  centreMHz,
  bandwidthMHz: 46,
}));

const request = {
  intermediateFrequencyMHz: 1338,
  polarization: 'horizontal',
  band: 'high',
} as const;
const first = userBandCommand({ ...request, userBand: 0, userBandMHz: 1210 });
console.log(`EN 50494: word ${first.tuningWord}, ${first.message}, tune ${first.tunedMHz} MHz`);
const second = wideUserBandCommand({ ...request, userBand: 1 });
console.log(`EN 50607: word ${second.tuningWord}, ${second.message}`);

console.log(`${userBandConflicts({ bands, marginMHz: 2 }).length} conflicts`);
const crowded = [...bands, { name: '5', centreMHz: 1450, bandwidthMHz: 46 }];
for (const conflict of userBandConflicts({ bands: crowded, marginMHz: 2 }))
  console.log(JSON.stringify(conflict));

const cable = genericCable('series-6');
const [receiver] = outletLevels(
  {
    source: { levelDbuv: 84 },
    tree: {
      kind: 'cable',
      cable,
      lengthM: 45,
      to: { kind: 'outlet', name: 'receiver', lossDb: 9 },
    },
  },
  centresMHz,
);
for (const { frequencyMHz, levelDbuv } of receiver?.points ?? [])
  console.log(`${frequencyMHz} MHz: ${levelDbuv.toFixed(1)} dBuV`);

const run = longestRun({
  cable,
  levelDbuv: 84,
  lowestLevelDbuv: 47,
  highestFrequencyMHz: 2040,
  otherLossDb: 9,
});
console.log(`longest cable: ${run.lengthM?.toFixed(0)} m`);
