/** The job sheet as plain blocks, from which the text and the HTML are made. */

/** One block of the sheet; a text alone is a paragraph. */
export type SheetBlock =
  | string
  | { readonly kind: 'section'; readonly title: string }
  | { readonly kind: 'detail'; readonly text: string }
  | { readonly kind: 'caution'; readonly text: string }
  | SheetTable;

/** A table of the sheet. */
export interface SheetTable {
  readonly kind: 'table';
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Columns that are set to the left; the others hold figures. */
  readonly left: readonly number[];
}

/** A section heading. */
export const section = (title: string): SheetBlock => ({ kind: 'section', title });

/** A line that belongs to the one above it. */
export const detail = (text: string): SheetBlock => ({ kind: 'detail', text });

/** What to mind. */
export const caution = (text: string): SheetBlock => ({ kind: 'caution', text });

/** A table; the first column is set to the left unless `left` says otherwise. */
export const table = (
  header: readonly string[],
  rows: readonly (readonly string[])[],
  left: readonly number[] = [0],
): SheetBlock => ({ kind: 'table', header, rows, left });
