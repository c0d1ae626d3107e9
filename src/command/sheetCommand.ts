/** The command that prints the sheet of a job file. */

import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { DomainError, oneOf } from '../errors.js';
import { compareRecords, type JobRecord, parseJob, recordJob } from '../job/index.js';
import {
  englishWords,
  germanWords,
  jobSheet,
  jobSheetHtml,
  type SheetOptions,
} from '../sheet/index.js';

/** Words of the sheet by the code of their language, ISO 639-1. */
const LANGUAGES = { en: englishWords, de: germanWords };

/** Refuses the command line or a file the way the library refuses a field. */
function refuse(parameter: string, received: unknown, allowed: string, slip?: string): never {
  throw new DomainError({ code: 'malformed', parameter, received, allowed, slip });
}

/** What the words of the command ask for. */
function asked(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        before: { type: 'boolean' },
        after: { type: 'boolean' },
        html: { type: 'boolean' },
        json: { type: 'boolean' },
        compare: { type: 'string' },
        language: { type: 'string', default: 'en' },
      },
    });
  } catch (error) {
    return refuse(
      'arguments',
      words.join(' '),
      'at most one path, and --before, --after, --html, --json, --language en or de, or --compare OLDER',
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
    const slip = reason === 'ENOENT' ? 'there is no such file' : reason;
    return refuse('path', path, 'the path of a readable file', slip);
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
  const { meanings, quantities } = englishWords.codes;
  const signed = (value: number) => `${value < 0 ? '' : '+'}${value.toFixed(1)}`;
  return [
    `Since the older record: ${meanings[meaning]}`,
    ...pooled.map(
      ({ quantity, count, meanDb, standardUncertaintyDb, significant }) =>
        `${quantities[quantity]}: ${signed(meanDb)} ± ${(2 * standardUncertaintyDb).toFixed(1)} dB in the mean of ${count}${significant ? ', a change' : ''}`,
    ),
    ...readings
      .filter(({ significant }) => significant)
      .map(
        ({ testPoint, slot, carrier, quantity, change, unit }) =>
          `  ${[testPoint, slot, carrier].filter(Boolean).join(', ')}: ${quantities[quantity]} ${signed(change)} ${unit === 'V' ? 'V' : 'dB'}`,
      ),
    ...notRepeated.map((place) => `  not read again: ${place}`),
    ...inputs.map(({ path }) => `  other input: ${path}`),
    '',
  ].join('\n');
}

/**
 * Text of the sheet, the record or the comparison that the words of the command ask for.
 *
 * @param words  `--before` and `--after` choose the sheet (after the visit where it has readings), `--html` prints it for the printer,
 *   `--json` the record, `--compare OLDER` what changed since an older record or job file (in English), `--language` the words of the
 *   sheet, `en` or `de`; and the path of the job file.
 * @param usual  The job file where the words have none.
 */
export function sheetCommand(words: readonly string[], usual?: string): string {
  const { values, positionals } = asked(words);
  const { before, after, html, json, compare } = values;
  const language = oneOf('--language', values.language as keyof typeof LANGUAGES, ['en', 'de']);
  const forms = [before || after || language !== 'en', json, compare].filter(Boolean).length;
  if (positionals.length > 1 || (before && after) || (html && json) || forms > 1)
    refuse(
      'arguments',
      words.join(' '),
      'at most one path and one form: a sheet, --json or --compare',
    );
  const path = positionals[0] ?? usual ?? refuse('path', undefined, 'the path of a job file');
  const record = recordIn(path);
  const visit = before ? 'before' : after ? 'after' : undefined;
  const options: SheetOptions = { words: LANGUAGES[language], ...(visit && { visit }) };
  if (compare !== undefined) return comparison(recordIn(compare), record);
  if (json) return `${JSON.stringify(record, null, 2)}\n`;
  return html ? jobSheetHtml(record, options) : jobSheet(record, options);
}
