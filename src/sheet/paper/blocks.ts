/** A sheet as plain blocks, from which the text and the HTML are made. */

import type { Outcome, Severity } from '../../job/index.js';

/** One block of a sheet; a text alone is a paragraph. */
export type SheetBlock =
  | string
  | { readonly kind: 'section'; readonly title: string }
  | { readonly kind: 'detail'; readonly text: string }
  | { readonly kind: 'cautions'; readonly texts: readonly string[] }
  /** The one line that says how the job stands. */
  | { readonly kind: 'outcome'; readonly outcome: Outcome; readonly text: string }
  | {
      readonly kind: 'finding';
      readonly severity: Severity;
      readonly text: string;
      /** What to do; empty where nothing is asked. */
      readonly action: string;
    }
  /** Lines to write on, each with what goes there. */
  | { readonly kind: 'blanks'; readonly labels: readonly string[] }
  | SheetTable
  /** A picture for the HTML; the text sheet says the same in a table. */
  | { readonly kind: 'drawing'; readonly svg: string };

/** A table of the sheet. */
export interface SheetTable {
  readonly kind: 'table';
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Columns that are set to the left; the others hold figures. */
  readonly left: readonly number[];
}

/** A sheet before it is written as text or HTML. */
export interface SheetPage {
  /** Language tag. */
  readonly language: string;
  /** Heading. */
  readonly title: string;
  /** Second line. */
  readonly subtitle: string;
  /** What stands at the edge of every printed page. */
  readonly running: string;
  /** `page 1 of 2` in words around the counters. */
  readonly pageWords: readonly [before: string, between: string];
  readonly blocks: readonly SheetBlock[];
}

/** A cell to write in. */
export const BLANK = '______';

/** A section heading. */
export const section = (title: string): SheetBlock => ({ kind: 'section', title });

/** A line that belongs to the one above it. */
export const detail = (text: string): SheetBlock => ({ kind: 'detail', text });

/** Lines to write on. */
export const blanks = (...labels: readonly string[]): SheetBlock => ({ kind: 'blanks', labels });

/** A column of a table: its heading, its cell for an item, and whether it is set to the left. */
export type Column<Item> = readonly [heading: string, cell: (item: Item) => string, side?: 'left'];

/** A table of items by columns; columns in which no item has anything to say are left out. */
export function tableOf<Item>(
  items: readonly Item[],
  columns: readonly (Column<Item> | null)[],
): SheetBlock {
  const kept = columns.flatMap((column) => {
    if (!column) return [];
    const [heading, cell, side] = column;
    const cells = items.map(cell);
    return cells.some((text) => text !== '' && text !== '-') ? [{ heading, cells, side }] : [];
  });
  return {
    kind: 'table',
    header: kept.map(({ heading }) => heading),
    rows: items.map((_, row) => kept.map(({ cells }) => cells[row] ?? '')),
    left: kept.flatMap(({ side }, index) => (side === 'left' ? [index] : [])),
  };
}
