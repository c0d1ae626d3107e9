/** Labels over points that may stand close together: each in the lowest row that is free, with a line down to its point. */

import { said } from '../language/language.js';
import { label, tag, through } from './svg.js';

/** A point with its label. */
export interface Labelled {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** The picture's part that labels keep within. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** Width of a character and height of a row, for the larger words of narrow screens; radius of a point. */
const [CHARACTER, ROW, POINT] = [8, 17, 6];

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const overlap = (a: Box, b: Box) =>
  a.left < b.right && a.right > b.left && a.top < b.bottom && a.bottom > b.top;

/** Draws the labels of all points. */
export function stackedLabels(points: readonly Labelled[], room: Room): string {
  const taken: Box[] = points.map(({ x, y }) => ({
    left: x - POINT,
    right: x + POINT,
    top: y - POINT,
    bottom: y + POINT,
  }));
  return points
    .map(({ x, y, text }) => {
      const width = CHARACTER * said(text).length + 2;
      const box = (row: number, share: number): Box => {
        const left = Math.min(
          Math.max(x - share * width + 4 * (1 - 2 * share), room.left),
          room.right - width,
        );
        // Rows above the point come first, then those below it.
        const bottom = y - 9 - ROW * row;
        return { left, right: left + width, top: bottom - ROW + 3, bottom };
      };
      const rows = [0, 1, 2, 3, 4, 5, 6, -2, -3, -4];
      const tried = rows.flatMap((row) => [0.5, 0, 1].map((share) => box(row, share)));
      const within = tried.filter((one) => one.top >= room.top);
      const free = within.find((one) => !taken.some((other) => overlap(one, other)));
      const best = free ?? within[0] ?? box(-2, 0.5);
      taken.push(best);
      const far = best.bottom < y - 9 - ROW / 2;
      const near = Math.min(Math.max(x, best.left + 2), best.right - 2);
      const leader = far
        ? tag('path', {
            class: 'drop',
            d: through([
              [near, best.bottom + 3],
              [x, y],
            ]),
          })
        : '';
      return leader + label((best.left + best.right) / 2, best.bottom, text, 'middle', 'remark');
    })
    .join('');
}
