/**
 * `<worked-example>`: brings to life an example that was drawn when the site was built.
 *
 * Each change is computed at once by the library; the state goes into the URL.
 */

import { DomainError } from 'slantpath';
import type { Example, Handle, View, Working } from '../lib/example.js';
import { typedApart } from '../lib/formulaApart.js';
import type { Inputs, Values } from '../lib/inputs/inputs.js';
import {
  blamedField,
  decodeState,
  defaultsOf,
  encodeState,
  type Raw,
  rawOfValues,
  readValues,
} from '../lib/inputs/state.js';
import { said, speak, unmarked, words } from '../lib/language/language.js';
import { languageFor } from '../lib/language/languages.js';
import { parameterWords } from '../lib/parameterWords.js';
import { renderRest, renderTop, renderView } from '../lib/render.js';
import { controlOf, fillForm, readForm, showFitting } from './form.js';
import { listenToHandles } from './handles.js';
import { paintSteps } from './paintSteps.js';
import { listenToPlaces, showPresets } from './places.js';
import { type Copies, listenToShare } from './share.js';
import { listenToSteppers } from './steppers.js';
import { listenToTables } from './tables.js';

const modules = import.meta.glob<{ default: Example }>('../examples/**/*.ts');

export class WorkedExample extends HTMLElement {
  #result: unknown;
  /** The page came with the answer to these inputs: it is computed when something first needs more than the picture. */
  #due = false;
  #example: Example | undefined;
  #inputs: Inputs = {};
  #defaults: Raw = {};
  #raw: Raw = {};
  #copies: () => Copies = () => undefined;
  #values: Values<Inputs> | undefined;
  #later = 0;
  #working: readonly Working[] = [];
  #handles: () => readonly Handle[] = () => [];
  readonly #steps = paintSteps(['answer', 'pictures', 'hand']);

  /** The present result, for elements that go on with it; they are told by the event `answer`. */
  get result(): unknown {
    this.#settle();
    return this.#result;
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
    listenToHandles(
      this,
      () => {
        this.#settle();
        return this.#handles();
      },
      (changes) => {
        fillForm(this, this.#inputs, rawOfValues(this.#inputs, changes as Partial<Values<Inputs>>));
        changed();
      },
    );
    listenToShare(
      this,
      () => {
        this.#settle();
        return this.#copies();
      },
      (text) => this.#say(text),
    );
    this.addEventListener('input', (event) => {
      this.#chooseSet(event);
      changed();
    });
    this.querySelector('form')?.addEventListener('submit', (event) => event.preventDefault());
    this.querySelector('[data-reset]')?.addEventListener('click', () => this.#reset());
    this.addEventListener('click', (event) => this.#act(event));
    this.querySelector('.ex-working')?.addEventListener('toggle', () => void this.#showWorking());
    addEventListener('popstate', () => this.#fromUrl());
    // What is slow at its first use, such as the climate grid, is made ready before the first change.
    this.addEventListener('focusin', () => window.setTimeout(() => this.#settle()), { once: true });
    this.#due = location.search === '';
    this.#fromUrl();
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
    this.dispatchEvent(new Event('answer'));
  }

  /** Computes what the page came with. */
  #settle(): void {
    if (this.#due) this.#update();
  }

  #reset(): void {
    fillForm(this, this.#inputs, this.#defaults);
    this.#changed();
  }

  /** A button of the example's own: some inputs get new values. */
  #act(event: Event): void {
    const button = (event.target as Element).closest<HTMLElement>('[data-action]');
    const action = this.#example?.actions?.[Number(button?.dataset['action'])];
    this.#settle();
    if (!button || !action || !this.#values) return;
    const raw = rawOfValues(this.#inputs, action.change(this.#values));
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
    this.dispatchEvent(new Event('answer'));
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
    const draw = async () => {
      const example = this.#example;
      if (!near || !example || !this.#values || this.#result === undefined) return;
      const [values, result] = [this.#values, this.#result];
      const [{ workedSolution }, { solutionsOf }, { renderHand, stepsOf }] = await Promise.all([
        import('slantpath/teaching'),
        import('../lib/working.js'),
        import('../lib/hand.js'),
      ]);
      if (values !== this.#values) return;
      home.innerHTML = renderHand([
        ...stepsOf(solutionsOf(workedSolution, this.#working)),
        ...(example.hand?.(values, result) ?? []),
      ]);
    };
    this.addEventListener('drawn', () => this.#steps.add('hand', () => void draw()));
    new IntersectionObserver(
      (entries) => {
        near = entries.some((entry) => entry.isIntersecting);
        if (near && !this.#due) void draw();
      },
      { rootMargin: '100%' },
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
    const example = this.#example;
    if (!example) return;
    const drawn = this.#due;
    this.#due = false;
    this.#showInputs();
    try {
      const values = readValues(this.#inputs, this.#raw);
      this.#values = values;
      const result = example.compute(values);
      this.#result = result;
      const handlesOf = ({ figures = [] }: View) => figures.flatMap(({ handles = [] }) => handles);
      // What came with the page is drawn already; its marks are asked for only when one is moved.
      this.#handles = () => handlesOf(example.view(result, values));
      this.#working = example.working?.(values, result) ?? [];
      this.#copies = () => ({
        link: location.origin + this.#address(),
        code: example.code(values, result),
        json: JSON.stringify({ example: this.dataset['example'], inputs: values, result }, null, 2),
      });
      if (drawn) return;
      this.#inStep('answer', () => {
        const view = example.view(result, values);
        this.#handles = () => handlesOf(view);
        this.#show(view);
      });
    } catch (error) {
      this.#refuse(error);
    }
  }

  /** Does a step of the drawing when its time has come; at once while the page is being made ready. */
  #inStep(name: 'answer' | 'pictures', draw: () => void): void {
    const step = () => {
      try {
        draw();
      } catch (error) {
        this.#refuse(error);
      }
    };
    if (this.dataset['ready'] === undefined) step();
    else this.#steps.add(name, step);
  }

  #refuse(error: unknown): void {
    if (!(error instanceof DomainError)) throw error;
    this.#steps.clear();
    this.#copies = () => undefined;
    this.#result = undefined;
    this.#showError(error);
  }

  /** The sentence and the large figures; then the pictures and the rest. */
  #show(view: View): void {
    const top = this.querySelector<HTMLElement>('.ex-top');
    if (top) top.innerHTML = renderTop(words(), view);
    top?.removeAttribute('data-stale');
    this.#say(said(view.says));
    if (top) this.#inStep('pictures', () => this.#showRest(renderRest(words(), view)));
    else this.#showRest(renderView(words(), view));
  }

  #showRest(html: string): void {
    const answer = this.querySelector<HTMLElement>('.ex-answer');
    if (!answer) return;
    const open = [...answer.querySelectorAll('details')].map((details) => details.open);
    const marks = () => [...answer.querySelectorAll<HTMLElement>('[data-handle]')];
    const held = marks().indexOf(document.activeElement as HTMLElement);
    answer.innerHTML = html;
    answer.querySelectorAll('details').forEach((details, index) => {
      details.open = open[index] ?? false;
    });
    answer.removeAttribute('data-stale');
    // A mark keeps the focus while it is moved.
    marks()[held]?.focus({ preventScroll: true });
    void this.#showWorking();
    this.dispatchEvent(new Event('drawn'));
  }

  /** The working is brought up to date while it is open; what it needs is fetched at its first use. */
  async #showWorking(): Promise<void> {
    const details = this.querySelector<HTMLDetailsElement>('.ex-working');
    const home = details?.querySelector('div');
    if (details) details.hidden = this.#working.length === 0;
    if (!details?.open || !home) return;
    const working = this.#working;
    const [{ workedSolution }, { renderWorkings, solutionsOf }] = await Promise.all([
      import('slantpath/teaching'),
      import('../lib/working.js'),
    ]);
    if (working !== this.#working) return;
    home.innerHTML = renderWorkings(words(), solutionsOf(workedSolution, working));
  }

  /** Tells assistive software the answer; nothing is said before the reader has changed something. */
  #say(text: string): void {
    const status = this.querySelector<HTMLElement>('[role="status"]');
    if (status && this.dataset['ready'] !== undefined) status.textContent = unmarked(text);
  }

  #showError(error: DomainError): void {
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
    this.#say(message);
  }

  #clearErrors(): void {
    for (const slot of this.querySelectorAll<HTMLElement>('.ex-error')) slot.hidden = true;
    for (const control of this.querySelectorAll('[aria-invalid]'))
      control.removeAttribute('aria-invalid');
  }
}

customElements.define('worked-example', WorkedExample);
