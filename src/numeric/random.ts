/**
 * Reproducible random numbers from a seed, as a pure generator: the library never reads a clock or a
 * global source. Generator: xoshiro128** 1.1 by D. Blackman and S. Vigna (public domain), seeded
 * through splitmix32.
 */

/** A stream of random numbers; equal seeds give equal streams on every platform. */
export interface RandomStream {
  /** Uniform in [0, 1), 32 random bits. */
  uniform(): number;
  /** Standard normal (mean 0, standard deviation 1). */
  normal(): number;
  /** Whole number from 0 to `below` - 1. */
  integer(below: number): number;
}

/** Opens the stream of a seed (any finite number; its low 32 bits of the whole part count). */
export function randomStream(seed: number): RandomStream {
  let mix = seed | 0;
  const next32 = (): number => {
    mix = (mix + 0x9e3779b9) | 0;
    let z = mix ^ (mix >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return (z ^ (z >>> 15)) >>> 0;
  };
  let a = next32();
  let b = next32();
  let c = next32();
  let d = next32();
  const uniform = (): number => {
    const scrambled = Math.imul(b, 5);
    const result = Math.imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return result / 4294967296;
  };
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    // Box-Muller; 1 - u keeps the logarithm away from zero.
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal, integer: (below) => Math.floor(uniform() * below) };
}
