/** A field of whole numbers on a grid of the Earth. */

/** Whole numbers row by row; `columns` without the repeated first meridian. */
export interface CodedField {
  readonly rows: number;
  readonly columns: number;
  readonly values: Int16Array;
}
