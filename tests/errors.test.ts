import { DomainError } from 'slantpath';
import { describe, expect, test } from 'vitest';
import { finite, inRange, object, oneOf, positive } from '../src/errors.js';

const thrown = (call: () => unknown): DomainError => {
  try {
    call();
  } catch (error) {
    if (error instanceof DomainError) return error;
  }
  throw new Error('nothing was thrown');
};

describe('guards', () => {
  test('say the value, the interval with its ends, and the likely slip', () => {
    const error = thrown(() =>
      inRange('latitudeDeg', 116.2, -90, 90, 'were latitude and longitude swapped?'),
    );
    expect(error.message).toBe(
      'latitudeDeg must be from -90 to 90, got 116.2; were latitude and longitude swapped?',
    );
    expect(error).toMatchObject({
      code: 'out-of-range',
      parameter: 'latitudeDeg',
      received: 116.2,
    });
    expect(error).toBeInstanceOf(RangeError);
  });

  test.each([
    [undefined, 'missing'],
    [null, 'missing'],
    ['12', 'not-a-number'],
    [[1, 2, 3], 'not-a-number'],
    [Number.NaN, 'not-finite'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
    [-1, 'out-of-range'],
  ])('%j is refused as %s', (value, code) => {
    expect(thrown(() => positive('diameterM', value as number)).code).toBe(code);
  });

  test.each([['36'], [null], [[36]], [new Number(36)], [true]])(
    'a range takes numbers only, not %j',
    (value) => {
      expect(() => inRange('elevationDeg', value as number, -90, 90)).toThrow(DomainError);
    },
  );

  test('never print a whole input', () => {
    expect(thrown(() => finite('x', new Array(500).fill(0) as unknown as number)).message).toBe(
      'x must be a finite number, got an array of 500',
    );
    expect(
      thrown(() => finite('x', 'y'.repeat(99) as unknown as number)).message.length,
    ).toBeLessThan(90);
  });

  test('name the row of a batch', () => {
    expect(thrown(() => finite('azimuthDeg', Number.NaN, undefined, 7)).message).toContain(
      'azimuthDeg[7]',
    );
  });

  test('bounds are inclusive with a few units in the last place of grace', () => {
    expect(inRange('x', 90, -90, 90)).toBe(90);
    expect(inRange('x', 90.00000000000001, -90, 90)).toBe(90);
    expect(inRange('x', -90.00000000000001, -90, 90)).toBe(-90);
    expect(thrown(() => inRange('x', 90.000001, -90, 90)).code).toBe('out-of-range');
    expect(thrown(() => inRange('x', -1, 0, Number.POSITIVE_INFINITY)).message).toBe(
      'x must be 0 or more, got -1',
    );
  });

  test('an option is one of the listed words, an object is an object', () => {
    expect(thrown(() => oneOf('axis', 'z' as 'x', ['x', 'y'])).message).toBe(
      'axis must be one of x, y, got "z"',
    );
    expect(thrown(() => object('station', undefined)).code).toBe('missing');
    expect(thrown(() => object('station', 5 as unknown as object)).code).toBe('malformed');
  });
});
