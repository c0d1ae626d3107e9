/** A distribution drawn as a tree from the source downwards, with the levels behind every part. */

import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { own } from '../language/language.js';
import { shown } from '../language/text.js';

/** A part in the drawing. */
export interface DrawnPart {
  readonly name: string;
  /** Words under the name. */
  readonly words: string;
  /** Index of the part that feeds it; -1 for the source itself. */
  readonly parent: number;
  readonly kind: string;
  /** Level behind the part at the lowest and the highest frequency in dBuV. */
  readonly levels?: readonly [number, number];
  /** For an outlet: how it stands to its window. */
  readonly state?: 'inside' | 'too-low' | 'too-high' | 'too-wide';
}

const ROW = 44;
const STEP = 20;
const LEFT = 22;
const WIDTH = 440;
/** Room for the two levels, and for a character. */
const [LEVELS, CHARACTER] = [120, 7.8];

/** A symbol of a part at a place: it differs by shape, not colour. */
function symbol(kind: string, x: number, y: number): string {
  const shape = (d: string) => tag('path', { class: 'rim', d });
  switch (kind) {
    case 'source':
      return shape(`M${x - 8} ${y - 8}Q${x + 6} ${y} ${x - 8} ${y + 8}`);
    case 'amplifier':
      return shape(`M${x - 7} ${y - 8}H${x + 7}L${x} ${y + 8}Z`);
    case 'splitter':
    case 'tap':
    case 'switch':
      return tag('circle', { class: 'rim', cx: x, cy: y, r: 7 });
    case 'outlet':
    case 'receiver':
      return tag('rect', { class: 'rim', x: x - 7, y: y - 7, width: 14, height: 14 });
    case 'cable':
      return shape(`M${x - 3} ${y - 8}V${y + 8}M${x + 3} ${y - 8}V${y + 8}`);
    default:
      return tag('rect', { class: 'rim', x: x - 8, y: y - 4, width: 16, height: 8 });
  }
}

/** A text cut to the room before the levels; the table below has it whole. */
function fitted(text: string, from: number): string {
  const most = Math.floor((WIDTH - LEVELS - from) / CHARACTER);
  return text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`;
}

/** A name that a user typed; the source has ours. */
const named = ({ name, parent }: DrawnPart, text = name) => (parent < 0 ? text : own(text));

const STATES = {
  inside: 'inside its window',
  'too-low': 'too low',
  'too-high': 'too high',
  'too-wide': 'too steep for its window',
} as const;

/** Draws the tree; parents come before their children. */
export function treeDrawing(
  title: string,
  parts: readonly DrawnPart[],
  ends: readonly [string, string],
): Figure {
  const depths: number[] = [];
  for (const { parent } of parts) {
    const only = parts.filter((other) => other.parent === parent).length <= 1;
    const above = depths[parent] ?? 0;
    // A single follower stays in its column; only branches step to the right.
    depths.push(parent < 0 ? 0 : only ? above : above + 1);
  }
  const x = (index: number) => LEFT + STEP * (depths[index] ?? 0);
  const y = (index: number) => 40 + ROW * index;
  const lines = parts.map(({ parent }, index) =>
    parent < 0
      ? ''
      : tag('path', {
          class: 'axis',
          d: through(
            x(parent) === x(index)
              ? [
                  [x(index), y(parent) + 9],
                  [x(index), y(index) - 9],
                ]
              : [
                  [x(parent), y(parent) + 9],
                  [x(parent), y(index)],
                  [x(index) - 9, y(index)],
                ],
          ),
        }),
  );
  const texts = parts.map((part, index) => {
    const levels = part.levels
      ? label(
          WIDTH - 8,
          y(index) - 2,
          part.levels.map((v) => shown(v, 1)).join(' … '),
          'end',
          'name',
        )
      : '';
    const state = part.state
      ? label(
          WIDTH - 8,
          y(index) + 14,
          STATES[part.state],
          'end',
          part.state === 'inside' ? 'tick' : 'name',
        )
      : '';
    return (
      symbol(part.kind, x(index), y(index)) +
      label(
        x(index) + 16,
        y(index) - 2,
        named(part, fitted(part.name, x(index) + 16)),
        'start',
        'name',
      ) +
      label(
        x(index) + 16,
        y(index) + 14,
        fitted(part.words, x(index) + (part.state ? 56 : 16)),
        'start',
      ) +
      levels +
      state
    );
  });
  const head = label(WIDTH - 8, 14, `level / dBµV at ${ends[0]} … ${ends[1]} MHz`, 'end');
  const height = 40 + ROW * (parts.length - 1) + 26;
  return {
    title,
    svg: picture(WIDTH, height, title, head + lines.join('') + texts.join('')),
    table: {
      caption: title,
      columns: ['Part', 'What', 'Behind', `dBµV at ${ends[0]} MHz`, `dBµV at ${ends[1]} MHz`],
      rows: parts.map((part) => [
        named(part),
        part.words,
        ...parts.slice(Math.max(0, part.parent), part.parent + 1).map((feeding) => named(feeding)),
        ...(part.parent < 0 ? [''] : []),
        ...(part.levels ?? ['', '']).map((value) =>
          typeof value === 'number' ? shown(value, 1) : value,
        ),
      ]),
    },
  };
}
