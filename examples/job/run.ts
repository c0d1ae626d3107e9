/**
 * Prints the sheet of a job file: `tsx examples/job/run.ts [options] [path/to/job.json]`. Without a path it takes the Tarnfell hut.
 *
 * `--before` and `--after` choose the sheet (after the visit where it has readings), `--html` prints it for the printer, `--json`
 * prints the record, `--compare OLDER` says what changed since an older record or job file.
 */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { DomainError } from 'slantpath';
import { compareRecords, type JobRecord, parseJob, recordJob } from 'slantpath/job';
import { jobSheet, jobSheetHtml } from 'slantpath/sheet';

/** Refuses the command line or a file the way the library refuses a field. */
function refuse(parameter: string, received: unknown, allowed: string, slip?: string): never {
  throw new DomainError({ code: 'malformed', parameter, received, allowed, slip });
}

/** What the command line asks for. */
function asked() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        before: { type: 'boolean' },
        after: { type: 'boolean' },
        html: { type: 'boolean' },
        json: { type: 'boolean' },
        compare: { type: 'string' },
      },
    });
  } catch (error) {
    return refuse(
      'arguments',
      process.argv.slice(2).join(' '),
      'at most one path, and --before, --after, --html, --json or --compare OLDER',
      error instanceof Error ? error.message : undefined,
    );
  }
}

/** Text of a file; a missing one is told like any other wrong input. */
function read(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
    return refuse('path', path, 'the path of a readable file', reason);
  }
}

/** The record of a file that holds a job or a record. */
function recordIn(path: string): JobRecord {
  const text = read(path);
  return /^\s*\{\s*"format"\s*:\s*"slantpath-record"/.test(text)
    ? recordJob((JSON.parse(text) as JobRecord).job)
    : recordJob(parseJob(text));
}

/** What changed since an older record, in lines. */
function comparison(older: JobRecord, record: JobRecord): string {
  const { meaning, readings, pooled, notRepeated, inputs } = compareRecords(older, record);
  const signed = (value: number) => `${value < 0 ? '' : '+'}${value.toFixed(1)}`;
  return [
    `Since the older record: ${meaning.replace(/-/g, ' ')}.`,
    ...pooled.map(
      ({ quantity, count, meanDb, standardUncertaintyDb, significant }) =>
        `${quantity.replace(/-/g, ' ')}: ${signed(meanDb)} ± ${(2 * standardUncertaintyDb).toFixed(1)} dB in the mean of ${count}${significant ? ', a change' : ''}`,
    ),
    ...readings
      .filter(({ significant }) => significant)
      .map(
        ({ testPoint, slot, carrier, quantity, change, unit }) =>
          `  ${[testPoint, slot, carrier].filter(Boolean).join(', ')}: ${quantity.replace(/-/g, ' ')} ${signed(change)} ${unit === 'V' ? 'V' : 'dB'}`,
      ),
    ...notRepeated.map((place) => `  not read again: ${place}`),
    ...inputs.map(({ path }) => `  other input: ${path}`),
    '',
  ].join('\n');
}

try {
  const { values, positionals } = asked();
  const { before, after, html, json, compare } = values;
  if (positionals.length > 1 || (before && after) || (html && json) || (json && compare))
    refuse('arguments', process.argv.slice(2).join(' '), 'at most one path and one form');
  const path =
    positionals[0] ?? fileURLToPath(new URL('./tarnfell-lower-hut.json', import.meta.url));
  const record = recordIn(path);
  const options = before ? { visit: 'before' as const } : after ? { visit: 'after' as const } : {};
  process.stdout.write(
    compare !== undefined
      ? comparison(recordIn(compare), record)
      : json
        ? `${JSON.stringify(record, null, 2)}\n`
        : html
          ? jobSheetHtml(record, options)
          : jobSheet(record, options),
  );
} catch (error) {
  if (!(error instanceof DomainError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
