/** HTML of a worksheet whose answers are checked on the spot, and what is said of an answer. */

import type { AnswerCheck, Exercise, Worksheet } from 'slantpath/teaching';
import { escapeHtml, shown, withUnit } from './language/text.js';
import { printed } from './working.js';

const unitOf = (unit: string) => (unit === 'deg' ? '°' : unit);
const decimals = (count: number) => `${count} ${count === 1 ? 'decimal' : 'decimals'}`;

/** What is asked for: `Answer in ° to 2 decimals`. */
function asked({ unit, decimals: count }: Exercise): string {
  const to = count === 0 ? 'to a whole number' : `to ${decimals(count)}`;
  return `Answer ${unit === '' ? '' : `in ${unitOf(unit)} `}${to}`;
}

/** One exercise with its field; hints and verdict are filled in later. */
function question(exercise: Exercise, index: number): string {
  const id = `exercise-${index + 1}`;
  const { givens: given, constants } = exercise.solution;
  const givens = [...given, ...constants]
    .map(
      ({ symbol, meaning, value, unit }) =>
        `<li><i>${escapeHtml(symbol)}</i> = ${escapeHtml(withUnit(String(Number(value.toPrecision(10))).replace('-', '−'), unitOf(unit)))}, ${escapeHtml(meaning)}</li>`,
    )
    .join('');
  return `<li data-exercise="${index}"><h3>${escapeHtml(exercise.solution.title)}</h3><ul>${givens}</ul><form class="ex-field" autocomplete="off"><label for="${id}">${escapeHtml(asked(exercise))}<span class="sr-only">, exercise ${index + 1}</span></label><div class="sheet-answer"><input id="${id}" type="text" autocomplete="off" spellcheck="false" aria-describedby="${id}-verdict"><button>Check</button></div></form><p class="sheet-verdict" id="${id}-verdict" role="status"></p><ol class="sheet-hints" hidden></ol><p class="ex-tools"><button type="button" data-hint>${hintLabel(exercise, 0)}</button></p></li>`;
}

/** What the button of the hints says after some of them. */
export function hintLabel({ hints }: Exercise, seen: number): string {
  return seen < hints.length ? `Hint ${seen + 1} of ${hints.length}` : 'No more hints';
}

/** A hint as it is printed: words as they are, a formula with the signs of print. */
export function hintHtml(hint: string): string {
  const start = Math.max(0, hint.lastIndexOf(': '));
  const formula = hint.slice(start);
  const text = formula.includes(' = ') ? hint.slice(0, start) + printed(formula) : hint;
  return `<li>${escapeHtml(text)}</li>`;
}

/** All exercises of a sheet. */
export function renderSheet(sheet: Worksheet): string {
  return sheet.exercises.map(question).join('');
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
        `≈ Right for a round Earth, off by ${shown(Math.abs(check.error), exercise.decimals)} ${unitOf(exercise.unit)} from the ellipsoid asked for.`,
      );
    case 'wrong-unit':
      return of(
        `≈ The number is right, its unit is not: ${check.unit} was typed, ${check.askedUnit === '' ? 'a plain number' : unitOf(check.askedUnit)} asked for.`,
      );
    case 'badly-rounded':
      return of(
        `≈ Nearly: rounded too early or too far, off by ${shown(Math.abs(check.error), exercise.decimals + 1)}. Keep all digits until the end and give ${decimals(check.decimals)}.`,
      );
    case 'other-unit':
      return of(
        `≈ This would be right in ${check.unit}; asked for was ${check.askedUnit === '' ? 'a plain number' : unitOf(check.askedUnit)}.`,
      );
    case 'wrong': {
      const slips = [
        ...check.slips.map(({ explanation }) => explanation),
        ...(check.perhapsRounded ? ['Or the right answer, rounded to too few decimals.'] : []),
        ...(check.wrongUnit === ''
          ? []
          : [`The unit is not the one asked for either: ${check.wrongUnit}.`]),
      ];
      if (check.slips.length === 0)
        return of('✗ Not right, and no usual slip gives this. Take a hint.', slips);
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
  return [says, ...slips].map(escapeHtml).join('<br>');
}
