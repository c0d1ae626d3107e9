/** The steps of a worked solution in print: in plain signs for text files, as MathML for paper. */

import { solutionPlan } from '../plans/index.js';
import type { PlanStep } from '../plans/plan.js';
import { stepTree } from '../solution/stepTree.js';
import type { SolutionQuantity, WorkedSolution } from '../solution/workedSolution.js';
import { type Notation, written } from './notation.js';
import { type SchoolNote, schoolFormula } from './school.js';
import { mathSymbol, plainSymbol, raised } from './symbols.js';

/** A step in print. */
export interface PrintedStep {
  /** The symbol of what the step gives. */
  readonly symbol: string;
  /** The formula in symbols, and with the numbers put in. */
  readonly formula: string;
  readonly numbers: string;
  readonly notes: readonly SchoolNote[];
}

/** Mantissa and power of ten of a number that is very large or small; otherwise all its digits. */
function digitsOf(value: number): { readonly digits: string; readonly power: string } {
  const short = Number(value.toPrecision(10));
  const size = Math.abs(short);
  if (short === 0 || (size >= 1e-4 && size < 1e7)) return { digits: String(short), power: '' };
  const [digits = '', power = ''] = short.toExponential().split('e');
  return { digits, power: power.replace('+', '') };
}

/** A number as it is printed: a true minus, the decimal sign, a power of ten where it is very large or small. */
export function plainNumber(value: number, decimalSign = '.'): string {
  const { digits, power } = digitsOf(value);
  const text = digits.replace('-', '−').replace('.', decimalSign);
  return power === '' ? text : `${text} · 10${raised(power)}`;
}

type Signs = Omit<Notation, 'symbol' | 'number'>;

/** What stands between two arguments where the decimal sign may be a comma. */
const separatorFor = (decimalSign: string) => (decimalSign === ',' ? ';' : ',');

/** Plain signs: `√(x)`, `a / b`, `x²`. */
const plain = (separator: string): Signs => ({
  between: (left, sign, right) => `${left} ${sign} ${right}`,
  minus: (of) => `−${of}`,
  brackets: (of, open, close) => `${open}${of}${close}`,
  fraction: (above, below) => `${above} / ${below}`,
  power: (base, exponent) =>
    /^\d$/.test(exponent)
      ? `${base}${raised(exponent)}`
      : /^[\p{L}\d.]+$/u.test(exponent)
        ? `${base}^${exponent}`
        : `${base}^(${exponent})`,
  root: (of, bare) => (bare ? `√${of}` : `√(${of})`),
  call: (name, power, of) =>
    `${name}${power === '' ? '' : raised(power)}(${of.join(`${separator} `)})`,
});

const mo = (sign: string) => `<mo>${sign}</mo>`;
/** A bracket grows with a fraction and a root only. */
const bracket = (sign: string, around: string) =>
  /<m(frac|sqrt)/.test(around) ? mo(sign) : `<mo stretchy="false">${sign}</mo>`;
const rowed = (text: string) => `<mrow>${text}</mrow>`;

/** MathML. */
const math = (separator: string): Signs => ({
  between: (left, sign, right) => `${left}${mo(sign)}${right}`,
  minus: (of) => `${mo('−')}${of}`,
  brackets: (of, open, close) => rowed(`${bracket(open, of)}${of}${bracket(close, of)}`),
  fraction: (above, below) => `<mfrac>${rowed(above)}${rowed(below)}</mfrac>`,
  power: (base, exponent) =>
    `<msup>${base === 'e' ? '<mi mathvariant="normal">e</mi>' : rowed(base)}${rowed(exponent)}</msup>`,
  root: (of) => `<msqrt>${of}</msqrt>`,
  call: (name, power, of, bare) => {
    const word = `<mi mathvariant="normal">${name.replace('₁₀', '')}</mi>`;
    const low = name.endsWith('₁₀') ? `<msub>${word}<mn>10</mn></msub>` : word;
    const head = power === '' ? low : `<msup>${low}${rowed(power)}</msup>`;
    const inside = of.join(mo(separator));
    return bare
      ? rowed(`${head}<mspace width="0.17em"/>${inside}`)
      : rowed(`${head}${bracket('(', inside)}${inside}${bracket(')', inside)}`);
  },
});

/** Symbols and numbers of a notation. */
interface Leaves {
  readonly symbol: (tex: string) => string;
  readonly number: (value: number) => string;
  readonly degrees: string;
}

const plainLeaves = (decimalSign: string): Leaves => ({
  symbol: plainSymbol,
  number: (value) => plainNumber(value, decimalSign),
  degrees: '°',
});

const mathLeaves = (decimalSign: string): Leaves => ({
  symbol: (tex) => mathSymbol(tex.replace(/(\d)\.(?=\d)/, `$1${decimalSign}`)),
  number: (value) => {
    const { digits, power } = digitsOf(value);
    const minus = digits.startsWith('-') ? mo('−') : '';
    const text = `${minus}<mn>${digits.replace('-', '').replace('.', decimalSign)}</mn>`;
    if (power === '') return text;
    const sign = power.startsWith('-') ? mo('−') : '';
    return rowed(
      `${text}${mo('·')}<msup><mn>10</mn>${rowed(`${sign}<mn>${power.replace('-', '')}</mn>`)}</msup>`,
    );
  },
  degrees: '<mi mathvariant="normal">°</mi>',
});

type Solved = WorkedSolution & { readonly kind: 'solved' };

/** Decimals of an earlier step that are put in, beyond those shown beside it: enough for the next value to come out as shown. */
const MORE_DECIMALS = 3;

function printed(
  solution: Solved,
  leaves: Leaves,
  signs: Signs,
  fractions: boolean,
): readonly PrintedStep[] {
  const { givens, constants, steps } = solution;
  const quantities = new Map<string, SolutionQuantity>(
    [...givens, ...constants].map((each) => [each.symbol, each]),
  );
  for (const { symbol, tex, meaning, unit, value, decimals } of steps) {
    const put = Number(value.toFixed(decimals + MORE_DECIMALS));
    // A value that has few digits left in these decimals is put in with six of them.
    const few = Math.abs(put) < 10 ** (3 - decimals);
    quantities.set(symbol, {
      symbol,
      tex,
      meaning,
      unit,
      value: few ? Number(value.toPrecision(6)) : put,
    });
  }
  const symbolOf = (name: string) =>
    leaves.symbol(name === 'pi' ? '\\pi' : (quantities.get(name)?.tex ?? name));
  const valueWritten = (name: string, angle: boolean) => {
    const found = quantities.get(name);
    if (!found) return symbolOf(name);
    return `${leaves.number(found.value)}${angle && found.unit === 'deg' ? leaves.degrees : ''}`;
  };
  return solutionPlan(solution.name).steps.map((step: PlanStep) => {
    const { tree, notes } = schoolFormula(stepTree(step));
    const notation = { ...signs, number: leaves.number };
    return {
      symbol: leaves.symbol(step.tex),
      formula: written(tree, { ...notation, symbol: symbolOf }, fractions),
      numbers: written(tree, { ...notation, symbol: valueWritten }, fractions),
      // Without a full turn the fraction's lower part is never negative, so that nothing need be said of the quadrant.
      notes: notes.filter(
        ({ kind }) => kind !== 'quadrant' || notes.some((each) => each.kind === 'turned'),
      ),
    };
  });
}

/** Steps in plain signs: `A = arctan(E / M)`. */
export const plainSteps = (solution: Solved, decimalSign = '.'): readonly PrintedStep[] =>
  printed(solution, plainLeaves(decimalSign), plain(separatorFor(decimalSign)), false);

/** Steps as MathML without the element `math` around them. */
export const mathSteps = (solution: Solved, decimalSign: string): readonly PrintedStep[] =>
  printed(solution, mathLeaves(decimalSign), math(separatorFor(decimalSign)), true);
