/** Scales and ticks of drawings. */

/** Maps a value to a coordinate. */
export interface Scale {
  (value: number): number;
  readonly ticks: readonly number[];
  /** The value at a coordinate. */
  readonly back: (coordinate: number) => number;
  readonly domain: readonly [number, number];
}

/** Round positions that cover `low` to `high`, about `count` of them. */
export function roundTicks(low: number, high: number, count = 5): number[] {
  const raw = (high - low) / count || 1;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 2.5, 5].map((m) => m * power).find((s) => s >= raw * 0.999) ?? 10 * power;
  const first = Math.ceil(low / step - 1e-9);
  const steps = Math.min(100, Math.floor(high / step + 1e-9) - first);
  return Array.from(
    { length: steps + 1 },
    (_, i) => Number(((first + i) * step).toPrecision(12)) + 0,
  );
}

/** A linear scale from `low`..`high` onto `from`..`to`. */
export function linear(low: number, high: number, from: number, to: number, count = 5): Scale {
  const span = high - low || 1;
  return Object.assign((value: number) => from + ((value - low) / span) * (to - from), {
    ticks: roundTicks(low, high, count),
    back: (coordinate: number) => low + ((coordinate - from) / (to - from || 1)) * span,
    domain: [low, high] as const,
  });
}

/** A logarithmic scale; ticks at 1, 2 and 5 of each decade, or at decades if they are many. */
export function logarithmic(low: number, high: number, from: number, to: number): Scale {
  const [a, b] = [Math.log10(low), Math.log10(high)];
  const decades = b - a;
  const ticks: number[] = [];
  for (let power = Math.floor(a); power <= Math.ceil(b); power++)
    for (const m of decades > 3 ? [1] : [1, 2, 5]) {
      const tick = Number((m * 10 ** power).toPrecision(6));
      if (tick >= low * 0.999999 && tick <= high * 1.000001) ticks.push(tick);
    }
  return Object.assign(
    (value: number) => from + ((Math.log10(value) - a) / (decades || 1)) * (to - from),
    {
      ticks,
      back: (coordinate: number) =>
        10 ** (a + ((coordinate - from) / (to - from || 1)) * (decades || 1)),
      domain: [low, high] as const,
    },
  );
}

/** The smallest and largest of some numbers, widened by `share` of their span and never of zero width. */
export function extent(values: readonly number[], share = 0.05): [number, number] {
  const finite = values.filter(Number.isFinite);
  if (finite.length === 0) return [0, 1];
  const low = finite.reduce((a, b) => Math.min(a, b));
  const high = finite.reduce((a, b) => Math.max(a, b));
  // A span of rounding errors is none: no tick could tell its ends apart.
  const size = Math.max(Math.abs(low), Math.abs(high));
  const span = high - low > 1e-9 * size ? high - low : 0;
  const margin = span * share || (span === 0 ? size * 0.05 || 1 : 0);
  return [low - margin, high + margin];
}
