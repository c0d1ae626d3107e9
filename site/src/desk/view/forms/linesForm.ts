/** The form of the lines from receiving units to switches. */

import { listAt } from '../../state/paths.js';
import { switchNames } from '../../state/tree.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, fewOf, type Part, rowsOf, text } from '../parts.js';
import { partFields } from './partFields.js';

/** One part of a line. */
function linePart(desk: Desk, list: string, index: number): Part {
  const { draft, words } = desk;
  const path = `${list}[${index}]`;
  const part = listAt(draft, list)[index] as { readonly kind: string; readonly name?: string };
  const kind = words.outlets.kinds[part.kind] ?? part.kind;
  return {
    kind: 'group',
    legend: `${index + 1} ${kind}`,
    remove: { list, index, what: part.name ?? kind },
    parts: [text(`${path}.name`, words.outlets.name), ...partFields(desk, part, path)],
  };
}

/** Lines from units to switches; asked for where there is a switch. */
export function lineRows(desk: Desk): readonly Part[] {
  const { draft, words } = desk;
  const w = words.outlets;
  const switches = switchNames(draft);
  const lines = draft.distribution?.lines ?? [];
  if (switches.length === 0 && lines.length === 0) return [];
  return [
    rowsOf(words, {
      list: 'distribution.lines',
      count: lines.length,
      title: w.lines,
      row: words.inside(w.line),
      fields: (path, index) => {
        const line = lines[index];
        const unit = draft.units?.find((each) => each.name === line?.unit);
        const parts = `${path}.parts`;
        return [
          choice(`${path}.unit`, w.ofUnit, asOptions((draft.units ?? []).map((each) => each.name))),
          choice(`${path}.band`, w.bandOf, {
            '': w.allBands,
            ...asOptions((unit?.bands ?? []).map((band) => band.name)),
          }),
          fewOf(
            `${path}.polarizations`,
            w.carries,
            { '': w.allPolarizations, ...words.polarizations },
            listAt(line, 'polarizations') as readonly string[],
          ),
          choice(`${path}.into`, w.into, asOptions(switches)),
          text(`${path}.input`, w.input),
          ...listAt(line, 'parts').map((_, at) => linePart(desk, parts, at)),
          {
            kind: 'buttons',
            buttons: (['cable', 'connector', 'amplifier'] as const).map((kind) => ({
              what: `line-part:${kind}`,
              at: parts,
              label: words.plus(w.kinds[kind] ?? kind),
            })),
          },
        ];
      },
    }),
  ];
}
