/** The smallest reflector that keeps a hut at Tarnfell on the air for all but 0.05 % of the year. */

import { attenuationAt, climateAt } from 'slantpath/climate';
import { availabilityForMargin, dvbMode, smallestReflector, totalFade } from 'slantpath/link';
import { lookAngles } from 'slantpath/pointing';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const { elevationDeg, slantRangeKm } = lookAngles(hut, 16.4);
const climate = climateAt(hut);
const path = { frequencyGHz: 19.7, elevationDeg, tiltDeg: 45, diameterM: 1 };
const { gasDb, cloudDb } = attenuationAt(climate, { ...path, exceededPercent: 5 });
const fade = totalFade({
  ...path,
  latitudeDeg: hut.latitudeDeg,
  heightM: hut.heightM,
  rainHeightKm: climate.rainHeightKm,
  rainRate001MmPerH: climate.rainRate001MmPerH,
  wetRefractivityNUnits: climate.wetRefractivityNUnits,
  gasDb,
  cloudDb,
});
const link = {
  carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 3/4'), implementationLossDb: 0.8 },
  downlink: { eirpDbw: 50, frequencyGHz: 19.7, slantRangeKm, clearAttenuationDb: gasDb },
  receiver: { diameterM: 1, noiseFigureDb: 1.3, pointingOffsetDeg: 0.1 },
};

const choice = smallestReflector(link, { fade, exceededPercent: 0.05 });
console.log(choice.kind === 'found' ? `Smallest: ${choice.diameterM} m` : 'None of the list');
for (const { diameterM, marginDb, meets } of choice.tried.slice(0, 9)) {
  const { availabilityPercent } = availabilityForMargin({
    link: { ...link, receiver: { ...link.receiver, diameterM } },
    fade,
  });
  const line =
    `${String(diameterM).padStart(4)} m: margin ${marginDb.toFixed(2).padStart(5)} dB in that fade, ` +
    `up for ${availabilityPercent.toFixed(3)} %`;
  console.log(meets ? line : `${line} (too little)`);
}
