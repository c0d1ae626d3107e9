/** Shares as bars, one below the other, each with its number. */

import { label, picture, tag } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** One bar. */
export interface Bar {
  readonly label: string;
  /** 0 to 1. */
  readonly share: number;
  readonly words: string;
}

const WIDTH = 440;
const ROW = 40;
const LEFT = 8;
const FULL = 330;

/** Draws the bars; the longest possible is the whole. */
export function bars(title: string, list: readonly Bar[]): Figure {
  const inner = list.map(({ label: name, share, words }, index) => {
    const top = 8 + ROW * index;
    const width = Math.max(1, share * FULL);
    return (
      label(LEFT, top + 11, words === '' ? name : `${name}: ${words}`, 'start', 'name') +
      tag('rect', { class: 'band', x: LEFT, y: top + 17, width: FULL, height: 12 }) +
      tag('rect', { class: 'object', x: LEFT, y: top + 17, width, height: 12 }) +
      label(LEFT + FULL + 10, top + 28, `${shown(100 * share, 0)} %`, 'start', 'name')
    );
  });
  return {
    title,
    svg: picture(WIDTH, 12 + ROW * list.length, title, inner.join('')),
    table: {
      caption: title,
      columns: ['Cause', 'Where', 'Probability / %'],
      rows: list.map(({ label: name, share, words }) => [name, words, shown(100 * share, 1)]),
    },
  };
}
