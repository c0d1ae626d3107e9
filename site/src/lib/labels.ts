/** Places for the labels of a drawing: of some candidates, the one that covers least. */

import { label } from './svg.js';

type Anchor = 'start' | 'middle' | 'end';

/** A place for a label. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Width of a character and height of a line, for the larger words of narrow screens. */
const [CHARACTER, LINE] = [7.6, 15];

/** Room that a text takes at a place. */
function boxOf(text: string, { x, y, anchor }: Spot): Box {
  const width = CHARACTER * text.length;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - LINE + 3, bottom: y + 3 };
}

const overlap = (a: Box, b: Box) =>
  a.left < b.right && a.right > b.left && a.top < b.bottom && a.bottom > b.top;

/** Points along a line, close enough that no word slips between two of them. */
function along(line: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  return line.flatMap(([x, y], index) => {
    const [fromX, fromY] = line[index - 1] ?? [x, y];
    const count = Math.min(200, Math.max(1, Math.ceil(Math.hypot(x - fromX, y - fromY) / 5)));
    return Array.from(
      { length: count },
      (_, i) =>
        [x - ((x - fromX) * i) / count, y - ((y - fromY) * i) / count] as readonly [number, number],
    );
  });
}

/** Puts labels one after the other; each knows what stands already. */
export function labelPlaces(room: Box) {
  const points: (readonly [number, number])[] = [];
  const boxes: Box[] = [];
  const cost = (box: Box) => {
    const outside =
      Math.max(0, room.left - box.left) +
      Math.max(0, box.right - room.right) +
      Math.max(0, room.top - box.top) +
      Math.max(0, box.bottom - room.bottom);
    const covered = points.filter(
      ([x, y]) => x > box.left - 2 && x < box.right + 2 && y > box.top && y < box.bottom,
    ).length;
    return 100 * outside + covered + 40 * boxes.filter((other) => overlap(box, other)).length;
  };
  return {
    /** A line, or single points, that labels keep clear of. */
    keepClear(line: readonly (readonly [number, number])[], joined: boolean): void {
      const finite = line.filter(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
      points.push(...(joined ? along(finite) : finite));
    },
    /** The label at the best of some places; the first wins where they are equal. */
    put(text: string, spots: readonly Spot[], kind = 'remark'): string {
      const rated = spots.map((spot) => {
        const box = boxOf(text, spot);
        return { spot, box, cost: cost(box) };
      });
      const best = rated.reduce((a, b) => (b.cost < a.cost ? b : a));
      boxes.push(best.box);
      return label(best.spot.x, best.spot.y, text, best.spot.anchor, kind);
    },
  };
}
