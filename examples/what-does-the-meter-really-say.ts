/** What the readings of a meter mean: a step over the noise, a MER under a ceiling, a marker and its bandwidth. */

import {
  carrierPower,
  displayedNoiseTooLowDb,
  energyRatios,
  occupiedBandwidthDb,
  signalWithoutNoise,
  symbolEnergyFromMer,
} from 'slantpath/readings';

for (const signalPlusNoiseDbm of [-61.3, -65, -67.2]) {
  const read = signalWithoutNoise({
    signalPlusNoiseDbm,
    noiseDbm: -67.4,
    standardUncertaintyDb: 0.3,
  });
  const step = (signalPlusNoiseDbm + 67.4).toFixed(1);
  const ratio = read.carrierToNoiseDb.toFixed(2);
  console.log(
    read.kind === 'signal'
      ? `a step of ${step} dB: C/N ${ratio} dB, u = ${read.standardUncertaintyDb.toFixed(2)} dB`
      : `a step of ${step} dB: C/N at most ${ratio} dB`,
  );
}

for (const valueDb of [11.4, 17, 19.8]) {
  const energy = symbolEnergyFromMer({ valueDb, ceilingDb: 20, standardUncertaintyDb: 0.3 });
  console.log(
    `MER ${valueDb} dB: Es/N0 ${energy.kind === 'at-least' ? 'at least ' : ''}${energy.symbolEnergyToNoiseDb.toFixed(2)} dB`,
  );
}

const marker = { markerDbm: -62.51, resolutionBandwidthMHz: 0.1, symbolRateMBd: 27.5 };
console.log(`power of the carrier: ${carrierPower(marker).toFixed(1)} dBm`);
console.log(`noise is shown too low by ${displayedNoiseTooLowDb('logarithm').toFixed(2)} dB`);
const { symbolEnergyToNoiseDb, bitEnergyToNoiseDb } = energyRatios({
  carrierToDensityDbHz: 79.3,
  symbolRateMBd: 27.5,
  informationBitsPerSymbol: 1.98,
});
console.log(
  `Es/N0 ${symbolEnergyToNoiseDb.toFixed(2)} dB, Eb/N0 ${bitEnergyToNoiseDb.toFixed(2)} dB`,
);
console.log(
  `C/N in the occupied bandwidth ${(-occupiedBandwidthDb(0.2)).toFixed(2)} dB below Es/N0`,
);
