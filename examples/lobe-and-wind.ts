/** What illumination makes of a lobe, and what wind and a satellite's box cost on it. */

import {
  depointingLoss,
  halfPowerBeamwidth,
  illuminatedAperture,
  patternGain,
} from 'slantpath/antenna';

for (const edgeTaperDb of [0, 10, 15]) {
  const { beamwidthFactorDeg, taperEfficiencyRatio, firstSideLobeDb } = illuminatedAperture({
    edgeTaperDb,
  });
  console.log(
    `Rim ${edgeTaperDb} dB down: ${beamwidthFactorDeg.toFixed(1)} degrees x wavelength / D, ` +
      `efficiency ${taperEfficiencyRatio.toFixed(3)}, first side lobe ${firstSideLobeDb.toFixed(1)} dB down`,
  );
}

for (const diameterM of [0.6, 1.2, 2.4]) {
  const beamwidthDeg = halfPowerBeamwidth({ diameterM, frequencyGHz: 12 });
  const mount = {
    beamwidthDeg,
    alongArcOffsetDeg: 0.05,
    windStandardDeviationDeg: 0.04,
    eastWestBoxDeg: 0.1,
    northSouthBoxDeg: 0.1,
  };
  const losses = [10, 1, 0.1].map((percent) => depointingLoss(mount, percent).lossDb.toFixed(2));
  console.log(`${diameterM} m: ${losses.join(', ')} dB exceeded for 10, 1 and 0.1 % of the time`);
}

const side = patternGain({ kind: 'S.580-6', diameterM: 2.4, frequencyGHz: 12 }, 3);
if (side.kind === 'gain') console.log(`S.580-6 at 3 degrees: ${side.gainDbi.toFixed(2)} dBi`);
