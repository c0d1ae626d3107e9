/**
 * MathML of the small part of TeX that worked solutions are written in. Formulas that follow the reader's numbers are
 * drawn by the browser itself: no second copy of a typesetting library has to be fetched for them.
 */

import { localNumber } from './language/language.js';
import { escapeHtml } from './language/text.js';

const LETTERS: Readonly<Record<string, string>> = {
  alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ', Delta: 'Δ', varepsilon: 'ε', epsilon: 'ε', zeta: 'ζ', eta: 'η',
  theta: 'θ', vartheta: 'ϑ', lambda: 'λ', mu: 'µ', nu: 'ν', xi: 'ξ', pi: 'π', rho: 'ρ', sigma: 'σ', tau: 'τ',
  varphi: 'φ', phi: 'ϕ', Phi: 'Φ', psi: 'ψ', chi: 'χ', kappa: 'κ', omega: 'ω', Omega: 'Ω',
}; // biome-ignore format: a table of letters
const FUNCTIONS = [
  'sin',
  'cos',
  'tan',
  'arcsin',
  'arccos',
  'arctan',
  'log',
  'ln',
  'exp',
  'min',
  'max',
];
const SIGNS: Readonly<Record<string, string>> = {
  cdot: '·',
  times: '×',
  le: '≤',
  ge: '≥',
  pm: '±',
  circ: '°',
};

/** A number with at most five significant digits: what a reader types into a calculator. */
const short = (digits: string) =>
  localNumber(
    digits.replace('.', '').replace(/^0+/, '').length > 6
      ? String(Number(Number(digits).toPrecision(5)))
      : digits,
  );

/** `<math>` for a formula; a sign that is not known is shown as it is written. */
export function mathml(tex: string): string {
  const tokens = tex.match(/\\[a-zA-Z]+|\\.|\d+(?:[.,]\d+)?|[^\s]/g) ?? [];
  let at = 0;
  const group = (): string => {
    if (tokens[at] !== '{') return atom();
    at++;
    const inner = row('}');
    at++;
    return `<mrow>${inner}</mrow>`;
  };
  const row = (end?: string): string => {
    let out = '';
    while (at < tokens.length && tokens[at] !== end && !(end === undefined && tokens[at] === '}'))
      out += scripted();
    return out;
  };
  const scripted = (): string => {
    const base = atom();
    let [sub, sup] = ['', ''];
    while (tokens[at] === '_' || tokens[at] === '^') {
      const sign = tokens[at++];
      if (sign === '_') sub = group();
      else sup = group();
    }
    if (sub && sup) return `<msubsup>${base}${sub}${sup}</msubsup>`;
    return sub ? `<msub>${base}${sub}</msub>` : sup ? `<msup>${base}${sup}</msup>` : base;
  };
  const atom = (): string => {
    const token = tokens[at++] ?? '';
    if (token === '{') {
      const inner = row('}');
      at++;
      return `<mrow>${inner}</mrow>`;
    }
    if (/^\d/.test(token)) return `<mn>${short(token.replace(',', '.'))}</mn>`;
    if (/^[A-Za-z]$/.test(token)) return `<mi>${token}</mi>`;
    if (token[0] !== '\\') return `<mo>${escapeHtml(token === '-' ? '−' : token)}</mo>`;
    const name = token.slice(1);
    if (name === 'frac') return `<mfrac>${group()}${group()}</mfrac>`;
    if (name === 'sqrt') return `<msqrt>${group()}</msqrt>`;
    if (name === 'bar') return `<mover>${group()}<mo>¯</mo></mover>`;
    if (name === 'left') {
      const open = tokens[at++] ?? '(';
      const inner = row('\\right');
      at++;
      const close = tokens[at++] ?? ')';
      return `<mrow><mo>${escapeHtml(open)}</mo>${inner}<mo>${escapeHtml(close)}</mo></mrow>`;
    }
    if (name === 'operatorname' || name === 'mathrm' || name === 'text') {
      at++;
      let word = '';
      while (at < tokens.length && tokens[at] !== '}') word += tokens[at++];
      at++;
      return `<mi mathvariant="normal">${escapeHtml(word)}</mi>`;
    }
    if (FUNCTIONS.includes(name)) return `<mi>${name}</mi><mo>&#x2061;</mo>`;
    if (name in SIGNS) return `<mo>${SIGNS[name]}</mo>`;
    if (!/[a-zA-Z]/.test(name)) return '<mspace width="0.3em"/>';
    return `<mi>${LETTERS[name] ?? escapeHtml(name)}</mi>`;
  };
  return `<math>${row()}</math>`;
}
