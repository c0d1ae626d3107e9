/** The form in which a climate grid is shipped or built by a user, and its decoding. */

import { DomainError, inRange, oneOf } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { BitDecoder, base64Bytes, Odds } from './bitDecoder.js';
import type { CodedField } from './codedField.js';
import { codeField } from './fieldCode.js';
import { CONTEXTS } from './surprise.js';

/** How a layer's whole numbers become values: q steps are q s, ±scale (exp |q s| - 1) or exp(q s), s the step. */
export type LayerTransform = 'linear' | 'logarithm-of-one-plus' | 'logarithm';

/** One quantity on one grid of the whole Earth. */
export interface ClimateLayer {
  /** Name of the quantity, with the percentage behind it where there is one: `rainRate001`, `cloudLiquid5`. */
  readonly name: string;
  /** Rows from pole to pole, 2 to 1441; columns are twice the rows less one, without the repeated meridian. */
  readonly rows: number;
  /** How whole numbers become values. */
  readonly transform: LayerTransform;
  /** Step between whole numbers in the transformed quantity, above 0. */
  readonly step: number;
  /** Scale of `logarithm-of-one-plus`, in the unit of the quantity; 1 for the others. */
  readonly scale: number;
  /** Name of the layer that must be decoded before this one, of the same size; empty for none. */
  readonly companion: string;
  /** Error against the full-resolution maps that 95 % of places on land do not exceed; in the unit of the quantity. */
  readonly landError95: number;
  /** The coded numbers, base64. */
  readonly data: string;
}

const CLIMATE_LAYER_KEYS = {
  name: true,
  rows: true,
  transform: true,
  step: true,
  scale: true,
  companion: true,
  landError95: true,
  data: true,
} satisfies Keys<ClimateLayer>;

/** A climate grid as shipped; plain data, so it can be kept as JSON. */
export interface ClimateGridFile {
  /** Form and its version. */
  readonly format: 'slantpath-climate-1';
  /** Recommendations and maps from which it is derived. */
  readonly source: string;
  /** The layers. */
  readonly layers: readonly ClimateLayer[];
}

const CLIMATE_GRID_FILE_KEYS = {
  format: true,
  source: true,
  layers: true,
} satisfies Keys<ClimateGridFile>;

/** A decoded layer. */
export interface Layer extends CodedField {
  readonly transform: LayerTransform;
  readonly step: number;
  readonly scale: number;
  readonly landError95: number;
}

/** Layers by name, each decoded when first asked for and then kept. */
export type Layers = (name: string) => Layer;

/** Value of a node from its whole number. */
export function nodeValue(layer: Layer, index: number): number {
  const steps = (layer.values[index] as number) * layer.step;
  if (layer.transform === 'linear') return steps;
  if (layer.transform === 'logarithm') return Math.exp(steps);
  return Math.sign(steps) * layer.scale * Math.expm1(Math.abs(steps));
}

function checkedLayer(layer: ClimateLayer, index: number): ClimateLayer {
  const at = `layers[${index}]`;
  known(at, layer, CLIMATE_LAYER_KEYS);
  const whole = Math.trunc(inRange(`${at}.rows`, layer.rows, 2, 1441));
  if (whole !== layer.rows || typeof layer.name !== 'string' || typeof layer.data !== 'string')
    throw new DomainError({
      code: 'malformed',
      parameter: at,
      received: layer,
      allowed: 'a layer with a name, a whole number of rows and base64 data',
    });
  oneOf(`${at}.transform`, layer.transform, ['linear', 'logarithm-of-one-plus', 'logarithm']);
  inRange(`${at}.step`, layer.step, 1e-9, 1e6);
  inRange(`${at}.scale`, layer.scale, 1e-9, 1e6);
  inRange(`${at}.landError95`, layer.landError95, 0, 1e6);
  return layer;
}

/**
 * The layers of a grid file, each decoded when first asked for.
 *
 * @throws DomainError naming `format`, `layers` or the layer's field.
 */
export function decodedLayers(file: ClimateGridFile): Layers {
  const { format, layers } = known('grid', file, CLIMATE_GRID_FILE_KEYS);
  oneOf('format', format, ['slantpath-climate-1']);
  if (!Array.isArray(layers))
    throw new DomainError({
      code: 'malformed',
      parameter: 'layers',
      received: layers,
      allowed: 'a list of layers',
    });
  const shipped = new Map(layers.map((layer, index) => [layer?.name, checkedLayer(layer, index)]));
  const decoded = new Map<string, Layer>();
  const underway = new Set<string>();
  const layerOf = (name: string): Layer => {
    const known = decoded.get(name);
    if (known) return known;
    const layer = shipped.get(name);
    if (!layer || underway.has(name))
      throw new DomainError({
        code: layer ? 'inconsistent' : 'missing',
        parameter: `layers.${name}`,
        received: layer ? name : undefined,
        allowed: layer ? 'a layer that does not stand on itself' : 'a layer of the grid',
      });
    underway.add(name);
    const companion = layer.companion === '' ? undefined : layerOf(layer.companion);
    if (companion && companion.rows !== layer.rows)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `layers.${name}.companion`,
        received: companion.rows,
        allowed: `of ${layer.rows} rows like its layer`,
      });
    const bits = new BitDecoder(base64Bytes(`layers.${name}.data`, layer.data), new Odds(CONTEXTS));
    const size = { rows: layer.rows, columns: 2 * (layer.rows - 1) };
    const { transform, step, scale, landError95 } = layer;
    const result = { ...codeField(bits, size, companion), transform, step, scale, landError95 };
    decoded.set(name, result);
    return result;
  };
  return layerOf;
}
