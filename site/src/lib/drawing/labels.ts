/** Places for the labels of a drawing: of some candidates, the one that covers least. */

import { said } from '../language/language.js';
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
        const box = boxOf(said(text), spot);
        return { spot, box, cost: cost(box) };
      });
      const best = rated.reduce((a, b) => (b.cost < a.cost ? b : a));
      boxes.push(best.box);
      return label(best.spot.x, best.spot.y, text, best.spot.anchor, kind);
    },
  };
}

/** Where the label of a named point may stand. */
export const aroundMark = (x: number, y: number): Spot[] => [
  { x: x + 9, y: y - 7, anchor: 'start' },
  { x: x - 9, y: y - 7, anchor: 'end' },
  { x: x + 9, y: y + 17, anchor: 'start' },
  { x: x - 9, y: y + 17, anchor: 'end' },
  // On the top of a narrow peak only the room above it is free.
  { x, y: y - 12, anchor: 'middle' },
  { x: x + 40, y: y - 12, anchor: 'middle' },
  { x: x - 40, y: y - 12, anchor: 'middle' },
];

/** Where the label of an upright rule may stand. */
export const besideRule = (x: number, top: number, low: number): Spot[] =>
  [top + 12, low - 7, top + 29, (top + low) / 2].flatMap((y): Spot[] => [
    { x: x + 5, y, anchor: 'start' },
    { x: x - 5, y, anchor: 'end' },
  ]);

/** Where the label of a level rule may stand. */
export const alongRule = (y: number, left: number, right: number): Spot[] => [
  { x: right - 4, y: y - 5, anchor: 'end' },
  { x: right - 4, y: y + 15, anchor: 'end' },
  { x: left + 5, y: y - 5, anchor: 'start' },
  { x: left + 5, y: y + 15, anchor: 'start' },
  { x: (left + right) / 2, y: y - 5, anchor: 'middle' },
  { x: (left + right) / 2, y: y + 15, anchor: 'middle' },
];

/** Where the label of an upright band may stand: in its middle, or towards a side of it. */
export const insideBand = (a: number, b: number, top: number, low: number): Spot[] =>
  [0.5, 0.2, 0.8].flatMap((share) =>
    [low - 7, top + 12, top + 29, low - 24].map(
      (y): Spot => ({ x: a + share * (b - a), y, anchor: 'middle' }),
    ),
  );

/** Where the label of a bearing on a rose may stand: outside the rim, straight on or a little aside. */
export const aroundRim = (
  polar: (azimuthDeg: number, radius: number) => readonly [number, number],
  azimuthDeg: number,
  radius: number,
): Spot[] =>
  [0, 12, -12, 22, -22].map((aside) => {
    const [x, y] = polar(azimuthDeg + aside, radius + 14);
    const side = Math.sin(((azimuthDeg + aside) * Math.PI) / 180);
    return { x, y: y + 5, anchor: side > 0.3 ? 'start' : side < -0.3 ? 'end' : 'middle' };
  });
