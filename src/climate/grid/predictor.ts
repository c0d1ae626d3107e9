/**
 * Predicts a node of a tile from its neighbours: ten before it in its own layer and five around it in a companion layer.
 *
 * The weights come with the layer, fitted to the whole Earth when the grid was built: one set for the inside of a tile, one
 * for its first row, one for its first column, where some neighbours are not there.
 */

/** Nodes kept on both sides of a tile's rows and above them, so that no neighbour falls outside. */
export const MARGIN = 2;

/** Weights are in 64ths. */
export const WEIGHT_UNIT = 64;
/** Predictions and what they were off are in 128ths of a step. */
export const PART_BITS = 7;

/** Neighbours in the own layer and beside it in a companion. */
export const NEAR = 9;
export const BESIDE = 4;

/** Where in a tile a node lies, hence which weights hold. */
export const INSIDE = 0;
export const FIRST_ROW = 1;
export const FIRST_COLUMN = 2;

/** Rows of a tile with margins around: two above, one below, two on each side. */
export class Padded {
  readonly stride: number;
  readonly start: number;
  readonly values: Int16Array;

  constructor(
    readonly height: number,
    readonly width: number,
  ) {
    this.stride = width + 2 * MARGIN;
    this.start = MARGIN * this.stride + MARGIN;
    this.values = new Int16Array((height + MARGIN + 1) * this.stride);
  }

  /** Repeats the ends of a row into its margins, those of the last row below it too. */
  close(row: number): void {
    const { values, stride, width } = this;
    const first = this.start + row * stride;
    const last = first + width - 1;
    values[first - 1] = values[first - 2] = values[first] as number;
    values[last + 1] = values[last + 2] = values[last] as number;
    if (row === this.height - 1)
      values.copyWithin(first + stride - MARGIN, first - MARGIN, last + 1 + MARGIN);
  }
}

/** Predicts nodes of a layer in one tile. */
export class Predictor {
  /** @param weights  For each of the three sets, one weight per neighbour, in 64ths. */
  constructor(
    private readonly weights: readonly (readonly number[])[],
    private readonly companion: Padded | undefined,
  ) {}

  /**
   * Prediction of the node at `at`, whose neighbours before it are known, in 128ths: the mean of west and north, and the
   * neighbours' departures from it, weighted.
   *
   * Whole numbers throughout: exact on every machine. Written out, since most calls come before an engine has optimized
   * anything.
   */
  guess(values: Int16Array, at: number, stride: number, set: number): number {
    const k = this.weights[set] as readonly number[];
    const north = at - stride;
    const north2 = north - stride;
    const west = values[at - 1] as number;
    const above = values[north] as number;
    // Twice the mean, so that the half stays whole; hence the doubled values below.
    const base = west + above;
    const sum =
      64 * base +
      (west - above) * (k[0] as number) +
      (2 * (values[north - 1] as number) - base) * (k[1] as number) +
      (2 * (values[north + 1] as number) - base) * (k[2] as number) +
      (2 * (values[north2] as number) - base) * (k[3] as number) +
      (2 * (values[at - 2] as number) - base) * (k[4] as number) +
      (2 * (values[north2 + 1] as number) - base) * (k[5] as number) +
      (2 * (values[north2 - 1] as number) - base) * (k[6] as number) +
      (2 * (values[north + 2] as number) - base) * (k[7] as number) +
      (2 * (values[north - 2] as number) - base) * (k[8] as number);
    if (this.companion === undefined) return sum;
    const beside = this.companion.values;
    let left = beside[at - 1] as number;
    let up = beside[north] as number;
    // The companion's node is known where its neighbour outside the tile is not.
    if (set === FIRST_ROW) up = left;
    if (set === FIRST_COLUMN) left = up;
    const mean = left + up;
    return (
      sum +
      (2 * (beside[at] as number) - mean) * (k[9] as number) +
      (2 * (beside[at + 1] as number) - mean) * (k[10] as number) +
      (2 * (beside[at + stride] as number) - mean) * (k[11] as number) +
      (left - up) * (k[12] as number)
    );
  }
}
