/** Draws an answer in steps, each a task of its own after the page has been painted: no change holds up the next key. */

/** Runs something after the next picture of the page; where none comes, as in a tab in the background, a tenth of a second later. */
function afterPaint(run: () => void): void {
  let ran = false;
  const once = () => {
    if (ran) return;
    ran = true;
    run();
  };
  requestAnimationFrame(() => setTimeout(once));
  setTimeout(once, 100);
}

/**
 * Steps by their names, in the order of `names`. A step takes the place of an older one of its name; the last name goes first,
 * so that what was begun is finished before the next answer, however fast answers follow one another.
 */
export function paintSteps<Name extends string>(names: readonly Name[]) {
  const due = new Map<Name, () => void>();
  let waits = false;
  const next = () => {
    waits = false;
    const name = names.findLast((one) => due.has(one));
    const step = name && due.get(name);
    if (!name || !step) return;
    due.delete(name);
    step();
    wait();
  };
  const wait = () => {
    if (waits || due.size === 0) return;
    waits = true;
    afterPaint(next);
  };
  return {
    add(name: Name, step: () => void): void {
      due.set(name, step);
      wait();
    },
    /** Nothing of what waits is drawn any more. */
    clear: () => due.clear(),
  };
}
