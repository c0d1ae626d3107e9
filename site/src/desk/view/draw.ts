/** HTML of a form's parts. */

import { localNumber } from '../../lib/language/language.js';
import { escapeHtml } from '../../lib/language/text.js';
import type { Draft } from '../state/draft.js';
import { valueAt } from '../state/paths.js';
import type { DeskWords } from '../words/words.js';
import type { Field, Own, Part } from './parts.js';

/** Attributes of an element. */
const attributes = (of: Readonly<Record<string, string | number | boolean | undefined>>): string =>
  Object.entries(of)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([key, value]) => ` ${key}${value === true ? '' : `="${escapeHtml(String(value))}"`}`)
    .join('');

/** An id that holds for a path. */
export const idOf = (path: string): string =>
  `desk-${path.replace(/[^A-Za-z0-9]+/g, '-').replace(/-$/, '')}`;

const optionsHtml = (options: Readonly<Record<string, string>>, chosen: string) =>
  Object.entries(options)
    .map(
      ([value, word]) =>
        `<option value="${escapeHtml(value)}"${value === chosen ? ' selected' : ''}>${escapeHtml(word)}</option>`,
    )
    .join('');

const unitHtml = (unit: string | undefined) =>
  unit ? ` <span class="ex-unit">${escapeHtml(unit)}</span>` : '';

/** What stands in a field, as text. */
function shownIn({ as }: Field, value: unknown): string {
  if (value === undefined || value === null) return '';
  return as === 'number' || as === 'angle' ? localNumber(String(value)) : String(value);
}

function fieldHtml(words: DeskWords, draft: Draft, field: Field): string {
  const { path, label, as, options, empty, hint, wide, signed } = field;
  const id = idOf(path);
  const value = valueAt(draft, path);
  const common = { id, 'data-path': path, 'data-as': as, 'aria-describedby': `${id}-says` };
  const says = `<p class="ex-error" id="${id}-says" hidden></p>${hint ? `<p class="ex-hint">${escapeHtml(hint)}</p>` : ''}`;
  if (as === 'yes')
    return `<div class="ex-field ex-toggle"><label><input${attributes({ ...common, type: 'checkbox', checked: value === true })}> ${escapeHtml(label)}</label>${says}</div>`;
  const shown = shownIn(field, value);
  const known = options && (shown === '' || Object.hasOwn(options, shown));
  const control =
    as === 'choice' && options
      ? `<select${attributes(common)}>${shown === '' && !Object.hasOwn(options, '') ? `<option value="">${words.choose}</option>` : ''}${known ? '' : `<option selected>${escapeHtml(shown)}</option>`}${optionsHtml(options, shown)}</select>`
      : `<input${attributes({
          ...common,
          type: as === 'day' ? 'date' : as === 'clock' ? 'time' : 'text',
          inputmode: as === 'number' && !signed ? 'decimal' : undefined,
          autocomplete: 'off',
          spellcheck: 'false',
          value: shown,
          placeholder: empty === undefined ? undefined : localNumber(empty),
        })}>`;
  return `<div class="ex-field${wide ? ' desk-wide' : ''}"><label for="${id}">${escapeHtml(label)}${unitHtml(field.unit)}</label>${control}${says}</div>`;
}

function ownHtml(own: Own): string {
  const id = idOf(`own-${own.name}`);
  const common = { id, 'data-own': own.name, 'aria-describedby': `${id}-says` };
  const control = own.options
    ? `<select${attributes(common)}>${optionsHtml(own.options, own.value)}</select>`
    : own.lines
      ? `<textarea${attributes({ ...common, rows: own.lines, spellcheck: 'false' })}>${escapeHtml(own.value)}</textarea>`
      : `<input${attributes({ ...common, type: 'text', inputmode: own.signed ? undefined : 'decimal', autocomplete: 'off', value: localNumber(own.value) })}>`;
  const note = `<p class="desk-note" id="${id}-says" data-note="${escapeHtml(own.name)}"${attributes({ 'data-state': own.state })}>${escapeHtml(own.note ?? '')}</p>`;
  return `<div class="ex-field${own.lines ? ' desk-wide' : ''}"><label for="${id}">${escapeHtml(own.label)}${unitHtml(own.unit)}</label>${control}${note}</div>`;
}

/** HTML of parts. */
export function drawParts(words: DeskWords, draft: Draft, parts: readonly Part[]): string {
  const draw = (part: Part): string => {
    switch (part.kind) {
      case 'field':
        return fieldHtml(words, draft, part);
      case 'own':
        return ownHtml(part);
      case 'note':
        return `<p class="${part.strong ? 'desk-strong' : 'ex-hint'} desk-wide">${escapeHtml(part.text)}</p>`;
      case 'made':
        return `<div class="desk-wide">${part.html}</div>`;
      case 'buttons':
        return `<p class="ex-tools desk-wide">${part.buttons
          .map(
            ({ what, at, label }) =>
              `<button type="button"${attributes({ 'data-do': what, 'data-at': at })}>${escapeHtml(label)}</button>`,
          )
          .join('')}</p>`;
      case 'fold':
        return `<details class="desk-fold desk-wide"${attributes({ 'data-fold': part.name, open: part.open === true })}><summary>${escapeHtml(part.title)}${part.says ? ` <span>${escapeHtml(part.says)}</span>` : ''}</summary><div class="desk-group">${part.parts.map(draw).join('')}</div></details>`;
      case 'group': {
        const { legend, remove } = part;
        const inner = part.parts.map(draw).join('');
        if (!legend && !remove) return `<div class="desk-group desk-wide">${inner}</div>`;
        const button = remove
          ? `<button type="button" class="desk-remove"${attributes({ 'data-do': 'remove', 'data-at': remove.index === undefined ? remove.list : `${remove.list}[${remove.index}]`, 'aria-label': words.remove(remove.what) })}>×</button>`
          : '';
        return `<fieldset class="desk-card desk-wide"><legend>${escapeHtml(legend ?? '')}</legend>${button}<div class="desk-group">${inner}</div></fieldset>`;
      }
    }
  };
  return parts.map(draw).join('');
}
