/** Plans of worked solutions for the peak of a lobe. */

import { pointingOffset } from '../../antenna/index.js';
import { bracketPeak, fitPeak } from '../../peaking/index.js';
import { given, input, step, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

/** Scatter that the fits are told, so that as few readings as unknowns are enough; it moves no peak. */
const SCATTER_DB = 0.001;
const LOBE = 'own derivation: lobe of 12 (offset / width)^2 dB';

const SIGNAL: SolutionPlan = {
  name: 'signal-over-noise-floor',
  title: 'Which level is the signal’s own?',
  part: 'peaking',
  functionName: 'fitPeak',
  givens: [
    given('levelDbm', 'L', 'L', 'level as read', 'dBm', [-52, -40, 0.5]),
    given('noiseFloorDbm', 'F', 'F', 'level of the noise alone', 'dBm', [-58, -54, 0.5]),
  ],
  constants: [],
  steps: stepRows`
      S | S | level without the noise | 10 * log(10^(L / 10) - 10^(F / 10)) | dBm | 2
        | powers add: a reading is signal and noise
    `,
  compute: (inputs) => {
    // Two readings half a beamwidth to both sides of the peak: 3 dB below it.
    const levelDbm = input(inputs, 'levelDbm');
    const noiseFloorDbm = input(inputs, 'noiseFloorDbm');
    if (levelDbm <= noiseFloorDbm) return 'no-signal-over-the-noise';
    const fit = fitPeak({
      positionDeg: [-1, 1],
      levelDbm: [levelDbm, levelDbm],
      beamwidthDeg: 2,
      standardDeviationDb: SCATTER_DB,
      lobe: 'parabola',
      noiseFloorDbm,
    });
    return fit.kind === 'peak' ? { S: fit.peakLevelDbm - 3 } : 'no-signal-over-the-noise';
  },
};

const TWO_FLANKS: SolutionPlan = {
  name: 'peak-from-two-flanks',
  title: 'Where is the peak between two readings, if the beamwidth is known?',
  part: 'peaking',
  functionName: 'fitPeak',
  givens: [
    given('firstTurns', 'x1', 'x_1', 'first place', 'turns', [-2, -0.5, 0.25]),
    given('firstLevelDbm', 'L1', 'L_1', 'level there', 'dBm', [-46, -42, 0.5]),
    given('secondTurns', 'x2', 'x_2', 'second place', 'turns', [0.5, 2.5, 0.25]),
    given('secondLevelDbm', 'L2', 'L_2', 'level at the second place', 'dBm', [-46, -42, 0.5]),
    given('beamwidthTurns', 'w', 'w', 'half-power beamwidth', 'turns', [2, 3, 0.1]),
  ],
  constants: [],
  steps: stepRows`
      m | m | half way between the places | (x1 + x2) / 2 | turns | 3 | definition
      p | p | peak | m + (L2 - L1) * w^2 / (24 * (x2 - x1)) | turns | 2 | ${LOBE}
    `,
  compute: (inputs) => {
    const positionDeg = [input(inputs, 'firstTurns'), input(inputs, 'secondTurns')] as const;
    const fit = fitPeak({
      positionDeg,
      levelDbm: [input(inputs, 'firstLevelDbm'), input(inputs, 'secondLevelDbm')],
      beamwidthDeg: input(inputs, 'beamwidthTurns'),
      standardDeviationDb: SCATTER_DB,
      lobe: 'parabola',
    });
    return fit.kind === 'peak'
      ? { m: (positionDeg[0] + positionDeg[1]) / 2, p: fit.positionDeg }
      : 'not-between-the-readings';
  },
};

const THREE_LEVELS = [
  given('lowerLevelDbm', 'La', 'L_-', 'level one step below', 'dBm', [-46, -42, 0.5]),
  given('middleLevelDbm', 'Lb', 'L_0', 'level at the middle place', 'dBm', [-40.5, -38.5, 0.1]),
  given('upperLevelDbm', 'Lc', 'L_+', 'level one step above', 'dBm', [-46, -42, 0.5]),
];
const SPACING = given(
  'spacingTurns',
  's',
  's',
  'step between the places',
  'turns',
  [0.5, 1.5, 0.25],
);
const BEND = step(
  'b',
  'b',
  'bend of the three levels',
  '2 * Lb - La - Lc',
  'dB',
  2,
  'second difference',
);

/** The lobe through three equally spaced readings; a text where they hold no peak. */
function threeReadings(inputs: Readonly<Record<string, number>>, middle: number) {
  const spacing = input(inputs, 'spacingTurns');
  const levelDbm = ['lowerLevelDbm', 'middleLevelDbm', 'upperLevelDbm'].map((name) =>
    input(inputs, name),
  ) as [number, number, number];
  const fit = fitPeak({
    positionDeg: [middle - spacing, middle, middle + spacing],
    levelDbm,
    standardDeviationDb: SCATTER_DB,
    lobe: 'parabola',
    currentPositionDeg: middle,
  });
  return fit.kind === 'peak'
    ? { fit, b: 24 * (spacing / fit.beamwidthDeg) ** 2 }
    : 'no-peak-among-the-readings';
}

const THREE_READINGS: SolutionPlan = {
  name: 'peak-from-three-readings',
  title: 'Where is the peak of three equally spaced readings?',
  part: 'peaking',
  functionName: 'fitPeak',
  givens: [
    given('middleTurns', 'x0', 'x_0', 'middle place', 'turns', [-3, 3, 0.25]),
    SPACING,
    ...THREE_LEVELS,
  ],
  constants: [],
  steps: [
    BEND,
    ...stepRows`
      p | p | peak | x0 + s / 2 * (Lc - La) / b | turns | 2
        | own derivation: vertex of the parabola through three points
    `,
  ],
  compute: (inputs) => {
    const found = threeReadings(inputs, input(inputs, 'middleTurns'));
    return typeof found === 'string' ? found : { b: found.b, p: found.fit.positionDeg };
  },
};

const LOSS_FROM_THREE: SolutionPlan = {
  name: 'loss-from-three-readings',
  title: 'What is lost at the middle of three equally spaced readings?',
  part: 'peaking',
  functionName: 'fitPeak',
  givens: [SPACING, ...THREE_LEVELS],
  constants: [],
  steps: [
    BEND,
    ...stepRows`
      d | d | peak from the middle place, upwards positive | s / 2 * (Lc - La) / b | turns | 3
        | own derivation: vertex of the parabola through three points
      w | w | half-power beamwidth | s * sqrt(24 / b) | turns | 3 | ${LOBE}
      L | L | pointing loss at the middle place | 12 * (d / w)^2 | dB | 2 | ${LOBE}
    `,
  ],
  compute: (inputs) => {
    const found = threeReadings(inputs, 0);
    if (typeof found === 'string') return found;
    const { fit, b } = found;
    return { b, d: fit.positionDeg, w: fit.beamwidthDeg, L: fit.lossNowDb };
  },
};

const UNEQUAL: SolutionPlan = {
  name: 'unequal-bracketing',
  title: 'How many turns back between two levels that are not equal?',
  part: 'peaking',
  functionName: 'bracketPeak',
  givens: [
    given('peakLevelDbm', 'P', 'P', 'highest level on the way', 'dBm', [-41, -38, 0.5]),
    given('referenceLevelDbm', 'Lo', 'L_o', 'level after turning out', 'dBm', [-46, -42, 0.5]),
    given('farLevelDbm', 'Lf', 'L_f', 'level on the far side', 'dBm', [-46, -42, 0.5]),
    given('turnsBack', 'n', 'n', 'turns back through the peak', 'turns', [2, 8, 0.25]),
  ],
  constants: [],
  steps: stepRows`
      d1 | d_1 | drop at the place turned out to | P - Lo | dB | 1 | difference
      d2 | d_2 | drop on the far side | P - Lf | dB | 1 | difference
      m | m | turns to turn back | n * sqrt(d2) / (sqrt(d1) + sqrt(d2)) | turns | 2
        | own derivation: the drop goes with the square of the way
    `,
  compute: (inputs) => {
    const peakLevelDbm = input(inputs, 'peakLevelDbm');
    const farLevelDbm = input(inputs, 'farLevelDbm');
    const turnsBack = input(inputs, 'turnsBack');
    const bracket = bracketPeak({
      peakLevelDbm,
      referenceLevelDbm: input(inputs, 'referenceLevelDbm'),
      farLevelDbm,
      turnsOut: turnsBack,
      turnsBack,
    });
    return bracket.kind === 'blind'
      ? 'no-drop'
      : { d1: bracket.dropDb, d2: peakLevelDbm - farLevelDbm, m: bracket.moveBackTurns };
  },
};

const OFFSET: SolutionPlan = {
  name: 'offset-from-loss',
  title: 'Which pointing error would explain this loss?',
  part: 'antenna',
  functionName: 'pointingOffset',
  givens: [
    given('pointingLossDb', 'L', 'L', 'level missing', 'dB', [0.5, 6, 0.1]),
    given('beamwidthDeg', 'bw', '\\theta', 'half-power beamwidth', 'deg', [0.8, 2.4, 0.1]),
  ],
  constants: [],
  steps: stepRows`
      off | \vartheta | pointing error | bw * sqrt(L / 12) | deg | 2
        | Gaussian main lobe, solved for the error
    `,
  compute: (inputs) => ({
    off: pointingOffset({
      pointingLossDb: input(inputs, 'pointingLossDb'),
      beamwidthDeg: input(inputs, 'beamwidthDeg'),
    }),
  }),
};

/** Plans for the peak. */
export const PEAK_PLANS: readonly SolutionPlan[] = [
  SIGNAL,
  TWO_FLANKS,
  THREE_READINGS,
  LOSS_FROM_THREE,
  UNEQUAL,
  OFFSET,
];
