/** "By hand": the steps of an answer as a person writes them, with the reader's own numbers. */

import type { WorkedSolution } from 'slantpath/teaching';
import type { HandStep } from './example.js';
import { said, words } from './language/language.js';
import { escapeHtml, shown } from './language/text.js';
import { mathml } from './mathml.js';
import { inUnit } from './working.js';

/** Solutions that many pages begin with: folded, since a reader of this page asks for something else. */
const PREPARING = /stand|high|turned/;

/** The steps of worked solutions of the library. */
export const stepsOf = (solutions: readonly WorkedSolution[]): HandStep[] =>
  solutions.flatMap((solution) =>
    solution.kind === 'no-answer'
      ? []
      : solution.steps.map((step) => ({
          says: step.meaning,
          formula: step.formulaTex,
          put: step.substitutedTex,
          of: solution.title,
          result: inUnit(shown(step.rounded, step.decimals), step.unit),
        })),
  );

/** The right side of `x = …`. */
const rightOf = (tex: string) => tex.slice(tex.indexOf('=') + 1);

/** HTML of the steps; a step that repeats an earlier one is left out. Without any, `waits` says why. */
export function renderHand(steps: readonly HandStep[], waits?: string): string {
  if (steps.length === 0) return `<p>${waits ? escapeHtml(said(waits)) : words().noSteps}</p>`;
  const seen = new Set<string>();
  const lines = steps.filter(({ formula, put }) => {
    const key = `${formula}${put ?? ''}`;
    return seen.has(key) ? false : seen.add(key);
  });
  const line = ({ says, formula, put, result }: HandStep) =>
    `<li><p>${escapeHtml(said(says))}</p><div class="hand-line" tabindex="0" role="group" aria-label="${escapeHtml(said(says))}"><span>${mathml(formula)}</span>${put ? `<span>${mathml(`=${rightOf(put)}`)}</span>` : ''}<span>= <b>${escapeHtml(result)}</b></span></div></li>`;
  const titles = [...new Set(lines.map(({ of }) => of ?? ''))];
  let count = 0;
  return titles
    .map((title, at) => {
      const some = lines.filter(({ of }) => (of ?? '') === title);
      const list = `<ol class="hand" start="${count + 1}">${some.map(line).join('')}</ol>`;
      count += some.length;
      const last = some.at(-1);
      const preparing =
        PREPARING.test(title) && titles.slice(at + 1).some((later) => !PREPARING.test(later));
      return preparing
        ? `<details class="ex-fold"><summary>${escapeHtml(said(title))} <b>${escapeHtml(last?.result ?? '')}</b></summary>${list}</details>`
        : list;
    })
    .join('');
}
