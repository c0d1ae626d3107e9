/** What stands around the forms: the head, the lines of the stages, the way to begin. */

import { escapeHtml } from '../../lib/language/text.js';
import { STAGES, type StageName } from '../state/stages.js';
import type { Standing } from '../state/standing.js';
import type { DeskWords } from '../words/words.js';

/** The demos that a job can begin with: the names of their files. */
const DEMOS = ['tarnfell-lower-hut', 'riverine-clinic', 'station-school'] as const;

/** Stages whose work can hurt, with the words that say so. */
const cautionOf = (words: DeskWords, stage: StageName): string =>
  Object.hasOwn(words.cautions, stage) ? words.cautions[stage as keyof DeskWords['cautions']] : '';

/** The line of a stage. */
export function summaryHtml(words: DeskWords, { stage, state }: Standing, says: string): string {
  const number = STAGES.indexOf(stage) + 1;
  const word = stage === 'sheet' ? '' : words.states[state];
  return `<span class="desk-number">${number}</span><span class="desk-title">${escapeHtml(words.stages[stage])}</span><span class="desk-state" data-state="${state}">${escapeHtml(word)}</span><span class="desk-says">${escapeHtml(says)}</span>`;
}

/** A stage with nothing in it yet. */
function stageHtml(words: DeskWords, stage: StageName): string {
  const caution = cautionOf(words, stage);
  const next = STAGES[STAGES.indexOf(stage) + 1];
  return `<li><details class="desk-stage" data-stage="${stage}" name="desk-stage"><summary>${summaryHtml(words, { stage, state: 'not-begun', findings: [] }, '')}</summary><div class="desk-body">${caution ? `<p class="ex-caution"><b>${words.caution}.</b> ${escapeHtml(caution)}</p>` : ''}<p class="ex-error desk-fault" hidden></p><form class="desk-form" autocomplete="off"></form><div class="desk-answer"></div>${next ? `<p class="ex-tools desk-next"><button type="button" data-do="go" data-at="${next}">${escapeHtml(words.next(words.stages[next]))}</button></p>` : ''}</div></details></li>`;
}

/** The whole page before a job is on it. */
export function frameHtml(words: DeskWords): string {
  const w = words.desk;
  const demos = DEMOS.map(
    (demo) => `<option value="${demo}">${escapeHtml(words.demos[demo])}</option>`,
  ).join('');
  return `<div class="desk-head" hidden><div class="ex-field"><label for="desk-choice">${w.job}</label><select id="desk-choice" data-jobs></select></div><p class="ex-tools"><button type="button" data-do="new-job">${w.newJob}</button><button type="button" data-do="undo">${w.undo}</button></p></div>
<div class="desk-begin"><div class="ex-field"><label for="desk-begin">${w.newFrom}</label><select id="desk-begin" data-begin><option value="">${w.empty}</option>${demos}</select></div><p class="ex-tools"><button type="button" data-do="begin">${w.begin}</button><button type="button" data-do="open">${w.open}</button><button type="button" data-do="cancel" hidden>${w.cancel}</button></p><input type="file" data-file accept=".json,application/json" hidden tabindex="-1" aria-label="${w.open}"></div>
<p class="desk-kept" role="status"></p><div class="desk-damaged"></div>
<div class="desk-job" hidden><p class="desk-outcome"></p><ol class="desk-stages">${STAGES.map((stage) => stageHtml(words, stage)).join('')}</ol><p class="ex-tools desk-foot"><button type="button" data-do="save" data-at="job">${words.sheet.file}</button><button type="button" data-do="remove-job">${w.remove}</button></p></div>`;
}
