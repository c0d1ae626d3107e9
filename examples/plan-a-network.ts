/** Rain and total attenuation for the clinics of a river at once, with the margin that most of them need. */

import { attenuationAtBatch } from 'slantpath/climate';
import { lookAnglesBatch } from 'slantpath/pointing';

const latitudeDeg = [-0.4, -0.52, -0.61, -0.83, -1.02];
const longitudeDeg = [102, 102.4, 101.7, 102.9, 103.3];
const heightM = [35, 28, 60, 18, 12];

const { elevationDeg } = lookAnglesBatch({
  latitudeDeg,
  longitudeDeg,
  heightM,
  orbitalLongitudeDeg: 104.5,
});
const plan = attenuationAtBatch({
  latitudeDeg,
  longitudeDeg,
  heightM,
  elevationDeg,
  frequencyGHz: 14.2,
  tiltDeg: 0,
  diameterM: 1.8,
  exceededPercent: 0.1,
});

for (const [row, total] of plan.attenuationDb.entries())
  console.log(
    `${latitudeDeg[row]} ${longitudeDeg[row]}: ${plan.rainRate001MmPerH[row]?.toFixed(0)} mm/h, ` +
      `rain ${plan.rainDb[row]?.toFixed(1)} dB, all causes ${total.toFixed(1)} dB`,
  );
console.log(`The worst needs ${Math.max(...plan.attenuationDb).toFixed(1)} dB.`);
