/** Values over frequency: one number, or points joined by straight lines. */

import { DomainError, inRange } from '../../errors.js';
import { valueAt } from '../../numeric/columns.js';
import { checkedFrequencyMHz } from '../cable/cable.js';
import type { DecibelsByFrequency } from './tree.js';

/** Guards a value over frequency and gives it as a function of the frequency in MHz. */
export function byFrequency(
  parameter: string,
  value: DecibelsByFrequency,
  limits: { readonly minimum: number; readonly maximum: number },
): (frequencyMHz: number) => number {
  const { minimum, maximum } = limits;
  if (!Array.isArray(value)) {
    const constant = inRange(parameter, value as number, minimum, maximum);
    return () => constant;
  }
  if (value.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter,
      received: value,
      allowed: 'a number or at least one point',
    });
  const frequencies: number[] = [];
  const values: number[] = [];
  value.forEach((point: { frequencyMHz: number; valueDb: number } | null, index) => {
    const frequencyMHz = checkedFrequencyMHz(
      `${parameter}[${index}].frequencyMHz`,
      point?.frequencyMHz as number,
    );
    const last = frequencies[index - 1];
    if (last !== undefined && frequencyMHz <= last)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `${parameter}[${index}].frequencyMHz`,
        received: frequencyMHz,
        allowed: `above the point before it (${last})`,
      });
    frequencies.push(frequencyMHz);
    values.push(
      inRange(`${parameter}[${index}].valueDb`, point?.valueDb as number, minimum, maximum),
    );
  });
  return (frequencyMHz) => interpolated(frequencies, values, frequencyMHz);
}

/** Straight lines between points, the end values beyond them. */
function interpolated(x: readonly number[], y: readonly number[], at: number): number {
  const above = x.findIndex((value) => value >= at);
  if (above === -1) return valueAt(y, y.length - 1);
  if (above === 0) return valueAt(y, 0);
  const x0 = valueAt(x, above - 1);
  const y0 = valueAt(y, above - 1);
  const share = (at - x0) / (valueAt(x, above) - x0);
  return y0 + share * (valueAt(y, above) - y0);
}
