// What is too wide for the window scrolls sideways, so the keyboard must reach it; what fits is no stop on the way.
addEventListener('load', () => {
  const wide = document.querySelectorAll('.katex-display, .sl-markdown-content > table');
  const look = new ResizeObserver((entries) => {
    for (const { target } of entries)
      if (target.scrollWidth > target.clientWidth) target.setAttribute('tabindex', '0');
      else target.removeAttribute('tabindex');
  });
  for (const element of wide) look.observe(element);
});
