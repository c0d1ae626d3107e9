/** What a stage's form is made of, as plain data. Drawn by `draw.ts`, the same when the site is built and in the browser. */

import type { ReadAs } from '../state/typedFields.js';
import type { DeskWords } from '../words/words.js';

/** One field of the job file. */
export interface Field {
  readonly kind: 'field';
  /** Where it stands in the draft. */
  readonly path: string;
  readonly label: string;
  readonly unit?: string;
  readonly as: ReadAs;
  /** Options of a choice by their value; an empty value takes the field away. */
  readonly options?: Readonly<Record<string, string>>;
  /** What is assumed while it is empty. */
  readonly empty?: string;
  readonly hint?: string;
  /** Over the whole width. */
  readonly wide?: boolean;
  /** A number below zero can be meant, so the keyboard must have its sign. */
  readonly signed?: boolean;
}

/** Fields beside each other. */
interface Group {
  readonly kind: 'group';
  readonly legend?: string;
  readonly parts: readonly Part[];
  /** The row that this group is, with a way to remove it; without an index the path itself. */
  readonly remove?: { readonly list: string; readonly index?: number; readonly what: string };
}

/** Something that is folded away. */
interface Fold {
  readonly kind: 'fold';
  /** Its own name, by which it stays open when the form is drawn anew. */
  readonly name: string;
  readonly title: string;
  readonly says?: string;
  readonly open?: boolean;
  readonly parts: readonly Part[];
}

/** Buttons; `what` is an action of the page, `at` what it acts on. */
interface Buttons {
  readonly kind: 'buttons';
  readonly buttons: readonly {
    readonly what: string;
    readonly at?: string;
    readonly label: string;
  }[];
}

/** A field that is no field of the job file: read by an action of the page when it changes. */
export interface Own {
  readonly kind: 'own';
  readonly name: string;
  readonly label: string;
  readonly unit?: string;
  readonly value: string;
  readonly options?: Readonly<Record<string, string>>;
  /** A text area. */
  readonly lines?: number;
  /** A word beside it: planned value, verdict. */
  readonly note?: string;
  readonly state?: string;
  readonly signed?: boolean;
}

/** A sentence. */
interface Note {
  readonly kind: 'note';
  readonly text: string;
  readonly strong?: boolean;
}

/** HTML made elsewhere, of texts already escaped. */
interface Made {
  readonly kind: 'made';
  readonly html: string;
}

export type Part = Field | Group | Fold | Buttons | Own | Note | Made;

/** A number. */
export const number = (
  path: string,
  label: string,
  unit: string,
  of: Partial<Field> = {},
): Field => ({ kind: 'field', as: 'number', path, label, unit, ...of });

/** A text that nothing refers to. */
export const text = (path: string, label: string, of: Partial<Field> = {}): Field => ({
  kind: 'field',
  as: 'text',
  path,
  label,
  ...of,
});

/** A name that others refer to. */
export const name = (path: string, label: string): Field => ({
  kind: 'field',
  as: 'name',
  path,
  label,
});

/** One of a few words. */
export const choice = (
  path: string,
  label: string,
  options: Readonly<Record<string, string>>,
  of: Partial<Field> = {},
): Field => ({ kind: 'field', as: 'choice', path, label, options, ...of });

/** Names as the options of a choice. */
export const asOptions = (names: readonly (string | undefined)[]): Record<string, string> =>
  Object.fromEntries(names.flatMap((each) => (each === undefined ? [] : [[each, each]])));

/** Rows of a list in a fold, each with the same fields, with a plus and 'same as above'. */
export function rowsOf(
  words: DeskWords,
  of: {
    readonly list: string;
    readonly count: number;
    readonly title: string;
    /** What one row is called. */
    readonly row: string;
    readonly fields: (path: string, index: number) => readonly Part[];
    readonly before?: readonly Part[];
    readonly note?: string;
  },
): Part {
  const { list, count, title, row, fields, before = [], note } = of;
  const rows = Array.from({ length: count }, (_, index) => index);
  return {
    kind: 'fold',
    name: list,
    title,
    says: String(count),
    parts: [
      ...(note === undefined ? [] : [{ kind: 'note', text: note } as const]),
      ...before,
      ...rows.map(
        (index): Part => ({
          kind: 'group',
          legend: `${row.charAt(0).toUpperCase()}${row.slice(1)} ${index + 1}`,
          remove: { list, index, what: `${row} ${index + 1}` },
          parts: fields(`${list}[${index}]`, index),
        }),
      ),
      {
        kind: 'buttons',
        buttons: [
          { what: 'add', at: list, label: words.plus(row) },
          ...(count > 0 ? [{ what: 'same', at: list, label: words.same }] : []),
        ],
      },
    ],
  };
}

/** A few of a list as one choice; a list of several stays as it is until another is chosen. */
export function fewOf(
  path: string,
  label: string,
  options: Readonly<Record<string, string>>,
  list: readonly string[],
): Own {
  const joined = list.join(', ');
  return {
    kind: 'own',
    name: `few:${path}`,
    label,
    value: joined,
    options: list.length > 1 ? { ...options, [joined]: joined } : options,
  };
}

/** Fields that are asked seldom. */
export const more = (words: DeskWords, name: string, parts: readonly Part[]): Part => ({
  kind: 'fold',
  name,
  title: words.more,
  parts,
});
