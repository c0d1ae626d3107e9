/** Text made harmless in HTML and in style sheets. */

/** Text made harmless in HTML. */
export function escaped(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');
}

/** Text as a string of CSS: every sign that is not a plain letter, digit or space becomes its number. */
export function cssString(text: string): string {
  const body = [...text]
    .map((sign) =>
      /[\p{L}\p{N} ,.]/u.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 32).toString(16)} `,
    )
    .join('');
  return `"${body}"`;
}
