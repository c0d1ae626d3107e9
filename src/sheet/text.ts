/** Plain text of the sheet's blocks: headings, wrapped lines and tables with aligned columns. */

import type { SheetBlock, SheetTable } from './blocks.js';

/** Width of the sheet in characters. */
export const SHEET_WIDTH = 84;

/** Text wrapped to the width, with a hanging indent behind the first characters. */
function wrapped(text: string, first = '', rest = ' '.repeat(first.length)): string {
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

/** A block as text. */
export function blockText(block: SheetBlock): string {
  if (typeof block === 'string') return wrapped(block);
  switch (block.kind) {
    case 'section':
      return `\n${block.title}\n${'-'.repeat(block.title.length)}`;
    case 'detail':
      return wrapped(block.text, '  ');
    case 'caution':
      return wrapped(block.text, '! ', '  ');
    case 'table':
      return tableText(block);
  }
}

function tableText({ header, rows, left }: SheetTable): string {
  const widths = header.map((title, column) =>
    Math.max(title.length, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return left.includes(column) ? cell.padEnd(width) : cell.padStart(width);
      })
      .join('  ')
      .trimEnd();
  return [line(header), ...rows.map(line)].join('\n');
}
