/** The readings that a job asks for: at the antenna and at every outlet, each carrier, what the limits name. */

import type { JobRecord } from 'slantpath/job';
import type { Draft, LooseReading } from './draft.js';
import { VALUE_FIELD } from './required.js';
import { outletNames } from './tree.js';

/** A quantity of a carrier that is read at a test point. */
type WantedQuantity =
  | 'level'
  | 'carrier-to-noise'
  | 'modulation-error-ratio'
  | 'cross-polar-isolation';

/** One reading that is wanted, with what was read. */
export interface Wanted {
  readonly testPoint: string;
  readonly slot: string;
  readonly carrier: string;
  readonly quantity: WantedQuantity;
  /** Place among the readings of the visit; -1 where it was not read. */
  readonly index: number;
}

/** The name of a wanted reading's field. */
export const wantedName = ({ testPoint, slot, carrier, quantity }: Wanted): string =>
  `read:${JSON.stringify([testPoint, slot, carrier, quantity])}`;

/** Asked for where no limit says otherwise. */
const USUAL: readonly WantedQuantity[] = ['level', 'carrier-to-noise'];
const ALSO: readonly WantedQuantity[] = ['modulation-error-ratio', 'cross-polar-isolation'];

/** Quantities of a carrier at a test point: the usual two, and what a limit names or somebody has read. */
function quantitiesAt(draft: Draft, testPoint: string, slot: string, read: ReadonlySet<string>) {
  const limited = (quantity: string) =>
    (draft.limits ?? []).some(
      (limit) =>
        limit.quantity === quantity &&
        (limit.testPoint === testPoint ||
          (limit.testPoint === 'outlets' && testPoint !== 'antenna')) &&
        (limit.slot === undefined || limit.slot === slot),
    );
  return [...USUAL, ...ALSO.filter((quantity) => limited(quantity) || read.has(quantity))];
}

/** Readings wanted at a visit, point by point. A carrier that by the plan does not come to an outlet is not asked for there. */
export function wantedAt(draft: Draft, visit: number, record: JobRecord | null): readonly Wanted[] {
  const readings = draft.visits?.[visit]?.readings ?? [];
  const planned = record?.plan.outlets ?? [];
  return ['antenna', ...outletNames(draft)].flatMap((testPoint) =>
    (draft.slots ?? []).flatMap(({ name: slot, carriers }) =>
      [...(carriers ?? []), ...sentOf(draft, testPoint, slot)].flatMap(({ name: carrier }) => {
        if (slot === undefined || carrier === undefined) return [];
        const here = planned.filter((each) => each.slot === slot && each.carrier === carrier);
        const comes = here.length === 0 || here.some(({ outlet }) => outlet === testPoint);
        const own = (reading: LooseReading) =>
          reading.testPoint === testPoint && reading.slot === slot && reading.carrier === carrier;
        const read = new Set(readings.filter(own).map(({ quantity }) => String(quantity)));
        if (testPoint !== 'antenna' && !comes && read.size === 0) return [];
        const sent = !(carriers ?? []).some(({ name }) => name === carrier);
        const asked = sent
          ? (['cross-polar-isolation'] as const)
          : quantitiesAt(draft, testPoint, slot, read);
        return asked.map((quantity) => ({
          testPoint,
          slot,
          carrier,
          quantity,
          index: readings.findIndex((one) => own(one) && one.quantity === quantity),
        }));
      }),
    ),
  );
}

/** What is transmitted is tested at the antenna. */
const sentOf = (draft: Draft, testPoint: string, slot: string | undefined) =>
  testPoint === 'antenna' ? (draft.transmit ?? []).filter((sent) => sent.slot === slot) : [];

/** Expanded uncertainty that is put in where nobody has said one: a field instrument of common make (practice of the trade). */
const USUAL_UNCERTAINTY_DB: Readonly<Record<string, number>> = { level: 2 };
const OTHER_UNCERTAINTY_DB = 1.5;

/** The uncertainty of the last reading of a quantity, so that it is put in once. */
export function uncertaintyFor(draft: Draft, quantity: string): number | string {
  const all = (draft.visits ?? []).flatMap(({ readings }) => readings ?? []);
  const last = all
    .filter((reading) => reading.quantity === quantity && 'expandedUncertaintyDb' in reading)
    .at(-1) as { readonly expandedUncertaintyDb?: number | string } | undefined;
  return last?.expandedUncertaintyDb ?? USUAL_UNCERTAINTY_DB[quantity] ?? OTHER_UNCERTAINTY_DB;
}

/** The draft with a reading put in, changed or, for an empty text, taken out. */
export function withReading(
  draft: Draft,
  visit: number,
  { testPoint, slot, carrier, quantity, index }: Wanted,
  value: number | string,
): Draft {
  const field = VALUE_FIELD[quantity] ?? 'levelDbuv';
  const visits = draft.visits ?? [];
  const readings = visits[visit]?.readings ?? [];
  const made =
    value === ''
      ? readings.filter((_, at) => at !== index)
      : index >= 0
        ? readings.map((reading, at) => (at === index ? { ...reading, [field]: value } : reading))
        : [
            ...readings,
            {
              quantity,
              testPoint,
              slot,
              carrier,
              [field]: value,
              expandedUncertaintyDb: uncertaintyFor(draft, quantity),
            },
          ];
  return {
    ...draft,
    visits: visits.map((one, at) => (at === visit ? { ...one, readings: made } : one)),
  } as Draft;
}
