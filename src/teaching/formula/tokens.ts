/** A formula's text cut into numbers, names and marks, whatever notation it is written in. */

import { commaKinds, type NumberChoices, typedNumber } from './numbers.js';
import { refuseAt } from './parse.js';

/** A piece of a formula. */
export interface Token {
  /** `mark` is an operator, a bracket or a separator; `unit` says what a number or a name is counted in. */
  readonly kind: 'number' | 'name' | 'mark' | 'superscript' | 'unit' | 'end';
  /** Number in digits with a point, name as typed, or the mark in one spelling. */
  readonly text: string;
  /** Where it begins in what was typed, from 0. */
  readonly at: number;
  /** Whether a space stands before it. */
  readonly spaced: boolean;
}

/** Tokens with what had to be decided on the way. */
export interface Tokens {
  readonly tokens: readonly Token[];
  /** Numbers such as `6,378` that may be 6378 or 6.378. */
  readonly thousands: readonly string[];
  /** Numbers read with a decimal comma. */
  readonly decimalCommas: readonly string[];
}

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

/** Marks in one spelling each. */
const MARKS: readonly (readonly [typed: string, mark: string])[] = [
  ['**', '^'],
  ['<=', '<='],
  ['>=', '>='],
  ['<>', '<>'],
  ['!=', '<>'],
  ['==', '='],
  ['≤', '<='],
  ['≥', '>='],
  ['≠', '<>'],
  ...['-', '−', '–', '—', '‐', '‑'].map((typed) => [typed, '-'] as const),
  ...['*', '×', '·', '∙', '⋅', '•', '✕'].map((typed) => [typed, '*'] as const),
  ...['/', '÷', '∕', '⁄', ':'].map((typed) => [typed, '/'] as const),
  ...['°', 'º', '˚'].map((typed) => [typed, '°'] as const),
  ...["'", '′', '’', '´'].map((typed) => [typed, '′'] as const),
  ...['"', '″', '”'].map((typed) => [typed, '″'] as const),
  ...['+', '^', '=', '<', '>', ',', ';', '(', ')', '[', ']', '{', '}', '|', '%'].map(
    (mark) => [mark, mark] as const,
  ),
  ['√', '√'],
  ['∛', '∛'],
  ['∜', '∜'],
];

/** Commands of LaTeX that only set space or size. */
const SILENT =
  /^(?:left|right|bigl?|bigr|Bigl?|Bigr|biggl?|biggr|quad|qquad|displaystyle|textstyle|limits|,|;|:|!| )$/;
/** Commands of LaTeX that are a mark. */
const COMMANDS: ReadonlyMap<string, string> = new Map([
  ['cdot', '*'],
  ['times', '*'],
  ['ast', '*'],
  ['div', '/'],
  ['circ', '°'],
  ['degree', '°'],
  ['lvert', '|'],
  ['rvert', '|'],
  ['vert', '|'],
  ['lbrace', '{'],
  ['rbrace', '}'],
  ['{', '('],
  ['}', ')'],
  ['%', '%'],
]);

const NUMBER = /^(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/;
const NAME = /^[\p{L}_][\p{L}\d_₀-₉]*(?:\.[\p{L}][\p{L}\d_]*)?/u;
const RAISED = /^[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/;
const CELL = /^\$?([A-Z]{1,3})\$?(\d{1,4})(?![\p{L}\d])/u;

/** Digits of a run of raised or lowered signs. */
function plainDigits(text: string): string {
  return [...text]
    .map((sign) => {
      const raised = SUPERSCRIPTS.indexOf(sign);
      const lowered = SUBSCRIPTS.indexOf(sign);
      return raised >= 0
        ? raised
        : lowered >= 0
          ? lowered
          : sign === '⁻'
            ? '-'
            : sign === '⁺'
              ? ''
              : sign;
    })
    .join('');
}

/** A formula as far as it is cut. */
interface Cut {
  readonly formula: string;
  readonly tokens: Token[];
  at: number;
  spaced: boolean;
}

function add(cut: Cut, kind: Token['kind'], text: string, length: number): void {
  cut.tokens.push({ kind, text, at: cut.at, spaced: cut.spaced });
  cut.at += length;
  cut.spaced = false;
}

/** Adds a name with what stands below it, such as `_{sat}`. */
function addName(cut: Cut, text: string, length: number): void {
  const behind = cut.formula.slice(cut.at + length);
  const group = /^_\{\\?(?:mathrm|text|rm)?\s*\{?([^{}]*)\}?\}/.exec(behind);
  const plain = /^_[\p{L}\d]*/u.exec(behind)?.[0] ?? '';
  const below = behind.startsWith('_{') ? `_${(group?.[1] ?? '').replace(/[\s\\]/g, '')}` : plain;
  const used = behind.startsWith('_{') ? (group?.[0].length ?? 0) : plain.length;
  add(cut, 'name', `${plainDigits(text)}${below}`, length + used);
}

/** A command of LaTeX. */
function addCommand(cut: Cut, rest: string): void {
  const command = /^\\([A-Za-z]+|.)/.exec(rest)?.[1] ?? '';
  const length = command.length + 1;
  const mark = COMMANDS.get(command);
  if (SILENT.test(command)) cut.at += length;
  else if (/^(?:mathrm|text|operatorname|rm|mathit|mathsf|textrm)$/.test(command)) {
    const inner = /^\\[a-z]+\s*\{([^{}]*)\}/.exec(rest);
    if (!inner) cut.at += length;
    else if ((inner[1] ?? '').trim() === '') cut.at += inner[0].length;
    else addName(cut, (inner[1] ?? '').replace(/[\s\\]/g, ''), inner[0].length);
  } else if (mark !== undefined) add(cut, 'mark', mark, length);
  else if (/^[dtc]?frac$/.test(command)) add(cut, 'mark', '\\frac', length);
  else if (command === 'sqrt') add(cut, 'mark', '\\sqrt', length);
  else if (/^[A-Za-z]+$/.test(command)) addName(cut, command.replace(/^var/, ''), length);
  else refuseAt(cut.formula, cut.at, 'a number, a name, an operator or a bracket');
}

/** Cuts a formula into tokens; the last one is the end. */
export function tokensOf(formula: string, choices: NumberChoices): Tokens {
  const cut: Cut = { formula, tokens: [], at: 0, spaced: false };
  const commas = commaKinds(formula);
  const thousands: string[] = [];
  const decimalCommas: string[] = [];
  while (cut.at < formula.length) {
    const rest = formula.slice(cut.at);
    const sign = rest[0] as string;
    const [cell, column, row] = CELL.exec(rest) ?? [];
    const number = NUMBER.exec(rest)?.[0];
    const raised = RAISED.exec(rest)?.[0];
    const name = NAME.exec(rest)?.[0];
    if (/[\s$&\u200b\u00a0]/.test(sign) && !(sign === '$' && cell)) {
      cut.spaced = true;
      cut.at++;
    } else if (sign === '\\') addCommand(cut, rest);
    else if (cell !== undefined) add(cut, 'name', `${column}${row}`, cell.length);
    else if (number !== undefined) {
      const read = typedNumber(formula, cut.at, { first: number, commas, choices });
      if (read.thousands) thousands.push(read.typed);
      if (read.decimalComma) decimalCommas.push(read.typed);
      add(cut, 'number', read.text, read.typed.length);
    } else if (raised !== undefined) add(cut, 'superscript', plainDigits(raised), raised.length);
    else if (name !== undefined) addName(cut, name, name.length);
    else {
      const mark = MARKS.find(([typed]) => rest.startsWith(typed));
      if (!mark)
        refuseAt(formula, cut.at, 'a number, a name, an operator or a bracket', signSlip(sign));
      add(cut, 'mark', mark[1], mark[0].length);
    }
  }
  add(cut, 'end', '', 0);
  return { tokens: cut.tokens, thousands, decimalCommas };
}

/** What a sign was likely meant for. */
function signSlip(sign: string): string | undefined {
  if (sign === '.') return 'is a digit missing beside the decimal point?';
  if (sign === '!' || sign === '?' || sign === '~') return 'a formula has no such sign';
  return undefined;
}
