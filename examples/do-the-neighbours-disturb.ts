/** What the satellites beside a slot add to the noise of a Tarnfell hut, by the size of the reflector. */

import { antennaGain } from 'slantpath/antenna';
import { adjacentSatellites } from 'slantpath/link';
import { slotSeparation } from 'slantpath/pointing';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const slots = [
  { toLongitudeDeg: 13.4, eirpDensityDbwPerMHz: 36 },
  { toLongitudeDeg: 19.4, eirpDensityDbwPerMHz: 35 },
];
const neighbours = slots.map(({ toLongitudeDeg, eirpDensityDbwPerMHz }) => ({
  separationDeg: slotSeparation({ station, fromLongitudeDeg: 16.4, toLongitudeDeg }).topocentricDeg,
  eirpDensityDbwPerMHz,
}));
for (const { separationDeg } of neighbours)
  console.log(`3 degrees of longitude are ${separationDeg.toFixed(3)} degrees on the sky`);

for (const diameterM of [0.45, 0.6, 0.75, 0.9, 1.2, 1.8]) {
  const result = adjacentSatellites({
    pattern: { kind: 'RR-AP8', diameterM, frequencyGHz: 11.7 },
    wantedGainDbi: antennaGain({ diameterM, frequencyGHz: 11.7 }).gainDbi,
    eirpDensityDbwPerMHz: 35.6,
    neighbours,
  });
  if (result.kind === 'interference')
    console.log(
      `${diameterM} m: ${result.neighbours.map(({ carrierToInterferenceDb }) => carrierToInterferenceDb.toFixed(1)).join(' and ')} dB, together ${result.carrierToInterferenceDb.toFixed(1)} dB`,
    );
}
