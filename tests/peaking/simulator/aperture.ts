/**
 * Lobes of real apertures by numerical integration over the aperture, independent of the library: scalar far field of a
 * round reflector with edge taper, blockage and surface error. Tabulated once, so that simulations are quick.
 */

/** How an aperture is lit and what stands in its way. */
export interface RealAperture {
  /** Field at the rim below the centre in dB: a parabola on a pedestal. */
  readonly edgeTaperDb: number;
  /** Shadow of feed or subreflector: its radius and its distance from the centre, in radii of the aperture. */
  readonly blockage?: { readonly radius: number; readonly offset: number };
  /** Root mean square phase error from the surface in radians (4 pi times the surface error over the wavelength). */
  readonly phaseErrorRadians?: number;
  /** Seed of the surface. */
  readonly seed?: number;
}

/** Level of a lobe in dB (0 at its peak) at an offset from its peak in half-power beamwidths. */
export type Lobe = (offset: number) => number;

/** Cells of the aperture along a radius. */
const CELLS = 40;
/** The table reaches this many half-power beamwidths to each side. */
const REACH = 3;
const PER_WIDTH = 200;

/** A small generator of its own: numbers from 0 to 1 (a Weyl sequence, mixed). */
export function generator(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return ((z ^ (z >>> 16)) >>> 0) / 4294967296;
  };
}

/** Normal numbers from it (Box and Muller). */
export function normals(next: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** The aperture's field, gathered along one axis: its far field in that cut is a Fourier sum. */
function projection({ edgeTaperDb, blockage, phaseErrorRadians = 0, seed = 1 }: RealAperture) {
  const rim = 10 ** (-edgeTaperDb / 20);
  const next = generator(seed);
  const normal = normals(next);
  // Bumps a fifth of the radius wide; the phase is then scaled to the wanted mean square.
  const bumps = Array.from({ length: 60 }, () => ({
    x: 2 * next() - 1,
    y: 2 * next() - 1,
    height: normal(),
  }));
  const phaseAt = (x: number, y: number) =>
    bumps.reduce(
      (sum, bump) =>
        sum + bump.height * Math.exp(-((x - bump.x) ** 2 + (y - bump.y) ** 2) / (2 * 0.2 ** 2)),
      0,
    );
  const cells: { x: number; field: number; phase: number }[] = [];
  for (let i = -CELLS; i < CELLS; i++)
    for (let j = -CELLS; j < CELLS; j++) {
      const x = (i + 0.5) / CELLS;
      const y = (j + 0.5) / CELLS;
      const square = x * x + y * y;
      if (square > 1) continue;
      if (blockage && (x - blockage.offset) ** 2 + y * y < blockage.radius ** 2) continue;
      cells.push({
        x,
        field: rim + (1 - rim) * (1 - square),
        phase: phaseErrorRadians > 0 ? phaseAt(x, y) : 0,
      });
    }
  const total = cells.reduce((sum, { field }) => sum + field, 0);
  const mean = cells.reduce((sum, { field, phase }) => sum + field * phase, 0) / total;
  const square =
    cells.reduce((sum, { field, phase }) => sum + field * (phase - mean) ** 2, 0) / total;
  const scale = square > 0 ? phaseErrorRadians / Math.sqrt(square) : 0;
  const real = new Float64Array(2 * CELLS);
  const imaginary = new Float64Array(2 * CELLS);
  for (const { x, field, phase } of cells) {
    const column = Math.floor((x + 1) * CELLS);
    const angle = scale * (phase - mean);
    real[column] = (real[column] as number) + field * Math.cos(angle);
    imaginary[column] = (imaginary[column] as number) + field * Math.sin(angle);
  }
  return { real, imaginary };
}

/** Tabulates the lobe: offsets in half-power beamwidths from the true peak. */
function realLobe(aperture: RealAperture): Lobe {
  const { real, imaginary } = projection(aperture);
  const power = (u: number) => {
    let re = 0;
    let im = 0;
    for (let k = 0; k < real.length; k++) {
      const angle = u * ((k + 0.5) / CELLS - 1);
      const c = Math.cos(angle);
      const s = Math.sin(angle);
      re += (real[k] as number) * c - (imaginary[k] as number) * s;
      im += (real[k] as number) * s + (imaginary[k] as number) * c;
    }
    return re * re + im * im;
  };
  let peak = 0;
  for (let step = 0.2; step > 1e-5; step /= 2)
    while (power(peak + step) > power(peak) || power(peak - step) > power(peak))
      peak += power(peak + step) > power(peak) ? step : -step;
  const top = power(peak);
  const half = (sign: number) => {
    let inside = 0;
    let outside = 3;
    for (let k = 0; k < 40; k++) {
      const middle = (inside + outside) / 2;
      if (power(peak + sign * middle) > top / 2) inside = middle;
      else outside = middle;
    }
    return inside;
  };
  const width = half(1) + half(-1);
  const table = Float64Array.from(
    { length: 2 * REACH * PER_WIDTH + 1 },
    (_, i) => 10 * Math.log10(Math.max(1e-6, power(peak + width * (i / PER_WIDTH - REACH)) / top)),
  );
  return (offset) => {
    const at = (Math.min(REACH, Math.max(-REACH, offset)) + REACH) * PER_WIDTH;
    const index = Math.min(table.length - 2, Math.floor(at));
    const share = at - index;
    return (1 - share) * (table[index] as number) + share * (table[index + 1] as number);
  };
}

/** The lobes of the simulations by name. */
export const LOBES = {
  'rim 10 dB down': { edgeTaperDb: 10 },
  'rim 6 dB down': { edgeTaperDb: 6 },
  'rim 15 dB down': { edgeTaperDb: 15 },
  'feed in front': { edgeTaperDb: 10, blockage: { radius: 0.2, offset: 0 } },
  'arm at one side': { edgeTaperDb: 10, blockage: { radius: 0.2, offset: 0.7 } },
  'uneven surface': { edgeTaperDb: 10, phaseErrorRadians: 0.25, seed: 3 },
  'another surface': { edgeTaperDb: 10, phaseErrorRadians: 0.25, seed: 8 },
} as const satisfies Record<string, RealAperture>;

export type LobeName = keyof typeof LOBES;

const kept = new Map<LobeName, Lobe>();

/** The lobe of a name, tabulated at its first use. */
export function lobeOf(name: LobeName): Lobe {
  const lobe = kept.get(name) ?? realLobe(LOBES[name]);
  kept.set(name, lobe);
  return lobe;
}
