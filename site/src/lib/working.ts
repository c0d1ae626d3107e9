/** The working of an answer, line by line: HTML of a worked solution of the library. */

import { DomainError } from 'slantpath';
import type { WorkedSolution, workedSolution } from 'slantpath/teaching';
import type { Working } from './example.js';
import { localFormula, localNumber, said } from './language/language.js';
import { escapeHtml, shown, withUnit } from './language/text.js';
import type { Words } from './language/words.js';

/** Units as they are printed: those of `printedUnit`, which would bring the whole of teaching to every page. */
const UNITS: Readonly<Record<string, string>> = {
  deg: '°',
  percent: '%',
  dBuV: 'dBµV',
  'degrees Celsius': '°C',
  'percent/K': '%/K',
  'dB/deg²': 'dB/(°)²',
  'kg/m^3': 'kg/m³',
  'm^2': 'm²',
  'm/s^2': 'm/s²',
  'm^4': 'm⁴',
  'N m': 'N·m',
  ohm: 'Ω',
};
/** A printed figure with its unit. */
export const inUnit = (text: string, unit: string) => withUnit(text, UNITS[unit] ?? unit);

/** A formula in plain text with the signs of print: `·`, `−`, `√`. */
export function printed(formula: string): string {
  return formula
    .replaceAll(' * ', ' · ')
    .replaceAll('-', '−')
    .replaceAll('sqrt', '√')
    .replaceAll('^2', '²');
}

/** Solutions of plans; a plan that the inputs lie outside of is left out. */
export function solutionsOf(
  solve: typeof workedSolution,
  workings: readonly Working[],
): readonly WorkedSolution[] {
  return workings.flatMap(({ plan, givens }) => {
    try {
      return [solve(plan, givens)];
    } catch (error) {
      if (error instanceof DomainError) return [];
      throw error;
    }
  });
}

const value = (quantity: { readonly value: number; readonly unit: string }) =>
  inUnit(
    localNumber(String(Number(quantity.value.toPrecision(10))).replaceAll('-', '−')),
    quantity.unit,
  );

/** Solutions as lists of steps; what an earlier one has shown is not shown again. */
export function renderWorkings(words: Words, solutions: readonly WorkedSolution[]): string {
  const seen = new Set<string>();
  const fresh = (line: string) => {
    if (seen.has(line)) return false;
    seen.add(line);
    return true;
  };
  let shownSteps = 0;
  return solutions
    .map((solution) => {
      const title = `<h3>${escapeHtml(said(solution.title))}</h3>`;
      if (solution.kind === 'no-answer')
        return `${title}<p>${words.noAnswer}: ${escapeHtml(said(solution.reason))}.</p>`;
      const known = [...solution.givens, ...solution.constants]
        .map(
          (quantity) =>
            `<li><i>${escapeHtml(quantity.symbol)}</i> = ${escapeHtml(value(quantity))}, ${escapeHtml(said(quantity.meaning))}</li>`,
        )
        .filter(fresh);
      const steps = solution.steps
        .map(
          (step) =>
            `<li><span>${escapeHtml(said(step.meaning))}</span><code>${escapeHtml(printed(localFormula(step.formulaText)))}</code><code>${escapeHtml(printed(localFormula(step.substitutedText)))}</code><code>${escapeHtml(step.symbol)} = <b>${escapeHtml(inUnit(shown(step.rounded, step.decimals), step.unit))}</b></code></li>`,
        )
        .filter(fresh);
      const list = `<ol start="${shownSteps + 1}">${steps.join('')}</ol>`;
      shownSteps += steps.length;
      return `${title}${known.length > 0 ? `<ul>${known.join('')}</ul>` : ''}${list}`;
    })
    .join('');
}
