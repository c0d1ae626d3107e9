/** Wind load, moment and ballast of a 1.2 m reflector on a flat roof, and what its mast costs in pointing. */

import {
  ballast,
  mastUnderWind,
  peakVelocityPressure,
  reflectorLoad,
  velocityPressure,
  windExceededPercent,
  windPointingLoss,
} from 'slantpath/wind';

const place = { basicSpeedMPerS: 25, terrain: 'III', heightM: 12 } as const;
const { meanSpeedMPerS, peakPressurePa } = peakVelocityPressure(place);
console.log(`mean ${meanSpeedMPerS.toFixed(1)} m/s, peak pressure ${peakPressurePa.toFixed(0)} Pa`);

const dish = { diameterM: 1.2, heightAboveFootM: 1 };
const { forceN, footMomentNm, leftToEngineer } = reflectorLoad({
  ...dish,
  pressurePa: peakPressurePa,
});
console.log(`force ${forceN.toFixed(0)} N, moment ${footMomentNm.toFixed(0)} N m`);

for (const frictionRatio of [0.3, 0.4, 0.6]) {
  const needed = ballast({ forceN, leverM: 1, baseM: 1.4, frictionRatio });
  console.log(
    `friction ${frictionRatio}: ${needed.slidingKg.toFixed(0)} kg against sliding, ${needed.overturningKg.toFixed(0)} kg against overturning`,
  );
}
console.log(`for a structural engineer: ${leftToEngineer.join(', ')}`);

const steady = reflectorLoad({ ...dish, pressurePa: velocityPressure({ windSpeedMPerS: 15 }) });
const bent = mastUnderWind({
  outsideDiameterM: 0.06,
  wallM: 0.0029,
  lengthM: 1,
  forceN: steady.forceN,
});
const { slopeDeg, twistDeg } = bent;
const { lossDb } = windPointingLoss({ slopeDeg, twistDeg, beamwidthDeg: 1.46 });
const share = windExceededPercent({ windSpeedMPerS: 15, meanSpeedMPerS: 4 });
console.log(
  `at 15 m/s: ${slopeDeg.toFixed(2)} degrees, ${lossDb.toFixed(2)} dB, exceeded for ${share.toExponential(1)} % of the year`,
);
