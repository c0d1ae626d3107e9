/** Draws the page: lines, forms, answers, faults. Keeps the focus, the folds and the stage that is open. */

import type { SheetWords } from 'slantpath/sheet';
import { escapeHtml } from '../../lib/language/text.js';
import { visitOf } from '../state/beside.js';
import type { Prepared } from '../state/prepared.js';
import { STAGES, type StageName, stageOfField } from '../state/stages.js';
import type { JobStanding } from '../state/standing.js';
import { wantedAt, wantedName } from '../state/wanted.js';
import type { Shelf } from '../store/shelf.js';
import { answerHtml, outcomeHtml } from '../view/answer.js';
import type { Desk } from '../view/desk.js';
import { drawParts, idOf } from '../view/draw.js';
import { formOf } from '../view/forms/forms.js';
import { noteOn } from '../view/forms/readingsForm.js';
import { summaryHtml } from '../view/frame.js';
import { saysOf } from '../view/says.js';

/** What the page is drawn for. */
interface Home extends HTMLElement {
  readonly desk: Desk;
}

/** Stages whose form shows something of the record, so that a new answer changes it. */
const ANSWERING: readonly StageName[] = ['peak', 'sheet'];

export class Page {
  readonly #home: Home;
  #sheet: SheetWords | undefined;
  /** Stages whose form stands as the draft has it. */
  readonly #drawn = new Set<StageName>();

  constructor(home: Home) {
    this.#home = home;
  }

  #stage(stage: StageName): HTMLDetailsElement | null {
    return this.#home.querySelector(`.desk-stage[data-stage="${stage}"]`);
  }

  #openStages(): readonly StageName[] {
    return STAGES.filter((stage) => this.#stage(stage)?.open);
  }

  say(text: string): void {
    const status = this.#home.querySelector('.desk-kept');
    if (status && status.textContent !== text) status.textContent = text;
  }

  /** Shows or hides the way to begin a job. */
  begin(open: boolean, hasJob: boolean): void {
    const part = (name: string) => this.#home.querySelector<HTMLElement>(name);
    const set = (name: string, hidden: boolean) => {
      const element = part(name);
      if (element) element.hidden = hidden;
    };
    set('.desk-begin', !open);
    set('.desk-begin [data-do="cancel"]', !hasJob);
    set('.desk-head', !hasJob);
    set('.desk-job', !hasJob);
    if (open && hasJob) part('[data-begin]')?.focus();
  }

  /** The list of jobs. */
  jobs(shelf: Shelf, id: string): void {
    const select = this.#home.querySelector<HTMLSelectElement>('[data-jobs]');
    if (!select) return;
    const { untitled } = this.#home.desk.words.desk;
    const entries = [...shelf.entries.values()].sort((a, b) => b.changedAt - a.changedAt);
    select.innerHTML = entries
      .map(
        (entry) =>
          `<option value="${entry.id}"${entry.id === id ? ' selected' : ''}>${escapeHtml(entry.draft.title ?? untitled)}</option>`,
      )
      .join('');
  }

  /** What is damaged on the shelf: a word, and two ways to deal with it. */
  damaged(shelf: Shelf): void {
    const place = this.#home.querySelector('.desk-damaged');
    if (!place) return;
    const { words } = this.#home.desk;
    const rows = [...shelf.damaged.keys()].map(
      (id) =>
        `<p class="ex-tools"><button type="button" data-do="save-damaged" data-at="${escapeHtml(id)}">${words.kept.saveDamaged}</button><button type="button" data-do="remove-damaged" data-at="${escapeHtml(id)}">${words.kept.removeDamaged}</button></p>`,
    );
    place.innerHTML =
      rows.length === 0
        ? ''
        : `<p class="ex-note">${words.kept.damaged(rows.length)}</p>${rows.join('')}`;
  }

  /** Opens a stage, the first of what it asks in sight. */
  open(stage: StageName): void {
    const details = this.#stage(stage);
    if (!details) return;
    details.open = true;
    this.fill(stage);
    details.querySelector('summary')?.scrollIntoView({ block: 'start' });
    details.querySelector<HTMLElement>('summary')?.focus({ preventScroll: true });
  }

  /** All forms are drawn anew when they are opened next; those that are open at once. */
  forgetForms(): void {
    this.#drawn.clear();
    for (const stage of this.#openStages()) this.fill(stage);
  }

  /** The forms have another shape: drawn anew, with focus and folds as they were. */
  reshape(): void {
    this.forgetForms();
  }

  /** Fills a stage with its form and answer, where it does not stand there already. */
  fill(stage: StageName): void {
    const { desk } = this.#home;
    const form = this.#stage(stage)?.querySelector<HTMLElement>('.desk-form');
    if (form && !this.#drawn.has(stage)) {
      this.#drawn.add(stage);
      this.#redraw(form, drawParts(desk.words, desk.draft, formOf(stage, desk)));
    }
    this.#answer(stage);
  }

  #redraw(form: HTMLElement, html: string): void {
    const focus = document.activeElement instanceof HTMLElement ? document.activeElement.id : '';
    const folds = new Map(
      [...form.querySelectorAll<HTMLDetailsElement>('[data-fold]')].map((fold) => [
        fold.dataset['fold'] ?? '',
        fold.open,
      ]),
    );
    form.innerHTML = html;
    for (const fold of form.querySelectorAll<HTMLDetailsElement>('[data-fold]')) {
      const open = folds.get(fold.dataset['fold'] ?? '');
      if (open !== undefined) fold.open = open;
    }
    if (focus !== '' && form.querySelector(`#${CSS.escape(focus)}`))
      document.getElementById(focus)?.focus({ preventScroll: true });
  }

  #answer(stage: StageName): void {
    const place = this.#stage(stage)?.querySelector('.desk-answer');
    if (!place || !this.#sheet) return;
    const open = [...place.querySelectorAll('details')].map((details) => details.open);
    place.innerHTML = answerHtml(stage, this.#home.desk, this.#sheet);
    place.querySelectorAll('details').forEach((details, index) => {
      details.open = open[index] ?? false;
    });
  }

  /** Draws what an answer changes: lines, outcome, open stages, notes beside fields, faults. */
  draw(standing: JobStanding, ready: Prepared, sheet: SheetWords): void {
    this.#sheet = sheet;
    const { desk } = this.#home;
    for (const each of standing.stages) {
      const summary = this.#stage(each.stage)?.querySelector('summary');
      const html = summaryHtml(desk.words, each, saysOf(each.stage, desk, sheet));
      if (summary && summary.innerHTML !== html) summary.innerHTML = html;
    }
    const outcome = this.#home.querySelector('.desk-outcome');
    if (outcome) outcome.innerHTML = outcomeHtml(desk, standing);
    for (const stage of ANSWERING) this.#drawn.delete(stage);
    for (const stage of this.#openStages()) this.fill(stage);
    this.#notes(desk);
    this.#faults(desk, ready);
  }

  /** Planned values and verdicts beside the readings. */
  #notes(desk: Desk): void {
    const visit = visitOf(desk);
    if (visit < 0 || !this.#openStages().includes('readings')) return;
    for (const wanted of wantedAt(desk.draft, visit, desk.record)) {
      const note = this.#home.querySelector<HTMLElement>(
        `[data-note="${CSS.escape(wantedName(wanted))}"]`,
      );
      if (!note) continue;
      const { note: text, state } = noteOn(desk, desk.record, wanted);
      note.textContent = text;
      note.dataset['state'] = state;
    }
  }

  /** What a field is called on the page; `undefined` where it is not drawn. */
  #labelOf(path: string): string | undefined {
    const control = this.#home.querySelector(`[data-path="${CSS.escape(path)}"]`);
    return control?.closest('.ex-field')?.querySelector('label')?.firstChild?.textContent?.trim();
  }

  /** Each fault beside its field; where the page shows no such field, at the head of its stage. */
  #faults({ words, draft }: Desk, { faults, waiting }: Prepared): void {
    for (const slot of this.#home.querySelectorAll<HTMLElement>('.ex-error')) slot.hidden = true;
    for (const control of this.#home.querySelectorAll('[aria-invalid]'))
      control.removeAttribute('aria-invalid');
    const put = (path: string, text: string, wrong: boolean) => {
      const control = this.#home.querySelector(`[data-path="${CSS.escape(path)}"]`);
      const slot = control
        ? document.getElementById(`${idOf(path)}-says`)
        : this.#stage(stageOfField(path))?.querySelector<HTMLElement>('.desk-fault');
      if (control && wrong) control.setAttribute('aria-invalid', 'true');
      if (!slot) return;
      const shown = control ? text : `${path}: ${text}`;
      slot.textContent = slot.hidden ? shown : `${slot.textContent} ${shown}`;
      slot.hidden = false;
    };
    for (const { path, allowed, slip } of faults)
      put(
        path,
        allowed === 'a finite number' ? words.notANumber : words.fault(allowed, slip),
        true,
      );
    for (const { lacks } of waiting) {
      const label = this.#labelOf(lacks);
      if (label !== undefined) put(lacks, words.lacks(label), false);
    }
    const { latitudeDeg, longitudeDeg } = draft.station ?? {};
    if (latitudeDeg === undefined || longitudeDeg === undefined)
      put(
        latitudeDeg === undefined ? 'station.latitudeDeg' : 'station.longitudeDeg',
        words.lacksPlace,
        false,
      );
  }
}
