/** A worksheet as one HTML document for the printer, with or without the key. */

import { knownOnly } from '../../keys.js';
import { solutionPlan } from '../plans/index.js';
import type { Exercise } from './exercise.js';
import { escapedXml } from './exportQti.js';
import { mostMarksOf } from './marks.js';
import { printedFormula, printedNumber, printedUnit } from './printed.js';
import { tablesFor } from './tables.js';
import type { Worksheet } from './worksheet.js';

const STYLE = `
@page { size: A4; margin: 15mm; }
body { font: 11pt/1.4 system-ui, sans-serif; color: #111; background: #fff; max-width: 180mm; margin: 0 auto; padding: 4mm; }
h1 { font-size: 15pt; margin: 0 0 3mm; } h2 { font-size: 12pt; break-before: page; }
header p { display: flex; gap: 6mm; margin: 0 0 6mm; } header span { flex: 1; border-bottom: 0.2mm solid #111; }
header span.short { flex: 0 0 32mm; }
ol.sheet > li { margin: 0 0 6mm; break-inside: avoid; padding-left: 1mm; }
.marks { float: right; margin-left: 4mm; } ul { margin: 1mm 0; padding-left: 5mm; }
.room { height: 34mm; border: 0.2mm solid #bbb; margin: 2mm 0; }
.line { border-bottom: 0.2mm solid #111; display: inline-block; width: 40mm; }
ol.steps { font-size: 9.5pt; } ol.steps li { margin: 0 0 1mm; }
table { border-collapse: collapse; font-size: 9pt; break-inside: avoid; margin: 4mm 0; }
th, td { border: 0.2mm solid #999; padding: 0.4mm 2mm; text-align: right; } caption { text-align: left; }
table.answers { font-size: 11pt; } table.answers td { white-space: nowrap; } table.answers td:nth-child(2) { white-space: normal; } table.answers td:nth-child(2) { text-align: left; }
footer { font-size: 9pt; margin-top: 6mm; }
`;

const marks = (count: number) => `${count} ${count === 1 ? 'mark' : 'marks'}`;

const withUnit = (number: string, unit: string) =>
  `${number}${unit === 'deg' || unit === '' ? '' : ' '}${printedUnit(unit)}`;

/** The question: title, givens and constants one a line, what is asked for. */
function question({ solution, text, decimals, unit }: Exercise): string {
  const taken = [...solution.givens, ...solution.constants].map(
    ({ symbol, meaning, value, unit: own }) =>
      `<li><i>${escapedXml(symbol)}</i> = ${escapedXml(withUnit(printedNumber(value), own))}, ${escapedXml(meaning)}</li>`,
  );
  const round = text.includes('round Earth will do')
    ? ' The formulas of the round Earth will do.'
    : '';
  const to =
    decimals === 0 ? 'a whole number' : `${decimals} ${decimals === 1 ? 'decimal' : 'decimals'}`;
  return `<strong>${escapedXml(solution.title)}</strong><ul>${taken.join('')}</ul><p>Answer${unit === '' ? '' : ` in ${escapedXml(printedUnit(unit))}`} to ${to}.${round}</p>`;
}

/** A worked solution: each step in symbols, with the numbers, and its value. */
const worked = ({ solution }: Exercise): string =>
  solution.steps
    .map(
      ({ meaning, formulaText, substitutedText, rounded, decimals, unit }) =>
        `<li>${escapedXml(meaning)}: ${escapedXml(printedFormula(formulaText))}<br>${escapedXml(`${printedFormula(substitutedText)} = ${withUnit(printedNumber(rounded, decimals), unit)}`)}</li>`,
    )
    .join('');

/** All answers on one page. */
function answerList(sheet: Worksheet): string {
  const rows = sheet.exercises.map(
    (each, at) =>
      `<tr><th>${at + 1}</th><td>${escapedXml(each.solution.title)}</td><td>${escapedXml(withUnit(printedNumber(each.answer, each.decimals), each.unit))}</td><td>± ${escapedXml(printedNumber(Number(each.tolerance.toPrecision(2))))}</td><td>${mostMarksOf(each)}</td></tr>`,
  );
  return `<table class="answers"><tr><th></th><th>Question</th><th>Answer</th><th>Right within</th><th>Marks</th></tr>${rows.join('')}</table>`;
}

/**
 * A worksheet for the printer.
 *
 * @param sheet  From {@link worksheet}.
 * @param options  `key: true` prints a list of answers and the worked solutions instead of room to work in.
 * @returns One self-contained HTML document; the code at its foot makes sheet and key again (`worksheetOfCode`).
 *
 * Source: the worksheet.
 * @example
 * ```ts
 * import { worksheet, worksheetHtml } from 'slantpath/teaching';
 * worksheetHtml(worksheet({ seed: 3, count: 2 }), { key: true }).includes('ol class="steps"'); // => true
 * ```
 */
export function worksheetHtml(sheet: Worksheet, options: { readonly key?: boolean } = {}): string {
  const { key = false } = knownOnly('options', options, { key: true });
  const total = sheet.exercises.reduce((sum, each) => sum + mostMarksOf(each), 0);
  const items = sheet.exercises.map((each) => {
    const asked = `<span class="marks">${key ? '' : '___ / '}${marks(mostMarksOf(each))}</span>${question(each)}`;
    return key
      ? `<li>${asked}<p><strong>${escapedXml(withUnit(printedNumber(each.answer, each.decimals), each.unit))}</strong></p><ol class="steps">${worked(each)}</ol></li>`
      : `<li>${asked}<div class="room"></div><p>Answer: <span class="line"></span> ${escapedXml(printedUnit(each.unit))}</p></li>`;
  });
  const title = `${sheet.title}${key ? ': key' : ''}`;
  const head = key
    ? `<p>${marks(total)} in all: one for each step. A step that goes on rightly from a wrong one keeps its mark.</p>${answerList(sheet)}<h2>Worked solutions</h2>`
    : `<p>Name <span></span> Date <span class="short"></span> Marks <span class="short"></span> of ${total}</p>`;
  const plans = sheet.exercises.map(({ plan }) => solutionPlan(plan));
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>${escapedXml(title)}</title><style>${STYLE}</style></head>
<body>
<header><h1>${escapedXml(title)}</h1>${head}</header>
<ol class="sheet">${items.join('\n')}</ol>
${tablesFor(plans)}
<footer>Code ${escapedXml(sheet.code)}: it makes this sheet and its key again.</footer>
</body>
</html>
`;
}
