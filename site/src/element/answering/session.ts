/** Computes the answers of an example and draws them as HTML. Needs no page: it runs in a worker, or in the page where there is none. */

import { DomainError } from 'slantpath';
import type { Example, Handle } from '../../lib/example.js';
import { defaultsOf, type Raw, rawOfValues, readValues } from '../../lib/inputs/state.js';
import { said, words } from '../../lib/language/language.js';
import { renderRest, renderTop, renderView } from '../../lib/render.js';

/** What a refused input says, without the error itself. */
export interface Refusal {
  readonly message: string;
  readonly parameter: string;
  readonly index: number | undefined;
}

/** An answer as it goes onto the page. */
export interface Drawn {
  /** Its sentence, in the language of the page. */
  readonly says: string;
  /** HTML of what stands above everything; empty where the page has no such place. */
  readonly top: string;
  /** HTML of each thing below: pictures, figures, remarks, tables. */
  readonly blocks: readonly string[];
  readonly result: unknown;
  readonly code: string;
  readonly json: string;
  /** Whether there is a worked solution. */
  readonly works: boolean;
}

/** How a mark is moved: put to a place of the picture, or by steps to the right and up. */
export type Move =
  | { readonly put: readonly [number, number] }
  | { readonly step: readonly [number, number] };

const refused = (error: unknown): Refusal => {
  if (!(error instanceof DomainError)) throw error;
  const { message, parameter, index } = error;
  return { message, parameter, index };
};

/** The answers of one example, one after the other. */
export class Session {
  readonly #name: string;
  readonly #example: Example;
  /** Whether the answer stands first, over the whole width. */
  readonly #wide: boolean;
  #last:
    | { readonly values: Parameters<Example['compute']>[0]; readonly result: unknown }
    | undefined;
  /** The last inputs that had an answer: a button starts from them while a field is refused, or from the page's own. */
  #taken: Parameters<Example['compute']>[0] | undefined;
  #asked = '';
  #handles: readonly Handle[] = [];
  #held: Handle | undefined;

  constructor(name: string, example: Example, wide: boolean) {
    this.#name = name;
    this.#example = example;
    this.#wide = wide;
  }

  /** The answer to inputs, or why there is none. */
  answer(raw: Raw): Drawn | Refusal {
    const example = this.#example;
    this.#asked = JSON.stringify(raw);
    this.#handles = [];
    this.#last = undefined;
    try {
      const values = readValues(example.inputs, raw);
      const result = example.compute(values);
      this.#last = { values, result };
      this.#taken = values;
      const view = example.view(result, values);
      this.#handles = (view.figures ?? []).flatMap(({ handles = [] }) => handles);
      return {
        says: said(view.says),
        top: this.#wide ? renderTop(words(), view) : '',
        blocks: (this.#wide ? renderRest : renderView)(words(), view),
        result,
        code: example.code(values, result),
        json: JSON.stringify({ example: this.#name, inputs: values, result }, null, 2),
        works: (example.working?.(values, result) ?? []).length > 0,
      };
    } catch (error) {
      return refused(error);
    }
  }

  /** HTML of the steps by hand of the answer to inputs. */
  async hand(raw: Raw): Promise<string> {
    this.#bringTo(raw);
    const [last, example] = [this.#last, this.#example];
    if (!last) return '';
    const [{ workedSolution }, { solutionsOf }, { renderHand, stepsOf }] = await Promise.all([
      import('slantpath/teaching'),
      import('../../lib/working.js'),
      import('../../lib/hand.js'),
    ]);
    const { values, result } = last;
    return renderHand(
      [
        ...stepsOf(solutionsOf(workedSolution, example.working?.(values, result) ?? [])),
        ...(example.hand?.(values, result) ?? []),
      ],
      example.handWaits,
    );
  }

  /** HTML of the worked solution of the answer to inputs. */
  async working(raw: Raw): Promise<string> {
    this.#bringTo(raw);
    const [last, example] = [this.#last, this.#example];
    if (!last) return '';
    const [{ workedSolution }, { renderWorkings, solutionsOf }] = await Promise.all([
      import('slantpath/teaching'),
      import('../../lib/working.js'),
    ]);
    const working = example.working?.(last.values, last.result) ?? [];
    return renderWorkings(words(), solutionsOf(workedSolution, working));
  }

  /** Takes up a mark in the picture of these inputs: it moves in it from now on, though its axes may change meanwhile. */
  hold(index: number, raw: Raw): void {
    this.#bringTo(raw);
    this.#held = this.#handles[index];
  }

  /** What the inputs become when a mark is moved: the one that is held, or one in the picture of these inputs. */
  move(index: number | undefined, raw: Raw, move: Move): Raw | undefined {
    if (index !== undefined) this.#bringTo(raw);
    const handle = index === undefined ? this.#held : this.#handles[index];
    const changes = 'put' in move ? handle?.put(...move.put) : handle?.step(...move.step);
    return (
      changes && rawOfValues(this.#example.inputs, changes as Parameters<typeof rawOfValues>[1])
    );
  }

  /** What these inputs become when a button of the example's own is pressed; a refused field does not stop it. */
  act(index: number, raw: Raw): Raw | undefined {
    this.#bringTo(raw);
    const action = this.#example.actions?.[index];
    if (!action) return undefined;
    const { inputs } = this.#example;
    const values = this.#taken ?? readValues(inputs, defaultsOf(inputs));
    return rawOfValues(inputs, action.change(values));
  }

  /** Computes inputs that have not been answered yet. */
  #bringTo(raw: Raw): void {
    if (JSON.stringify(raw) !== this.#asked) this.answer(raw);
  }
}
