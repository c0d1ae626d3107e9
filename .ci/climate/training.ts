/** What a layer's code starts from, learnt from the whole Earth: weights of neighbours, first nodes, odds. */

import { codeLayer } from '../../src/climate/grid/layerCode.js';
import {
  BESIDE,
  FIRST_COLUMN,
  FIRST_ROW,
  NEAR,
  type Padded,
  Predictor,
  WEIGHT_UNIT,
} from '../../src/climate/grid/predictor.js';
import { tileNodes, tileRowOf } from '../../src/climate/grid/tiling.js';

/** Whole numbers on a grid, row by row. */
export interface WholeField {
  readonly rows: number;
  readonly values: Int16Array;
}

/** What goes with a layer in the file. */
export interface LayerModel {
  readonly weights: number[][];
  readonly firsts: number[];
  readonly restless: number;
}

/** Weights before anything is learnt: the mean of west and north, less north-west. */
const PLAIN = [0, -0.8, 0.3, 0, 0, 0, 0, 0, 0];

/** Weights beyond this only come from chance; with it all sums stay within 31 bits. */
const MOST_WEIGHT = 8 * WEIGHT_UNIT;

/** Solves a small symmetric system with a ridge, by elimination with pivots. */
function solved(matrix: Float64Array[], right: Float64Array): number[] {
  const count = right.length;
  const rows = matrix.map((row, index) => {
    const line = [...row, right[index] as number];
    line[index] = (line[index] as number) * (1 + 1e-6) + 1e-6;
    return line;
  });
  for (let step = 0; step < count; step++) {
    const pivot = rows[step] as number[];
    for (const other of rows) {
      if (other === pivot) continue;
      const ratio = (other[step] as number) / (pivot[step] as number);
      for (let index = step; index <= count; index++)
        other[index] = (other[index] as number) - ratio * (pivot[index] as number);
    }
  }
  return rows.map((row, index) => (row[count] as number) / (row[index] as number));
}

/** Keeps the normal equations of each of the three sets of weights while nodes are predicted. */
class LearningPredictor extends Predictor {
  readonly squares: Float64Array[][];
  readonly products: Float64Array[];
  readonly off = [0, 0, 0];
  readonly count = [0, 0, 0];
  private input: number[] = [];
  private set = 0;
  private base = 0;
  private around = 0;

  constructor(
    weights: readonly (readonly number[])[],
    private readonly beside: Padded | undefined,
    before: LearningPredictor | undefined,
  ) {
    super(weights, beside);
    const taps = (weights[0] as readonly number[]).length;
    this.squares =
      before?.squares ??
      [0, 1, 2].map(() => Array.from({ length: taps }, () => new Float64Array(taps)));
    this.products = before?.products ?? [0, 1, 2].map(() => new Float64Array(taps));
    this.off = before?.off ?? this.off;
    this.count = before?.count ?? this.count;
  }

  override guess(values: Int16Array, at: number, stride: number, set: number): number {
    this.set = set;
    const of = (index: number) => values[index] as number;
    const [west, above] = [of(at - 1), of(at - stride)];
    this.base = (west + above) / 2;
    const north2 = at - 2 * stride;
    const near = [at - stride - 1, at - stride + 1, north2, at - 2, north2 + 1, north2 - 1];
    near.push(at - stride + 2, at - stride - 2);
    this.input = [(west - above) / 2, ...near.map((index) => of(index) - this.base)];
    this.around = 1;
    for (const each of this.input) this.around += Math.abs(each) / NEAR;
    if (this.beside) {
      const there = (index: number) => (this.beside as Padded).values[index] as number;
      const left = set === FIRST_COLUMN ? there(at - stride) : there(at - 1);
      const up = set === FIRST_ROW ? left : there(at - stride);
      const mean = (left + up) / 2;
      for (const index of [at, at + 1, at + stride]) this.input.push(there(index) - mean);
      this.input.push((left - up) / 2);
    }
    return super.guess(values, at, stride, set);
  }

  /** Takes in what the node was; a restless neighbourhood counts less. */
  take(value: number, guess: number): void {
    const { set, input } = this;
    const weight = 1 / this.around ** 1.5;
    const square = this.squares[set] as Float64Array[];
    const product = this.products[set] as Float64Array;
    const wanted = (value - this.base) * weight;
    this.off[set] = (this.off[set] as number) + Math.abs(value - guess);
    this.count[set] = (this.count[set] as number) + 1;
    for (let tap = 0; tap < product.length; tap++) {
      const own = input[tap] as number;
      if (own === 0) continue;
      product[tap] = (product[tap] as number) + own * wanted;
      const row = square[tap] as Float64Array;
      for (let other = 0; other < product.length; other++)
        row[other] = (row[other] as number) + weight * own * (input[other] as number);
    }
  }
}

/** What the first node of a tile is predicted to be: as far from its usual value as that of the companion. */
export function firstOf(
  model: LayerModel,
  down: number,
  companion: { readonly model: LayerModel; readonly tile: Padded | undefined } | undefined,
): number {
  const usual = model.firsts[down] as number;
  const node = companion?.tile?.values[companion.tile.start];
  return node === undefined ? usual : usual + node - (companion?.model.firsts[down] as number);
}

/** How a field of a layer is coded by tiles, without the bits: fixes its values and learns on the way. */
export function passed(
  rows: number,
  tileRows: number,
  model: LayerModel,
  companion: { readonly model: LayerModel; readonly tiles: readonly Padded[] } | undefined,
  choose: (index: number, predicted: number) => number,
): { readonly field: WholeField; readonly tiles: Padded[]; readonly next: LayerModel } {
  const columns = 2 * (rows - 1);
  const values = new Int16Array(rows * columns);
  let learner: LearningPredictor | undefined;
  const firsts = Array.from({ length: tileRows }, () => [] as number[]);
  const tiles: Padded[] = [];
  for (let tile = 0; tile < 2 * tileRows * tileRows; tile++) {
    const nodes = tileNodes(tile, rows, tileRows);
    const own = new LearningPredictor(model.weights, companion?.tiles[tile], learner);
    learner = own;
    const down = tileRowOf(nodes.row, rows, tileRows);
    const beside = companion && { model: companion.model, tile: companion.tiles[tile] };
    const first = firstOf(model, down, beside);
    const place = { ...nodes, first, restless: model.restless, contexts: 0 };
    const chooseHere = (row: number, column: number, predicted: number): number => {
      const index = (nodes.row + row) * columns + nodes.column + column;
      const value = choose(index, predicted);
      values[index] = value;
      if (row === 0 && column === 0) firsts[down]?.push(value);
      else own.take(value, predicted);
      return value;
    };
    tiles.push(codeLayer({ bit: (_, bit) => bit }, place, own, chooseHere));
  }
  const kept = learner as LearningPredictor;
  const weights = [0, 1, 2].map((set) =>
    solved(kept.squares[set] as Float64Array[], kept.products[set] as Float64Array).map((value) =>
      Math.max(-MOST_WEIGHT, Math.min(MOST_WEIGHT, Math.round(value * WEIGHT_UNIT))),
    ),
  );
  const typical = (kept.off[FIRST_ROW] as number) / Math.max(1, kept.count[FIRST_ROW] as number);
  return {
    field: { rows, values },
    tiles,
    next: {
      weights,
      firsts: firsts.map((list) => list.sort((a, b) => a - b)[list.length >> 1] ?? 0),
      restless: Math.min(32767, Math.round(typical * 128)),
    },
  };
}

/** A model that has learnt nothing. */
export function plainModel(tileRows: number, companion: boolean): LayerModel {
  const plain = [...PLAIN, ...new Array(companion ? BESIDE : 0).fill(0)].map((value) =>
    Math.round(value * WEIGHT_UNIT),
  );
  return { weights: [plain, plain, plain], firsts: new Array(tileRows).fill(0), restless: 256 };
}
