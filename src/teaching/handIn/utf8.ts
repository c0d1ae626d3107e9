/** UTF-8 by what every JavaScript engine has, a bare one without host objects included. */

const REPLACEMENT = '\ufffd';

/** Bytes of a text; half of a surrogate pair counts as the replacement character. */
export function utf8Bytes(text: string): number[] {
  const escaped = encodeURIComponent(text.replace(/\p{Surrogate}/gu, REPLACEMENT));
  return (escaped.match(/%[0-9A-F]{2}|[^%]/g) ?? []).map((unit) =>
    unit.length === 1 ? unit.charCodeAt(0) : Number.parseInt(unit.slice(1), 16),
  );
}

/** Text of bytes; the replacement character where they are no UTF-8. */
export function utf8Text(bytes: readonly number[]): string {
  try {
    return decodeURIComponent(
      bytes.map((byte) => `%${byte.toString(16).padStart(2, '0')}`).join(''),
    );
  } catch {
    return REPLACEMENT;
  }
}
