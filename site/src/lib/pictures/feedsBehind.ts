/** A reflector and its feeds as seen from behind the antenna, facing the satellites. */

import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** A feed in its place. */
interface FeedDrawn {
  readonly name: string;
  /** Millimetres to the right of the focus, and above it. */
  readonly rightMm: number;
  readonly upMm: number;
}

/** What the drawing needs. */
export interface FeedsBehind {
  readonly title: string;
  readonly feeds: readonly FeedDrawn[];
  readonly feedDiameterMm: number;
  /** Turn of the bar in degrees, clockwise positive. */
  readonly tiltDeg: number;
}

const [WIDTH, HEIGHT] = [440, 270];

/** Draws the feeds true to scale, with the bar that holds them. */
export function feedsBehind(of: FeedsBehind): Figure {
  const reach = Math.max(
    80,
    ...of.feeds.map(
      (feed) => Math.max(Math.abs(feed.rightMm), 1.7 * Math.abs(feed.upMm)) + of.feedDiameterMm,
    ),
  );
  const scale = (WIDTH / 2 - 20) / reach;
  const [cx, cy] = [WIDTH / 2, HEIGHT / 2 - 4];
  const place = (feed: FeedDrawn) => [cx + scale * feed.rightMm, cy - scale * feed.upMm] as const;
  const mean = (value: (feed: FeedDrawn) => number): number =>
    of.feeds.reduce((sum, feed) => sum + value(feed), 0) / of.feeds.length;
  const middle = [mean((feed) => feed.rightMm), mean((feed) => feed.upMm)] as const;
  const along = (of.tiltDeg * Math.PI) / 180;
  const end = (side: number) =>
    [
      cx + scale * (middle[0] + side * reach * Math.cos(along)),
      cy - scale * (middle[1] - side * reach * Math.sin(along)),
    ] as const;
  const grid: string[] = [];
  const step = reach > 160 ? 100 : reach > 70 ? 50 : 20;
  for (let mm = -Math.floor(reach / step) * step; mm <= reach; mm += step) {
    grid.push(
      tag('path', {
        class: 'grid',
        d: through([
          [cx + scale * mm, 8],
          [cx + scale * mm, HEIGHT - 30],
        ]),
      }),
      label(
        cx + scale * mm,
        HEIGHT - 14,
        `${mm === 0 ? '0' : shown(mm, 0)}${mm === 0 ? ' mm' : ''}`,
      ),
    );
  }
  const inner = [
    ...grid,
    tag('path', {
      class: 'grid',
      d: through([
        [8, cy],
        [WIDTH - 8, cy],
      ]),
    }),
    tag('path', { class: 'drop', d: through([end(-1), end(1)]) }),
    tag('path', {
      class: 'axis',
      d: through([
        [cx - 7, cy - 7],
        [cx + 7, cy + 7],
      ]),
    }),
    tag('path', {
      class: 'axis',
      d: through([
        [cx - 7, cy + 7],
        [cx + 7, cy - 7],
      ]),
    }),
    ...of.feeds.map((feed) => {
      const [x, y] = place(feed);
      const radius = (scale * of.feedDiameterMm) / 2;
      return (
        tag('circle', { class: 'ring', cx: x, cy: y, r: radius }) +
        tag('circle', { class: 'object', cx: x, cy: y, r: 3 })
      );
    }),
    ...of.feeds.map((feed, index) => {
      const [x, y] = place(feed);
      const radius = (scale * of.feedDiameterMm) / 2;
      return label(
        x,
        y + (index % 2 === 0 ? -radius - 7 : radius + 17),
        feed.name,
        'middle',
        'remark',
      );
    }),
  ];
  return {
    title: of.title,
    svg: picture(WIDTH, HEIGHT, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Feed for', 'Right of the focus / mm', 'Above the focus / mm'],
      rows: of.feeds.map((feed) => [feed.name, shown(feed.rightMm, 1), shown(feed.upMm, 1)]),
    },
  };
}
