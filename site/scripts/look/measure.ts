/** What can be measured of how a page lies: run inside the page. */

export interface Finding {
  readonly path: string;
  readonly width: number;
  readonly kind: string;
  readonly what: string;
}

/** Everything that sticks out, is cut, is too small to touch, or lies over something else. Needs no other function: it travels as text. */
export function measure(): { kind: string; what: string }[] {
  const found: { kind: string; what: string }[] = [];
  const name = (one: Element) => {
    const own = one.id ? `#${one.id}` : `.${[...one.classList].slice(0, 2).join('.')}`;
    return `${one.tagName.toLowerCase()}${own.length > 1 ? own : ''} "${(one.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 40)}"`;
  };
  const seen = (one: Element) =>
    one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
    !one.closest('.sr-only, thead, caption, [aria-hidden="true"] svg');
  const main = document.querySelector('main') ?? document.body;

  const window_ = document.documentElement.clientWidth;
  const wide = document.documentElement.scrollWidth;
  if (wide > window_) {
    const worst = [...document.body.querySelectorAll('*')]
      .filter((one) => seen(one) && one.getBoundingClientRect().right > window_ + 1)
      .at(-1);
    found.push({ kind: 'overflow', what: `${wide} px, ${worst ? name(worst) : ''}` });
  }

  for (const one of main.querySelectorAll<HTMLElement>('*')) {
    if (one instanceof SVGElement || one.closest('.katex') || !seen(one)) continue;
    const style = getComputedStyle(one);
    const holdsText = [...one.childNodes].some(
      (node) => node.nodeType === 3 && (node.textContent ?? '').trim() !== '',
    );
    if (
      holdsText &&
      /hidden|clip/.test(style.overflowX) &&
      one.scrollWidth > one.clientWidth + 1 &&
      one.clientWidth > 1
    )
      found.push({ kind: 'cut', what: `${name(one)} ${one.scrollWidth} of ${one.clientWidth} px` });
    if (
      holdsText &&
      style.overflowX === 'visible' &&
      !/inline|contents/.test(style.display) &&
      one.scrollWidth > one.clientWidth + 2
    )
      found.push({
        kind: 'spills',
        what: `${name(one)} ${one.scrollWidth} of ${one.clientWidth} px`,
      });
    if (
      one instanceof HTMLInputElement &&
      /text|search|number/.test(one.type) &&
      one.scrollWidth > one.clientWidth + 1
    )
      found.push({
        kind: 'cut',
        what: `field ${one.name || one.id} "${one.value}" ${one.scrollWidth} of ${one.clientWidth} px`,
      });
    if (
      one instanceof HTMLInputElement &&
      one.value === '' &&
      one.placeholder &&
      one.clientWidth > 1
    ) {
      const pen = document.createElement('canvas').getContext('2d');
      if (pen) {
        pen.font = style.font;
        const space =
          one.clientWidth -
          Number.parseFloat(style.paddingLeft) -
          Number.parseFloat(style.paddingRight);
        const needs = pen.measureText(one.placeholder).width;
        if (needs > space + 1)
          found.push({
            kind: 'cut',
            what: `placeholder ${one.name || one.id} "${one.placeholder}" ${Math.round(needs)} of ${Math.round(space)} px`,
          });
      }
    }
  }

  const touched = [
    ...document.body.querySelectorAll<HTMLElement>(
      'button, input, select, textarea, summary, [role="slider"], [role="button"], nav a, .ex a, .steps a',
    ),
  ].filter(
    (one) =>
      seen(one) &&
      !(one instanceof HTMLInputElement && one.type === 'hidden') &&
      !one.closest('.sr-only, p, li p, dd, .ex-note'),
  );
  const boxes = touched.map((one) => {
    const label =
      one instanceof HTMLInputElement && /radio|checkbox/.test(one.type)
        ? one.closest('label')
        : null;
    return { one, box: (label ?? one).getBoundingClientRect() };
  });
  for (const { one, box } of boxes)
    if (box.width > 1 && box.height > 1 && (box.height < 23.5 || box.width < 23.5))
      found.push({
        kind: 'small',
        what: `${name(one)} ${Math.round(box.width)} x ${Math.round(box.height)} px`,
      });
  const shared = (a: DOMRect, b: DOMRect) => [
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
  ];
  const inMain = boxes.filter(({ one }) => main.contains(one));
  inMain.forEach(({ one, box }, i) => {
    for (const { one: other, box: its } of inMain.slice(i + 1)) {
      if (
        one.contains(other) ||
        other.contains(one) ||
        (one.closest('label') === other.closest('label') && one.closest('label'))
      )
        continue;
      const [x = 0, y = 0] = shared(box, its);
      if (x > 2 && y > 2)
        found.push({
          kind: 'over',
          what: `${name(one)} and ${name(other)} by ${Math.round(x)} x ${Math.round(y)} px`,
        });
    }
  });

  for (const svg of document.querySelectorAll('svg.draw')) {
    if (!seen(svg)) continue;
    const frame = svg.getBoundingClientRect();
    const texts = [...svg.querySelectorAll('text')]
      .filter(seen)
      .map((one) => ({ one, box: one.getBoundingClientRect() }));
    const title = (svg.getAttribute('aria-label') ?? '').slice(0, 30);
    texts.forEach(({ one, box }, i) => {
      if (
        box.left < frame.left - 2 ||
        box.right > frame.right + 2 ||
        box.top < frame.top - 3 ||
        box.bottom > frame.bottom + 3
      )
        found.push({ kind: 'label out', what: `"${one.textContent}" in "${title}"` });
      for (const { one: other, box: its } of texts.slice(i + 1)) {
        const [x = 0, y = 0] = shared(box, its);
        // The box of a line is higher than its letters: what overlaps less cannot be seen.
        if (x > 2 && y > Math.min(box.height, its.height) * 0.35)
          found.push({
            kind: 'labels',
            what: `"${one.textContent}" and "${other.textContent}" by ${Math.round(x)} x ${Math.round(y)} px in "${title}"`,
          });
      }
    });
    const size = texts.map(({ one }) => {
      const scale = one.getScreenCTM()?.a ?? 1;
      return Number.parseFloat(getComputedStyle(one).fontSize) * scale;
    });
    const least = Math.min(...size.filter((px) => px > 0));
    if (least < 10)
      found.push({ kind: 'tiny', what: `text of ${least.toFixed(1)} px in "${title}"` });
  }

  if (window_ === 390)
    for (const example of [...document.querySelectorAll('worked-example')].slice(0, 1)) {
      const end = (what: string) =>
        Math.round(
          Math.max(
            ...[...example.querySelectorAll(what)]
              .slice(0, 1)
              .map((one) => one.getBoundingClientRect().bottom + scrollY),
          ),
        );
      found.push({
        kind: 'live',
        what: `${end('.ex-says')} sentence, ${end('.ex-form :is(input, select, textarea)')} first field, ${end('.ex-figure svg')} picture`,
      });
    }
  return found;
}
