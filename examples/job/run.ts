/**
 * Prints the job sheet of a job file, its record with `--json`, a sheet for the printer with `--html`:
 * `tsx examples/job/run.ts [--json | --html] [path/to/job.json]`. Without a path it takes the Tarnfell hut.
 */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DomainError } from 'slantpath';
import { parseJob, recordJob } from 'slantpath/job';
import { jobSheet, jobSheetHtml } from 'slantpath/sheet';

const args = process.argv.slice(2);
const json = args.includes('--json');
const html = args.includes('--html');
const unknown = args.find((arg) => arg.startsWith('--') && arg !== '--json' && arg !== '--html');
const paths = args.filter((arg) => !arg.startsWith('--'));
const path = paths[0] ?? fileURLToPath(new URL('./tarnfell-lower-hut.json', import.meta.url));

/** Text of the file; a missing one is told like any other wrong input. */
function read(): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    throw new DomainError({
      code: 'malformed',
      parameter: 'path',
      received: path,
      allowed: 'the path of a readable file',
      slip: reason,
    });
  }
}

try {
  if (unknown !== undefined || paths.length > 1 || (json && html))
    throw new DomainError({
      code: 'malformed',
      parameter: 'arguments',
      received: unknown ?? args.join(' '),
      allowed: 'at most one path, and --json or --html',
    });
  const record = recordJob(parseJob(read()));
  process.stdout.write(
    json ? `${JSON.stringify(record, null, 2)}\n` : html ? jobSheetHtml(record) : jobSheet(record),
  );
} catch (error) {
  if (!(error instanceof DomainError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
