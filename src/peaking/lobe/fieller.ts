/** Fieller's interval: all places at which the slope of a fitted parabola does not differ from zero. */

/** Covariance of the slope terms b and c for unit variance of a reading. */
export interface SlopeCovariance {
  readonly bb: number;
  readonly bc: number;
  readonly cc: number;
}

/** The interval, in the unit of the place; or why there is none. */
export type SlopeInterval =
  | { readonly kind: 'bounded'; readonly from: number; readonly to: number }
  | { readonly kind: 'slope-only' }
  | { readonly kind: 'nothing' };

/**
 * Solves (b + 2 c x)^2 <= t^2 s^2 var(b + 2 c x) for x.
 *
 * With a = c^2 - t^2 s^2 var(c) above zero the bend is established and the set is an interval. Otherwise
 * the set is unbounded, and only the slope at place 0 may be established.
 *
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16, 175 (1954).
 */
export function fiellerInterval(
  slope: { readonly b: number; readonly c: number },
  covariance: SlopeCovariance,
  limitDb: number,
): SlopeInterval {
  const square = limitDb * limitDb;
  const qa = slope.c * slope.c - square * covariance.cc;
  const qb = slope.b * slope.c - square * covariance.bc;
  const qc = slope.b * slope.b - square * covariance.bb;
  if (!(qa > 0)) return { kind: qc > 0 ? 'slope-only' : 'nothing' };
  const spread = Math.sqrt(Math.max(0, qb * qb - qa * qc));
  return {
    kind: 'bounded',
    from: (-qb - spread) / (2 * qa),
    to: (-qb + spread) / (2 * qa),
  };
}
