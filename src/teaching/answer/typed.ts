/** An answer as it is typed: the number, how many decimals it shows, and the unit behind it. */

/** A typed answer. */
export interface Typed {
  readonly value: number;
  readonly decimals: number;
  /** What stands behind the number; empty for nothing. */
  readonly unit: string;
  /** The number that it would be if its one point or comma parted thousands; none otherwise. */
  readonly asThousands?: number;
}

const NUMBER =
  /^\s*([-+−–]?(?:\d{1,3}(?:[\s'’\u00a0\u202f]\d{3})+|\d*)(?:[.,]\d*)?(?:e[-+]?\d+)?)\s*(.*?)\s*$/i;

/** Reads a number with decimal point or comma, with thousands apart, with or without a unit behind it. */
export function typedAnswer(answer: number | string): Typed | undefined {
  if (typeof answer === 'number')
    return Number.isFinite(answer) ? { value: answer, decimals: 12, unit: '' } : undefined;
  if (typeof answer !== 'string') return undefined;
  const match = NUMBER.exec(answer);
  const text = (match?.[1] ?? '')
    .replace(/[\s'’\u00a0\u202f]/g, '')
    .replace(',', '.')
    .replace(/[−–]/g, '-');
  const unit = match?.[2] ?? '';
  if (!/\d/.test(text) || /^[\d.,+−-]/.test(unit)) return undefined;
  const value = Number(text);
  if (!Number.isFinite(value)) return undefined;
  const [, fraction] = text.split(/[.e]/i);
  const decimals = text.includes('.') ? (fraction ?? '').length : 0;
  const thousands = /^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(text) ? { asThousands: 1000 * value } : {};
  return { value, decimals, unit, ...thousands };
}
