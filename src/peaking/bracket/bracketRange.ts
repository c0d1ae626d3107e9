/** Between which places the peak of a parabola in dB lies, given two levels on its flanks and the top. */

/** A level known to lie within an interval, in dB. */
export interface LevelRange {
  readonly low: number;
  readonly high: number;
}

/** Distances from the far place back to the peak, in the unit of the path. */
export interface BracketRange {
  /** From the middle of each interval; half the path for equal levels. */
  readonly best: number;
  /** Least and greatest over all lobes that agree with the intervals; `null` where there is no bound. */
  readonly bounds: readonly [number, number] | null;
}

/**
 * Distance from the far place to the peak: path / (1 + rho), rho = sqrt((top - out) / (top - far)).
 *
 * rho is monotonic in each level, so its extremes lie at the corners of the intervals.
 */
export function bracketRange(levels: {
  readonly top: LevelRange;
  readonly out: LevelRange;
  readonly far: LevelRange;
  readonly path: number;
}): BracketRange {
  const { top, out, far, path } = levels;
  const middle = (range: LevelRange) => (range.low + range.high) / 2;
  const backTo = (topDb: number, outDb: number, farDb: number) =>
    path / (1 + Math.sqrt((topDb - outDb) / (topDb - farDb)));
  const bestDrop = Math.min(middle(top) - middle(out), middle(top) - middle(far));
  const best = bestDrop > 0 ? backTo(middle(top), middle(out), middle(far)) : path / 2;
  if (!(top.low > out.high && top.low > far.high)) return { best, bounds: null };
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  for (const topDb of [top.low, top.high])
    for (const [outDb, farDb] of [
      [out.low, far.high],
      [out.high, far.low],
    ] as const) {
      const distance = backTo(topDb, outDb, farDb);
      least = Math.min(least, distance);
      most = Math.max(most, distance);
    }
  return { best, bounds: [least, most] };
}

/** Variance of that distance for independent variances of the three levels in dB^2. */
export function bracketVariance(
  drops: { readonly outDb: number; readonly farDb: number; readonly path: number },
  variances: { readonly top: number; readonly out: number; readonly far: number },
): number {
  const rho = Math.sqrt(drops.outDb / drops.farDb);
  const scale = (drops.path / (1 + rho) ** 2) * (rho / 2);
  const byTop = 1 / drops.outDb - 1 / drops.farDb;
  return (
    scale *
    scale *
    (variances.out / drops.outDb ** 2 +
      variances.far / drops.farDb ** 2 +
      variances.top * byTop * byTop)
  );
}
