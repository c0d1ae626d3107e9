/**
 * Runs every bench of this folder (or those named on the command line) and prints the ratios; with `--save MACHINE` also writes the table
 * that the site shows, with the kind of machine as it is given: `npm run bench -- --save 'two shared virtual cores'`.
 */

import { readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type BenchRow, MOST_ROUNDS } from './measure.js';

const folder = fileURLToPath(new URL('.', import.meta.url));
const [saving, machine] = process.argv.includes('--save')
  ? process.argv.slice(process.argv.indexOf('--save'))
  : [];
if (saving !== undefined && machine === undefined)
  throw new Error('--save MACHINE: say what it is');
const wanted = process.argv.slice(2).filter((word) => word !== saving && word !== machine);
const table: BenchRow[] = [];
for (const file of readdirSync(folder).sort()) {
  const part = /^(.+)\.bench\.ts$/.exec(file)?.[1];
  if (part === undefined || (wanted.length > 0 && !wanted.includes(part))) continue;
  const { default: bench } = (await import(`./${file}`)) as {
    default: () => BenchRow[] | Promise<BenchRow[]>;
  };
  for (const row of await bench()) {
    table.push(row);
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
if (machine !== undefined) {
  const three = (value: number) => Number(value.toPrecision(3));
  const rows = table.map((row) => ({
    bench: row.bench,
    name: row.name,
    processorNs: three(row.nanosecondsPerItem),
    clockNs: three(row.wallNanosecondsPerItem),
    heapBytes: Math.round(row.heapBytesPerItem),
    ratio: three(row.ratio),
    ...(row.budgetRatio === undefined ? {} : { budgetRatio: three(row.budgetRatio) }),
  }));
  const day = new Date().toISOString().slice(0, 10);
  writeFileSync(
    `${folder}results.json`,
    `${JSON.stringify({ day, machine, node: process.versions.node, rounds: MOST_ROUNDS, rows }, undefined, 2)}\n`,
  );
}
