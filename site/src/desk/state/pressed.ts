/** Buttons of the forms: each gives the draft after it was pressed. */

import type { DeskWords } from '../words/words.js';
import { benchOf, nextPositionDeg, withSample } from './bench.js';
import type { Draft, LoosePeaking } from './draft.js';
import { withoutReferences, withoutRow, withRow, withSameRow } from './lists.js';
import { withLinePart, withNewPart } from './newParts.js';
import type { Held } from './ownFields.js';
import { levelDbm, withSamples, withSkyline } from './ownFields.js';
import { valueAt, withValue } from './paths.js';
import { outletNames, withoutPart } from './tree.js';

/** A button that was pressed. */
export interface Pressed {
  readonly what: string;
  readonly at: string;
  /** What stands in the field of this name. */
  readonly field: (name: string) => string;
  readonly today: string;
  readonly words: DeskWords;
}

/** Bands of a common Ku unit (practice of the trade). */
const KU_BANDS = [
  { name: 'low', fromGHz: 10.7, toGHz: 11.7, localOscillatorGHz: 9.75, tone: false },
  { name: 'high', fromGHz: 11.7, toGHz: 12.75, localOscillatorGHz: 10.6, tone: true },
];

/** The draft after a button; `undefined` where it changes nothing. */
export function pressedIn(
  held: Held,
  { what, at, field, today, words }: Pressed,
): Draft | undefined {
  const { draft } = held;
  const [kind = '', detail = ''] = what.split(':');
  switch (kind) {
    case 'add':
      return withRow(draft, at, {
        slot: words.place.newSlot,
        carrier: words.plan.newCarrier,
        mount: words.mount.newMount,
        unit: words.plan.newUnit,
        band: words.plan.newBand,
        sent: words.plan.newSent,
        instrument: words.readings.newInstrument,
      });
    case 'same':
      return withSameRow(draft, at);
    case 'remove':
      return removed(draft, at);
    case 'part':
      return withNewPart(draft, at, detail, {
        outlet: words.outlets.newOutlet,
        kinds: words.outlets.kinds,
      });
    case 'line-part':
      return withLinePart(draft, at, detail);
    case 'by-frequency': {
      // The L band from end to end; in between the library reads along the line.
      const valueDb = valueAt(draft, at);
      return withValue(draft, at, [
        { frequencyMHz: 950, valueDb },
        { frequencyMHz: 2150, valueDb },
      ]);
    }
    case 'one-number':
      return withValue(draft, at, valueAt(draft, `${at}[0].valueDb`) ?? 0);
    case 'ku-bands':
      return withValue(
        withValue(draft, `units[${at}].bands`, KU_BANDS),
        `units[${at}].switchedByVoltage`,
        true,
      );
    case 'visit': {
      const visits = draft.visits ?? [];
      const before = visits.at(-1)?.date ?? '';
      return withValue(draft, `visits[${visits.length}]`, {
        kind: visits.length === 0 ? 'installation' : 'service',
        date: before > today ? before : today,
        peaking: [],
        readings: [],
      });
    }
    case 'axis':
      return withAxis(draft, at);
    case 'note-level':
      return withNoted(held, at, field(`level:${at}`));
    case 'at-peak': {
      const bench = benchOf(valueAt(draft, at) as LoosePeaking, held.record, held.beside.display);
      return bench && withValue(draft, `${at}.restDeg`, nextPositionDeg(bench));
    }
    case 'anew':
      return withValue(withValue(draft, `${at}.samples`, undefined), `${at}.restDeg`, 0);
    case 'paste-samples':
      return withSamples(draft, at, field(`samples:${at}`), held.beside.display.unit);
    case 'paste-skyline':
      return withSkyline(draft, field('skyline-pasted'));
    default:
      return undefined;
  }
}

/** A part of the distribution, or a row of a list. */
function removed(draft: Draft, at: string): Draft {
  if (at.startsWith('distribution.trees')) {
    const before = new Set(outletNames(draft));
    const made = withoutPart(draft, at);
    for (const name of outletNames(made)) before.delete(name);
    return [...before].reduce((left, testPoint) => withoutReferences(left, { testPoint }), made);
  }
  const [, list = '', index = '0'] = /^(.*)\[(\d+)\]$/.exec(at) ?? [];
  return withoutRow(draft, list, Number(index));
}

/** The next axis of the first mount that has none yet; what is known of the one before is taken along. */
function withAxis(draft: Draft, list: string): Draft {
  const entries = (valueAt(draft, list) ?? []) as readonly LoosePeaking[];
  const made = withRow(draft, list, {
    slot: '',
    carrier: '',
    mount: '',
    unit: '',
    band: '',
    sent: '',
    instrument: '',
  });
  const last = entries.at(-1);
  const axis = last?.axis === 'azimuth' ? 'elevation' : 'azimuth';
  const path = `${list}[${entries.length}]`;
  const same = last ? { slot: last.slot, carrier: last.carrier } : {};
  return withValue(made, path, { ...(valueAt(made, path) as LoosePeaking), ...same, axis });
}

/** The level that was typed, noted where the bench asks for it. */
function withNoted(held: Held, path: string, text: string): Draft | undefined {
  const { draft, record, beside } = held;
  const level = Number(text.trim().replace(/^[−–]/, '-').replace(',', '.'));
  const entry = valueAt(draft, path) as LoosePeaking;
  const bench = benchOf(entry, record, beside.display);
  if (!bench || text.trim() === '' || !Number.isFinite(level)) return undefined;
  return withValue(
    draft,
    path,
    withSample(entry, nextPositionDeg(bench), levelDbm(level, beside.display.unit)),
  );
}
