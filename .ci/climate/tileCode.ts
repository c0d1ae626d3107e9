/** The bits of all tiles of a grid whose whole numbers are known. */

import { type BitCoder, BitDecoder } from '../../src/climate/grid/bitDecoder.js';
import { codeLayer } from '../../src/climate/grid/layerCode.js';
import { type Padded, Predictor } from '../../src/climate/grid/predictor.js';
import { codeRefinement, REFINEMENT_CONTEXTS } from '../../src/climate/grid/refinementCode.js';
import { CONTEXTS } from '../../src/climate/grid/surprise.js';
import { tileNodes, tileRowOf } from '../../src/climate/grid/tiling.js';
import { BitCounter, BitEncoder } from './bitEncoder.js';
import type { BuiltLayer } from './builtLayer.js';
import { firstOf } from './training.js';

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
/** How many bits a chance counts as before any is seen. */
const DOUBT = 2;

/** Sets of odds: the rain rate has its own, the other layers without a companion theirs, those with one theirs. */
function setOf({ plan }: BuiltLayer): number {
  if (plan.refinement) return 0;
  return plan.companion === '' ? 1 : 2;
}
const SETS = 3;

/** Codes a tile's layers one after another; `after` is told when each is done. */
function codeTile(
  coder: BitCoder,
  layers: readonly BuiltLayer[],
  tile: number,
  tileRows: number,
  after: (layer: number) => void,
): void {
  layers.forEach((built, index) => {
    const { plan, model } = built;
    const nodes = tileNodes(tile, plan.rows, tileRows);
    const beside = layers.find(({ plan: { name } }) => name === plan.companion);
    const predictor = new Predictor(model.weights, beside?.tiles[tile]);
    const down = tileRowOf(nodes.row, plan.rows, tileRows);
    const first = firstOf(model, down, beside && { model: beside.model, tile: beside.tiles[tile] });
    const contexts = setOf(built) * CONTEXTS;
    const own = built.tiles[tile] as Padded;
    const place = { ...nodes, first, restless: model.restless, contexts };
    codeLayer(
      coder,
      place,
      predictor,
      (row, column) => own.values[own.start + row * own.stride + column] as number,
    );
    const finer = built.departures;
    if (finer) {
      const columns = 4 * (plan.rows - 1);
      codeRefinement(coder, SETS * CONTEXTS, own, (row, column, node) => {
        const line = 2 * (nodes.row + row) + (node >> 1);
        return finer[line * columns + 2 * (nodes.column + column) + (node & 1)] ?? 0;
      });
    }
    after(index);
  });
}

/** Chances as text, two base64 digits each. */
function text(chances: readonly number[]): string {
  return chances
    .map((chance) => {
      const digits = Math.max(2, Math.min(4093, Math.floor(chance * 4096)));
      return `${DIGITS[digits >> 6]}${DIGITS[digits & 63]}`;
    })
    .join('');
}

function chancesOf(digits: string): number[] {
  return Array.from({ length: digits.length / 2 }, (_, at) => {
    const high = DIGITS.indexOf(digits[2 * at] as string);
    return (64 * high + DIGITS.indexOf(digits[2 * at + 1] as string)) * 8 + 4;
  });
}

/** All tiles as text, what their code starts from, and how many bytes each layer takes. */
export function codedTiles(layers: readonly BuiltLayer[], tileRows: number) {
  const count = 2 * tileRows * tileRows;
  const counter = new BitCounter(SETS * CONTEXTS + REFINEMENT_CONTEXTS);
  for (let tile = 0; tile < count; tile++) codeTile(counter, layers, tile, tileRows, () => {});
  const chances = Array.from(
    counter.ones,
    (ones, at) => (ones + DOUBT / 2) / ((counter.all[at] as number) + DOUBT),
  );
  const odds = Array.from({ length: SETS }, (_, set) =>
    text(chances.slice(set * CONTEXTS, (set + 1) * CONTEXTS)),
  );
  const refinementOdds = text(chances.slice(SETS * CONTEXTS));
  const start = Uint16Array.from(chancesOf(odds.join('') + refinementOdds));
  const bytes: number[] = layers.map(() => 0);
  const tiles: string[] = [];
  for (let tile = 0; tile < count; tile++) {
    const encoder = new BitEncoder(start.slice());
    let before = 0;
    codeTile(encoder, layers, tile, tileRows, (layer) => {
      const now = encoder.length();
      bytes[layer] = (bytes[layer] as number) + now - before;
      before = now;
    });
    const code = encoder.finish();
    check(code, start, layers, tile, tileRows);
    tiles.push(Buffer.from(code).toString('base64').replace(/=+$/, ''));
  }
  return { odds, refinementOdds, tiles, bytes, sets: layers.map(setOf) };
}

/** Reads a tile back. */
function check(
  bytes: Uint8Array,
  start: Uint16Array,
  layers: readonly BuiltLayer[],
  tile: number,
  tileRows: number,
): void {
  const decoder = new BitDecoder(bytes, start.slice());
  const faithful: BitCoder = {
    bit: (context, bit) => {
      if (decoder.bit(context) !== bit)
        throw new Error('the decoder does not give back what was encoded');
      return bit;
    },
  };
  codeTile(faithful, layers, tile, tileRows, () => {});
}
