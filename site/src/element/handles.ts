/** Marks of the pictures that are moved: by a finger or a mouse, and by the arrow keys. */

import type { Handle } from '../lib/example.js';

type Changes = Readonly<Record<string, unknown>>;

/** Steps to the right and up of a key; a page key is ten of an arrow's. */
const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, 10],
  PageDown: [0, -10],
};

/** Listens within `root`; `handles` are those of the present answer, in the order of the page, and `change` takes new inputs. */
export function listenToHandles(
  root: HTMLElement,
  handles: () => readonly Handle[],
  change: (changes: Changes) => void,
): void {
  const marks = () => [...root.querySelectorAll<HTMLElement>('[data-handle]')];
  let held: { readonly index: number; readonly handle: Handle } | undefined;
  let next = 0;

  root.addEventListener('pointerdown', (event) => {
    const mark = (event.target as Element).closest<HTMLElement>('[data-handle]');
    if (!mark || event.button !== 0) return;
    // Where marks lie close together the nearest is meant, not the uppermost.
    const far = (one: HTMLElement) => {
      const box = one.getBoundingClientRect();
      return Math.hypot(
        (box.left + box.right) / 2 - event.clientX,
        (box.top + box.bottom) / 2 - event.clientY,
      );
    };
    const all = marks();
    const nearest = all
      .filter((one) => one.parentElement === mark.parentElement)
      .reduce((a, b) => (far(b) < far(a) ? b : a), mark);
    const index = all.indexOf(nearest);
    const handle = handles()[index];
    if (!handle) return;
    event.preventDefault();
    nearest.focus({ preventScroll: true });
    // The mark itself is drawn anew at each move; what holds the pointer has to stay.
    root.setPointerCapture(event.pointerId);
    root.dataset['held'] = '';
    held = { index, handle };
  });
  root.addEventListener('pointermove', (event) => {
    if (!held) return;
    cancelAnimationFrame(next);
    next = requestAnimationFrame(() => {
      if (!held) return;
      const box = marks()[held.index]?.parentElement?.getBoundingClientRect();
      if (!box || box.width === 0) return;
      // As the picture was when the mark was taken up: its axes may change under the pointer.
      const to = [event.clientX - box.left, event.clientY - box.top] as const;
      const changes = held.handle.put(to[0] / box.width, to[1] / box.height);
      if (changes) change(changes);
    });
  });
  for (const end of ['pointerup', 'pointercancel'])
    root.addEventListener(end, () => {
      held = undefined;
      delete root.dataset['held'];
    });
  root.addEventListener('keydown', (event) => {
    const mark = (event.target as Element).closest<HTMLElement>('[data-handle]');
    const steps = KEYS[event.key];
    if (!mark || !steps || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const times = event.shiftKey ? 10 : 1;
    const handle = handles()[marks().indexOf(mark)];
    const changes = handle?.step(steps[0] * times, steps[1] * times);
    if (changes) change(changes);
  });
}
