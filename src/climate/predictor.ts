/**
 * Predicts a node from its neighbours: ten before it in its own field and five around it in a companion field.
 *
 * The weights start from west plus north less north-west and follow the field by least mean squares, so they need not
 * be shipped: encoder and decoder learn the same.
 */

import type { CodedField } from './codedField.js';

const NEAR = 10;
const BESIDE = 5;
const LEARNING = 0.005;

/** Weights and the neighbours of the node at hand, as departures from a base. */
export class Predictor {
  private readonly weight: Float64Array;
  private readonly input: Float64Array;
  private readonly taps: number;
  private power = 1;

  constructor(private readonly companion: CodedField | undefined) {
    this.taps = companion ? NEAR + BESIDE : NEAR;
    this.weight = new Float64Array(this.taps);
    this.weight.set([0.9, 0.9, -0.8]);
    this.input = new Float64Array(this.taps);
  }

  /** Takes the neighbours in three rows (two margins wide) at `at`, less the base. */
  takeNear(
    row: Float64Array,
    above: Float64Array,
    above2: Float64Array,
    at: number,
    base: number,
  ): void {
    const x = this.input;
    x[0] = (row[at - 1] as number) - base;
    x[1] = (above[at] as number) - base;
    x[2] = (above[at - 1] as number) - base;
    x[3] = (above[at + 1] as number) - base;
    x[4] = (above2[at] as number) - base;
    x[5] = (row[at - 2] as number) - base;
    x[6] = (above2[at + 1] as number) - base;
    x[7] = (above2[at - 1] as number) - base;
    x[8] = (above[at + 2] as number) - base;
    x[9] = (above[at - 2] as number) - base;
  }

  /** Takes the node itself and four around it in the companion, less the mean of the two that come before it. */
  takeBeside(line: number, column: number): void {
    if (!this.companion) return;
    const { rows, columns, values } = this.companion;
    const x = this.input;
    const start = line * columns;
    const here = start + column;
    const left = values[start + (column === 0 ? columns : column) - 1] as number;
    const up = values[here - columns] as number;
    const base = (left + up) / 2;
    x[NEAR] = (values[here] as number) - base;
    x[NEAR + 1] = (values[column === columns - 1 ? start : here + 1] as number) - base;
    x[NEAR + 2] = (values[line === rows - 1 ? here : here + columns] as number) - base;
    x[NEAR + 3] = left - base;
    x[NEAR + 4] = up - base;
  }

  /** Prediction on top of the base. */
  guess(base: number): number {
    const { weight, input, taps } = this;
    let guess = base;
    let power = 1;
    for (let tap = 0; tap < taps; tap++) {
      const value = input[tap] as number;
      guess += (weight[tap] as number) * value;
      power += value * value;
    }
    this.power = power;
    return guess;
  }

  /** Moves the weights by what the guess was off. */
  learn(error: number): void {
    const { weight, input, taps } = this;
    const step = (LEARNING * error) / (this.power / taps + 4);
    for (let tap = 0; tap < taps; tap++)
      weight[tap] = (weight[tap] as number) + step * (input[tap] as number);
  }
}
