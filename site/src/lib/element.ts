/**
 * `<worked-example>`: brings a worked example to life that was drawn when the site was built.
 *
 * The element owns the form in it. Each change is computed at once by the library; the state goes into the URL.
 */

import { DomainError } from 'slantpath';
import type { Example, View } from './example.js';
import type { AnyRows, Inputs } from './inputs.js';
import { PRESETS } from './places.js';
import { renderRows, renderView } from './render.js';
import {
  blamedField,
  decodeState,
  defaultsOf,
  encodeState,
  joinRows,
  PLACE_FIELDS,
  type Raw,
  readValues,
  splitRows,
} from './state.js';
import { typed } from './text.js';

const modules = import.meta.glob<{ default: Example }>('../examples/*.ts');

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** A number after some steps, without the noise of binary fractions. */
function stepped(value: number, step: number, steps: number, min?: number, max?: number): number {
  const decimals = (String(step).split('.')[1] ?? '').length;
  const kept = (String(value).split('.')[1] ?? '').length;
  const next = Number((value + step * steps).toFixed(Math.max(decimals, Math.min(kept, 8))));
  return Math.min(Math.max(next, min ?? -Infinity), max ?? Infinity);
}

class WorkedExample extends HTMLElement {
  #example: Example | undefined;
  #defaults: Raw = {};
  #raw: Raw = {};
  #view: View | undefined;
  #answer: { values: unknown; result: unknown } | undefined;
  #later = 0;

  async connectedCallback(): Promise<void> {
    if (this.#example) return;
    const load = modules[`../examples/${this.dataset['example']}.ts`];
    if (!load) return;
    this.#example = (await load()).default;
    this.#defaults = defaultsOf(this.#example.inputs);
    this.#raw = decodeState(location.search, this.#defaults);
    this.#fill();
    this.addEventListener('input', () => this.#changed());
    this.addEventListener('change', (event) => this.#chosen(event));
    this.addEventListener('click', (event) => this.#pressed(event));
    this.addEventListener('keydown', (event) => this.#key(event));
    this.addEventListener('paste', (event) => this.#paste(event));
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    addEventListener('popstate', () => {
      this.#raw = decodeState(location.search, this.#defaults);
      this.#fill();
      this.#update();
    });
    this.#update();
    this.dataset['ready'] = '';
  }

  get #inputs(): Inputs {
    return this.#example?.inputs ?? {};
  }

  #tables(): [string, AnyRows][] {
    return Object.entries(this.#inputs).filter(
      (entry): entry is [string, AnyRows] => entry[1].kind === 'rows',
    );
  }

  #control(field: string): Control | null {
    return this.querySelector<Control>(`[name="${field}"]`);
  }

  /** Writes the state into the form. */
  #fill(): void {
    const tables = new Map(this.#tables());
    for (const [field, value] of Object.entries(this.#raw)) {
      const table = tables.get(field);
      const control = this.#control(field);
      if (table) this.#fillTable(field, table, value);
      else if (control instanceof HTMLInputElement && control.type === 'checkbox')
        control.checked = value === 'yes';
      else if (control) control.value = value;
    }
    this.#showPresets();
  }

  #fillTable(name: string, input: AnyRows, line: string): void {
    const body = this.querySelector(`[data-rows="${name}"] tbody`);
    if (body) body.innerHTML = renderRows(name, input, line);
  }

  /** Reads the state from the form. */
  #read(): Raw {
    const tables = new Set(this.#tables().map(([name]) => name));
    return Object.fromEntries(
      Object.keys(this.#defaults).map((field) => {
        if (tables.has(field)) return [field, joinRows(this.#cells(field))];
        const control = this.#control(field);
        if (control instanceof HTMLInputElement && control.type === 'checkbox')
          return [field, control.checked ? 'yes' : 'no'];
        return [field, control?.value ?? ''];
      }),
    );
  }

  #cells(name: string): string[][] {
    return [...this.querySelectorAll(`[data-rows="${name}"] tbody tr`)].map((row) =>
      [...row.querySelectorAll<Control>('[data-cell]')].map((control) => control.value),
    );
  }

  #changed(): void {
    this.#raw = this.#read();
    this.#showPresets();
    this.#update();
    clearTimeout(this.#later);
    this.#later = window.setTimeout(() => {
      const query = encodeState(this.#raw, this.#defaults);
      history.replaceState(
        history.state,
        '',
        query ? `?${query}${location.hash}` : location.pathname + location.hash,
      );
    }, 300);
  }

  #update(): void {
    const example = this.#example;
    if (!example) return;
    this.#clearErrors();
    try {
      const values = readValues(example.inputs, this.#raw);
      const result = example.compute(values);
      this.#view = example.view(result, values);
      this.#answer = { values, result };
      this.#show(this.#view);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      this.#answer = undefined;
      this.#showError(error);
    }
  }

  #show(view: View): void {
    const answer = this.querySelector<HTMLElement>('.ex-answer');
    if (!answer) return;
    const open = [...answer.querySelectorAll('details')].map((details) => details.open);
    answer.innerHTML = renderView(view);
    answer.querySelectorAll('details').forEach((details, index) => {
      details.open = open[index] ?? false;
    });
    answer.removeAttribute('data-stale');
    this.#say(view.says);
  }

  /** Tells assistive software the answer, once typing has paused. */
  #say(text: string): void {
    const status = this.querySelector<HTMLElement>('[role="status"]');
    if (status && this.dataset['ready'] !== undefined) status.textContent = text;
  }

  #showError(error: DomainError): void {
    const mapped = this.#example?.fieldOf?.(error.parameter);
    const cell = this.querySelector<HTMLElement>(`[data-cell="${CSS.escape(error.parameter)}"]`);
    const field = mapped ?? blamedField(this.#inputs, error.parameter);
    const control = cell ?? (field ? this.#control(field) : null);
    control?.setAttribute('aria-invalid', 'true');
    const table = field ? this.querySelector(`[data-rows="${field}"]`) : null;
    const slot =
      (control && !cell
        ? control.closest('.ex-field')?.querySelector<HTMLElement>('.ex-error')
        : null) ??
      table?.querySelector<HTMLElement>('.ex-error') ??
      this.querySelector<HTMLElement>('.ex-general');
    const name = control
      ?.closest('.ex-field')
      ?.querySelector('label')
      ?.firstChild?.textContent?.trim();
    const message = name && !cell ? error.message.replace(error.parameter, name) : error.message;
    if (slot) {
      slot.textContent = message;
      slot.hidden = false;
    }
    this.querySelector('.ex-answer')?.setAttribute('data-stale', '');
    this.#say(message);
  }

  #clearErrors(): void {
    for (const slot of this.querySelectorAll<HTMLElement>('.ex-error')) slot.hidden = true;
    for (const control of this.querySelectorAll('[aria-invalid]'))
      control.removeAttribute('aria-invalid');
  }

  #showPresets(): void {
    for (const group of this.querySelectorAll<HTMLElement>('[data-place]')) {
      const fields = (group.dataset['place'] ?? '').split(' ');
      const index = PRESETS.findIndex((preset) =>
        PLACE_FIELDS.every((field, i) => typed(this.#raw[fields[i] ?? ''] ?? '') === preset[field]),
      );
      const select = group.querySelector<HTMLSelectElement>('[data-preset]');
      if (select) select.value = index < 0 ? '' : String(index);
    }
  }

  /** Puts a place into the three fields of a group. */
  #setPlace(group: HTMLElement, place: readonly number[]): void {
    (group.dataset['place'] ?? '').split(' ').forEach((field, index) => {
      const control = this.#control(field);
      if (control && place[index] !== undefined) control.value = String(place[index]);
    });
    this.#changed();
  }

  #chosen(event: Event): void {
    const select = event.target;
    if (!(select instanceof HTMLSelectElement) || select.dataset['preset'] === undefined) return;
    const preset = PRESETS[Number(select.value)];
    const group = select.closest<HTMLElement>('[data-place]');
    if (preset && group && select.value !== '')
      this.#setPlace(
        group,
        PLACE_FIELDS.map((field) => preset[field]),
      );
  }

  #pressed(event: Event): void {
    const button = (event.target as Element).closest('button');
    if (!button) return;
    const { step, remove, copy } = button.dataset;
    if (step) {
      const control = button.parentElement?.querySelector('input');
      if (control) this.#step(control, Number(step));
    } else if (button.dataset['add'] !== undefined) this.#addRow(button);
    else if (remove !== undefined) this.#removeRow(button, Number(remove));
    else if (button.dataset['locate'] !== undefined) this.#locate(button);
    else if (copy) void this.#copy(button, copy);
    else if (button.dataset['print'] !== undefined) window.print();
    else if (button.dataset['reset'] !== undefined) {
      this.#raw = this.#defaults;
      this.#fill();
      this.#changed();
    }
  }

  #step(control: HTMLInputElement, steps: number): void {
    const { number, min, max } = control.dataset;
    const value = typed(control.value);
    const from = Number.isNaN(value) ? 0 : value;
    const bound = (text: string | undefined) => (text === undefined ? undefined : Number(text));
    control.value = String(stepped(from, Number(number), steps, bound(min), bound(max)));
    this.#changed();
  }

  #key(event: KeyboardEvent): void {
    const control = event.target;
    if (!(control instanceof HTMLInputElement) || control.dataset['number'] === undefined) return;
    const steps = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (steps === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    this.#step(control, event.shiftKey ? steps * 10 : steps);
  }

  #table(within: Element): [string, AnyRows] | undefined {
    const name = within.closest<HTMLElement>('[data-rows]')?.dataset['rows'];
    return this.#tables().find(([one]) => one === name);
  }

  #addRow(button: Element): void {
    const table = this.#table(button);
    if (!table) return;
    const [name, input] = table;
    const row = Object.keys(input.columns).map((column) => String(input.add[column]));
    const cells = [...this.#cells(name), row];
    this.#fillTable(name, input, joinRows(cells));
    this.#changed();
    this.querySelector<HTMLElement>(
      `[data-rows="${name}"] tbody tr:last-child [data-cell]`,
    )?.focus();
  }

  #removeRow(button: Element, row: number): void {
    const table = this.#table(button);
    if (!table) return;
    const [name, input] = table;
    this.#fillTable(name, input, joinRows(this.#cells(name).filter((_, index) => index !== row)));
    this.#changed();
    const left = this.querySelectorAll<HTMLElement>(`[data-rows="${name}"] [data-remove]`);
    (
      left[Math.min(row, left.length - 1)] ??
      this.querySelector<HTMLElement>(`[data-rows="${name}"] [data-add]`)
    )?.focus();
  }

  /** Cells copied from a spreadsheet fill the table from the focused cell on. */
  #paste(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    const control = event.target;
    if (
      !(control instanceof HTMLElement) ||
      !control.dataset['cell'] ||
      !/[\t\n]/.test(text.trim())
    )
      return;
    const table = this.#table(control);
    const tr = control.closest('tr');
    if (!table || !tr) return;
    event.preventDefault();
    const [name, input] = table;
    const cells = this.#cells(name);
    const width = Object.keys(input.columns).length;
    const row0 = [...(tr.parentElement?.children ?? [])].indexOf(tr);
    const column0 = [...tr.querySelectorAll('[data-cell]')].indexOf(control);
    text
      .trimEnd()
      .split(/\r?\n/)
      .forEach((line, i) => {
        const at = row0 + i;
        cells[at] ??= Array.from({ length: width }, () => '');
        line.split('\t').forEach((cell, j) => {
          const row = cells[at];
          if (row && column0 + j < width) row[column0 + j] = cell.trim();
        });
      });
    this.#fillTable(name, input, joinRows(cells));
    this.#changed();
  }

  #locate(button: HTMLButtonElement): void {
    const group = button.closest<HTMLElement>('[data-place]');
    const slot = group?.querySelector<HTMLElement>('[data-place-error]');
    if (!group || !slot) return;
    const fail = (message: string) => {
      slot.textContent = message;
      slot.hidden = false;
    };
    if (!navigator.geolocation) return fail('This device gives no position.');
    navigator.geolocation.getCurrentPosition(
      ({ coords }) =>
        this.#setPlace(group, [
          Number(coords.latitude.toFixed(5)),
          Number(coords.longitude.toFixed(5)),
          Math.round(coords.altitude ?? 0),
        ]),
      ({ message }) => fail(message || 'The position could not be read.'),
      { enableHighAccuracy: true, timeout: 20_000 },
    );
  }

  async #copy(button: HTMLButtonElement, what: string): Promise<void> {
    const example = this.#example;
    if (!example || !this.#answer) return;
    const { values, result } = this.#answer;
    const query = encodeState(this.#raw, this.#defaults);
    const link = `${location.origin}${location.pathname}${query ? `?${query}` : ''}`;
    const text =
      what === 'code'
        ? example.code(values as never, result)
        : what === 'link'
          ? link
          : JSON.stringify({ example: this.dataset['example'], inputs: values, result }, null, 2);
    const word = button.textContent ?? '';
    await navigator.clipboard.writeText(text).then(
      () => this.#done(button, word, 'Copied'),
      () => this.#done(button, word, 'Not allowed'),
    );
  }

  #done(button: HTMLButtonElement, before: string, now: string): void {
    button.textContent = now;
    button.disabled = true;
    this.#say(now);
    window.setTimeout(() => {
      button.textContent = before;
      button.disabled = false;
    }, 1200);
  }
}

customElements.define('worked-example', WorkedExample);
