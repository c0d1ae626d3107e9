/** What a stage answers: what does not conform, what is undecided, what is missing; then figures and pictures. */

import type { Severity } from 'slantpath/job';
import { findingSentences, type SheetWords } from 'slantpath/sheet';
import { words as frameWords } from '../../lib/language/language.js';
import { escapeHtml } from '../../lib/language/text.js';
import { renderFigure, renderTable } from '../../lib/render.js';
import { examplesFor } from '../state/handOver.js';
import { type StageName, stageOfFinding } from '../state/stages.js';
import type { JobStanding } from '../state/standing.js';
import type { Desk } from './desk.js';
import { figuresOf } from './pictures.js';
import { tablesOf } from './tables.js';

const SEVERITIES: readonly Severity[] = ['does-not-conform', 'undecided', 'incomplete', 'note'];

/** The findings of a stage in words, the worst first; in the verdict all of them, each with a way to its stage. */
function findingsHtml(stage: StageName, desk: Desk, sheet: SheetWords): string {
  const { record, words } = desk;
  if (!record) return '';
  const told = findingSentences(record, { words: sheet });
  const own = told.filter(({ finding }) =>
    stage === 'verdict' ? true : stageOfFinding(finding) === stage,
  );
  const groups = SEVERITIES.map((severity) => {
    const some = own.filter(({ finding }) => finding.severity === severity);
    if (some.length === 0) return '';
    const lines = some.map(({ finding, says, action }) => {
      const target = stageOfFinding(finding);
      const go =
        stage === 'verdict' && target !== 'verdict'
          ? ` <button type="button" class="desk-go" data-do="go" data-at="${target}">${escapeHtml(words.stages[target])}</button>`
          : '';
      const toDo = action === '' ? '' : ` <b>${escapeHtml(action)}</b>`;
      return `<li>${escapeHtml(says)}${toDo}${go}</li>`;
    });
    return `<p class="desk-group-title" data-state="${severity}">${escapeHtml(words.groups[severity])}</p><ul>${lines.join('')}</ul>`;
  });
  const all = groups.join('');
  if (all !== '') return `<div class="desk-findings">${all}</div>`;
  return stage === 'sheet' ? '' : `<p class="ex-hint">${escapeHtml(words.nothingFound)}</p>`;
}

/** The one next measurement that would tell the first causes apart. */
function nextHtml({ record, words }: Desk, sheet: SheetWords): string {
  const look = record?.firstLook;
  if (!look) return `<p class="ex-hint">${escapeHtml(words.verdict.none)}</p>`;
  const kind = `<p>${escapeHtml(sheet.codes.firstLook[look.kind])}</p>`;
  if (!look.next) return kind;
  const { kind: measurement, ...where } = look.next;
  const places = Object.values(where).filter((part) => typeof part === 'string');
  return `${kind}<p class="desk-strong">${escapeHtml(sheet.next(sheet.codes.measurements[measurement], places.join(', ')))}</p>`;
}

/** Worked examples that ask the same, with the values of the job. */
function examplesHtml(stage: StageName, { record, words }: Desk): string {
  const links = record ? examplesFor(stage, record, words.code) : [];
  if (links.length === 0) return '';
  const list = links.map(
    ([name, href]) =>
      `<li><a href="${escapeHtml(href)}">${escapeHtml(words.examples[name] ?? name)}</a></li>`,
  );
  return `<details class="desk-fold" data-fold="examples"><summary>${escapeHtml(words.examplesTitle)}</summary><p class="ex-hint">${escapeHtml(words.examplesNote)}</p><ul>${list.join('')}</ul></details>`;
}

/** HTML of a stage's answer. */
export function answerHtml(stage: StageName, desk: Desk, sheet: SheetWords): string {
  if (!desk.record) return `<p class="ex-hint">${escapeHtml(desk.words.notYet)}</p>`;
  const tables = tablesOf(stage, desk, sheet).map(renderTable).join('');
  const figures = figuresOf(stage, desk)
    .map((figure) => renderFigure(frameWords(), figure))
    .join('');
  const next = stage === 'verdict' ? nextHtml(desk, sheet) : '';
  return `${findingsHtml(stage, desk, sheet)}${next}${figures}${tables}${examplesHtml(stage, desk)}`;
}

/** HTML of the outcome and the way on. */
export function outcomeHtml({ words }: Desk, { outcome, next }: JobStanding): string {
  const word = outcome === null ? '' : `<b data-state="${outcome}">${words.outcomes[outcome]}</b>`;
  const go = next
    ? `<button type="button" data-do="go" data-at="${next}">${escapeHtml(words.goOn(words.stages[next]))}</button>`
    : `<span>${escapeHtml(words.allDone)}</span>`;
  return `${word}${go}`;
}
