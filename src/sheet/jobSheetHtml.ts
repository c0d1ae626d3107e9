/** The job sheet as one HTML document that prints on one or two pages. */

import type { JobRecord } from '../job/index.js';
import type { SheetBlock } from './blocks.js';
import { planBlocks } from './planBlocks.js';
import { resultBlocks } from './resultBlocks.js';
import { englishWords, type SheetWords } from './words/en.js';

/** Styles of the sheet: ink on paper, two columns in print where the tables allow it. */
const STYLE = `
@page { size: A4; margin: 12mm; }
body { font: 10pt/1.35 system-ui, sans-serif; color: #111; background: #fff; max-width: 190mm; margin: 0 auto; padding: 4mm; }
h1 { font-size: 14pt; margin: 0 0 1mm; }
h2 { font-size: 10.5pt; margin: 4mm 0 1mm; border-bottom: 0.3mm solid #111; break-after: avoid; }
p { margin: 0.5mm 0; }
.detail { padding-left: 4mm; }
.caution { font-size: 8.5pt; padding-left: 4mm; text-indent: -4mm; }
.caution::before { content: "! "; font-weight: 700; display: inline-block; width: 4mm; text-indent: 0; }
table { border-collapse: collapse; width: 100%; margin: 1mm 0; font-size: 9pt; font-variant-numeric: tabular-nums; break-inside: avoid; }
th, td { padding: 0.4mm 1.5mm; border-bottom: 0.1mm solid #999; text-align: right; }
th { font-weight: 600; border-bottom-color: #111; }
.left { text-align: left; }
.signature { margin-top: 8mm; display: flex; gap: 10mm; }
.signature span { flex: 1; border-top: 0.2mm solid #111; padding-top: 1mm; font-size: 8.5pt; }
`;

/** Text made harmless in HTML. */
function escaped(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

function blockHtml(block: SheetBlock): string {
  if (typeof block === 'string') return `<p>${escaped(block)}</p>`;
  switch (block.kind) {
    case 'section':
      return `<h2>${escaped(block.title)}</h2>`;
    case 'detail':
    case 'caution':
      return `<p class="${block.kind}">${escaped(block.text)}</p>`;
    case 'table': {
      const cells = (row: readonly string[], tag: 'th' | 'td') =>
        row
          .map((text, column) => {
            const side = block.left.includes(column) ? ' class="left"' : '';
            return `<${tag}${tag === 'th' ? ' scope="col"' : ''}${side}>${escaped(text)}</${tag}>`;
          })
          .join('');
      return `<table><thead><tr>${cells(block.header, 'th')}</tr></thead><tbody>${block.rows
        .map((row) => `<tr>${cells(row, 'td')}</tr>`)
        .join('')}</tbody></table>`;
    }
  }
}

/**
 * Job sheet of a record as one self-contained HTML document for the printer.
 *
 * @param record  From `recordJob`. Everything it holds is escaped, its format and version too, so that a received
 *   record cannot carry markup.
 * @param words  The words; English when left out.
 * @returns The document; no script, no outside file.
 *
 * Source: the record. Accuracy: rounded for reading, the record keeps all digits.
 * @example
 * ```ts
 * import { parseJob, recordJob } from 'slantpath/job';
 * import { jobSheetHtml } from 'slantpath/sheet';
 * const job = parseJob({
 *   format: 'slantpath-job', version: 1, title: 'One slot', date: '2026-07-14',
 *   station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
 *   antenna: { diameterM: 0.9, apertureEfficiencyRatio: 0.65, offsetAngleDeg: 24.6 },
 *   receiver: { noiseFigureDb: 0.7, gainDb: 56 },
 *   slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4, carriers: [{
 *     name: 'Ku', frequencyGHz: 12.5, polarization: 'horizontal', eirpDbw: 51,
 *     symbolRateMBd: 27.5, mode: 'QPSK 3/4', intermediateFrequencyMHz: 1900,
 *   }] }],
 *   horizon: { north: 'true', samples: [] },
 *   rain: { source: 'climate-grid' },
 *   target: { exceededPercent: 0.1, pointingLossDb: 0.3 },
 *   distribution: { kind: 'outlet', name: 'desk' },
 *   peaking: [],
 *   readings: [{
 *     quantity: 'level', testPoint: 'desk', slot: 'middle', carrier: 'Ku', levelDbuv: 46.9, expandedUncertaintyDb: 2,
 *   }],
 *   limits: [{ testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 }],
 * });
 * const html = jobSheetHtml(recordJob({ ...job, title: 'Hut <1>' }));
 * html.includes('<h1>Job sheet: Hut &lt;1&gt;</h1>'); // => true
 * ```
 */
export function jobSheetHtml(record: JobRecord, words: SheetWords = englishWords): string {
  const { job } = record;
  const title = escaped(words.head.title(job.title));
  const day = words.head.day(job.date ?? '-', `${record.format} ${record.version}`);
  return `<!doctype html>
<html lang="${escaped(words.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${STYLE}</style>
</head>
<body>
<h1>${title}</h1>
<p>${escaped(day)}</p>
${[...planBlocks(record, words), ...resultBlocks(record, words)].map(blockHtml).join('\n')}
<div class="signature"><span>${escaped(words.head.doneBy)}</span><span>${escaped(words.head.seenBy)}</span></div>
</body>
</html>
`;
}
