/**
 * `<worked-example>`: brings to life an example that was drawn when the site was built.
 *
 * Each change is computed at once by the library, in a worker; the state goes into the URL.
 */

import type { Example } from '../lib/example.js';
import { typedApart } from '../lib/formulaApart.js';
import type { Inputs } from '../lib/inputs/inputs.js';
import {
  blamedField,
  decodeState,
  defaultsOf,
  encodeState,
  type Raw,
  rawOfValues,
} from '../lib/inputs/state.js';
import { said, speak, unmarked, words } from '../lib/language/language.js';
import { languageFor } from '../lib/language/languages.js';
import { parameterWords } from '../lib/parameterWords.js';
import { type Asking, askingAbout } from './answering/asking.js';
import { Blocks } from './answering/blocks.js';
import { handChanges } from './answering/handSteps.js';
import type { Drawn, Refusal } from './answering/session.js';
import { controlOf, fillForm, readForm, showFitting } from './form.js';
import { listenToHandles } from './handles.js';
import { paintSteps } from './paintSteps.js';
import { listenToPlaces, showPresets } from './places.js';
import { type Copies, listenToShare } from './share.js';
import { listenToSteppers } from './steppers.js';
import { listenToTables } from './tables.js';

const modules = import.meta.glob<{ default: Example }>('../examples/**/*.ts');

export class WorkedExample extends HTMLElement {
  #answer: Drawn | undefined;
  /** The page came with the answer to these inputs: it is computed when something first needs more than the picture. */
  #due = false;
  #example: Example | undefined;
  #inputs: Inputs = {};
  #defaults: Raw = {};
  #raw: Raw = {};
  #ask: Asking | undefined;
  /** The inputs that are being answered, and who waits until nothing is. */
  #asked: Raw | undefined;
  #waiting: (() => void)[] = [];
  /** The inputs whose answer the page came with. */
  #cameWith: Raw | undefined;
  /** Whether the page shows something else. */
  #fresh = false;
  #later = 0;
  #blocks: Blocks | undefined;
  #top: string | undefined;
  readonly #steps = paintSteps(['answer', 'pictures', 'hand']);

  /** The present result, for elements that go on with it; they are told by the event `answer`. */
  get result(): unknown {
    this.#settle();
    return this.#answer?.result;
  }

  async connectedCallback(): Promise<void> {
    const load = modules[`../examples/${this.dataset['example']}.ts`];
    if (this.#example || !load) return;
    const example = (await load()).default;
    const name = this.dataset['example'] ?? '';
    speak(await languageFor(document.documentElement.lang, name, example.working !== undefined));
    this.#example = example;
    this.#inputs = example.inputs;
    this.#defaults = defaultsOf(example.inputs);
    const changed = () => this.#changed();
    listenToSteppers(this, changed);
    listenToTables(this, this.#inputs, changed);
    listenToPlaces(this, changed);
    listenToHandles(this, {
      hold: (index) => void this.#asking('hold', index, this.#raw),
      move: async (index, move) => this.#become(await this.#asking('move', index, this.#raw, move)),
    });
    listenToShare(
      this,
      () => {
        this.#settle();
        return this.#asked ? this.#answered().then(() => this.#copies()) : this.#copies();
      },
      (text) => this.#say(text),
    );
    this.addEventListener('input', (event) => {
      this.#chooseSet(event);
      changed();
    });
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    this.querySelector('[data-reset]')?.addEventListener('click', () => this.#reset());
    this.addEventListener('click', (event) => void this.#act(event));
    this.querySelector('.ex-working')?.addEventListener('toggle', () => void this.#showWorking());
    addEventListener('popstate', () => this.#fromUrl());
    // What is slow at its first use, such as the climate grid, is made ready before the first change.
    this.addEventListener('focusin', () => window.setTimeout(() => this.#settle()), { once: true });
    this.#due = location.search === '';
    this.#fromUrl();
    if (this.#due) this.#cameWith = this.#raw;
    else await this.#answered();
    // Somebody on the page goes on with the result.
    if ('wanted' in this.dataset) this.#settle();
    this.dataset['ready'] = '';
    delete this.dataset['computing'];
    // An address is kept even when the page is left at once after a change.
    addEventListener('pagehide', () => this.#keepAddress());
    this.#watchHand();
  }

  #fromUrl(): void {
    this.#raw = decodeState(location.search, this.#defaults);
    fillForm(this, this.#inputs, this.#raw);
    if (this.#due) this.#showInputs();
    else this.#update();
  }

  /** Computes what the page came with. */
  #settle(): void {
    if (this.#due && !this.#asked && !this.#answer) void this.#answerInputs();
  }

  #reset(): void {
    fillForm(this, this.#inputs, this.#defaults);
    this.#changed();
  }

  /** A button of the example's own: some inputs get new values. */
  async #act(event: Event): Promise<void> {
    const button = (event.target as Element).closest<HTMLElement>('[data-action]');
    if (button)
      this.#become(await this.#asking('act', Number(button.dataset['action']), this.#raw));
  }

  /** Some inputs get new values. */
  #become(raw: Raw | undefined): void {
    if (!raw) return;
    fillForm(this, this.#inputs, raw);
    this.#changed();
  }

  /** A set of inputs was chosen from the list above the form. */
  #chooseSet(event: Event): void {
    const select = event.target;
    if (!(select instanceof HTMLSelectElement) || select.dataset['sets'] === undefined) return;
    const set = this.#example?.presets?.sets[Number(select.value || -1)];
    if (set)
      fillForm(this, this.#inputs, {
        ...this.#defaults,
        ...rawOfValues(this.#inputs, set.values),
      });
  }

  /** The list says which of its sets stands in the form. */
  #showSet(): void {
    const select = this.querySelector<HTMLSelectElement>('[data-sets]');
    const sets = this.#example?.presets?.sets ?? [];
    const index = sets.findIndex(({ values }) =>
      Object.entries(rawOfValues(this.#inputs, values)).every(
        ([field, value]) => this.#raw[field] === value,
      ),
    );
    if (select) select.value = index < 0 ? '' : String(index);
  }

  #changed(): void {
    this.#raw = readForm(this, this.#inputs, Object.keys(this.#defaults));
    this.#due = false;
    this.#update();
    // Browsers refuse more than a few changes of the address in a second.
    clearTimeout(this.#later);
    this.#later = window.setTimeout(() => this.#keepAddress(), 300);
  }

  #keepAddress(): void {
    if (this.#example && !this.#due)
      history.replaceState(history.state, '', this.#address() + location.hash);
  }

  /** The steps by hand further down follow the inputs while they are in sight. */
  #watchHand(): void {
    const home = document.querySelector<HTMLElement>(
      `[data-hand="${CSS.escape(this.dataset['example'] ?? '')}"]`,
    );
    if (!home) return;
    let near = false;
    let shown: Raw | undefined;
    const draw = async () => {
      const raw = this.#raw;
      if (!near || !this.#answer || raw === shown) return;
      const html = await this.#asking('hand', raw);
      if (raw !== this.#raw) return;
      shown = raw;
      const changes = handChanges(home, html);
      const next = () => {
        changes.shift()?.();
        if (changes.length > 0) this.#steps.add('hand', next);
      };
      this.#steps.add('hand', next);
    };
    this.addEventListener('drawn', () => void draw());
    new IntersectionObserver(
      (entries) => {
        near = entries.some((entry) => entry.isIntersecting);
        if (near && this.#fresh) void draw();
      },
      { rootMargin: '20%' },
    ).observe(home);
  }

  #address(): string {
    const query = encodeState(this.#raw, this.#defaults);
    return query ? `${location.pathname}?${query}` : location.pathname;
  }

  #showInputs(): void {
    showPresets(this, this.#raw);
    showFitting(this, this.#raw);
    this.#showSet();
    this.#clearErrors();
  }

  #update(): void {
    this.#due = false;
    this.#fresh = true;
    this.#showInputs();
    void this.#answerInputs();
  }

  /** Asks for the answer to the present inputs; while one is under way, the newest inputs wait for it. */
  async #answerInputs(): Promise<void> {
    if (this.#asked) return;
    try {
      for (let raw = this.#raw; raw !== this.#asked; raw = this.#raw) {
        this.#asked = raw;
        const answer = await this.#asking('answer', raw);
        if ('top' in answer) this.#take(answer, raw);
        else if (raw === this.#raw) this.#refuse(answer);
      }
    } finally {
      this.#asked = undefined;
    }
    this.dispatchEvent(new Event('answer'));
    for (const go of this.#waiting.splice(0)) go();
  }

  /** Once the present inputs are answered. */
  #answered(): Promise<void> {
    return this.#asked ? new Promise((resolve) => this.#waiting.push(resolve)) : Promise.resolve();
  }

  /** A question about the example of this page; whoever answers comes to life with the first. */
  #asking: Asking = (question, ...of) => {
    const { example = '' } = this.dataset;
    if (!this.#example) throw new Error(`no example ${example}`);
    this.#ask ??= askingAbout(example, this.#example, this.classList.contains('ex-wide'));
    return this.#ask(question, ...of);
  };

  #copies(): Copies {
    const answer = this.#answer;
    return (
      answer && {
        link: location.origin + this.#address(),
        code: answer.code,
        json: answer.json,
      }
    );
  }

  #take(answer: Drawn, raw: Raw): void {
    this.#answer = answer;
    const home = this.querySelector('.ex-answer');
    if (home) this.#blocks ??= new Blocks(home);
    if (raw === this.#cameWith && this.#top === undefined) {
      this.#blocks?.stand(answer.blocks);
      this.#top = answer.top;
    }
    if (this.#fresh) this.#inStep('answer', () => this.#show(answer));
  }

  /** Does a step of the drawing when its time has come; at once while the page is being made ready. */
  #inStep(name: 'answer' | 'pictures', draw: () => void): void {
    if (this.dataset['ready'] === undefined) draw();
    else this.#steps.add(name, draw);
  }

  #refuse(refusal: Refusal): void {
    this.#steps.clear();
    this.#answer = undefined;
    this.#showError(refusal);
  }

  /** The sentence and the large figures; then the pictures and the rest. */
  #show(answer: Drawn): void {
    const top = this.querySelector<HTMLElement>('.ex-top');
    if (top && this.#top !== answer.top) top.innerHTML = answer.top;
    this.#top = answer.top;
    top?.removeAttribute('data-stale');
    this.#say(answer.says);
    this.#blocks?.want(answer.blocks);
    this.#inStep('pictures', () => this.#showRest());
  }

  #showRest(): void {
    if (this.#blocks?.draw()) {
      this.#inStep('pictures', () => this.#showRest());
      return;
    }
    this.querySelector('.ex-answer')?.removeAttribute('data-stale');
    void this.#showWorking();
    this.dispatchEvent(new Event('drawn'));
  }

  /** The working is brought up to date while it is open. */
  async #showWorking(): Promise<void> {
    const details = this.querySelector<HTMLDetailsElement>('.ex-working');
    const home = details?.querySelector('div');
    if (details && this.#answer) details.hidden = !this.#answer.works;
    if (!details?.open || !home) return;
    const raw = this.#raw;
    const html = await this.#asking('working', raw);
    if (raw === this.#raw) home.innerHTML = html;
  }

  /** Tells assistive software the answer; nothing is said before the reader has changed something. */
  #say(text: string): void {
    const status = this.querySelector<HTMLElement>('[role="status"]');
    if (status && this.dataset['ready'] !== undefined) status.textContent = unmarked(text);
  }

  #showError(error: Refusal): void {
    const { parameter } = error;
    const field = this.#example?.fieldOf?.(parameter) ?? blamedField(this.#inputs, parameter);
    const cell = this.querySelector(`[data-cell="${CSS.escape(parameter)}"]`);
    const control = cell ?? (field ? controlOf(this, field) : null);
    const home =
      control?.closest('.ex-field, .ex-rows') ?? this.querySelector(`[data-rows="${field}"]`);
    const slot = (home ?? this).querySelector<HTMLElement>(home ? '.ex-error' : '.ex-general');
    const label =
      cell?.getAttribute('aria-label') ??
      home?.querySelector('label')?.firstChild?.textContent?.trim();
    const { index } = error;
    const place = index === undefined ? ['', ''] : [`[${index}]`, ` (${index + 1})`];
    const message = unmarked(
      said(
        typedApart(error.message)
          .replace(parameter + place[0], (label ?? parameterWords(parameter)) + place[1])
          .replace(/, got NaN(?=$|;)/, ''),
      ),
    );
    control?.setAttribute('aria-invalid', 'true');
    if (slot) {
      slot.textContent = message;
      slot.hidden = false;
    }
    for (const part of this.querySelectorAll('.ex-answer, .ex-top'))
      part.setAttribute('data-stale', '');
    const says = this.querySelector('.ex-says');
    if (says) says.textContent = words().stale;
    this.#top = undefined;
    this.#blocks?.forget();
    this.#say(message);
  }

  #clearErrors(): void {
    for (const slot of this.querySelectorAll<HTMLElement>('.ex-error')) slot.hidden = true;
    for (const control of this.querySelectorAll('[aria-invalid]'))
      control.removeAttribute('aria-invalid');
  }
}

customElements.define('worked-example', WorkedExample);
