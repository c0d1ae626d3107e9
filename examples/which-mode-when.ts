/** Which mode a Ka-band link of a Tarnfell hut can use for how much of the year. */

import { attenuationAt, climateAt } from 'slantpath/climate';
import { adaptiveModes, dvbMode, dvbModes, outages, totalFade } from 'slantpath/link';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const climate = climateAt(hut);
const path = { frequencyGHz: 19.7, elevationDeg: 36.24, tiltDeg: 45, diameterM: 0.9 };
const { gasDb, cloudDb } = attenuationAt(climate, { ...path, exceededPercent: 5 });
const link = {
  carrier: {
    symbolRateMBd: 30,
    mode: dvbMode('DVB-S2', 'QPSK 1/4'),
    implementationLossDb: 1,
  },
  downlink: {
    eirpDbw: 50,
    frequencyGHz: 19.7,
    slantRangeKm: 38069.9,
    clearAttenuationDb: gasDb,
  },
  receiver: { diameterM: 0.9, noiseFigureDb: 1.3, pointingOffsetDeg: 0.05 },
};
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
const year = adaptiveModes({ link, fade, modes: dvbModes('DVB-S2'), switchingMarginDb: 0.5 });

for (const { mode, bitRateMbps, sharePercent } of year.modes)
  if (sharePercent > 0)
    console.log(
      `${mode.name.padEnd(12)} ${bitRateMbps.toFixed(1).padStart(6)} Mbit/s for ${sharePercent.toFixed(4).padStart(8)} % of the year`,
    );
console.log(
  `Mean ${year.meanBitRateMbps.toFixed(2)} Mbit/s, out for ${year.outagePercent.toFixed(4)} %`,
);

const slowest = fade(Math.max(0.001, year.outagePercent));
const out = outages({
  exceededPercent: Math.max(0.001, year.outagePercent),
  frequencyGHz: 19.7,
  elevationDeg: path.elevationDeg,
  attenuationDb: slowest.attenuationDb,
});
console.log(
  `${(60 * out.outageHPerYear).toFixed(1)} minutes a year, ${(60 * out.worstMonthH).toFixed(1)} of them in the worst month`,
);
