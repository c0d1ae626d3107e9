/** A loss or gain of a part: one number, or points by frequency. */

import type { LoosePart } from '../../state/draft.js';
import type { Desk } from '../desk.js';
import { number, type Part, rowsOf } from '../parts.js';

/** Fields of a loss or gain. */
export function decibels(
  { words }: Desk,
  part: LoosePart | undefined,
  at: string,
  label: string,
  empty?: string,
): Part {
  const w = words.outlets;
  const field = at.slice(at.lastIndexOf('.') + 1);
  const value = part?.[field];
  if (!Array.isArray(value))
    return number(at, label, 'dB', { signed: true, ...(empty === undefined ? {} : { empty }) });
  return rowsOf(words, {
    list: at,
    count: value.length,
    title: `${label}: ${w.byFrequency}`,
    row: w.point,
    fields: (point) => [
      number(`${point}.frequencyMHz`, w.frequency, 'MHz'),
      number(`${point}.valueDb`, w.valueAt, 'dB', { signed: true }),
    ],
    before: [{ kind: 'buttons', buttons: [{ what: 'one-number', at, label: w.asOne(label) }] }],
  });
}

/** The button that makes one number points by frequency. */
export const byFrequency = (
  { words }: Desk,
  part: LoosePart,
  at: string,
  label: string,
): readonly Part[] =>
  typeof part[at.slice(at.lastIndexOf('.') + 1)] === 'number'
    ? [
        {
          kind: 'buttons',
          buttons: [{ what: 'by-frequency', at, label: words.outlets.asPoints(label) }],
        },
      ]
    : [];
