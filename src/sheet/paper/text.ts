/** Plain text of a sheet: headings, wrapped lines and tables with aligned columns, never wider than the sheet. */

import type { SheetBlock, SheetPage, SheetTable } from './blocks.js';

/** Width of the sheet in characters. */
const SHEET_WIDTH = 84;

/** Narrowest column into which texts are wrapped where their words cannot stay whole. */
const NARROWEST = 8;

/** A text cut into lines of at most `width` characters, at spaces where there are any. */
function lines(text: string, width: number): readonly string[] {
  const found: string[] = [];
  let line = '';
  for (const whole of text.split(/[ \t\n]+/)) {
    let word = whole;
    if (line !== '' && line.length + 1 + word.length <= width) {
      line += ` ${word}`;
      continue;
    }
    if (line !== '') found.push(line);
    while (word.length > width) {
      found.push(word.slice(0, width));
      word = word.slice(width);
    }
    line = word;
  }
  found.push(line);
  return found;
}

/** Text wrapped to the width, with a hanging indent behind the first characters. */
function wrapped(text: string, first = '', rest = ' '.repeat(first.length)): string {
  return lines(text, SHEET_WIDTH - Math.max(first.length, rest.length))
    .map((line, index) => `${index === 0 ? first : rest}${line}`.trimEnd())
    .join('\n');
}

/** A sheet as text. */
export function pageText({ title, subtitle, blocks }: SheetPage): string {
  const rule = '='.repeat(SHEET_WIDTH);
  return `${[rule, wrapped(title), wrapped(subtitle), rule, ...blocks.flatMap(blockText)].join('\n')}\n`;
}

function blockText(block: SheetBlock): readonly string[] {
  if (typeof block === 'string') return [wrapped(block)];
  switch (block.kind) {
    case 'section': {
      const title = wrapped(block.title);
      return ['', title, '-'.repeat(Math.min(SHEET_WIDTH, block.title.length))];
    }
    case 'detail':
      return [wrapped(block.text, '  ')];
    case 'cautions':
      return [
        '*'.repeat(SHEET_WIDTH),
        ...block.texts.map((text) => wrapped(text, '! ', '  ')),
        '*'.repeat(SHEET_WIDTH),
      ];
    case 'outcome':
      return ['', wrapped(block.text)];
    case 'finding':
      return [wrapped(`${block.text} ${block.action}`.trim(), '- ', '  ')];
    case 'blanks':
      return [blanksText(block.labels)];
    case 'table':
      return [tableText(block)];
    case 'drawing':
      return [];
  }
}

/** Labels with lines to write on, as many to a row as fit; a label stays with its line. */
function blanksText(labels: readonly string[]): string {
  const kept = labels.map((label) => `${label} ${'_'.repeat(16)}`.replace(/ /g, '\u00a0'));
  return wrapped(kept.join(' ')).replace(/\u00a0/g, ' ');
}

/** How a table may be narrowed: blanks between its columns, and whether words of texts may be cut. */
interface Tightness {
  readonly gap: number;
  readonly cutWords: boolean;
}

/** From the most readable to the tightest. */
const TIGHTNESSES: readonly Tightness[] = [
  { gap: 2, cutWords: false },
  { gap: 1, cutWords: false },
  { gap: 2, cutWords: true },
  { gap: 1, cutWords: true },
];

const longestWord = (text: string): number =>
  Math.max(1, ...text.split(' ').map((word) => word.length));

/** Widths of the columns so that the table fits, or nothing where it cannot: first headings are wrapped, then texts. */
function widthsOf(
  { header, rows, left }: SheetTable,
  { gap, cutWords }: Tightness,
): readonly number[] | undefined {
  const cells = header.map((_, column) => rows.map((row) => row[column] ?? ''));
  const least = header.map((title, column) =>
    Math.max(longestWord(title), ...(cells[column] ?? []).map((cell) => cell.length)),
  );
  const narrowest = header.map((title, column) =>
    cutWords
      ? NARROWEST
      : Math.max(longestWord(title), ...(cells[column] ?? []).map((cell) => longestWord(cell))),
  );
  const widths = header.map((title, column) => Math.max(title.length, least[column] ?? 0));
  const total = () => widths.reduce((a, b) => a + b, 0) + gap * (widths.length - 1);
  const narrow = (room: (column: number) => number): boolean => {
    const best = widths.reduce((a, _, column) => (room(column) > room(a) ? column : a), 0);
    if (room(best) <= 0) return false;
    widths[best] = (widths[best] ?? 0) - 1;
    return true;
  };
  while (total() > SHEET_WIDTH) {
    const fits =
      narrow((column) => (widths[column] ?? 0) - (least[column] ?? 0)) ||
      narrow((column) =>
        left.includes(column) ? (widths[column] ?? 0) - (narrowest[column] ?? 0) : 0,
      );
    if (!fits) return undefined;
  }
  return widths;
}

function tableText(table: SheetTable): string {
  const { header, rows, left } = table;
  if (header.length === 0) return '';
  const tightness = TIGHTNESSES.find((some) => widthsOf(table, some));
  const widths = tightness && widthsOf(table, tightness);
  if (!widths) return listText(table);
  const line = (cells: readonly string[]): string => {
    const wraps = cells.map((cell, column) => lines(cell, widths[column] ?? 1));
    const height = Math.max(...wraps.map((wrap) => wrap.length));
    return Array.from({ length: height }, (_, row) =>
      wraps
        .map((wrap, column) => {
          const text = wrap[row] ?? '';
          const width = widths[column] ?? 0;
          return left.includes(column) ? text.padEnd(width) : text.padStart(width);
        })
        .join(' '.repeat(tightness.gap))
        .trimEnd(),
    ).join('\n');
  };
  return [line(header), ...rows.map(line)].join('\n');
}

/** A table too wide for the sheet, row by row. */
function listText({ header, rows }: SheetTable): string {
  return rows
    .map((row) =>
      wrapped(row.map((cell, column) => `${header[column]} ${cell}`).join('; '), '', '  '),
    )
    .join('\n');
}
