/** A worksheet as one HTML document for the printer, with or without the key. */

import { knownOnly } from '../../keys.js';
import { escapedXml } from './exportQti.js';
import type { Worksheet } from './worksheet.js';

const STYLE = `
@page { size: A4; margin: 15mm; }
body { font: 11pt/1.4 system-ui, sans-serif; color: #111; background: #fff; max-width: 180mm; margin: 0 auto; padding: 4mm; }
h1 { font-size: 15pt; margin: 0 0 4mm; }
li { margin: 0 0 8mm; break-inside: avoid; }
.line { border-bottom: 0.2mm solid #111; display: inline-block; width: 40mm; }
ol.steps { font-size: 9.5pt; } ol.steps li { margin: 0 0 1mm; }
`;

/**
 * A worksheet for the printer.
 *
 * @param sheet  From {@link worksheet}.
 * @param options  `key: true` prints answers and worked solutions instead of lines to write on.
 * @returns One self-contained HTML document.
 * @throws {@link DomainError} `unknown-field` for another option.
 *
 * Source: the worksheet.
 * @example
 * ```ts
 * import { worksheet, worksheetHtml } from 'slantpath/teaching';
 * worksheetHtml(worksheet({ seed: 3, count: 2 }), { key: true }).includes('ol class="steps"'); // => true
 * ```
 */
export function worksheetHtml(sheet: Worksheet, options: { readonly key?: boolean } = {}): string {
  const key = knownOnly('options', options, { key: true }).key ?? false;
  const items = sheet.exercises.map(({ text, answer, decimals, unit, solution }) => {
    const question = `<p>${escapedXml(text)}</p>`;
    if (!key)
      return `<li>${question}<p>Answer: <span class="line"></span> ${escapedXml(unit)}</p></li>`;
    const steps = solution.steps
      .map(
        (step) =>
          `<li>${escapedXml(`${step.meaning}: ${step.substitutedText} = ${step.rounded} ${step.unit}`.trim())}</li>`,
      )
      .join('');
    return `<li>${question}<p><strong>${answer.toFixed(decimals)} ${escapedXml(unit)}</strong></p><ol class="steps">${steps}</ol></li>`;
  });
  const title = `${sheet.title}${key ? ': key' : ''}`;
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>${escapedXml(title)}</title><style>${STYLE}</style></head>
<body>
<h1>${escapedXml(title)}</h1>
<ol>${items.join('\n')}</ol>
<p>Seed ${sheet.seed}, level ${sheet.level}: the same seed gives the same sheet.</p>
</body>
</html>
`;
}
