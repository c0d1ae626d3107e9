/** The form of rain and promise. */

import type { Desk } from '../desk.js';
import { choice, number, type Part } from '../parts.js';

/** Where the rain comes from, as fields. */
function sourceFields({ draft, words }: Desk): readonly Part[] {
  const w = words.rain;
  switch (draft.rain?.source) {
    case 'measured':
      return [number('rain.rainRate001MmPerH', w.rate, 'mm/h'), number('rain.years', w.years, '')];
    case 'monthly-normals': {
      const month = new Intl.DateTimeFormat(words.code, { month: 'short', timeZone: 'UTC' });
      return [
        {
          kind: 'fold',
          name: 'normals',
          title: w.normals,
          parts: Array.from({ length: 12 }, (_, index) => {
            const called = month.format(new Date(Date.UTC(2001, index, 15)));
            return [
              number(`rain.rainfallMm[${index}]`, `${called}: ${w.rainfall}`, 'mm'),
              number(`rain.temperatureC[${index}]`, `${called}: ${w.temperature}`, '°C', {
                signed: true,
              }),
            ];
          }).flat(),
        },
      ];
    }
    default:
      return [];
  }
}

/** Fields of the promise and its rain. */
export function rainForm(desk: Desk): readonly Part[] {
  const { draft, words } = desk;
  const w = words.rain;
  return [
    {
      kind: 'group',
      parts: [
        number('target.exceededPercent', w.percent, w.ofYear),
        choice('rain.source', w.source, w.sources, { wide: true }),
        ...sourceFields(desk),
      ],
    },
    {
      kind: 'fold',
      name: 'rain-more',
      title: words.more,
      parts: [
        number('target.requiredProbabilityRatio', w.probability, w.probabilityRange, {
          empty: '0.8',
        }),
        ...(draft.rain ? [number('rain.isothermHeightKm', w.isotherm, 'km')] : []),
      ],
    },
  ];
}
