/** A hut on Tarnfell: seven readings in half-decibel steps while the azimuth is turned, one of them spoiled. */

import { azimuthOnSkyDeg, fitPeak } from 'slantpath/peaking';

const elevationDeg = 36.2;
const azimuthDeg = [-1.75, -1.25, -0.75, -0.25, 0.25, 0.75, 1.25, 1.75, 2.25, 2.75];
const positionDeg = azimuthDeg.map((azimuth) =>
  azimuthOnSkyDeg({ azimuthDeg: azimuth, elevationDeg }),
);
const levelDbm = [-49.0, -46.0, -43.0, -41.0, -40.5, -45.5, -40.0, -41.0, -43.0, -46.0];

const fit = fitPeak({
  positionDeg,
  levelDbm,
  levelStepDb: 0.5,
  currentPositionDeg: 0,
  bands: [{ name: 'Ka', beamwidthDeg: 1.15 }],
});

if (fit.kind === 'peak') {
  const [from, to] = fit.interval95Deg;
  console.log(
    `peak ${fit.positionDeg.toFixed(3)} deg on the sky, 95 %: ${from.toFixed(3)} to ${to.toFixed(3)}`,
  );
  console.log(
    `beamwidth ${fit.beamwidthDeg.toFixed(2)} deg, one reading scatters by ${fit.standardDeviationDb.toFixed(2)} dB`,
  );
  console.log(`set aside: reading ${fit.outliers.map((index) => index + 1).join(', ')}`);
  console.log(
    `loss at 0 deg: ${fit.lossNowDb.toFixed(2)} dB, at most ${fit.lossNowUpper95Db.toFixed(2)} dB`,
  );
  console.log(`loss after the move: at most ${fit.lossAtPeakUpper95Db.toFixed(3)} dB`);
  for (const band of fit.bands)
    console.log(
      `${band.name}: ${band.lossNowDb.toFixed(2)} dB now, at most ${band.lossAtPeakUpper95Db.toFixed(3)} dB after the move`,
    );
} else {
  console.log(fit.kind);
}
