/** The form of the readings: the visit, what is wanted at each test point, other readings, limits. */

import type { JobRecord } from 'slantpath/job';
import { shown } from '../../../lib/language/text.js';
import { visitOf } from '../../state/beside.js';
import type { LooseLimit, LooseReading } from '../../state/draft.js';
import { valueAt } from '../../state/paths.js';
import { LIMIT_FIELDS, VALUE_FIELD } from '../../state/required.js';
import { outletNames } from '../../state/tree.js';
import { uncertaintyFor, type Wanted, wantedAt, wantedName } from '../../state/wanted.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, number, type Part, text } from '../parts.js';
import { instrumentField, instrumentRows, readingDetails } from './instrumentsForm.js';
import { slotOptions } from './mountForm.js';

/** Unit of a quantity as it is read. */
const unitOf = (quantity: string): string =>
  quantity === 'level' || quantity === 'noise-level'
    ? 'dBµV'
    : quantity === 'supply-voltage'
      ? 'V'
      : quantity === 'bit-error-ratio'
        ? ''
        : 'dB';

/** The verdict on a reading, and what was planned there. */
export function noteOn(
  { words, draft, beside }: Desk,
  record: JobRecord | null,
  { testPoint, slot, carrier, quantity, index }: Wanted,
): { readonly note: string; readonly state: string } {
  const same = (each: { readonly slot: string | null; readonly carrier: string | null }) =>
    each.slot === slot && each.carrier === carrier;
  const visit = visitOf({ draft, beside });
  const verdict = record?.verdicts.find(
    (each) =>
      same(each) &&
      each.testPoint === testPoint &&
      each.quantity === quantity &&
      each.visit === visit,
  );
  const place =
    testPoint === 'antenna'
      ? record?.plan.signals.find(same)
      : record?.plan.outlets.find((each) => same(each) && each.outlet === testPoint);
  const planned =
    quantity === 'level'
      ? place?.levelDbuv
      : quantity === 'carrier-to-noise'
        ? place?.carrierToNoiseDb
        : undefined;
  const decision = index >= 0 ? verdict?.decision?.verdict : undefined;
  return {
    note: [
      decision === undefined ? '' : words.verdicts[decision],
      planned === undefined ? '' : words.readings.planned(shown(planned, 1)),
    ]
      .filter(Boolean)
      .join('; '),
    state: decision ?? '',
  };
}

function wantedParts(desk: Desk, wanted: readonly Wanted[]): readonly Part[] {
  const { words, draft, record } = desk;
  const w = words.readings;
  const readings = draft.visits?.[visitOf(desk)]?.readings ?? [];
  return [...new Set(wanted.map(({ testPoint }) => testPoint))].map((point): Part => {
    const here = wanted.filter(({ testPoint }) => testPoint === point);
    const read = here.filter(({ index }) => index >= 0).length;
    const carriers = [...new Set(here.map(({ slot, carrier }) => JSON.stringify([slot, carrier])))];
    return {
      kind: 'fold',
      name: `point-${point}`,
      title: point === 'antenna' ? w.antenna : point,
      says: w.counted(read, here.length),
      open: read < here.length,
      parts: carriers.map((key): Part => {
        const some = here.filter(({ slot, carrier }) => JSON.stringify([slot, carrier]) === key);
        const [first] = some;
        return {
          kind: 'group',
          legend: `${first?.carrier ?? ''}, ${first?.slot ?? ''}`,
          parts: some.map((each): Part => {
            const value =
              each.index < 0
                ? ''
                : String(valueAt(readings[each.index], VALUE_FIELD[each.quantity] ?? '') ?? '');
            return {
              kind: 'own',
              name: wantedName(each),
              label: w.quantities[each.quantity] ?? each.quantity,
              unit: unitOf(each.quantity),
              value,
              ...noteOn(desk, record, each),
            };
          }),
        };
      }),
    };
  });
}

/** Whether a reading says something that the rows above have no field for. */
const saysMore = (reading: LooseReading) =>
  ['bound', 'time', 'person', 'instrument', 'weather', 'noiseBandwidthMHz'].some((field) =>
    Object.hasOwn(reading, field),
  );

/** Readings that are no row above: voltages, bit errors, what is not asked for; and those that say more than a value. */
function otherParts(desk: Desk, visit: number, wanted: readonly Wanted[]): readonly Part[] {
  const { words, draft } = desk;
  const w = words.readings;
  const list = `visits[${visit}].readings`;
  const readings = draft.visits?.[visit]?.readings ?? [];
  const others = readings
    .map((reading, index) => ({ reading, index }))
    .filter(
      ({ reading, index }) => saysMore(reading) || !wanted.some((each) => each.index === index),
    );
  const points = { antenna: w.antenna, ...asOptions(outletNames(draft)) };
  const row = ({ reading, index }: { reading: LooseReading; index: number }): Part => {
    const path = `${list}[${index}]`;
    const quantity = String(reading.quantity);
    const slot = draft.slots?.find((each) => each.name === reading.slot);
    return {
      kind: 'group',
      legend: `${w.reading} ${index + 1}`,
      remove: { list, index, what: `${w.reading} ${index + 1}` },
      parts: [
        choice(`${path}.quantity`, w.quantity, w.quantities),
        choice(`${path}.testPoint`, w.point, points),
        choice(`${path}.slot`, words.plan.slot, slotOptions(desk, '–')),
        choice(`${path}.carrier`, words.plan.carrier, {
          '': '–',
          ...asOptions([
            ...(slot?.carriers ?? []).map((carrier) => carrier.name),
            ...(draft.transmit ?? [])
              .filter((sent) => sent.slot === reading.slot)
              .map((sent) => sent.name),
          ]),
        }),
        number(`${path}.${VALUE_FIELD[quantity] ?? 'levelDbuv'}`, w.value, unitOf(quantity)),
        quantity === 'supply-voltage'
          ? number(`${path}.expandedUncertaintyV`, w.uncertainty(w.value), 'V')
          : number(`${path}.expandedUncertaintyDb`, w.uncertainty(w.value), 'dB'),
        readingDetails(desk, path, quantity),
      ],
    };
  };
  return [
    {
      kind: 'fold',
      name: 'other-readings',
      title: w.other,
      says: String(others.length),
      open: others.length > 0,
      parts: [
        ...others.map(row),
        {
          kind: 'buttons',
          buttons: [{ what: 'add', at: list, label: words.plus(w.newReading) }],
        },
      ],
    },
  ];
}

function limitRow(desk: Desk, limit: LooseLimit, index: number): Part {
  const { words, draft } = desk;
  const w = words.readings;
  const path = `limits[${index}]`;
  const quantity = String(limit.quantity);
  const points = {
    antenna: w.antenna,
    ...(outletNames(draft).length > 0 ? { outlets: w.outlets } : {}),
    ...asOptions(outletNames(draft)),
  };
  return {
    kind: 'group',
    legend: `${w.limit} ${index + 1}`,
    remove: { list: 'limits', index, what: `${w.limit} ${index + 1}` },
    parts: [
      choice(`${path}.testPoint`, w.point, points),
      choice(`${path}.quantity`, w.quantity, w.quantities),
      choice(`${path}.slot`, w.slot, slotOptions(desk, w.allSlots)),
      ...(LIMIT_FIELDS[quantity] ?? []).map((field) =>
        number(`${path}.${field}`, field.startsWith('min') ? w.least : w.most, unitOf(quantity)),
      ),
    ],
  };
}

/** Fields of the visit, its readings and the limits. */
export function readingsForm(desk: Desk): readonly Part[] {
  const { draft, words, record } = desk;
  const w = words.readings;
  const visit = visitOf(desk);
  const visits = draft.visits ?? [];
  const limits = draft.limits ?? [];
  const add: Part = {
    kind: 'buttons',
    buttons: [{ what: 'visit', label: words.plus(w.newVisit) }],
  };
  const limitParts: Part = {
    kind: 'fold',
    name: 'limits',
    title: w.limits,
    says: String(limits.length),
    open: limits.length === 0,
    parts: [
      ...limits.map((limit, index) => limitRow(desk, limit, index)),
      {
        kind: 'buttons',
        buttons: [
          { what: 'add', at: 'limits', label: words.plus(w.newLimit) },
          ...(limits.length > 0 ? [{ what: 'same', at: 'limits', label: words.same }] : []),
        ],
      },
    ],
  };
  if (visit < 0) return [{ kind: 'note', text: words.peak.noVisit }, add, limitParts];
  const path = `visits[${visit}]`;
  const wanted = wantedAt(draft, visit, record);
  const quantities = [...new Set(wanted.map(({ quantity }) => quantity))];
  return [
    ...(visits.length > 1
      ? [
          {
            kind: 'own',
            name: 'visit',
            label: w.visit,
            value: String(visit),
            options: Object.fromEntries(
              visits.map((each, at) => [
                String(at),
                `${w.visits[each.kind ?? ''] ?? ''} ${each.date ?? ''}`,
              ]),
            ),
          } as const,
        ]
      : []),
    {
      kind: 'group',
      parts: [
        choice(`${path}.kind`, w.kind, w.visits),
        { kind: 'field', as: 'day', path: `${path}.date`, label: w.date },
        choice(`${path}.weather`, w.weather, w.weathers),
        text(`${path}.person`, w.person),
        instrumentField(desk, `${path}.instrument`, w.instrument),
        { kind: 'field', as: 'clock', path: `${path}.time`, label: w.time },
      ],
    },
    ...(wanted.length === 0 ? [{ kind: 'note', text: w.noPoints } as const] : []),
    ...wantedParts(desk, wanted),
    {
      kind: 'fold',
      name: 'uncertainty',
      title: w.uncertainties,
      says: quantities
        .slice(0, 2)
        .map((each) => `${shown(Number(uncertaintyFor(draft, each)), 1)} dB`)
        .join(', '),
      parts: quantities.map((each) => ({
        kind: 'own',
        name: `uncertainty:${each}`,
        label: w.uncertainty(w.quantities[each] ?? each),
        unit: 'dB',
        value: String(uncertaintyFor(draft, each)),
      })),
    },
    instrumentRows(desk),
    ...otherParts(desk, visit, wanted),
    limitParts,
    {
      kind: 'fold',
      name: 'visit-notes',
      title: w.notes,
      parts: [
        {
          kind: 'own',
          name: 'visit-notes',
          label: w.notes,
          value: (visits[visit]?.notes ?? []).join('\n'),
          lines: 3,
        },
      ],
    },
    add,
  ];
}
