/** An equal-level bracketing: three turns out, five back, so two and a half back; and the same done too close to the peak. */

import { bracketPeak } from 'slantpath/peaking';

const wellDone = bracketPeak({
  peakLevelDbm: -47,
  referenceLevelDbm: -51,
  turnsOut: 3,
  turnsBack: 5,
  levelStepDb: 1,
});
console.log(
  `drop ${wellDone.dropDb} dB: turn back ${wellDone.moveBackTurns}, ` +
    `off by at most ${wellDone.worstErrorTurns?.toFixed(2)} turns (${wellDone.kind})`,
);

const tooClose = bracketPeak({
  peakLevelDbm: -47,
  referenceLevelDbm: -48,
  turnsOut: 1,
  turnsBack: 2,
  levelStepDb: 1,
});
console.log(
  `drop ${tooClose.dropDb} dB: ${tooClose.kind}, ` +
    `at least ${tooClose.leastUsefulDropDb.toFixed(1)} dB is needed`,
);
