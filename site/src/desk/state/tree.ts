/** The distribution as rows: each part with the part before it. The draft keeps the tree; the rows are a view of it. */

import type { Draft, LoosePart } from './draft.js';
import { keysOf, listAt, pathOf, valueAt, withValue } from './paths.js';

/** A part as a row. */
export interface PartRow {
  /** Where it stands in the draft. */
  readonly path: string;
  /** Where the part before it stands; empty for the first of a tree, which the receiving unit feeds. */
  readonly before: string;
  readonly part: LoosePart;
}

/** Parts that several others can follow. */
const MANY: Readonly<Record<string, 'outputs' | 'taps'>> = {
  splitter: 'outputs',
  switch: 'outputs',
  tap: 'taps',
};

/** Whether several parts can follow a part of this kind. */
export const hasPorts = (kind: string): boolean => Object.hasOwn(MANY, kind);

/** Whether a part of this kind ends a way. */
export const endsWay = (kind: string): boolean => kind === 'outlet' || kind === 'receiver';

/** All parts, those before others first. */
export function partRows(draft: Draft): readonly PartRow[] {
  const rows: PartRow[] = [];
  const visit = (part: unknown, path: string, before: string) => {
    if (typeof part !== 'object' || part === null) return;
    const known = part as LoosePart;
    rows.push({ path, before, part: known });
    for (const list of ['outputs', 'taps'])
      listAt(known, list).forEach((next, index) => {
        visit(next, `${path}.${list}[${index}]`, path);
      });
    visit(known.to, `${path}.to`, path);
  };
  listAt(draft, 'distribution.trees').forEach((tree, index) => {
    visit(tree, `distribution.trees[${index}]`, '');
  });
  return rows;
}

/** Names of outlets and receivers: where readings are taken. */
export const outletNames = (draft: Draft): readonly string[] =>
  partRows(draft).flatMap(({ part }) =>
    endsWay(part.kind) && part.name !== undefined ? [part.name] : [],
  );

/** Names of switches, into which lines lead. */
export const switchNames = (draft: Draft): readonly string[] =>
  partRows(draft).flatMap(({ part }) =>
    part.kind === 'switch' && part.name !== undefined ? [part.name] : [],
  );

const TREES = 'distribution.trees';

/** The draft with `part` behind the part at `path`, or as a tree of its own for an empty path. */
export function withPartBehind(draft: Draft, path: string, part: LoosePart): Draft {
  if (path === '') return withValue(draft, `${TREES}[${listAt(draft, TREES).length}]`, part);
  const home = valueAt(draft, path) as LoosePart;
  const ports = MANY[home.kind];
  if (ports) {
    const list = listAt(home, ports);
    // A closed port is taken first.
    const free = list.indexOf(null);
    return withValue(draft, `${path}.${ports}[${free < 0 ? list.length : free}]`, part);
  }
  // Between this part and what follows it.
  const after = home.to;
  const made = after && !endsWay(part.kind) && !hasPorts(part.kind) ? { ...part, to: after } : part;
  return withValue(draft, `${path}.to`, made);
}

/** The draft without the part at `path`: what followed it takes its place, where that is one part. */
export function withoutPart(draft: Draft, path: string): Draft {
  const part = valueAt(draft, path) as LoosePart;
  const behind = [...(part.outputs ?? []), ...(part.taps ?? []), part.to].filter(
    (next) => next !== null && next !== undefined,
  );
  if (behind.length === 1) return withValue(draft, path, behind[0]);
  const row = partRows(draft).find((each) => each.path === path);
  if (!row) return draft;
  if (row.before === '') {
    const trees = listAt(draft, TREES).filter((_, at) => `${TREES}[${at}]` !== path);
    return withTrees(draft, trees);
  }
  const home = valueAt(draft, row.before) as LoosePart;
  // A way that would end in nothing goes too.
  if (!hasPorts(home.kind)) return withoutBranch(draft, row.before);
  const list = path.startsWith(`${row.before}.to`) ? undefined : MANY[home.kind];
  if (!list) return withValue(draft, path, null);
  const rest = listAt(home, list).filter((_, at) => `${row.before}.${list}[${at}]` !== path);
  return withValue(draft, `${row.before}.${list}`, rest.length > 0 ? rest : [null]);
}

/** A job without any tree has no distribution, unless something else of it is given. */
function withTrees(draft: Draft, trees: readonly unknown[]): Draft {
  if (trees.length > 0) return withValue(draft, TREES, trees);
  return withValue(draft, 'distribution', undefined);
}

/** Where a part can be moved: behind anything with ports that is not behind itself, or to the front. */
export function placesFor(draft: Draft, path: string): readonly PartRow[] {
  return partRows(draft).filter(
    (row) =>
      hasPorts(row.part.kind) &&
      row.path !== path &&
      !row.path.startsWith(`${path}.`) &&
      !row.path.startsWith(`${path}[`),
  );
}

/** The draft with the part at `path`, and all behind it, moved behind the part at `target`; empty for the front. */
export function withPartMoved(draft: Draft, path: string, target: string): Draft {
  const row = partRows(draft).find((each) => each.path === path);
  if (!row || row.before === target) return draft;
  const part = row.part;
  // Put there first, so that the paths of the target still hold; a mark finds what is to go.
  const put = withPartBehind(draft, target, part);
  return withoutBranch(put, path);
}

/** The draft without a branch, whatever follows in it. */
function withoutBranch(draft: Draft, path: string): Draft {
  const keys = keysOf(path);
  const last = keys.at(-1);
  const home = pathOf(keys.slice(0, -1));
  if (typeof last !== 'number') {
    const before = pathOf(keys.slice(0, -1));
    const part = valueAt(draft, before) as LoosePart;
    return hasPorts(part.kind) ? withValue(draft, path, null) : withoutBranch(draft, before);
  }
  const rest = listAt(draft, home).filter((_, at) => at !== last);
  return home === TREES
    ? withTrees(draft, rest)
    : withValue(draft, home, rest.length > 0 ? rest : [null]);
}
