/**
 * `<class-sheet>`: the trainer's sheet, made from the settings of the worked example above it. Everything is tried here as a
 * learner would; from here the links go out, and sheet and key are printed or taken into other programs.
 */

import {
  type CsvOptions,
  type Worksheet,
  worksheetCsv,
  worksheetGift,
  worksheetHtml,
  worksheetMoodle,
  worksheetOfCode,
  worksheetQti,
} from 'slantpath/teaching';
import { said } from '../lib/language/language.js';
import { renderSheet } from '../lib/sheet.js';
import { learnerLink, queryOf } from '../lib/sheetLinks.js';
import { printWords } from '../lib/sheetPrint.js';
import { zip } from '../lib/zip.js';
import { checkTyped, fillAnswers, keep, kept, showHint, typedAnswers } from './sheetFields.js';
import type { WorkedExample } from './workedExample.js';

class ClassSheet extends HTMLElement {
  #sheet: Worksheet | undefined;
  #right = new Set<number>();

  connectedCallback(): void {
    const settings = document.querySelector<WorkedExample>('worked-example');
    if (this.#sheet || !settings) return;
    const draw = () => this.#draw(settings.result as Worksheet | undefined);
    settings.addEventListener('answer', draw);
    settings.dataset['wanted'] = '';
    if (settings.result) draw();
    this.addEventListener('submit', (event) => this.#submit(event));
    this.addEventListener('click', (event) => this.#click(event));
    this.addEventListener('input', () => this.#keep());
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
    if (!drawn) list.innerHTML = renderSheet(sheet, 'trainer');
    fillAnswers(list, kept(sheet)?.answers ?? []);
    this.#count();
    const code = this.querySelector('.sheet-code');
    if (code) code.textContent = sheet.code;
    this.dataset['ready'] = '';
    this.dispatchEvent(new Event('sheet', { bubbles: true }));
  }

  /** The sheet on show. */
  get sheet(): Worksheet | undefined {
    return this.#sheet;
  }

  #keep(): void {
    const list = this.querySelector('.sheet-list');
    if (!list || !this.#sheet) return;
    const answers = typedAnswers(list);
    const typed = answers.some(({ answer, steps }) => answer !== '' || steps !== undefined);
    const { name = '' } = kept(this.#sheet) ?? {};
    keep(this.#sheet, typed || name !== '' ? { name, answers } : undefined);
  }

  #submit(event: Event): void {
    if ((event.target as Element).matches('.sheet-open')) {
      this.#open(event);
      return;
    }
    const checked = checkTyped(event, this.#sheet);
    if (checked?.right) this.#right.add(checked.index);
    else if (checked) this.#right.delete(checked.index);
    this.#count();
  }

  /** The settings of a code from the foot of a printed sheet. */
  #open(event: Event): void {
    event.preventDefault();
    const field = this.querySelector<HTMLInputElement>('.sheet-open input');
    const error = this.querySelector<HTMLElement>('.sheet-open .ex-error');
    if (!field || !error) return;
    try {
      const { code } = worksheetOfCode(field.value);
      location.search = queryOf(code);
    } catch {
      error.textContent = said('This is not a code from the foot of a sheet.');
      error.hidden = false;
    }
  }

  #count(): void {
    const place = this.querySelector('.sheet-count');
    const all = this.#sheet?.exercises.length ?? 0;
    if (place) place.textContent = said(`${this.#right.size} of ${all} right`);
  }

  #click(event: Event): void {
    showHint(event, this.#sheet, 'trainer');
    const button = (event.target as Element).closest('button');
    const sheet = this.#sheet;
    if (!button || !sheet) return;
    const use = button.dataset['link'];
    if (use === 'practice' || use === 'test') this.#copyLink(button, use);
    const what = button.dataset['take'];
    const name = `worksheet-${sheet.seed}${sheet.form === 'A' ? '' : `-${sheet.form}`}`;
    if (what === 'csv') save(`${name}.csv`, worksheetCsv(sheet, this.#csv()), 'text/csv');
    if (what === 'qti') save(`${name}-qti.zip`, zip(worksheetQti(sheet)), 'application/zip');
    if (what === 'gift') save(`${name}-gift.txt`, worksheetGift(sheet), 'text/plain');
    if (what === 'moodle') save(`${name}-moodle.xml`, worksheetMoodle(sheet), 'application/xml');
    if (what === 'sheet' || what === 'key')
      print(worksheetHtml(sheet, { key: what === 'key', ...printWords() }));
  }

  #csv(): CsvOptions {
    const [separator, decimalSign] =
      this.querySelector<HTMLSelectElement>('[data-csv]')?.value.split(' ') ?? [];
    return {
      separator: separator === 'tab' ? '\t' : separator === 'semicolon' ? ';' : ',',
      decimalSign: decimalSign === 'comma' ? ',' : '.',
    };
  }

  #copyLink(button: HTMLButtonElement, use: 'practice' | 'test'): void {
    if (!this.#sheet) return;
    const link = learnerLink(this.#sheet, use, document.documentElement.lang);
    const place = this.querySelector<HTMLAnchorElement>('.sheet-link');
    if (place) {
      place.href = link;
      place.textContent = link;
      place.hidden = false;
    }
    const before = button.textContent;
    const answer = (text: string) => {
      button.textContent = said(text);
      window.setTimeout(() => {
        button.textContent = before;
      }, 1200);
    };
    navigator.clipboard.writeText(link).then(
      () => answer('Copied'),
      () => answer('Copying is not allowed here'),
    );
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
  frame.title = said('The sheet for the printer');
  frame.srcdoc = html;
  frame.addEventListener('load', () => frame.contentWindow?.print());
  document.body.append(frame);
}

customElements.define('class-sheet', ClassSheet);
