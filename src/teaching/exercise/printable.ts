/** A worksheet as one HTML document for the printer, with or without the key. */

import { type Keys, knownOnly } from '../../keys.js';
import { solutionPlan } from '../plans/index.js';
import { mathSteps, plainNumber, plainSteps } from '../print/formulas.js';
import { noteText } from '../print/notes.js';
import { mathSymbol } from '../print/symbols.js';
import { fixedNumber, printedUnit } from '../print/units.js';
import type { Exercise } from './exercise.js';
import { escapedXml } from './exportQti.js';
import { mostMarksOf } from './marks.js';
import { englishPrint, type PrintWords } from './printWords.js';
import { tablesFor } from './tables.js';
import type { Worksheet } from './worksheet.js';

const STYLE = `
@page { size: A4; margin: 15mm; }
body { font: 11pt/1.4 system-ui, sans-serif; color: #111; background: #fff; max-width: 180mm; margin: 0 auto; padding: 4mm; }
h1 { font-size: 15pt; margin: 0 0 3mm; } h2 { font-size: 12pt; break-before: page; }
header p { display: flex; gap: 6mm; margin: 0 0 6mm; } header span { flex: 1; border-bottom: 0.2mm solid #111; }
header span.short { flex: 0 0 32mm; }
ol.sheet > li { margin: 0 0 6mm; break-inside: avoid; padding-left: 1mm; } ol.key > li { break-inside: auto; }
.marks { float: right; margin-left: 4mm; } ul { margin: 1mm 0; padding-left: 5mm; }
.room { height: 34mm; border: 0.2mm solid #bbb; margin: 2mm 0; }
.line { border-bottom: 0.2mm solid #111; display: inline-block; width: 40mm; }
ol.steps { font-size: 9.5pt; } ol.steps li { margin: 0 0 1.5mm; line-height: 1.9; break-inside: avoid; } math { font-size: 1.05em; }
table { border-collapse: collapse; font-size: 9pt; break-inside: avoid; margin: 4mm 0; }
th, td { border: 0.2mm solid #999; padding: 0.4mm 2mm; text-align: right; } caption { text-align: left; }
table.answers { font-size: 11pt; } table.answers th:nth-child(2) { text-align: left; } table.answers td { white-space: nowrap; } table.answers td:nth-child(2) { white-space: normal; } table.answers td:nth-child(2) { text-align: left; }
footer { font-size: 9pt; margin-top: 6mm; }
`;

const marks = (count: number, words: PrintWords) =>
  count === 1 ? words.oneMark : words.someMarks.replace('{}', String(count));

/** Texts, numbers and formulas as a language prints them. */
function printer(words: PrintWords) {
  const text = (plain: string) => escapedXml(words.translate?.(plain) ?? plain);
  const local = (number: string) => number.replace('.', words.decimalSign);
  const unit = (plain: string) =>
    escapedXml(words.translate?.(printedUnit(plain)) ?? printedUnit(plain));
  const withUnit = (number: string, of: string) =>
    `${escapedXml(local(number))}${of === 'deg' || of === '' ? '' : ' '}${unit(of)}`;
  return { text, unit, withUnit };
}

/** A formula for the printer; larger fractions where it stands on a line of its own. */
const math = (inside: string) => `<math displaystyle="true">${inside}</math>`;

/** The question: title, givens and constants one a line, what is asked for. */
function question({ solution, level, plan, decimals, unit }: Exercise, words: PrintWords): string {
  const print = printer(words);
  const taken = [...solution.givens, ...solution.constants].map(
    ({ tex, meaning, value, unit: own }) =>
      `<li>${math(mathSymbol(tex))} = ${print.withUnit(plainNumber(value), own)}, ${print.text(meaning)}</li>`,
  );
  const round = level === 1 && solutionPlan(plan).otherWays ? ` ${words.roundEarth}` : '';
  const to =
    decimals === 0
      ? words.toWholeNumber
      : decimals === 1
        ? words.toOneDecimal
        : words.toDecimals.replace('{}', String(decimals));
  const asked = (unit === '' ? words.answerPlain : words.answerInUnit)
    .replace('{unit}', print.unit(unit))
    .replace('{to}', to);
  return `<strong>${print.text(solution.title)}</strong><ul>${taken.join('')}</ul><p>${asked}${round}</p>`;
}

/** Characters of a formula with its numbers that fit on a line of the key. */
const LONG_LINE = 90;

/** A worked solution: each step in symbols, with the numbers, and its value. */
const worked = ({ solution }: Exercise, words: PrintWords): string => {
  const print = printer(words);
  const equals = '<mo>=</mo>';
  const plain = plainSteps(solution, words.decimalSign);
  return mathSteps(solution, words.decimalSign)
    .map(({ symbol, formula, numbers, notes }, at) => {
      const step = solution.steps[at];
      if (!step) return '';
      const value = print.withUnit(fixedNumber(step.value, step.decimals), step.unit);
      const text = plain[at]?.numbers ?? '';
      // A browser does not break MathML: long lines of numbers are plain text.
      const line = text.length > LONG_LINE ? escapedXml(`= ${text}`) : math(equals + numbers);
      const note =
        notes.length === 0 ? '' : `<br><small>${escapedXml(noteText(notes, words))}</small>`;
      return `<li>${print.text(step.meaning)}:<br>${math(symbol + equals + formula)}<br>${line} = <b>${value}</b>${note}</li>`;
    })
    .join('');
};

/** What the short form on the round Earth gives, where it is as right at this level. */
function roundAnswers({ plan, level, inputs, decimals }: Exercise): readonly string[] {
  if (level !== 1) return [];
  const values = solutionPlan(plan).otherWays?.(inputs) ?? [];
  return [...new Set(values.map((value) => fixedNumber(value, decimals)))];
}

/** All answers on one page. */
function answerList(sheet: Worksheet, words: PrintWords): string {
  const print = printer(words);
  const rows = sheet.exercises.map((each, at) => {
    const round = roundAnswers(each).map((value) =>
      words.byRoundEarth.replace('{}', print.withUnit(value, each.unit)),
    );
    const answers = [print.withUnit(fixedNumber(each.answer, each.decimals), each.unit), ...round];
    return `<tr><th>${at + 1}</th><td>${print.text(each.solution.title)}</td><td>${answers.join('<br>')}</td><td>± ${print.withUnit(plainNumber(Number(each.tolerance.toPrecision(2))), '')}</td><td>${mostMarksOf(each)}</td></tr>`;
  });
  return `<table class="answers"><tr><th></th><th>${words.question}</th><th>${words.answer.replace(':', '')}</th><th>${words.rightWithin}</th><th>${words.marks}</th></tr>${rows.join('')}</table>`;
}

/** How {@link worksheetHtml} prints. */
export interface PrintOptions {
  /** Whether answers and worked solutions are printed instead of room to work in; false by default. */
  readonly key?: boolean;
  /** The language: `englishPrint` by default, `germanPrint` with a `translate` of your own for titles and meanings. */
  readonly words?: PrintWords;
}

const PRINT_OPTIONS_KEYS = { key: true, words: true } satisfies Keys<PrintOptions>;

/**
 * A worksheet for the printer.
 *
 * @param sheet  From {@link worksheet}.
 * @param options  `key: true` prints a list of answers and the worked solutions instead of room to work in; `words` the language.
 * @returns One self-contained HTML document; the code at its foot makes sheet and key again (`worksheetOfCode`).
 *
 * Source: the worksheet.
 * @example
 * ```ts
 * import { worksheet, worksheetHtml } from 'slantpath/teaching';
 * worksheetHtml(worksheet({ seed: 3, count: 2 }), { key: true }).includes('ol class="steps"'); // => true
 * ```
 */
export function worksheetHtml(sheet: Worksheet, options: PrintOptions = {}): string {
  const { key = false, words = englishPrint } = knownOnly('options', options, PRINT_OPTIONS_KEYS);
  const print = printer(words);
  const total = sheet.exercises.reduce((sum, each) => sum + mostMarksOf(each), 0);
  const items = sheet.exercises.map((each) => {
    const asked = `<span class="marks">${key ? '' : '___ / '}${marks(mostMarksOf(each), words)}</span>${question(each, words)}`;
    return key
      ? `<li>${asked}<p><strong>${print.withUnit(fixedNumber(each.answer, each.decimals), each.unit)}</strong></p><ol class="steps">${worked(each, words)}</ol></li>`
      : `<li>${asked}<div class="room"></div><p>${words.answer} <span class="line"></span> ${print.unit(each.unit)}</p></li>`;
  });
  const usual = `Worksheet ${sheet.seed} ${sheet.form}`;
  const own =
    sheet.title === usual
      ? words.worksheet.replace('{}', `${sheet.seed} ${sheet.form}`)
      : sheet.title;
  const title = key ? words.key.replace('{}', own) : own;
  const head = key
    ? `<p>${words.marksInAll.replace('{}', marks(total, words))}</p>${answerList(sheet, words)}<h2>${words.workedSolutions}</h2>`
    : `<p>${words.name} <span></span> ${words.date} <span class="short"></span> ${words.marks} <span class="short"></span> ${words.of} ${total}</p>`;
  const plans = sheet.exercises.map(({ plan }) => solutionPlan(plan));
  return `<!doctype html>
<html lang="${words.code}">
<head><meta charset="utf-8"><title>${escapedXml(title)}</title><style>${STYLE}</style></head>
<body>
<header><h1>${escapedXml(title)}</h1>${head}</header>
<ol class="sheet${key ? ' key' : ''}">${items.join('\n')}</ol>
${tablesFor(plans, words)}
<footer>${words.foot.replace('{}', escapedXml(sheet.code))}</footer>
</body>
</html>
`;
}
