// What is too wide for the window scrolls sideways, so the keyboard must reach it; what fits is no stop on the way.
addEventListener('load', () => {
  const wide = document.querySelectorAll('.katex-display, .sl-markdown-content > table');
  const look = new ResizeObserver((entries) => {
    // All are measured before any is changed, or each would be laid out anew.
    const sticksOut = entries.map(({ target }) => target.scrollWidth > target.clientWidth);
    entries.forEach(({ target }, index) => {
      if (sticksOut[index]) target.setAttribute('tabindex', '0');
      else if (target.hasAttribute('tabindex')) target.removeAttribute('tabindex');
    });
  });
  for (const element of wide) look.observe(element);
});
