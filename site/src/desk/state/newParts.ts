/** What a new part of the distribution begins with. */

import { genericCable } from 'slantpath/distribution';
import type { Draft, LoosePart } from './draft.js';
import { freshName } from './names.js';
import { listAt, withValue } from './paths.js';
import { outletNames, partRows, withPartBehind } from './tree.js';

/** Cables that the library knows. */
const SERIES = ['series-6', 'series-7', 'series-11', 'series-59'] as const;
type Series = (typeof SERIES)[number];

const isSeries = (word: string): word is Series => (SERIES as readonly string[]).includes(word);

/** A cable as the job file has it: with a name. */
const cableOf = (series: Series) => ({ name: series.replace('-', ' '), ...genericCable(series) });

/** The types of cable that a part can have, and the one that it has. */
export function cableTypes(part: LoosePart): {
  readonly known: Readonly<Record<string, string>>;
  readonly chosen: string;
  /** What a cable of another type is called. */
  readonly own: string | undefined;
} {
  const known = Object.fromEntries(SERIES.map((series) => [series, series.replace('-', ' ')]));
  const cable = (part['cable'] ?? {}) as Readonly<Record<string, unknown>>;
  const same = SERIES.find(
    (series) => genericCable(series).skinLossDbPer100m === cable['skinLossDbPer100m'],
  );
  return same
    ? { known, chosen: same, own: undefined }
    : { known, chosen: 'own', own: String(cable['name'] ?? '–') };
}

/** The draft with another type of cable at a path. */
export function withCable(draft: Draft, path: string, type: string): Draft {
  return isSeries(type) ? withValue(draft, `${path}.cable`, cableOf(type)) : draft;
}

/** Words for new parts. */
export interface PartNames {
  readonly outlet: string;
  readonly kinds: Readonly<Record<string, string>>;
}

/** The draft with a new part of a kind behind the part at `path`; what must follow it comes along. */
export function withNewPart(draft: Draft, path: string, kind: string, words: PartNames): Draft {
  const taken = partRows(draft).flatMap(({ part }) => part.name ?? []);
  const called = (base: string) => freshName(base, [...taken, 'antenna', 'outlets']);
  const outlet = (): LoosePart => ({
    kind: 'outlet',
    name: freshName(words.outlet, outletNames(draft)),
    lossDb: 1,
  });
  const to = outlet();
  const word = called(words.kinds[kind] ?? kind);
  // Losses and gains of usual parts (practice of the trade), to be replaced by those of the parts at hand.
  const made: Readonly<Record<string, LoosePart>> = {
    cable: { kind: 'cable', name: word, cable: cableOf('series-6'), lengthM: 10, to },
    connector: { kind: 'connector', name: word, lossDb: 0.2, to },
    amplifier: { kind: 'amplifier', name: word, gainDb: 15, noiseFigureDb: 6, to },
    splitter: { kind: 'splitter', name: word, lossDb: 4, outputs: [to, null] },
    switch: { kind: 'switch', name: word, lossDb: 3, outputs: [to] },
    receiver: { kind: 'receiver', name: word },
  };
  const part = made[kind] ?? to;
  return withPartBehind(draft, path, followed(draft, path, part));
}

/** A splitter that is put between two parts takes what followed on its first output. */
function followed(draft: Draft, path: string, part: LoosePart): LoosePart {
  const home = partRows(draft).find((row) => row.path === path)?.part;
  if (part.kind !== 'splitter' || !home?.to) return part;
  const [first] = part.outputs ?? [];
  return { ...part, outputs: [home.to, first ?? null] };
}

/** The draft with a new part at the end of a line from a unit; usual figures, to be replaced by those at hand. */
export function withLinePart(draft: Draft, list: string, kind: string): Draft {
  const made: Readonly<Record<string, LoosePart>> = {
    cable: { kind: 'cable', cable: cableOf('series-6'), lengthM: 10 },
    connector: { kind: 'connector', lossDb: 0.2 },
    amplifier: { kind: 'amplifier', gainDb: 15, noiseFigureDb: 6 },
  };
  return withValue(draft, `${list}[${listAt(draft, list).length}]`, made[kind]);
}
