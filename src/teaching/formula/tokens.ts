/** A formula's text cut into numbers, names and marks, whatever notation it is written in. */

import { commaKinds } from './commas.js';
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

/** How the commas of numbers are read. */
export interface NumberChoices {
  /** `6,378` is read as 6378, not as 6.378. */
  readonly thousands: boolean;
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

/** Cuts a formula into tokens; the last one is the end. */
export function tokensOf(formula: string, choices: NumberChoices): Tokens {
  const tokens: Token[] = [];
  const commas = commaKinds(formula);
  const thousands: string[] = [];
  const decimalCommas: string[] = [];
  let at = 0;
  let spaced = false;
  const add = (kind: Token['kind'], text: string, length: number): void => {
    tokens.push({ kind, text, at, spaced });
    at += length;
    spaced = false;
  };
  /** A LaTeX group such as `_{sat}` that belongs to a name. */
  const group = (): string => {
    const found = /^_?\{\\?(?:mathrm|text|rm)?\s*\{?([^{}]*)\}?\}/.exec(formula.slice(at));
    if (!found) return '';
    at += found[0].length;
    return (found[1] ?? '').replace(/[\s\\]/g, '');
  };
  const name = (text: string, length: number): void => {
    const start = at;
    at += length;
    let below = '';
    if (formula[at] === '_' && formula[at + 1] === '{') below = `_${group()}`;
    else if (formula[at] === '_') {
      below = /^_[\p{L}\d]*/u.exec(formula.slice(at))?.[0] ?? '';
      at += below.length;
    }
    const end = at;
    at = start;
    add('name', `${plainDigits(text)}${below}`, end - start);
  };
  while (at < formula.length) {
    const rest = formula.slice(at);
    const sign = rest[0] as string;
    if (/[\s$&\u200b\u00a0]/.test(sign) && !(sign === '$' && CELL.test(rest))) {
      spaced = true;
      at++;
      continue;
    }
    if (sign === '\\') {
      const command = /^\\([A-Za-z]+|.)/.exec(rest)?.[1] ?? '';
      const length = command.length + 1;
      const mark = COMMANDS.get(command);
      if (SILENT.test(command)) at += length;
      else if (/^(?:mathrm|text|operatorname|rm|mathit|mathsf|textrm)$/.test(command)) {
        const inner = /^\\[a-z]+\s*\{([^{}]*)\}/.exec(rest);
        if (!inner) at += length;
        else if ((inner[1] ?? '').trim() === '') at += inner[0].length;
        else name((inner[1] ?? '').replace(/[\s\\]/g, ''), inner[0].length);
      } else if (mark !== undefined) add('mark', mark, length);
      else if (/^[dtc]?frac$/.test(command)) add('mark', '\\frac', length);
      else if (command === 'sqrt') add('mark', '\\sqrt', length);
      else if (/^[A-Za-z]+$/.test(command)) name(command.replace(/^var/, ''), length);
      else refuseAt(formula, at, 'a number, a name, an operator or a bracket');
      continue;
    }
    const cell = CELL.exec(rest);
    if (cell) {
      add('name', `${cell[1]}${cell[2]}`, cell[0].length);
      continue;
    }
    const number = NUMBER.exec(rest)?.[0];
    if (number !== undefined) {
      readNumber(number);
      continue;
    }
    const raised = /^[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/.exec(rest)?.[0];
    if (raised !== undefined) {
      add('superscript', plainDigits(raised), raised.length);
      continue;
    }
    const found = NAME.exec(rest)?.[0];
    if (found !== undefined) {
      name(found, found.length);
      continue;
    }
    const mark = MARKS.find(([typed]) => rest.startsWith(typed));
    if (!mark) refuseAt(formula, at, 'a number, a name, an operator or a bracket', signSlip(sign));
    add('mark', mark[1], mark[0].length);
  }
  add('end', '', 0);
  return { tokens, thousands, decimalCommas };

  function readNumber(first: string): void {
    let text = first;
    let length = first.length;
    // 35 786 and 42'164: a space or a stroke between groups of three.
    const grouped = /^\d{1,3}(?:[ \u00a0\u202f'’]\d{3})+(?![\d.])/.exec(formula.slice(at))?.[0];
    if (grouped !== undefined) {
      thousands.push(grouped);
      add('number', grouped.replace(/\D/g, ''), grouped.length);
      return;
    }
    if (formula[at + length] === ',' && commas.get(at + length) !== 'separator') {
      const whole = /^\d+(?:,\d+)+(?:\.\d+)?(?:[eE][+-]?\d+)?/.exec(formula.slice(at))?.[0];
      if (whole !== undefined && !first.includes('.')) {
        length = whole.length;
        const groups = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(whole);
        const certain = /,\d+,|\./.test(whole);
        if (
          groups &&
          (certain || (choices.thousands && commas.get(at + first.length) !== 'decimal'))
        ) {
          if (!certain) thousands.push(whole);
          text = whole.replaceAll(',', '');
        } else {
          if (whole.indexOf(',') !== whole.lastIndexOf(','))
            refuseAt(
              formula,
              at,
              'a number with one decimal comma',
              'write ; between the arguments of a function',
            );
          if (groups && commas.get(at + first.length) !== 'decimal') thousands.push(whole);
          else decimalCommas.push(whole);
          text = whole.replace(',', '.');
        }
      }
    }
    if (!Number.isFinite(Number(text)))
      refuseAt(formula, at, 'a number within the range of a computer');
    add('number', text, length);
  }
}

/** What a sign was likely meant for. */
function signSlip(sign: string): string | undefined {
  if (sign === '.') return 'is a digit missing beside the decimal point?';
  if (sign === '!' || sign === '?' || sign === '~') return 'a formula has no such sign';
  return undefined;
}
