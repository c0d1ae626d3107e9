/** The form of the mounts: kind, reflector, feeds, motor. */

import type { LooseMount } from '../../state/draft.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, name, number, type Part } from '../parts.js';
import { mastFields, windFields } from './windForm.js';

/** What only this kind of mount has. */
function ownFields({ words }: Desk, mount: LooseMount, path: string): readonly Part[] {
  const w = words.mount;
  const slots = mount.slots ?? [];
  switch (mount.kind) {
    case 'polar':
      return [
        choice(`${path}.fit`, w.fit, w.fits),
        number(`${path}.motor.eastLimitDeg`, w.east, '°', { empty: '90' }),
        number(`${path}.motor.westLimitDeg`, w.west, '°', { empty: '90' }),
        number(`${path}.motor.stepDeg`, w.step, '°', { empty: '0' }),
      ];
    case 'tracking':
      return [number(`${path}.movesPerDay`, w.moves, '', { empty: '24' })];
    default: {
      if (slots.length < 2) return [];
      const feeds = mount.kind === 'fixed' ? mount.feeds : undefined;
      return [
        choice(`${path}.feeds.kind`, w.feeds, w.feedKinds),
        number(`${path}.feeds.feedDiameterM`, w.feedDiameter, 'm', { empty: '0.06' }),
        ...(feeds?.kind === 'rigid'
          ? slots.map((slot, index) =>
              number(`${path}.feeds.placesM[${index}]`, w.place(slot), 'm', { signed: true }),
            )
          : []),
      ];
    }
  }
}

/** Fields of the mounts. */
export function mountForm(desk: Desk): readonly Part[] {
  const { draft, words } = desk;
  const w = words.mount;
  const mounts = draft.mounts ?? [];
  const several = mounts.length > 1;
  return [
    ...mounts.map((mount, index): Part => {
      const path = `mounts[${index}]`;
      const reflector = `${path}.reflector`;
      return {
        kind: 'group',
        legend: several ? `${w.mount} ${index + 1}` : w.mount,
        ...(several
          ? { remove: { list: 'mounts', index, what: mount.name ?? `${w.mount} ${index + 1}` } }
          : {}),
        parts: [
          name(`${path}.name`, words.plan.name),
          choice(`${path}.kind`, w.kind, w.kinds),
          number(`${reflector}.diameterM`, w.diameter, 'm'),
          number(`${reflector}.offsetAngleDeg`, w.offset, '°', { hint: w.offsetHint }),
          ...ownFields(desk, mount, path),
          {
            kind: 'fold',
            name: `mount-${index}`,
            title: words.more,
            parts: [
              number(`${reflector}.efficiencyRatio`, w.efficiency, w.zeroToOne, { empty: '0.65' }),
              number(`${reflector}.focalLengthM`, w.focal, 'm', { empty: w.focalEmpty }),
              number(`${reflector}.surfaceErrorMm`, w.surface, 'mm', { empty: '0' }),
              number(`${reflector}.edgeTaperDb`, w.taper, 'dB', { empty: '10' }),
            ],
          },
          ...mastFields(desk, path),
        ],
      };
    }),
    ...(several
      ? (draft.slots ?? []).flatMap(({ name: slot }): readonly Part[] =>
          slot === undefined
            ? []
            : [
                {
                  kind: 'own',
                  name: `mount-of:${slot}`,
                  label: w.mountOf(slot),
                  value: String(mounts.findIndex((each) => each.slots?.includes(slot))),
                  options: Object.fromEntries(
                    mounts.map((each, at) => [String(at), each.name ?? `${w.mount} ${at + 1}`]),
                  ),
                },
              ],
        )
      : []),
    windFields(desk),
    { kind: 'buttons', buttons: [{ what: 'add', at: 'mounts', label: words.plus(w.newMount) }] },
  ];
}

/** Slots as options, with a word for all of them. */
export const slotOptions = ({ draft }: Desk, all?: string): Record<string, string> => ({
  ...(all === undefined ? {} : { '': all }),
  ...asOptions((draft.slots ?? []).map((slot) => slot.name)),
});
