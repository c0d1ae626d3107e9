/** The row of buttons under an answer: copy as link, code or JSON, print. */

import { words } from '../lib/language/language.js';

/** What can be copied; `undefined` while the inputs hold an error. */
export type Copies = Readonly<Record<'link' | 'code' | 'json', string>> | undefined;

/** Prints the live part alone: question, inputs, answer, picture, working, address and day. */
function printLive(): void {
  const { dataset } = document.documentElement;
  dataset['printLive'] = `${location.href}, ${new Date().toISOString().slice(0, 10)}`;
  addEventListener('afterprint', () => delete dataset['printLive'], { once: true });
  window.print();
}

/** Listens within `root`; `say` tells assistive software what happened. */
export function listenToShare(
  root: HTMLElement,
  copies: () => Copies | Promise<Copies>,
  say: (text: string) => void,
): void {
  const answer = (button: HTMLButtonElement, word: string) => {
    const before = button.textContent;
    // Not `disabled`: that would throw the focus away.
    if (button.ariaDisabled === 'true') return;
    button.ariaDisabled = 'true';
    button.textContent = word;
    say(word);
    window.setTimeout(() => {
      button.textContent = before;
      button.ariaDisabled = null;
    }, 1200);
  };
  root.addEventListener('click', (event) => {
    const button = (event.target as Element).closest('button');
    if (!button) return;
    if (button.dataset['print'] !== undefined) printLive();
    const what = button.dataset['copy'] as 'link' | 'code' | 'json' | undefined;
    if (!what) return;
    const copy = (made: Copies) => {
      if (!made) {
        answer(button, words().mendFirst);
        return;
      }
      navigator.clipboard.writeText(made[what]).then(
        () => answer(button, words().copied),
        () => answer(button, words().copyRefused),
      );
    };
    const made = copies();
    if (made instanceof Promise) void made.then(copy);
    else copy(made);
  });
}
