/** HTML of a class: marks of each learner, each exercise, the slips in words, and the lines that did not count. */

import type { ClassReport, ExerciseMarks, UnreadLine } from 'slantpath/teaching';
import { said } from './language/language.js';
import { escapeHtml, shown } from './language/text.js';

const inWords = (text: string) => escapeHtml(said(text));

/** What one answer earned: whole marks as they are, others with two decimals. */
const marksText = (marks: number) => shown(marks, Number.isInteger(marks) ? 0 : 2);

const OUTCOMES: Readonly<Record<ExerciseMarks['outcome'], string>> = {
  right: 'right',
  'other-way': 'by the round Earth',
  'badly-rounded': 'badly rounded',
  'other-unit': 'in another unit',
  'wrong-unit': 'wrong unit',
  wrong: 'wrong',
  unreadable: 'no number',
  'no-answer': 'no answer',
  empty: 'empty',
};

const UNREAD: Readonly<Record<UnreadLine['kind'], string>> = {
  'no-code': 'there is no code in this line',
  damaged: 'a character of this code is wrong or missing: ask for it again',
  'other-sheet': 'this code is of another sheet',
  replaced: 'a later line of the same name counts',
};

function table(
  caption: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): string {
  const columns = head.map((text) => `<th scope="col">${escapeHtml(text)}</th>`).join('');
  const lines = rows.map(
    ([first = '', ...rest]) =>
      `<tr><th scope="row">${escapeHtml(first)}</th>${rest.map((text) => `<td>${escapeHtml(text)}</td>`).join('')}</tr>`,
  );
  return `<div class="ex-scroll" tabindex="0" role="region" aria-label="${escapeHtml(caption)}"><table class="class-table"><caption>${escapeHtml(caption)}</caption><thead><tr>${columns}</tr></thead><tbody>${lines.join('')}</tbody></table></div>`;
}

function cell({ outcome, marks, mostMarks, steps }: ExerciseMarks): string {
  const carried = steps.some(({ kind }) => kind === 'carried-forward');
  const what = outcome === 'wrong' && carried ? 'error carried forward' : OUTCOMES[outcome];
  return `${marksText(marks)}/${mostMarks} ${said(what)}`;
}

/** The whole report. */
export function renderClass({ learners, exercises, slips, unread }: ClassReport): string {
  const count = learners.length;
  const parts = [
    `<p class="ex-says" role="status">${inWords(`${count} ${count === 1 ? 'learner' : 'learners'} read.`)}</p>`,
  ];
  if (unread.length > 0)
    parts.push(
      `<ul class="class-unread">${unread
        .map(
          ({ line, text, kind }) =>
            `<li>${inWords(`Line ${line}`)}, <q>${escapeHtml(text.slice(0, 60))}</q>: ${inWords(UNREAD[kind])}.</li>`,
        )
        .join('')}</ul>`,
    );
  if (count === 0) return parts.join('');
  parts.push(
    table(
      said('Marks'),
      [said('Name'), said('Form'), ...exercises.map((_, at) => String(at + 1)), said('All')],
      learners.map(({ name, form, exercises: own, marks, mostMarks }) => [
        name === '' ? said('without a name') : name,
        form,
        ...own.map(cell),
        `${marksText(marks)}/${mostMarks}`,
      ]),
    ),
    table(
      said('Exercises'),
      [said('No.'), said('Exercise'), said('Right'), said('Answered'), said('Mean of the marks')],
      exercises.map(({ title, right, answered, meanRatio }, at) => [
        String(at + 1),
        said(title),
        String(right),
        String(answered),
        `${shown(100 * meanRatio, 0)} %`,
      ]),
    ),
  );
  if (slips.length > 0)
    parts.push(
      table(
        said('Slips, the most frequent first'),
        [said('What probably went wrong'), said('Times'), said('Exercise'), said('Who')],
        slips.map(({ explanation, times, exerciseNumbers, learners: who }) => [
          said(explanation),
          String(times),
          exerciseNumbers.join(', '),
          who.map((name) => (name === '' ? said('without a name') : name)).join(', '),
        ]),
      ),
    );
  return parts.join('');
}
