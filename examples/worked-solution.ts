import { checkAnswer, workedSolution } from 'slantpath/teaching';

const inputs = { latitudeDeg: 46, longitudeDeg: 10, orbitalLongitudeDeg: 16.5 };
const solution = workedSolution('azimuth', inputs);
if (solution.kind === 'solved') {
  for (const step of solution.steps)
    console.log(`${step.substitutedText} = ${step.rounded} ${step.unit}`);
  console.log(`rounding at every step costs ${solution.roundedEarly.error.toFixed(4)} deg`);
}

const check = checkAnswer({ plan: 'azimuth', inputs }, '350.99');
if (check.kind === 'wrong') for (const slip of check.slips) console.log(slip.explanation);
