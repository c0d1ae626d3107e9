/** The command that adds columns to a file of places. */

import { existsSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { loadDuckDb } from './duckdb.js';
import { PART_ROWS } from './part.js';
import { columnsPlan } from './plan.js';
import { refuse } from './refuse.js';
import { type Run, runColumns } from './run.js';
import { fileForm, fileKind } from './source.js';
import type { StepGiven } from './step.js';

const FORM = 'INPUT OUTPUT --add FUNCTION[,FUNCTION ...] FIELD=COLUMN-OR-NUMBER ...';

function parsed(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        add: { type: 'string', multiple: true },
        bad: { type: 'string' },
        decimal: { type: 'string' },
        footprint: { type: 'string' },
        from: { type: 'string' },
        link: { type: 'string' },
        part: { type: 'string' },
        to: { type: 'string' },
        threads: { type: 'string' },
      },
    });
  } catch (error) {
    return refuse(
      'arguments',
      words.join(' '),
      FORM,
      error instanceof Error ? error.message : undefined,
    );
  }
}

function jsonIn(option: string, path: string, what: string): unknown {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    const reason = error instanceof Error ? error.message : undefined;
    return refuse(option, path, `a readable JSON file with ${what}`, reason);
  }
}

/** A whole number of an option. */
function whole(option: string, word: string | number, least: number, most: number): number {
  const value = Number(word);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  return refuse(option, word, `a whole number from ${least} to ${most}`);
}

/** What the options give to functions. */
function givenBy({
  link,
  footprint,
  from,
  to,
}: Readonly<Partial<Record<keyof StepGiven, string>>>): StepGiven {
  const read = {
    ...(link === undefined ? {} : { link: jsonIn('--link', link, 'the input of linkBudget') }),
    ...(footprint === undefined
      ? {}
      : { footprint: jsonIn('--footprint', footprint, 'contours as GeoJSON') }),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
  };
  // What lies in the files, the functions check.
  return read as StepGiven;
}

/** What the words of the command ask for. */
export function columnsRun(words: readonly string[], worker: URL): Run {
  const { values, positionals } = parsed(words);
  const paths = positionals.filter((word) => !word.includes('='));
  const [input, output] = paths;
  if (input === undefined || output === undefined || paths.length > 2)
    return refuse('arguments', words.join(' '), FORM);
  const fields: Record<string, string> = {};
  for (const word of positionals) {
    const [, field, given] = /^([^=]+)=(.+)$/.exec(word) ?? [];
    if (field !== undefined && given !== undefined) fields[field] = given;
    else if (word.includes('=')) refuse('arguments', word, 'FIELD=COLUMN or FIELD=NUMBER');
  }
  if (fileKind('input', input) !== fileKind('output', output))
    refuse('output', output, 'a file of the same kind as the input');
  if (!existsSync(input)) refuse('input', input, 'the path of a readable file');
  if (existsSync(output)) refuse('output', output, 'a path at which there is no file yet');
  const threads = whole('--threads', values.threads ?? availableParallelism(), 1, 1024);
  const partRows = whole('--part', values.part ?? PART_ROWS, 100, 1_000_000);
  const names = (values.add ?? []).flatMap((list) => list.split(',')).filter(Boolean);
  const given = givenBy(values);
  return {
    input,
    output,
    form: fileForm(input, values.decimal),
    badOutput: values.bad ?? `${output}.bad.csv`,
    threads,
    partRows,
    worker,
    planFor: (columns) => columnsPlan(names, fields, columns, given),
  };
}

/**
 * Adds columns to a CSV, NDJSON or Parquet file; progress goes to standard error.
 *
 * @param words  The words of the command.
 * @param worker  The program of a worker.
 * @returns What is to be printed at the end.
 */
export async function columnsCommand(words: readonly string[], worker: URL): Promise<string> {
  const run = columnsRun(words, worker);
  return runColumns(await loadDuckDb(), run);
}
