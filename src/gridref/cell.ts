/** A cell of a grid reference. */

/** The place that a grid reference stands for: a cell, by its centre and size. */
export interface GridCell {
  /** Latitude of the cell's centre in degrees, north positive. */
  readonly latitudeDeg: number;
  /** Longitude of the cell's centre in degrees, [-180, 180). */
  readonly longitudeDeg: number;
  /** South to north size of the cell in degrees. */
  readonly latitudeSpanDeg: number;
  /** West to east size of the cell in degrees. */
  readonly longitudeSpanDeg: number;
}
