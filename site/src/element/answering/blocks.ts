/** Brings an answer onto the page piece by piece: only what has changed, and little at a time. */

/** Signs of HTML that are drawn in one step; a picture may have more. */
const AT_ONCE = 2500;

/** Puts new HTML in the place of an element: what was folded out stays so, and a mark that is moved keeps the focus. */
function replace(old: Element, html: string): void {
  const template = document.createElement('template');
  template.innerHTML = html;
  const fresh = template.content.firstElementChild;
  if (!fresh) return;
  const folds = (within: Element) => [
    ...(within instanceof HTMLDetailsElement ? [within] : []),
    ...within.querySelectorAll('details'),
  ];
  const open = folds(old).map((details) => details.open);
  folds(fresh).forEach((details, index) => {
    details.open = open[index] ?? false;
  });
  const marks = (within: Element) => [...within.querySelectorAll<HTMLElement>('[data-handle]')];
  const held = marks(old).indexOf(document.activeElement as HTMLElement);
  old.replaceWith(fresh);
  marks(fresh)[held]?.focus({ preventScroll: true });
}

/** The pieces of an answer within `home`, each one element. */
export class Blocks {
  readonly #home: Element;
  /** What stands on the page; none while that is not known. */
  #shown: string[] = [];
  #wanted: readonly string[] = [];

  constructor(home: Element) {
    this.#home = home;
  }

  /** Says what the page came with. */
  stand(blocks: readonly string[]): void {
    if (this.#shown.length === 0 && this.#home.children.length === blocks.length)
      this.#shown = [...blocks];
  }

  /** Something else was written over it: all of it is drawn anew. */
  forget(): void {
    this.#shown = [];
  }

  /** Says what is to be shown from now on. */
  want(blocks: readonly string[]): void {
    this.#wanted = blocks;
  }

  /** Draws some of what is due; whether there is more. */
  draw(): boolean {
    const [home, wanted] = [this.#home, this.#wanted];
    let signs = 0;
    for (const [index, html] of wanted.entries()) {
      if (this.#shown[index] === html) continue;
      if (signs > 0 && signs + html.length > AT_ONCE) return true;
      signs += html.length;
      const old = home.children[index];
      if (old) replace(old, html);
      else home.insertAdjacentHTML('beforeend', html);
      this.#shown[index] = html;
    }
    while (home.children.length > wanted.length) home.lastElementChild?.remove();
    this.#shown.length = wanted.length;
    return false;
  }
}
