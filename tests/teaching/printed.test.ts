/** Worked solutions, questions and units in the signs of print. */

import {
  checkAnswer,
  compileFormula,
  exercise,
  germanPrint,
  printedUnit,
  SOLUTION_PLANS,
  worksheet,
  worksheetCsv,
  worksheetGift,
  worksheetHtml,
  worksheetMoodle,
  worksheetQti,
} from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { mathSteps, plainSteps } from '../../src/teaching/print/formulas.js';
import { plainSymbol } from '../../src/teaching/print/symbols.js';
import { readXml, type XmlElement } from '../support/xml.js';

const plans = SOLUTION_PLANS.map(({ name }) => name);
const each = plans.map((plan) => [plan, exercise({ plan, seed: 11 })] as const);
const whole = worksheet({ seed: 5, count: plans.length, plans });
/** Files that tell slips beside the answers take long for each. */
const few = worksheet({
  seed: 5,
  count: 6,
  plans: [
    'azimuth',
    'level-in-dbm',
    'wind-moment',
    'cable-run',
    'axis-coupling',
    'sample-of-a-lot',
  ],
});

/** Units and functions as programs write them. */
const PROGRAM =
  /\bdeg\b|dBuV|\bpercent\/|degrees Celsius|\bohm\b|[a-z0-9]\^[234]\b|\b(mod|atan2?|asin|acos|sqrt|log10|exp)\(|\*/;

/** MathML with numbers as a formula to compute: fractions, powers, roots and functions as they are drawn. */
function computable(element: XmlElement): string {
  const { name, children, text } = element;
  const all = (list: readonly XmlElement[]) => list.map(computable).join('');
  const [first, second] = children;
  if (name === 'mfrac' && first && second)
    return `((${computable(first)})/(${computable(second)}))`;
  if (name === 'msqrt') return `sqrt(${all(children)})`;
  if (name === 'msup' && first && second)
    return first.text === 'e'
      ? `exp(${computable(second)})`
      : `((${computable(first)})^(${computable(second)}))`;
  if (name === 'mn') return text;
  if (name === 'mo') return ({ '−': '-', '·': '*' } as Record<string, string>)[text] ?? text;
  if (name === 'mspace' || text === '°') return '';
  if (name === 'mi') return text === 'π' ? String(Math.PI) : text;
  if (first?.text === '|') return `abs(${all(children.slice(1, -1))})`;
  // A function with its power and its base stands first in its row.
  const power = first?.name === 'msup' ? first.children[1] : undefined;
  const head = power ? first?.children[0] : first;
  const word = (head?.name === 'msub' ? head.children[0] : head)?.text ?? '';
  if (!/^[A-Za-zΦ]+$/.test(word) || word === 'e') return all(children);
  const called = { Φ: 'normal', S: 'student' }[word] ?? word;
  const rest = children.slice(1).filter((each) => each.name !== 'mspace');
  const bare = rest[0]?.text === '(' ? rest.slice(1, -1) : rest;
  const whole = `${called}(${all(bare)})`;
  return power ? `((${whole})^(${computable(power)}))` : whole;
}

describe.each(each)('%s', (_, one) => {
  test('has a symbol of its own for each quantity', () => {
    const { givens, constants, steps } = one.solution;
    const symbols = [...givens, ...constants, ...steps].map(({ tex }) => plainSymbol(tex));
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const symbol of symbols) expect(symbol).not.toMatch(/\\|[{}]/);
  });

  test('tells question, hints and solution in the signs of print', () => {
    // What the words of a question call "30 ohm" is a word.
    const said = [one.text, ...one.hints].join('\n').replace(/\d ohm/g, '');
    expect(said).not.toMatch(PROGRAM);
  });

  test('shows enough digits for each value to come out as shown', () => {
    const plain = plainSteps(one.solution);
    one.solution.steps.forEach(({ value, decimals, symbol }, at) => {
      const { numbers = '', notes = [] } = plain[at] ?? {};
      // Read as a calculator would: degrees in functions, a table for Φ and S, full turns by the note.
      const typed = numbers
        .replace(/°/g, '')
        .replace(/−/g, '-')
        .replace(/√([\d.]+)/g, 'sqrt($1)')
        .replace(/\|([^|]*)\|/g, 'abs($1)')
        // With 180 / π among it, a formula is read in radians.
        .replace(/π/g, String(Math.PI))
        .replace(/Φ/g, 'normal')
        .replace(/\bS\(/g, 'student(');
      const shown = compileFormula(typed, [])({});
      const half = notes.some(({ kind }) => kind === 'quadrant') ? 180 : 360;
      const off =
        notes.length > 0 && notes.some(({ kind }) => kind === 'turned')
          ? shown - value - half * Math.round((shown - value) / half)
          : shown - value;
      expect(Math.abs(off), `${symbol} = ${numbers}`).toBeLessThanOrEqual(0.6 * 10 ** -decimals);
    });
  });

  test('draws on paper what is computed', () => {
    const drawn = mathSteps(one.solution, '.');
    one.solution.steps.forEach(({ value, decimals, symbol }, at) => {
      const { numbers = '', notes = [] } = drawn[at] ?? {};
      const typed = computable(readXml(`<math>${numbers}</math>`));
      const off = compileFormula(typed, [])({}) - value;
      const turn = notes.some(({ kind }) => kind === 'turned') ? 180 : 1e9;
      const apart = Math.abs(off - turn * Math.round(off / turn));
      expect(apart, `${symbol} = ${typed}`).toBeLessThanOrEqual(0.6 * 10 ** -decimals);
    });
  });

  test('takes its unit in print and in letters', () => {
    const right = one.answer.toFixed(one.decimals);
    for (const unit of [one.unit, printedUnit(one.unit)])
      expect(checkAnswer(one, `${right} ${unit}`.trim()).kind).toBe('right');
  });

  test('is well-formed MathML', () => {
    for (const sign of ['.', ','])
      for (const { symbol, formula, numbers } of mathSteps(one.solution, sign)) {
        const text = `<math>${symbol}<mo>=</mo>${formula}<mo>=</mo>${numbers}</math>`;
        expect(readXml(text).name).toBe('math');
        expect(text.replace(/<[^>]*>/g, ' ')).not.toMatch(sign === ',' ? /\d\.\d/ : /\d,\d/);
      }
  });
});

test('no file of a sheet has a unit or a function as programs write it', () => {
  const files = [
    worksheetGift(few),
    worksheetMoodle(few),
    worksheetCsv(whole),
    worksheetHtml(whole),
    worksheetHtml(whole, { key: true }),
    worksheetHtml(whole, { key: true, words: germanPrint }),
    ...worksheetQti(whole).map(({ content }) => content),
  ];
  for (const file of files)
    expect(file.replace(/<style>[\s\S]*<\/style>/, '').replace(/\d ohm/g, '')).not.toMatch(PROGRAM);
});

test('the key says which quadrant and which range an arctangent is of', () => {
  const key = worksheetHtml(worksheet({ seed: 1, count: 1, plans: ['azimuth'] }), { key: true });
  expect(key).toContain('numerator as the sine, denominator as the cosine');
  expect(key).toContain('add or subtract 360° until it lies from 0° to below 360°');
});

test('without a full turn, an arctangent of a fraction needs no word on its quadrant', () => {
  const some = SOLUTION_PLANS.filter(({ steps }) =>
    steps.some(({ expression }) => expression.startsWith('atan2(')),
  );
  for (const { name, steps } of some)
    for (let seed = 0; seed < 12; seed++) {
      const { solution } = exercise({ plan: name, seed });
      steps.forEach(({ expression }, at) => {
        if (!expression.startsWith('atan2(')) return;
        expect(Math.abs(solution.steps[at]?.value ?? 180)).toBeLessThanOrEqual(90);
      });
    }
});
