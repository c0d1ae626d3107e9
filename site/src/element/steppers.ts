/** Stepper buttons and arrow keys of number fields and number cells. */

import { typedAngle } from '../lib/inputs/angles.js';
import { localNumber } from '../lib/language/language.js';

/** A number after some steps, without the noise of binary fractions, held to its bounds. */
function stepped(
  value: number,
  step: number,
  steps: number,
  minimum = Number.NEGATIVE_INFINITY,
  maximum = Number.POSITIVE_INFINITY,
): number {
  const decimals = (x: number) => (String(x).split('.')[1] ?? '').length;
  const digits = Math.max(decimals(step), Math.min(decimals(value), 8));
  const next = Number((value + step * steps).toFixed(digits));
  return Math.min(Math.max(next, minimum), maximum);
}

const bound = (text: string | undefined) => (text === undefined ? undefined : Number(text));

function step(control: HTMLInputElement, steps: number): void {
  const { number, min, max } = control.dataset;
  const value = typedAngle(control.value);
  const from = Number.isNaN(value) ? 0 : value;
  control.value = localNumber(String(stepped(from, Number(number), steps, bound(min), bound(max))));
}

const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

/** Listens within `root`; `changed` is called after each step. */
export function listenToSteppers(root: HTMLElement, changed: () => void): void {
  root.addEventListener('click', (event) => {
    const button = (event.target as Element).closest<HTMLElement>('[data-step]');
    const control = button?.parentElement?.querySelector('input');
    if (!button || !control) return;
    step(control, Number(button.dataset['step']));
    changed();
  });
  root.addEventListener('keydown', (event) => {
    const control = event.target;
    if (!(control instanceof HTMLInputElement) || control.dataset['number'] === undefined) return;
    const steps = KEYS[event.key];
    if (steps === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    step(control, event.shiftKey ? steps * 10 : steps);
    changed();
  });
}
