/**
 * The feed place that suits a beam best, and the variance of ray length left, with its slopes and bends by the beam: what the
 * search for a boresight goes by, a few dozen times. Newton's method finds the place.
 */

import { denseAt } from '../../numeric/columns.js';
import { type Aperture, type FeedPlace, forwardCosine } from './reflectorOptics.js';

/** Best place and variance for a beam, and how the variance changes with the beam's two direction cosines. */
interface ScanVariance {
  readonly place: FeedPlace;
  readonly varianceM2: number;
  /** First derivatives by the cosines to the right and up. */
  readonly slope: readonly [number, number];
  /** Second derivatives: by right twice, by right and up, by up twice. */
  readonly bend: readonly [number, number, number];
}

/** A step shorter than this in metres leaves an error below the rounding. */
const SHORT_M = 3e-6;
const MOST_STEPS = 8;

/** Steps from afar that leave out the bends of the rays, which lead astray there. */
const PLAIN_STEPS = 2;

/**
 * The best feed place for a beam and the variance left, from a place near by on, or from the mirror's.
 *
 * With l the length of a ray, n its slopes by the feed's place (the ray's own direction) and m those by the beam, half
 * the variance has the slopes cov(l, n), cov(l, m) and the bends cov(n, n) + cov(l, dn), cov(n, m), cov(m, m) + cov(l, dm).
 * The place follows the beam, so that a bend by the beam loses what the place takes up (Schur complement).
 */
export function scanVariance(
  aperture: Aperture,
  rightCosine: number,
  upCosine: number,
  near?: FeedPlace,
): ScanVariance {
  const { share, beamFrame, focusToMiddleM } = aperture;
  const depth = beamFrame[2];
  const forward = forwardCosine(rightCosine, upCosine);
  const [tiltRight, tiltUp] = [rightCosine / forward, upCosine / forward];
  const ones = new Float64Array(share.length).fill(1);
  const centred = (values: Float64Array): Float64Array =>
    plus(values, -weighted(share, values, ones), ones);
  // A beam turned aside shortens its forward part.
  const byRight = centred(plus(beamFrame[0], -tiltRight, depth));
  const byUp = centred(plus(beamFrame[1], -tiltUp, depth));
  // As in a mirror the feed goes to the other side than the beam.
  let place = near ?? ([-rightCosine * focusToMiddleM, -upCosine * focusToMiddleM, 0] as const);
  for (let step = 1; ; step++) {
    const rays = raysOf(aperture, rightCosine, upCosine, place);
    const length = centred(rays.length);
    const slopes = rays.directions.map(centred) as [Float64Array, Float64Array, Float64Array];
    const pull = times(rays.perLength, length);
    const plain = !near && step <= PLAIN_STEPS;
    const bend = (i: 0 | 1 | 2, j: 0 | 1 | 2): number => {
      const common = weighted(share, slopes[i], slopes[j]);
      if (plain) return common;
      // A ray bends with the place by (1 - n n) over its length; its squares of n add up to 1.
      const [a, b, c] = rays.directions;
      const across = { 0: [b, c], 1: [a, c], 2: [a, b] } as const;
      if (i !== j) return common - weighted(pull, rays.directions[i], rays.directions[j]);
      const [other, third] = across[i];
      return common + weighted(pull, other, other) + weighted(pull, third, third);
    };
    const solve = symmetricSolver(
      [bend(0, 0), bend(0, 1), bend(0, 2)],
      [bend(1, 1), bend(1, 2)],
      bend(2, 2),
    );
    const against = (values: Float64Array): Triple => [
      weighted(share, slopes[0], values),
      weighted(share, slopes[1], values),
      weighted(share, slopes[2], values),
    ];
    const lean = against(length);
    const move = solve(lean);
    place = [place[0] + move[0], place[1] + move[1], place[2] + move[2]];
    const settled = !plain && Math.sqrt(product(move, move)) <= SHORT_M;
    if (!settled && step < MOST_STEPS) continue;
    const [withRight, withUp] = [against(byRight), against(byUp)];
    const [takesRight, takesUp] = [solve(withRight), solve(withUp)];
    const bent = weighted(share, length, depth) / forward;
    const covariance = (a: Float64Array, b: Float64Array) => weighted(share, a, b);
    return {
      place,
      // What the last step gains is known to second order and need not be computed anew.
      varianceM2: Math.max(0, covariance(length, length) - product(lean, move)),
      slope: [
        -2 * (covariance(length, byRight) - product(lean, takesRight)),
        -2 * (covariance(length, byUp) - product(lean, takesUp)),
      ],
      bend: [
        2 *
          (covariance(byRight, byRight) +
            bent * (1 + tiltRight * tiltRight) -
            product(withRight, takesRight)),
        2 * (covariance(byRight, byUp) + bent * tiltRight * tiltUp - product(withUp, takesRight)),
        2 * (covariance(byUp, byUp) + bent * (1 + tiltUp * tiltUp) - product(withUp, takesUp)),
      ],
    };
  }
}

type Triple = readonly [number, number, number];

const product = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * Sum of products with weights. Short functions over columns, so that an engine makes them quick at once: the first
 * plan of a process waits for them.
 */
function weighted(weights: Float64Array, a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++)
    sum += denseAt(weights, i) * denseAt(a, i) * denseAt(b, i);
  return sum;
}

function plus(a: Float64Array, factor: number, b: Float64Array): Float64Array {
  const sum = new Float64Array(a.length);
  for (let i = 0; i < a.length; i++) sum[i] = denseAt(a, i) + factor * denseAt(b, i);
  return sum;
}

function times(a: Float64Array, b: Float64Array): Float64Array {
  const product = new Float64Array(a.length);
  for (let i = 0; i < a.length; i++) product[i] = denseAt(a, i) * denseAt(b, i);
  return product;
}

/** Lengths and directions of all rays from a feed place to a beam, and the points' shares over the length. */
function raysOf(
  { share, beamFrame, feedFrame, focusToMiddleM }: Aperture,
  rightCosine: number,
  upCosine: number,
  place: FeedPlace,
) {
  const [x, y, z] = beamFrame;
  const [u, v, w] = feedFrame;
  const forward = forwardCosine(rightCosine, upCosine);
  const column = () => new Float64Array(share.length);
  const [length, perLength, a, b, c] = [column(), column(), column(), column(), column()] as const;
  for (let i = 0; i < share.length; i++) {
    const du = denseAt(u, i) - place[0];
    const dv = denseAt(v, i) - place[1];
    const dw = denseAt(w, i) - place[2];
    const ray = Math.sqrt(du * du + dv * dv + dw * dw);
    // Constant lengths do not matter to the phase; taking the middle's off keeps the digits of the small remainder.
    length[i] =
      ray -
      focusToMiddleM -
      rightCosine * denseAt(x, i) -
      upCosine * denseAt(y, i) -
      forward * denseAt(z, i);
    perLength[i] = denseAt(share, i) / ray;
    a[i] = du / ray;
    b[i] = dv / ray;
    c[i] = dw / ray;
  }
  return { length, perLength, directions: [a, b, c] as const };
}

/** Solves a symmetric system of three by its inverse. */
function symmetricSolver(
  [aa, ab, ac]: Triple,
  [bb, bc]: readonly [number, number],
  cc: number,
): (right: Triple) => Triple {
  const first: Triple = [bb * cc - bc * bc, ac * bc - ab * cc, ab * bc - ac * bb];
  const determinant = product([aa, ab, ac], first);
  const second: Triple = [first[1], aa * cc - ac * ac, ab * ac - aa * bc];
  const third: Triple = [first[2], second[2], aa * bb - ab * ab];
  return (right) => [
    product(first, right) / determinant,
    product(second, right) / determinant,
    product(third, right) / determinant,
  ];
}
