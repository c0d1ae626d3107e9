/** Symbols of plans in print: the TeX of a symbol as plain signs and as MathML. */

const LETTERS: Readonly<Record<string, string>> = {
  alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ', Delta: 'Δ', varepsilon: 'ε', epsilon: 'ε', zeta: 'ζ', eta: 'η',
  theta: 'θ', vartheta: 'ϑ', lambda: 'λ', mu: 'μ', nu: 'ν', xi: 'ξ', pi: 'π', rho: 'ρ', sigma: 'σ', tau: 'τ',
  varphi: 'φ', phi: 'ϕ', Phi: 'Φ', psi: 'ψ', chi: 'χ', kappa: 'κ', omega: 'ω', Omega: 'Ω', ell: 'ℓ',
}; // biome-ignore format: a table of letters

const LOWERED: Readonly<Record<string, string>> = {
  0: '₀', 1: '₁', 2: '₂', 3: '₃', 4: '₄', 5: '₅', 6: '₆', 7: '₇', 8: '₈', 9: '₉', '+': '₊', '-': '₋', a: 'ₐ',
  e: 'ₑ', h: 'ₕ', i: 'ᵢ', k: 'ₖ', l: 'ₗ', m: 'ₘ', n: 'ₙ', o: 'ₒ', p: 'ₚ', r: 'ᵣ', s: 'ₛ', t: 'ₜ', u: 'ᵤ', v: 'ᵥ', x: 'ₓ',
}; // biome-ignore format: a table of letters

const RAISED: Readonly<Record<string, string>> = {
  0: '⁰', 1: '¹', 2: '²', 3: '³', 4: '⁴', 5: '⁵', 6: '⁶', 7: '⁷', 8: '⁸', 9: '⁹', '-': '⁻',
}; // biome-ignore format: a table of digits

const through = (text: string, table: Readonly<Record<string, string>>): string | undefined => {
  const signs = [...text].map((sign) => table[sign]);
  return signs.includes(undefined) ? undefined : signs.join('');
};

/** Digits raised as an exponent: `⁻⁷`. */
export const raised = (digits: string): string => through(digits, RAISED) ?? `^${digits}`;

/** Pieces of a symbol's TeX: a letter, a word or a sign, with what stands below and above it. */
function pieces(tex: string) {
  // A bar is a sign of its own that stands over the letter before it.
  const plain = tex
    .replace(/\\bar\s*(\w)/g, '$1\u0304')
    .replace(/\\([a-zA-Z]+)\s*/g, (whole, name: string) => LETTERS[name] ?? whole);
  const found = plain.matchAll(
    /([A-Za-z]{2,}|.\u0304?)(?:_(?:\{([^}]*)\}|(.)))?(?:\^(?:\{([^}]*)\}|(.)))?/gu,
  );
  return [...found].map(([, base = '', lows, low, highs, high]) => ({
    base,
    below: lows ?? low ?? '',
    above: highs ?? high ?? '',
  }));
}

/** A symbol in plain signs: `φ`, `Δλ`, `λₛ`, `e²`; what has no lowered sign stays behind a low line: `h_R`. */
export function plainSymbol(tex: string): string {
  return pieces(tex)
    .map(({ base, below, above }) => {
      const low = below === '' ? '' : (through(below, LOWERED) ?? `_${below}`);
      return `${base}${low}${above === '' ? '' : raised(above)}`;
    })
    .join('');
}

const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

function element(text: string): string {
  if (/^[\d.,]+$/.test(text)) return `<mn>${escaped(text)}</mn>`;
  if (text.endsWith('\u0304')) return `<mover><mi>${text[0]}</mi><mo>¯</mo></mover>`;
  if (text.length > 1) return `<mi mathvariant="normal">${escaped(text)}</mi>`;
  return /[\p{L}]/u.test(text) ? `<mi>${text}</mi>` : `<mo>${escaped(text.replace('-', '−'))}</mo>`;
}

/** A symbol as MathML without the element around it. */
export function mathSymbol(tex: string): string {
  const parts = pieces(tex).map(({ base, below, above }) => {
    const [root, low, high] = [base, below, above].map(element);
    if (below !== '' && above !== '') return `<msubsup>${root}${low}${high}</msubsup>`;
    if (below !== '') return `<msub>${root}${low}</msub>`;
    return above === '' ? root : `<msup>${root}${high}</msup>`;
  });
  return parts.length === 1 ? (parts[0] ?? '') : `<mrow>${parts.join('')}</mrow>`;
}
