/** The form of what is known of the instruments, and of what single readings say besides their value. */

import type { Desk } from '../desk.js';
import { asOptions, choice, name, number, type Part, rowsOf, text } from '../parts.js';

/** Instruments as rows. */
export function instrumentRows({ words, draft }: Desk): Part {
  const w = words.readings;
  return rowsOf(words, {
    list: 'instruments',
    count: draft.instruments?.length ?? 0,
    title: w.instruments,
    row: w.newInstrument,
    fields: (path) => [
      name(`${path}.name`, words.plan.name),
      number(`${path}.ceilingDb`, w.ceiling, 'dB'),
      number(`${path}.levelOffsetDb`, w.levelOffset, 'dB', { empty: '0', signed: true }),
      number(`${path}.levelOffsetStandardUncertaintyDb`, w.levelOffsetUncertainty, 'dB', {
        empty: '0',
      }),
      number(`${path}.ratioOffsetDb`, w.ratioOffset, 'dB', { empty: '0', signed: true }),
      number(`${path}.ratioOffsetStandardUncertaintyDb`, w.levelOffsetUncertainty, 'dB', {
        empty: '0',
      }),
    ],
  });
}

/** Names of instruments as a choice; a text where none is described. */
export function instrumentField({ draft }: Desk, path: string, label: string): Part {
  const known = (draft.instruments ?? []).map((each) => each.name);
  return known.length === 0
    ? text(path, label)
    : choice(path, label, { '': '–', ...asOptions(known) });
}

/** What a reading says besides its value. */
export function readingDetails(desk: Desk, path: string, quantity: string): Part {
  const { words } = desk;
  const w = words.readings;
  return {
    kind: 'fold',
    name: `details-${path}`,
    title: w.details,
    parts: [
      choice(`${path}.bound`, w.bound, w.bounds),
      { kind: 'field', as: 'clock', path: `${path}.time`, label: w.time },
      text(`${path}.person`, w.person, { empty: w.byVisit }),
      instrumentField(desk, `${path}.instrument`, w.instrument),
      choice(`${path}.weather`, w.weather, { ...w.weathers, '': w.byVisit }),
      ...(quantity === 'carrier-to-noise'
        ? [
            number(`${path}.noiseBandwidthMHz`, w.noiseBandwidth, 'MHz', {
              empty: w.noiseBandwidthEmpty,
            }),
          ]
        : []),
    ],
  };
}
