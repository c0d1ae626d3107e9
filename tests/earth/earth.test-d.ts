import { enuToDirection, type TypedCoordinates, textToCoordinates } from 'slantpath/earth';
import { expectTypeOf, test } from 'vitest';

test('a direction must be asked for its kind', () => {
  const direction = enuToDirection({ eastKm: 1, northKm: 0, upKm: 0 });
  // @ts-expect-error straight up there is no azimuth
  direction.azimuthDeg;
  if (direction.kind === 'inclined') expectTypeOf(direction.azimuthDeg).toEqualTypeOf<number>();
  expectTypeOf<TypedCoordinates['notation']>().toEqualTypeOf<
    'decimal' | 'degrees-minutes' | 'degrees-minutes-seconds' | 'maidenhead'
  >();
});

test('refused calls', () => {
  // @ts-expect-error coordinates come as text
  textToCoordinates([46.4, 9.6]);
});
