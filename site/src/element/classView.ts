/** `<class-view>`: the pasted codes of a class, read against the sheet on the page; nothing of it leaves the page or is kept. */

import { classReport, type Worksheet, worksheetOfCode } from 'slantpath/teaching';
import { renderClass } from '../lib/classView.js';

class ClassView extends HTMLElement {
  connectedCallback(): void {
    this.addEventListener('input', () => this.#draw());
    document.addEventListener('sheet', () => this.#draw());
  }

  /** Both forms of the sheet on the page. */
  #sheets(): readonly Worksheet[] {
    const { sheet } = document.querySelector('class-sheet') as unknown as { sheet?: Worksheet };
    if (!sheet) return [];
    const rest = sheet.code.slice(1);
    return [worksheetOfCode(`A${rest}`), worksheetOfCode(`B${rest}`)];
  }

  #draw(): void {
    const pasted = this.querySelector('textarea')?.value ?? '';
    const place = this.querySelector('.class-report');
    if (!place) return;
    place.innerHTML = pasted.trim() === '' ? '' : renderClass(classReport(this.#sheets(), pasted));
  }
}

customElements.define('class-view', ClassView);
