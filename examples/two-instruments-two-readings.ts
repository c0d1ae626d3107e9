/** Two instruments on five points, three units over several sites, and what an offset does to a verdict. */

import { decideConformity } from 'slantpath/acceptance';
import {
  meanOfDifferingReadings,
  pairedDifference,
  pooledReading,
  unitOffsets,
} from 'slantpath/readings';

const apart = pairedDifference({
  firstDb: [48.2, 55, 61.2, 66.1, 70.3],
  secondDb: [46.4, 53.1, 59.6, 64.1, 68.7],
});
console.log(
  `the first reads ${apart.differenceDb.toFixed(2)} ± ${apart.halfWidth95Db.toFixed(2)} dB higher`,
);

const both = [48.2, 46.4].map((valueDb) => ({ valueDb, standardUncertaintyDb: 0.65 }));
const pooled = pooledReading(both);
console.log(
  `pooled as stated: ${pooled.valueDb.toFixed(1)} dBuV, u = ${pooled.statedUncertaintyDb.toFixed(2)} dB, Birge ratio ${pooled.birgeRatio.toFixed(2)}`,
);
const together = meanOfDifferingReadings(both);
console.log(
  `with what they differ by: u = ${together.standardUncertaintyDb.toFixed(2)} dB, ${together.betweenDb.toFixed(2)} dB between them`,
);

for (const [name, reading, standardUncertainty] of [
  ['first', 48.2, 0.65],
  ['second', 46.4, 0.65],
  ['together', together.valueDb, together.standardUncertaintyDb],
] as const) {
  const rule = { kind: 'risk', riskPercent: 5 } as const;
  const { verdict } = decideConformity({ reading, standardUncertainty, lowerLimit: 47, rule });
  console.log(`${name}: ${reading.toFixed(1)} dBuV ${verdict}`);
}

const table = [
  [62.1, 61.3, 62.9],
  [58.4, 57.4, 59.3],
  [65, 64.3, 65.6],
];
const offsets = unitOffsets(
  table.flatMap((row, site) =>
    row.map((valueDb, unit) => ({ site: `site ${site + 1}`, unit: `unit ${unit + 1}`, valueDb })),
  ),
);
if (offsets.kind === 'offsets')
  for (const { unit, offsetDb, standardUncertaintyDb } of offsets.units)
    console.log(`${unit}: ${offsetDb.toFixed(2)} dB, u = ${standardUncertaintyDb.toFixed(2)} dB`);
