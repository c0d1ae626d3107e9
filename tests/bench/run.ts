/** Runs every bench of this folder (or those named on the command line) and prints the ratios. */

import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BenchRow } from './measure.js';

const folder = fileURLToPath(new URL('.', import.meta.url));
const wanted = process.argv.slice(2);
for (const file of readdirSync(folder).sort()) {
  const part = /^(.+)\.bench\.ts$/.exec(file)?.[1];
  if (part === undefined || (wanted.length > 0 && !wanted.includes(part))) continue;
  const { default: bench } = (await import(`./${file}`)) as {
    default: () => BenchRow[] | Promise<BenchRow[]>;
  };
  for (const row of await bench()) {
    const over = row.budgetRatio !== undefined && row.ratio > row.budgetRatio;
    console.log(
      [
        `${row.bench}: ${row.name}`.padEnd(64),
        `${row.nanosecondsPerItem.toFixed(1).padStart(12)} ns`,
        `clock ${row.wallNanosecondsPerItem.toFixed(1).padStart(10)} ns`,
        `heap ${row.heapBytesPerItem.toFixed(0).padStart(7)} B`,
        `ratio ${row.ratio.toFixed(3)}`,
        row.budgetRatio === undefined ? '' : `budget ${row.budgetRatio}${over ? ' EXCEEDED' : ''}`,
      ].join('  '),
    );
    if (over) process.exitCode = 1;
  }
}
