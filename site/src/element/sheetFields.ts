/** The fields of a sheet: what was typed, kept on the device over a reload; answers checked, hints one by one. */

import { checkAnswer, checkSteps, type HandedAnswer, type Worksheet } from 'slantpath/teaching';
import {
  hintLabel,
  hintsOf,
  type SheetUse,
  stepSays,
  verdictHtml,
  verdictOn,
} from '../lib/sheet.js';

/** What is kept of a sheet. */
export interface Kept {
  readonly name: string;
  readonly answers: readonly HandedAnswer[];
}

const keyOf = ({ code }: Worksheet) => `class-sheet ${code}`;

/** What this device has of a sheet; nothing where it may not keep anything. */
export function kept(sheet: Worksheet): Kept | undefined {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(keyOf(sheet)) ?? 'null');
    return found && typeof found === 'object' && 'answers' in found ? (found as Kept) : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps what was typed, or forgets it; whether the device lets it. */
export function keep(sheet: Worksheet, of: Kept | undefined): boolean {
  try {
    if (of) localStorage.setItem(keyOf(sheet), JSON.stringify(of));
    else localStorage.removeItem(keyOf(sheet));
    return true;
  } catch {
    return false;
  }
}

const itemsOf = (list: Element) => [...list.querySelectorAll<HTMLElement>('[data-exercise]')];
const answerOf = (item: Element) => item.querySelector<HTMLInputElement>('[data-own-answer]');
const stepsOf = (item: Element) => [...item.querySelectorAll<HTMLInputElement>('[data-own-step]')];

/** What stands in the fields. */
export function typedAnswers(list: Element): readonly HandedAnswer[] {
  return itemsOf(list).map((item) => {
    const steps = stepsOf(item)
      .filter(({ value }) => value.trim() !== '')
      .map(({ dataset, value }) => [dataset['ownStep'] ?? '', value.trim()] as const);
    const answer = answerOf(item)?.value.trim() ?? '';
    return steps.length === 0 ? { answer } : { answer, steps: Object.fromEntries(steps) };
  });
}

/** Puts kept answers back into the fields. */
export function fillAnswers(list: Element, answers: readonly HandedAnswer[]): void {
  itemsOf(list).forEach((item, at) => {
    const { answer = '', steps = {} } = answers[at] ?? {};
    const field = answerOf(item);
    if (field) field.value = String(answer);
    for (const each of stepsOf(item)) {
      each.value = String(steps[each.dataset['ownStep'] ?? ''] ?? '');
      const details = each.closest('details');
      if (each.value !== '' && details) details.open = true;
    }
  });
}

/** The exercise that an event belongs to. */
function at(event: Event, sheet: Worksheet | undefined) {
  const item = (event.target as Element).closest<HTMLElement>('[data-exercise]');
  const index = Number(item?.dataset['exercise'] ?? -1);
  const exercise = sheet?.exercises[index];
  return item && exercise ? { item, index, exercise } : undefined;
}

/** Checks the exercise that was submitted, its steps too where some were typed; its index and whether it is right. */
export function checkTyped(event: Event, sheet: Worksheet | undefined) {
  event.preventDefault();
  const here = at(event, sheet);
  const place = here?.item.querySelector<HTMLElement>('.sheet-verdict');
  if (!here || !place) return undefined;
  const { item, index, exercise } = here;
  const typed = answerOf(item)?.value ?? '';
  const fields = stepsOf(item);
  const steps = Object.fromEntries(
    fields.map(({ dataset, value }) => [dataset['ownStep'] ?? '', value]),
  );
  const last = exercise.solution.steps.at(-1)?.symbol ?? '';
  const all = checkSteps(exercise, { ...steps, [last]: typed });
  for (const field of fields) {
    const says = field.parentElement?.querySelector<HTMLElement>('.sheet-step');
    const step =
      all.kind === 'checked'
        ? all.steps.find(({ symbol }) => symbol === field.dataset['ownStep'])
        : undefined;
    if (!says || !step) continue;
    says.textContent = stepSays(step);
    says.dataset['kind'] = step.kind;
  }
  const verdict = verdictOn(checkAnswer(exercise, typed), exercise);
  place.innerHTML = verdictHtml(verdict);
  place.dataset['kind'] = verdict.kind;
  return { index, right: verdict.kind === 'right' };
}

/** Shows the next hint, if a button for one was pressed. */
export function showHint(event: Event, sheet: Worksheet | undefined, use: SheetUse): void {
  const button = (event.target as Element).closest<HTMLButtonElement>('button[data-hint]');
  const here = at(event, sheet);
  const list = here?.item.querySelector<HTMLElement>('.sheet-hints');
  if (!button || !here || !list) return;
  const seen = list.children.length;
  const hints = hintsOf(here.exercise, use);
  const hint = hints[seen];
  if (hint === undefined) return;
  list.hidden = false;
  list.insertAdjacentHTML('beforeend', hint);
  button.textContent = hintLabel(here.exercise, seen + 1, use);
  button.disabled = seen + 1 === hints.length;
}
