/** The working of an answer, line by line: HTML of a worked solution of the library. */

import type { WorkedSolution } from 'slantpath/teaching';
import { escapeHtml, shown, withUnit } from './text.js';

/** Units as they are printed. */
const UNITS: Readonly<Record<string, string>> = { deg: '°' };
const inUnit = (text: string, unit: string) => withUnit(text, UNITS[unit] ?? unit);

/** A formula in plain text with the signs of print: `·`, `−`, `√`. */
export function printed(formula: string): string {
  return formula
    .replaceAll(' * ', ' · ')
    .replaceAll('-', '−')
    .replaceAll('sqrt', '√')
    .replaceAll('^2', '²');
}

const value = (quantity: { readonly value: number; readonly unit: string }) =>
  inUnit(String(Number(quantity.value.toPrecision(10))).replace('-', '−'), quantity.unit);

/** One solution as a list of steps. */
export function renderWorking(solution: WorkedSolution): string {
  if (solution.kind === 'no-answer')
    return `<h4>${escapeHtml(solution.title)}</h4><p>There is no answer: ${escapeHtml(solution.reason)}.</p>`;
  const known = [...solution.givens, ...solution.constants]
    .map(
      (quantity) =>
        `<li><i>${escapeHtml(quantity.symbol)}</i> = ${escapeHtml(value(quantity))}, ${escapeHtml(quantity.meaning)}</li>`,
    )
    .join('');
  const steps = solution.steps
    .map(
      (step) =>
        `<li><span>${escapeHtml(step.meaning)}</span><code>${escapeHtml(printed(step.formulaText))}</code><code>${escapeHtml(printed(step.substitutedText))}</code><code>${escapeHtml(step.symbol)} = <b>${escapeHtml(inUnit(shown(step.rounded, step.decimals), step.unit))}</b></code></li>`,
    )
    .join('');
  return `<h4>${escapeHtml(solution.title)}</h4><ul>${known}</ul><ol>${steps}</ol>`;
}
