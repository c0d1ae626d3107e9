/** The null of the cross-polar level: half way between two equal levels, then fitted to seven readings. */

import { bracketNull, fitNull, rotationFromIsolation } from 'slantpath/peaking';

const bracket = bracketNull({ firstDeg: -18, secondDeg: 24, levelStepDb: 1 });
console.log(
  `bracketed: ${bracket.nullDeg} deg, off by at most ${bracket.worstErrorDeg?.toFixed(2)} deg, isolation at least ${bracket.isolationAtLeastDb.toFixed(1)} dB`,
);

const fit = fitNull({
  rotationDeg: [-20, -12, -5, 2, 10, 18, 25],
  levelDbm: [-48.5, -51.9, -57.3, -69.6, -58.3, -51.8, -48.7],
});
if (fit.kind === 'null') {
  const [from, to] = fit.interval95Deg;
  console.log(
    `fitted: ${fit.nullDeg.toFixed(2)} deg, 95 %: ${from.toFixed(2)} to ${to.toFixed(2)} deg`,
  );
  console.log(`isolation of antenna and wave: ${fit.depthDb.toFixed(1)} dB`);
}

const rotation = rotationFromIsolation(24.3, 30);
if (rotation.kind === 'rotation')
  console.log(`24.3 dB where 30 dB are to be had: ${rotation.rotationErrorDeg.toFixed(1)} deg off`);
