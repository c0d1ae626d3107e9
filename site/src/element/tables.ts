/** Table inputs: rows come, go, and are pasted from a spreadsheet. */

import type { AnyRows, Inputs } from '../lib/inputs/inputs.js';
import { pasted } from '../lib/inputs/pasted.js';
import { joinRows } from '../lib/inputs/state.js';
import { cellsOf, fillTable, tablesOf } from './form.js';

/** Listens within `root`; `changed` is called after each change of the rows. */
export function listenToTables(root: HTMLElement, inputs: Inputs, changed: () => void): void {
  const tables = tablesOf(inputs);
  const within = (element: Element): [string, AnyRows] | undefined => {
    const name = element.closest<HTMLElement>('[data-rows]')?.dataset['rows'] ?? '';
    const input = tables.get(name);
    return input && [name, input];
  };
  const focus = (name: string, what: string) =>
    root.querySelector<HTMLElement>(`[data-rows="${name}"] ${what}`)?.focus();

  root.addEventListener('click', (event) => {
    const button = (event.target as Element).closest<HTMLElement>('[data-add], [data-remove]');
    const table = button && within(button);
    if (!table) return;
    const [name, input] = table;
    const cells = cellsOf(root, name);
    const removed = button.dataset['remove'];
    if (removed === undefined) {
      cells.push(Object.keys(input.columns).map((column) => String(input.add[column])));
      fillTable(root, name, input, joinRows(cells));
      focus(name, 'tbody tr:last-child [data-cell]');
    } else {
      cells.splice(Number(removed), 1);
      fillTable(root, name, input, joinRows(cells));
      const next = Math.min(Number(removed), cells.length - 1);
      focus(name, next < 0 ? '[data-add]' : `[data-remove="${next}"]`);
    }
    changed();
  });

  root.addEventListener('paste', (event) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    const control = event.target;
    if (!(control instanceof HTMLElement) || !control.dataset['cell']) return;
    const table = within(control);
    const line = control.closest('tr');
    if (!table || !line || !/[\t\n;]/.test(text.trim())) return;
    event.preventDefault();
    const [name, input] = table;
    const row = [...(line.parentElement?.children ?? [])].indexOf(line);
    const column = [...line.querySelectorAll('[data-cell]')].indexOf(control);
    fillTable(root, name, input, joinRows(pasted(cellsOf(root, name), text, row, column)));
    changed();
  });
}
