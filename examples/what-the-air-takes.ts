/** What clear and cloudy air takes from a signal at a Tarnfell hut, by cause, frequency and elevation. */

import {
  approximateGasAttenuation,
  cloudAttenuation,
  gasSlantAttenuationBatch,
  referenceAtmosphere,
  scintillationFade,
} from 'slantpath/propagation';

const heightM = 1900;
const { pressureHpa, temperatureK } = referenceAtmosphere(heightM / 1000);
const surface = { pressureHpa, temperatureK, waterVapourDensityGPerM3: 4 };
console.log(`Air at the hut: ${pressureHpa.toFixed(1)} hPa, ${temperatureK.toFixed(2)} K, 4 g/m3`);

console.log('\nGHz   oxygen  vapour  cloud   scintillation (dB, at 36 degrees)');
for (const frequencyGHz of [4, 12, 20, 30, 45]) {
  const gas = approximateGasAttenuation({ ...surface, frequencyGHz, elevationDeg: 36 });
  const cloud = cloudAttenuation({ frequencyGHz, elevationDeg: 36, liquidWaterKgPerM2: 0.6 });
  const flicker = scintillationFade({
    frequencyGHz,
    elevationDeg: 36,
    diameterM: 0.9,
    wetRefractivityNUnits: 45,
    exceededPercent: 1,
  });
  console.log(
    [
      String(frequencyGHz).padEnd(4),
      gas.oxygenDb.toFixed(3).padStart(8),
      gas.waterVapourDb.toFixed(3).padStart(7),
      cloud.attenuationDb.toFixed(3).padStart(7),
      flicker.attenuationDb.toFixed(3).padStart(7),
    ].join(' '),
  );
}

const elevationDeg = [5, 10, 20, 36, 60, 90];
const layered = gasSlantAttenuationBatch({ frequencyGHz: 20, elevationDeg, heightM });
console.log('\nGases at 20 GHz, layer by layer through the mean atmosphere:');
elevationDeg.forEach((elevation, row) => {
  console.log(
    `${String(elevation).padStart(3)} degrees: ${layered.attenuationDb[row]?.toFixed(3)} dB`,
  );
});
