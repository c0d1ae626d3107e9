import { tryFormula } from 'slantpath/teaching';

const verdict = tryFormula({
  subject: 'azimuth',
  formula: '180 - atan(tan(dlon) / sin(lat))',
});
const percent = (ratio: number) => `${(100 * ratio).toFixed(1)} %`;
console.log(
  `${verdict.kind}: ${percent(verdict.withinToleranceRatio)} within ${verdict.tolerance}`,
);
for (const { area, withinToleranceRatio } of verdict.areas)
  console.log(`${area}: ${percent(withinToleranceRatio)}`);
const { worst } = verdict;
if (worst)
  console.log(`worst: ${worst.error.toFixed(1)} off at latitude ${worst.values['latitudeDeg']}`);
