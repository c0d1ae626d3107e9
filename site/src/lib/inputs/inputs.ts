/**
 * The inputs of a worked example, declared as plain data.
 *
 * An example names its inputs in one record; the form, the reading of what was typed, the state in the URL and the
 * TypeScript types of the values all follow from it. The raw state is text (`Raw`), exactly as typed.
 */

/** A number with a unit. `min` and `max` bound the steppers only: what is allowed, the library decides. */
export interface NumberInput {
  readonly kind: 'number';
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  /** One line under the field: sign, zero, where the value is found. */
  readonly hint?: string;
  /** Shown, and read, only while the choice of this name has one of these values; its default counts otherwise. */
  readonly onlyFor?: { readonly choice: string; readonly values: readonly string[] };
}

/** A number that may be left empty; the value is then `undefined`. */
export interface OptionalNumberInput extends Omit<NumberInput, 'kind' | 'value'> {
  readonly kind: 'optional-number';
  readonly value?: number | undefined;
  /** What is assumed when it is empty, shown in the empty field. */
  readonly empty: string;
}

/** One of a few options, in words. */
export interface ChoiceInput<T extends string = string> {
  readonly kind: 'choice';
  readonly label: string;
  readonly options: Readonly<Record<T, string>>;
  readonly value: T;
  readonly hint?: string;
}

/** Yes or no. */
export interface ToggleInput {
  readonly kind: 'toggle';
  readonly label: string;
  readonly value: boolean;
  readonly hint?: string;
}

/** Any of some options, in named groups; ticked boxes. */
export interface SeveralInput {
  readonly kind: 'several';
  readonly label: string;
  /** Options by name under the title of their group. */
  readonly groups: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly value: readonly string[];
  readonly hint?: string;
}

/** Free text: a formula, a coordinate as typed, JSON. */
export interface TextInput {
  readonly kind: 'text';
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  /** Lines of the field; above 1 it is a text area. */
  readonly lines?: number;
}

/** A place: preset places, coordinates, city search, the device's position. Three fields. */
export interface PlaceInput {
  readonly kind: 'place';
  readonly label: string;
  readonly value: Place;
  /** Put before the names of the three fields when an example has two places. */
  readonly prefix?: string;
}

/** A place as the library's functions take it. */
export interface Place {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly heightM: number;
}

/** A column of a table input. */
interface NumberColumn {
  readonly label: string;
  readonly unit?: string;
  readonly step?: number;
}
/** A column of words. */
interface ChoiceColumn {
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
}
/** A column of free text. */
interface TextColumn {
  readonly label: string;
  readonly text: true;
}
export type Column = NumberColumn | ChoiceColumn | TextColumn;
type Row<C extends Readonly<Record<string, Column>>> = {
  readonly [K in keyof C]: C[K] extends ChoiceColumn | TextColumn ? string : number;
};

/** A table with rows that can be added, removed and pasted from a spreadsheet. */
export interface RowsInput<C extends Readonly<Record<string, Column>>> {
  readonly kind: 'rows';
  readonly label: string;
  readonly columns: C;
  readonly value: readonly Row<C>[];
  readonly hint?: string;
  /** The row that 'Add a row' appends. */
  readonly add: Row<C>;
}

// biome-ignore lint/suspicious/noExplicitAny: the columns of any table
export type AnyRows = RowsInput<any>;
export type Input =
  | NumberInput
  | OptionalNumberInput
  | ChoiceInput
  | SeveralInput
  | ToggleInput
  | TextInput
  | PlaceInput
  | AnyRows;
export type Inputs = Readonly<Record<string, Input>>;

/** What an example's `compute` receives for an input. */
type Value<I extends Input> = I extends { readonly kind: 'number' }
  ? number
  : I extends { readonly kind: 'optional-number' }
    ? number | undefined
    : I extends ChoiceInput<infer T>
      ? T
      : I extends { readonly kind: 'several' }
        ? readonly string[]
        : I extends { readonly kind: 'toggle' }
          ? boolean
          : I extends { readonly kind: 'text' }
            ? string
            : I extends { readonly kind: 'place' }
              ? Place
              : I extends RowsInput<infer C>
                ? readonly Row<C>[]
                : never;
export type Values<I extends Inputs> = { readonly [K in keyof I]: Value<I[K]> };

type Without<T> = Omit<T, 'kind'>;

/** A number with a unit. */
export const number = (of: Without<NumberInput>): NumberInput => ({ kind: 'number', ...of });
/** A number that may be left empty. */
export const optionalNumber = (of: Without<OptionalNumberInput>): OptionalNumberInput => ({
  kind: 'optional-number',
  ...of,
});
/** One of a few options. */
export const choice = <T extends string>(of: {
  readonly label: string;
  readonly options: Readonly<Record<T, string>>;
  readonly value: NoInfer<T>;
  readonly hint?: string;
}): ChoiceInput<T> => ({ kind: 'choice', ...of });
/** Any of some options. */
export const several = (of: Without<SeveralInput>): SeveralInput => ({ kind: 'several', ...of });
/** Yes or no. */
export const toggle = (of: Without<ToggleInput>): ToggleInput => ({ kind: 'toggle', ...of });
/** Free text. */
export const text = (of: Without<TextInput>): TextInput => ({ kind: 'text', ...of });
/** A place; by default the first Tarnfell hut. */
export const place = (of: Partial<Without<PlaceInput>> = {}): PlaceInput => ({
  kind: 'place',
  label: 'Station',
  value: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  ...of,
});
/** A table. */
export const rows = <const C extends Readonly<Record<string, Column>>>(
  of: Without<RowsInput<C>>,
): RowsInput<C> => ({ kind: 'rows', ...of });
