/** The form of the first stage: the place, the day, the slots. */

import type { Desk } from '../desk.js';
import { name, number, type Part, text } from '../parts.js';

/** The search for a town, brought to life by the page. */
const townSearch = (label: string, hint: string) =>
  `<div class="ex-towns" data-towns><div class="ex-field"><label for="desk-town">${label}</label><input id="desk-town" type="text" role="combobox" autocomplete="off" spellcheck="false" aria-expanded="false" aria-controls="desk-town-list" aria-autocomplete="list"><ul id="desk-town-list" role="listbox" aria-label="${label}" hidden></ul><p class="ex-hint" data-town-note>${hint}</p></div></div>`;

/** Fields of the place and its slots. */
export function placeForm({ draft, words }: Desk): readonly Part[] {
  const w = words.place;
  return [
    text('title', w.title, { wide: true }),
    { kind: 'made', html: townSearch(w.town, w.townHint) },
    {
      kind: 'group',
      parts: [
        number('station.latitudeDeg', w.latitude, '°', { as: 'angle', signed: true }),
        number('station.longitudeDeg', w.longitude, '°', { as: 'angle', signed: true }),
        number('station.heightM', w.height, 'm', { empty: '0', signed: true }),
      ],
    },
    { kind: 'note', text: w.pairHint },
    { kind: 'buttons', buttons: [{ what: 'here', label: w.here }] },
    {
      kind: 'group',
      parts: [
        text('station.name', w.name),
        { kind: 'field', as: 'day', path: 'date', label: w.day },
        text('timeZone', w.zone, { empty: w.zoneEmpty }),
      ],
    },
    ...(draft.slots ?? []).map(
      (slot, index): Part => ({
        kind: 'group',
        legend: `${w.slot} ${index + 1}`,
        remove: { list: 'slots', index, what: slot.name ?? `${w.slot} ${index + 1}` },
        parts: [
          name(`slots[${index}].name`, w.slotName),
          number(`slots[${index}].orbitalLongitudeDeg`, w.slotLongitude, w.east, {
            as: 'angle',
            signed: true,
          }),
          {
            kind: 'fold',
            name: `slot-${index}`,
            title: words.more,
            parts: [
              number(`slots[${index}].polarizationTiltDeg`, w.tilt, '°', {
                empty: '0',
                signed: true,
              }),
              number(`slots[${index}].inclinationDeg`, w.inclination, '°', { empty: '0' }),
            ],
          },
        ],
      }),
    ),
    {
      kind: 'buttons',
      buttons: [{ what: 'add', at: 'slots', label: words.plus(w.newSlot) }],
    },
    {
      kind: 'fold',
      name: 'place-more',
      title: words.more,
      parts: [
        { kind: 'field', as: 'yes', path: 'station.sharedBuilding', label: w.shared },
        {
          kind: 'own',
          name: 'notes',
          label: w.notes,
          value: (draft.notes ?? []).join('\n'),
          lines: 3,
        },
      ],
    },
  ];
}
