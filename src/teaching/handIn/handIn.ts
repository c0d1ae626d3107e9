/** What a learner hands in: all answers of a sheet in one short code, without a server. */

import { DomainError, object, objects } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import type { Exercise } from '../exercise/exercise.js';
import type { Worksheet } from '../exercise/worksheet.js';
import { checkedText, checkedValues, crc24 } from './checkedText.js';
import { packed, unpacked } from './packed.js';
import { utf8Bytes } from './utf8.js';

/** What a learner typed for one exercise. */
export interface HandedAnswer {
  /** The answer as typed; empty for none. */
  readonly answer: string;
  /** What was typed for the steps before the answer, by their symbol; none by default. */
  readonly steps?: Readonly<Record<string, string>>;
}

const HANDED_ANSWER_KEYS = { answer: true, steps: true } satisfies Keys<HandedAnswer>;

/** Outcome of {@link readHandIn}; read `kind` first. */
export type HandIn =
  | {
      readonly kind: 'read';
      /** What stands before the code, usually the name of the learner; may be empty. */
      readonly name: string;
      /** The form of the sheet that was answered. */
      readonly form: 'A' | 'B';
      /** What was typed, one for each exercise of the sheet in its order. */
      readonly answers: readonly HandedAnswer[];
    }
  | {
      /** A code that fits its own check, but of another sheet: another seed, level, number or kinds. */
      readonly kind: 'other-sheet';
      readonly name: string;
    }
  | {
      /** There is a code, but a sign of it is wrong, missing or too many. */
      readonly kind: 'damaged';
      readonly name: string;
    }
  | {
      /** There is nothing like a code. */
      readonly kind: 'no-code';
    };

/** The first symbol of every code: its kind of packing. */
const VERSION = 28;
const MOST_SIGNS = 60;

/** Three symbols that belong to one sheet. */
function markOf({ code }: Worksheet): readonly number[] {
  const mark = crc24(utf8Bytes(code));
  return [(mark >>> 10) & 31, (mark >>> 5) & 31, mark & 31];
}

const stepsOf = ({ solution }: Exercise) => solution.steps.slice(0, -1);

/**
 * The code that a learner hands in.
 *
 * It holds the answers as typed, a mark of the sheet and a check, in groups of four digits and letters; about forty signs for
 * five answers. It holds no name: the learner's name is written before it. The code is not secret and proves nothing: whoever
 * has the sheet can make one.
 *
 * @param sheet  From `worksheet` or `worksheetOfCode`.
 * @param answers  What was typed, one for each exercise in the order of the sheet; each text of at most 60 signs.
 * @throws {@link DomainError} where the number of answers is not that of the exercises, a text is too long, or a step is not one
 *   of the exercise's before its answer.
 *
 * Source: own packing; the check is that of RFC 9580, section 6.1.
 * @example
 * ```ts
 * import { handInCode, readHandIn, worksheet } from 'slantpath/teaching';
 * const sheet = worksheet({ seed: 3, count: 2, plans: ['elevation', 'free-space-loss'] });
 * const code = handInCode(sheet, [{ answer: '36.1' }, { answer: '205,63 dB' }]);
 * const handIn = readHandIn(`Mara: ${code}`, [sheet]);
 * handIn.kind === 'read' && handIn.name; // => 'Mara'
 * handIn.kind === 'read' && handIn.answers.map(({ answer }) => answer); // => ['36.1', '205,63 dB']
 * ```
 */
export function handInCode(sheet: Worksheet, answers: readonly HandedAnswer[]): string {
  const count = sheet.exercises.length;
  if (!Array.isArray(answers) || answers.length !== count)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'answers',
      received: Array.isArray(answers) ? answers.length : answers,
      allowed: `a list of ${count} answers, one for each exercise`,
    });
  const lists = sheet.exercises.map((exercise, at) =>
    typedTexts(exercise, answers[at] as HandedAnswer, `answers[${at}]`),
  );
  return checkedText([VERSION, ...markOf(sheet), ...packed(lists)]);
}

/** The texts of one exercise: the answer, then its steps in order. */
function typedTexts(exercise: Exercise, handed: HandedAnswer, path: string): readonly string[] {
  const { answer, steps } = known(path, handed, HANDED_ANSWER_KEYS);
  const symbols = stepsOf(exercise).map(({ symbol }) => symbol);
  const given = steps === undefined ? {} : object(`${path}.steps`, steps);
  const unknown = Object.keys(given).find((symbol) => !symbols.includes(symbol));
  if (unknown !== undefined)
    throw new DomainError({
      code: 'unknown-field',
      parameter: `${path}.steps.${unknown}`,
      received: unknown,
      allowed: `one of ${symbols.join(', ')}`,
    });
  const entries = [['answer', answer], ...symbols.map((each) => [`steps.${each}`, given[each]])];
  return entries.map(([name, text]) => textOf(`${path}.${name}`, text ?? ''));
}

function textOf(parameter: string, text: unknown): string {
  if (typeof text === 'string' && text.trim().length <= MOST_SIGNS && !text.includes('\0'))
    return text;
  throw new DomainError({
    code: 'malformed',
    parameter,
    received: text,
    allowed: `text of at most ${MOST_SIGNS} characters`,
  });
}

/** Groups of digits and letters joined by hyphens, with spaces beside them if need be. */
const GROUPS = /[0-9A-Za-z]{2,}(?:\s*[-\u2010-\u2015]\s*[0-9A-Za-z]+){2,}\s*$/;

/** Texts of a line that may be its code, the likeliest first, each with what stands before it. */
function candidatesOf(line: string): readonly (readonly [name: string, code: string])[] {
  const text = line.trim().replace(/[\s.,;-]+$/, '');
  const groups = GROUPS.exec(text);
  const words = text.split(/\s+/);
  const behindName = /^(.*[:;,\t])(.+)$/.exec(text);
  const named = (name: string) => name.trim().replace(/[\s:;,]+$/, '');
  return [
    ...(groups ? [[named(text.slice(0, groups.index)), groups[0]] as const] : []),
    ...(behindName ? [[named(behindName[1] ?? ''), behindName[2] ?? ''] as const] : []),
    ...words.map(
      (_, at) => [named(words.slice(0, at).join(' ')), words.slice(at).join('')] as const,
    ),
  ];
}

/**
 * Reads what a learner handed in: the code alone or with a name before it, pasted or typed.
 *
 * Small letters, missing hyphens and spaces will do; O is read as 0, I and L as 1.
 *
 * @param text  One line, such as `Mara: W3K7-...`.
 * @param sheets  The sheets that the code may belong to, usually forms A and B of one.
 * @returns `read` with what was typed; `other-sheet`; `damaged` where the check does not fit; `no-code`.
 *
 * Source: {@link handInCode}.
 * @example
 * ```ts
 * import { readHandIn, worksheet } from 'slantpath/teaching';
 * const sheet = worksheet({ seed: 3, count: 2 });
 * readHandIn('I was ill', [sheet]).kind; // => 'no-code'
 * readHandIn('Mara: W3K7-99QX-7001-AB', [sheet]).kind; // => 'damaged'
 * ```
 */
export function readHandIn(text: string, sheets: readonly Worksheet[]): HandIn {
  const line = typeof text === 'string' ? text : '';
  objects('sheets', sheets);
  const candidates = candidatesOf(line);
  for (const [name, code] of candidates) {
    const values = checkedValues(code);
    if (values?.[0] !== VERSION) continue;
    const sheet = sheets.find((each) =>
      markOf(each).every((value, at) => value === values[at + 1]),
    );
    if (!sheet) return { kind: 'other-sheet', name };
    const lists = unpacked(values.slice(4), sheet.exercises.length);
    if (!lists) return { kind: 'damaged', name };
    return {
      kind: 'read',
      name,
      form: sheet.form,
      answers: sheet.exercises.map((exercise, at) => handedOf(exercise, lists[at] ?? [])),
    };
  }
  const first = candidates.find(([, code]) => looksLikeCode(code));
  return first ? { kind: 'damaged', name: first[0] } : { kind: 'no-code' };
}

/** Groups, or one long word, with the digits that words do not have. */
const looksLikeCode = (code: string) =>
  /\d/.test(code) && (GROUPS.test(code) || /^[0-9A-Z]{10,}$/i.test(code.trim()));

function handedOf(exercise: Exercise, [answer = '', ...rest]: readonly string[]): HandedAnswer {
  const steps = Object.fromEntries(
    stepsOf(exercise)
      .map(({ symbol }, at) => [symbol, rest[at] ?? ''] as const)
      .filter(([, text]) => text !== ''),
  );
  return Object.keys(steps).length === 0 ? { answer } : { answer, steps };
}
