/** Seven readings about a peak; its width is set against the lobes of a 0.9 m reflector. */

import { fitPeak, sideLobeTest } from 'slantpath/peaking';

const fit = fitPeak({
  positionDeg: [2.55, 2.7, 2.8, 2.95, 3.1, 3.2, 3.35],
  levelDbm: [-62.6, -61.2, -60.5, -60.1, -60.6, -61.1, -63.2],
});

if (fit.kind === 'peak') {
  const { beamwidthDeg, beamwidthStandardUncertaintyDeg } = fit;
  console.log(
    `width ${beamwidthDeg.toFixed(2)} +- ${beamwidthStandardUncertaintyDeg.toFixed(2)} deg`,
  );
  const test = sideLobeTest({
    aperture: { diameterM: 0.9, frequencyGHz: 11.7 },
    beamwidthDeg,
    beamwidthStandardUncertaintyDeg,
  });
  console.log(
    `${test.kind}, probability of the main lobe ${test.mainProbabilityRatio.toExponential(0)}`,
  );
  for (const one of test.hypotheses)
    console.log(
      `lobe ${one.order}: ${one.beamwidthDeg.toFixed(2)} deg wide, off by ${one.widthDeviations.toFixed(1)} sigma`,
    );
  console.log(
    `turn ${test.decidingMoveDeg.toFixed(2)} deg to either side: on one it should rise by ${test.changeIfSideLobeDb.toFixed(0)} dB`,
  );
}
