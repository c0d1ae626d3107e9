/** What a formula's notation says of itself, and how each decision in reading it is told. */

import { fromModule, functionNamed } from './functionNames.js';
import type { Came, Choices } from './reading.js';
import type { Token } from './tokens.js';

/** All that may be decided. */
export interface Decisions extends Choices {
  readonly thousands: boolean;
}

/** What was decided in reading a formula. */
export interface FormulaRemark {
  /** Which decision, as a fixed word. */
  readonly code:
    | 'angles'
    | 'arctangent-order'
    | 'decimal-comma'
    | 'function-reach'
    | 'logarithm'
    | 'minus-before-power'
    | 'name'
    | 'product-after-slash'
    | 'thousands'
    | 'units';
  /** The decision in a sentence. */
  readonly says: string;
}

/** What the notation suggests. */
export interface Evidence {
  readonly decisions: Omit<Decisions, 'thousands'>;
  readonly spreadsheet: boolean;
  /** Whether the formula turns degrees into radians or back somewhere. */
  readonly converted: boolean;
}

/** What the notation says of itself: a spreadsheet's, a program's, or a hand's. */
export function evidenceOf(
  lists: readonly (readonly Token[])[],
  statements: { readonly spreadsheet: boolean },
): Evidence {
  const tokens = lists.flat();
  const functions = tokens.filter(
    ({ kind, text }) => kind === 'name' && functionNamed(text) !== undefined && text.length > 1,
  );
  const capitals =
    functions.some(({ text }) => /^[A-Z]{3}/.test(text)) &&
    functions.every(({ text }) => text === text.toUpperCase());
  const modules = tokens.some(({ kind, text }) => kind === 'name' && fromModule(text));
  const turns = tokens.some(
    ({ kind, text }) =>
      kind === 'name' && ['radians', 'degrees'].includes(functionNamed(text)?.base ?? ''),
  );
  const isPi = (text: string | undefined) => /^(?:pi|π)$/i.test(text ?? '');
  const constants = tokens.some(({ kind, text }, at) => {
    if (kind === 'number' && /^(?:57\.[23]\d*|0?\.01745\d*)$/.test(text)) return true;
    if (kind !== 'number' || text !== '180') return false;
    const around = tokens.slice(Math.max(0, at - 4), at + 5).map((token) => token.text);
    return (
      (tokens[at - 1]?.text === '/' || tokens[at + 1]?.text === '/' || around.includes('\\frac')) &&
      around.some(isPi)
    );
  });
  const semicolons = tokens.some(({ text }) => text === ';');
  const spreadsheet = statements.spreadsheet || capitals || semicolons;
  const converted = turns || constants;
  return {
    spreadsheet,
    converted,
    decisions: {
      angles: converted || modules || statements.spreadsheet ? 'radians' : 'degrees',
      tight: true,
      reach: false,
      xFirst: spreadsheet,
      natural: modules,
      minusFirst: statements.spreadsheet,
    },
  };
}

/** The decisions that came up, in sentences. */
export function remarksOf(from: {
  readonly came: ReadonlySet<Came>;
  readonly decisions: Decisions;
  readonly spreadsheet: boolean;
  readonly converted: boolean;
  readonly thousands: readonly string[];
  readonly decimalCommas: readonly string[];
  readonly told: readonly (readonly [name: string, role: string])[];
}): readonly FormulaRemark[] {
  const { came, decisions, spreadsheet, converted } = from;
  const remarks: FormulaRemark[] = [];
  const tell = (code: FormulaRemark['code'], says: string) => remarks.push({ code, says });
  if (came.has('angle-functions') && decisions.angles === 'radians')
    tell(
      'angles',
      converted
        ? 'Sine, cosine and tangent are read in radians, because the formula converts between degrees and radians.'
        : 'Sine, cosine and tangent are read in radians, as spreadsheets and programs do.',
    );
  else if (came.has('angle-functions') && spreadsheet)
    tell(
      'angles',
      'Sine, cosine and tangent are read in degrees; a spreadsheet would take radians.',
    );
  if (came.has('arctangent-of-two'))
    tell(
      'arctangent-order',
      decisions.xFirst
        ? 'ATAN2 is read as spreadsheets do: x first, then y.'
        : 'atan2 is read as programs do: y first, then x.',
    );
  if (came.has('log'))
    tell(
      'logarithm',
      decisions.natural
        ? 'log is read as the natural logarithm, as in a program.'
        : 'log is read as the logarithm to base 10.',
    );
  if (came.has('minus-before-power'))
    tell(
      'minus-before-power',
      decisions.minusFirst
        ? 'The minus before a power is read as spreadsheets do: -x^2 is (-x)^2.'
        : 'The minus before a power is read as on paper: -x^2 is -(x^2).',
    );
  if (came.has('product-after-slash'))
    tell(
      'product-after-slash',
      decisions.tight
        ? 'Factors without a sign between them after a slash are read as one divisor: a/bc is a/(bc).'
        : 'Only the first factor after a slash is read as the divisor: a/bc is (a/b)c.',
    );
  if (came.has('function-reach'))
    tell(
      'function-reach',
      decisions.reach
        ? 'A function without brackets is taken of the whole quotient after it.'
        : 'A function without brackets is taken of what stands before the slash.',
    );
  for (const number of new Set(from.thousands))
    tell(
      'thousands',
      /[,]/.test(number) && !decisions.thousands
        ? `${number} is read with a decimal comma.`
        : `${number} is read as ${number.replace(/[^\d.]/g, '')}.`,
    );
  if (from.decimalCommas.length > 0)
    tell('decimal-comma', `${from.decimalCommas[0]} is read with a decimal comma.`);
  if (came.has('units'))
    tell('units', 'Units behind numbers are passed over; nothing is converted.');
  for (const [name, role] of from.told) tell('name', `${name} is read as ${saidRole(role)}.`);
  return remarks;
}

/** A role in words: `longitudeDifferenceDeg` is the longitude difference. */
function saidRole(role: string): string {
  if (/\s/.test(role)) return `the ${role}`;
  const words = role
    .replace(/(?:DbPerK|Deg|GHz|MHz|MmPerH|Dbi?w?m?|Km|Mm|M|K|W)$/, '')
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  const sign = role === 'longitudeDifferenceDeg' ? ', satellite less station, east positive' : '';
  return `the ${words}${sign}`;
}
