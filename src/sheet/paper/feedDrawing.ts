/** A small drawing of the feeds from behind the antenna: their row, and how each is turned. */

import { cosDeg, sinDeg } from '../../numeric/angle.js';
import { escaped } from './escaped.js';

/** What the drawing shows. */
export interface FeedDrawing {
  readonly feeds: readonly {
    readonly name: string;
    /** Turn from upright in degrees, clockwise positive. */
    readonly turnDeg: number;
    /** The same in words. */
    readonly turn: string;
    readonly acrossMm: number;
    readonly upMm: number;
  }[];
  /** Turn of the row in degrees, clockwise positive. */
  readonly tiltDeg: number;
  readonly title: string;
  /** Word for the dashed line. */
  readonly upright: string;
}

/** Room for one feed with its words, and the radius of a feed. */
const STEP = 150;
const RADIUS = 22;
const at = (value: number) => value.toFixed(1);

/** The drawing as SVG; every text is escaped. Turns are drawn as they are, places are spread so that no two overlap. */
export function feedDrawing({ feeds, tiltDeg, title, upright }: FeedDrawing): string {
  const ordered = [...feeds].sort((a, b) => a.acrossMm - b.acrossMm).slice(0, 6);
  const width = STEP * Math.max(3, ordered.length);
  const first = width / 2 - (STEP * (ordered.length - 1)) / 2;
  const rise = (x: number) => ((x - width / 2) * sinDeg(tiltDeg)) / Math.max(0.2, cosDeg(tiltDeg));
  const places = ordered.map((feed, index) => {
    const x = first + STEP * index;
    return { feed, x, y: rise(x) };
  });
  const lowest = Math.min(0, ...places.map(({ y }) => y));
  const highest = Math.max(0, ...places.map(({ y }) => y));
  const top = RADIUS + 24 - lowest;
  const height = top + highest + RADIUS + 34;
  const row =
    places.length > 1
      ? `<line class="row" x1="${at(first - 40)}" y1="${at(top + rise(first - 40))}" x2="${at(width - first + 40)}" y2="${at(top + rise(width - first + 40))}"/>`
      : '';
  const drawn = places.map(({ feed, x, y }) => {
    const [dx, dy] = [RADIUS * sinDeg(feed.turnDeg), RADIUS * cosDeg(feed.turnDeg)];
    const cy = top + y;
    return [
      `<circle cx="${at(x)}" cy="${at(cy)}" r="${RADIUS}"/>`,
      `<line class="upright" x1="${at(x)}" y1="${at(cy - RADIUS - 8)}" x2="${at(x)}" y2="${at(cy + RADIUS + 8)}"/>`,
      `<line class="turned" x1="${at(x - dx)}" y1="${at(cy + dy)}" x2="${at(x + dx)}" y2="${at(cy - dy)}"/>`,
      `<text x="${at(x)}" y="${at(height - 17)}">${escaped(short(feed.name))}</text>`,
      `<text x="${at(x)}" y="${at(height - 4)}">${escaped(short(feed.turn))}</text>`,
    ].join('');
  });
  return `<svg viewBox="0 0 ${width} ${at(height)}" width="${at(width * 0.9)}" role="img"><title>${escaped(title)}</title>${row}${drawn.join('')}<text class="key" x="4" y="11">${escaped(`${title} ${upright}`)}</text></svg>`;
}

/** A name that fits under its feed. */
function short(name: string): string {
  const letters = [...name];
  return letters.length > 30 ? `${letters.slice(0, 29).join('')}…` : name;
}
