import { RULES_OF_THUMB, tryFormula } from 'slantpath/teaching';

for (const rule of RULES_OF_THUMB.slice(0, 3)) {
  const { kind, worst, unit, areas } = tryFormula(rule);
  console.log(`${rule.name}: ${kind}, off by up to ${worst?.error.toFixed(2)} ${unit}`);
  for (const { area, withinToleranceRatio } of areas)
    if (withinToleranceRatio < 0.5)
      console.log(`  only ${(100 * withinToleranceRatio).toFixed(0)} % within tolerance: ${area}`);
}
