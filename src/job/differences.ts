/** Two JSON documents compared, field by field. */

/** A field that differs. */
export interface Difference {
  /** Path of the field: `plan.directions[1].azimuthDeg`. */
  readonly path: string;
  /** Value in the first document; `null` where it has none. */
  readonly before: unknown;
  /** Value in the second document; `null` where it has none. */
  readonly after: unknown;
}

/** Numbers closer than this, relative to the larger or to one, count as equal: mathematics differs between machines in the last digits. */
const SAME_RELATIVE = 1e-9;

function sameNumber(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME_RELATIVE * Math.max(1, Math.abs(a), Math.abs(b));
}

function isTree(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/**
 * Differences between two JSON documents, in the order of the first one's fields.
 *
 * @param before  The first document.
 * @param after  The second document.
 * @returns One entry per field that differs; a field that only one side has counts, with `null` for the other.
 */
export function differences(before: unknown, after: unknown): readonly Difference[] {
  const found: Difference[] = [];
  const compare = (a: unknown, b: unknown, path: string): void => {
    if (typeof a === 'number' && typeof b === 'number' && sameNumber(a, b)) return;
    if (isTree(a) && isTree(b) && Array.isArray(a) === Array.isArray(b)) {
      for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
        const inner = Array.isArray(a) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
        compare(a[key], b[key], inner);
      }
      return;
    }
    if (a !== b) found.push({ path, before: a ?? null, after: b ?? null });
  };
  compare(before, after, '');
  return found;
}
