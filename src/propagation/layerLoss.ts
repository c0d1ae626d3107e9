/** What water or ice on a reflector, a feed cover or a radome takes, with its doubt. */

import { SPEED_OF_LIGHT_M_PER_S } from '../constants.js';
import { inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { waterPermittivity } from './p840-9/waterPermittivity.js';

/** A layer on something that the wave meets. */
export interface SurfaceLayer {
  /** Frequency in GHz, 1 to 60. */
  readonly frequencyGHz: number;
  /** `cover`: a feed's window or a radome, passed once. `reflector`: metal, passed to and fro. */
  readonly on: 'cover' | 'reflector';
  /** What lies there. */
  readonly layer: 'water' | 'dry-ice' | 'wet-snow';
  /** Thickness in millimetres, 0 to 100; water as a film. */
  readonly thicknessMm: number;
  /** Temperature of the water in kelvin, 273.15 to 313.15; default 283.15. */
  readonly temperatureK?: number;
}

const SURFACE_LAYER_KEYS = {
  frequencyGHz: true,
  on: true,
  layer: true,
  thicknessMm: true,
  temperatureK: true,
} satisfies Keys<SurfaceLayer>;

/** Loss by a layer; read `kind` first. */
export type LayerLoss =
  | {
      readonly kind: 'loss';
      /** Loss of an even layer in dB, 0 or more. */
      readonly lossDb: number;
      /** Least loss that has to be expected in dB: a new, water-repellent surface carries drops and no film. */
      readonly leastDb: number;
      /** Largest loss that has to be expected in dB: twice the even layer. */
      readonly mostDb: number;
    }
  /** Wet snow: water and ice in no known order. Nothing can be computed: take it off. */
  | { readonly kind: 'not-known' };

type Complex = readonly [real: number, imaginary: number];

const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const over = ([a, b]: Complex, [c, d]: Complex): Complex => {
  const square = c * c + d * d;
  return [(a * c + b * d) / square, (b * c - a * d) / square];
};

/** Square root with a positive real part of a + jb, b at most 0. */
function root([real, imaginary]: Complex): Complex {
  const size = Math.hypot(real, imaginary);
  return [Math.sqrt((size + real) / 2), -Math.sqrt(Math.max(0, (size - real) / 2))];
}

/** Permittivity of dry ice: nearly without loss (handbook value, from memory). */
const DRY_ICE: Complex = [3.17, -0.003];

/** How much of the layer's loss may be missing or come on top (measured radomes lie from nearly nothing, waxed, to about twice). */
const MOST_RATIO = 2;

/**
 * Loss of a wave that passes, or is reflected under, an even layer of water or dry ice.
 *
 * Plane wave at right angles: through a layer in air 1 / |cos b + j (n + 1/n) sin b / 2|^2, reflected by metal under it
 * |(j tan b / n - 1) / (j tan b / n + 1)|^2, b = 2 pi n d / wavelength, n the square root of the permittivity. A film on the metal lies where the field is
 * weak and takes little; the same film on the cover of the feed takes decibels.
 *
 * @throws {@link DomainError} naming the field.
 * Source: reflection and transmission of a slab (any textbook of electromagnetics); permittivity of water by ITU-R P.840-9; of ice from memory. The doubt
 * from Kurri and Huuskonen (J. Atmos. Oceanic Technol. 25, 2008, abstract): dirty radome at 15 mm/h 3 dB there and back, waxed much less.
 * Accuracy: as `leastDb` to `mostDb` say; nobody knows the thickness of a film better than to a factor of two.
 * @example
 * ```ts
 * import { layerLoss } from 'slantpath/propagation';
 * const film = { frequencyGHz: 12, layer: 'water', thicknessMm: 0.15 } as const;
 * const cover = layerLoss({ ...film, on: 'cover' });
 * cover.kind === 'loss' ? cover.lossDb.toFixed(1) : ''; // => '5.7'
 * ```
 */
export function layerLoss(surface: SurfaceLayer): LayerLoss {
  const given = knownOnly('surface', surface, SURFACE_LAYER_KEYS);
  const frequencyGHz = inRange('frequencyGHz', given.frequencyGHz, 1, 60, 'is it in MHz?');
  const on = oneOf('on', given.on, ['cover', 'reflector']);
  const layer = oneOf('layer', given.layer, ['water', 'dry-ice', 'wet-snow']);
  const thicknessMm = inRange('thicknessMm', given.thicknessMm, 0, 100, 'is it in metres?');
  const temperatureK = inRange('temperatureK', given.temperatureK ?? 283.15, 273.15, 313.15);
  if (layer === 'wet-snow') return { kind: 'not-known' };
  const water = waterPermittivity(frequencyGHz, temperatureK);
  const n = root(layer === 'water' ? [water.real, -water.imaginary] : DRY_ICE);
  const turns = (2 * Math.PI * frequencyGHz * 1e9 * thicknessMm * 1e-3) / SPEED_OF_LIGHT_M_PER_S;
  // e^(-j b) and e^(j b), b complex: the layer damps what goes through it.
  const b = times(n, [turns, 0]);
  const wave = (sign: 1 | -1): Complex => {
    const size = Math.exp(-sign * b[1]);
    return [size * Math.cos(b[0]), sign * size * Math.sin(b[0])];
  };
  const [forth, back] = [wave(1), wave(-1)];
  const cosine: Complex = [(forth[0] + back[0]) / 2, (forth[1] + back[1]) / 2];
  // j sin b
  const sine: Complex = [(forth[0] - back[0]) / 2, (forth[1] - back[1]) / 2];
  const inverse = over([1, 0], n);
  let ratio: number;
  if (on === 'cover') {
    const both = times([(n[0] + inverse[0]) / 2, (n[1] + inverse[1]) / 2], sine);
    ratio = 1 / Math.hypot(cosine[0] + both[0], cosine[1] + both[1]) ** 2;
  } else {
    const short = over(times(sine, inverse), cosine);
    const reflected = over([short[0] - 1, short[1]], [short[0] + 1, short[1]]);
    ratio = Math.hypot(...reflected) ** 2;
  }
  const lossDb = Math.max(0, -10 * Math.log10(Math.max(ratio, 1e-20))) + 0;
  return { kind: 'loss', lossDb, leastDb: 0, mostDb: MOST_RATIO * lossDb };
}

const FILM_THICKNESS_RAIN_KEYS = {
  rainRateMmPerH: true,
  radiusM: true,
  temperatureK: true,
} satisfies Keys<Parameters<typeof filmThicknessMm>[0]>;

/**
 * Thickness in millimetres of the film that rain keeps on a round cover, (3 m r R / (2 d g))^(1/3).
 *
 * @param rain  Rain rate in mm/h, 0 to 300; radius of the cover in metres, 0.01 to 20; temperature of the water in kelvin, 273.15 to 313.15,
 *   default 283.15.
 * @throws {@link DomainError} naming the field.
 * Source: laminar flow down a hemisphere, as used since D. Gibble (1964) and B. C. Blevis (IEEE Trans. AP-13, 1965), from memory; viscosity of water
 * 1.79, 1.31, 1.00 and 0.65 mPa s at 0, 10, 20 and 40 degrees Celsius (handbook, from memory). Accuracy: a factor of two; drops run off sooner on a waxed surface.
 * @example
 * ```ts
 * import { filmThicknessMm } from 'slantpath/propagation';
 * filmThicknessMm({ rainRateMmPerH: 15.1, radiusM: 3.35, temperatureK: 293.15 }).toFixed(2); // => '0.13'
 * ```
 */
export function filmThicknessMm(rain: {
  readonly rainRateMmPerH: number;
  readonly radiusM: number;
  readonly temperatureK?: number;
}): number {
  const given = knownOnly('rain', rain, FILM_THICKNESS_RAIN_KEYS);
  const rateMPerS = inRange('rainRateMmPerH', given.rainRateMmPerH, 0, 300) / 3.6e6;
  const radiusM = inRange('radiusM', given.radiusM, 0.01, 20);
  const celsius = inRange('temperatureK', given.temperatureK ?? 283.15, 273.15, 313.15) - 273.15;
  return 1000 * Math.cbrt((3 * viscosityPaS(celsius) * radiusM * rateMPerS) / (2 * 1000 * 9.80665));
}

/** Viscosity of water by straight lines between handbook values. */
function viscosityPaS(celsius: number): number {
  const table = [
    [0, 1.79e-3],
    [10, 1.31e-3],
    [20, 1.0e-3],
    [40, 0.65e-3],
  ] as const;
  for (const [index, [to, high]] of table.entries()) {
    const [from, low] = table[index - 1] ?? table[0];
    if (celsius <= to)
      return to === from ? high : low + ((high - low) * (celsius - from)) / (to - from);
  }
  return table[3][1];
}
