/** Line-up of a two-way terminal: EIRP, what goes past the satellite, compression, isolation, power control. */

import { antennaGain } from 'slantpath/antenna';
import {
  commissioningSteps,
  compressionPoint,
  crossPolarIsolationRead,
  lineUp,
  offAxisMargin,
  uplinkPowerControl,
} from 'slantpath/transmit';

const antenna = { diameterM: 1.2, frequencyGHz: 14.25 };
const line = lineUp({
  powerW: 4,
  feedLossDb: 0.5,
  antennaGainDbi: antennaGain(antenna).gainDbi,
  symbolRateMBd: 2,
  allowedEirpDbw: 49,
});
console.log(
  `EIRP ${line.eirpDbw.toFixed(1)} dBW, ${line.toAllowedDb?.toFixed(1)} dB to what is allowed`,
);
console.log(`levels: ${line.stepsDbw.map((step) => step.toFixed(1)).join(', ')} dBW`);

for (const mispointingDeg of [0, 0.2, 0.5]) {
  const least = offAxisMargin({
    powerW: 10 ** (line.flangeDbw / 10),
    symbolRateMBd: 2,
    pattern: { kind: 'S.580-6', ...antenna },
    mispointingDeg,
    mask: 'S.524-9-14GHz',
  });
  if (least.kind === 'margin')
    console.log(
      `off by ${mispointingDeg} degrees: ${least.marginDb.toFixed(1)} dB left at ${least.offAxisDeg.toFixed(1)} degrees`,
    );
}

const inputs = [-30, -26, -24, -22, -20];
const outputs = [30, 33.9, 35.6, 36.9, 37.6];
const point = compressionPoint(
  inputs.map((inputDbm, i) => ({ inputDbm, outputDbm: outputs[i] ?? 0 })),
);
if (point.kind === 'compressed')
  console.log(`compressed by 1 dB at ${point.outputDbm.toFixed(1)} dBm`);

const isolation = crossPolarIsolationRead({
  coPolarDbm: -48.5,
  crossPolarDbm: -78.1,
  noiseDbm: -82,
});
console.log(`isolation ${isolation.isolationDb.toFixed(1)} dB`);
const { leftDb } = uplinkPowerControl({ fadeDb: 8, amplifierReserveDb: 6, allowedRiseDb: 10 });
console.log(`power control leaves ${leftDb.toFixed(1)} dB of the fade`);
for (const { step, leaveOf, radiates } of commissioningSteps)
  console.log(`${step} (${leaveOf})${radiates ? ', radiates' : ''}`);
