import { readFileSync } from 'node:fs';
import { DomainError, isDomainError } from 'slantpath';
import { describe, expect, test } from 'vitest';
import { finite, inRange, object, oneOf, positive, within, withinRow } from '../src/errors.js';

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

describe('the error', () => {
  const bad = () => inRange('frequencyGHz', 11700, 1, 60, 'was it given in MHz?');

  test('bears its bounds as numbers beside the text', () => {
    expect(thrown(bad)).toMatchObject({ minimum: 1, maximum: 60, allowed: 'from 1 to 60' });
    expect(thrown(() => inRange('x', -1, 0, Number.POSITIVE_INFINITY)).maximum).toBeUndefined();
    expect(thrown(() => positive('x', -1)).minimum).toBe(0);
  });

  test('takes a path and a row, and the error it was is its cause', () => {
    const first = thrown(bad);
    const second = first.at('carriers[2]').at('slots[1]');
    expect(second.parameter).toBe('slots[1].carriers[2].frequencyGHz');
    expect(second.message).toContain('slots[1].carriers[2].frequencyGHz must be from 1 to 60');
    expect((second.cause as DomainError).cause).toBe(first);
    expect(second).toMatchObject({
      code: 'out-of-range',
      received: 11700,
      minimum: 1,
      maximum: 60,
    });
    expect(first.inRow(4)).toMatchObject({ index: 4, cause: first, slip: first.slip });
    expect(first.inRow(4).inRow(7).index).toBe(4);
    expect(first.at('')).toBe(first);
  });

  test('is told in the words of the caller', () => {
    const names = { tree: '', 'tree.to': 'first', name: 'mode' };
    const told = (parameter: string) =>
      thrown(() => within('job', () => finite(parameter, Number.NaN), names)).parameter;
    expect(told('tree.outputs[1].lossDb')).toBe('job.outputs[1].lossDb');
    expect(told('tree[1].lossDb')).toBe('job[1].lossDb');
    expect(told('tree.to.lossDb')).toBe('job.first.lossDb');
    expect(told('treeLossDb')).toBe('job.treeLossDb');
    expect(told('name')).toBe('job.mode');
    expect(thrown(() => withinRow(3, bad)).index).toBe(3);
    const other = new TypeError('other');
    expect(() =>
      within('job', () => {
        throw other;
      }),
    ).toThrow(other);
  });

  test('becomes plain data with its message', () => {
    const error = thrown(bad);
    expect(JSON.parse(JSON.stringify(error))).toEqual({
      name: 'DomainError',
      code: 'out-of-range',
      message: error.message,
      parameter: 'frequencyGHz',
      received: 11700,
      allowed: 'from 1 to 60',
      slip: 'was it given in MHz?',
      minimum: 1,
      maximum: 60,
    });
    expect(thrown(() => finite('x', Number.NaN)).toJSON().received).toBe('NaN');
    const loop: Record<string, unknown> = {};
    loop['self'] = loop;
    expect(thrown(() => finite('x', loop as never)).toJSON().received).toBe('an object');
  });

  test('is recognised across copies of the library', async () => {
    const { DomainError: Other } = (await import(
      `../src/errors.js?copy=${'second'}`
    )) as typeof import('../src/errors.js');
    const other = new Other({ code: 'empty', parameter: 'x', received: [], allowed: 'a list' });
    expect(Other).not.toBe(DomainError);
    expect(other instanceof DomainError).toBe(false);
    expect(isDomainError(other)).toBe(true);
    expect(isDomainError(new RangeError('x'))).toBe(false);
    expect(isDomainError(undefined)).toBe(false);
  });

  test('gives no hint about a unit or an order for what is missing or no number', () => {
    const slip = 'were latitude and longitude swapped?';
    for (const value of [undefined, null, Number.NaN, {}, Symbol('x')])
      expect(thrown(() => inRange('latitudeDeg', value as never, -90, 90, slip)).slip).toBe(
        undefined,
      );
    expect(thrown(() => inRange('latitudeDeg', '46' as never, -90, 90, slip)).slip).toBe(
      'is the number in quotes?',
    );
    expect(thrown(() => inRange('latitudeDeg', 116, -90, 90, slip)).slip).toBe(slip);
  });

  test('a negative zero comes out as zero', () => {
    expect(Object.is(inRange('x', -0, -5, 5), 0)).toBe(true);
    expect(Object.is(finite('x', -0), 0)).toBe(true);
  });

  test('a long list of options is cut, a Symbol is refused', () => {
    const many = Array.from({ length: 300 }, (_, i) => `option ${i}`);
    expect(thrown(() => oneOf('mode', 'x', many)).message.length).toBeLessThan(400);
    expect(thrown(() => positive('x', Symbol('y') as never)).code).toBe('not-a-number');
  });

  test('each code stands in the reference with an example', () => {
    const source = readFileSync(new URL('../src/errors.ts', import.meta.url), 'utf8');
    const type = /type DomainErrorCode =([^;]*);/.exec(source)?.[1] ?? '';
    const codes = [...type.matchAll(/'([a-z-]+)'/g)].map((match) => match[1]);
    const page = readFileSync(new URL('../docs/reference/errors.mdx', import.meta.url), 'utf8');
    const table = page.slice(page.indexOf('## Codes'));
    const listed = [...table.matchAll(/^\| `([a-z-]+)` \|/gm)].map((match) => match[1]);
    expect(listed).toEqual(codes);
    const shipped = readFileSync(
      new URL('../docs/schemas/error-codes.json', import.meta.url),
      'utf8',
    );
    expect((JSON.parse(shipped) as { code: string }[]).map(({ code }) => code)).toEqual(codes);
  });
});
