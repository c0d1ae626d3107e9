/**
 * A second kind of lobe, by other physics than `aperture.ts`: an elliptical aperture lit by a cos^n feed with space
 * attenuation, struts across it, and a wavefront with Zernike errors (defocus, astigmatism, coma, trefoil, spherical). The
 * fit's priors were not chosen on these. Integrated on polar rings; a lobe is a plane of levels, a cut one line through it.
 */

import type { Lobe } from './aperture.js';

/** How an aperture is lit and how its wavefront errs; errors in radians (root mean square of the Zernike term). */
export interface Wavefront {
  /** Exponent of the feed's power pattern cos^n; with the angle to the rim it gives the taper. */
  readonly feedExponent: number;
  readonly rimAngleDeg: number;
  /** Longer over shorter axis. */
  readonly axisRatio?: number;
  readonly defocus?: number;
  /** Along the first axis, and at 45 degrees. */
  readonly astigmatism?: readonly [number, number];
  /** Towards the first and the second axis. */
  readonly coma?: readonly [number, number];
  readonly trefoil?: readonly [number, number];
  readonly spherical?: number;
  /** Width of four struts in radii of the aperture. */
  readonly strutWidth?: number;
  /** Radius of the shadow in the middle. */
  readonly shadow?: number;
}

/** Power of the far field in dB (0 at its peak), over two directions in mean half-power beamwidths from the peak. */
export type LobePlane = (first: number, second: number) => number;

const RINGS = 20;
const SPOKES = 60;

/** Zernike terms by R. J. Noll, J. Opt. Soc. Am. 66, 207 (1976), each with root mean square 1 over the round aperture. */
function phaseAt(rho: number, theta: number, w: Wavefront): number {
  const [a0 = 0, a1 = 0] = w.astigmatism ?? [];
  const [c0 = 0, c1 = 0] = w.coma ?? [];
  const [t0 = 0, t1 = 0] = w.trefoil ?? [];
  const square = rho * rho;
  return (
    (w.defocus ?? 0) * Math.sqrt(3) * (2 * square - 1) +
    Math.sqrt(6) * square * (a0 * Math.cos(2 * theta) + a1 * Math.sin(2 * theta)) +
    Math.sqrt(8) * (3 * square - 2) * rho * (c0 * Math.cos(theta) + c1 * Math.sin(theta)) +
    Math.sqrt(8) * square * rho * (t0 * Math.cos(3 * theta) + t1 * Math.sin(3 * theta)) +
    (w.spherical ?? 0) * Math.sqrt(5) * (6 * square * square - 6 * square + 1)
  );
}

/** Power over the plane in radians of phase at the rim, not yet scaled. */
function powerOf(w: Wavefront): (u: number, v: number) => number {
  const stretch = Math.sqrt(w.axisRatio ?? 1);
  const focal = 1 / (2 * Math.tan((w.rimAngleDeg * Math.PI) / 360));
  const points: { x: number; y: number; re: number; im: number }[] = [];
  for (let ring = 0; ring < RINGS; ring++)
    for (let spoke = 0; spoke < SPOKES; spoke++) {
      const rho = (ring + 0.5) / RINGS;
      const theta = (2 * Math.PI * (spoke + 0.5 * (ring % 2))) / SPOKES;
      if (rho < (w.shadow ?? 0)) continue;
      const across = Math.min(Math.abs(Math.sin(2 * theta)) / 2, 1) * rho;
      if (w.strutWidth !== undefined && rho > 0.1 && across < w.strutWidth / 2) continue;
      const angle = 2 * Math.atan(rho / (2 * focal));
      const field = Math.cos(angle) ** (w.feedExponent / 2) * Math.cos(angle / 2) ** 2 * rho;
      const phase = phaseAt(rho, theta, w);
      points.push({
        x: stretch * rho * Math.cos(theta),
        y: (rho * Math.sin(theta)) / stretch,
        re: field * Math.cos(phase),
        im: field * Math.sin(phase),
      });
    }
  return (u, v) => {
    let re = 0;
    let im = 0;
    for (const point of points) {
      const c = Math.cos(u * point.x + v * point.y);
      const s = Math.sin(u * point.x + v * point.y);
      re += point.re * c - point.im * s;
      im += point.re * s + point.im * c;
    }
    return re * re + im * im;
  };
}

/** The highest place of a function of two directions, from the origin by shrinking steps. */
function climb(power: (u: number, v: number) => number): readonly [number, number] {
  let at: readonly [number, number] = [0, 0];
  for (let step = 0.4; step > 1e-6; step /= 2) {
    for (let moved = true; moved; ) {
      moved = false;
      for (const [du, dv] of [
        [step, 0],
        [-step, 0],
        [0, step],
        [0, -step],
      ] as const)
        if (power(at[0] + du, at[1] + dv) > power(at[0], at[1])) {
          at = [at[0] + du, at[1] + dv];
          moved = true;
        }
    }
  }
  return at;
}

/** Distance from a place to half power along one direction. */
function halfPower(power: (d: number) => number): number {
  const top = power(0);
  let [inside, outside] = [0, 4];
  for (let k = 0; k < 40; k++) {
    const middle = (inside + outside) / 2;
    if (power(middle) > top / 2) inside = middle;
    else outside = middle;
  }
  return inside;
}

/** The lobe along a line through the plane: offsets in half-power beamwidths of that cut from the cut's own peak. */
export function cutOf(w: Wavefront, directionDeg: number, besideRadians = 0): Lobe {
  const power = powerOf(w);
  const [u0, v0] = climb(power);
  const [c, s] = [
    Math.cos((directionDeg * Math.PI) / 180),
    Math.sin((directionDeg * Math.PI) / 180),
  ];
  const along = (d: number) =>
    power(u0 + c * d - s * besideRadians, v0 + s * d + c * besideRadians);
  const [peak] = climb((d) => along(d));
  const width = halfPower((d) => along(peak + d)) + halfPower((d) => along(peak - d));
  const reach = 2.5;
  const perWidth = 80;
  const top = along(peak);
  const table = Float64Array.from(
    { length: 2 * reach * perWidth + 1 },
    (_, i) => 10 * Math.log10(Math.max(1e-6, along(peak + width * (i / perWidth - reach)) / top)),
  );
  return (offset) => {
    const at = (Math.min(reach, Math.max(-reach, offset)) + reach) * perWidth;
    const index = Math.max(1, Math.min(table.length - 3, Math.floor(at)));
    const t = at - index;
    const [a, b, d, e] = [-1, 0, 1, 2].map((k) => table[index + k] as number) as [
      number,
      number,
      number,
      number,
    ];
    // Cubic through four neighbours.
    return b + 0.5 * t * (d - a + t * (2 * a - 5 * b + 4 * d - e + t * (3 * (b - d) + e - a)));
  };
}

/** The lobe as a plane, offsets in mean half-power beamwidths from its peak; within 1.6 of it. */
export function planeOf(w: Wavefront): LobePlane {
  const power = powerOf(w);
  const [u0, v0] = climb(power);
  const width =
    [0, 45, 90, 135, 180, 225, 270, 315].reduce((sum, deg) => {
      const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
      return sum + halfPower((d) => power(u0 + c * d, v0 + s * d));
    }, 0) / 4;
  const top = power(u0, v0);
  const reach = 1.6;
  const per = 20;
  const side = 2 * reach * per + 1;
  const table = new Float64Array(side * side);
  for (let i = 0; i < side; i++)
    for (let j = 0; j < side; j++)
      table[i * side + j] =
        10 *
        Math.log10(
          Math.max(
            1e-5,
            power(u0 + width * (i / per - reach), v0 + width * (j / per - reach)) / top,
          ),
        );
  const cubic = (a: number, b: number, d: number, e: number, t: number) =>
    b + 0.5 * t * (d - a + t * (2 * a - 5 * b + 4 * d - e + t * (3 * (b - d) + e - a)));
  return (first, second) => {
    const [x, y] = [first, second].map(
      (o) => (Math.min(reach, Math.max(-reach, o)) + reach) * per,
    ) as [number, number];
    const i = Math.max(1, Math.min(side - 3, Math.floor(x)));
    const j = Math.max(1, Math.min(side - 3, Math.floor(y)));
    const row = (k: number) => {
      const at = (i + k) * side + j;
      const [a, b, d, e] = [-1, 0, 1, 2].map((m) => table[at + m] as number) as [
        number,
        number,
        number,
        number,
      ];
      return cubic(a, b, d, e, y - j);
    };
    return cubic(row(-1), row(0), row(1), row(2), x - i);
  };
}

/** Named wavefronts: about a ripple of a twentieth of the wavelength each, as fed and bent reflectors have. */
export const WAVEFRONTS = {
  'clean, cos feed': { feedExponent: 2.4, rimAngleDeg: 70 },
  'strongly tapered': { feedExponent: 8, rimAngleDeg: 60 },
  'weakly tapered': { feedExponent: 1, rimAngleDeg: 50 },
  coma: { feedExponent: 2.4, rimAngleDeg: 70, coma: [0.3, 0.1] },
  'strong coma': { feedExponent: 2.4, rimAngleDeg: 70, coma: [0.5, 0] },
  'coma and trefoil': { feedExponent: 3, rimAngleDeg: 70, coma: [-0.25, 0.15], trefoil: [0.25, 0] },
  'elliptical, bent': {
    feedExponent: 2.4,
    rimAngleDeg: 65,
    axisRatio: 1.35,
    astigmatism: [0.35, 0.2],
  },
  'out of focus': { feedExponent: 2.4, rimAngleDeg: 70, defocus: 0.5 },
  spherical: { feedExponent: 2.4, rimAngleDeg: 70, spherical: 0.35, defocus: -0.2 },
  struts: { feedExponent: 2.4, rimAngleDeg: 75, strutWidth: 0.12, shadow: 0.2 },
  'everything a little': {
    feedExponent: 3,
    rimAngleDeg: 70,
    axisRatio: 1.15,
    defocus: 0.25,
    astigmatism: [0.15, -0.2],
    coma: [0.2, -0.1],
    trefoil: [0.1, 0.15],
    spherical: 0.15,
    strutWidth: 0.06,
    shadow: 0.12,
  },
} as const satisfies Record<string, Wavefront>;

/** Wavefronts whose cells stand in the coverage table; coma of a twelfth of the wavelength and more is beyond it. */
export const IN_TABLE = [
  'strongly tapered',
  'coma',
  'coma and trefoil',
  'elliptical, bent',
  'out of focus',
  'spherical',
  'everything a little',
  'struts',
] as const satisfies readonly (keyof typeof WAVEFRONTS)[];

export type WavefrontName = keyof typeof WAVEFRONTS;
