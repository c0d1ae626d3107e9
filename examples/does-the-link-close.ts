/** The budget of a Tarnfell hut, line by line, and what a larger reflector would change. */

import { compareBudgets, dvbMode, linkBudget, marginSensitivity } from 'slantpath/link';

const link = {
  carrier: {
    symbolRateMBd: 27.5,
    mode: dvbMode('DVB-S2', '8PSK 2/3'),
    implementationLossDb: 0.8,
  },
  downlink: {
    eirpDbw: 50,
    frequencyGHz: 11.7,
    slantRangeKm: 38069.9,
    clearAttenuationDb: 0.2,
  },
  receiver: { diameterM: 0.9, noiseFigureDb: 0.7, pointingOffsetDeg: 0.1, feedLossDb: 0.1 },
  impairments: [{ name: 'adjacent-satellites', carrierToImpairmentDb: 22 }],
};

const budget = linkBudget(link);
for (const { name, contributionDb, unit, runningDb } of budget.terms)
  console.log(
    `${name.padEnd(20)} ${contributionDb.toFixed(2).padStart(8)} ${unit.padEnd(9)} ${runningDb.toFixed(2).padStart(8)}`,
  );
console.log(`Margin ${budget.marginDb.toFixed(2)} dB`);

const larger = linkBudget({ ...link, receiver: { ...link.receiver, diameterM: 1.2 } });
const { causes, differenceDb } = compareBudgets(budget, larger);
console.log(`With 1.2 m: ${differenceDb.toFixed(2)} dB more, of which`);
for (const cause of causes) console.log(`  ${cause.name} ${cause.differenceDb.toFixed(2)} dB`);

console.log('Where care is worth most:');
for (const { parameter, step, marginChangeDb } of marginSensitivity(link).slice(0, 5))
  console.log(`  ${parameter} +${step}: ${marginChangeDb.toFixed(2)} dB`);
