/** Numbers, units and formulas with the signs of print. */

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/^deg$/, '°'],
  [/^percent(?=$|\/)/, '%'],
  [/dBuV/, 'dBµV'],
  [/degrees Celsius/, '°C'],
  [/\^2/, '²'],
  [/\^3/, '³'],
  [/\^4/, '⁴'],
  [/^N m$/, 'N·m'],
];

/** A unit as it is printed. */
export function printedUnit(unit: string): string {
  return UNITS.reduce((text, [from, to]) => text.replace(from, to), unit);
}

/** A number as it is printed: a true minus, all decimals where they are asked for. */
export function printedNumber(value: number, decimals?: number): string {
  const text =
    decimals === undefined ? String(Number(value.toPrecision(10))) : value.toFixed(decimals);
  return text.replace('-', '−');
}

/** A formula as it is printed: times, minus, roots, squares. */
export function printedFormula(text: string): string {
  return text
    .replace(/\s\*\s/g, ' · ')
    .replace(/\s-\s/g, ' − ')
    .replace(/(^|[\s(=])-(?=[\w(])/g, '$1−')
    .replace(/sqrt\(/g, '√(')
    .replace(/\bpi\b/g, 'π')
    .replace(/\s?(?:\^|\*\*)\s?2(?![\d.])/g, '²')
    .replace(/\s?(?:\^|\*\*)\s?3(?![\d.])/g, '³')
    .replace(/\s?(?:\^|\*\*)\s?4(?![\d.])/g, '⁴')
    .replace(/\blog10\(/g, 'log(');
}
