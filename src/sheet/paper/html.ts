/** HTML of a sheet: one document with its own styles, made for A4 paper. */

import { BLANK, type SheetBlock, type SheetPage, type SheetTable } from './blocks.js';
import { cssString, escaped } from './escaped.js';
import { STYLE } from './style.js';

/** A sheet as an HTML document. */
export function pageHtml(page: SheetPage): string {
  const title = escaped(page.title);
  const [before, between] = page.pageWords;
  const running = `@page {
  @top-left { content: ${cssString(page.running)}; }
  @bottom-right { content: ${cssString(before)} counter(page) ${cssString(between)} counter(pages); }
}`;
  return `<!doctype html>
<html lang="${escaped(page.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${STYLE}${running}</style>
</head>
<body>
<h1>${title}</h1>
<p class="subtitle">${escaped(page.subtitle)}</p>
${sections(page.blocks)}
</body>
</html>
`;
}

/** Blocks under their headings, so that a heading is never parted from what it heads. */
function sections(blocks: readonly SheetBlock[]): string {
  const parts: string[][] = [[]];
  for (const block of blocks) {
    const heads = typeof block !== 'string' && block.kind === 'section';
    const breaks = heads || (typeof block !== 'string' && block.kind === 'cautions');
    if (breaks) parts.push([]);
    parts.at(-1)?.push(blockHtml(block));
  }
  return parts
    .filter((part) => part.length > 0)
    .map((part) => `<section>\n${part.join('\n')}\n</section>`)
    .join('\n');
}

function blockHtml(block: SheetBlock): string {
  if (typeof block === 'string') return `<p>${escaped(block)}</p>`;
  switch (block.kind) {
    case 'section':
      return `<h2>${escaped(block.title)}</h2>`;
    case 'detail':
      return `<p class="detail">${escaped(block.text)}</p>`;
    case 'cautions':
      return `<ul class="cautions">${block.texts.map((text) => `<li>${escaped(text)}</li>`).join('')}</ul>`;
    case 'outcome':
      return `<p class="outcome">${escaped(block.text)}</p>`;
    case 'finding':
      return `<p class="finding">${escaped(block.text)}${block.action === '' ? '' : ` <b>${escaped(block.action)}</b>`}</p>`;
    case 'blanks':
      return `<p class="blanks">${block.labels.map((label) => `<span>${escaped(label)}</span>`).join('')}</p>`;
    case 'table':
      return tableHtml(block);
    case 'drawing':
      return `<figure>${block.svg}</figure>`;
  }
}

function tableHtml({ header, rows, left }: SheetTable): string {
  const side = (column: number) => (left.includes(column) ? ' class="left"' : '');
  const head = header
    .map((text, column) => `<th scope="col"${side(column)}>${escaped(text)}</th>`)
    .join('');
  const cell = (text: string, column: number) =>
    text === BLANK ? '<td class="blank"></td>' : `<td${side(column)}>${escaped(text)}</td>`;
  return `<table><thead><tr>${head}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map(cell).join('')}</tr>`)
    .join('')}</tbody></table>`;
}
