/** The form of cables and outlets: each part a row that names the part before it. */

import type { LoosePart } from '../state/draft.js';
import { cableTypes } from '../state/newParts.js';
import {
  endsWay,
  hasPorts,
  type PartRow,
  partRows,
  placesFor,
  switchNames,
} from '../state/tree.js';
import type { Desk } from './desk.js';
import { asOptions, choice, type Field, name, number, type Part } from './parts.js';

/** A loss or gain: a number, or one by frequency that the form only names. */
function decibels(desk: Desk, part: LoosePart, path: string, field: string, label: string): Part {
  return Array.isArray(part[field])
    ? { kind: 'note', text: `${label}: ${desk.words.outlets.byFrequency}` }
    : number(`${path}.${field}`, label, 'dB', { signed: true });
}

/** What a part of this kind is described by. */
function partFields(desk: Desk, { part, path }: PartRow): readonly Part[] {
  const w = desk.words.outlets;
  const loss = () => decibels(desk, part, path, 'lossDb', w.loss);
  switch (part.kind) {
    case 'cable': {
      const types = cableTypes(part);
      return [
        {
          kind: 'own',
          name: `cable:${path}`,
          label: w.cable,
          value: types.chosen,
          options: { ...(types.own ? { [types.chosen]: types.own } : {}), ...types.known },
        },
        number(`${path}.lengthM`, w.length, 'm'),
      ];
    }
    case 'tap':
      return [
        decibels(desk, part, path, 'throughLossDb', w.through),
        decibels(desk, part, path, 'tapLossDb', w.tapLoss),
      ];
    case 'amplifier':
      return [
        decibels(desk, part, path, 'gainDb', w.gain),
        number(`${path}.noiseFigureDb`, w.noise, 'dB'),
        number(`${path}.maximumOutputDbuv`, w.overload, 'dBµV', { empty: '–' }),
      ];
    case 'receiver':
      return [
        number(`${path}.minimumLevelDbuv`, w.lowest, 'dBµV', { empty: '43.75' }),
        number(`${path}.maximumLevelDbuv`, w.highest, 'dBµV', { empty: '83.75' }),
      ];
    default:
      return [loss()];
  }
}

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
      ...partFields(desk, row),
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

/** Lines from units to switches. */
function lineRows(desk: Desk): readonly Part[] {
  const { draft, words } = desk;
  const w = words.outlets;
  const switches = switchNames(draft);
  const lines = draft.distribution?.lines ?? [];
  if (switches.length === 0 && lines.length === 0) return [];
  const list = 'distribution.lines';
  return [
    {
      kind: 'fold',
      name: 'lines',
      title: w.lines,
      says: String(lines.length),
      parts: [
        ...lines.map((line, index): Part => {
          const path = `${list}[${index}]`;
          return {
            kind: 'group',
            legend: `${w.line} ${index + 1}`,
            remove: { list, index, what: `${w.line} ${index + 1}` },
            parts: [
              choice(
                `${path}.unit`,
                w.ofUnit,
                asOptions((draft.units ?? []).map((unit) => unit.name)),
              ),
              choice(`${path}.into`, w.into, asOptions(switches)),
              { kind: 'field', as: 'text', path: `${path}.input`, label: w.input },
              ...(line.parts ?? []).map((part, at): Part | Field => {
                const kind = w.kinds[part.kind] ?? part.kind;
                return part.kind === 'cable'
                  ? number(`${path}.parts[${at}].lengthM`, w.part(kind), 'm')
                  : decibels(
                      desk,
                      part,
                      `${path}.parts[${at}]`,
                      part.kind === 'amplifier' ? 'gainDb' : 'lossDb',
                      w.part(kind),
                    );
              }),
            ],
          };
        }),
        {
          kind: 'buttons',
          buttons: [
            { what: 'add', at: list, label: words.plus(w.line.toLowerCase()) },
            ...(lines.length > 0 ? [{ what: 'same', at: list, label: words.same }] : []),
          ],
        },
      ],
    },
  ];
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
