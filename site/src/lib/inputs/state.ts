/**
 * The state of an example: from declared inputs to text fields, to the URL and back, and to values.
 *
 * Pure and without DOM. The URL holds only what differs from the defaults, in readable form:
 * `?latitudeDeg=46.5&samples=-0.6_-43*0_-41`. Unknown names in a URL are ignored; a value that cannot be read stays
 * in its field as it is and is refused there.
 */

import { DomainError } from 'slantpath';
import { said } from '../language/language.js';
import { typed } from '../language/text.js';
import { isAngleField, typedAngle } from './angles.js';
import type { AnyRows, Column, Input, Inputs, Place, Values } from './inputs.js';

/** What stands in each field, as text. */
export type Raw = Readonly<Record<string, string>>;

/** The three fields of a place, in the order in which they are shown. */
export const PLACE_FIELDS = ['latitudeDeg', 'longitudeDeg', 'heightM'] as const;

const prefixed = (prefix: string | undefined, name: string) =>
  prefix ? `${prefix}${name[0]?.toUpperCase()}${name.slice(1)}` : name;

/** The names of the fields of an input: its own, or three for a place. */
export function fieldsOf(name: string, input: Input): string[] {
  return input.kind === 'place'
    ? PLACE_FIELDS.map((field) => prefixed(input.prefix, field))
    : [name];
}

/** More rows than these are refused: a picture of thousands would take the page a minute. */
export const MOST_ROWS = 400;

const columnsOf = (input: AnyRows) => Object.entries(input.columns) as [string, Column][];

/** Rows as one line of text that a URL carries as it is: `_` between columns, `*` between rows. */
export function joinRows(cells: readonly (readonly string[])[]): string {
  const cell = (text: string) =>
    encodeURIComponent(text).replace(/[_*]/g, (sign) => (sign === '_' ? '%5F' : '%2A'));
  return cells.map((row) => row.map(cell).join('_')).join('*');
}

/** The cells of a line made by {@link joinRows}. */
export function splitRows(line: string): string[][] {
  const cell = (text: string) => {
    try {
      return decodeURIComponent(text);
    } catch {
      return text;
    }
  };
  return line === '' ? [] : line.split('*').map((row) => row.split('_').map(cell));
}

/** The text in an input's field for a value; a place has three fields and is handled by {@link rawOfValues}. */
function rawOf(input: Exclude<Input, { kind: 'place' }>, value: unknown): string {
  if (input.kind === 'toggle') return value ? 'yes' : 'no';
  if (input.kind === 'several') return (value as readonly string[]).join('*');
  if (input.kind === 'rows')
    return joinRows(
      (value as readonly Readonly<Record<string, unknown>>[]).map((row) =>
        columnsOf(input).map(([column]) => String(row[column])),
      ),
    );
  return value === undefined ? '' : String(value);
}

/** The text in the fields of some inputs for given values. */
export function rawOfValues<I extends Inputs>(inputs: I, values: Partial<Values<I>>): Raw {
  const raw: Record<string, string> = {};
  for (const [name, value] of Object.entries(values)) {
    const input = inputs[name];
    if (!input) continue;
    if (input.kind !== 'place') raw[name] = rawOf(input, value);
    else {
      const fields = fieldsOf(name, input);
      PLACE_FIELDS.forEach((field, index) => {
        raw[fields[index] ?? field] = String((value as Place)[field]);
      });
    }
  }
  return raw;
}

/** The text in every field before anyone has typed. */
export function defaultsOf(inputs: Inputs): Raw {
  return rawOfValues(
    inputs,
    Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value])),
  );
}

/** The part of a URL after `?` that brings this state back; empty for the defaults. */
export function encodeState(raw: Raw, defaults: Raw): string {
  const query = new URLSearchParams();
  for (const [field, initial] of Object.entries(defaults)) {
    const now = raw[field];
    if (now === undefined || now === initial) continue;
    const value = typed(now);
    query.set(
      field,
      Number.isFinite(value) && value === typed(String(value)) ? String(value) : now,
    );
  }
  return query.toString();
}

/** The state that a URL's query asks for, the defaults where it says nothing. */
export function decodeState(query: string, defaults: Raw): Raw {
  const asked = new URLSearchParams(query);
  return Object.fromEntries(
    Object.entries(defaults).map(([field, initial]) => [field, asked.get(field) ?? initial]),
  );
}

/** Why a field's text cannot be used, worded as the library words its errors. */
function refuse(parameter: string, received: string, allowed: string): never {
  const code = received.trim() === '' ? 'missing' : 'malformed';
  throw new DomainError({ code, parameter, received, allowed });
}

function readNumber(field: string, line: string): number {
  const value = isAngleField(field) ? typedAngle(line) : typed(line);
  return Number.isNaN(value) ? refuse(field, line, 'a number') : value;
}

function readOption(field: string, line: string, options: Readonly<Record<string, string>>) {
  const names = Object.keys(options);
  return names.includes(line)
    ? line
    : refuse(field, line, `one of ${Object.values(options).map(said).join(', ')}`);
}

function readSeveral(
  field: string,
  line: string,
  groups: Readonly<Record<string, Readonly<Record<string, string>>>>,
): readonly string[] {
  const options = Object.assign({}, ...Object.values(groups)) as Readonly<Record<string, string>>;
  return line === '' ? [] : line.split('*').map((name) => readOption(field, name, options));
}

/** Whether an input is shown and read for what its choice says. */
export function applies(input: Input, raw: Raw): boolean {
  if (!('onlyFor' in input) || !input.onlyFor) return true;
  return input.onlyFor.values.includes(raw[input.onlyFor.choice] ?? '');
}

function readCell(field: string, column: Column, line: string): string | number {
  if ('options' in column) return readOption(field, line, column.options);
  return 'text' in column ? line : readNumber(field, line);
}

function readRows(name: string, input: AnyRows, line: string) {
  const rows = splitRows(line);
  if (rows.length > MOST_ROWS)
    throw new DomainError({
      code: 'out-of-range',
      parameter: name,
      received: rows.length,
      allowed: `a table of at most ${MOST_ROWS} rows`,
    });
  return rows
    .map((cells, row) => ({ cells, row }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''))
    .map(({ cells, row }) =>
      Object.fromEntries(
        columnsOf(input).map(([key, column], index) => [
          key,
          readCell(`${name}[${row}].${key}`, column, cells[index] ?? ''),
        ]),
      ),
    );
}

/**
 * The values of all inputs.
 *
 * @throws DomainError naming the first field that cannot be read; a cell of a table as `samples[2].levelDbm`.
 */
export function readValues<I extends Inputs>(inputs: I, raw: Raw): Values<I> {
  const values: Record<string, unknown> = {};
  for (const [name, input] of Object.entries(inputs)) {
    const line = raw[name] ?? '';
    if (!applies(input, raw)) {
      values[name] = input.value;
      continue;
    }
    switch (input.kind) {
      case 'several':
        values[name] = readSeveral(name, line, input.groups);
        break;
      case 'number':
        values[name] = readNumber(name, line);
        break;
      case 'optional-number':
        values[name] = line.trim() === '' ? undefined : readNumber(name, line);
        break;
      case 'choice':
        values[name] = readOption(name, line, input.options);
        break;
      case 'toggle':
        values[name] = line === 'yes';
        break;
      case 'text':
        values[name] = line;
        break;
      case 'place': {
        const fields = fieldsOf(name, input);
        values[name] = Object.fromEntries(
          PLACE_FIELDS.map((field, index) => {
            const at = fields[index] ?? field;
            return [field, readNumber(at, raw[at] ?? '')];
          }),
        );
        break;
      }
      case 'rows':
        values[name] = readRows(name, input, line);
        break;
    }
  }
  return values as Values<I>;
}

/**
 * The field to blame for an error's `parameter`: a path such as `samples[2].levelDbm` leads to the table's cell or
 * to the table, `station.latitudeDeg` to the field `latitudeDeg`. Undefined when no field fits.
 */
export function blamedField(inputs: Inputs, parameter: string): string | undefined {
  const names = Object.entries(inputs).flatMap(([name, input]) => fieldsOf(name, input));
  const words = parameter.replace(/\[\d+\]/g, '').split('.');
  const candidates = [parameter, words.at(-1), words[0]];
  return candidates.find((word) => word !== undefined && names.includes(word));
}
