/** Rain at the hut of Tarnfell from four sources, and what each makes of the margin. */

import { attenuationAt, climateAt, type LocalRain } from 'slantpath/climate';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const path = {
  frequencyGHz: 20,
  elevationDeg: 36.2,
  tiltDeg: 45,
  diameterM: 0.9,
  efficiencyRatio: 0.65,
  exceededPercent: 0.05,
};

const sources: LocalRain[] = [
  { measured: { rainRate001MmPerH: 33, years: 6 } },
  {
    monthlyNormals: {
      monthlyRainMm: [52, 45, 68, 92, 128, 131, 137, 142, 109, 104, 96, 61],
      monthlyTemperatureK: [267, 267, 270, 273, 278, 281, 284, 284, 280, 277, 271, 268],
    },
  },
  {},
  { rainZone: 'K', use: 'rain-zone' },
];

for (const local of sources) {
  const climate = climateAt(hut, local);
  const { attenuationDb, spread } = attenuationAt(climate, path);
  console.log(
    `${climate.rainSource.padEnd(16)} ${climate.rainRate001MmPerH.toFixed(1)} mm/h ` +
      `± ${(100 * climate.rainUncertainty.standardUncertaintyRatio).toFixed(0)} %, ` +
      `margin ${attenuationDb.toFixed(1)} dB ± ${spread.standardUncertaintyDb.toFixed(1)} dB`,
  );
}
