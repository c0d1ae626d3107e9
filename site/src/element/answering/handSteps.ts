/** Brings the steps by hand up to date on the page: only the steps that changed, and few at a time, since formulas are slow to lay out. */

/** Steps that are drawn at once. */
const AT_ONCE = 3;

/** The changes that lead from what stands in `home` to new HTML, each to be made in a task of its own. */
export function handChanges(home: Element, html: string): (() => void)[] {
  const template = document.createElement('template');
  template.innerHTML = html;
  const [old, fresh] = [
    [...home.querySelectorAll('li')],
    [...template.content.querySelectorAll('li')],
  ];
  const folds = (within: ParentNode) => [...within.querySelectorAll('summary')];
  const [before, after] = [folds(home), folds(template.content)];
  const sameShape =
    old.length > 0 &&
    old.length === fresh.length &&
    before.length === after.length &&
    old.every(
      (li, at) => Boolean(li.closest('details')) === Boolean(fresh[at]?.closest('details')),
    );
  if (!sameShape)
    return [
      () => {
        home.innerHTML = html;
      },
    ];
  const due = [...old, ...before].flatMap((one, at): [Element, Element][] => {
    const next = [...fresh, ...after][at];
    return next && !one.isEqualNode(next) ? [[one, next]] : [];
  });
  return Array.from({ length: Math.ceil(due.length / AT_ONCE) }, (_, batch) => () => {
    for (const [one, next] of due.slice(batch * AT_ONCE, (batch + 1) * AT_ONCE))
      one.replaceWith(next);
  });
}
