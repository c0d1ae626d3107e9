/** The margin of a Tarnfell hut at 20 GHz: what each availability costs, and the outages that remain. */

import { attenuationAt, climateAt } from 'slantpath/climate';
import { lookAngles } from 'slantpath/pointing';
import { fadeDuration, worstMonthPercent } from 'slantpath/propagation';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const climate = climateAt(hut);
const path = {
  frequencyGHz: 20,
  elevationDeg: lookAngles(hut, 16.4).elevationDeg,
  tiltDeg: 45,
  diameterM: 0.9,
};

console.log(
  `${climate.rainRate001MmPerH.toFixed(1)} mm/h, rain height ${climate.rainHeightKm.toFixed(2)} km`,
);
for (const exceededPercent of [1, 0.1, 0.05, 0.01]) {
  const { attenuationDb, rainDb, spread } = attenuationAt(climate, { ...path, exceededPercent });
  console.log(
    `${100 - exceededPercent} %: ${attenuationDb.toFixed(1)} dB (rain ${rainDb.toFixed(1)} dB), ` +
      `give or take ${spread.standardUncertaintyDb.toFixed(1)} dB`,
  );
}

const { attenuationDb } = attenuationAt(climate, { ...path, exceededPercent: 0.05 });
const long = fadeDuration({
  frequencyGHz: path.frequencyGHz,
  elevationDeg: path.elevationDeg,
  attenuationDb,
  durationS: 600,
  totalFadeTimeS: 0.0005 * 365.25 * 86400,
});
console.log(`${long.fades.toFixed(1)} outages a year last longer than ten minutes`);
console.log(`worst month ${worstMonthPercent(0.05).worstMonthPercent.toFixed(2)} %`);
