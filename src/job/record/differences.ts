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

/** How close two numbers of a field count as equal: a step, or a share of the larger where that is more. */
interface Closeness {
  readonly step: number;
  readonly ratio: number;
}

/** Inputs are kept as they are: they must be the same to the last digits. */
const SAME: Closeness = { step: 1e-12, ratio: 1e-12 };

/** By the unit at the end of a field's name: far below what any instrument tells apart, far above what engines differ in. */
const BY_UNIT: readonly (readonly [RegExp, Closeness])[] = [
  [/(Deg|Turns|Db|Dbuv|Dbm|Dbw|Dbi|DbHz|Khz|KHz|PerK)$/, { step: 1e-5, ratio: 1e-9 }],
  [/Mm$/, { step: 1e-3, ratio: 1e-9 }],
  [/(M|Km|H|MHz|GHz)$/, { step: 1e-5, ratio: 1e-8 }],
];

/** Figures without such a unit: ratios, percentages, probabilities, values whose unit stands beside them. */
const OTHERWISE: Closeness = { step: 1e-6, ratio: 1e-6 };

/** How close the numbers of a field must be. */
type ClosenessOf = (path: string, field: string) => Closeness;

/** Computed fields by their units, inputs exactly. */
const ofRecord: ClosenessOf = (path, field) => {
  if (path.startsWith('job.')) return SAME;
  return BY_UNIT.find(([unit]) => unit.test(field))?.[1] ?? OTHERWISE;
};

function isTree(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/** A negative zero as zero. */
const unsigned = (value: unknown): unknown => (value === 0 ? 0 : value);

function listed(before: unknown, after: unknown, closenessOf: ClosenessOf): readonly Difference[] {
  const found: Difference[] = [];
  const compare = (a: unknown, b: unknown, path: string, field: string): void => {
    if (typeof a === 'number' && typeof b === 'number') {
      const { step, ratio } = closenessOf(path, field);
      if (Math.abs(a - b) <= Math.max(step, ratio * Math.max(Math.abs(a), Math.abs(b)))) return;
    }
    if (isTree(a) && isTree(b) && Array.isArray(a) === Array.isArray(b)) {
      for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
        const list = Array.isArray(a);
        const inner = list ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
        compare(a[key], b[key], inner, list ? field : key);
      }
      return;
    }
    if (a !== b) found.push({ path, before: unsigned(a ?? null), after: unsigned(b ?? null) });
  };
  compare(before, after, '', '');
  return found;
}

/**
 * Differences between two JSON documents, in the order of the first one's fields.
 *
 * @param before  The first document.
 * @param after  The second document.
 * @returns One entry per field that differs; a field that only one side has counts, with `null` for the other.
 */
export function differences(before: unknown, after: unknown): readonly Difference[] {
  return listed(before, after, () => SAME);
}

/** The same between two records: computed figures count as equal within what they are good for. */
export function recordDifferences(before: unknown, after: unknown): readonly Difference[] {
  return listed(before, after, ofRecord);
}
