/** HTML of an example's form and answer, the same when the site is built and in the browser. */

import type { Figure, Output, Presets, Table, View } from './example.js';
import type { AnyRows, Column, Input, Inputs, PlaceInput, SeveralInput } from './inputs/inputs.js';
import { PRESETS } from './inputs/places.js';
import { applies, fieldsOf, type Raw, splitRows } from './inputs/state.js';
import { localNumber, said } from './language/language.js';
import { escapeHtml, shown, withUnit } from './language/text.js';
import type { Words } from './language/words.js';

/** A text of an example in the present language, safe for HTML. */
const inWords = (text: string) => escapeHtml(said(text));

const attributes = (of: Readonly<Record<string, string | number | boolean | undefined>>) =>
  Object.entries(of)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([name, value]) => ` ${name}${value === true ? '' : `="${escapeHtml(String(value))}"`}`)
    .join('');

/** The place under a field where its error appears. */
const errorSlot = (id: string) => `<p class="ex-error" id="${id}-error" hidden></p>`;

const hintOf = (id: string, hint: string | undefined) =>
  hint ? `<p class="ex-hint" id="${id}-hint">${inWords(hint)}</p>` : '';

const describedBy = (id: string, hint: string | undefined) =>
  hint ? `${id}-error ${id}-hint` : `${id}-error`;

interface NumberField {
  readonly label: string;
  readonly unit?: string | undefined;
  readonly hint?: string | undefined;
  readonly step: number;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly empty?: string;
}

function numberField(
  words: Words,
  id: string,
  field: string,
  of: NumberField,
  raw: string,
): string {
  const stepper = (sense: -1 | 1, sign: string, word: string) =>
    `<button type="button" class="ex-step" tabindex="-1" data-step="${sense}" aria-label="${`${word} ${inWords(of.label)}`}">${sign}</button>`;
  const control = attributes({
    id,
    name: field,
    type: 'text',
    inputmode: (of.min ?? -1) >= 0 ? 'decimal' : undefined,
    autocomplete: 'off',
    spellcheck: 'false',
    value: localNumber(raw),
    placeholder: of.empty === undefined ? undefined : said(of.empty),
    'data-number': of.step,
    'data-min': of.min,
    'data-max': of.max,
    'aria-describedby': describedBy(id, of.hint),
  });
  const unit = of.unit ? ` <span class="ex-unit">${inWords(of.unit)}</span>` : '';
  return `<div class="ex-field"><label for="${id}">${inWords(of.label)}${unit}</label><div class="ex-number">${stepper(-1, '−', words.less)}<input${control}>${stepper(1, '+', words.more)}</div>${errorSlot(id)}${hintOf(id, of.hint)}</div>`;
}

/** The search for a town, hidden until it is asked for. */
const townSearch = (words: Words, id: string) =>
  `<div class="ex-towns" id="${id}" hidden><div class="ex-field"><label for="${id}-input">${words.town}</label><input${attributes({ id: `${id}-input`, type: 'text', role: 'combobox', autocomplete: 'off', spellcheck: 'false', 'aria-expanded': 'false', 'aria-controls': `${id}-list`, 'aria-autocomplete': 'list' })}><ul id="${id}-list" role="listbox" aria-label="${words.towns}" hidden></ul></div><p class="ex-hint">${words.townsOf} <a href="https://www.geonames.org/">GeoNames</a>, CC BY 4.0.</p></div>`;

function placeFields(words: Words, id: string, name: string, input: PlaceInput, raw: Raw): string {
  const [latitude = '', longitude = '', height = ''] = fieldsOf(name, input);
  const options = PRESETS.map(
    (preset, index) => `<option value="${index}">${inWords(preset.name)}</option>`,
  ).join('');
  const of = (label: string, unit: string, step: number, span: number, hint?: string) => ({
    label,
    unit,
    step,
    hint,
    min: -span,
    max: span,
  });
  const at = (field: string) => `${id}-${field}`;
  return `<fieldset class="ex-place" data-place="${latitude} ${longitude} ${height}"><legend>${inWords(input.label)}</legend><div class="ex-field"><label for="${id}-${name}-preset">${words.place}</label><select id="${id}-${name}-preset" data-preset><option value="">${words.ownCoordinates}</option>${options}</select></div>${numberField(words, at(latitude), latitude, of(words.latitude, words.north, 0.1, 90), raw[latitude] ?? '')}${numberField(words, at(longitude), longitude, of(words.longitude, words.east, 0.1, 180), raw[longitude] ?? '')}${numberField(words, at(height), height, { label: words.height, unit: 'm', step: 10, min: -400, max: 9000 }, raw[height] ?? '')}<p class="ex-tools"><button type="button" data-town="${id}-${name}-towns" aria-expanded="false">${words.findTown}</button><button type="button" data-locate>${words.useMyPosition}</button></p>${townSearch(words, `${id}-${name}-towns`)}<p class="ex-hint" data-place-note hidden></p></fieldset>`;
}

function cell(
  words: Words,
  name: string,
  row: number,
  key: string,
  column: Column,
  raw: string,
): string {
  const label = `${said(column.label)}, ${words.row} ${row + 1}`;
  const common = { 'aria-label': label, 'data-cell': `${name}[${row}].${key}` };
  if ('options' in column) {
    const options = Object.entries(column.options)
      .map(
        ([value, word]) =>
          `<option value="${escapeHtml(value)}"${value === raw ? ' selected' : ''}>${inWords(word)}</option>`,
      )
      .join('');
    return `<select${attributes(common)}>${options}</select>`;
  }
  const step = 'text' in column ? undefined : (column.step ?? 1);
  const unit = 'unit' in column ? column.unit : undefined;
  // The keyboard of digits has no minus sign on every phone.
  const inputmode = unit && /^(dBµV|GHz|MHz|mm|m)$/.test(unit) ? 'decimal' : undefined;
  return `<input${attributes({ ...common, inputmode, type: 'text', autocomplete: 'off', spellcheck: 'false', value: step === undefined ? raw : localNumber(raw), 'data-number': step })}>`;
}

/** The body of a table input; rendered anew when rows come or go. */
export function renderRows(words: Words, name: string, input: AnyRows, line: string): string {
  const columns = Object.entries(input.columns) as [string, Column][];
  return splitRows(line)
    .map((cells, row) => {
      const made = columns.map(
        ([key, column], index) =>
          `<td data-head="${inWords(column.label)}${'unit' in column && column.unit ? ` / ${inWords(column.unit)}` : ''}">${cell(words, name, row, key, column, cells[index] ?? '')}</td>`,
      );
      return `<tr>${made.join('')}<td><button type="button" data-remove="${row}" aria-label="${words.removeRow} ${row + 1}">×</button></td></tr>`;
    })
    .join('');
}

function rowsField(words: Words, id: string, name: string, input: AnyRows, raw: string): string {
  const heads = (Object.values(input.columns) as Column[])
    .map((column) => {
      const unit =
        'unit' in column && column.unit
          ? ` <span class="ex-unit">${inWords(column.unit)}</span>`
          : '';
      return `<th scope="col">${inWords(column.label)}${unit}</th>`;
    })
    .join('');
  return `<fieldset class="ex-rows" data-rows="${name}"><legend>${inWords(input.label)}</legend>${hintOf(id, input.hint)}<div class="ex-scroll"><table><thead><tr>${heads}<td></td></tr></thead><tbody>${renderRows(words, name, input, raw)}</tbody></table></div><p class="ex-tools"><button type="button" data-add>${words.addRow}</button></p>${errorSlot(id)}</fieldset>`;
}

function severalField(id: string, name: string, input: SeveralInput, line: string): string {
  const ticked = line.split('*');
  const groups = Object.entries(input.groups).map(([title, options]) => {
    const boxes = Object.entries(options)
      .map(
        ([value, word]) =>
          `<label><input${attributes({ type: 'checkbox', value, checked: ticked.includes(value) })}> ${inWords(word)}</label>`,
      )
      .join('');
    return `<details><summary>${inWords(title)}</summary>${boxes}</details>`;
  });
  return `<fieldset class="ex-rows ex-several" data-several="${name}"><legend>${inWords(input.label)}</legend>${hintOf(id, input.hint)}${groups.join('')}${errorSlot(id)}</fieldset>`;
}

/** The list of sets of inputs. */
function presetField(example: string, presets: Presets<Inputs>): string {
  const options = presets.sets
    .map(({ label }, index) => `<option value="${index}">${inWords(label)}</option>`)
    .join('');
  const id = `${example}-presets`;
  return `<div class="ex-field"><label for="${id}">${inWords(presets.label)}</label><select id="${id}" data-sets><option value="">${inWords(presets.own)}</option>${options}</select></div>`;
}

function renderInput(words: Words, example: string, name: string, input: Input, raw: Raw): string {
  const id = `${example}-${name}`;
  const line = raw[name] ?? '';
  switch (input.kind) {
    case 'number':
    case 'optional-number': {
      const html = numberField(words, id, name, input, line);
      if (!input.onlyFor) return html;
      const only = attributes({
        'data-only-for': input.onlyFor.choice,
        'data-values': input.onlyFor.values.join(' '),
        hidden: !applies(input, raw),
      });
      return html.replace('<div class="ex-field"', `<div class="ex-field"${only}`);
    }
    case 'several':
      return severalField(id, name, input, line);
    case 'place':
      return placeFields(words, example, name, input, raw);
    case 'rows':
      return rowsField(words, id, name, input, line);
    case 'toggle':
      return `<div class="ex-field ex-toggle"><label><input${attributes({ id, name, type: 'checkbox', checked: line === 'yes', 'aria-describedby': describedBy(id, input.hint) })}> ${inWords(input.label)}</label>${errorSlot(id)}${hintOf(id, input.hint)}</div>`;
    case 'choice': {
      const options = Object.entries(input.options)
        .map(
          ([value, word]) =>
            `<option value="${escapeHtml(value)}"${value === line ? ' selected' : ''}>${inWords(word)}</option>`,
        )
        .join('');
      return `<div class="ex-field"><label for="${id}">${inWords(input.label)}</label><select${attributes({ id, name, 'aria-describedby': describedBy(id, input.hint) })}>${options}</select>${errorSlot(id)}${hintOf(id, input.hint)}</div>`;
    }
    case 'text': {
      const common = attributes({
        id,
        name,
        autocomplete: 'off',
        spellcheck: 'false',
        'aria-describedby': describedBy(id, input.hint),
      });
      const control =
        (input.lines ?? 1) > 1
          ? `<textarea${common} rows="${input.lines}">${escapeHtml(line)}</textarea>`
          : `<input type="text"${common} value="${escapeHtml(line)}">`;
      return `<div class="ex-field"><label for="${id}">${inWords(input.label)}</label>${control}${errorSlot(id)}${hintOf(id, input.hint)}</div>`;
    }
  }
}

/** All fields of an example, filled with `raw`, and its own buttons. `example` begins every id. */
export function renderForm(
  words: Words,
  example: string,
  inputs: Inputs,
  raw: Raw,
  actions: readonly { readonly label: string }[] = [],
  presets?: Presets<Inputs>,
  usual?: readonly string[],
): string {
  const draw = (list: readonly (readonly [string, Input])[]) =>
    list.map(([name, input]) => renderInput(words, example, name, input, raw));
  const all = Object.entries(inputs);
  const folded = usual ? all.filter(([name]) => !usual.includes(name)) : [];
  const fields = draw(
    usual ? usual.flatMap((name) => all.filter(([other]) => other === name)) : all,
  );
  if (folded.length > 0)
    fields.push(
      `<details class="ex-more"><summary>${words.moreInputs} <span>${folded
        .slice(0, 3)
        .map(([, { label }]) => inWords(label))
        .join(
          ', ',
        )}${folded.length > 3 ? ' …' : ''}</span></summary><div>${draw(folded).join('')}</div></details>`,
    );
  const buttons = actions.map(
    ({ label }, index) => `<button type="button" data-action="${index}">${inWords(label)}</button>`,
  );
  return (
    (presets ? presetField(example, presets) : '') +
    fields.join('') +
    (buttons.length === 0
      ? ''
      : usual && buttons.length > 3
        ? `<details class="ex-more"><summary>${words.prepared}</summary><div class="ex-tools">${buttons.join('')}</div></details>`
        : `<p class="ex-tools">${buttons.join('')}</p>`)
  );
}

function renderOutput(output: Output): string {
  const figure = escapeHtml(withUnit(shown(output.value, output.digits), output.unit));
  const note = output.note ? ` <small>${inWords(output.note)}</small>` : '';
  return `<div${output.main ? ' class="ex-main"' : ''}><dt>${inWords(output.label)}</dt><dd><output>${figure}</output>${note}</dd></div>`;
}

/** A figure that stays with its short unit. */
const kept = (text: string) => text.replace(/(\d) (?=[%°A-Za-z/²]{1,5}$)/, '$1\u00a0');

/** A table of figures. */
export function renderTable(table: Table): string {
  // A unit stays with the word before it.
  const title = (column: string) => inWords(column).replaceAll(' / ', ' /\u00a0');
  const head = table.columns.map((column) => `<th scope="col">${title(column)}</th>`).join('');
  const body = table.rows
    .map(([first = '', ...rest]) => {
      const cells = rest.map((cell) => `<td>${kept(inWords(cell))}</td>`).join('');
      return `<tr><th scope="row">${inWords(first)}</th>${cells}</tr>`;
    })
    .join('');
  return `<div class="ex-scroll" tabindex="0" role="region" aria-label="${inWords(table.caption)}"><table class="ex-table"><caption>${inWords(table.caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div>`;
}

/** A picture with its marks that can be moved lying over it; without script they are not shown. */
function renderPicture({ svg, handles = [] }: Figure): string {
  if (handles.length === 0) return svg;
  const marks = handles.map((handle) => {
    const [x, y] = handle.at.map((share) => `${(100 * share).toFixed(2)}%`);
    const aria = attributes({
      'aria-label': said(handle.label),
      'aria-valuetext': said(handle.says),
      'aria-valuenow': handle.now,
      'aria-valuemin': handle.min,
      'aria-valuemax': handle.max,
      style: `left:${x};top:${y}`,
    });
    return `<span class="ex-handle" role="slider" tabindex="0" data-handle${aria}></span>`;
  });
  return `<div class="ex-picture">${svg}${marks.join('')}</div>`;
}

/** A drawing with its numbers folded below it. */
export function renderFigure(words: Words, figure: Figure): string {
  return `<figure class="ex-figure">${renderPicture(figure)}<figcaption>${inWords(figure.title)}</figcaption><details><summary>${words.numbersInPicture}</summary>${renderTable(figure.table)}</details></figure>`;
}

const cautionOf = (words: Words, { caution }: View) =>
  caution ? `<p class="ex-caution"><b>${words.caution}.</b> ${inWords(caution)}</p>` : '';

const notesOf = ({ notes = [] }: View) =>
  notes.map((note) => `<p class="ex-note">${inWords(note)}</p>`);

/** What stands above everything in the wide pattern: the sentence, the caution, the figures set large. */
export function renderTop(words: Words, view: View): string {
  const main = view.outputs.filter((output) => output.main);
  return `<p class="ex-says">${inWords(view.says)}</p>${cautionOf(words, view)}${main.length > 1 ? `<dl class="ex-outputs ex-large">${main.map(renderOutput).join('')}</dl>` : ''}`;
}

/** What stands beside the inputs in the wide pattern, one thing after the other: pictures first, then figures, then tables. */
export function renderRest(words: Words, view: View): string[] {
  const [first, ...others] = view.tables ?? [];
  const fold = (table: Table) =>
    `<details class="ex-fold"><summary>${inWords(table.caption)}</summary>${renderTable(table)}</details>`;
  const outputs = view.outputs
    .filter((output, _, all) => !output.main || all.filter(({ main }) => main).length < 2)
    .map(renderOutput)
    .join('');
  return [
    ...(view.figures ?? []).map((figure) => renderFigure(words, figure)),
    `<dl class="ex-outputs ex-columns">${outputs}</dl>`,
    ...notesOf(view),
    ...(first ? [renderTable(first)] : []),
    ...others.map(fold),
  ];
}

/** The whole answer, one thing after the other. */
export function renderView(words: Words, view: View): string[] {
  const caution = cautionOf(words, view);
  return [
    `<p class="ex-says">${inWords(view.says)}</p>`,
    ...(caution ? [caution] : []),
    `<dl class="ex-outputs">${view.outputs.map(renderOutput).join('')}</dl>`,
    ...notesOf(view),
    ...(view.tables ?? []).map(renderTable),
    ...(view.figures ?? []).map((figure) => renderFigure(words, figure)),
  ];
}
