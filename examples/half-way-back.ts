/** An equal-level bracketing: two turns out, four back, so two back; and the same done too close to the peak. */

import { bracketPeak } from 'slantpath/peaking';

const wellDone = bracketPeak({
  peakLevelDbm: -38,
  referenceLevelDbm: -42,
  turnsOut: 2,
  turnsBack: 4,
  levelStepDb: 1,
});
console.log(
  `drop ${wellDone.dropDb} dB: turn back ${wellDone.moveBackTurns}, ` +
    `off by at most ${wellDone.worstErrorTurns?.toFixed(2)} turns (${wellDone.kind})`,
);

const tooClose = bracketPeak({
  peakLevelDbm: -38,
  referenceLevelDbm: -39,
  turnsOut: 1,
  turnsBack: 2,
  levelStepDb: 1,
});
console.log(
  `drop ${tooClose.dropDb} dB: ${tooClose.kind}, ` +
    `at least ${tooClose.leastUsefulDropDb.toFixed(1)} dB is needed`,
);
