/** Prints the sheet of a job file: `tsx examples/job/run.ts [options] [path/to/job.json]`. Without a path it takes the Tarnfell hut. */

import { fileURLToPath } from 'node:url';
import { printed } from '../../src/command/printed.js';
import { sheetCommand } from '../../src/command/sheetCommand.js';

const hut = fileURLToPath(new URL('./tarnfell-lower-hut.json', import.meta.url));
void printed(() => sheetCommand(process.argv.slice(2), hut));
