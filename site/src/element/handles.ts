/** Marks of the pictures that are moved: by a finger or a mouse, and by the arrow keys. */

import type { Move } from './answering/session.js';

/** How marks are asked: by their place on the page, or the one that is held. */
export interface Marks {
  /** Takes up a mark as its picture is now: its axes may change under the pointer. */
  readonly hold: (index: number) => void;
  /** Moves a mark, the one that is held where none is named; done when the form has the new inputs. */
  readonly move: (index: number | undefined, move: Move) => Promise<void>;
}

/** Steps to the right and up of a key; a page key is ten of an arrow's. */
const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, 10],
  PageDown: [0, -10],
};

/** Listens within `root` for fingers, mice and keys on its marks. */
export function listenToHandles(root: HTMLElement, asked: Marks): void {
  const marks = () => [...root.querySelectorAll<HTMLElement>('[data-handle]')];
  let held: number | undefined;
  let next = 0;
  // One after the other: a step counts from where the one before has led.
  let moves: Promise<void> = Promise.resolve();
  let latest: readonly [number, number] | undefined;
  const follow = () => {
    moves = moves.then(async () => {
      const put = latest;
      latest = undefined;
      if (put) await asked.move(undefined, { put });
    });
  };

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
    event.preventDefault();
    nearest.focus({ preventScroll: true });
    // The mark itself is drawn anew at each move; what holds the pointer has to stay.
    root.setPointerCapture(event.pointerId);
    root.dataset['held'] = '';
    held = all.indexOf(nearest);
    asked.hold(held);
  });
  root.addEventListener('pointermove', (event) => {
    if (held === undefined) return;
    cancelAnimationFrame(next);
    next = requestAnimationFrame(() => {
      const box = marks()[held ?? -1]?.parentElement?.getBoundingClientRect();
      if (!box || box.width === 0) return;
      latest = [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
      follow();
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
    const index = marks().indexOf(mark);
    moves = moves.then(() => asked.move(index, { step: [steps[0] * times, steps[1] * times] }));
  });
}
