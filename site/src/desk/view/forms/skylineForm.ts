/** The form of the view: the skyline as sighted. */

import type { Desk } from '../desk.js';
import { choice, number, type Part } from '../parts.js';

/** Sightings as rows, and how sure they are. */
export function skylineForm({ draft, words }: Desk): readonly Part[] {
  const w = words.skyline;
  const samples = draft.horizon?.samples ?? [];
  return [
    ...(draft.horizon ? [choice('horizon.north', w.north, w.norths)] : []),
    ...(samples.length === 0 ? [{ kind: 'note', text: w.begin } as const] : []),
    ...samples.map(
      (_, index): Part => ({
        kind: 'group',
        legend: `${w.sighting} ${index + 1}`,
        remove: { list: 'horizon.samples', index, what: `${w.sighting} ${index + 1}` },
        parts: [
          number(`horizon.samples[${index}].azimuthDeg`, w.bearing, '°'),
          number(`horizon.samples[${index}].elevationDeg`, w.up, w.degreesUp, { signed: true }),
          number(`horizon.samples[${index}].distanceM`, w.distance, 'm', { empty: '–' }),
        ],
      }),
    ),
    {
      kind: 'buttons',
      buttons: [{ what: 'add', at: 'horizon.samples', label: words.plus(w.sighting) }],
    },
    {
      kind: 'fold',
      name: 'skyline-paste',
      title: w.paste,
      parts: [
        { kind: 'own', name: 'skyline-pasted', label: w.pasteHint, value: '', lines: 4 },
        { kind: 'buttons', buttons: [{ what: 'paste-skyline', label: w.pasteGo }] },
      ],
    },
    ...(samples.length === 0
      ? []
      : [
          {
            kind: 'fold',
            name: 'skyline-more',
            title: words.more,
            parts: [
              number('horizon.bearingUncertaintyDeg', w.bearingUncertainty, '°', { empty: '1' }),
              number('horizon.elevationUncertaintyDeg', w.elevationUncertainty, '°', {
                empty: '0.5',
              }),
              number('horizon.nearestDistanceM', w.nearest, 'm', { empty: '5' }),
            ],
          } as const,
        ]),
  ];
}
