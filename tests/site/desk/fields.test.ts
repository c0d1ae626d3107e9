/** Every value of the demo jobs has a field on the page, and to type what stands in a field changes nothing. */

import { readdirSync, readFileSync } from 'node:fs';
import { type JobFile, recordJobWith } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { newBeside } from '../../../site/src/desk/state/beside.js';
import { takenFrom } from '../../../site/src/desk/state/exchange.js';
import { valueAt } from '../../../site/src/desk/state/paths.js';
import { STAGES } from '../../../site/src/desk/state/stages.js';
import { typedInto } from '../../../site/src/desk/state/typedFields.js';
import type { Desk } from '../../../site/src/desk/view/desk.js';
import { formOf } from '../../../site/src/desk/view/forms/forms.js';
import type { Field, Own, Part } from '../../../site/src/desk/view/parts.js';
import { de } from '../../../site/src/desk/words/de/de.js';
import { en } from '../../../site/src/desk/words/en/en.js';

const folder = new URL('../../../examples/job/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.json'));

/** What is on the page by other means: rows by their kind, slots of a mount, readings, samples, notes. */
const OTHERWISE = [
  /^(format|version)$/,
  /\.kind$/,
  /^mounts\[\d+\]\.slots/,
  /^units\[\d+\]\.(slots|polarizations)/,
  /^(visits\[\d+\]\.)?notes\[/,
  /\.samples\./,
];

/** Paths of all texts, numbers and truths. */
function leaves(value: unknown, path = ''): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((row, index) => leaves(row, `${path}[${index}]`));
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) =>
    leaves(inner, path === '' ? key : `${path}.${key}`),
  );
}

const flat = (parts: readonly Part[]): readonly (Field | Own)[] =>
  parts.flatMap((part) =>
    part.kind === 'field' || part.kind === 'own' ? [part] : 'parts' in part ? flat(part.parts) : [],
  );

describe.each(demos)('%s', (name) => {
  const taken = takenFrom(readFileSync(new URL(name, folder), 'utf8'));
  if (taken.kind !== 'job') throw new Error(taken.kind);
  const { draft } = taken;
  const record = recordJobWith(JSON.stringify(draft as JobFile), { climate: null });
  const visits = draft.visits?.length ? draft.visits.map((_, visit) => visit) : [0];
  const shown = visits.flatMap((visit) => {
    const desk: Desk = { draft, record, beside: { ...newBeside, visit }, words: en };
    return STAGES.flatMap((stage) => flat(formOf(stage, desk)));
  });

  test('has a field for every value', () => {
    const fields = new Set(shown.map((each) => (each.kind === 'field' ? each.path : '')));
    const readings = new Set(shown.flatMap((each) => (each.kind === 'own' ? [each.name] : [])));
    const read = (path: string) => {
      const [row] = /^visits\[\d+\]\.readings\[\d+\]/.exec(path) ?? [];
      const { testPoint, slot, carrier, quantity } = (row && valueAt(draft, row)) as Record<
        string,
        unknown
      >;
      return readings.has(`read:${JSON.stringify([testPoint, slot, carrier, quantity])}`);
    };
    const cable = (path: string) => readings.has(`cable:${path.replace(/\.cable\..*$/, '')}`);
    const missing = leaves(draft).filter(
      (path) =>
        !fields.has(path) &&
        !OTHERWISE.some((known) => known.test(path)) &&
        !(/\.readings\[/.test(path) && read(path)) &&
        !(/\.cable\./.test(path) && cable(path)),
    );
    expect(missing).toEqual([]);
  });

  test('stays as it is when each field is typed as it stands', () => {
    const fields = shown.flatMap((each) => (each.kind === 'field' ? [each] : []));
    const changed = fields.filter(({ path, as }) => {
      const value = valueAt(draft, path);
      if (value === undefined || as === 'yes') return false;
      const made = typedInto(draft, path, as, String(value)).draft;
      return JSON.stringify(valueAt(made, path)) !== JSON.stringify(value);
    });
    expect(changed.map(({ path }) => path)).toEqual([]);
  });

  test('offers each value of a choice', () => {
    const odd = shown.filter(
      (each) =>
        each.kind === 'field' &&
        each.options !== undefined &&
        valueAt(draft, each.path) !== undefined &&
        !Object.hasOwn(each.options, String(valueAt(draft, each.path))),
    );
    expect(odd.map((each) => (each.kind === 'field' ? each.path : ''))).toEqual([]);
  });
});

/** Every text of a form: labels, legends, titles, hints, options, buttons. */
const textsOf = (parts: readonly Part[]): readonly string[] =>
  parts.flatMap((part): readonly string[] => {
    switch (part.kind) {
      case 'field':
        return [
          part.label,
          part.hint ?? '',
          part.empty ?? '',
          ...Object.values(part.options ?? {}),
        ];
      case 'own':
        return [part.label];
      case 'note':
        return [part.text];
      case 'buttons':
        return part.buttons.map(({ label }) => label);
      case 'fold':
        return [part.title, ...textsOf(part.parts)];
      case 'group':
        return [part.legend ?? '', ...textsOf(part.parts)];
      default:
        return [];
    }
  });

test.each(demos)('%s in German leaves no English text', (name) => {
  const taken = takenFrom(readFileSync(new URL(name, folder), 'utf8'));
  if (taken.kind !== 'job') throw new Error(taken.kind);
  const { draft } = taken;
  const record = recordJobWith(JSON.stringify(draft as JobFile), { climate: null });
  const said = (words: typeof de) =>
    STAGES.flatMap((stage) => textsOf(formOf(stage, { draft, record, beside: newBeside, words })));
  const english = new Set(said(en));
  const own = new Set(leaves(draft).map((path) => String(valueAt(draft, path))));
  // Names of the job itself, of standards and modes, and words that are the same in both.
  const same = /^(Name|Band|Mast|Feeds?|Roll-off|antenna|Antenne|horizontal|[^a-z]*)$/;
  const left = said(de).filter(
    (text) =>
      english.has(text) &&
      !own.has(text) &&
      !same.test(text.replace(/ \d+$/, '')) &&
      !/^(.?PSK|\d+A?PSK|DVB|C\/N|MER|BER|S\.|47-CFR|RR-|series|\d)/.test(text) &&
      ![...own].some((word) => word.length > 2 && text.includes(word)),
  );
  expect([...new Set(left)]).toEqual([]);
});
