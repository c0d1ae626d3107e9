/** Prints the coverage table of all cells, worst first: `npx tsx tests/peaking/simulator/print.ts [runs] [part of a name]`. */

import { allCells, simulateCell } from './cells.js';

const runs = Number(process.argv[2] ?? 500);
const wanted = process.argv[3] ?? '';
const percent = (value: number | null) =>
  value === null ? '    –' : (100 * value).toFixed(1).padStart(5);
const rows = allCells()
  .filter(({ name }) => name.includes(wanted))
  .map((cell, index) => ({ cell, result: simulateCell(cell, runs, index + 1) }));
rows.sort((a, b) => (a.result.assuredCoverage ?? 2) - (b.result.assuredCoverage ?? 2));
console.log(
  'peak | assured cover | nominal cover | at-least cover | not-as cover | loss bound | rms | half',
);
for (const { cell, result: r } of rows)
  console.log(
    `${percent(r.peaks)} | ${percent(r.assured)} ${percent(r.assuredCoverage)} | ${percent(r.nominal)} ${percent(r.nominalCoverage)} | ${percent(r.atLeast)} ${percent(r.atLeastCoverage)} | ${percent(r.notAssured)} ${percent(r.notAssuredCoverage)} | ${percent(r.lossBound)} | ${r.rmsError.toFixed(4)} | ${r.halfInterval.toFixed(4)} | ${cell.name} ${JSON.stringify(r.kinds)}`,
  );
