/** The command that asks a program of the user's own the questions of the test vectors. */

import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { DomainError } from '../errors.js';
import {
  checkVectors,
  type VectorAnswer,
  type VectorFieldReport,
  type VectorQuestion,
  type VectorReport,
  type VectorTable,
} from '../vectors/index.js';

/** Longest answer to a table in bytes. */
const LONGEST = 256 * 1024 * 1024;

function refuse(parameter: string, received: unknown, allowed: string, slip?: string): never {
  throw new DomainError({ code: 'malformed', parameter, received, allowed, slip });
}

/** Answers of a program: one JSON line for each question, in order. */
function answersOf(
  [program = '', ...rest]: readonly string[],
  calls: string,
  questions: readonly VectorQuestion[],
): readonly VectorAnswer[] {
  const input = questions.map((question) => `${JSON.stringify({ calls, input: question })}\n`);
  const { status, stdout, stderr, error } = spawnSync(program, rest, {
    input: input.join(''),
    encoding: 'utf8',
    maxBuffer: LONGEST,
  });
  if (error) refuse('command', program, 'a program that can be started', error.message);
  if (status !== 0)
    refuse('command', `exit code ${status}`, 'a program that ends with 0', stderr.slice(-200));
  const lines = stdout.split('\n').filter((line) => line.trim() !== '');
  return lines.map((line, index) => {
    try {
      return JSON.parse(line) as VectorAnswer;
    } catch {
      return refuse('command', line.slice(0, 80), `JSON in line ${index + 1} of the answers`);
    }
  });
}

function fieldLines(table: VectorTable, field: VectorFieldReport): readonly string[] {
  const good = field.count - field.badCount;
  const largest = field.largestError === null ? 'no number' : field.largestError.toPrecision(3);
  const head = `  ${field.field}: ${good} of ${field.count} rows within the tolerance, largest error ${largest}`;
  if (field.badCount === 0) return [head];
  if (field.worstIndex !== null && field.largestError === null && field.badCount === field.count)
    return [head, '    no number in any answer, or none in the worst row'];
  const row = table.rows[field.worstIndex ?? 0] ?? [];
  const inputs = table.inputs.map((name, column) => `${name} ${row[column]}`).join(', ');
  return [
    head,
    `    worst: ${inputs}`,
    field.slip
      ? `    slip: ${field.slip.says} (explains ${Math.round(100 * field.slip.explainedRatio)} % of the wrong rows)`
      : '    slip: none of the usual ones',
  ];
}

function told(table: VectorTable, report: VectorReport): string {
  const verdict = report.kind.replaceAll('-', ' ');
  return [
    `${table.name} (${table.calls}): ${verdict}`,
    ...report.fields.flatMap((field) => fieldLines(table, field)),
    '',
  ].join('\n');
}

/**
 * Report of a program against the vectors: `[--list] [--table NAME] -- PROGRAM [ARGUMENT ...]`.
 *
 * @param words  The words of the command.
 * @param folder  Folder or address of the tables, with a slash at its end.
 * @returns The text, and whether every table that was answered conforms.
 */
export function vectorsCommand(
  words: readonly string[],
  folder: URL,
): { readonly text: string; readonly conforms: boolean } {
  const read = (path: string): unknown => {
    try {
      return JSON.parse(readFileSync(new URL(`${path}.json`, folder), 'utf8'));
    } catch {
      return refuse('--table', path, 'a name that --list prints');
    }
  };
  const list = (read('index') as { readonly tables: readonly VectorTable[] }).tables;
  const end = words.indexOf('--');
  const options = end < 0 ? words : words.slice(0, end);
  if (options[0] === '--list')
    return {
      text: list.map(({ name, calls }) => `${name}  ${calls}\n`).join(''),
      conforms: true,
    };
  const program = end < 0 ? [] : words.slice(end + 1);
  const known = options.length === 0 || (options.length === 2 && options[0] === '--table');
  if (program.length === 0 || !known)
    refuse('arguments', words.join(' '), '[--list] [--table NAME] -- PROGRAM [ARGUMENT ...]');
  const names = options[1] === undefined ? list.map(({ name }) => name) : [options[1]];
  const texts: string[] = [];
  let conforms = true;
  for (const name of names) {
    const table = read(name) as VectorTable;
    const report = checkVectors(table, (questions) => answersOf(program, table.calls, questions));
    // A program that knows a few formulas is not scolded for the others.
    if (report.kind === 'not-answered' && names.length > 1) continue;
    texts.push(told(table, report));
    conforms &&= report.kind === 'conforms';
  }
  return { text: texts.length > 0 ? texts.join('') : 'No table was answered.\n', conforms };
}
