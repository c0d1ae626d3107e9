/**
 * Makes the coverage table anew: `npx tsx tests/peaking/simulator/make.ts > docs/decisions/peaking-coverage.json`.
 * It takes a quarter of an hour or more; the tests rerun a few cells of it.
 */

import { coverageTable } from './table.js';

/** Runs of a cell. */
const RUNS = 500;

console.log(JSON.stringify(coverageTable(RUNS), null, 2));
