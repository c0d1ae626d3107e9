/** The marks, letters and words of typed coordinates, brought to one spelling. */

const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/\blat(?:itude)?\b\.?\s*[:=]?/g, ' y '],
  [/\bl(?:ng|on(?:g(?:itude)?)?)\b\.?\s*[:=]?/g, ' x '],
  [/\bnorth\b/g, 'n'],
  [/\bsouth\b/g, 's'],
  [/\beast\b/g, 'e'],
  [/\bwest\b/g, 'w'],
  [/\s*(?:degrees?|deg\b\.?)|[º˚]/g, '°'],
  [/\s*(?:minutes?|min\b\.?)|[′’‘ʹ´`]/g, "'"],
  [/\s*(?:seconds?|sec\b\.?)|[″”“ʺ]/g, '"'],
  [/''/g, '"'],
  [/[−–—]/g, '-'],
  [/[()]/g, ' '],
];

/** Lower case, plain marks, letters for words, `y` and `x` for the labels of latitude and longitude. */
export function tidied(text: string): string {
  const lower = text.trim().toLowerCase().replace(/\/$/, '');
  return SPELLINGS.reduce((tidy, [spelling, sign]) => tidy.replace(spelling, sign), lower);
}

/** The likely slip in a tidied text of none or several readings, as a question. */
export function likelySlip(tidy: string, readings: number): string | undefined {
  if (readings > 1)
    return 'where does the second coordinate begin? part them with a comma and a space';
  if (/\d,\d/.test(tidy))
    return 'is the comma a decimal mark, or does it part the two? put a space behind the one that parts';
  if (/\d\s*o\b|\bo\s*\d/.test(tidy)) return 'does O mean east or west? write E or W';
  const letters = tidy.match(/[nsew]/g)?.length ?? 0;
  if (letters > 0 && /[+-]\s*\d/.test(tidy)) return 'are there both a sign and a letter?';
  if (letters === 1) return 'does one coordinate lack its letter?';
  if (/\d{4}/.test(tidy.replace(/\.\d+/g, ''))) return 'are these metres of a map grid?';
  return undefined;
}
