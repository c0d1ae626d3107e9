/** Plain-text layout of the job sheet: headings, wrapped lines and tables with aligned columns. */

/** Width of the sheet in characters. */
export const SHEET_WIDTH = 84;

/** A heading with its rule. */
export function heading(text: string): string {
  return `\n${text}\n${'-'.repeat(text.length)}`;
}

/** Text wrapped to the width, with a hanging indent behind the first characters. */
export function wrapped(text: string, first = '', rest = ' '.repeat(first.length)): string {
  const lines: string[] = [];
  let line = first;
  for (const word of text.split(/\s+/)) {
    if (line.length + word.length + 1 > SHEET_WIDTH && line.trim() !== '') {
      lines.push(line);
      line = rest;
    }
    line += line === first || line === rest ? word : ` ${word}`;
  }
  lines.push(line);
  return lines.join('\n');
}

/** A number with fixed decimals; a dash where there is none. */
export function fixed(value: number | null | undefined, decimals: number, unit = ''): string {
  if (value === null || value === undefined) return '-';
  // Rounds -0.04 to 0.0, not to -0.0.
  const text = value.toFixed(decimals);
  return (Number(text) === 0 ? text.replace('-', '') : text) + unit;
}

/** The same with its sign always written. */
export function signed(value: number | null | undefined, decimals: number, unit = ''): string {
  const text = fixed(value, decimals, unit);
  return value === null || value === undefined || text.startsWith('-') ? text : `+${text}`;
}

/** A table: the first column to the left, all others to the right unless named in `left`. */
export function table(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  left: readonly number[] = [0],
): string {
  const widths = header.map((title, column) =>
    Math.max(title.length, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, column) =>
        left.includes(column)
          ? cell.padEnd(widths[column] ?? 0)
          : cell.padStart(widths[column] ?? 0),
      )
      .join('  ')
      .trimEnd();
  return [line(header), ...rows.map(line)].join('\n');
}
