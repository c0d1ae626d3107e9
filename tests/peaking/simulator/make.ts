/**
 * Makes the coverage table anew: `npx tsx tests/peaking/simulator/make.ts NOTES > docs/decisions/peaking-coverage.json`. It takes an hour
 * or more, pass by pass over all cells; what is done stands in the file NOTES, so that it can go on later. The tests rerun a few cells.
 */

import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { allCells } from './cells.js';
import { cellPass, coverageRow, PASS_RUNS, SEARCHES, searchPass, searchRow } from './table.js';

const [notes = 'coverage-notes.jsonl', passesWanted = '20'] = process.argv.slice(2);
const passes = Number(passesWanted);

const done = new Map<string, unknown>();
if (existsSync(notes))
  for (const line of readFileSync(notes, 'utf8').split('\n'))
    if (line !== '') {
      const { key, counts } = JSON.parse(line) as { key: string; counts: unknown };
      done.set(key, counts);
    }

/** The counts of one piece of work, from the notes or computed. */
function counted<T>(key: string, compute: () => T): T {
  const known = done.get(key) as T | undefined;
  if (known !== undefined) return known;
  const counts = compute();
  done.set(key, counts);
  appendFileSync(notes, `${JSON.stringify({ key, counts })}\n`);
  return counts;
}

const cells = allCells();
for (let pass = 0; pass < passes; pass++) {
  for (const [index, cell] of cells.entries())
    counted(`${cell.name}/${pass}`, () => cellPass(cell, index, pass));
  for (const [index, [name, setting]] of SEARCHES.entries())
    counted(`search: ${name}/${pass}`, () => searchPass(setting, index, pass));
}
const all = Array.from({ length: passes }, (_, pass) => pass);
console.log(
  JSON.stringify(
    {
      runs: passes * PASS_RUNS,
      fit: cells.map((cell, index) =>
        coverageRow(
          cell,
          all.map((pass) => counted(`${cell.name}/${pass}`, () => cellPass(cell, index, pass))),
        ),
      ),
      searches: SEARCHES.map(([name, setting], index) =>
        searchRow(
          name,
          all.map((pass) =>
            counted(`search: ${name}/${pass}`, () => searchPass(setting, index, pass)),
          ),
        ),
      ),
    },
    null,
    2,
  ),
);
