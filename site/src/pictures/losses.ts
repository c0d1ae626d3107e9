/** Levels, gains and losses as steps from one level to the next. */

import { linear } from '../lib/drawing/scale.js';
import { label, picture, tag, through } from '../lib/drawing/svg.js';
import type { Figure } from '../lib/example.js';

export function lossPicture(): Figure {
  const title =
    'A loss is a positive number and is subtracted, a gain is positive and added; a level is where you stand';
  const steps: readonly [string, number, 'level' | 'loss' | 'gain'][] = [
    ['receiving unit', -30, 'level'],
    ['cable', 9.5, 'loss'],
    ['splitter', 4, 'loss'],
    ['amplifier', 12, 'gain'],
    ['outlet', -31.5, 'level'],
  ];
  const y = linear(-48, -26, 220, 24, 5);
  let level = -30;
  const inner: string[] = y.ticks.map(
    (tick) =>
      tag('path', {
        class: 'grid',
        d: through([
          [58, y(tick)],
          [428, y(tick)],
        ]),
      }) + label(52, y(tick) + 4.5, String(tick).replace('-', '−'), 'end'),
  );
  steps.forEach(([name, value, kind], index) => {
    const x = 64 + index * 74;
    const before = level;
    if (kind === 'loss') level -= value;
    if (kind === 'gain') level += value;
    const [top, low] = [Math.min(y(before), y(level)), Math.max(y(before), y(level))];
    inner.push(
      kind === 'level'
        ? tag('path', {
            class: 'hand',
            d: through([
              [x, y(level)],
              [x + 56, y(level)],
            ]),
          })
        : tag('rect', {
            class: kind === 'loss' ? 'ground' : 'band',
            x: x + 6,
            y: top,
            width: 44,
            height: low - top,
          }),
      label(x + 28, 240, name, 'middle', 'name'),
      label(
        x + 28,
        kind === 'level' ? y(level) - 8 : top - 7,
        kind === 'level'
          ? `${String(value).replace('-', '−')} dBm`
          : `${kind === 'loss' ? '−' : '+'}${value} dB`,
        'middle',
        'remark',
      ),
    );
    if (index < steps.length - 1)
      inner.push(
        tag('path', {
          class: 'drop',
          d: through([
            [x + 50, y(level)],
            [x + 80, y(level)],
          ]),
        }),
      );
  });
  return {
    title,
    svg: picture(440, 252, title, inner.join('')),
    table: {
      caption: title,
      columns: ['Step', 'Field', 'Value'],
      rows: [
        ['receiving unit', 'levelDbm', '−30.0'],
        ['cable', 'lossDb', '9.5'],
        ['splitter', 'lossDb', '4.0'],
        ['amplifier', 'gainDb', '12.0'],
        ['outlet', 'levelDbm', '−31.5'],
      ],
    },
  };
}
