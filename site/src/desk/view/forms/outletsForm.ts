/** The form of cables and outlets: each part a row that names the part before it. */

import { endsWay, hasPorts, type PartRow, partRows, placesFor } from '../../state/tree.js';
import type { Desk } from '../desk.js';
import { name, number, type Part } from '../parts.js';
import { lineRows } from './linesForm.js';
import { partFields } from './partFields.js';
import { sharedCableParts } from './stackingForm.js';

function partRow(desk: Desk, row: PartRow, rows: readonly PartRow[], index: number): Part {
  const { draft, words } = desk;
  const w = words.outlets;
  const { part, path, before } = row;
  const kind = w.kinds[part.kind] ?? part.kind;
  const called = part.name ?? kind;
  const nameOf = (at: string) => {
    const found = rows.find((each) => each.path === at)?.part;
    return found?.name ?? w.kinds[found?.kind ?? ''] ?? w.unit;
  };
  const targets = placesFor(draft, path);
  const movable =
    targets.length > 0 && (before === '' || targets.some((each) => each.path === before));
  const behind: Part = movable
    ? {
        kind: 'own',
        name: `behind:${path}`,
        label: w.behind,
        value: before,
        options: {
          '': w.unit,
          ...Object.fromEntries(targets.map((each) => [each.path, nameOf(each.path)])),
        },
      }
    : { kind: 'note', text: `${w.behind}: ${before === '' ? w.unit : nameOf(before)}` };
  const adds = endsWay(part.kind)
    ? []
    : [
        { what: 'part:cable', label: words.plus(w.addCable) },
        { what: 'part:splitter', label: words.plus(w.addSplitter) },
        { what: 'part:amplifier', label: words.plus(w.addAmplifier) },
        { what: 'part:connector', label: words.plus(w.addConnector) },
      ];
  return {
    kind: 'group',
    legend: `${index + 1} ${kind}`,
    remove: { list: path, what: called },
    parts: [
      name(`${path}.name`, w.name),
      ...partFields(desk, part, path),
      behind,
      ...(adds.length === 0
        ? []
        : [
            {
              kind: 'fold',
              name: `add-${path}`,
              title: w.add(called),
              parts: [
                {
                  kind: 'buttons',
                  buttons: (hasPorts(part.kind) ? adds.slice(0, 3) : adds).map((each) => ({
                    ...each,
                    at: path,
                  })),
                },
              ],
            } as const,
          ]),
    ],
  };
}

/** Parts from the unit to the outlets. */
export function outletsForm(desk: Desk): readonly Part[] {
  const { draft, words } = desk;
  const w = words.outlets;
  const rows = partRows(draft);
  return [
    ...(rows.length === 0 ? [{ kind: 'note', text: w.none } as const] : []),
    ...rows.map((row, index) => partRow(desk, row, rows, index)),
    {
      kind: 'fold',
      name: 'add-first',
      title: w.addFirst,
      open: rows.length === 0,
      parts: [
        {
          kind: 'buttons',
          buttons: [
            { what: 'part:cable', at: '', label: words.plus(w.addCable) },
            { what: 'part:splitter', at: '', label: words.plus(w.addSplitter) },
            { what: 'part:switch', at: '', label: words.plus(w.addSwitch) },
            { what: 'part:receiver', at: '', label: words.plus(w.addReceiver) },
          ],
        },
      ],
    },
    ...lineRows(desk),
    ...(rows.length === 0 ? [] : sharedCableParts(desk)),
    ...(rows.length === 0
      ? []
      : [
          {
            kind: 'fold',
            name: 'outlets-more',
            title: words.more,
            parts: [
              number('distribution.temperatureC', w.temperature, '°C', {
                empty: '20',
                signed: true,
              }),
              number('distribution.carrierCount', w.carrierCount, '', { empty: '–' }),
            ],
          } as const,
        ]),
  ];
}
