/**
 * `<class-sheet>`: the exercises of the worked example above it. Answers are checked on the spot, hints come one by one, and
 * the sheet can be printed and taken away.
 */

import {
  checkAnswer,
  type Worksheet,
  worksheetCsv,
  worksheetHtml,
  worksheetQti,
} from 'slantpath/teaching';
import { hintHtml, hintLabel, renderSheet, verdictHtml, verdictOn } from '../lib/sheet.js';
import { zip } from '../lib/zip.js';
import type { WorkedExample } from './workedExample.js';

class ClassSheet extends HTMLElement {
  #sheet: Worksheet | undefined;
  #right = new Set<number>();

  connectedCallback(): void {
    const settings = document.querySelector<WorkedExample>('worked-example');
    if (this.#sheet || !settings) return;
    const draw = () => this.#draw(settings.result as Worksheet | undefined);
    settings.addEventListener('answer', draw);
    if (settings.result) draw();
    this.addEventListener('submit', (event) => this.#check(event));
    this.addEventListener('click', (event) => this.#click(event));
  }

  #draw(sheet: Worksheet | undefined): void {
    const list = this.querySelector('.sheet-list');
    const same = JSON.stringify(sheet) === JSON.stringify(this.#sheet);
    this.toggleAttribute('hidden', sheet === undefined);
    if (!list || !sheet || same) return;
    // The page comes with the sheet of the settings it comes with.
    const drawn = this.#sheet === undefined && location.search === '';
    this.#sheet = sheet;
    this.#right.clear();
    if (!drawn) list.innerHTML = renderSheet(sheet);
    this.#count();
    this.dataset['ready'] = '';
  }

  /** The exercise that an event belongs to. */
  #at(event: Event) {
    const item = (event.target as Element).closest<HTMLElement>('[data-exercise]');
    const index = Number(item?.dataset['exercise'] ?? -1);
    const exercise = this.#sheet?.exercises[index];
    return item && exercise ? { item, index, exercise } : undefined;
  }

  #check(event: Event): void {
    event.preventDefault();
    const at = this.#at(event);
    const typed = at?.item.querySelector('input')?.value ?? '';
    const place = at?.item.querySelector<HTMLElement>('.sheet-verdict');
    if (!at || !place) return;
    const verdict = verdictOn(checkAnswer(at.exercise, typed), at.exercise);
    place.innerHTML = verdictHtml(verdict);
    place.dataset['kind'] = verdict.kind;
    if (verdict.kind === 'right') this.#right.add(at.index);
    else this.#right.delete(at.index);
    this.#count();
  }

  #count(): void {
    const place = this.querySelector('.sheet-count');
    const all = this.#sheet?.exercises.length ?? 0;
    if (place) place.textContent = `${this.#right.size} of ${all} right`;
  }

  #click(event: Event): void {
    const button = (event.target as Element).closest('button');
    if (button?.dataset['hint'] !== undefined) this.#hint(event, button);
    const what = button?.dataset['take'];
    const sheet = this.#sheet;
    if (!what || !sheet) return;
    const name = `worksheet-${sheet.seed}`;
    if (what === 'csv') save(`${name}.csv`, worksheetCsv(sheet), 'text/csv');
    if (what === 'qti') save(`${name}-qti.zip`, zip(worksheetQti(sheet)), 'application/zip');
    if (what === 'sheet' || what === 'key') print(worksheetHtml(sheet, { key: what === 'key' }));
  }

  #hint(event: Event, button: HTMLButtonElement): void {
    const at = this.#at(event);
    const list = at?.item.querySelector<HTMLElement>('.sheet-hints');
    if (!at || !list) return;
    const seen = list.children.length;
    const hint = at.exercise.hints[seen];
    if (hint === undefined) return;
    list.hidden = false;
    list.insertAdjacentHTML('beforeend', hintHtml(hint));
    button.textContent = hintLabel(at.exercise, seen + 1);
    button.disabled = seen + 1 === at.exercise.hints.length;
  }
}

/** Hands a file to the browser's downloads. */
function save(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** Prints a document of its own from a frame that is not seen. */
function print(html: string): void {
  document.querySelector('.sheet-print')?.remove();
  const frame = document.createElement('iframe');
  frame.className = 'sheet-print';
  frame.title = 'The sheet for the printer';
  frame.srcdoc = html;
  frame.addEventListener('load', () => frame.contentWindow?.print());
  document.body.append(frame);
}

customElements.define('class-sheet', ClassSheet);
