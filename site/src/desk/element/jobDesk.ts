/** `<job-desk>`: one job from an address to a record, done and kept on this device. */

import type { JobRecord } from 'slantpath/job';
import { jobSheetHtml } from 'slantpath/sheet';
import { speak } from '../../lib/language/language.js';
import { type Beside, newBeside } from '../state/beside.js';
import { type Draft, emptyDraft } from '../state/draft.js';
import { fileName, fileOf, type Taken } from '../state/exchange.js';
import { takenFromFragment } from '../state/link.js';
import { type Prepared, prepared } from '../state/prepared.js';
import type { StageName } from '../state/stages.js';
import { standingOf } from '../state/standing.js';
import { openStore } from '../store/database.js';
import { Shelf } from '../store/shelf.js';
import type { Desk } from '../view/desk.js';
import { frameHtml } from '../view/frame.js';
import { english, spokenIn } from '../words/languages.js';
import { demoTaken, fileTaken, handedBack, refusalSays } from './arrivals.js';
import { Computing } from './computing.js';
import { listenToEdits } from './edits.js';
import { copyJobLink, printDocument, saveFile } from './give.js';
import type { DeskHome } from './home.js';
import { Page } from './page.js';

/** Steps that can be taken back. */
const MOST_STEPS = 60;

class JobDesk extends HTMLElement implements DeskHome {
  words = english.words;
  sheet = english.sheet;
  #shelf: Shelf | undefined;
  #id = '';
  #draft: Draft = emptyDraft('', '');
  #beside: Beside = newBeside;
  #record: JobRecord | null = null;
  #ready: Prepared = prepared(this.#draft);
  #past: { readonly id: string; readonly draft: Draft; readonly beside: Beside }[] = [];
  #later = 0;
  #unkept = false;
  #keeping: Promise<void> | undefined;
  readonly #page = new Page(this);
  #computing: Computing | undefined;

  /** What stands on the page now. */
  get desk(): Desk {
    return { draft: this.#draft, record: this.#record, beside: this.#beside, words: this.words };
  }

  get ready(): Prepared {
    return this.#ready;
  }

  async connectedCallback(): Promise<void> {
    if (this.#shelf) return;
    const { words, sheet, language } = await spokenIn(document.documentElement.lang);
    this.words = words;
    this.sheet = sheet;
    speak(language);
    if (!this.querySelector('.desk-stages')) this.innerHTML = frameHtml(this.words);
    const store = await openStore().catch(() => undefined);
    this.#shelf = await Shelf.open(
      store,
      ({ id, revision }) => void this.#told(id, revision),
    ).catch(() => Shelf.open(undefined, () => undefined));
    listenToEdits(this);
    this.#page.damaged(this.#shelf);
    const last = this.#shelf.latest();
    if (last) this.show(last.id);
    else this.#page.begin(true, false);
    this.say(
      this.#shelf.keeps
        ? last
          ? this.words.kept.opened
          : this.words.kept.first
        : this.words.kept.refused,
    );
    await this.#openLink();
    await this.#takeBack();
    addEventListener('hashchange', () => void this.#openLink());
    for (const leaves of ['pagehide', 'visibilitychange'])
      addEventListener(leaves, () => void this.#keepNow());
    this.dataset['ready'] = '';
  }

  /** Says something where it is seen and read out. */
  say(text: string): void {
    this.#page.say(text);
  }

  /** Puts a job of the shelf on the page. */
  show(id: string): void {
    const entry = this.#shelf?.entries.get(id);
    if (!entry || !this.#shelf) return;
    void this.#keepNow();
    this.#id = id;
    this.#draft = entry.draft;
    this.#beside = entry.beside;
    this.#record = null;
    this.#page.begin(false, true);
    this.#page.jobs(this.#shelf, id);
    this.#page.forgetForms();
    this.#ask();
  }

  /** Takes over a change of the job: remembered for Undo, computed, and kept a moment later. */
  change(draft: Draft, reshaped: boolean, beside = this.#beside): void {
    this.#past.push({ id: this.#id, draft: this.#draft, beside: this.#beside });
    if (this.#past.length > MOST_STEPS) this.#past.shift();
    this.#set(draft, beside, reshaped);
  }

  #set(draft: Draft, beside: Beside, reshaped: boolean): void {
    const renamed = draft.title !== this.#draft.title;
    this.#draft = draft;
    this.#beside = beside;
    this.#unkept = true;
    if (reshaped) this.#page.reshape();
    this.#ask();
    if (renamed && this.#shelf) {
      this.#shelf.entries.set(this.#id, { ...this.#entry(), draft });
      this.#page.jobs(this.#shelf, this.#id);
    }
    clearTimeout(this.#later);
    this.#later = window.setTimeout(() => void this.#keepNow(), 400);
  }

  #entry() {
    const entry = this.#shelf?.entries.get(this.#id);
    return (
      entry ?? { id: this.#id, revision: 0, changedAt: 0, draft: this.#draft, beside: this.#beside }
    );
  }

  /** One step back. */
  undo(): void {
    const step = this.#past.pop();
    if (!step) {
      this.say(this.words.kept.nothingToUndo);
      return;
    }
    if (step.id !== this.#id) {
      if (this.#shelf?.entries.has(step.id)) this.show(step.id);
      else {
        this.#adopt(step.draft, step.beside);
        return;
      }
    }
    this.#set(step.draft, step.beside, true);
    this.say(this.words.kept.undone);
  }

  /** A job comes onto the shelf and onto the page. */
  #adopt(draft: Draft, beside: Beside = newBeside): void {
    const entry = this.#shelf?.add(draft, beside);
    if (!entry) return;
    this.show(entry.id);
    this.#unkept = true;
    void this.#keepNow();
  }

  /** Begins a job: an empty one, or with a demo. */
  async begin(demo: string): Promise<void> {
    const today = new Date().toISOString().slice(0, 10);
    if (demo === '') {
      const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
      const { desk, mount } = this.words;
      this.#adopt({ ...emptyDraft(desk.firstTitle, today, mount.newMount), timeZone: zone });
      this.#page.open('place');
      return;
    }
    const taken = await demoTaken(demo);
    if (taken) this.#take(taken, () => '');
  }

  /** Shows the way to begin another job, or leaves it. */
  choose(open: boolean): void {
    this.#page.begin(open, this.#id !== '');
  }

  /** Takes the job on the page off the device. */
  async removeJob(): Promise<void> {
    const { draft } = this;
    this.#past.push({ id: this.#id, draft: this.#draft, beside: this.#beside });
    await this.#keeping;
    clearTimeout(this.#later);
    this.#unkept = false;
    const gone = this.#id;
    this.#id = '';
    await this.#shelf?.remove(gone);
    const next = this.#shelf?.latest();
    if (next) this.show(next.id);
    else this.#page.begin(true, false);
    this.say(this.words.desk.removed(draft.title ?? this.words.desk.untitled));
  }

  get draft(): Draft {
    return this.#draft;
  }

  /** A file that somebody has chosen. */
  async open(file: File): Promise<void> {
    const w = this.words.taken;
    const taken = await fileTaken(file);
    if (taken === 'unreadable') this.say(w.unreadable);
    else this.#take(taken, (title, from) => (from === 'record' ? w.record : w.job)(title));
  }

  async #openLink(): Promise<void> {
    const taken = await takenFromFragment(location.hash);
    if (!taken) return;
    // The job is on the shelf now: the address is that of the page again, so that a reload does not open it twice.
    history.replaceState(history.state, '', location.pathname + location.search);
    if (taken.kind === 'job') this.#take(taken, (title) => this.words.taken.link(title));
    else this.say(this.words.taken.badLink);
  }

  /** A worked example hands back what it was filled with, in the address. */
  async #takeBack(): Promise<void> {
    const name = new URLSearchParams(location.search).get('from');
    if (name === null || this.#id === '') return;
    const query = location.search;
    history.replaceState(history.state, '', location.pathname);
    const back = await handedBack(this.desk, name, query);
    if (back?.draft) this.change(back.draft, true);
    if (back) this.say(back.says);
  }

  #take(taken: Taken, told: (title: string, from: 'job' | 'record') => string): void {
    if (taken.kind !== 'job') {
      this.say(refusalSays(this.words, taken));
      return;
    }
    this.#adopt(taken.draft);
    const text = told(taken.draft.title ?? this.words.desk.untitled, taken.from);
    if (text !== '') this.say(text);
  }

  /** Saves the job or its record as a file. */
  save(what: string): void {
    const title = this.#draft.title ?? 'job';
    const record = what === 'record' && this.#record;
    const name = fileName(title, what === 'record' ? 'record.json' : 'job.json');
    // What cannot be computed yet is saved as it stands: this page opens it again.
    saveFile(name, fileOf(record ? this.#record : (this.#ready.job ?? this.#draft)));
    this.say(this.words.sheet.saved(name));
  }

  /** Prints one of the two sheets. */
  print(visit: 'before' | 'after'): void {
    if (!this.#record) {
      this.say(this.words.sheet.wait);
      return;
    }
    const html = jobSheetHtml(this.#record, { visit, words: this.sheet });
    printDocument(html, this.words.sheet.title);
  }

  /** Copies a link that holds the job, where it is small enough. */
  async link(): Promise<void> {
    this.say(await copyJobLink((this.#ready.job ?? this.#draft) as Draft, this.words.sheet));
  }

  /** Saves what is left of a damaged job. */
  saveDamaged(id: string): void {
    const rest = this.#shelf?.damaged.get(id)?.rest;
    saveFile('damaged-job.json', fileOf(rest ?? null));
  }

  /** Removes a damaged job. */
  async removeDamaged(id: string): Promise<void> {
    await this.#shelf?.remove(id);
    if (this.#shelf) this.#page.damaged(this.#shelf);
    this.say(this.words.desk.removedDamaged);
  }

  /** A stage was opened. */
  fill(stage: StageName): void {
    this.#page.fill(stage);
  }

  /** Opens a stage. */
  go(stage: StageName): void {
    this.#page.open(stage);
  }

  #ask(): void {
    this.#ready = prepared(this.#draft);
    const { job } = this.#ready;
    // Without a place or a slot there is nothing to say; with a fault the last answer stays, marked as old.
    if (!job && this.#ready.faults.length === 0) this.#record = null;
    // Made when something is to be computed first: it brings the library and the climate with it.
    if (job) {
      this.#computing ??= new Computing(
        ({ record, path, allowed }) => this.#computed(record, path, allowed),
        () => this.say(this.words.notYet),
      );
      this.#computing.ask(job);
    } else this.#computing?.forget();
    this.toggleAttribute('data-computing', job !== null);
    this.#draw();
  }

  #computed(record: JobRecord | null, path: string, allowed: string): void {
    delete this.dataset['computing'];
    if (record) this.#record = record;
    else {
      const fault = { path: this.#ready.pathBack(path), allowed, slip: '' };
      this.#ready = { ...this.#ready, job: null, faults: [fault] };
    }
    this.#draw();
  }

  #draw(): void {
    this.toggleAttribute('data-stale', this.#ready.faults.length > 0);
    this.#page.draw(standingOf(this.#ready, this.#record), this.#ready, this.sheet);
  }

  /** What is said before that a job is kept, once. */
  #before = '';

  /** Writes the job to the device, one write at a time. */
  async #keepNow(): Promise<void> {
    clearTimeout(this.#later);
    if (!this.#unkept || this.#id === '') return;
    this.#unkept = false;
    const [id, draft, beside] = [this.#id, this.#draft, this.#beside];
    const before = this.#keeping;
    this.#keeping = (async () => {
      await before;
      await this.#write(id, draft, beside);
    })();
    await this.#keeping;
  }

  async #write(id: string, draft: Draft, beside: Beside): Promise<void> {
    const kept = await this.#shelf?.keep(id, draft, beside);
    const w = this.words.kept;
    switch (kept?.kind) {
      case 'kept':
        void navigator.storage?.persist?.();
        this.say(`${this.#before}${w.kept(new Date().toTimeString().slice(0, 5))}`);
        this.#before = '';
        return;
      case 'clash':
      case 'gone': {
        // Nobody's work is lost: what stands here goes on as a job of its own.
        await this.#shelf?.refresh();
        const title = this.words.desk.fromOtherTab(draft.title ?? this.words.desk.untitled);
        if (kept.kind === 'gone') this.#shelf?.entries.delete(id);
        const why = kept.kind === 'gone' ? w.gone : w.clash;
        // The new job is kept a moment later: that must not wipe away why there is one.
        this.#before = `${why} `;
        this.#adopt({ ...draft, title }, beside);
        this.say(why);
        return;
      }
      case 'full':
      case 'failed':
        this.#unkept = true;
        this.say(kept.kind === 'full' ? w.full : w.failed);
        return;
      default:
        this.say(w.refused);
        return;
    }
  }

  /** Another tab has kept or removed a job. */
  async #told(id: string, revision: number): Promise<void> {
    const shelf = this.#shelf;
    if (!shelf) return;
    if (revision < 0) {
      if (id !== this.#id) shelf.entries.delete(id);
    } else await shelf.refresh();
    this.#page.jobs(shelf, this.#id);
    // Where something is typed and not kept yet, keeping it will find the clash.
    if (id !== this.#id || this.#unkept || revision < 0) return;
    this.show(id);
    this.say(this.words.kept.otherTab);
  }
}

customElements.define('job-desk', JobDesk);
