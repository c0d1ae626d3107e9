/**
 * A worked example: inputs as data, the library's own computation, and what to show of its result.
 * The same definition draws the page when the site is built and answers in the reader's browser.
 */

import type { Inputs, Values } from './inputs/inputs.js';

/** One figure of the answer. */
export interface Output {
  readonly label: string;
  readonly value: number | string;
  readonly unit?: string;
  /** Decimals to print, default 2. */
  readonly digits?: number;
  /** A few words after the figure: where it counts from, what it means. */
  readonly note?: string;
  /** Set large: the answer to the page's question. At most two. */
  readonly main?: boolean;
}

/** Numbers in rows and columns; also the text alternative of a picture. */
export interface Table {
  readonly caption: string;
  readonly columns: readonly string[];
  /** Cells as printed; format numbers with `shown`. The first cell is the row's heading. */
  readonly rows: readonly (readonly string[])[];
}

/** A mark of a picture that can be moved, by the pointer or by keys; it writes the same inputs as the form. */
export interface Handle {
  /** What is moved. */
  readonly label: string;
  /** Where it stands, in words. */
  readonly says: string;
  /** Its place, in shares of the picture's width and height. */
  readonly at: readonly [number, number];
  readonly now: number;
  readonly min: number;
  readonly max: number;
  /** The inputs to change where it is put to a place of the picture; none where it cannot stand there. */
  readonly put: (x: number, y: number) => Readonly<Record<string, unknown>> | undefined;
  /** The inputs to change after some steps to the right and up. */
  readonly step: (right: number, up: number) => Readonly<Record<string, unknown>> | undefined;
}

/** A drawing with its text alternative; made by the helpers in `plot.ts`, `sky.ts`, `compass.ts`. */
export interface Figure {
  /** What it shows, in one sentence. */
  readonly title: string;
  /** A complete `<svg>` element. */
  readonly svg: string;
  /** The numbers that the picture shows. */
  readonly table: Table;
  /** What can be moved in it. */
  readonly handles?: readonly Handle[];
}

/** Everything that is shown of a result. */
export interface View {
  /** The answer in one sentence; read out after each change. */
  readonly says: string;
  readonly outputs: readonly Output[];
  readonly figures?: readonly Figure[];
  /** Tables that are part of the answer, such as the lines of a budget. */
  readonly tables?: readonly Table[];
  /** Cautions and remarks that depend on the result. */
  readonly notes?: readonly string[];
  /** Where what the answer asks for can hurt: stands directly under the answer, before the hand moves. */
  readonly caution?: string | undefined;
}

/** What to ask `workedSolution` of the library. */
export interface Working {
  readonly plan: string;
  readonly givens: Readonly<Record<string, number>>;
}

/** One line of the working. */
export interface HandStep {
  /** What is worked out, in words. */
  readonly says: string;
  /** The formula in letters, and with the numbers put in; TeX. */
  readonly formula: string;
  readonly put?: string;
  /** The result as printed. */
  readonly result: string;
  /** Title of the worked solution it belongs to; the first steps of a long working are folded under it. */
  readonly of?: string;
}

/** A button that changes some inputs: another exercise, one more reading. */
interface Action<I extends Inputs> {
  readonly label: string;
  /** The inputs to change, from all of them. Pure: chance comes from a seed among the inputs. */
  readonly change: (values: Values<I>) => Partial<Values<I>>;
}

/** Sets of inputs to begin from, offered as a list above the form. */
export interface Presets<I extends Inputs> {
  readonly label: string;
  /** What the list says while the inputs are none of its sets. */
  readonly own: string;
  readonly sets: readonly {
    readonly label: string;
    readonly values: Partial<Values<I>>;
  }[];
}

/** A worked example. */
export interface Example<I extends Inputs = Inputs, R = unknown> {
  readonly inputs: I;
  /** Calls the library; a DomainError it throws is shown beside its field. */
  readonly compute: (values: Values<I>) => R;
  /** What to show. Pure: no DOM. */
  readonly view: (result: R, values: Values<I>) => View;
  /** A complete TypeScript program that prints the same answer. */
  readonly code: (values: Values<I>, result: R) => string;
  /** Worked solutions to show line by line under the answer: names of plans (`SOLUTION_PLANS`) with their givens. */
  readonly working?: (values: Values<I>, result: R) => readonly Working[];
  /** Buttons under the inputs. */
  readonly actions?: readonly Action<I>[];
  /** Sets of inputs to choose from. */
  readonly presets?: Presets<I>;
  /** Names of the inputs that are shown at once; the others are folded away under "more". All by default. */
  readonly usual?: readonly (keyof I & string)[];
  /** Steps by hand that no plan of the library has; shown behind those of `working`. */
  readonly hand?: (values: Values<I>, result: R) => readonly HandStep[];
  /** What stands in the place of the steps by hand where there are none for these values. */
  readonly handWaits?: string;
  /** The field to blame for an error whose `parameter` is not a field's name. */
  readonly fieldOf?: (parameter: string) => string | undefined;
}

/** Declares a worked example; only the types are checked here. */
export function defineExample<const I extends Inputs, R>(example: Example<I, R>): Example<I, R> {
  return example;
}

/** A value as it is written in a program: used by `code`. */
export function literal(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(literal).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const fields = Object.entries(value).map(([name, inner]) => `${name}: ${literal(inner)}`);
    return `{ ${fields.join(', ')} }`;
  }
  return typeof value === 'string' ? `'${value.replace(/['\\]/g, '\\$&')}'` : String(value);
}
