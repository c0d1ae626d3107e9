/**
 * `<learner-sheet>`: the sheet of a link, without settings and without a key. What is typed stays on this device; the code to
 * hand in is made from it as it is typed.
 */

import { handInCode, type Worksheet, worksheetOfCode } from 'slantpath/teaching';
import { said, speak } from '../lib/language/language.js';
import { languageFor } from '../lib/language/languages.js';
import { renderSheet, type SheetUse } from '../lib/sheet.js';
import { askedSheet } from '../lib/sheetLinks.js';
import { checkTyped, fillAnswers, keep, kept, showHint, typedAnswers } from './sheetFields.js';

class LearnerSheet extends HTMLElement {
  #sheet: Worksheet | undefined;
  #use: SheetUse = 'practice';

  async connectedCallback(): Promise<void> {
    if (this.#sheet) return;
    speak(await languageFor(document.documentElement.lang, 'a-sheet-for-the-class'));
    const { code, use } = askedSheet(location.search);
    this.#use = use;
    this.addEventListener('submit', (event) => this.#submit(event));
    this.addEventListener('click', (event) => this.#click(event));
    this.addEventListener('input', () => this.#changed());
    if (code !== '') this.#open(code);
    this.dataset['ready'] = '';
  }

  #place<T extends HTMLElement = HTMLElement>(selector: string): T | null {
    return this.querySelector<T>(selector);
  }

  #open(code: string): void {
    const error = this.#place('.sheet-open .ex-error');
    try {
      this.#sheet = worksheetOfCode(code);
    } catch {
      if (!error) return;
      error.textContent = said('This is not a code from the foot of a sheet.');
      error.hidden = false;
      return;
    }
    const list = this.#place('.sheet-list');
    const paper = this.#place('.sheet-paper');
    const open = this.#place('.sheet-open');
    if (!list || !paper || !open) return;
    list.innerHTML = renderSheet(this.#sheet, this.#use);
    open.hidden = true;
    paper.hidden = false;
    const before = kept(this.#sheet);
    fillAnswers(list, before?.answers ?? []);
    const name = this.#place<HTMLInputElement>('[data-name]');
    if (name) name.value = before?.name ?? '';
    const foot = this.#place('.sheet-code');
    if (foot) foot.textContent = this.#sheet.code;
    this.#showCode();
  }

  #submit(event: Event): void {
    event.preventDefault();
    if ((event.target as Element).matches('.sheet-open'))
      this.#open(this.#place<HTMLInputElement>('.sheet-open input')?.value ?? '');
    else if (this.#use !== 'test') checkTyped(event, this.#sheet);
  }

  #changed(): void {
    const list = this.#place('.sheet-list');
    if (!this.#sheet || !list) return;
    const name = this.#place<HTMLInputElement>('[data-name]')?.value.trim() ?? '';
    const may = keep(this.#sheet, { name, answers: typedAnswers(list) });
    const notKept = this.#place('.sheet-not-kept');
    if (notKept) notKept.hidden = may;
    this.#showCode();
  }

  /** The line to hand in: the name and the code. */
  #showCode(): void {
    const list = this.#place('.sheet-list');
    const place = this.#place('.sheet-hand-in');
    if (!this.#sheet || !list || !place) return;
    const name = this.#place<HTMLInputElement>('[data-name]')?.value.trim() ?? '';
    const code = handInCode(this.#sheet, typedAnswers(list));
    place.textContent = name === '' ? code : `${name}: ${code}`;
  }

  #click(event: Event): void {
    showHint(event, this.#sheet, this.#use);
    const button = (event.target as Element).closest('button');
    if (button?.dataset['handIn'] !== undefined) this.#copy(button);
    if (button?.dataset['forget'] !== undefined) this.#forget();
  }

  #forget(): void {
    const list = this.#place('.sheet-list');
    if (!this.#sheet || !list || !confirm(said('Remove everything that was typed on this sheet?')))
      return;
    keep(this.#sheet, undefined);
    this.#open(this.#sheet.code);
  }

  #copy(button: HTMLButtonElement): void {
    const before = button.textContent;
    const answer = (text: string) => {
      button.textContent = said(text);
      window.setTimeout(() => {
        button.textContent = before;
      }, 1200);
    };
    navigator.clipboard.writeText(this.#place('.sheet-hand-in')?.textContent ?? '').then(
      () => answer('Copied'),
      () => answer('Copying is not allowed here'),
    );
  }
}

customElements.define('learner-sheet', LearnerSheet);
