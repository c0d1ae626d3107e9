/** Integrals of smooth functions by Gauss and Legendre's rule of ten points, exact for polynomials up to degree 19. */

/** Nodes on the positive half of [-1, 1] and their weights (NIST Handbook of Mathematical Functions, table 3.5.2). */
const GAUSS_LEGENDRE_10: readonly (readonly [node: number, weight: number])[] = [
  [0.14887433898163122, 0.29552422471475287],
  [0.4333953941292472, 0.26926671930999635],
  [0.6794095682990244, 0.21908636251598204],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.06667134430868814],
];

/** Integral of `f` from `from` to `to`, which should be smooth in between. */
export function gaussLegendre(f: (x: number) => number, from: number, to: number): number {
  const middle = 0.5 * (from + to);
  const half = 0.5 * (to - from);
  let sum = 0;
  for (const [node, weight] of GAUSS_LEGENDRE_10)
    sum += weight * (f(middle - half * node) + f(middle + half * node));
  return half * sum;
}
