/** The error of an answer against what a table expects. */

import type { VectorField, VectorValue } from './vectorTable.js';

/** Error of an answer in the field's measure; infinite for one that is no number or another text. */
export function vectorError(field: VectorField, expected: VectorValue, got: unknown): number {
  if (field.compare === 'text') return got === expected ? 0 : Number.POSITIVE_INFINITY;
  if (typeof expected !== 'number' || typeof got !== 'number' || !Number.isFinite(got))
    return Number.POSITIVE_INFINITY;
  const difference = Math.abs(got - expected);
  if (field.compare === 'direction') return Math.abs(((difference + 180) % 360) - 180);
  return field.compare === 'relative' && expected !== 0
    ? difference / Math.abs(expected)
    : difference;
}

/** What is allowed: the tolerance, and what rounding of such a number alone makes. */
export function allowedError(field: VectorField, expected: VectorValue): number {
  const size =
    typeof expected === 'number' && field.compare !== 'relative' ? Math.abs(expected) : 1;
  return field.tolerance + 4 * Number.EPSILON * size;
}
