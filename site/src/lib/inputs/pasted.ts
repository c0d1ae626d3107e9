/** Text pasted into a table. */

import { typedAngle } from './angles.js';
import { MOST_ROWS } from './state.js';

/** The cells of a pasted text: tabs, semicolons, or commas where no decimal comma can be meant. */
export function linesOf(text: string): string[][] {
  const lines = text
    .trimEnd()
    .split(/\r?\n/)
    .slice(0, MOST_ROWS + 2);
  const sign = lines.some((line) => line.includes('\t'))
    ? '\t'
    : lines.some((line) => line.includes(';'))
      ? ';'
      : lines.every((line) => /^[^,]+(,[^,]+)+$/.test(line)) && text.includes('.')
        ? ','
        : '\t';
  return lines.map((line) => line.split(sign).map((cell) => cell.trim()));
}

const isNumeric = (cell: string) => !Number.isNaN(typedAngle(cell));

/**
 * `cells` with a pasted text laid over it, its first cell at `row`, `column`. A text as wide as the table that is put into
 * its first cell takes the place of all rows; a first line without a number above lines with numbers is a heading.
 */
export function pasted(
  cells: readonly (readonly string[])[],
  text: string,
  row: number,
  column: number,
): string[][] {
  const width = cells[0]?.length ?? 0;
  const lines = linesOf(text);
  const [first, second] = lines;
  if (first && second && !first.some(isNumeric) && second.some(isNumeric)) lines.shift();
  const whole = row === 0 && column === 0 && lines.length > 1 && (lines[0]?.length ?? 0) >= width;
  const made = whole ? [] : cells.map((line) => [...line]);
  lines.forEach((line, index) => {
    const target = made[row + index] ?? Array.from({ length: width }, () => '');
    made[row + index] = target;
    line.forEach((cell, offset) => {
      if (column + offset < width) target[column + offset] = cell;
    });
  });
  return made;
}
