/** A distribution typed as an outline of parts, turned into the tree that the library takes. */

import { DomainError } from 'slantpath';
import { type DistributionPart, genericCable } from 'slantpath/distribution';

/** A row of the table. */
export interface PartRow {
  readonly name: string;
  readonly part: string;
  readonly behind: string;
  readonly value: number;
  readonly second: number;
}

/** Kinds of part. */
const PART_KINDS = [
  'series-6',
  'series-7',
  'series-11',
  'series-59',
  'connector',
  'attenuator',
  'equaliser',
  'splitter',
  'tap',
  'amplifier',
  'outlet',
] as const;

/**
 * Reads an outline: one part on each line, `name: part number [second number]`, a part further in than the one that
 * feeds it; an asterisk before the name hangs it on the tap port of a tap.
 */
export function outlineRows(outline: string): readonly PartRow[] {
  const open: { readonly indent: number; readonly name: string }[] = [];
  return outline
    .split('\n')
    .map((line, index) => ({ line, number: index + 1 }))
    .filter(({ line }) => line.trim() !== '')
    .map(({ line, number }) => {
      const bad = (allowed: string): never => {
        throw new DomainError({
          code: 'malformed',
          parameter: `line ${number}`,
          received: line.trim(),
          allowed,
        });
      };
      const match = /^(\s*)(\*?)\s*([^:]+):\s*([\w-]+)\s*(\S+)?\s*(\S+)?\s*$/.exec(line);
      if (!match) return bad('lines like "name: part number"');
      const [, space = '', star = '', name = '', part = '', first = '0', second = ''] = match;
      if (!(PART_KINDS as readonly string[]).includes(part))
        return bad(`lines with one of ${PART_KINDS.join(', ')} after the colon`);
      const value = Number(first.replace(',', '.').replace('−', '-'));
      const other =
        second === ''
          ? (USUAL_SECOND[part] ?? 0)
          : Number(second.replace(',', '.').replace('−', '-'));
      if (!Number.isFinite(value) || !Number.isFinite(other))
        return bad('lines with numbers after the part');
      while ((open[open.length - 1]?.indent ?? -1) >= space.length) open.pop();
      const feeding = open[open.length - 1]?.name ?? 'source';
      open.push({ indent: space.length, name: name.trim() });
      return {
        name: name.trim(),
        part,
        behind: star === '*' ? `${feeding} (tap)` : feeding,
        value,
        second: other,
      };
    });
}

/** Second number where a line leaves it out: noise figure of an amplifier, loss through a tap. */
const USUAL_SECOND: Readonly<Record<string, number>> = { amplifier: 7, tap: 1.5, equaliser: 1 };

/** A row in words: what the two numbers mean for this part. */
export function partWords({ part, value, second }: PartRow): string {
  switch (part) {
    case 'series-6':
    case 'series-7':
    case 'series-11':
    case 'series-59':
      return `${value} m of ${part.replace('-', ' ')}`;
    case 'equaliser':
      return `equaliser, ${value} dB at 950 MHz to ${second} dB at 2150 MHz`;
    case 'tap':
      return `tap, ${value} dB (through ${second} dB)`;
    case 'amplifier':
      return `amplifier, ${value} dB (noise figure ${second} dB)`;
    default:
      return `${part}, ${value} dB`;
  }
}

/** The part that a row hangs on, and whether on its tap port. */
function hook(behind: string): { readonly name: string; readonly atTap: boolean } {
  const match = /^(.*?)\s*\(tap\)$/.exec(behind.trim());
  return match ? { name: match[1] ?? '', atTap: true } : { name: behind.trim(), atTap: false };
}

function refuse(index: number, field: keyof PartRow, received: unknown, allowed: string): never {
  throw new DomainError({
    code: 'inconsistent',
    parameter: `parts[${index}].${field}`,
    received,
    allowed,
  });
}

/** The tree, and which row each part comes from, in the order of the drawing. */
export function treeOf(rows: readonly PartRow[]): DistributionPart {
  const names = rows.map(({ name }) => name.trim());
  rows.forEach((row, index) => {
    const name = names[index] ?? '';
    if (name === '' || names.indexOf(name) !== index || name === 'source')
      refuse(index, 'name', name, 'a name of its own, other than source');
    const { name: before } = hook(row.behind);
    if (before !== 'source' && !names.includes(before))
      refuse(index, 'behind', row.behind, 'source or the name of another part');
  });
  const children = (name: string) =>
    rows.map((row, index) => ({ row, index })).filter(({ row }) => hook(row.behind).name === name);
  const build = (index: number, above: readonly number[]): DistributionPart => {
    if (above.includes(index)) refuse(index, 'behind', rows[index]?.behind, 'not behind itself');
    const row = rows[index] as PartRow;
    const name = names[index] ?? '';
    const here = children(name);
    const way = [...above, index];
    const all = here.map((child) => build(child.index, way));
    const one = (): DistributionPart => {
      const [only, more] = all;
      if (more) refuse(here[1]?.index ?? index, 'behind', name, 'behind a splitter or tap');
      return only ?? refuse(index, 'name', name, 'followed by another part');
    };
    const { value, second } = row;
    switch (row.part) {
      case 'outlet':
        return { kind: 'outlet', name, lossDb: value, ...(all.length > 0 ? { to: one() } : {}) };
      case 'splitter':
        return { kind: 'splitter', name, lossDb: value, outputs: all.length > 0 ? all : [null] };
      case 'tap': {
        const at = (tap: boolean) =>
          all.filter((_, i) => hook(here[i]?.row.behind ?? '').atTap === tap);
        const taps = at(true);
        const through = at(false);
        if (through.length > 1)
          refuse(here[1]?.index ?? index, 'behind', name, `one through part; others ${name} (tap)`);
        return {
          kind: 'tap',
          name,
          tapLossDb: value,
          throughLossDb: second,
          taps: taps.length > 0 ? taps : [null],
          to: through[0] ?? null,
        };
      }
      case 'amplifier':
        return { kind: 'amplifier', name, gainDb: value, noiseFigureDb: second, to: one() };
      case 'equaliser':
        return {
          kind: 'equaliser',
          name,
          lossDb: [
            { frequencyMHz: 950, valueDb: value },
            { frequencyMHz: 2150, valueDb: second },
          ],
          to: one(),
        };
      case 'connector':
      case 'attenuator':
        return { kind: row.part, name, lossDb: value, to: one() };
      default:
        return {
          kind: 'cable',
          name,
          cable: genericCable(row.part as 'series-6'),
          lengthM: value,
          to: one(),
        };
    }
  };
  const first = children('source');
  if (first.length !== 1)
    refuse(first[1]?.index ?? 0, 'behind', first.length, 'source for exactly one part');
  return build(first[0]?.index ?? 0, []);
}
