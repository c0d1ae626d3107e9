/** Between the fields of a form and the raw state of an example. */

import type { AnyRows, Inputs } from '../lib/inputs/inputs.js';
import { joinRows, type Raw } from '../lib/inputs/state.js';
import { localNumber, words } from '../lib/language/language.js';
import { renderRows } from '../lib/render.js';

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** The table inputs of an example. */
export function tablesOf(inputs: Inputs): Map<string, AnyRows> {
  return new Map(
    Object.entries(inputs).filter((entry): entry is [string, AnyRows] => entry[1].kind === 'rows'),
  );
}

/** The control of a field. */
export function controlOf(root: Element, field: string): Control | null {
  return root.querySelector<Control>(`[name="${field}"]`);
}

const isBox = (control: Element | null): control is HTMLInputElement =>
  control instanceof HTMLInputElement && control.type === 'checkbox';

const isNumber = (control: Control) => control.dataset['number'] !== undefined;

/** What stands in a control; a number with a decimal point, so that a link says the same in every language. */
const textIn = (control: Control) =>
  isNumber(control) ? control.value.replace(/^([^,]*\d),(\d[^,]*)$/, '$1.$2') : control.value;

/** The cells of a table input, row by row. */
export function cellsOf(root: Element, name: string): string[][] {
  return [...root.querySelectorAll(`[data-rows="${name}"] tbody tr`)].map((row) =>
    [...row.querySelectorAll<Control>('[data-cell]')].map(textIn),
  );
}

/** Draws the rows of a table input anew. */
export function fillTable(root: Element, name: string, input: AnyRows, line: string): void {
  const body = root.querySelector(`[data-rows="${name}"] tbody`);
  if (body) body.innerHTML = renderRows(words(), name, input, line);
}

/** The boxes of an input with several options; none for any other input. */
function boxesOf(root: Element, field: string): HTMLInputElement[] {
  return [...root.querySelectorAll<HTMLInputElement>(`[data-several="${field}"] input`)];
}

/** Ticks the boxes that a state names. */
function tickBoxes(root: Element, field: string, line: string): void {
  const ticked = line.split('*');
  for (const box of boxesOf(root, field)) box.checked = ticked.includes(box.value);
}

/** Shows the fields that belong to what is chosen, hides the others. */
export function showFitting(root: Element, raw: Raw): void {
  for (const field of root.querySelectorAll<HTMLElement>('[data-only-for]')) {
    const chosen = raw[field.dataset['onlyFor'] ?? ''] ?? '';
    field.hidden = !(field.dataset['values'] ?? '').split(' ').includes(chosen);
  }
}

/** Writes a state into the form. */
export function fillForm(root: Element, inputs: Inputs, raw: Raw): void {
  const tables = tablesOf(inputs);
  for (const [field, value] of Object.entries(raw)) {
    const table = tables.get(field);
    const control = controlOf(root, field);
    tickBoxes(root, field, value);
    if (table) fillTable(root, field, table, value);
    else if (isBox(control)) control.checked = value === 'yes';
    else if (control) control.value = isNumber(control) ? localNumber(value) : value;
  }
}

/** Reads the state from the form; `fields` are the names in the state. */
export function readForm(root: Element, inputs: Inputs, fields: readonly string[]): Raw {
  const tables = tablesOf(inputs);
  return Object.fromEntries(
    fields.map((field) => {
      if (tables.has(field)) return [field, joinRows(cellsOf(root, field))];
      const boxes = boxesOf(root, field);
      if (boxes.length > 0)
        return [
          field,
          boxes
            .filter((box) => box.checked)
            .map((box) => box.value)
            .join('*'),
        ];
      const control = controlOf(root, field);
      if (isBox(control)) return [field, control.checked ? 'yes' : 'no'];
      return [field, control ? textIn(control) : ''];
    }),
  );
}
