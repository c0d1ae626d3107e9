/** Rain falls on a Tarnfell hut while it is accepted: what would the reading be under a clear sky? */

import { clearSkyEquivalent, judgeReadings } from 'slantpath/acceptance';

const inRain = {
  quantity: 'carrier-to-noise',
  reading: 8.9,
  standardUncertainty: 0.5,
  frequencyGHz: 20.2,
  elevationDeg: 36.2,
} as const;

const byBeacon = clearSkyEquivalent({
  ...inRain,
  evidence: {
    kind: 'beacon',
    frequencyGHz: 12.5,
    elevationDeg: 34.9,
    fadeDb: 0.9,
    fadeStandardUncertaintyDb: 0.2,
  },
});
const byGauge = clearSkyEquivalent({
  ...inRain,
  evidence: { kind: 'rain-rate', rainRateMmPerH: 6, rainHeightAboveStationKm: 1.2 },
});
for (const [name, found] of [
  ['beacon', byBeacon],
  ['gauge', byGauge],
] as const)
  console.log(
    `by ${name}: fade ${found.fadeDb.toFixed(1)} dB, noise up ${found.noiseRiseDb.toFixed(1)} dB, ` +
      `clear sky ${found.clearSkyReading.toFixed(1)} dB, standard uncertainty ${found.standardUncertainty.toFixed(1)} dB`,
  );

const [judged] = judgeReadings({
  readings: [
    {
      quantity: 'carrier-to-noise',
      slot: '16.4 E',
      reading: byBeacon.clearSkyReading,
      standardUncertainty: byBeacon.standardUncertainty,
    },
  ],
  limits: [{ quantity: 'carrier-to-noise', lowerLimit: 8 }],
  expected: [
    { quantity: 'carrier-to-noise', slot: '16.4 E', expected: 13.2, standardUncertainty: 0.7 },
  ],
});
console.log(`${judged?.decision?.verdict}, ${judged?.expectation?.finding}`);
