import { expect, test } from 'vitest';
import { alongRule, aroundMark, labelPlaces } from '../../site/src/lib/drawing/labels.js';

const room = { left: 0, right: 400, top: 0, bottom: 300 };
const anchorOf = (svg: string) => /text-anchor="(\w+)"/.exec(svg)?.[1];

test('the first place is taken where nothing stands', () => {
  expect(anchorOf(labelPlaces(room).put('mean', aroundMark(200, 150)))).toBe('start');
});

test('a label leaves a curve, the edge and other labels alone', () => {
  const places = labelPlaces(room);
  places.keepClear(
    [
      [205, 140],
      [300, 140],
    ],
    true,
  );
  expect(anchorOf(places.put('mean', aroundMark(200, 150)))).toBe('end');
  expect(anchorOf(labelPlaces(room).put('a long name', aroundMark(390, 150)))).toBe('end');
  const twice = labelPlaces(room);
  const [first, second] = [1, 2].map(() => twice.put('limit', alongRule(150, 0, 400)));
  expect(second).not.toBe(first);
});

test('places that are not finite do not count', () => {
  const places = labelPlaces(room);
  places.keepClear([[Number.NaN, 140]], true);
  expect(anchorOf(places.put('mean', aroundMark(200, 150)))).toBe('start');
});
