/** Tables that a printed sheet needs: the normal distribution and Student's t, as one reads them by hand. */

import { normalProbability } from '../../numeric/normal.js';
import { studentProbability } from '../../numeric/student.js';
import type { SolutionPlan } from '../plans/plan.js';
import type { PrintWords } from './printWords.js';

const percent = (share: number) => (100 * share).toFixed(1);
const row = (head: string, cells: readonly string[], tag = 'td') =>
  `<tr><th>${head}</th>${cells.map((each) => `<${tag}>${each}</${tag}>`).join('')}</tr>`;

const range = (count: number, step: number) =>
  Array.from({ length: count }, (_, at) => Number((at * step).toFixed(2)));

/** Probability in percent below z standard deviations, z from 0 to 3.9 in tenths and hundredths of five. */
function normalTable({ normalTable: caption }: PrintWords): string {
  const lines = range(32, 0.1).map((z) =>
    row(
      z.toFixed(1),
      [0, 0.02, 0.04, 0.06, 0.08].map((more) => percent(normalProbability(z + more))),
    ),
  );
  const head = row('z', ['.00', '.02', '.04', '.06', '.08'], 'th');
  return `<table><caption>${caption}</caption>${head}${lines.join('')}</table>`;
}

const FREEDOM = [2, 3, 4, 5, 6, 8, 10, 15, 20, 30] as const;

/** Probability in percent below t for some degrees of freedom. */
function studentTable({ studentTable: caption }: PrintWords): string {
  const lines = range(21, 0.2).map((t) =>
    row(
      t.toFixed(1),
      FREEDOM.map((n) => percent(studentProbability(t, n))),
    ),
  );
  const head = row('t', FREEDOM.map(String), 'th');
  return `<table><caption>${caption}</caption>${head}${lines.join('')}</table>`;
}

/** The tables that plans need, as HTML; empty for none. */
export function tablesFor(plans: readonly SolutionPlan[], words: PrintWords): string {
  const needs = (name: string) =>
    plans.some(({ steps }) => steps.some(({ expression }) => expression.includes(`${name}(`)));
  const tables = [
    needs('normal') ? normalTable(words) : '',
    needs('student') ? studentTable(words) : '',
  ].join('');
  // The cells hold numbers alone: z, t and percent.
  return words.decimalSign === '.'
    ? tables
    : tables.replace(/>(\d*)\.(\d+)</g, `>$1${words.decimalSign}$2<`);
}
