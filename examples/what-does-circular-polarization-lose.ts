/** Loss and isolation of circular polarization, a linear antenna on it, readings of it, and Faraday rotation. */

import {
  axialRatioRead,
  crossPolarIsolation,
  ellipticalMismatchLoss,
  faradayRotation,
  linearOnEllipticalLoss,
} from 'slantpath/antenna';

const pair = { firstAxialRatioDb: 1, secondAxialRatioDb: 1.5 };
for (const hands of ['same', 'opposite'] as const) {
  const across = ellipticalMismatchLoss({ ...pair, hands, tiltBetweenDeg: 90 });
  const along = ellipticalMismatchLoss({ ...pair, hands, tiltBetweenDeg: 0 });
  console.log(`${hands} hand: ${across.toFixed(2)} dB across, ${along.toFixed(2)} dB along`);
}
for (const angleDeg of [0, 45, 90])
  console.log(
    `linear antenna at ${angleDeg} degrees: ${linearOnEllipticalLoss({ axialRatioDb: 1, angleDeg }).toFixed(2)} dB`,
  );

const { isolationDb, worstCaseIsolationDb } = crossPolarIsolation({
  kind: 'circular',
  waveAxialRatioDb: 1,
  antennaAxialRatioDb: 1.5,
});
console.log(
  `isolation ${isolationDb.toFixed(1)} dB, at worst ${worstCaseIsolationDb.toFixed(1)} dB`,
);

const probe = axialRatioRead({ by: 'turned-linear-probe', highestDbm: -41.2, lowestDbm: -42.3 });
console.log(
  `probe: axial ratio ${probe.axialRatioDb.toFixed(1)} dB, discrimination ${probe.discriminationDb.toFixed(1)} dB`,
);

for (const frequencyGHz of [1.5, 4, 12]) {
  const turned = faradayRotation({ magneticFieldT: 45e-6, electronsPerM2: 5e17, frequencyGHz });
  console.log(
    `${frequencyGHz} GHz: a linear wave turns by ${turned.rotationDeg.toFixed(1)} degrees, ${turned.lossDb.toFixed(2)} dB`,
  );
}
