/** HTML of a worksheet whose answers are checked on the spot, and what is said of an answer. */

import {
  type AnswerCheck,
  type Exercise,
  printedUnit,
  type SolutionQuantity,
  type StepCheck,
  type Worksheet,
} from 'slantpath/teaching';
import { ENGLISH, localFormula, localNumber, said, spoken } from './language/language.js';
import { escapeHtml, shown } from './language/text.js';
import { inUnit, printed } from './working.js';

const decimals = (count: number) => `${count} ${count === 1 ? 'decimal' : 'decimals'}`;
const inWords = (text: string) => escapeHtml(said(text));

/** What a sheet lets its reader do: the trainer sees all hints, a learner those without numbers, a test none. */
export type SheetUse = 'trainer' | 'practice' | 'test';

/** What is asked for: `Answer in ° to 2 decimals`. */
function asked({ unit, decimals: count }: Exercise): string {
  const to = count === 0 ? 'to a whole number' : `to ${decimals(count)}`;
  return said(`Answer ${unit === '' ? '' : `in ${printedUnit(unit)} `}${to}`);
}

/** A given or a constant with its value. */
function taken({ symbol, meaning, value, unit }: SolutionQuantity): string {
  const number = localNumber(String(Number(value.toPrecision(10))).replace('-', '−'));
  return `<li><i>${escapeHtml(symbol)}</i> = ${escapeHtml(inUnit(number, unit))}, ${inWords(meaning)}</li>`;
}

/** Fields for the steps before the answer, folded away until somebody wants them. */
function stepFields({ solution }: Exercise, id: string): string {
  const rows = solution.steps.slice(0, -1).map(({ symbol, meaning, unit, decimals: count }, at) => {
    const of = unit === '' ? '' : ` <span class="ex-unit">${inWords(printedUnit(unit))}</span>`;
    return `<div class="ex-field"><label for="${id}-step-${at}">${inWords(meaning)}${of}</label><input id="${id}-step-${at}" type="text" maxlength="40" autocomplete="off" spellcheck="false" data-own-step="${escapeHtml(symbol)}" placeholder="${escapeHtml(count === 0 ? '' : said(decimals(count)))}" aria-describedby="${id}-step-${at}-says"><p class="sheet-step" id="${id}-step-${at}-says" role="status"></p></div>`;
  });
  if (rows.length === 0) return '';
  return `<details class="sheet-steps"><summary>${inWords('Steps before the answer')}</summary>${rows.join('')}</details>`;
}

/** One exercise with its fields; hints and verdict are filled in later. */
function question(exercise: Exercise, index: number, use: SheetUse): string {
  const id = `exercise-${index + 1}`;
  const { givens, constants } = exercise.solution;
  const list = [...givens, ...constants].map(taken).join('');
  const round =
    exercise.level === 1 && exercise.text.includes('round Earth will do')
      ? `<p class="ex-hint">${inWords('The formulas of the round Earth will do.')}</p>`
      : '';
  const check = use === 'test' ? '' : `<button>${inWords('Check')}</button>`;
  const hints =
    use === 'test'
      ? ''
      : `<ol class="sheet-hints" hidden></ol><p class="ex-tools"><button type="button" data-hint>${escapeHtml(hintLabel(exercise, 0, use))}</button></p>`;
  return `<li data-exercise="${index}"><h3>${inWords(exercise.solution.title)}</h3><ul>${list}</ul>${round}<form class="ex-field" autocomplete="off">${stepFields(exercise, id)}<label for="${id}">${escapeHtml(asked(exercise))}<span class="sr-only">${inWords(`, exercise ${index + 1}`)}</span></label><div class="sheet-answer"><input id="${id}" type="text" maxlength="40" autocomplete="off" spellcheck="false" data-own-answer aria-describedby="${id}-verdict">${check}</div></form><p class="sheet-verdict" id="${id}-verdict" role="status"></p>${hints}</li>`;
}

/** Why the computation goes as it does: a language has it by the name of the plan. */
const reason = (plan: string, english: string): string =>
  spoken() === ENGLISH ? english : (spoken().find(`why ${plan}`) ?? said(english));

/** The hints of an exercise as HTML: why, the way, the formulas; the numbers put in for the trainer only. */
export function hintsOf({ hints, plan, solution }: Exercise, use: SheetUse): readonly string[] {
  const { steps } = solution;
  const why = hints.length > 2 * steps.length + 1 ? [reason(plan, hints[0] ?? '')] : [];
  const way = steps.map(({ meaning }) => said(meaning)).join(said(', then '));
  const formula = (text: string) => printed(localFormula(text));
  const symbols = steps.map(
    ({ meaning, formulaText }) => `${said(meaning)}: ${formula(formulaText)}`,
  );
  const numbers = steps.map(({ substitutedText, rounded, decimals: count, unit }, at) =>
    at === steps.length - 1
      ? formula(substitutedText)
      : `${formula(substitutedText)} = ${inUnit(shown(rounded, count), unit)}`,
  );
  return [
    ...why,
    `${said('The way:')} ${way}.`,
    ...symbols,
    ...(use === 'trainer' ? numbers : []),
  ].map((text) => `<li>${escapeHtml(text)}</li>`);
}

/** What the button of the hints says after some of them. */
export function hintLabel(exercise: Exercise, seen: number, use: SheetUse): string {
  const count = hintsOf(exercise, use).length;
  return said(seen < count ? `Hint ${seen + 1} of ${count}` : 'No more hints');
}

/** All exercises of a sheet. */
export function renderSheet(sheet: Worksheet, use: SheetUse): string {
  return sheet.exercises.map((exercise, index) => question(exercise, index, use)).join('');
}

/** What is said beside a step. */
export function stepSays({ kind, slips }: StepCheck): string {
  switch (kind) {
    case 'right':
      return said('right');
    case 'carried-forward':
      return said('right from what stands before it');
    case 'wrong':
      return [said('not right'), ...slips.map(({ explanation }) => said(explanation))].join(': ');
    case 'wrong-unit':
      return said('the unit is not the one asked for');
    case 'unreadable':
      return said('not a number');
    case 'empty':
      return '';
  }
}

/** A verdict: a sign, a sentence, and the slips that would explain the answer. */
export interface Verdict {
  readonly kind: AnswerCheck['kind'];
  readonly says: string;
  readonly slips: readonly string[];
}

/** What is said of an answer; the exact value is not given away. */
export function verdictOn(check: AnswerCheck, exercise: Exercise): Verdict {
  const of = (says: string, slips: readonly string[] = []): Verdict => ({
    kind: check.kind,
    says,
    slips,
  });
  switch (check.kind) {
    case 'right': {
      const notes = [
        ...(check.by === 'round-earth' ? ['By the round Earth, which will do here.'] : []),
        ...(check.moreDecimals
          ? [`It shows more than the ${decimals(exercise.decimals)} asked for.`]
          : []),
      ];
      return of('✓ Right.', notes);
    }
    case 'other-way':
      return of(
        `≈ Right for a round Earth, off by ${shown(Math.abs(check.error), exercise.decimals)} ${printedUnit(exercise.unit)} from the ellipsoid asked for.`,
        check.slips.length === 0
          ? []
          : ['A slip would give this too:', ...check.slips.map(({ explanation }) => explanation)],
      );
    case 'wrong-unit':
      return of(
        `≈ The number is right, its unit is not: ${printedUnit(check.unit)} was typed, ${check.askedUnit === '' ? 'a plain number' : printedUnit(check.askedUnit)} asked for.`,
      );
    case 'badly-rounded':
      return of(
        `≈ Nearly: rounded too early or too far, off by ${shown(Math.abs(check.error), exercise.decimals + 1)}. Keep all digits until the end and give ${decimals(check.decimals)}.`,
      );
    case 'other-unit':
      return of(
        `≈ This would be right in ${printedUnit(check.unit)}; asked for was ${check.askedUnit === '' ? 'a plain number' : printedUnit(check.askedUnit)}.`,
      );
    case 'wrong': {
      const slips = [
        ...check.slips.map(({ explanation }) => explanation),
        ...(check.perhapsRounded ? ['Or the right answer, rounded to too few decimals.'] : []),
        ...(check.wrongUnit === ''
          ? []
          : [`The unit is not the one asked for either: ${check.wrongUnit}.`]),
      ];
      if (check.slips.length === 0) return of('✗ Not right, and no usual slip gives this.', slips);
      if (check.together) return of('✗ Not right. Probably two slips at once:', slips);
      return of(
        check.slips.length === 1
          ? '✗ Not right. The likely slip:'
          : '✗ Not right. One of these slips:',
        slips,
      );
    }
    case 'unreadable':
      return of('? This is not a number.');
    case 'no-answer':
      return of(`? There is no answer: ${check.reason}.`);
  }
}

/** A verdict as HTML. */
export function verdictHtml({ says, slips }: Verdict): string {
  return [says, ...slips].map((text) => escapeHtml(said(text))).join('<br>');
}
