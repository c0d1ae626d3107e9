/** Numbers as people type them: whether a comma between two digits is a decimal comma, stands between thousands, or between two arguments. */

import { refuseAt } from './parse.js';

/** Functions with two arguments or more, and how many commas their brackets need. */
const COMMAS: ReadonlyMap<string, readonly number[]> = new Map([
  ['atan2', [1]],
  ['atan2d', [1]],
  ['arctan2', [1]],
  ['power', [1]],
  ['pow', [1]],
  ['mod', [1]],
  ['min', [1]],
  ['max', [1]],
  ['round', [0, 1]],
  ['log', [0, 1]],
  ['if', [2]],
  ['student', [1]],
]);

interface Bracket {
  readonly name: string;
  readonly digitCommas: number[];
  otherCommas: number;
}

/**
 * Kind of each comma between digits by its place; one that is not listed may be either a decimal comma or one between
 * thousands.
 */
export function commaKinds(formula: string): ReadonlyMap<number, 'decimal' | 'separator'> {
  const kinds = new Map<number, 'decimal' | 'separator'>();
  const semicolons = /\([^()]*;/.test(formula) || /;[^()]*\)/.test(formula);
  const points = /\d\.\d/.test(formula);
  const between = (at: number) =>
    /\d/.test(formula[at - 1] ?? '') && /\d/.test(formula[at + 1] ?? '');
  const open: Bracket[] = [];
  const close = (bracket: Bracket | undefined): void => {
    if (!bracket) return;
    const { name, digitCommas, otherCommas } = bracket;
    const needed = COMMAS.get(name);
    if (!needed) return;
    const all = digitCommas.length + otherCommas;
    const separate = needed.includes(all) && all > 0;
    // log(2,5) and round(2,5) may be either; a comma without a space between digits is then a decimal comma.
    const kind = separate && !(needed.includes(0) && !points) ? 'separator' : 'decimal';
    for (const at of digitCommas) if (!kinds.has(at)) kinds.set(at, kind);
  };
  for (let at = 0; at < formula.length; at++) {
    const sign = formula[at];
    if (sign === '(') {
      const name = /([A-Za-z]+\d?)\s*$/.exec(formula.slice(0, at))?.[1] ?? '';
      open.push({ name: name.toLowerCase(), digitCommas: [], otherCommas: 0 });
    } else if (sign === ')') close(open.pop());
    else if (sign === ',') {
      const bracket = open[open.length - 1];
      if (!between(at)) {
        if (bracket) bracket.otherCommas++;
      } else if (semicolons) kinds.set(at, 'decimal');
      else bracket?.digitCommas.push(at);
    }
  }
  for (const bracket of open) close(bracket);
  // A comma with one, two or more than three digits behind it, or behind a lone 0, cannot stand between thousands.
  const decimal = [...formula.matchAll(/(?<![\d.,])(\d+),(\d+)(?![\d,])/g)].filter(
    ([, whole, part]) => whole === '0' || part?.length !== 3,
  );
  const clear = decimal.some((found) => !kinds.has((found.index ?? 0) + (found[1]?.length ?? 0)));
  for (const found of formula.matchAll(/(?<![\d.,])(\d+),(\d+)(?![\d,])/g)) {
    const at = (found.index ?? 0) + (found[1]?.length ?? 0);
    // One clear decimal comma makes all of them decimal, unless decimal points are there too.
    if (clear && !points && !kinds.has(at)) kinds.set(at, 'decimal');
  }
  return kinds;
}

/** How the commas of numbers are read. */
export interface NumberChoices {
  /** `6,378` is read as 6378, not as 6.378. */
  readonly thousands: boolean;
}

/** A number as it was typed and as it is read. */
interface TypedNumber {
  readonly typed: string;
  /** Digits with a point. */
  readonly text: string;
  /** Whether it may be read with another choice of thousands, or has a decimal comma. */
  readonly thousands?: boolean;
  readonly decimalComma?: boolean;
}

/** The number that begins at a place with the digits `first`. */
export function typedNumber(
  formula: string,
  at: number,
  from: {
    readonly first: string;
    readonly commas: ReturnType<typeof commaKinds>;
    readonly choices: NumberChoices;
  },
): TypedNumber {
  const { first, commas } = from;
  const rest = formula.slice(at);
  // 35 786 and 42'164: a space or a stroke between groups of three.
  const grouped = /^\d{1,3}(?:[ \u00a0\u202f'’]\d{3})+(?![\d.])/.exec(rest)?.[0];
  if (grouped !== undefined)
    return { typed: grouped, text: grouped.replace(/\D/g, ''), thousands: true };
  const behind = at + first.length;
  const whole =
    formula[behind] === ',' && commas.get(behind) !== 'separator' && !first.includes('.')
      ? /^\d+(?:,\d+)+(?:\.\d+)?(?:[eE][+-]?\d+)?/.exec(rest)?.[0]
      : undefined;
  const read =
    whole === undefined
      ? { typed: first, text: first }
      : withCommas(formula, at, whole, { ...from, decimal: commas.get(behind) === 'decimal' });
  if (!Number.isFinite(Number(read.text)))
    refuseAt(formula, at, 'a number within the range of a computer');
  return read;
}

/** A number with commas: between thousands or before the decimals. */
function withCommas(
  formula: string,
  at: number,
  typed: string,
  { choices, decimal }: { readonly choices: NumberChoices; readonly decimal: boolean },
): TypedNumber {
  const groups = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(typed);
  const certain = /,\d+,|\./.test(typed);
  if (groups && (certain || (choices.thousands && !decimal)))
    return { typed, text: typed.replaceAll(',', ''), thousands: !certain };
  if (typed.indexOf(',') !== typed.lastIndexOf(','))
    refuseAt(
      formula,
      at,
      'a number with one decimal comma',
      'write ; between the arguments of a function',
    );
  const either = groups && !decimal;
  return { typed, text: typed.replace(',', '.'), thousands: either, decimalComma: !either };
}
