/** A mast at Tarnfell leans by 1.5 degrees towards the south-west: what it does, and how much would be allowed. */

import {
  allowedMastLean,
  lookAngles,
  mastLeanAfterPeaking,
  mastLeanError,
} from 'slantpath/pointing';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const lean = { leanDeg: 1.5, leanAzimuthDeg: 225 };
const middle = lookAngles(hut, 16.4);
const west = lookAngles(hut, 7.2);

if (middle.kind === 'visible' && west.kind === 'visible') {
  const error = mastLeanError({
    ...lean,
    azimuthDeg: middle.azimuthDeg,
    elevationDeg: middle.elevationDeg,
  });
  console.log(
    `set by its scales the beam is ${error.elevationErrorDeg.toFixed(2)} degrees off in elevation`,
  );
  console.log(`and ${error.acrossErrorDeg.toFixed(2)} degrees aside`);
  console.log(`peaked, the antenna is rolled by ${error.skewErrorDeg.toFixed(2)} degrees`);

  const rest = mastLeanAfterPeaking({ ...lean, peaked: middle, target: west });
  console.log(
    `turned from 16.4 E to 7.2 E by the scales it misses by ${rest.offsetDeg.toFixed(2)} degrees`,
  );

  const budget = { lossDb: 0.5, beamwidthDeg: 1.94 };
  const preset = allowedMastLean(budget);
  const turned = allowedMastLean({ ...budget, peaked: middle, target: west });
  for (const [when, allowed] of [
    ['only preset', preset],
    ['peaked, then turned', turned],
  ] as const)
    if (allowed.kind === 'limited')
      console.log(
        `${when}: up to ${allowed.allowedLeanDeg.toFixed(2)} degrees, ` +
          `${allowed.allowedLeanMmPerM.toFixed(0)} mm for each metre of plumb line`,
      );
}
