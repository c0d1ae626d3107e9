/** A formula of several lines: what is computed, what its names stand for, and what is on the left of the sign =. */

import { refuseAt, refuseFormula } from './parse.js';

/** What a name stands for. */
export interface Definition {
  readonly name: string;
  readonly text: string;
}

/** The parts of what was typed. */
export interface Statements {
  /** The formula to be tried. */
  readonly formula: string;
  /** Names with what they stand for, each before it is used. */
  readonly definitions: readonly Definition[];
  /** Function on the left side, as in `tan A = …`; empty for none. */
  readonly inverse: '' | 'sin' | 'cos' | 'tan';
  /** Whether it begins with = as in a cell of a spreadsheet. */
  readonly spreadsheet: boolean;
}

/** Text cut at a sign that stands outside all brackets. */
function cutOutside(text: string, isCut: (sign: string) => boolean): readonly string[] {
  const parts = [''];
  let depth = 0;
  for (const sign of text) {
    if ('([{'.includes(sign)) depth++;
    if (')]}'.includes(sign)) depth--;
    if (depth <= 0 && isCut(sign)) parts.push('');
    else parts[parts.length - 1] += sign;
  }
  return parts;
}

/** A name on the left of =: one word with its index and unit, or several words. */
const LEFT = /^\s*\\?[\p{L}_∆][\p{L}\d_₀-₉.{}\\/ ]*(?:\s*[([][^()[\]=]*[)\]])?\s*$/u;
const DEFINED = /^\s*\$?\\?([\p{L}_][\p{L}\d_₀-₉{}\\]*\$?\d*)\s*(?:[([][\p{L}°]*[)\]])?\s*$/u;
const FUNCTION_LEFT = /^\s*\\?(sin|cos|tan)\s*[({]?\s*\\?[\p{L}_\d]+\s*[)}]?\s*$/u;

const plain = (name: string) => name.replace(/[\\{}$]/g, '');
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';
const asToken = (name: string) =>
  [...plain(name)].map((sign) => (LOWERED.includes(sign) ? LOWERED.indexOf(sign) : sign)).join('');

/** The parts of a typed formula; `isVariable` tells names that the trial itself varies. */
export function statementsOf(
  typed: string,
  legend: Readonly<Record<string, string>>,
  isVariable: (name: string) => boolean,
): Statements {
  const lines = typed
    .replace(/[,;]?\s*\b(?:where|with|wobei|mit)\b:?/gi, ';')
    // where r = 42164, R = 6378
    .replace(/,\s*(?=\\?[\p{L}][\p{L}\d_₀-₉]*\s*=)/gu, ';')
    .split(/\n/)
    .flatMap((line) => cutOutside(line, (sign) => sign === ';'))
    .map((line) =>
      line
        .trim()
        .replace(/^\$+|\$+$/g, '')
        .trim(),
    )
    .filter((line) => line !== '' && line !== '.');
  const joined = joinedLines(lines);
  const definitions: Definition[] = Object.entries(legend).map(([name, text]) => ({
    name: asToken(name.trim()),
    text: text.replace(/^\s*=/, ''),
  }));
  const sides = joined.map((line) => sidesOf(line));
  // A line whose name is used by another line says what that name stands for; the one that is left is the formula.
  const uses = (name: string, but: number) =>
    sides.some(
      ({ text }, index) =>
        index !== but &&
        new RegExp(`(?<![\\p{L}\\d_])${escaped(name)}(?![\\p{L}\\d_])`, 'u').test(asToken(text)),
    );
  const mains: number[] = [];
  sides.forEach(({ name, text }, index) => {
    if (name !== undefined && sides.length > 1 && uses(name, index)) {
      if (isVariable(name))
        refuseFormula(
          typed,
          'a formula in the variables of the trial',
          `${name} is varied by the trial; hold it in the region instead`,
        );
      definitions.push({ name, text });
    } else mains.push(index);
  });
  const last = mains[mains.length - 1];
  const main = last === undefined ? undefined : sides[last];
  if (!main || mains.length > 1) {
    const first = joined[0] ?? '';
    return refuseAt(
      typed,
      typed.indexOf(first) + first.length,
      'one formula',
      'several are given and none of them uses the others',
    );
  }
  if (main.name !== undefined && isVariable(main.name) && !main.function)
    refuseFormula(
      typed,
      'a formula for what is asked',
      `${main.name} on the left is a variable of the trial`,
    );
  return {
    formula: main.text,
    definitions: ordered(definitions),
    inverse: main.function ?? '',
    spreadsheet: main.spreadsheet,
  };
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Lines that go on where the one before broke off. */
function joinedLines(lines: readonly string[]): readonly string[] {
  const joined: string[] = [];
  for (const line of lines) {
    const before = joined[joined.length - 1];
    const open = before === undefined ? 0 : count(before, /[([{]/g) - count(before, /[)\]}]/g);
    if (
      before !== undefined &&
      (open > 0 || /[-+*/^=·×]$/.test(before) || /^[-+*/^)·×]/.test(line))
    )
      joined[joined.length - 1] = `${before} ${line}`;
    else joined.push(line);
  }
  return joined;
}

function count(text: string, sign: RegExp): number {
  return [...text.matchAll(sign)].length;
}

interface Sides {
  readonly name: string | undefined;
  readonly text: string;
  readonly function?: 'sin' | 'cos' | 'tan';
  readonly spreadsheet: boolean;
}

/** Left and right of =. */
function sidesOf(line: string): Sides {
  const spreadsheet = /^\s*=(?!=)/.test(line);
  const parts = cutOutside(
    spreadsheet ? line.replace(/^\s*=/, '') : line,
    (sign) => sign === '=' || sign === '≈',
  );
  // A = 180 - … = 171.6: the number at the end is an example's answer.
  while (parts.length > 2 && /^[\s\d.,°-]*$/.test(parts[parts.length - 1] ?? ''))
    (parts as string[]).pop();
  const [left, right] = parts as [string, string | undefined];
  if (parts.length === 1) return { name: undefined, text: left, spreadsheet };
  const text = parts[parts.length - 1] as string;
  const onLeft = FUNCTION_LEFT.exec(left)?.[1] as 'sin' | 'cos' | 'tan' | undefined;
  if (onLeft && parts.length === 2) return { name: undefined, text, function: onLeft, spreadsheet };
  if (right !== undefined && LEFT.test(left)) {
    const name = DEFINED.exec(left)?.[1];
    return { name: name === undefined ? plain(left).trim() : asToken(name), text, spreadsheet };
  }
  // What stands on the left is no name: the parser says where it stops.
  return { name: undefined, text: line, spreadsheet };
}

/** Definitions so that each comes after those that it uses. */
function ordered(definitions: readonly Definition[]): readonly Definition[] {
  const done: Definition[] = [];
  const open = [...definitions];
  for (let turn = 0; turn <= definitions.length && open.length > 0; turn++) {
    const index = open.findIndex(
      ({ text }) =>
        !open.some(({ name }) =>
          new RegExp(`(?<![\\p{L}\\d_])${escaped(name)}(?![\\p{L}\\d_])`, 'u').test(asToken(text)),
        ),
    );
    done.push(...open.splice(Math.max(index, 0), 1));
  }
  return done;
}
