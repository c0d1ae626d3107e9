/** Three readings at an outlet, an instrument, a limit: accept, repeat or refuse. */

import { decideConformity, decideRepeated } from 'slantpath/acceptance';

const limits = { lowerLimit: 47, upperLimit: 77 };
const instrumentStandardUncertainty = 0.6;

const alone = decideConformity({ reading: 47.9, standardUncertainty: 0.6, ...limits });
console.log(
  `one reading of 47.9: ${alone.verdict}, guard band ${alone.guardBand.toFixed(2)} dB, ` +
    `conforms with a probability of ${(100 * alone.conformityProbabilityRatio).toFixed(1)} %`,
);

const { combined, decision, next } = decideRepeated({
  readings: [47.9, 48.6, 48.4],
  instrumentStandardUncertainty,
  ...limits,
});
console.log(
  `three readings: ${combined.mean.toFixed(2)} dBuV with ${combined.standardUncertainty.toFixed(2)} dB, ` +
    `t of ${combined.coverageFactor.toFixed(2)}: from ${combined.interval.from.toFixed(2)} to ${combined.interval.to.toFixed(2)}`,
);
console.log(
  `${decision.verdict}, guard band ${decision.guardBand.toFixed(2)} dB, ` +
    `probability ${(100 * decision.conformityProbabilityRatio).toFixed(1)} %: ${next}`,
);

for (const rule of [
  { kind: 'simple' },
  { kind: 'guard-band', guardBandRatio: 1 },
  { kind: 'risk', riskPercent: 5 },
] as const) {
  const { verdict } = decideConformity({
    reading: combined.mean,
    standardUncertainty: combined.standardUncertainty,
    ...limits,
    rule,
  });
  console.log(`rule ${rule.kind}: ${verdict}`);
}
