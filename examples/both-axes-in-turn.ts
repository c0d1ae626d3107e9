/** Nine readings over azimuth and elevation, then the two axes peaked in turn. */

import { alternatingSearch, fitCoupledPeak } from 'slantpath/peaking';

const fit = fitCoupledPeak({
  firstDeg: [-0.8, 0, 0.8, -0.8, 0, 0.8, -0.8, 0, 0.8],
  secondDeg: [-0.8, -0.8, -0.8, 0, 0, 0, 0.8, 0.8, 0.8],
  levelDbm: [-48.5, -42.1, -41.4, -44.7, -40.2, -41.5, -45.1, -42.3, -45.3],
  currentDeg: [-0.8, 0.8],
});

if (fit.kind === 'peak') {
  const [first, second] = fit.positionDeg;
  console.log(
    `peak at ${first.toFixed(2)} and ${second.toFixed(2)} deg, coupling ${fit.couplingRatio.toFixed(2)}`,
  );
  const search = alternatingSearch({
    beamwidthDeg: fit.beamwidthDeg,
    narrowAxisDeg: fit.narrowAxisDeg,
    startDeg: [-0.8 - first, 0.8 - second],
  });
  console.log(`start: ${search.startLossDb.toFixed(2)} dB`);
  for (const step of search.steps)
    console.log(
      `${step.axis === 'first' ? 'azimuth' : 'elevation'} peaked: ${step.lossDb.toFixed(2)} dB`,
    );
}
