/** The form of what shares a cable: stacked receivers, and the terrestrial aerial. */

import { listAt } from '../../state/paths.js';
import { outletNames, switchNames } from '../../state/tree.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, number, type Part, rowsOf, text } from '../parts.js';

const STACKING = 'distribution.stacking';
const AERIAL = 'distribution.terrestrial';

/** Several receivers on one cable. */
function stackingFields({ words, draft }: Desk): readonly Part[] {
  const w = words.outlets;
  const { stacking } = draft.distribution ?? {};
  const kind = choice(`${STACKING}.kind`, w.stackingKind, w.stackingKinds);
  if (stacking === undefined) return [kind];
  const bands = `${STACKING}.userBands`;
  const centres = listAt(stacking, 'userBandsMHz');
  return [
    kind,
    choice(`${STACKING}.generation`, w.generation, w.generations),
    number(`${STACKING}.outputLevelDbuv`, w.stackedLevel, 'dBµV', { empty: w.stackedLevelEmpty }),
    ...centres.map((_, index) =>
      number(`${STACKING}.userBandsMHz[${index}]`, `${w.userBand} ${index + 1}`, 'MHz'),
    ),
    ...(centres.length > 0
      ? []
      : [
          rowsOf(words, {
            list: bands,
            count: listAt(draft, bands).length,
            title: w.userBand,
            row: w.userBand,
            fields: (band) => [
              number(`${band}.centreMHz`, w.centre, 'MHz'),
              number(`${band}.bandwidthMHz`, w.width, 'MHz', { empty: w.widthEmpty }),
              number(`${band}.userBand`, w.label, '', { empty: w.labelEmpty }),
              choice(`${band}.receiver`, w.receiver, {
                '': w.noReceiver,
                ...asOptions(outletNames(draft)),
              }),
            ],
          }),
        ]),
  ];
}

/** What shares the cables behind the units. */
export function sharedCableParts(desk: Desk): readonly Part[] {
  const { words, draft } = desk;
  const w = words.outlets;
  const switches = switchNames(draft);
  const aerial = draft.distribution?.['terrestrial'];
  return [
    { kind: 'fold', name: 'stacking', title: w.stacking, parts: stackingFields(desk) },
    ...(switches.length === 0 && aerial === undefined
      ? []
      : [
          {
            kind: 'fold',
            name: 'aerial',
            title: w.aerial,
            parts: [
              choice(`${AERIAL}.into`, w.into, { '': '–', ...asOptions(switches) }),
              text(`${AERIAL}.input`, w.input),
              number(`${AERIAL}.levelDbuv`, w.aerialLevel, 'dBµV'),
              number(`${AERIAL}.lowestMHz`, w.aerialLowest, 'MHz', { empty: '470' }),
              number(`${AERIAL}.highestMHz`, w.aerialHighest, 'MHz', { empty: '694' }),
              number(`${AERIAL}.minimumDbuv`, w.outletLeast, 'dBµV', { empty: '–' }),
              number(`${AERIAL}.maximumDbuv`, w.outletMost, 'dBµV', { empty: '–' }),
            ],
          } as const,
        ]),
  ];
}
