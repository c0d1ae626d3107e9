import { DomainError } from 'slantpath';
import { describe, expect, test } from 'vitest';
import { type Keys, known, knownOnly } from '../src/keys.js';

interface Sample {
  readonly kind?: string;
  readonly elevationDeg: number;
  readonly frequencyGHz?: number;
  readonly polarizationTiltDeg?: number;
}
const KEYS = {
  kind: true,
  elevationDeg: true,
  frequencyGHz: true,
  polarizationTiltDeg: true,
} satisfies Keys<Sample>;

const refusal = (call: () => unknown): DomainError | undefined => {
  try {
    call();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  return undefined;
};
const withKey = (key: string) => ({ elevationDeg: 30, [key]: 5 });

describe('a field that is near a known one', () => {
  test.each([
    ['elevation', 'elevationDeg', 'unit missing'],
    ['elevationRad', 'elevationDeg', 'another unit'],
    ['frequencyMHz', 'frequencyGHz', 'another unit'],
    ['ElevationDeg', 'elevationDeg', 'a capital'],
    ['elevation_deg', 'elevationDeg', 'other separators'],
    ['elevatonDeg', 'elevationDeg', 'a letter missing'],
    ['elevatoinDeg', 'elevationDeg', 'two letters swapped'],
    ['eleevationDeg', 'elevationDeg', 'a letter twice'],
    ['polarisationTiltDeg', 'polarizationTiltDeg', 'British spelling'],
    ['frequenzyGHz', 'frequencyGHz', 'a wrong letter'],
  ])('%s is refused, naming %s (%s)', (key, right) => {
    for (const guard of [known, knownOnly]) {
      const error = refusal(() => guard('input', withKey(key) as Sample, KEYS));
      expect(error).toMatchObject({ code: 'unknown-field', parameter: key, received: 5 });
      expect(error?.slip).toBe(`is ${right} meant?`);
    }
  });
});

describe('another field', () => {
  test.each(['name', 'site', 'azimuthDeg', 'kindOfRoof', 'note', 'constructor'])(
    '%s passes in a record and is refused among arguments',
    (key) => {
      expect(refusal(() => known('station', withKey(key) as Sample, KEYS))).toBeUndefined();
      const error = refusal(() => knownOnly('options', withKey(key) as Sample, KEYS));
      expect(error).toMatchObject({ code: 'unknown-field', parameter: `options.${key}` });
    },
  );

  test('a huge name is refused with a short message', () => {
    const huge = withKey('x'.repeat(100000)) as Sample;
    const error = refusal(() => knownOnly('input', huge, KEYS));
    expect(error?.message.length).toBeLessThan(400);
    expect(refusal(() => known('input', huge, KEYS))).toBeUndefined();
  });
});

test('what is no object is refused as before', () => {
  expect(refusal(() => known('input', undefined as never, KEYS))?.code).toBe('missing');
  expect(refusal(() => known('input', 5 as never, KEYS))?.code).toBe('malformed');
  expect(known('input', { elevationDeg: 1 }, KEYS)).toEqual({ elevationDeg: 1 });
});
