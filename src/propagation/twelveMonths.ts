/** Guard for twelve monthly values. */

import { DomainError, inRange } from '../errors.js';

/**
 * The twelve values, each held to `minimum`..`maximum`.
 *
 * @throws DomainError naming `parameter`, with the month's index from 0.
 */
export function twelve(
  parameter: string,
  values: ArrayLike<number>,
  minimum: number,
  maximum: number,
  slip: string,
): number[] {
  if (values === undefined || values === null || typeof values !== 'object' || values.length !== 12)
    throw new DomainError({
      code: values === undefined || values === null ? 'missing' : 'length-mismatch',
      parameter,
      received: values,
      allowed: 'twelve values, January first',
    });
  return Array.from(values, (value, month) =>
    inRange(parameter, value, minimum, maximum, slip, month),
  );
}
