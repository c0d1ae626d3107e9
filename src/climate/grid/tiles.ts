/** The tiles of a grid, each decoded when a place in it is first asked for and then kept. */

import { DomainError } from '../../errors.js';
import { BitDecoder, base64Bytes } from './bitDecoder.js';
import type { ClimateGridFile, ClimateLayer } from './gridFile.js';
import { codeLayer } from './layerCode.js';
import { type Padded, Predictor } from './predictor.js';
import { codeRefinement, FOUR, REFINEMENT_CONTEXTS } from './refinementCode.js';
import { CONTEXTS } from './surprise.js';
import { tileNodes, tileOf, tileRowOf } from './tiling.js';

/** A layer whose whole numbers can be asked for node by node. */
export interface Layer {
  readonly rows: number;
  readonly transform: ClimateLayer['transform'];
  readonly step: number;
  readonly scale: number;
  readonly refinement: number;
  readonly landError95: number;
  /** Whole number of a node. */
  readonly at: (row: number, column: number) => number;
  /** Whole number of the refinement at a node of the grid twice as fine. */
  readonly refinedBy: (row: number, column: number) => number;
}

/** Layers by name. */
export type Layers = (name: string) => Layer;

/** A layer's nodes in one tile. */
interface Decoded {
  readonly row: number;
  readonly column: number;
  readonly nodes: Padded;
  readonly refinement: Int8Array | undefined;
}

/** Chances of a set of odds: two base64 digits a context. */
function chancesOf(parameter: string, text: string, contexts: number): Uint16Array {
  if (text.length !== 2 * contexts)
    throw new DomainError({
      code: 'malformed',
      parameter,
      received: text.length,
      allowed: `${2 * contexts} base64 digits`,
    });
  // Twelve bits each, in the middle of their step, so that no bit is ever certain.
  const bytes = base64Bytes(parameter, text);
  const chances = new Uint16Array(contexts);
  for (let context = 0, at = 0; context < contexts; context += 2, at += 3) {
    const middle = bytes[at + 1] as number;
    chances[context] = 8 * (((bytes[at] as number) << 4) | (middle >> 4)) + 4;
    if (context + 1 < contexts)
      chances[context + 1] = 8 * (((middle & 15) << 8) | (bytes[at + 2] as number)) + 4;
  }
  return chances;
}

/** What the first node of a tile is predicted to be: as far from its usual value as that of the companion. */
function firstNode(
  { layers }: ClimateGridFile,
  layer: ClimateLayer,
  down: number,
  done: ReadonlyMap<string, Padded>,
): number {
  const usual = layer.firsts[down] as number;
  const beside = done.get(layer.companion);
  const companion = layers.find(({ name }) => name === layer.companion);
  if (!beside || !companion) return usual;
  return usual + (beside.values[beside.start] as number) - (companion.firsts[down] as number);
}

/** All layers of one tile. */
function decodedTile(file: ClimateGridFile, tile: number, odds: Uint16Array): readonly Decoded[] {
  const bytes = base64Bytes(`tiles[${tile}]`, file.tiles[tile] as string);
  // Each tile begins with the shipped odds, so that it decodes the same whichever was asked for before.
  const coder = new BitDecoder(bytes, odds.slice());
  const done = new Map<string, Padded>();
  return file.layers.map((layer) => {
    const { row, column, height, width } = tileNodes(tile, layer.rows, file.tileRows);
    const predictor = new Predictor(layer.weights, done.get(layer.companion));
    const first = firstNode(file, layer, tileRowOf(row, layer.rows, file.tileRows), done);
    const contexts = layer.odds * CONTEXTS;
    const place = { height, width, first, restless: layer.restless, contexts };
    const nodes = codeLayer(coder, place, predictor);
    // The companion of a later layer is decoded by then: the file lists layers in that order.
    done.set(layer.name, nodes);
    const refinement =
      layer.refinement > 0 ? codeRefinement(coder, file.odds.length * CONTEXTS, nodes) : undefined;
    return { row, column, nodes, refinement };
  });
}

/** The layers of a grid file (checked before); a tile that is malformed is found when it is asked for. */
export function tiledLayers(file: ClimateGridFile): Layers {
  const { tileRows } = file;
  let odds: Uint16Array | undefined;
  const allOdds = () => {
    const all = new Uint16Array(file.odds.length * CONTEXTS + REFINEMENT_CONTEXTS);
    file.odds.forEach((text, set) => {
      all.set(chancesOf(`odds[${set}]`, text, CONTEXTS), set * CONTEXTS);
    });
    const last = chancesOf('refinementOdds', file.refinementOdds, REFINEMENT_CONTEXTS);
    all.set(last, file.odds.length * CONTEXTS);
    return all;
  };
  const kept: (readonly Decoded[] | undefined)[] = new Array(file.tiles.length);
  const layers = new Map(
    file.layers.map((layer, index): [string, Layer] => {
      const { name, rows, transform, step, scale, refinement, landError95 } = layer;
      const decoded = (row: number, column: number): Decoded => {
        const tile = tileOf(row, column, rows, tileRows);
        let known = kept[tile];
        if (!known) {
          // Odds are read when the first tile is: importing the grid costs nothing.
          odds ??= allOdds();
          known = kept[tile] = decodedTile(file, tile, odds);
        }
        return known[index] as Decoded;
      };
      const at = (row: number, column: number): number => {
        const corner = decoded(row, column);
        const { nodes } = corner;
        return nodes.values[
          nodes.start + (row - corner.row) * nodes.stride + column - corner.column
        ] as number;
      };
      const refinedBy = (row: number, column: number): number => {
        const corner = decoded(row >> 1, column >> 1);
        const place =
          ((row >> 1) - corner.row) * corner.nodes.width + (column >> 1) - corner.column;
        return corner.refinement?.[FOUR * place + 2 * (row & 1) + (column & 1)] ?? 0;
      };
      const face = { rows, transform, step, scale, refinement, landError95, at, refinedBy };
      return [name, face];
    }),
  );
  return (name) => {
    const layer = layers.get(name);
    if (layer) return layer;
    throw new DomainError({
      code: 'missing',
      parameter: `layers.${name}`,
      received: undefined,
      allowed: 'a layer of the grid',
    });
  };
}
